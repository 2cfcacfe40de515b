package agro.trial;

import java.time.LocalDate;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * One value that somebody wrote down: one variable, on one sub-sample of one plot, on one day.
 *
 * @param plot the plot as this line describes it
 * @param date day of the assessment, if it is written down
 * @param subSample number or name of the plant within the plot, empty when the whole plot was
 *     assessed
 * @param variable what was assessed
 * @param value the value, or nothing when it is missing
 * @param outOf how many were looked at, for values that count the affected ones among them
 * @param who who assessed, empty when not written down
 * @param line line of the table, 0 when the value came from code
 */
public record Assessment(
    TrialPlot plot,
    Optional<LocalDate> date,
    String subSample,
    String variable,
    OptionalDouble value,
    OptionalInt outOf,
    String who,
    long line) {

  /** Refuses values that are no numbers and an assessment of nothing. */
  public Assessment {
    Objects.requireNonNull(plot, "plot");
    Objects.requireNonNull(date, "date");
    Objects.requireNonNull(subSample, "subSample");
    Objects.requireNonNull(outOf, "outOf");
    Objects.requireNonNull(who, "who");
    if (variable.isBlank()) {
      throw new IllegalArgumentException("an assessment needs the name of its variable");
    }
    if (value.isPresent() && !Double.isFinite(value.getAsDouble())) {
      throw new IllegalArgumentException(
          "the value of "
              + variable
              + " in "
              + plot.label()
              + " has to be a finite number, but got "
              + value.getAsDouble()
              + "; leave it empty when it is missing");
    }
  }

  /**
   * A value of a whole plot.
   *
   * @param plot the plot
   * @param date day of the assessment
   * @param variable what was assessed
   * @param value the value
   * @return the assessment
   */
  public static Assessment of(TrialPlot plot, LocalDate date, String variable, double value) {
    return new Assessment(
        plot,
        Optional.of(date),
        "",
        variable,
        OptionalDouble.of(value),
        OptionalInt.empty(),
        "",
        0);
  }

  /**
   * This assessment as one of a sub-sample.
   *
   * @param newSubSample number or name of the plant
   * @return a new assessment
   */
  public Assessment onSubSample(String newSubSample) {
    return new Assessment(plot, date, newSubSample, variable, value, outOf, who, line);
  }

  /**
   * This assessment as a count among a number that was looked at.
   *
   * @param number how many were looked at
   * @return a new assessment
   */
  public Assessment outOf(int number) {
    return new Assessment(
        plot, date, subSample, variable, value, OptionalInt.of(number), who, line);
  }

  /**
   * This assessment with another value.
   *
   * @param newValue the value, or nothing for a missing one
   * @return a new assessment
   */
  public Assessment withValue(OptionalDouble newValue) {
    return new Assessment(plot, date, subSample, variable, newValue, outOf, who, line);
  }

  /**
   * This assessment with another description of its plot.
   *
   * @param newPlot the plot
   * @return a new assessment
   */
  public Assessment withPlot(TrialPlot newPlot) {
    return new Assessment(newPlot, date, subSample, variable, value, outOf, who, line);
  }

  /**
   * Where this was assessed, in words.
   *
   * @return plot, sub-sample and day
   */
  public String where() {
    return plot.label()
        + (subSample.isEmpty() ? "" : ", sub-sample " + subSample)
        + date.map(day -> ", " + day).orElse("")
        + (line == 0 ? "" : " (line " + line + ")");
  }
}
