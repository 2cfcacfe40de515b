package agro.trial.analysis;

import agro.report.InputProblem;
import agro.stats.ConfidenceLimits;
import agro.stats.linear.Factor;
import agro.stats.multiple.ComparedMeans;
import agro.stats.multiple.ComparedPair;
import agro.stats.multiple.ComparisonMethod;
import agro.stats.multiple.ControlComparison;
import agro.stats.multiple.MeanComparisons;
import agro.stats.multiple.PairwiseComparison;
import agro.stats.multiple.SignificantDifference;
import agro.stats.power.DifferencePower;
import agro.stats.power.TestSides;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Makes tables of means of the normal route: estimates, limits, comparisons and letters. */
final class MeanMaker {

  /** Chance with which a difference shall be found that counts as one the trial could show. */
  static final double POWER = 0.8;

  private final AnalysisSubject subject;
  private final AnalysisChoices choices;
  private final TrialLines lines;
  private final double[] values;

  MeanMaker(AnalysisSubject subject, AnalysisChoices choices, TrialLines lines, double[] values) {
    this.subject = subject;
    this.choices = choices;
    this.lines = lines;
    this.values = values;
  }

  TreatmentMeans make(List<Factor> factors, MeanSource source) {
    var words = lines.wordsOf(factors);
    var names = source.labels().stream().map(label -> words.getOrDefault(label, label)).toList();
    var notes = new ArrayList<String>();
    var rows = new ArrayList<TreatmentMean>();
    for (int i = 0; i < names.size(); i++) {
      rows.add(row(names.get(i), i, factors, source, notes));
    }
    var titles = factors.stream().map(Factor::name).toList();
    var untold = rows.stream().filter(row -> row.analysed().isEmpty()).toList();
    if (untold.size() == rows.size()) {
      return TreatmentMeans.uncompared(
          titles,
          rows,
          List.of("The plots tell none of these means apart from blocks and other effects."));
    }
    if (!untold.isEmpty()) {
      notes.add(
          "The plots do not tell some means apart from other effects: "
              + String.join("; ", untold.stream().map(TreatmentMean::label).toList())
              + ".");
    }
    try {
      var compared = renamed(source.compared(), words);
      var comparisons = compare(compared, factors.size() == lines.factors().size());
      return compared(titles, rows, comparisons, compared, notes);
    } catch (InputProblem problem) {
      notes.add("No comparisons: " + problem.read() + ". " + sentence(problem.why()));
      return TreatmentMeans.uncompared(titles, rows, distinct(notes));
    }
  }

  static String sentence(String words) {
    return words.isEmpty()
        ? words
        : Character.toUpperCase(words.charAt(0))
            + words.substring(1)
            + (words.endsWith(".") ? "" : ".");
  }

  private static List<String> distinct(List<String> notes) {
    return notes.stream().distinct().toList();
  }

  private TreatmentMean row(
      String name, int place, List<Factor> factors, MeanSource source, List<String> notes) {
    var estimate = source.estimate(place);
    Optional<ConfidenceLimits> limits = Optional.empty();
    if (estimate.isPresent()) {
      try {
        limits = Optional.of(source.limits(place, 1 - subject.level()));
      } catch (InputProblem problem) {
        notes.add("No limits: " + problem.read() + ".");
      }
    }
    var transformation = subject.transformation();
    return new TreatmentMean(
        name,
        count(factors, source.labels().get(place)),
        estimate,
        estimate.isPresent()
            ? OptionalDouble.of(transformation.back(estimate.getAsDouble()))
            : estimate,
        limits.map(transformation::back),
        arithmetic(factors, source.labels().get(place)),
        "");
  }

  private boolean isIn(int plot, List<Factor> factors, String label) {
    return String.join(":", factors.stream().map(factor -> factor.label(plot)).toList())
        .equals(label);
  }

  private int count(List<Factor> factors, String label) {
    int count = 0;
    for (int i = 0; i < values.length; i++) {
      count += isIn(i, factors, label) ? 1 : 0;
    }
    return count;
  }

