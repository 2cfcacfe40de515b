package agro.weather.quality;

import agro.report.InputProblem;
import agro.units.Numbers;
import agro.weather.MediumKind;

/**
 * The extremes of a day against each other and against the day before.
 *
 * @param rule {@link QualityRule#EXTREMES_ORDER}, {@link QualityRule#NAUGHT} or {@link
 *     QualityRule#MIDNIGHT}
 * @param toleranceCelsius how far the rule may be missed, in °C, 0 or more
 */
public record ExtremesCheck(QualityRule rule, double toleranceCelsius)
    implements QualityCheck, DailyTest {

  private static final double ZERO_FAHRENHEIT = -17.8;
  private static final double ROUNDING = 0.05;

  /**
   * Checks rule and tolerance.
   *
   * @throws InputProblem when the rule is another one or the tolerance is negative
   */
  public ExtremesCheck {
    boolean known =
        rule == QualityRule.EXTREMES_ORDER
            || rule == QualityRule.NAUGHT
            || rule == QualityRule.MIDNIGHT;
    if (!known || !(toleranceCelsius >= 0)) {
      throw InputProblem.of("a tolerance of " + toleranceCelsius + " °C for " + rule.words())
          .expected("0 °C or more for order, naught or midnight")
          .because("these rules compare the extremes of one or two days")
          .mend("take ExtremesCheck.order(), naught() or midnight(1)");
    }
  }

  /**
   * The minimum is above the maximum, or equal to it in air.
   *
   * @return the check
   */
  public static ExtremesCheck order() {
    return new ExtremesCheck(QualityRule.EXTREMES_ORDER, 0);
  }

  /**
   * Both extremes are 0 °C, or both 0 °F.
   *
   * @return the check
   */
  public static ExtremesCheck naught() {
    return new ExtremesCheck(QualityRule.NAUGHT, ROUNDING);
  }

  /**
   * Days from midnight to midnight share the temperature at midnight, so no minimum can be above
   * the maximum of the day before and no maximum below its minimum.
   *
   * @param toleranceCelsius room for extremes of single readings, in °C
   * @return the check
   */
  public static ExtremesCheck midnight(double toleranceCelsius) {
    return new ExtremesCheck(QualityRule.MIDNIGHT, toleranceCelsius);
  }

  @Override
  public String limits() {
    return switch (rule) {
      case NAUGHT -> "both 0 °C or both " + Numbers.plain(ZERO_FAHRENHEIT) + " °C";
      case MIDNIGHT -> Numbers.plain(toleranceCelsius) + " °C beyond the day before";
      default -> "minimum above maximum, or equal to it in air";
    };
  }

  @Override
  public void flag(DaysInTest series) {
    for (int day = 0; day < series.size(); day++) {
      switch (rule) {
        case NAUGHT -> naught(series, day);
        case MIDNIGHT -> midnight(series, day);
        default -> order(series, day);
      }
    }
  }

  private void order(DaysInTest series, int day) {
    double excess = series.min(day) - series.max(day);
    if (excess > toleranceCelsius) {
      series.fail(
          rule,
          FlaggedValue.BOTH_EXTREMES,
          day,
          day,
          excess,
          toleranceCelsius,
          "°C",
          "the minimum is above the maximum: swapped, or one of them mistyped");
    } else if (excess == 0
        && series.medium().kind() == MediumKind.AIR
        && !isNaught(series.min(day))) {
      series.note(
          rule,
          FlaggedValue.BOTH_EXTREMES,
          day,
          day,
          0,
          0,
          "°C",
          "minimum and maximum are equal: one reading in the day, or a stuck sensor");
    }
  }

  private static boolean isNaught(double celsius) {
    return Math.abs(celsius) < ROUNDING || Math.abs(celsius - ZERO_FAHRENHEIT) < ROUNDING;
  }

  private void naught(DaysInTest series, int day) {
    double low = series.min(day);
    double high = series.max(day);
    if (Math.abs(high - low) < ROUNDING && isNaught(low)) {
      series.fail(
          rule,
          FlaggedValue.BOTH_EXTREMES,
          day,
          day,
          low,
          toleranceCelsius,
          "°C",
          "both extremes are zero: a code for missing?");
    }
  }

  private void midnight(DaysInTest series, int day) {
    double above = series.min(day) - series.max(day - 1);
    double below = series.min(day - 1) - series.max(day);
    if (above > toleranceCelsius) {
      series.note(
          rule,
          FlaggedValue.MINIMUM,
          day,
          day,
          above,
          toleranceCelsius,
          "°C",
          "the minimum is above the maximum of the day before, though both days share midnight: a"
              + " wrong value, a wrong date, or days that were not cut at midnight");
    }
    if (below > toleranceCelsius) {
      series.note(
          rule,
          FlaggedValue.MAXIMUM,
          day,
          day,
          below,
          toleranceCelsius,
          "°C",
          "the maximum is below the minimum of the day before, though both days share midnight: a"
              + " wrong value, a wrong date, or days that were not cut at midnight");
    }
  }
}
