package agro.trial.analysis;

import agro.report.InputProblem;
import agro.stats.multiple.ComparisonMethod;
import agro.trial.ResponseKind;
import agro.trial.TrialDesign;

/** What does not go together. */
final class RouteChecks {

  private RouteChecks() {}

  static void refuse(AnalysisSubject subject, AnalysisChoices choices) {
    var route = subject.route();
    var kind = subject.values().response().kind();
    boolean divided =
        subject.design() instanceof TrialDesign.SplitPlot
            || subject.design() instanceof TrialDesign.SplitSplitPlot;
    if (divided && route != AnalysisRoute.NORMAL) {
      throw InputProblem.of(route.words() + " of a " + subject.design().words())
          .expected("an analysis of variance with strata")
          .because("main plots have an error of their own, which this route does not know")
          .mend("transform the values, or analyse the levels of one factor by themselves");
    }
    if (route != AnalysisRoute.NORMAL && !subject.transformation().isNone()) {
      throw InputProblem.of(
              route.words() + " with values on the scale " + subject.transformation().words())
          .expected("values as they are")
          .because("the route has its own way to deal with unequal variances")
          .mend("leave the transformation out, or take the analysis of variance");
    }
    if (subject.transformation() instanceof ArcsineRoot && !subject.isShare()) {
      throw InputProblem.of("the arcsine of a " + kind.words())
          .expected("a count out of n or a percentage")
          .because("only shares have an arcsine of their square root")
          .mend("declare the variable as a share, or take another transformation");
    }
    family(route, kind);
    methods(subject, choices);
  }

  private static void family(AnalysisRoute route, ResponseKind kind) {
    boolean shares = route == AnalysisRoute.BINOMIAL || route == AnalysisRoute.QUASI_BINOMIAL;
    if (shares && kind != ResponseKind.COUNT_OUT_OF) {
      throw InputProblem.of("a binomial model of a " + kind.words())
          .expected("a count out of n")
          .because("the variance of a share depends on the number looked at")
          .mend("declare the variable as a count out of n");
    }
    boolean counts = route.isGeneralisedLinear() && !shares;
    if (counts && kind != ResponseKind.COUNT) {
      throw InputProblem.of("a model of counts for a " + kind.words())
          .expected("a count")
          .because("the variance of these families is that of counts")
          .mend(
              kind == ResponseKind.COUNT_OUT_OF
                  ? "take the binomial route"
                  : "take the analysis of variance");
    }
  }

  private static void methods(AnalysisSubject subject, AnalysisChoices choices) {
    boolean own = subject.route() == AnalysisRoute.RANKS || subject.route() == AnalysisRoute.WELCH;
    var method = choices.method();
    if (own && (subject.control().isPresent() || method.filter(RouteChecks::ranged).isPresent())) {
      throw InputProblem.of(
              "comparisons by "
                  + method.map(ComparisonMethod::words).orElse("a control")
                  + " after "
                  + subject.route().words())
          .expected(
              subject.route() == AnalysisRoute.RANKS
                  ? "all pairs with an adjustment of p-values, such as Holm's"
                  : "Games and Howell's comparisons, which are made without asking")
          .because("the method belongs to one normal error of all means")
          .mend("choose another method, or the analysis of variance");
    }
  }

  private static boolean ranged(ComparisonMethod method) {
    return method.adjustment().isEmpty();
  }
}