  private OptionalDouble arithmetic(List<Factor> factors, String label) {
    double sum = 0;
    int count = 0;
    for (int i = 0; i < values.length; i++) {
      if (isIn(i, factors, label)) {
        sum += values[i];
        count++;
      }
    }
    return count == 0 ? OptionalDouble.empty() : OptionalDouble.of(sum / count);
  }

  static ComparedMeans renamed(ComparedMeans means, Map<String, String> words) {
    int size = means.size();
    double[][] variances = new double[size][size];
    for (int i = 0; i < size; i++) {
      for (int j = 0; j < size; j++) {
        variances[i][j] = i == j ? 0 : means.differenceVariance(i, j);
      }
    }
    return ComparedMeans.ofDifferences(
        means.labels().stream().map(label -> words.getOrDefault(label, label)).toList(),
        means.means(),
        variances,
        means.degreesOfFreedom());
  }

  /** With a control only the means of the treatments are compared with it. */
  private MeanComparisons compare(ComparedMeans means, boolean treatments) {
    return compare(subject, choices, means, treatments);
  }

  static MeanComparisons compare(
      AnalysisSubject subject, AnalysisChoices choices, ComparedMeans means, boolean treatments) {
    if (subject.control().isPresent() && treatments) {
      return ControlComparison.of(subject.control().get())
          .with(choices.method().orElse(ComparisonMethod.DUNNETT))
          .atLevel(subject.level())
          .compare(means);
    }
    var method =
        choices.method().filter(m -> m != ComparisonMethod.DUNNETT).orElse(ComparisonMethod.TUKEY);
    return PairwiseComparison.withDefaults().with(method).atLevel(subject.level()).compare(means);
  }

  static Map<String, String> marks(
      AnalysisChoices choices, MeanComparisons comparisons, boolean withControl) {
    var marks = new LinkedHashMap<String, String>();
    if (withControl) {
      comparisons.pairs().forEach(pair -> marks.put(pair.first(), pair.isDifferent() ? "*" : ""));
    } else {
      var letters = comparisons.letters(choices.letters());
      letters.labels().forEach(label -> marks.put(label, letters.letters(label)));
    }
    return marks;
  }

  private TreatmentMeans compared(
      List<String> titles,
      List<TreatmentMean> rows,
      MeanComparisons comparisons,
      ComparedMeans means,
      List<String> notes) {
    boolean control = subject.control().isPresent() && titles.size() == lines.factors().size();
    var marks = marks(choices, comparisons, control);
    var errors =
        comparisons.pairs().stream().mapToDouble(ComparedPair::standardError).summaryStatistics();
    var error = new SignificantDifference(errors.getMin(), errors.getMax());
    return new TreatmentMeans(
        titles,
        rows.stream().map(row -> row.marked(marks.getOrDefault(row.label(), ""))).toList(),
        comparisons.method().words(),
        pairs(comparisons),
        Optional.of(comparisons),
        Optional.of(error),
        comparisons.smallestSignificantDifference(),
        Optional.of(detectable(error, means.degreesOfFreedom())),
        distinct(notes));
  }

  private List<ComparedDifference> pairs(MeanComparisons comparisons) {
    boolean logarithm = subject.transformation() instanceof Logarithm log && log.added() == 0;
    return comparisons.pairs().stream()
        .map(
            pair ->
                new ComparedDifference(
                    pair.first(),
                    pair.second(),
                    OptionalDouble.of(pair.difference()),
                    logarithm
                        ? OptionalDouble.of(subject.transformation().back(pair.difference()))
                        : OptionalDouble.empty(),
                    pair.adjustedP(),
                    pair.isDifferent()))
        .toList();
  }

  private SignificantDifference detectable(SignificantDifference error, double df) {
    return new SignificantDifference(found(error.smallest(), df), found(error.largest(), df));
  }

  private double found(double error, double df) {
    return DifferencePower.smallestDifference(error, df, subject.level(), TestSides.TWO, POWER);
  }
}
