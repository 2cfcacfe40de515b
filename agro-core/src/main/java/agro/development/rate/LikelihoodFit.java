package agro.development.rate;

import agro.report.InputProblem;
import agro.stats.DampedNewton;
import agro.stats.FoundMinimum;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** The steps of a fit by the likelihood of single durations. */
final class LikelihoodFit {

  private static final double LEAST_LOG_DISPERSION = -8;
  private static final double MOST_LOG_DISPERSION = 2;
  private static final double USUAL_LOG_DISPERSION = Math.log(0.1);

  private final RateFitting fitting;
  private final RateSearch search;

  private LikelihoodFit(RateFitting fitting, List<RatePoint> points) {
    this.fitting = fitting;
    search = new RateSearch(fitting, points);
  }

  static RateFit of(RateFitting fitting, RearingData data) {
    var animals = used(fitting, data);
    var points = fitting.points(data);
    requireAnimals(fitting, data, animals, points);
    var steps = new LikelihoodFit(fitting, points);
    int k = steps.search.low.length;
    var start = steps.search.best(fitting.seed(), List.of());
    var best = steps.best(new DurationLikelihood(fitting, animals), start.parameters());
    double[] q = Arrays.copyOf(best.parameters(), k);
    double[] p = steps.search.equation.toParameters(q, fitting.constants());
    var curve = RateCurve.of(fitting.model(), fitting.constants(), p);
    var parameters = new FittedParameters(fitting, steps.search.points);
    var conditioning = parameters.conditioning(p);
    var found =
        new RateFit.SearchResult(
            LeastSquaresFit.boxed(q),
            LeastSquaresFit.boxed(new LikelihoodErrors(fitting, animals).standardErrors(p, best)),
            steps.search.points.sumOfSquares(q),
            Math.exp(best.parameters()[k]),
            best.value(),
            animals.stream().mapToInt(RearedAnimals::animals).sum(),
            best.iterations(),
            steps.search.followed,
            steps.search.atBest,
            best.isConverged());
    var judged = new FitJudgement(fitting, data, points, curve);
    return new RateFit(
        fitting,
        data,
        points,
        curve,
        found,
        judged.remarks(best::isAtBound, best.isConverged(), conditioning, parameters.free()));
  }

  private static void requireAnimals(
      RateFitting fitting, RearingData data, List<RearedAnimals> animals, List<RatePoint> points) {
    if (animals.isEmpty()) {
      throw InputProblem.of("the rearing \"" + data.subject() + "\" holds means alone")
          .expected("records of single animals")
          .because("the likelihood is that of single durations")
          .mend("give the records, or fit the means by least squares");
    }
    if (points.stream().noneMatch(point -> point.rate() > 0)) {
      throw InputProblem.of(
              "not one animal of \"" + data.subject() + "\" was seen to develop, in no cabinet")
          .expected("animals that developed, at several temperatures")
          .because("records that all end before development tell only that it takes longer")
          .mend("watch the animals for longer, or add temperatures at which they develop");
    }
    fitting.require(data, points);
  }

  /** The records that are used, those of one temperature together. */
  static List<RearedAnimals> used(RateFitting fitting, RearingData data) {
    var used = new ArrayList<RearedAnimals>();
    for (var one : data.animals()) {
      if (fitting.uses(one.celsius(), 1)) {
        used.add(one);
      }
    }
    used.sort(java.util.Comparator.comparingDouble(RearedAnimals::celsius));
    return used;
  }

  private FoundMinimum best(DurationLikelihood likelihood, double[] start) {
    FoundMinimum best = null;
    for (double shift : new double[] {0, 0.7, -0.7}) {
      var found =
          newton(fitting, search).minimise(likelihood, with(start, USUAL_LOG_DISPERSION + shift));
      // A second run from the end takes fresh curvature and ends what damping has cut short.
      found = newton(fitting, search).minimise(likelihood, found.parameters());
      if (best == null || found.value() < best.value()) {
        best = found;
      }
    }
    return best;
  }

  static double[] with(double[] q, double logDispersion) {
    double[] all = Arrays.copyOf(q, q.length + 1);
    all[q.length] = logDispersion;
    return all;
  }

  static DampedNewton newton(RateFitting fitting, RateSearch search) {
    int k = search.low.length;
    double[] scale = new double[k + 1];
    for (int j = 0; j < k; j++) {
      double range = search.box.startHigh[j] - search.box.startLow[j];
      scale[j] = Math.max(1e-12, 0.1 * range);
    }
    scale[k] = 1;
    return DampedNewton.within(
        with(search.low, LEAST_LOG_DISPERSION), with(search.high, MOST_LOG_DISPERSION), scale);
  }
}
