package agro.development.rate;

import agro.report.InputProblem;
import agro.stats.LinearFit;
import agro.stats.ReducedMajorAxis;
import agro.units.Numbers;
import agro.working.Presentable;
import agro.working.Presentation;
import agro.working.Working;
import java.util.List;

/**
 * Lower threshold and thermal constant of a straight line through a rearing, with their standard
 * errors.
 *
 * <p>By least squares r = a + bT: LT = -a/b, K = 1/b, SE(K) = SE(b)/b², SE(LT) = (r̄/b) √(s²/(N
 * r̄²) + (SE(b)/b)²) after Campbell and others 1974. By the reduced major axis DT = K + LT D: LT is
 * the slope, its standard error |LT| √((1 - r²)/(N - 2)).
 *
 * @param subject what was reared
 * @param method how the line was laid
 * @param celsius temperatures of the means that were used
 * @param days their durations, d
 * @param lowerCelsius lower threshold LT, °C
 * @param degreeDaysC thermal constant K, °C·d
 * @param lowerStandardError standard error of LT, °C; NaN for two points
 * @param degreeDaysStandardError standard error of K, °C·d; NaN for two points
 * @param correlation correlation of what was regressed
 */
public record ThermalLine(
    String subject,
    LineMethod method,
    List<Double> celsius,
    List<Double> days,
    double lowerCelsius,
    double degreeDaysC,
    double lowerStandardError,
    double degreeDaysStandardError,
    double correlation)
    implements Presentable {

  /** Copies the lists. */
  public ThermalLine {
    celsius = List.copyOf(celsius);
    days = List.copyOf(days);
  }

  /**
   * The line through all means with development.
   *
   * @param data the rearing
   * @param method how the line is laid
   * @return threshold and constant
   * @throws InputProblem if fewer than two temperatures are left, or development is not faster
   *     where it is warmer
   */
  public static ThermalLine of(RearingData data, LineMethod method) {
    return of(data, method, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);
  }

  /**
   * The line through the means between two temperatures.
   *
   * @param data the rearing
   * @param method how the line is laid
   * @param low lowest temperature that is used, °C
   * @param high highest temperature that is used, °C
   * @return threshold and constant
   * @throws InputProblem if fewer than two temperatures are left, or development is not faster
   *     where it is warmer
   */
  public static ThermalLine of(RearingData data, LineMethod method, double low, double high) {
    var fitting = RateFitting.of(RateModel.LINEAR).betweenCelsius(low, high);
    var points = fitting.points(data);
    fitting.require(data, points);
    return method == LineMethod.LEAST_SQUARES
        ? ofPoints(data.subject(), points)
        : axis(data.subject(), points);
  }

  static ThermalLine ofPoints(String subject, List<RatePoint> points) {
    var line =
        LinearFit.weighted(
            points.stream().mapToDouble(RatePoint::celsius).toArray(),
            points.stream().mapToDouble(RatePoint::rate).toArray(),
            points.stream().mapToDouble(RatePoint::weight).toArray());
    requireRise(subject, line.slope());
    double b = line.slope();
    double relative = line.slopeStandardError() / b;
    double s = line.residualDeviation();
    double mean = line.meanY();
    double lowerError =
        mean / b * Math.sqrt(s * s / (line.totalWeight() * mean * mean) + relative * relative);
    return new ThermalLine(
        subject,
        LineMethod.LEAST_SQUARES,
        points.stream().map(RatePoint::celsius).toList(),
        points.stream().map(point -> 1 / point.rate()).toList(),
        -line.intercept() / b,
        1 / b,
        lowerError,
        relative / b,
        Math.sqrt(line.rSquared()));
  }

  private static ThermalLine axis(String subject, List<RatePoint> points) {
    double[] days = points.stream().mapToDouble(point -> 1 / point.rate()).toArray();
    double[] products =
        points.stream().mapToDouble(point -> point.celsius() / point.rate()).toArray();
    var axis = ReducedMajorAxis.of(days, products);
    var line = LinearFit.of(days, products);
    requireRise(subject, axis.intercept());
    return new ThermalLine(
        subject,
        LineMethod.REDUCED_MAJOR_AXIS,
        points.stream().map(RatePoint::celsius).toList(),
        points.stream().map(point -> 1 / point.rate()).toList(),
        axis.slope(),
        axis.intercept(),
        axis.slopeStandardError(),
        line.interceptStandardError(),
        axis.correlation());
  }

  private static void requireRise(String subject, double value) {
    if (!(value > 0)) {
      throw InputProblem.of("in \"" + subject + "\" development is not faster where it is warmer")
          .expected("shorter durations at higher temperatures")
          .because("threshold and thermal constant come from the rise of the rate")
          .mend(
              "look whether temperatures and durations are swapped, or fit the line below the"
                  + " optimum alone");
    }
  }

  /**
   * The line as a rate curve.
   *
   * @return a curve of the linear model
   */
  public RateCurve curve() {
    return RateCurve.linear(lowerCelsius, degreeDaysC);
  }

  /**
   * Days of development at a constant temperature.
   *
   * @param temperature constant temperature, °C
   * @return K/(T - LT); infinite at and below the threshold
   */
  public double daysAt(double temperature) {
    return curve().days(temperature);
  }

  /**
   * The steps from the durations to threshold and constant.
   *
   * @return the working
   */
  public Working working() {
    return ThermalLineWorking.of(this);
  }

  @Override
  public Presentation presentation() {
    return RatePages.line(this);
  }

  @Override
  public String toString() {
    return subject
        + ": LT "
        + Numbers.fixed(lowerCelsius, 2)
        + " °C, K "
        + Numbers.fixed(degreeDaysC, 1)
        + " °C·d";
  }
}
