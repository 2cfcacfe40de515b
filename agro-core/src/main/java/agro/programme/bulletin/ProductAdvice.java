package agro.programme.bulletin;

import agro.dose.tank.TankMix;
import agro.programme.LabelRecord;
import agro.programme.interval.ApplicationVerdict;
import agro.programme.interval.LeftToUse;
import agro.programme.interval.SeasonAnswer;
import agro.programme.interval.UseCalendar;
import agro.programme.rotation.RotationFinding;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * What may be done with one product of the user's label records in a field.
 *
 * @param label its record
 * @param today what the rules say to an application on the day of issue
 * @param next the first day on which no recorded rule refuses it
 * @param days what is allowed on the days ahead
 * @param left what the maxima leave
 * @param rotation what the rules of rotation say to an application on that day
 * @param tank amounts for the sprayer; nothing where something is missing
 * @param tankProblem why there are none; empty if there are
 */
public record ProductAdvice(
    LabelRecord label,
    ApplicationVerdict today,
    SeasonAnswer next,
    UseCalendar.Row days,
    LeftToUse left,
    List<RotationFinding> rotation,
    Optional<TankMix> tank,
    String tankProblem) {

  /** Copies the list. */
  public ProductAdvice {
    Objects.requireNonNull(label, "label");
    Objects.requireNonNull(today, "today");
    Objects.requireNonNull(next, "next");
    Objects.requireNonNull(days, "days");
    Objects.requireNonNull(left, "left");
    rotation = List.copyOf(rotation);
    Objects.requireNonNull(tank, "tank");
    Objects.requireNonNull(tankProblem, "tankProblem");
  }
}
