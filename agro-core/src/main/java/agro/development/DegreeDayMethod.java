package agro.development;

import agro.report.InputProblem;
import agro.source.Bibliography;
import agro.source.Reference;
import agro.weather.curve.CurveDay;
import agro.weather.curve.DayCurve;
import java.util.Optional;

/**
 * How degree-days are found from what is known of a day: an average of the extremes, a temperature
 * curve drawn through them, or the readings themselves. With lowest temperature Tn and highest
 * temperature Tx, mean M = (Tx + Tn) / 2 and amplitude W = (Tx − Tn) / 2.
 *
 * <p>A method gives the area A(c) above a threshold and, where it knows a temperature for every
 * moment, the share F(c) of the day above it; the rules of {@link UpperCutoff} follow from these.
 */
public enum DegreeDayMethod {
  /**
   * The mean of the extremes, held between the thresholds: A(c) = max(0, M − c). The first of the
   * two readings of the average.
   */
  AVERAGE_MEAN_LIMITED(
      "average, the mean held between the thresholds", Bibliography.MCMASTER_WILHELM_1997) {
    @Override
    public double areaAbove(CurveDay day, double celsius) {
      return aboveZero(0.5 * (day.minCelsius() + day.maxCelsius()) - celsius);
    }
  },
  /**
   * The mean of extremes that are each held between the thresholds first: A(c) = [max(Tx, c) +
   * max(Tn, c)] / 2 − c. The second of the two readings of the average; it counts more on days that
   * cross the lower threshold and less on days that cross the upper one.
   */
  AVERAGE_EXTREMES_LIMITED(
      "average, each extreme held between the thresholds", Bibliography.MCMASTER_WILHELM_1997) {
    @Override
    public double areaAbove(CurveDay day, double celsius) {
      return 0.5 * aboveZero(day.maxCelsius() - celsius)
          + 0.5 * aboveZero(day.minCelsius() - celsius);
    }
  },
  /** {@link DayCurve#SINGLE_TRIANGLE}. */
  SINGLE_TRIANGLE(DayCurve.SINGLE_TRIANGLE),
  /** {@link DayCurve#DOUBLE_TRIANGLE}, to tomorrow's minimum. */
  DOUBLE_TRIANGLE(DayCurve.DOUBLE_TRIANGLE),
  /** {@link DayCurve#SINGLE_SINE}. */
  SINGLE_SINE(DayCurve.SINGLE_SINE),
  /** {@link DayCurve#DOUBLE_SINE}, to tomorrow's minimum. */
  DOUBLE_SINE(DayCurve.DOUBLE_SINE),
  /** {@link DayCurve#SINE_AND_DECAY}, from day length and to tomorrow's minimum. */
  SINE_AND_DECAY(DayCurve.SINE_AND_DECAY),
  /**
   * The rate summed over readings, each weighted by the time that it stands for. It knows no
   * extremes; see {@link ReadingSum}.
   */
  SUM_OVER_READINGS("sum over readings", Bibliography.SUM_OVER_READINGS) {
    @Override
    public double areaAbove(CurveDay day, double celsius) {
      throw InputProblem.of("the daily extremes of a day for the sum over readings")
          .expected("readings with their times")
          .because("this method adds up what was measured and draws no curve through extremes")
          .mend("give the readings to ReadingSum, or take another method for extremes");
    }
  };

  private final String words;
  private final Reference source;
  private final DayCurve curve;

  DegreeDayMethod(String words, Reference source) {
    this.words = words;
    this.source = source;
    this.curve = null;
  }

  DegreeDayMethod(DayCurve curve) {
    this.words = curve.words();
    this.source = curve.source();
    this.curve = curve;
  }

  /** The number where it is above zero, and NaN for NaN. */
  private static double aboveZero(double value) {
    return value <= 0 ? 0 : value;
  }

  /**
   * The area of a day above a threshold, A(c).
   *
   * @param day extremes and, where the method needs them, next minimum and day length
   * @param celsius the threshold c in °C
   * @return °C·d, never negative; NaN when something needed is not known
   * @throws InputProblem for {@link #SUM_OVER_READINGS}, which knows no extremes
   */
  public double areaAbove(CurveDay day, double celsius) {
    return curve.areaAbove(day, celsius);
  }

