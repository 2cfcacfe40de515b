package agro.trial.analysis;

import agro.report.InputProblem;
import agro.stats.UpperTail;
import agro.stats.glm.EstimateState;
import agro.stats.glm.LinkFunction;
import agro.stats.glm.ResponseMean;
import agro.stats.glm.ResponseMeans;
import agro.stats.multiple.CompactLetters;
import agro.stats.multiple.ComparisonMethod;
import agro.stats.multiple.PValueAdjustment;
import agro.stats.multiple.StudentisedRange;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * Comparisons where a treatment's plots are all zero or all full, so that its mean has no finite
 * place on the scale of the model: signed roots of likelihood ratios stand in for t.
 */
final class RunawayPairs {

  private static final double ROOT_TWO = Math.sqrt(2);

  private record Pair(ResponseMean first, ResponseMean second, double size, double rawP) {}

  private final AnalysisSubject subject;
  private final AnalysisChoices choices;
  private final ResponseMeans means;
  private final Map<String, String> words;
  private final boolean control;
  private final List<ResponseMean> usable;
  private final ComparisonMethod method;
  private final List<ComparedDifference> pairs;

  RunawayPairs(
      AnalysisSubject subject,
      AnalysisChoices choices,
      ResponseMeans means,
      Map<String, String> words,
      boolean control) {
    this.subject = subject;
    this.choices = choices;
    this.means = means;
    this.words = words;
    this.control = control;
    this.usable =
        means.means().stream()
            .filter(mean -> mean.predictor().isFinite() || runsAway(mean.predictor().state()))
            .toList();
    this.method = chosen();
    this.pairs = decide(tests());
  }

  static boolean runsAway(EstimateState state) {
    return state == EstimateState.PLUS_INFINITY || state == EstimateState.MINUS_INFINITY;
  }

  static boolean hasRatio(LinkFunction link) {
    return link == LinkFunction.LOG || link == LinkFunction.LOGIT;
  }

  /** Dunnett's distribution has no place for a mean without an error; Holm's holds anyway. */
  private ComparisonMethod chosen() {
    var usual = control ? ComparisonMethod.HOLM : ComparisonMethod.TUKEY;
    var wanted = choices.method().orElse(usual);
    return wanted == ComparisonMethod.DUNNETT ? usual : wanted;
  }

  private String word(ResponseMean mean) {
    return words.getOrDefault(mean.label(), mean.label());
  }

  private List<Pair> tests() {
    var tests = new ArrayList<Pair>();
    for (int second = 0; second < usable.size(); second++) {
      for (int first = second + 1; first < usable.size(); first++) {
        add(tests, usable.get(first), usable.get(second));
      }
    }
    if (tests.isEmpty()) {
      throw InputProblem.of("fewer than two means that the plots tell")
          .expected("at least two")
          .because("a difference needs two")
          .mend("look at the remarks on the fit");
    }
    return tests;
  }

  private void add(List<Pair> tests, ResponseMean first, ResponseMean second) {
    if (control) {
      var name = subject.control().orElseThrow();
      if (word(first).equals(name)) {
        test(tests, second, first);
      } else if (word(second).equals(name)) {
        test(tests, first, second);
      }
      return;
    }
    test(tests, first, second);
  }

  private void test(List<Pair> tests, ResponseMean first, ResponseMean second) {
    boolean finite = first.predictor().isFinite() && second.predictor().isFinite();
    double size;
    if (finite) {
      var compared = means.compared();
      int i = compared.labels().indexOf(first.label());
      int j = compared.labels().indexOf(second.label());
      size =
          Math.abs(compared.mean(i) - compared.mean(j))
              / Math.sqrt(compared.differenceVariance(i, j));
    } else {
      var ratio = means.likelihoodRatio(first.label(), second.label());
      size = Math.sqrt(Math.max(0, ratio.statistic()));
    }
    double df = means.fit().degreesOfFreedomOfTests();
    double p = 2 * UpperTail.t(size, df);
    tests.add(new Pair(first, second, size, p));
  }

  private List<ComparedDifference> decide(List<Pair> tests) {
    double[] chances = tests.stream().mapToDouble(Pair::rawP).toArray();
    double[] adjusted;
    if (method == ComparisonMethod.TUKEY) {
      var range = StudentisedRange.of(usable.size(), means.fit().degreesOfFreedomOfTests());
      adjusted = tests.stream().mapToDouble(pair -> range.above(ROOT_TWO * pair.size())).toArray();
    } else {
      adjusted = method.adjustment().orElse(PValueAdjustment.HOLM).adjust(chances);
    }
    boolean ratio = hasRatio(means.fit().model().link());
    var list = new ArrayList<ComparedDifference>();
    for (int i = 0; i < adjusted.length; i++) {
      var first = tests.get(i).first();
      var second = tests.get(i).second();
      boolean finite = first.predictor().isFinite() && second.predictor().isFinite();
      double difference = first.predictor().estimate() - second.predictor().estimate();
      list.add(
          new ComparedDifference(
              word(first),
              word(second),
              finite ? OptionalDouble.of(difference) : OptionalDouble.empty(),
              finite && ratio ? OptionalDouble.of(Math.exp(difference)) : OptionalDouble.empty(),
              adjusted[i],
              adjusted[i] <= subject.level()));
    }
    return List.copyOf(list);
  }

  String method() {
    return method.words();
  }

  List<ComparedDifference> pairs() {
    return pairs;
  }

  Map<String, String> marks() {
    var marks = new LinkedHashMap<String, String>();
    if (control) {
      pairs.forEach(pair -> marks.put(pair.first(), pair.isDifferent() ? "*" : ""));
      return marks;
    }
    var labels = usable.stream().map(this::word).toList();
    boolean[][] different = new boolean[labels.size()][labels.size()];
    for (var pair : pairs) {
      int first = labels.indexOf(pair.first());
      int second = labels.indexOf(pair.second());
      different[first][second] = pair.isDifferent();
      different[second][first] = pair.isDifferent();
    }
    double[] heights = usable.stream().mapToDouble(ResponseMean::mean).toArray();
    var letters = CompactLetters.of(labels, heights, different, choices.letters());
    letters.labels().forEach(label -> marks.put(label, letters.letters(label)));
    return marks;
  }
}
