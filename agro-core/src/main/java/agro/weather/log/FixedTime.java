package agro.weather.log;

import java.nio.charset.StandardCharsets;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Optional;

/**
 * Times of one fixed width read straight from the bytes of a file: a date with or without a time of
 * the day, and an offset from UTC where one is written. Remembers the last day and the last offset,
 * which most lines repeat; not thread-safe.
 */
final class FixedTime {

  /** What {@link #localSecond} answers to bytes that are no time in this form. */
  static final long NONE = Long.MIN_VALUE;

  private static final int SECONDS_OF_DAY = 86_400;

  /** What stands after the date and the time of the day. */
  private enum Suffix {
    NOTHING(0),
    ZULU(1),
    HOURS_AND_MINUTES(6);

    private final int length;

    Suffix(int length) {
      this.length = length;
    }
  }

  private final String mask;
  private final Suffix suffix;
  private final int length;
  private final int yearAt;
  private final int monthAt;
  private final int dayAt;
  private final int hourAt;
  private final int minuteAt;
  private final int secondAt;
  private final int[] literals;

  private int lastDate = -1;
  private long lastMidnight;
  private long lastOffsetBytes;
  private int lastOffset;

  private FixedTime(DigitFields fields, Suffix suffix) {
    this.suffix = suffix;
    mask = fields.mask();
    length = mask.length() + suffix.length;
    yearAt = fields.at('y');
    monthAt = fields.at('M');
    dayAt = fields.at('d');
    hourAt = fields.at('H');
    minuteAt = fields.at('m');
    secondAt = fields.at('s');
    literals = fields.literals();
  }

  /** Times in a form of nothing but fixed-width numbers, nothing when it has no date. */
  static Optional<FixedTime> of(DigitFields fields) {
    return fields.at('y') < 0
        ? Optional.empty()
        : Optional.of(new FixedTime(fields, Suffix.NOTHING));
  }

  /** The form of ISO 8601 in which a cell is written, nothing when it is not one of fixed width. */
  static Optional<FixedTime> ofIso(String cell) {
    var suffix = suffix(cell);
    int written = cell.length() - suffix.length;
    char divider = written > 10 ? cell.charAt(10) : 'T';
    if (divider != 'T' && divider != ' ') {
      return Optional.empty();
    }
    var date = "yyyy-MM-dd";
    var pattern =
        switch (written) {
          case 10 -> date;
          case 16 -> date + "'" + divider + "'HH:mm";
          case 19 -> date + "'" + divider + "'HH:mm:ss";
          default -> "";
        };
    boolean dateWithOffset = written == 10 && suffix != Suffix.NOTHING;
    if (pattern.isEmpty() || dateWithOffset) {
      return Optional.empty();
    }
    var time = new FixedTime(DigitFields.of(pattern).orElseThrow(), suffix);
    var bytes = cell.getBytes(StandardCharsets.US_ASCII);
    return time.localSecond(bytes, 0) == NONE ? Optional.empty() : Optional.of(time);
  }

  private static Suffix suffix(String cell) {
    if (cell.endsWith("Z")) {
      return Suffix.ZULU;
    }
    int sign = cell.length() - Suffix.HOURS_AND_MINUTES.length;
    return sign > 10 && "+-".indexOf(cell.charAt(sign)) >= 0
        ? Suffix.HOURS_AND_MINUTES
        : Suffix.NOTHING;
  }

  /** Number of bytes of every time. */
  int length() {
    return length;
  }

  /** Whether every time has its offset from UTC. */
  boolean hasOffset() {
    return suffix != Suffix.NOTHING;
  }

  /** Offset of the time that was read last, in seconds. */
  int lastOffset() {
    return lastOffset;
  }

  /**
   * Reads a time.
   *
   * @param bytes at least {@link #length()} of them from the beginning on
   * @param from where the time begins
   * @return seconds from 1970-01-01T00:00 on the clock that wrote it, or {@link #NONE}
   */
  long localSecond(byte[] bytes, int from) {
    for (int at : literals) {
      if (bytes[from + at] != mask.charAt(at)) {
        return NONE;
      }
    }
    int month = two(bytes, from + monthAt);
    int day = two(bytes, from + dayAt);
    int year = two(bytes, from + yearAt) * 100 + two(bytes, from + yearAt + 2);
    int hour = hourAt < 0 ? 0 : two(bytes, from + hourAt);
    int minute = minuteAt < 0 ? 0 : two(bytes, from + minuteAt);
    int second = secondAt < 0 ? 0 : two(bytes, from + secondAt);
    if ((year | month | day | hour | minute | second) < 0
        || !isClock(hour, minute, second)
        || !hasSuffix(bytes, from + mask.length())) {
      return NONE;
    }
    int date = (year * 100 + month) * 100 + day;
    if (date != lastDate && !moveTo(year, month, day)) {
      return NONE;
    }
    lastDate = date;
    return lastMidnight + hour * 3600L + minute * 60L + second;
  }

  /** 24:00 is the midnight at the end of the day. */
  private static boolean isClock(int hour, int minute, int second) {
    return (hour < 24 && minute < 60 && second < 60) || (hour == 24 && minute == 0 && second == 0);
  }

  /** The number of two digits, far below zero when one of them is none. */
  private static int two(byte[] bytes, int at) {
    int tens = bytes[at] - '0';
    int ones = bytes[at + 1] - '0';
    boolean digits = tens >= 0 && tens <= 9 && ones >= 0 && ones <= 9;
    return digits ? 10 * tens + ones : -1_000_000;
  }

  private boolean moveTo(int year, int month, int day) {
    try {
      lastMidnight = LocalDate.of(year, month, day).toEpochDay() * SECONDS_OF_DAY;
      return true;
    } catch (DateTimeException noDayOfTheCalendar) {
      return false;
    }
  }

  private boolean hasSuffix(byte[] bytes, int from) {
    return switch (suffix) {
      case NOTHING -> true;
      case ZULU -> bytes[from] == 'Z';
      case HOURS_AND_MINUTES -> readOffset(bytes, from);
    };
  }

  private boolean readOffset(byte[] bytes, int from) {
    long written = 0;
    for (int i = 0; i < suffix.length; i++) {
      written = written << 8 | (bytes[from + i] & 0xFF);
    }
    if (written == lastOffsetBytes) {
      return true;
    }
    try {
      var text = new String(bytes, from, suffix.length, StandardCharsets.ISO_8859_1);
      lastOffset = ZoneOffset.of(text).getTotalSeconds();
      lastOffsetBytes = written;
      return true;
    } catch (DateTimeException noOffset) {
      return false;
    }
  }
}
