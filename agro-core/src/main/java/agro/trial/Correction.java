package agro.trial;

import agro.units.Numbers;
import java.time.LocalDate;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * A correction of one value: where, what it was, what it becomes, and why, by whom and when. The
 * time is what the person writes; no clock is asked.
 *
 * @param site site of the plot, empty when the trial has one
 * @param year year, if the trial has one
 * @param plot name of the plot
 * @param date day of the assessment, if the trial has dates
 * @param subSample number or name of the plant, empty when the plot was assessed as a whole
 * @param variable what was assessed
 * @param oldValue the value as it stands, nothing when it is missing
 * @param newValue the value to write, nothing to set it to missing
 * @param reason why
 * @param who who decided
 * @param when when, as that person wrote it
 */
public record Correction(
    String site,
    OptionalInt year,
    String plot,
    Optional<LocalDate> date,
    String subSample,
    String variable,
    OptionalDouble oldValue,
    OptionalDouble newValue,
    String reason,
    String who,
    String when) {

  /** Refuses a correction without place, reason or person, and one that changes nothing. */
  public Correction {
    Objects.requireNonNull(site, "site");
    Objects.requireNonNull(year, "year");
    Objects.requireNonNull(date, "date");
    Objects.requireNonNull(subSample, "subSample");
    Objects.requireNonNull(when, "when");
    if (plot.isBlank() || variable.isBlank()) {
      throw new IllegalArgumentException("a correction needs a plot and a variable");
    }
    if (reason.isBlank() || who.isBlank()) {
      throw new IllegalArgumentException(
          "a correction needs its reason and who decided, since nobody else can judge it later");
    }
    if (oldValue.equals(newValue)) {
      throw new IllegalArgumentException(
          "a correction changes a value, but old and new are both " + words(oldValue));
    }
    if (newValue.isPresent() && !Double.isFinite(newValue.getAsDouble())) {
      throw new IllegalArgumentException("a new value is a finite number or missing");
    }
  }

  /**
   * A correction of a value.
   *
   * @param wrong the value as it stands in the trial
   * @param newValue the value to write
   * @param reason why
   * @param who who decided
   * @param when when, as that person wrote it
   * @return the correction
   */
  public static Correction of(
      Assessment wrong, double newValue, String reason, String who, String when) {
    return of(wrong, OptionalDouble.of(newValue), reason, who, when);
  }

  /**
   * A correction that sets a value to missing.
   *
   * @param wrong the value as it stands in the trial
   * @param reason why
   * @param who who decided
   * @param when when, as that person wrote it
   * @return the correction
   */
  public static Correction toMissing(Assessment wrong, String reason, String who, String when) {
    return of(wrong, OptionalDouble.empty(), reason, who, when);
  }

  private static Correction of(
      Assessment wrong, OptionalDouble newValue, String reason, String who, String when) {
    var plot = wrong.plot();
    return new Correction(
        plot.site(),
        plot.year(),
        plot.name(),
        wrong.date(),
        wrong.subSample(),
        wrong.variable(),
        wrong.value(),
        newValue,
        reason,
        who,
        when);
  }

  /**
   * Whether this correction is about an assessment, whatever its value.
   *
   * @param line an assessment
   * @return true when plot, day, sub-sample and variable agree
   */
  public boolean isAbout(Assessment line) {
    return line.plot().site().equals(site)
        && line.plot().year().equals(year)
        && line.plot().name().equals(plot)
        && line.date().equals(date)
        && line.subSample().equals(subSample)
        && line.variable().equals(variable);
  }

  /**
   * Where the value stands, in words.
   *
   * @return variable, plot, sub-sample and day
   */
  public String where() {
    var environment = (site + (year.isPresent() ? " " + year.getAsInt() : "")).trim();
    return variable
        + " in plot "
        + plot
        + (environment.isEmpty() ? "" : " (" + environment + ")")
        + (subSample.isEmpty() ? "" : ", sub-sample " + subSample)
        + date.map(day -> ", " + day).orElse("");
  }

  static String words(OptionalDouble value) {
    return value.isPresent() ? Numbers.plain(value.getAsDouble()) : "missing";
  }

  @Override
  public String toString() {
    return where()
        + ": "
        + words(oldValue)
        + " corrected to "
        + words(newValue)
        + " by "
        + who
        + (when.isBlank() ? "" : ", " + when)
        + ", because: "
        + reason;
  }
}
