package agro.trial.analysis;

import agro.stats.linear.SumsOfSquares;
import agro.trial.PlotValues;
import agro.trial.ResponseKind;
import agro.trial.TrialDesign;
import java.util.Objects;
import java.util.Optional;

/**
 * What was analysed, and how.
 *
 * @param trial name of the trial
 * @param values the values of the plots
 * @param design the design that the model follows
 * @param route the analysis
 * @param transformation scale of the analysis
 * @param squares what each term is adjusted for
 * @param level level of significance
 * @param control the control, if comparisons are with one
 */
public record AnalysisSubject(
    String trial,
    PlotValues values,
    TrialDesign design,
    AnalysisRoute route,
    Transformation transformation,
    SumsOfSquares squares,
    double level,
    Optional<String> control) {

  /** Refuses null. */
  public AnalysisSubject {
    Objects.requireNonNull(trial, "trial");
    Objects.requireNonNull(values, "values");
    Objects.requireNonNull(design, "design");
    Objects.requireNonNull(route, "route");
    Objects.requireNonNull(transformation, "transformation");
    Objects.requireNonNull(squares, "squares");
    Objects.requireNonNull(control, "control");
  }

  /**
   * Unit of the values in print.
   *
   * @return per cent for counts out of n, which are analysed as shares in per cent
   */
  public String unit() {
    return isShare() ? "%" : values.response().unit();
  }

  /**
   * Whether the values are shares in per cent.
   *
   * @return true for counts out of n and percentages
   */
  public boolean isShare() {
    var kind = values.response().kind();
    return kind == ResponseKind.COUNT_OUT_OF || kind == ResponseKind.PERCENTAGE;
  }

  /**
   * Variable and day in words.
   *
   * @return for example "larvae, 2026-06-15"
   */
  public String title() {
    return values.response().name() + values.date().map(day -> ", " + day).orElse("");
  }
}
