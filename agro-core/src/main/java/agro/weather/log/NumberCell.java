package agro.weather.log;

import agro.units.TemperatureUnit;
import java.util.Optional;

/**
 * A cell that holds a number, with either decimal mark and perhaps the unit behind it.
 *
 * @param digits the number alone, with a hyphen for minus
 * @param mark the decimal mark, or 0 where there is none
 * @param decimals number of digits behind the mark
 * @param unit the unit behind the number, where one is written
 */
record NumberCell(String digits, char mark, int decimals, Optional<TemperatureUnit> unit) {

  private static final String MINUS_IN_PRINT = "\u2212\u2010\u2011\u2012\u2013";

  /** A double written in full has up to 24 characters; spreadsheets may write a few more. */
  private static final int MOST_CHARACTERS = 40;

  /** Takes a cell apart; nothing when it is no number. */
  static Optional<NumberCell> of(String cell) {
    int end = cell.length();
    while (end > 0 && !isPartOfNumber(cell.charAt(end - 1))) {
      end--;
    }
    if (end == 0 || end > MOST_CHARACTERS) {
      return Optional.empty();
    }
    var unit = Optional.<TemperatureUnit>empty();
    if (end < cell.length()) {
      unit = UnitWords.ofCell(cell.substring(end));
      if (unit.isEmpty()) {
        return Optional.empty();
      }
    }
    return plain(BlankCells.trimmed(cell, 0, end), unit);
  }

  private static boolean isPartOfNumber(char c) {
    return (c >= '0' && c <= '9') || c == '.' || c == ',';
  }

  private static Optional<NumberCell> plain(String text, Optional<TemperatureUnit> unit) {
    int start = 0;
    boolean negative = false;
    char sign = text.charAt(0);
    if (sign == '-' || sign == '+' || MINUS_IN_PRINT.indexOf(sign) >= 0) {
      start = 1;
      negative = sign != '+';
    }
    char mark = 0;
    int decimals = 0;
    int digits = 0;
    for (int i = start; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c >= '0' && c <= '9') {
        digits++;
        decimals += mark == 0 ? 0 : 1;
      } else if ((c == '.' || c == ',') && mark == 0) {
        mark = c;
      } else {
        return exponent(text, unit);
      }
    }
    if (digits == 0) {
      return Optional.empty();
    }
    var core = text.substring(start).replace(',', '.');
    return Optional.of(new NumberCell(negative ? "-" + core : core, mark, decimals, unit));
  }

  /** A number such as 1.25E+01. */
  private static Optional<NumberCell> exponent(String text, Optional<TemperatureUnit> unit) {
    int at = Math.max(text.indexOf('E'), text.indexOf('e'));
    if (at <= 0 || at + 1 >= text.length()) {
      return Optional.empty();
    }
    var power = text.substring(at + 1);
    int from = power.charAt(0) == '+' || power.charAt(0) == '-' ? 1 : 0;
    boolean whole = power.length() > from && power.length() <= from + 2;
    for (int i = from; i < power.length(); i++) {
      whole &= power.charAt(i) >= '0' && power.charAt(i) <= '9';
    }
    return whole
        ? plain(text.substring(0, at), unit)
            .map(part -> new NumberCell(part.digits + "e" + power, part.mark, part.decimals, unit))
        : Optional.empty();
  }

  double value() {
    return Double.parseDouble(digits);
  }

  boolean isWhole() {
    return mark == 0 && digits.indexOf('e') < 0;
  }
}
