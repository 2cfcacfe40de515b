package agro.trial.analysis;

import agro.report.InputProblem;
import agro.source.Reference;
import agro.stats.GroupedValues;
import agro.stats.rank.WelchTest;
import agro.trial.TrialDesign;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Welch's test of treatments with a variance of their own each, without blocks. */
final class WelchRoute {

  private final AnalysisSubject subject;
  private final AnalysisChoices choices;
  private final TrialLines lines;
  private final double[] values;

  WelchRoute(AnalysisSubject subject, TrialLines lines, AnalysisChoices choices) {
    this.subject = subject;
    this.choices = choices;
    this.lines = lines;
    this.values = AnalysisScale.values(subject);
    if (!(subject.design() instanceof TrialDesign.CompletelyRandomised)
        || lines.factors().size() > 1
        || !choices.contrasts().isEmpty()) {
      throw InputProblem.of(
              "Welch's test"
                  + (choices.contrasts().isEmpty() ? "" : " with contrasts")
                  + " of a "
                  + subject.design().words())
          .expected("a completely randomised trial with one treatment factor, without contrasts")
          .because("the test knows nothing of blocks, interactions and contrasts")
          .mend("take the analysis of variance on a scale where variances agree, or ranks");
    }
  }

  RouteOutcome analyse() {
    var test = WelchTest.test(GroupedValues.of(subject.values().treatments(), values));
    var sources = new ArrayList<Reference>();
    sources.add(test.source());
    var row =
        new EffectRow(
            "",
            lines.factors().get(0).name(),
            EffectRow.Role.TREATMENT,
            test.df1(),
            OptionalDouble.empty(),
            Optional.of(
                new EffectTest(
                    "F", test.f(), List.of((double) test.df1(), test.df2()), test.pValue())),
            "Welch's test with unequal variances");
    var means =
        new GroupMeans(subject, choices, lines, values).ofOwnVariances(test::gamesHowell, sources);
    return new RouteOutcome(
        List.of(),
        List.of(),
        GroupMeans.plots(subject, values),
        List.of(row),
        List.of(means),
        List.of(),
        new TrialPrecision(0, OptionalDouble.empty(), Map.of()),
        List.of(),
        sources);
  }
}
