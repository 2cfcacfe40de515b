package agro.units;

import java.util.List;
import java.util.Objects;

/** Reads one temperature with its sign and unit. */
final class TemperatureReader {

  private TemperatureReader() {}

  static Temperature read(String text) {
    Objects.requireNonNull(text, "text");
    var cursor = new TextCursor(text);
    cursor.skipSpaces();
    boolean minus = TextCursor.isDash(cursor.peek());
    if (minus || cursor.peek() == '+') {
      cursor.skip(1);
      cursor.skipSpaces();
    }
    int start = cursor.at();
    double value = new NumberReader(cursor).number();
    var number = cursor.text().substring(0, cursor.at()).strip();
    cursor.skipSpaces();
    int unitStart = cursor.at();
    var unit = unit(cursor.rest().strip());
    if (unit == null) {
      throw cursor.problem(
          unitStart,
          cursor.atEnd() ? "no unit stands behind the temperature" : "no unit of temperature",
          "\u00b0C, \u00b0F or K",
          "25 is a warm day in one unit and a hard frost in the other",
          List.of(number + " \u00b0C", number + " \u00b0F"));
    }
    try {
      return Temperature.of(minus ? -value : value, unit);
    } catch (IllegalArgumentException cold) {
      throw cursor.problem(
          start,
          "a temperature below absolute zero",
          "at least -273.15 \u00b0C",
          "nothing is colder",
          "check the number and its unit");
    }
  }

  private static TemperatureUnit unit(String word) {
    return switch (TextCursor.lower(word)) {
      case "\u00b0c",
          "\u00ba c",
          "\u00bac",
          "\u2103",
          "c",
          "deg c",
          "degc",
          "degree c",
          "degrees c" ->
          TemperatureUnit.CELSIUS;
      case "celsius", "degree celsius", "degrees celsius", "\u00b0 c" -> TemperatureUnit.CELSIUS;
      case "\u00b0f", "\u00baf", "\u2109", "f", "deg f", "degf", "degree f", "degrees f" ->
          TemperatureUnit.FAHRENHEIT;
      case "fahrenheit", "degree fahrenheit", "degrees fahrenheit", "\u00b0 f" ->
          TemperatureUnit.FAHRENHEIT;
      case "k", "kelvin" -> TemperatureUnit.KELVIN;
      default -> null;
    };
  }
}
