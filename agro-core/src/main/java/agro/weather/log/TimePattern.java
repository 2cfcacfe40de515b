package agro.weather.log;

import agro.report.InputProblem;
import agro.report.SourceLocation;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeFormatterBuilder;
import java.time.format.ResolverStyle;
import java.time.temporal.ChronoField;
import java.time.temporal.TemporalAccessor;
import java.time.temporal.TemporalQueries;
import java.util.Locale;
import java.util.Optional;

/**
 * Reads dates and times in one written form. Patterns of nothing but fixed-width numbers, which is
 * what loggers write, are read by position; other patterns go through {@link DateTimeFormatter},
 * strictly, so that 31 February is an error and not 28 February.
 */
final class TimePattern {

  private static final int SECONDS_OF_DAY = 86_400;
  private static final TimePattern ISO = new TimePattern("ISO 8601", null, null);

  /**
   * A date and time as it is written.
   *
   * @param localSeconds seconds from 1970-01-01T00:00 on the clock that wrote it
   * @param offset offset from UTC, where one is written
   */
  record Stamp(long localSeconds, Optional<ZoneOffset> offset) {
    LocalDate day() {
      return LocalDate.ofEpochDay(Math.floorDiv(localSeconds, SECONDS_OF_DAY));
    }
  }

  private final String words;
  private final DigitFields fields;
  private final DateTimeFormatter formatter;

  private TimePattern(String words, DigitFields fields, DateTimeFormatter formatter) {
    this.words = words;
    this.fields = fields;
    this.formatter = formatter;
  }

  /** Year, month, day, with hours and minutes after a T or a space, and an offset if written. */
  static TimePattern iso() {
    return ISO;
  }

  /** A pattern in the letters of {@link DateTimeFormatter}. */
  static TimePattern of(String pattern) {
    var fields = DigitFields.of(pattern);
    if (fields.isPresent()) {
      return new TimePattern(pattern, fields.get(), null);
    }
    try {
      return new TimePattern(
          pattern,
          null,
          new DateTimeFormatterBuilder()
              .parseCaseInsensitive()
              .appendPattern(withProlepticYear(pattern))
              .toFormatter(Locale.ROOT)
              .withResolverStyle(ResolverStyle.STRICT));
    } catch (IllegalArgumentException e) {
      throw InputProblem.of("the time pattern \"" + pattern + "\": " + e.getMessage())
          .expected("letters of java.time.format.DateTimeFormatter")
          .because("times cannot be read without knowing how they are written")
          .mend("write for example yyyy-MM-dd HH:mm or dd.MM.yyyy HH:mm");
    }
  }

  /** Strict reading asks for an era with the letter y; the letter u means the same year without. */
  private static String withProlepticYear(String pattern) {
    var result = new StringBuilder(pattern);
    boolean quoted = false;
    for (int i = 0; i < result.length(); i++) {
      char letter = result.charAt(i);
      quoted ^= letter == '\'';
      if (!quoted && letter == 'y') {
        result.setCharAt(i, 'u');
      }
    }
    return result.toString();
  }

  Stamp parse(String text, SourceLocation place) {
    try {
      if (fields != null) {
        return new Stamp(fields.seconds(text), Optional.empty());
      }
      return formatter == null ? parseIso(text) : ofFormatter(formatter.parse(text));
    } catch (DateTimeException e) {
      throw InputProblem.at(place, "the cell reads \"" + text + "\"")
          .expected("a date and time in the form " + words)
          .because("a reading without its time cannot be put into a day")
          .mend("correct the cell, or declare the form in which this log writes its times");
    }
  }

  private static Stamp parseIso(String text) {
    int time = DigitFields.ISO_DATE.length();
    if (text.length() == time) {
      return new Stamp(DigitFields.ISO_DATE.seconds(text), Optional.empty());
    }
    if (text.length() < time) {
      throw new DateTimeException("shorter than a date");
    }
    int end = time;
    while (end < text.length() && "Z+-".indexOf(text.charAt(end)) < 0) {
      end++;
    }
    var offset =
        end == text.length() ? Optional.<ZoneOffset>empty() : Optional.of(offset(text, end));
    return new Stamp(isoSeconds(text, end), offset);
  }

  private static ZoneOffset offset(String text, int from) {
    return ZoneOffset.of(text.substring(from));
  }

  private static long isoSeconds(String text, int end) {
    char divider = text.length() > 10 ? text.charAt(10) : 0;
    if (divider != 'T' && divider != ' ') {
      throw new DateTimeException("no T or space between date and time");
    }
    long day = DigitFields.ISO_DATE.seconds(text.substring(0, 10));
    var clock = text.substring(11, end).strip();
    int point = clock.indexOf('.');
    // Fractions of a second move no reading to another day's extreme by a measurable amount.
    var whole = point < 0 ? clock : clock.substring(0, point);
    var form = whole.length() > 5 ? DigitFields.CLOCK_WITH_SECONDS : DigitFields.CLOCK;
    return day + form.seconds(whole);
  }

  private static Stamp ofFormatter(TemporalAccessor parsed) {
    var date = LocalDate.from(parsed);
    var time = parsed.query(TemporalQueries.localTime());
    var offset =
        parsed.isSupported(ChronoField.OFFSET_SECONDS)
            ? Optional.of(ZoneOffset.ofTotalSeconds(parsed.get(ChronoField.OFFSET_SECONDS)))
            : Optional.<ZoneOffset>empty();
    int second = (time == null ? LocalTime.MIDNIGHT : time).toSecondOfDay();
    return new Stamp(date.toEpochDay() * SECONDS_OF_DAY + second, offset);
  }
}
