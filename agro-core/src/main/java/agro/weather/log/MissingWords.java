package agro.weather.log;

import java.util.Arrays;
import java.util.Locale;
import java.util.Set;

/** What logs write where they have no value. */
final class MissingWords {

  private static final Set<String> WORDS =
      Set.of(
          "na", "n/a", "#n/a", "#na", "nan", "-nan", "null", "none", "nil", "nd", "n.d.", "m",
          "missing", "no data", "nodata", "no_data", "error", "err", "fault", "fail", "inf", "ol",
          "#value!", "#div/0!", "#num!", "\\n", "?", "x", "k.a.", "invalid", "bad", "-inf");

  /** Numbers that no thermometer shows but programs write for a missing value. */
  private static final Set<String> CODES =
      Set.of(
          "-99",
          "-99.0",
          "-99.9",
          "-99.99",
          "-999",
          "-999.0",
          "-999.9",
          "-999.99",
          "-9999",
          "-9999.0",
          "-9999.9",
          "-9999.99",
          "99",
          "99.0",
          "99.9",
          "99.99",
          "999",
          "999.0",
          "999.9",
          "999.99",
          "9999",
          "9999.0",
          "9999.9",
          "99999",
          "-99999",
          "-6999",
          "6999",
          "7999",
          "-7999",
          "32767",
          "-32768",
          "3276.7",
          "-3276.8",
          "-127",
          "-127.0",
          "-127.00",
          "-888",
          "-888.8",
          "888",
          "888.8",
          "-8888",
          "-100",
          "-777",
          "-273.15",
          "-999.00",
          "999.00",
          "-9999.00",
          "-99.00",
          "99.00",
          "9999.00",
          "-88.8",
          "99.999",
          "-99.999");

  private static final double[] CODE_VALUES =
      CODES.stream().mapToDouble(Double::parseDouble).distinct().sorted().toArray();

  private static final double LEAST_CODE =
      Arrays.stream(CODE_VALUES).map(Math::abs).min().orElseThrow();

  private MissingWords() {}

  /** Whether a cell says in words or signs that there is no value. */
  static boolean isWord(String cell) {
    if (cell.isEmpty()) {
      return true;
    }
    char first = cell.charAt(0);
    if (!Character.isLetterOrDigit(first) && "-.*/_\u2013\u2014".indexOf(first) >= 0) {
      boolean signs = true;
      for (int i = 1; i < cell.length(); i++) {
        signs &= cell.charAt(i) == first;
      }
      if (signs) {
        return true;
      }
    }
    return WORDS.contains(cell.toLowerCase(Locale.ROOT));
  }

  /** Whether a number has the value of one of the usual codes, however it is written. */
  static boolean mayBeCode(double value) {
    return Math.abs(value) >= LEAST_CODE && Arrays.binarySearch(CODE_VALUES, value) >= 0;
  }

  /** Whether a number is one of the usual codes; the rest of the series has to agree. */
  static boolean isCode(String digits) {
    return CODES.contains(digits);
  }
}