  /**
   * The area above a threshold of a day that ends at its own minimum, A(c).
   *
   * @param minCelsius lowest temperature of the day in °C
   * @param maxCelsius highest temperature of the day in °C, not below the lowest
   * @param celsius the threshold c in °C
   * @return °C·d, never negative
   * @throws InputProblem for {@link #SUM_OVER_READINGS}, which knows no extremes
   */
  public double areaAbove(double minCelsius, double maxCelsius, double celsius) {
    return areaAbove(CurveDay.of(minCelsius, maxCelsius), celsius);
  }

  /**
   * The share of a day above a threshold, F(c).
   *
   * @param day extremes and, where the method needs them, next minimum and day length
   * @param celsius the threshold c in °C
   * @return 0 to 1; NaN when something needed is not known
   * @throws InputProblem for the averages, which know no moments
   */
  public double shareAbove(CurveDay day, double celsius) {
    return curve()
        .orElseThrow(() -> withoutMoments("the share of a day above a threshold"))
        .shareAbove(day, celsius);
  }

  /**
   * The share of a day that ends at its own minimum above a threshold, F(c).
   *
   * @param minCelsius lowest temperature of the day in °C
   * @param maxCelsius highest temperature of the day in °C, not below the lowest
   * @param celsius the threshold c in °C; the whole day counts as above its own minimum
   * @return 0 to 1
   * @throws InputProblem for the averages, which know no moments
   */
  public double shareAbove(double minCelsius, double maxCelsius, double celsius) {
    return shareAbove(CurveDay.of(minCelsius, maxCelsius), celsius);
  }

  InputProblem withoutMoments(String asked) {
    return InputProblem.of(asked + " by the method \"" + words + "\"")
        .expected("a method with a temperature for every moment of the day")
        .because(
            "an average of two extremes does not say for how long, or how far, the day was above"
                + " a threshold")
        .mend("take the single triangle or the single sine, or the cutoff NONE or HORIZONTAL");
  }

  /**
   * The curve that the method draws through a day.
   *
   * @return nothing for the averages and for the sum over readings
   */
  public Optional<DayCurve> curve() {
    return Optional.ofNullable(curve);
  }

  /**
   * Whether a day needs the minimum of the next one.
   *
   * @return true for the double curves and the sine with decay
   */
  public boolean needsNextMinimum() {
    return curve != null && curve.needsNextMinimum();
  }

  /**
   * Whether a day needs its length from sunrise to sunset.
   *
   * @return true for {@link #SINE_AND_DECAY} alone
   */
  public boolean needsDayLength() {
    return curve != null && curve.needsDayLength();
  }

  /**
   * Whether the method works on readings and not on daily extremes.
   *
   * @return true for {@link #SUM_OVER_READINGS} alone
   */
  public boolean needsReadings() {
    return this == SUM_OVER_READINGS;
  }

  /**
   * Whether a cutoff can be computed. The averages know no moment of the day, so the rules that
   * count hours or slopes above the upper threshold have no meaning for them.
   *
   * @param cutoff the rule above the upper threshold
   * @return false for an average with the intermediate or the vertical cutoff
   */
  public boolean allows(UpperCutoff cutoff) {
    return curve != null
        || needsReadings()
        || cutoff == UpperCutoff.NONE
        || cutoff == UpperCutoff.HORIZONTAL;
  }

  /**
   * The method that stands in for this one on a day whose tomorrow is not known: the single curve
   * of the same shape. The sine with decay then ends at the day's own minimum and stands in for
   * itself.
   *
   * @return this method when it does not look at tomorrow
   */
  public DegreeDayMethod withoutTomorrow() {
    return switch (this) {
      case DOUBLE_SINE -> SINGLE_SINE;
      case DOUBLE_TRIANGLE -> SINGLE_TRIANGLE;
      default -> this;
    };
  }

  /**
   * The name of the method.
   *
   * @return for example {@code "single sine"}
   */
  public String words() {
    return words;
  }

  /**
   * Where the method is published.
   *
   * @return the source
   */
  public Reference source() {
    return source;
  }
}
