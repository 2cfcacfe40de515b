package agro.trial.analysis;

import agro.report.InputProblem;
import agro.source.Reference;
import agro.stats.ConfidenceLimits;
import agro.stats.GroupedValues;
import agro.stats.UpperTail;
import agro.stats.linear.Factor;
import agro.stats.multiple.PValueAdjustment;
import agro.stats.rank.RankPairs;
import agro.stats.rank.RankedGroup;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Supplier;

/** Tables of means of the routes without a common error: ranks and Welch. */
final class GroupMeans {

  private final AnalysisSubject subject;
  private final AnalysisChoices choices;
  private final List<String> titles;
  private final GroupedValues groups;

  GroupMeans(AnalysisSubject subject, AnalysisChoices choices, TrialLines lines, double[] values) {
    this.titles = lines.factors().stream().map(Factor::name).toList();
    this.subject = subject;
    this.choices = choices;
    this.groups = GroupedValues.of(subject.values().treatments(), values);
  }

  static List<PlotResidual> plots(AnalysisSubject subject, double[] values) {
    var plots = new ArrayList<PlotResidual>();
    for (int i = 0; i < values.length; i++) {
      plots.add(
          new PlotResidual(
              subject.values().plots().get(i),
              values[i],
              values[i],
              OptionalDouble.empty(),
              OptionalDouble.empty(),
              OptionalDouble.empty()));
    }
    return plots;
  }

  TreatmentMeans ofRanks(
      List<RankedGroup> ranked, Supplier<RankPairs> pairs, List<Reference> sources) {
    var rows = new ArrayList<TreatmentMean>();
    for (var each : ranked) {
      int group = groups.labels().indexOf(each.label());
      rows.add(
          new TreatmentMean(
              each.label(),
              groups.size(group),
              OptionalDouble.of(each.meanRank()),
              OptionalDouble.of(groups.median(group)),
              Optional.empty(),
              OptionalDouble.of(groups.mean(group)),
              ""));
    }
    return compared(rows, pairs, sources);
  }

  /** Each mean with limits of its own variance. */
  TreatmentMeans ofOwnVariances(Supplier<RankPairs> pairs, List<Reference> sources) {
    var rows = new ArrayList<TreatmentMean>();
    for (int group = 0; group < groups.groups(); group++) {
      double mean = groups.mean(group);
      int n = groups.size(group);
      Optional<ConfidenceLimits> limits = Optional.empty();
      if (n > 1) {
        double reach =
            UpperTail.tExceededWith(subject.level() / 2, n - 1)
                * Math.sqrt(groups.variance(group) / n);
        limits = Optional.of(new ConfidenceLimits(mean - reach, mean + reach));
      }
      var known = OptionalDouble.of(mean);
      rows.add(new TreatmentMean(groups.labels().get(group), n, known, known, limits, known, ""));
    }
    return compared(rows, pairs, sources);
  }

  private TreatmentMeans compared(
      List<TreatmentMean> rows, Supplier<RankPairs> supplier, List<Reference> sources) {
    try {
      var found = supplier.get();
      sources.add(found.source());
      var marks = marks(rows, found);
      var words = new ArrayList<String>();
      words.add(found.title());
      if (found.adjustment() != PValueAdjustment.NONE) {
        words.add("adjusted after " + name(found.adjustment().name()));
      }
      return new TreatmentMeans(
          titles,
          rows.stream().map(row -> row.marked(marks.get(row.label()))).toList(),
          String.join(", ", words),
          pairs(found),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          List.of());
    } catch (InputProblem problem) {
      return TreatmentMeans.uncompared(
          titles,
          rows,
          List.of("No comparisons: " + problem.read() + ". " + MeanMaker.sentence(problem.why())));
    }
  }

  private static String name(String constant) {
    var words = new ArrayList<String>();
    for (String word : constant.split("_", -1)) {
      words.add(word.charAt(0) + word.substring(1).toLowerCase(Locale.ROOT));
    }
    return String.join(" and ", words);
  }

  private List<ComparedDifference> pairs(RankPairs found) {
    return found.pairs().stream()
        .map(
            pair ->
                new ComparedDifference(
                    pair.second(),
                    pair.first(),
                    OptionalDouble.of(pair.difference()),
                    OptionalDouble.empty(),
                    pair.adjustedPValue(),
                    pair.adjustedPValue() <= subject.level()))
        .toList();
  }

  private Map<String, String> marks(List<TreatmentMean> rows, RankPairs found) {
    var letters = found.letters(subject.level(), choices.letters());
    var marks = new HashMap<String, String>();
    rows.forEach(row -> marks.put(row.label(), letters.letters(row.label())));
    return marks;
  }
}
