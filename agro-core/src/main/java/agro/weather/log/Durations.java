package agro.weather.log;

import java.time.Duration;

/** Lengths of time in words. */
final class Durations {

  private Durations() {}

  /** For example {@code "1 h"}, {@code "15 min"}, {@code "1 h 30 min"} or {@code "45 s"}. */
  static String words(Duration length) {
    var words = new StringBuilder();
    append(words, length.toHours(), "h");
    append(words, length.toMinutesPart(), "min");
    append(words, length.toSecondsPart(), "s");
    return words.isEmpty() ? "0 s" : words.toString();
  }

  private static void append(StringBuilder words, long number, String unit) {
    if (number > 0) {
      words.append(words.isEmpty() ? "" : " ").append(number).append(' ').append(unit);
    }
  }
}
