package agro.notebook.command;

import java.time.Duration;
import java.time.format.DateTimeParseException;
import java.util.Locale;
import java.util.regex.Pattern;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads a span of time: a number with ms, s, m or h, or the ISO form. */
final class TimeSpan implements ITypeConverter<Duration> {

  private static final Pattern SHORT = Pattern.compile("(\\d{1,9}(?:\\.\\d{1,3})?)\\s*(ms|s|m|h)?");
  private static final int MINUTE = 60;

  @Override
  public Duration convert(String text) {
    var span = read(text.strip().toLowerCase(Locale.ROOT));
    if (span == null || span.toMillis() <= 0) {
      throw new TypeConversionException(
          "\"" + text + "\" is no span of time, such as 90s, 500ms, 5m, 2h or PT1H30M");
    }
    return span;
  }

  private static Duration read(String text) {
    var matcher = SHORT.matcher(text);
    if (matcher.matches()) {
      var seconds = Double.parseDouble(matcher.group(1)) * secondsOf(matcher.group(2));
      return Duration.ofMillis(Math.round(seconds * 1000));
    }
    try {
      return Duration.parse(text);
    } catch (DateTimeParseException other) {
      return null;
    }
  }

  /** A number alone means seconds. */
  private static double secondsOf(String unit) {
    return switch (unit == null ? "s" : unit) {
      case "ms" -> 0.001;
      case "m" -> MINUTE;
      case "h" -> MINUTE * MINUTE;
      default -> 1;
    };
  }
}
