package agro.development.rate;

import agro.report.Progress;
import agro.stats.InformationCriteria;
import agro.working.Presentable;
import agro.working.Presentation;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/** A rate model fitted to a rearing: the curve, what it costs, and what to know before using it. */
public final class RateFit implements Presentable {

  /** Degrees of freedom below which a fit says nothing about its own error. */
  static final int LEAST_FREEDOM = 2;

  private final RateFitting fitting;
  private final RearingData data;
  private final List<RatePoint> points;
  private final RateCurve curve;
  private final SearchResult found;
  private final List<RateRemark> remarks;

  /**
   * What the search found.
   *
   * @param search coordinates of the search at the optimum
   * @param standardErrors of the parameters, then of the derived points
   * @param sumOfSquares weighted sum of squared residuals of the rates
   * @param dispersion scatter of single durations, NaN for least squares
   * @param minusLogLikelihood of the durations, NaN for least squares
   * @param observations rates, or animals for a likelihood
   * @param iterations steps of the search in all
   * @param followed starts that were followed downhill
   * @param atBest those of them that ended at the best optimum
   * @param converged whether the best one converged
   */
  record SearchResult(
      List<Double> search,
      List<Double> standardErrors,
      double sumOfSquares,
      double dispersion,
      double minusLogLikelihood,
      int observations,
      int iterations,
      int followed,
      int atBest,
      boolean converged) {

    double[] coordinates() {
      return search.stream().mapToDouble(Double::doubleValue).toArray();
    }
  }

  RateFit(
      RateFitting fitting,
      RearingData data,
      List<RatePoint> points,
      RateCurve curve,
      SearchResult found,
      List<RateRemark> remarks) {
    this.fitting = Objects.requireNonNull(fitting, "fitting");
    this.data = Objects.requireNonNull(data, "data");
    this.points = List.copyOf(points);
    this.curve = Objects.requireNonNull(curve, "curve");
    this.found = Objects.requireNonNull(found, "found");
    this.remarks = List.copyOf(remarks);
  }

  /**
   * How the model was fitted.
   *
   * @return the fitting
   */
  public RateFitting fitting() {
    return fitting;
  }

  /**
   * The rearing.
   *
   * @return the data
   */
  public RearingData data() {
    return data;
  }

  /**
   * The rates that were fitted.
   *
   * @return one for each cabinet that was used
   */
  public List<RatePoint> points() {
    return points;
  }

  /**
   * The fitted curve.
   *
   * @return the curve with unrounded parameters
   */
  public RateCurve curve() {
    return curve;
  }

  SearchResult found() {
    return found;
  }

  /**
   * What to know before using the fit.
   *
   * @return sentences without full stops, possibly none
   */
  public List<RateRemark> remarks() {
    return remarks;
  }

  /**
   * Whether a remark of one kind was made.
   *
   * @param kind the kind
   * @return true if so
   */
  public boolean hasRemark(RateRemark.Kind kind) {
    return remarks.stream().anyMatch(remark -> remark.kind() == kind);
  }

  /**
   * Weighted sum of squared differences of fitted and observed rates.
   *
   * @return the sum
   */
  public double sumOfSquares() {
    return found.sumOfSquares();
  }

  /**
   * Number of observations: rates, or animals for a likelihood of durations.
   *
   * @return n
   */
  public int observations() {
    return found.observations();
  }

  /**
   * Number of parameters that were estimated, without the scatter.
   *
   * @return p
   */
  public int freeParameters() {
    return fitting.freeParameters();
  }

  /**
   * Rates that are left over to judge the fit by.
   *
   * @return number of rates less parameters
   */
  public int degreesOfFreedom() {
    return points.size() - freeParameters();
  }

  /**
   * Whether so few rates are left over that there is nothing to judge the fit by. There are no
   * standard errors and intervals then.
   *
   * @return true when fewer than two are left
   */
  public boolean isSaturated() {
    return degreesOfFreedom() < LEAST_FREEDOM;
  }

  /**
   * Whether the search ended at an optimum.
   *
   * @return false when it ran out of steps
   */
  public boolean isConverged() {
    return found.converged();
  }

  /**
   * Standard deviation of the residuals, in units of the weighted rates.
   *
   * @return NaN for a saturated fit
   */
  public double residualDeviation() {
    return isSaturated() ? Double.NaN : Math.sqrt(sumOfSquares() / degreesOfFreedom());
  }

  /**
   * Scatter of single durations.
   *
   * @return the dispersion of the distribution, or empty for least squares
   */
  public OptionalDouble dispersion() {
    return Double.isNaN(found.dispersion())
        ? OptionalDouble.empty()
        : OptionalDouble.of(found.dispersion());
  }

