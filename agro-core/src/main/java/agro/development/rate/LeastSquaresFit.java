package agro.development.rate;

import agro.report.InputProblem;
import agro.stats.LeastSquaresSolution;
import java.util.ArrayList;
import java.util.List;

/** The steps of a least-squares fit of rates. */
final class LeastSquaresFit {

  private LeastSquaresFit() {}

  static RateFit of(RateFitting fitting, RearingData data) {
    requireDurations(data);
    var points = fitting.points(data);
    fitting.require(data, points);
    var search = new RateSearch(fitting, points);
    var best = search.best(fitting.seed(), HeldStarts.of(fitting, points));
    double[] q = best.parameters();
    double[] p = search.equation.toParameters(q, fitting.constants());
    var curve = RateCurve.of(fitting.model(), fitting.constants(), p);
    var parameters = new FittedParameters(fitting, search.points);
    var conditioning = parameters.conditioning(p);
    int freedom = points.size() - fitting.freeParameters();
    double deviation = freedom > 0 ? Math.sqrt(best.sumOfSquares() / freedom) : Double.NaN;
    double[] errors = parameters.standardErrors(p, conditioning, deviation);
    var found = result(search, best, errors);
    var judged = new FitJudgement(fitting, data, points, curve);
    return new RateFit(
        fitting,
        data,
        points,
        curve,
        found,
        judged.remarks(best::isAtBound, best.isConverged(), conditioning, parameters.free()));
  }

  private static RateFit.SearchResult result(
      RateSearch search, LeastSquaresSolution best, double[] errors) {
    return new RateFit.SearchResult(
        boxed(best.parameters()),
        boxed(errors),
        best.sumOfSquares(),
        Double.NaN,
        Double.NaN,
        search.points.observations(),
        search.iterations,
        search.followed,
        search.atBest,
        best.isConverged());
  }

  static List<Double> boxed(double[] values) {
    var list = new ArrayList<Double>(values.length);
    for (double value : values) {
      list.add(value);
    }
    return list;
  }

  private static void requireDurations(RearingData data) {
    var lacking = data.cabinetsWithoutDuration();
    if (!lacking.isEmpty()) {
      throw InputProblem.of(
              "not one animal was seen to develop in "
                  + String.join(", ", lacking.subList(0, Math.min(5, lacking.size()))))
          .expected("a duration in each cabinet, or the statement that nothing develops there")
          .because(
              "animals that were still alive or died tell that development takes longer than they"
                  + " were watched, which no mean of durations can hold")
          .mend(
              "fit by the likelihood of durations (byDurations), or, where development is"
                  + " impossible, use countingDeathsAsNoDevelopment");
    }
  }
}
