package agro.weather.log;

import agro.units.TemperatureUnit;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Units of temperature as headings and cells name them. */
final class UnitWords {

  private UnitWords() {}

  /** The unit that a whole cell names, for example {@code "°C"}, {@code "deg F"} or {@code "K"}. */
  static Optional<TemperatureUnit> ofCell(String cell) {
    var letters = new StringBuilder();
    for (int i = 0; i < cell.length(); i++) {
      char c = cell.charAt(i);
      if (Character.isLetter(c) && c != 'º' && c != 'Â') {
        letters.append(Character.toLowerCase(c));
      } else if (c == '℃' || c == '℉') {
        letters.append(c == '℃' ? 'c' : 'f');
      } else if (Character.isDigit(c) || c == '%' || c == '/') {
        return Optional.empty();
      }
    }
    return ofWord(letters.toString());
  }

  /** The unit that a word names. */
  static Optional<TemperatureUnit> ofWord(String word) {
    return switch (word) {
      case "c",
          "degc",
          "degreesc",
          "degreec",
          "celsius",
          "degreescelsius",
          "degreecelsius",
          "cel",
          "gradc",
          "centigrade" ->
          Optional.of(TemperatureUnit.CELSIUS);
      case "f", "degf", "degreesf", "degreef", "fahrenheit", "degreesfahrenheit" ->
          Optional.of(TemperatureUnit.FAHRENHEIT);
      case "k", "kelvin", "degk" -> Optional.of(TemperatureUnit.KELVIN);
      default -> Optional.empty();
    };
  }

  /** The unit that a heading names, for example {@code "Temp (°F)"} or {@code "air_c"}. */
  static Optional<TemperatureUnit> ofHeading(String heading) {
    var lower = heading.toLowerCase(Locale.ROOT);
    if (lower.contains("°c")
        || lower.contains("ºc")
        || lower.contains("° c")
        || lower.contains("℃")) {
      return Optional.of(TemperatureUnit.CELSIUS);
    }
    if (lower.contains("°f")
        || lower.contains("ºf")
        || lower.contains("° f")
        || lower.contains("℉")) {
      return Optional.of(TemperatureUnit.FAHRENHEIT);
    }
    var words = HeadingWords.words(heading);
    for (int i = words.size() - 1; i > 0; i--) {
      var unit = ofWord(words.get(i));
      if (unit.isPresent()) {
        return unit;
      }
    }
    return joined(words);
  }

  private static Optional<TemperatureUnit> joined(List<String> words) {
    if (words.isEmpty()) {
      return Optional.empty();
    }
    var first = words.get(0);
    if (first.length() > 1 || words.size() == 1) {
      var unit = ofWord(first);
      if (unit.isPresent()) {
        return unit;
      }
    }
    for (var word : words) {
      for (var stem : List.of("temp", "temperature", "tair", "tmin", "tmax", "tavg", "tmp")) {
        if (word.startsWith(stem)) {
          var unit = ofWord(word.substring(stem.length()));
          if (unit.isPresent()) {
            return unit;
          }
        }
      }
    }
    return Optional.empty();
  }

  /**
   * The unit that a line before the table states, such as {@code "Temperature unit: °F"} or {@code
   * "extremes in °F"}; a line with one measured value, such as {@code "set up at 20 °C"}, does not.
   */
  static Optional<TemperatureUnit> ofLine(String line) {
    var lower = line.toLowerCase(Locale.ROOT);
    if (!lower.contains("unit") && !lower.contains("temp") && !saysIn(lower)) {
      return Optional.empty();
    }
    boolean celsius = lower.contains("°c") || lower.contains("celsius") || lower.contains("degc");
    boolean fahrenheit =
        lower.contains("°f") || lower.contains("fahrenheit") || lower.contains("degf");
    boolean kelvin = lower.contains("kelvin");
    int named = (celsius ? 1 : 0) + (fahrenheit ? 1 : 0) + (kelvin ? 1 : 0);
    if (named == 0 && lower.contains("unit")) {
      var words = HeadingWords.words(line);
      return words.isEmpty() ? Optional.empty() : ofWord(words.get(words.size() - 1));
    }
    if (named != 1) {
      return Optional.empty();
    }
    return Optional.of(
        celsius
            ? TemperatureUnit.CELSIUS
            : fahrenheit ? TemperatureUnit.FAHRENHEIT : TemperatureUnit.KELVIN);
  }

  private static boolean saysIn(String lower) {
    return List.of("°c", "°f", "celsius", "fahrenheit", "kelvin", "degc", "degf").stream()
        .anyMatch(unit -> lower.contains(" in " + unit) || lower.contains("(" + unit + ")"));
  }
}
