package agro.trial.analysis;

import agro.report.InputProblem;
import agro.stats.linear.Contrast;
import agro.stats.linear.SumsOfSquares;
import agro.stats.multiple.ComparisonMethod;
import agro.stats.multiple.LetterOrder;
import agro.trial.FieldTrial;
import agro.trial.PlotValues;
import agro.trial.TrialDesign;
import agro.trial.TrialVariable;
import agro.working.Presentable;
import agro.working.Presentation;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * How a variable of a trial is to be analysed. Each choice that is not made has a usual one, which
 * the result names with its reason; none depends on a p-value.
 */
public final class TrialAnalysis implements Presentable {

  private final TrialVariable variable;
  private final AnalysisChoices choices;

  private TrialAnalysis(TrialVariable variable, AnalysisChoices choices) {
    this.variable = variable;
    this.choices = choices;
  }

  /**
   * The usual analysis: of the only day, by the declared or recognised design, of the values as
   * they are (of ranks for scores), all pairs compared by Tukey's method at the level 0.05.
   *
   * @param variable a variable of a trial
   * @return the settings
   */
  public static TrialAnalysis of(TrialVariable variable) {
    Objects.requireNonNull(variable, "variable");
    return new TrialAnalysis(variable, AnalysisChoices.usual());
  }

  /**
   * The usual analysis of a variable.
   *
   * @param trial the trial
   * @param variable name of the variable
   * @return the settings
   * @throws InputProblem when the trial has no such variable
   */
  public static TrialAnalysis of(FieldTrial trial, String variable) {
    return of(trial.variable(variable));
  }

  private TrialAnalysis with(AnalysisChoices newChoices) {
    return new TrialAnalysis(variable, newChoices);
  }

  /**
   * On one day.
   *
   * @param date day of the assessment
   * @return new settings
   */
  public TrialAnalysis on(LocalDate date) {
    return with(choices.withDate(Optional.of(date)));
  }

  /**
   * On a transformed scale.
   *
   * @param transformation the scale
   * @return new settings
   */
  public TrialAnalysis with(Transformation transformation) {
    return with(choices.withTransformation(transformation));
  }

  /**
   * By another route.
   *
   * @param route how the values scatter
   * @return new settings
   */
  public TrialAnalysis with(AnalysisRoute route) {
    return with(choices.withRoute(Optional.of(route)));
  }

  /**
   * With sums of squares of another kind; hierarchical ones are usual.
   *
   * @param squares what each term is adjusted for
   * @return new settings
   */
  public TrialAnalysis with(SumsOfSquares squares) {
    return with(choices.withSquares(squares));
  }

  /**
   * With a design of one's own choice, before the declared and the recognised one.
   *
   * @param design the design
   * @return new settings
   */
  public TrialAnalysis with(TrialDesign design) {
    return with(choices.withDesign(Optional.of(design)));
  }

  /**
   * With means compared by another method. Dunnett's needs a control: one that the trial declares,
   * or {@link #against}.
   *
   * @param method the method
   * @return new settings
   */
  public TrialAnalysis compared(ComparisonMethod method) {
    return with(choices.withMethod(Optional.of(method)));
  }

  /**
   * With every treatment compared with a control instead of all pairs, by Dunnett's method unless
   * an adjustment of p-values is chosen.
   *
   * @param control the control in words
   * @return new settings
   */
  public TrialAnalysis against(String control) {
    return with(choices.withControl(Optional.of(control)));
  }

  /**
   * At another level of significance.
   *
   * @param level between 0 and 1; limits have the confidence 1 - level
   * @return new settings
   * @throws InputProblem when it is not between 0 and 1
   */
  public TrialAnalysis atLevel(double level) {
    if (!(level > 0 && level < 1)) {
      throw InputProblem.of("a level of significance of " + level)
          .expected("a chance between 0 and 1, such as 0.05")
          .because("decisions on differences are made at that level")
          .mend("write 5 % as 0.05");
    }
    return with(choices.withLevel(level));
  }

  /**
   * With the letter a for the smallest or the largest mean; the largest is usual.
   *
   * @param order which mean gets the letter a
   * @return new settings
   */
  public TrialAnalysis with(LetterOrder order) {
    return with(choices.withLetters(order));
  }

  /**
   * With a further contrast of the treatments' means, on the scale of the analysis.
   *
   * @param contrast one factor for each treatment, in the order of the table of means
   * @return new settings
   */
  public TrialAnalysis and(Contrast contrast) {
    return with(choices.withContrast(contrast));
  }

  /**
   * Plots of one site and year only.
   *
   * @param environment site and year in words, as {@link FieldTrial#environments()} gives them
   * @return new settings
   */
  public TrialAnalysis in(String environment) {
    return with(choices.withEnvironment(Optional.of(environment)));
  }

  /**
   * Analyses the variable on its only day, or on the day that was named.
   *
   * @return the result
   * @throws InputProblem when there are several days and none was named, no plot has a value, a
   *     value cannot be transformed, or the route does not fit the design or the kind of values
   */
  public AnalysedTrial evaluate() {
    return evaluate(chosenValues());
  }

  /**
   * Analyses each day for itself.
   *
   * @return one result for each day
   * @throws InputProblem as for {@link #evaluate()}
   */
  public AnalysisCourse onEachDay() {
    return new AnalysisCourse(variable.onEachDay().stream().map(this::evaluate).toList());
  }

  /**
   * Means with limits from resampled residuals, for the analysis of variance with one error.
   *
   * @param refits number of refits, for example 2000
   * @param seed start of all chance
   * @return the means with their limits
   * @throws InputProblem for other routes and designs, and where nothing varies
   */
  public BootstrappedMeans resampled(int refits, long seed) {
    return AnalysisRun.resampled(variable.trial(), chosenValues(), choices, refits, seed);
  }

  private PlotValues chosenValues() {
    return choices.date().isPresent() ? variable.on(choices.date().get()) : variable.onTheOnlyDay();
  }

  TrialVariable variable() {
    return variable;
  }

  /** The named day alone, else all days. */
  AnalysisCourse course() {
    return choices.date().isPresent() ? new AnalysisCourse(List.of(evaluate())) : onEachDay();
  }

  private AnalysedTrial evaluate(PlotValues values) {
    return AnalysisRun.of(variable.trial(), values, choices);
  }

  /** The page of the result. */
  @Override
  public Presentation presentation() {
    return choices.date().isEmpty() && variable.dates().size() > 1
        ? onEachDay().presentation()
        : evaluate().presentation();
  }

  @Override
  public String toString() {
    return "Analysis of " + variable + ", " + choices;
  }
}
