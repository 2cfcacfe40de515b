package agro.trial.analysis;

import agro.report.InputProblem;
import agro.source.Reference;
import agro.stats.BlockedValues;
import agro.stats.GroupedValues;
import agro.stats.linear.Factor;
import agro.stats.multiple.ComparisonMethod;
import agro.stats.multiple.PValueAdjustment;
import agro.stats.rank.Friedman;
import agro.stats.rank.FriedmanPairs;
import agro.stats.rank.KruskalWallis;
import agro.stats.rank.KruskalWallisPairs;
import agro.stats.rank.RankPairs;
import agro.stats.rank.RankedGroup;
import agro.stats.rank.SkillingsMack;
import agro.trial.TrialDesign;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Supplier;

/** Ranks: Kruskal-Wallis without blocks; Friedman, or Skillings-Mack with gaps, within blocks. */
final class RankRoute {

  private final AnalysisSubject subject;
  private final AnalysisChoices choices;
  private final TrialLines lines;
  private final double[] values;
  private final List<String> reasons = new ArrayList<>();
  private final List<Reference> sources = new ArrayList<>();

  RankRoute(AnalysisSubject subject, TrialLines lines, AnalysisChoices choices) {
    this.subject = subject;
    this.choices = choices;
    this.lines = lines;
    this.values = AnalysisScale.values(subject);
    if (lines.isDivided() || subject.design() instanceof TrialDesign.LatinSquare) {
      throw InputProblem.of("ranks in a " + subject.design().words())
          .expected("a completely randomised trial or one in blocks")
          .because("rank tests know one way of grouping plots")
          .mend("take the analysis of variance, or declare one of the two as the blocks");
    }
    if (lines.factors().size() > 1) {
      reasons.add(
          "Ranks compare the combinations of "
              + String.join(" and ", lines.factors().stream().map(Factor::name).toList())
              + "; they do not tell main effects from interactions.");
    }
    if (!choices.contrasts().isEmpty()) {
      throw InputProblem.of("contrasts of ranks")
          .expected("the analysis of variance")
          .because("ranks have no contrasts with an error of their own")
          .mend("leave them out, or compare pairs");
    }
  }

  RouteOutcome analyse() {
    return subject.design() instanceof TrialDesign.CompletelyRandomised
        ? withoutBlocks()
        : inBlocks();
  }

  private PValueAdjustment adjustment() {
    return choices.method().flatMap(ComparisonMethod::adjustment).orElse(PValueAdjustment.HOLM);
  }

  private RouteOutcome withoutBlocks() {
    var groups = GroupedValues.of(subject.values().treatments(), values);
    var test = KruskalWallis.test(groups);
    sources.add(test.source());
    reasons.addAll(test.remarks().stream().map(MeanMaker::sentence).toList());
    var effect = new EffectTest("H", test.h(), List.of((double) test.df()), test.pValue());
    return outcome(
        effect,
        "Kruskal-Wallis test, " + test.method().words(),
        test.groups(),
        () -> test.pairs(KruskalWallisPairs.CONOVER_IMAN, adjustment()));
  }

  private RouteOutcome inBlocks() {
    var blocks = subject.values().blocks();
    var table = BlockedValues.of(blocks, subject.values().treatments(), values);
    if (!table.isComplete()) {
      var test = SkillingsMack.test(table);
      sources.add(test.source());
      reasons.addAll(test.remarks().stream().map(MeanMaker::sentence).toList());
      var effect =
          new EffectTest(
              "chi-squared", test.statistic(), List.of((double) test.df()), test.pValue());
      return outcome(
          effect,
          "Skillings-Mack test, chi-squared approximation",
          test.treatments(),
          () -> {
            throw InputProblem.of("blocks with missing plots")
                .expected("every treatment in every block")
                .because("pairs of treatments are compared by ranks within complete blocks")
                .mend("leave the blocks or treatments with gaps out");
          });
    }
    var test = Friedman.test(table);
    sources.addAll(test.sources());
    var effect =
        new EffectTest(
            "chi-squared", test.chiSquared(), List.of((double) test.df()), test.pValue());
    return outcome(
        effect,
        "Friedman test, " + test.method().words(),
        test.treatments(),
        () -> test.pairs(FriedmanPairs.CONOVER, adjustment()));
  }

  private RouteOutcome outcome(
      EffectTest test, String note, List<RankedGroup> groups, Supplier<RankPairs> pairs) {
    var row =
        new EffectRow(
            "",
            String.join(" and ", lines.factors().stream().map(Factor::name).toList()),
            EffectRow.Role.TREATMENT,
            test.degreesOfFreedom().get(0),
            OptionalDouble.empty(),
            Optional.of(test),
            note);
    var means = new GroupMeans(subject, choices, lines, values).ofRanks(groups, pairs, sources);
    return new RouteOutcome(
        reasons,
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
