package agro.trial.analysis;

import agro.report.InputProblem;
import agro.stats.ConfidenceLimits;
import agro.stats.glm.EstimateState;
import agro.stats.glm.ResponseMean;
import agro.stats.glm.ResponseMeans;
import agro.stats.linear.Factor;
import agro.stats.multiple.ComparedPair;
import agro.stats.multiple.MeanComparisons;
import agro.stats.multiple.SignificantDifference;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Makes tables of means of generalised linear models. */
final class CountMeans {

  private final AnalysisSubject subject;
  private final AnalysisChoices choices;
  private final TrialLines lines;
  private final double[] values;

  CountMeans(AnalysisSubject subject, AnalysisChoices choices, TrialLines lines, double[] values) {
    this.subject = subject;
    this.choices = choices;
    this.lines = lines;
    this.values = values;
  }

  TreatmentMeans make(List<Factor> factors, ResponseMeans means) {
    var words = lines.wordsOf(factors);
    var notes = new ArrayList<String>();
    var rows = new ArrayList<TreatmentMean>();
    for (var mean : means.means()) {
      rows.add(row(factors, mean, words.getOrDefault(mean.label(), mean.label())));
    }
    var titles = factors.stream().map(Factor::name).toList();
    boolean control = subject.control().isPresent() && factors.size() == lines.factors().size();
    try {
      boolean runaway =
          means.means().stream().anyMatch(mean -> RunawayPairs.runsAway(mean.predictor().state()));
      if (runaway) {
        var pairs = new RunawayPairs(subject, choices, means, words, control);
        notes.add(
            "A treatment whose plots are all zero or all full has no finite mean on the scale of"
                + " the model; its comparisons are likelihood ratio tests.");
        return table(titles, rows, pairs.method(), pairs.pairs(), pairs.marks(), notes);
      }
      return compared(titles, rows, means, words, control, notes);
    } catch (InputProblem problem) {
      notes.add("No comparisons: " + problem.read() + ". " + MeanMaker.sentence(problem.why()));
      return TreatmentMeans.uncompared(titles, rows, notes);
    }
  }

  private TreatmentMeans compared(
      List<String> titles,
      List<TreatmentMean> rows,
      ResponseMeans means,
      Map<String, String> words,
      boolean control,
      List<String> notes) {
    var finite = MeanMaker.renamed(means.compared(), words);
    var comparisons = MeanMaker.compare(subject, choices, finite, control);
    var errors =
        comparisons.pairs().stream().mapToDouble(ComparedPair::standardError).summaryStatistics();
    boolean ratio = RunawayPairs.hasRatio(means.fit().model().link());
    return new TreatmentMeans(
        titles,
        marked(rows, MeanMaker.marks(choices, comparisons, control)),
        comparisons.method().words(),
        pairs(comparisons, ratio),
        Optional.of(comparisons),
        Optional.of(new SignificantDifference(errors.getMin(), errors.getMax())),
        comparisons.smallestSignificantDifference(),
        Optional.empty(),
        notes);
  }

  private static List<TreatmentMean> marked(List<TreatmentMean> rows, Map<String, String> marks) {
    return rows.stream().map(row -> row.marked(marks.getOrDefault(row.label(), ""))).toList();
  }

  private static TreatmentMeans table(
      List<String> titles,
      List<TreatmentMean> rows,
      String method,
      List<ComparedDifference> pairs,
      Map<String, String> marks,
      List<String> notes) {
    return new TreatmentMeans(
        titles,
        marked(rows, marks),
        method,
        pairs,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        notes);
  }

  private static List<ComparedDifference> pairs(MeanComparisons comparisons, boolean ratio) {
    return comparisons.pairs().stream()
        .map(
            pair ->
                new ComparedDifference(
                    pair.first(),
                    pair.second(),
                    OptionalDouble.of(pair.difference()),
                    ratio ? OptionalDouble.of(Math.exp(pair.difference())) : OptionalDouble.empty(),
                    pair.adjustedP(),
                    pair.isDifferent()))
        .toList();
  }

  private TreatmentMean row(List<Factor> factors, ResponseMean mean, String name) {
    double unit = subject.isShare() ? 100 : 1;
    boolean known = Double.isFinite(mean.mean());
    boolean determined =
        mean.predictor().state() != EstimateState.NOT_ESTIMABLE
            && mean.predictor().state() != EstimateState.AT_EDGE
            && mean.predictor().state() != EstimateState.UNDETERMINED;
    Optional<ConfidenceLimits> limits =
        determined
            ? Optional.of(
                new ConfidenceLimits(unit * mean.limits().low(), unit * mean.limits().high()))
            : Optional.empty();
    var plots = new HashMap<String, List<Double>>();
    for (int i = 0; i < values.length; i++) {
      int plot = i;
      var label = String.join(":", factors.stream().map(factor -> factor.label(plot)).toList());
      plots.computeIfAbsent(label, key -> new ArrayList<>()).add(values[i]);
    }
    var own = plots.getOrDefault(mean.label(), List.of());
    return new TreatmentMean(
        name,
        own.size(),
        mean.predictor().isFinite()
            ? OptionalDouble.of(mean.predictor().estimate())
            : OptionalDouble.empty(),
        known ? OptionalDouble.of(unit * mean.mean()) : OptionalDouble.empty(),
        limits,
        own.stream().mapToDouble(Double::doubleValue).average(),
        "");
  }
}
