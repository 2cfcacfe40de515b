package agro.weather.curve;

import agro.source.Bibliography;
import agro.source.Reference;

/**
 * How the temperature is taken to run through the 24 hours that begin with the day's minimum, with
 * lowest temperature Tn, highest temperature Tx and, for curves that ask for it, the next day's
 * minimum Tn2. No record of temperatures can pass to a Tn2 above Tx; such a Tn2 is held at Tx.
 */
public enum DayCurve {
  /**
   * One sine from the minimum to the maximum and back to the same minimum. See {@link SineCurve}.
   */
  SINGLE_SINE(
      "single sine",
      false,
      SineCurve::celsiusAt,
      SineCurve::areaAbove,
      SineCurve::shareAbove,
      Bibliography.BASKERVILLE_EMIN_1969),
  /**
   * Twelve hours of sine from the minimum to the maximum and twelve from there to tomorrow's
   * minimum: A(c) = ½ A(Tn, Tx; c) + ½ A(Tn2, Tx; c) with the areas of the single sine.
   */
  DOUBLE_SINE(
      "double sine",
      true,
      SineCurve::celsiusAt,
      SineCurve::areaAbove,
      SineCurve::shareAbove,
      Bibliography.ALLEN_1976),
  /** Straight lines from the minimum to the maximum and back. See {@link TriangleCurve}. */
  SINGLE_TRIANGLE(
      "single triangle",
      false,
      TriangleCurve::celsiusAt,
      TriangleCurve::areaAbove,
      TriangleCurve::shareAbove,
      Bibliography.LINDSEY_NEWMAN_1956),
  /**
   * A straight line from the minimum to the maximum in twelve hours and one from there to
   * tomorrow's minimum: the mean of the areas of two single triangles.
   */
  DOUBLE_TRIANGLE(
      "double triangle",
      true,
      TriangleCurve::celsiusAt,
      TriangleCurve::areaAbove,
      TriangleCurve::shareAbove,
      Bibliography.SEVACHERIAN_1977),
  /**
   * A sine from sunrise to sunset and a logarithmic fall to tomorrow's minimum at the next sunrise.
   * See {@link SineAndDecayCurve}.
   */
  SINE_AND_DECAY(
      "sine by day and decay by night",
      true,
      SineCurve::celsiusAt,
      SineCurve::areaAbove,
      SineCurve::shareAbove,
      Bibliography.LINVILL_1990) {
    @Override
    double height(CurveDay day, double hours) {
      return SineAndDecayCurve.celsiusAt(day, hours);
    }

    @Override
    double area(CurveDay day, double celsius) {
      return SineAndDecayCurve.areaAbove(day, celsius);
    }

    @Override
    double share(CurveDay day, double celsius) {
      return SineAndDecayCurve.shareAbove(day, celsius);
    }
  };

  private static final double HOURS = 24;
  private static final double HALF_DAY = 12;

  private final String words;
  private final boolean needsNextMinimum;
  private final HalfDay heightOfHalf;
  private final HalfDay areaOfHalf;
  private final HalfDay shareOfHalf;
  private final Reference source;

  /** Something of the half of a day between a lowest and a highest temperature. */
  private interface HalfDay {
    double of(double minCelsius, double maxCelsius, double at);
  }

  DayCurve(
      String words,
      boolean needsNextMinimum,
      HalfDay heightOfHalf,
      HalfDay areaOfHalf,
      HalfDay shareOfHalf,
      Reference source) {
    this.words = words;
    this.needsNextMinimum = needsNextMinimum;
    this.heightOfHalf = heightOfHalf;
    this.areaOfHalf = areaOfHalf;
    this.shareOfHalf = shareOfHalf;
    this.source = source;
  }

  /**
   * The temperature at a moment.
   *
   * @param day extremes and, where the curve needs them, next minimum and day length
   * @param hours hours since the day's minimum, 0 to 24
   * @return °C; NaN when the hours are outside that range or something needed is not known
   */
  public double celsiusAt(CurveDay day, double hours) {
    return hours >= 0 && hours <= HOURS && isKnown(day) ? height(day, hours) : Double.NaN;
  }

  /**
   * The area of the curve above a threshold, A(c).
   *
   * @param day extremes and, where the curve needs them, next minimum and day length
   * @param celsius the threshold c in °C
   * @return °C·d, never negative; NaN when something needed is not known
   */
  public double areaAbove(CurveDay day, double celsius) {
    return isKnown(day) ? area(day, celsius) : Double.NaN;
  }

  /**
   * The share of the day that the curve spends above a threshold, F(c).
   *
   * @param day extremes and, where the curve needs them, next minimum and day length
   * @param celsius the threshold c in °C; a half of a day that lies wholly on it counts as above
   *     only when it is below the day's maximum
   * @return 0 to 1; NaN when something needed is not known
   */
  public double shareAbove(CurveDay day, double celsius) {
    return isKnown(day) ? share(day, celsius) : Double.NaN;
  }

  /**
   * The mean of the curve over the day.
   *
   * @param day extremes and, where the curve needs them, next minimum and day length
   * @return °C; NaN when something needed is not known
   */
  public double meanCelsius(CurveDay day) {
    double below =
        Math.min(
            day.minCelsius(),
            Double.isNaN(day.nextMinCelsius()) ? day.minCelsius() : day.endCelsius());
    return below + areaAbove(day, below);
  }

  private boolean isKnown(CurveDay day) {
    double needed = day.minCelsius() + day.maxCelsius();
    needed += needsNextMinimum ? day.nextMinCelsius() : 0;
    needed += needsDayLength() ? day.dayLengthHours() : 0;
    return !Double.isNaN(needed);
  }

  double height(CurveDay day, double hours) {
    double low = hours <= HALF_DAY ? day.minCelsius() : endOf(day);
    double way = hours <= HALF_DAY ? hours / HALF_DAY : (HOURS - hours) / HALF_DAY;
    return heightOfHalf.of(low, day.maxCelsius(), way);
  }

  double area(CurveDay day, double celsius) {
    double rising = areaOfHalf.of(day.minCelsius(), day.maxCelsius(), celsius);
    return needsNextMinimum
        ? 0.5 * rising + 0.5 * areaOfHalf.of(endOf(day), day.maxCelsius(), celsius)
        : rising;
  }

  double share(CurveDay day, double celsius) {
    double rising = shareOfHalf.of(day.minCelsius(), day.maxCelsius(), celsius);
    return needsNextMinimum
        ? 0.5 * rising + 0.5 * shareOfHalf.of(endOf(day), day.maxCelsius(), celsius)
        : rising;
  }

  private double endOf(CurveDay day) {
    return needsNextMinimum ? day.endCelsius() : day.minCelsius();
  }

  /**
   * Whether the curve ends at the minimum of the next day.
   *
   * @return true when a day needs {@link CurveDay#nextMinCelsius()}
   */
  public boolean needsNextMinimum() {
    return needsNextMinimum;
  }

  /**
   * Whether the curve hangs on sunrise and sunset.
   *
   * @return true when a day needs {@link CurveDay#dayLengthHours()}
   */
  public boolean needsDayLength() {
    return this == SINE_AND_DECAY;
  }

  /**
   * The name of the curve.
   *
   * @return a phrase in lower case
   */
  public String words() {
    return words;
  }

  /**
   * Where the curve is published.
   *
   * @return the source
   */
  public Reference source() {
    return source;
  }
}
