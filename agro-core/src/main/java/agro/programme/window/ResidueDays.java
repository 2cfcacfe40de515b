package agro.programme.window;

import agro.report.InputProblem;
import agro.units.Numbers;
import java.time.LocalTime;
import java.util.Objects;

/**
 * What the user states of a treatment: how long its residue lasts, how fast it acts and what it
 * asks of the hour.
 *
 * @param days days that the residue lasts, above 0; infinite if it does not end this season
 * @param decay how the effect falls off meanwhile
 * @param actsAfterDays speed of action: days of contact that an animal needs before it leaves the
 *     stage, 0 or more
 * @param rainFreeHours hours without rain that the treatment needs after its end, 0 or more
 * @param moment clock time at which the exposure is taken to begin
 * @param evening whether it belongs into the evening, as what light destroys does
 */
public record ResidueDays(
    double days,
    ResidueDecay decay,
    double actsAfterDays,
    double rainFreeHours,
    LocalTime moment,
    boolean evening) {

  private static final LocalTime EVENING = LocalTime.of(20, 0);

  /** Refuses times that are none. */
  public ResidueDays {
    Objects.requireNonNull(decay, "decay");
    Objects.requireNonNull(moment, "moment");
    if (!(days > 0)) {
      throw InputProblem.of("a residue that lasts " + Numbers.plain(days) + " days")
          .expected("days above 0")
          .because("without a residue no animal is exposed but those present at that moment")
          .mend("give at least a part of a day for a treatment that acts by contact alone");
    }
    requireTime(actsAfterDays, "days of contact");
    requireTime(rainFreeHours, "hours without rain");
  }

  private static void requireTime(double value, String what) {
    if (!(value >= 0) || Double.isInfinite(value)) {
      throw InputProblem.of(Numbers.plain(value) + " " + what)
          .expected("a number of 0 or more")
          .because("a time that is needed cannot be negative or endless")
          .mend("give 0 where nothing is needed");
    }
  }

  /**
   * A residue with full effect until it ends, which acts at once, from noon on.
   *
   * @param days days that it lasts
   * @return the residue
   */
  public static ResidueDays lasting(double days) {
    return new ResidueDays(days, new ResidueDecay.Steady(), 0, 0, LocalTime.NOON, false);
  }

  /**
   * The same residue with another course of its effect.
   *
   * @param other how it falls off
   * @return a new residue
   */
  public ResidueDays with(ResidueDecay other) {
    return new ResidueDays(days, other, actsAfterDays, rainFreeHours, moment, evening);
  }

  /**
   * The same residue with another speed of action.
   *
   * @param other days of contact that an animal needs
   * @return a new residue
   */
  public ResidueDays actingAfter(double other) {
    return new ResidueDays(days, decay, other, rainFreeHours, moment, evening);
  }

  /**
   * The same residue with hours without rain.
   *
   * @param hours hours after the end of the treatment
   * @return a new residue
   */
  public ResidueDays needingHoursWithoutRain(double hours) {
    return new ResidueDays(days, decay, actsAfterDays, hours, moment, evening);
  }

  /**
   * The same residue brought out at another time of day.
   *
   * @param other clock time at which the exposure begins
   * @return a new residue
   */
  public ResidueDays broughtOutAt(LocalTime other) {
    return new ResidueDays(days, decay, actsAfterDays, rainFreeHours, other, evening);
  }

  /**
   * The same residue for the evening; the exposure is taken to begin at 20:00.
   *
   * @return a new residue
   */
  public ResidueDays inTheEvening() {
    return new ResidueDays(days, decay, actsAfterDays, rainFreeHours, EVENING, true);
  }

  /** The moment as a part of the day. */
  double momentOfDay() {
    return moment.toSecondOfDay() / 86400.0;
  }

  @Override
  public String toString() {
    return (Double.isInfinite(days)
            ? "residue without an end"
            : "residue of " + Numbers.plain(days) + " days")
        + ", "
        + decay.words()
        + (actsAfterDays > 0 ? ", acts after " + Numbers.plain(actsAfterDays) + " days" : "")
        + ", brought out at "
        + moment
        + (evening ? ", in the evening only" : "");
  }
}
