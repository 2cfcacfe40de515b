package agro.trial.bioassay;

import agro.report.InputProblem;
import java.util.Objects;

/**
 * Animals that got one dose together.
 *
 * @param dose number on the axis of the assay; 0 for the untreated control
 * @param exposed animals, at least 1
 * @param responded those that responded, at most all
 * @param series strain, product or sex; empty when there is one series, or for a control shared by
 *     all series
 * @param day day or batch; empty when there is one
 */
public record DoseGroup(double dose, int exposed, int responded, String series, String day) {

  /** Refuses what cannot have been counted. */
  public DoseGroup {
    Objects.requireNonNull(series, "series");
    Objects.requireNonNull(day, "day");
    if (!Double.isFinite(dose)) {
      throw InputProblem.of("a dose of " + dose)
          .expected("a finite number")
          .because("every group needs its place on the dose axis")
          .mend("write the dose in the unit of the axis, 0 for the control");
    }
    if (exposed < 1) {
      throw InputProblem.of("a group of " + exposed + " animals")
          .expected("at least one animal")
          .because("nobody can respond in an empty group")
          .mend("leave the group out, or correct the number exposed");
    }
    if (responded < 0 || responded > exposed) {
      throw InputProblem.of(responded + " responding of " + exposed + " animals")
          .expected("a number from 0 to " + exposed)
          .because("no more animals can respond than were exposed")
          .mend("look the two counts up; perhaps the columns are swapped");
    }
  }

  /**
   * A group of an assay with one series and one day.
   *
   * @param dose number on the axis of the assay; 0 for the control
   * @param exposed animals
   * @param responded those that responded
   * @return the group
   * @throws InputProblem when the counts cannot be
   */
  public static DoseGroup of(double dose, int exposed, int responded) {
    return new DoseGroup(dose, exposed, responded, "", "");
  }

  /**
   * A group counted by condition.
   *
   * @param dose number on the axis of the assay; 0 for the control
   * @param counts dead, moribund and alive
   * @param endPoint whether moribund animals count as responding
   * @return the group
   * @throws InputProblem when the end point is missing or the group is empty
   */
  public static DoseGroup of(double dose, ConditionCounts counts, EndPoint endPoint) {
    return of(dose, counts.exposed(), counts.responded(endPoint));
  }

  /**
   * This group in a series.
   *
   * @param name strain, product or sex
   * @return a new group
   */
  public DoseGroup inSeries(String name) {
    return new DoseGroup(dose, exposed, responded, name, day);
  }

  /**
   * This group on a day or in a batch.
   *
   * @param name the day or batch
   * @return a new group
   */
  public DoseGroup onDay(String name) {
    return new DoseGroup(dose, exposed, responded, series, name);
  }

  /**
   * Whether this is an untreated control.
   *
   * @return true for a dose of 0
   */
  public boolean isControl() {
    return dose == 0;
  }

  /**
   * Share that responded.
   *
   * @return 0 to 1
   */
  public double share() {
    return (double) responded / exposed;
  }
}
