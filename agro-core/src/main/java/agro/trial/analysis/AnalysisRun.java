package agro.trial.analysis;

import agro.report.InputProblem;
import agro.stats.multiple.ComparisonMethod;
import agro.trial.FieldTrial;
import agro.trial.PlotValues;
import agro.trial.ResponseKind;
import agro.trial.TrialDesign;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;

/** Makes the choices that were left open, refuses what does not fit, and takes the route. */
final class AnalysisRun {

  private final FieldTrial trial;
  private final PlotValues values;
  private final AnalysisChoices choices;
  private final List<String> reasons = new ArrayList<>();

  private AnalysisRun(FieldTrial trial, PlotValues values, AnalysisChoices choices) {
    this.trial = trial;
    this.choices = choices;
    this.values = inEnvironment(values, choices.environment());
  }

  static AnalysedTrial of(FieldTrial trial, PlotValues values, AnalysisChoices choices) {
    return new AnalysisRun(trial, values, choices).run();
  }

  private static PlotValues inEnvironment(PlotValues values, Optional<String> wanted) {
    var places = new LinkedHashSet<>(values.environments());
    if (wanted.isEmpty() && places.size() > 1) {
      throw InputProblem.of("values of " + places.size() + " sites and years: " + places)
          .expected("one site in one year")
          .because("this analysis has no error for differences between places and years")
          .mend("name one with in(...), or analyse the series of trials together");
    }
    if (wanted.isEmpty()) {
      return values;
    }
    var some = values.where(plot -> plot.environment().equals(wanted.get()));
    if (some.values().isEmpty()) {
      throw InputProblem.of("no value at \"" + wanted.get() + "\"")
          .expected("one of " + places)
          .because("there is nothing to analyse")
          .mend("write site and year as the trial gives them");
    }
    return some;
  }

  /** The same choices, but residuals resampled. */
  static BootstrappedMeans resampled(
      FieldTrial trial, PlotValues values, AnalysisChoices choices, int refits, long seed) {
    var run = new AnalysisRun(trial, values, choices);
    var subject = run.subject();
    return BootstrappedMeans.of(
        subject, new TrialLines(run.values, subject.design()), refits, seed);
  }

  private AnalysisSubject subject() {
    if (new LinkedHashSet<>(values.treatments()).size() < 2) {
      throw InputProblem.of(
              values.response().name() + " has values of one treatment: " + values.treatments())
          .expected("values of at least two treatments")
          .because("treatments are compared with each other")
          .mend("check the column of the treatments, and plots without a value");
    }
    var design = design();
    var route = route(design);
    var control = control();
    var subject =
        new AnalysisSubject(
            trial.name(),
            values,
            design,
            route,
            choices.transformation(),
            choices.squares(),
            choices.level(),
            control);
    RouteChecks.refuse(subject, choices);
    return subject;
  }

  private AnalysedTrial run() {
    var subject = subject();
    var lines = new TrialLines(values, subject.design());
    reasons.addAll(lines.remarks());
    sayGaps();
    var outcome =
        switch (subject.route()) {
          case NORMAL -> new NormalRoute(subject, lines, choices).analyse();
          case RANKS -> new RankRoute(subject, lines, choices).analyse();
          case WELCH -> new WelchRoute(subject, lines, choices).analyse();
          default -> new CountRoute(subject, lines, choices).analyse();
        };
    reasons.addAll(outcome.reasons());
    return outcome.result(subject, reasons);
  }

  private TrialDesign design() {
    if (choices.design().isPresent()) {
      reasons.add("Design: " + choices.design().get().words() + ", as chosen for this analysis.");
      return choices.design().get();
    }
    if (trial.declaredDesign().isPresent()) {
      reasons.add("Design: " + trial.declaredDesign().get().words() + ", as declared.");
      return trial.declaredDesign().get();
    }
    var environment = values.environments().get(0);
    var design = trial.review().designs().get(environment);
    reasons.add("Design: " + design.words() + ", as recognised from the plots.");
    return design;
  }

  private AnalysisRoute route(TrialDesign design) {
    if (choices.route().isPresent()) {
      return choices.route().get();
    }
    boolean score = values.response().kind() == ResponseKind.SCORE;
    boolean ranked =
        !design.isFactorial()
            && (design instanceof TrialDesign.CompletelyRandomised
                || design instanceof TrialDesign.CompleteBlocks
                || design instanceof TrialDesign.IncompleteBlocks);
    if (score && ranked && choices.transformation().isNone()) {
      reasons.add(
          "Analysis of ranks, because grades of a score are ordered but have no distances.");
      return AnalysisRoute.RANKS;
    }
    reasons.add(
        "Analysis of variance of "
            + (choices.transformation().isNone()
                ? "the values as they are"
                : "values on the scale " + choices.transformation().words())
            + ": the usual start, not chosen by a test.");
    if (score) {
      reasons.add(
          "The variable is a score, whose grades have no distances; means of grades are read with"
              + " care.");
    }
    return AnalysisRoute.NORMAL;
  }

  private Optional<String> control() {
    boolean dunnett = choices.method().filter(m -> m == ComparisonMethod.DUNNETT).isPresent();
    if (choices.control().isEmpty() && !dunnett) {
      return Optional.empty();
    }
    if (choices.control().isEmpty() && trial.controls().size() != 1) {
      throw InputProblem.of(
              "comparisons with a control in a trial with "
                  + (trial.controls().isEmpty() ? "no" : "several")
                  + " declared controls")
          .expected("one control")
          .because("every treatment is compared with it")
          .mend(
              "name it with against(...)"
                  + (trial.controlCandidates().isEmpty()
                      ? ""
                      : "; the name sounds so in " + trial.controlCandidates()));
    }
    var control = choices.control().orElseGet(() -> trial.controls().get(0));
    if (!values.treatments().contains(control)) {
      throw InputProblem.of("the control \"" + control + "\" has no value")
          .expected("one of " + new LinkedHashSet<>(values.treatments()))
          .because("every treatment is compared with it")
          .mend("write the control as it stands in the table");
    }
    return Optional.of(control);
  }

  private void sayGaps() {
    var missing =
        choices.environment().isPresent() || trial.environments().size() > 1
            ? values.missing().stream()
                .filter(plot -> plot.environment().equals(values.environments().get(0)))
                .toList()
            : values.missing();
    if (!missing.isEmpty()) {
      reasons.add(
          (missing.size() == 1 ? "One plot has no value: " : missing.size() + " plots have none: ")
              + String.join("; ", missing.stream().map(Object::toString).toList())
              + ". Means are adjusted for it where blocks are in the model.");
    }
    if (!values.equalSubSamples()) {
      reasons.add(
          "Plots have different numbers of sub-samples; the mean of each plot counts the same in the"
              + " analysis of variance and of ranks.");
    }
  }
}
