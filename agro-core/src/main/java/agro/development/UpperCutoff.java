package agro.development;

import agro.source.Bibliography;
import agro.source.Reference;

/**
 * What becomes of the development rate above the upper threshold. With lower threshold LT, upper
 * threshold UT, A(c) the area of the day's temperature curve above c in °C·d and F(c) the share of
 * the day above c:
 *
 * <table>
 *   <caption>Rate above the upper threshold and daily degree-days</caption>
 *   <tr><th>cutoff</th><th>rate above UT</th><th>degree-days of the day</th></tr>
 *   <tr><td>none</td><td>T − LT</td><td>A(LT)</td></tr>
 *   <tr><td>horizontal</td><td>UT − LT</td><td>A(LT) − A(UT)</td></tr>
 *   <tr><td>intermediate</td><td>2 UT − LT − T</td><td>A(LT) − 2 A(UT), not below 0</td></tr>
 *   <tr><td>vertical</td><td>0</td><td>A(LT) − A(UT) − (UT − LT) F(UT)</td></tr>
 * </table>
 *
 * <p>On days far above the upper threshold the intermediate rule alone would give a negative sum,
 * as if animals grew younger. Development never runs backwards, so the <em>daily total</em> is
 * floored at zero. The rate inside the day is not: on all other days the figure is the published
 * A(LT) − 2 A(UT).
 */
public enum UpperCutoff {
  /** Development goes on rising with temperature. */
  NONE("the rate goes on rising above the upper threshold"),
  /** Development stays at the rate of the upper threshold. */
  HORIZONTAL("the rate stays at its value at the upper threshold"),
  /** Development slows above the upper threshold as steeply as it rose below. */
  INTERMEDIATE("the rate falls above the upper threshold as steeply as it rose below it"),
  /** Development stops above the upper threshold. */
  VERTICAL("development stops above the upper threshold");

  private final String meaning;

  UpperCutoff(String meaning) {
    this.meaning = meaning;
  }

  /**
   * Development rate at one moment, by the definition of the rule.
   *
   * @param celsius temperature in °C
   * @param lowerCelsius lower threshold in °C
   * @param upperCelsius upper threshold in °C, not read by {@link #NONE}
   * @return °C above the lower threshold that count; below zero far above the upper threshold by
   *     the intermediate rule; NaN for NaN
   */
  public double rate(double celsius, double lowerCelsius, double upperCelsius) {
    if (celsius <= lowerCelsius) {
      return 0;
    }
    if (this == NONE || !(celsius > upperCelsius)) {
      return celsius - lowerCelsius;
    }
    return switch (this) {
      case NONE, HORIZONTAL -> upperCelsius - lowerCelsius;
      case INTERMEDIATE -> 2 * upperCelsius - lowerCelsius - celsius;
      case VERTICAL -> 0;
    };
  }

  /**
   * The rule in words.
   *
   * @return a clause without a full stop
   */
  public String meaning() {
    return meaning;
  }

  /**
   * Where the rule is described.
   *
   * @return the source
   */
  public Reference source() {
    return this == NONE ? Bibliography.BASKERVILLE_EMIN_1969 : Bibliography.UPPER_CUTOFFS;
  }

  /**
   * Whether the rule needs an upper threshold.
   *
   * @return false for {@link #NONE} alone
   */
  public boolean needsUpperThreshold() {
    return this != NONE;
  }
}