  /**
   * Log likelihood of the durations.
   *
   * @return empty for least squares
   */
  public OptionalDouble logLikelihood() {
    return Double.isNaN(found.minusLogLikelihood())
        ? OptionalDouble.empty()
        : OptionalDouble.of(-found.minusLogLikelihood());
  }

  /**
   * Standard error of a parameter by the curvature at the optimum.
   *
   * @param symbol symbol of the parameter
   * @return the error, 0 for a fixed parameter; empty for a saturated fit or where there is none
   */
  public OptionalDouble standardError(String symbol) {
    return error(curve.model().place(symbol));
  }

  /**
   * Standard error of a derived point by the curvature at the optimum.
   *
   * @param point the point
   * @return the error; empty for a saturated fit or where there is none
   */
  public OptionalDouble standardError(DerivedPoint point) {
    return error(curve.model().parameters().size() + point.place());
  }

  private OptionalDouble error(int place) {
    double error = found.standardErrors().get(place);
    return isSaturated() || !Double.isFinite(error)
        ? OptionalDouble.empty()
        : OptionalDouble.of(error);
  }

  /**
   * What the fit costs in information, the scatter counted as a parameter.
   *
   * @return the criteria; comparable between fits of the same data by the same method alone
   */
  public InformationCriteria criteria() {
    return Double.isNaN(found.minusLogLikelihood())
        ? InformationCriteria.ofLeastSquares(sumOfSquares(), points.size(), freeParameters())
        : new InformationCriteria(
            2 * found.minusLogLikelihood(), observations(), freeParameters() + 1);
  }

  /**
   * Share of the squares of the rates about their mean that the curve explains.
   *
   * @return at most 1
   */
  public double rSquared() {
    double weight = points.stream().mapToDouble(RatePoint::weight).sum();
    double mean = points.stream().mapToDouble(one -> one.weight() * one.rate()).sum() / weight;
    double squares =
        points.stream()
            .mapToDouble(one -> one.weight() * (one.rate() - mean) * (one.rate() - mean))
            .sum();
    return 1 - sumOfSquares() / squares;
  }

  /**
   * Bootstrap intervals with the usual choices and 1,000 refits.
   *
   * @return intervals of parameters and derived points
   * @throws agro.report.InputProblem for a saturated fit
   */
  public RateIntervals bootstrap() {
    return bootstrap(RateBootstrap.suitedTo(this), Progress.ofThread());
  }

  /**
   * Bootstrap intervals.
   *
   * @param bootstrap what is drawn, how often and from which seed
   * @return intervals of parameters and derived points
   * @throws agro.report.InputProblem for a saturated fit, or data without what is to be drawn
   */
  public RateIntervals bootstrap(RateBootstrap bootstrap) {
    return bootstrap(bootstrap, Progress.ofThread());
  }

  /**
   * Bootstrap intervals.
   *
   * @param bootstrap what is drawn, how often and from which seed
   * @param progress hears how far the refits are, and may cancel
   * @return intervals of parameters and derived points
   * @throws agro.report.InputProblem for a saturated fit, or data without what is to be drawn
   * @throws java.util.concurrent.CancellationException when the listener cancels
   */
  public RateIntervals bootstrap(RateBootstrap bootstrap, Progress progress) {
    return bootstrap.run(this, progress);
  }

  /**
   * Profile intervals: all values with which a fit is not much worse than the best one.
   *
   * @param level chance that an interval should hold the truth, between 0 and 1
   * @return intervals of parameters and derived points
   * @throws agro.report.InputProblem for a saturated fit
   */
  public RateIntervals profile(double level) {
    return RateProfile.intervals(this, level, Progress.ofThread());
  }

  /**
   * The curve as a line with the standard errors of threshold and thermal constant.
   *
   * @return empty for other models than the linear one, and for other fits than by least squares
   *     with equal weights and nothing fixed
   */
  public Optional<ThermalLine> line() {
    return curve.model() == RateModel.LINEAR
            && fitting.distribution().isEmpty()
            && fitting.weights() == RateWeights.EQUAL
            && fitting.fixed().isEmpty()
        ? Optional.of(ThermalLine.ofPoints(data.subject(), points))
        : Optional.empty();
  }

  @Override
  public Presentation presentation() {
    return RatePages.fit(this);
  }

  @Override
  public String toString() {
    return curve + ", SSE " + sumOfSquares() + (isSaturated() ? ", saturated" : "");
  }
}
