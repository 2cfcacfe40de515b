package agro.weather.log;

import agro.weather.log.WrittenTime.DateParts;
import agro.weather.log.WrittenTime.DateParts.Form;
import java.util.Locale;
import java.util.Optional;

/** Takes one cell with a date, a time of the day or both apart, from left to right. */
final class WrittenTimeParser {

  private static final String[] MONTHS = {
    "january",
    "february",
    "march",
    "april",
    "may",
    "june",
    "july",
    "august",
    "september",
    "october",
    "november",
    "december"
  };
  private static final String[] DAYS = {
    "monday", "tuesday", "wednesday", "thursday", "friday", "saturday", "sunday"
  };

  private static final String BLANKS = " \u00A0\u202F";

  /** Seconds since 1970 of the years 2022 to 2028 begin like years from 1650 to 1850. */
  private static final int EARLIEST_YEAR_WITH_HOUR = 1850;

  private static final int EARLIEST_YEAR = 1650;

  private final String text;
  private final StringBuilder shape = new StringBuilder();
  private final StringBuilder widths = new StringBuilder();
  private int at;
  private Optional<DateParts> date = Optional.empty();
  private int clock = WrittenTime.NO_CLOCK;
  private boolean hasFraction;

  WrittenTimeParser(String text) {
    this.text = text;
  }

  Optional<WrittenTime> parse() {
    skipDayOfWeek();
    int start = at;
    if (!readDate()) {
      at = start;
      shape.setLength(0);
      widths.setLength(0);
      date = Optional.empty();
    }
    if (date.isPresent() && at < text.length() && !readDivider()) {
      return Optional.empty();
    }
    if (clock == WrittenTime.NO_CLOCK && at < text.length() && !readClock()) {
      return Optional.empty();
    }
    if (date.isEmpty() && clock == WrittenTime.NO_CLOCK) {
      return Optional.empty();
    }
    var zone = new ZoneText(text, at);
    if (!zone.read()) {
      return Optional.empty();
    }
    shape.append(zone.shape());
    return Optional.of(
        new WrittenTime(
            date,
            clock,
            zone.offset(),
            zone.name(),
            shape.toString(),
            widths.toString(),
            hasFraction));
  }

  private void skipDayOfWeek() {
    var word = word(at);
    if (word.length() >= 3 && startsAny(word, DAYS) >= 0) {
      at += word.length();
      while (at < text.length() && (peek() == ',' || peek() == '.' || peek() == ' ')) {
        at++;
      }
    }
  }

  private boolean readDate() {
    if (Character.isLetter(peek())) {
      return readMonthFirstDate();
    }
    int width = digits(at);
    if (width == 0) {
      return false;
    }
    if (width >= 7) {
      return readBasic(width);
    }
    int first = measured(width);
    char divider = peek();
    if (Character.isLetter(divider) || (divider == ' ' && Character.isLetter(next()))) {
      return readNamedDate(first, width, "");
    }
    if ("-/.".indexOf(divider) < 0 || divider == 0) {
      return false;
    }
    at++;
    if (Character.isLetter(peek())) {
      return readNamedDate(first, width, String.valueOf(divider));
    }
    return readNumberedDate(first, width, divider);
  }

  private boolean readNumberedDate(int first, int firstWidth, char divider) {
    int secondWidth = digits(at);
    int second = measured(secondWidth);
    if (firstWidth == 4 && secondWidth == 3) {
      shape.append("yyyy").append(divider).append("DDD");
      date = Optional.of(new DateParts(first, second, 0, Form.DAY_OF_YEAR));
      return true;
    }
    if (peek() != divider) {
      return false;
    }
    at++;
    // Blanks behind the points, as in 1. 5. 2021, are written by hand alone and are not read.
    int thirdWidth = digits(at);
    int third = measured(thirdWidth);
    boolean narrow = secondWidth >= 1 && secondWidth <= 2;
    if (firstWidth == 4 && narrow && thirdWidth >= 1 && thirdWidth <= 2) {
      return dated(first, second, third, Form.YEAR_FIRST, "y" + divider + "M" + divider + "d");
    }
    if (firstWidth > 2 || !narrow) {
      return false;
    }
    if (thirdWidth == 4) {
      return dated(first, second, third, Form.YEAR_LAST, "n" + divider + "n" + divider + "y");
    }
    return thirdWidth == 2
        && dated(first, second, third, Form.SHORT, "n" + divider + "n" + divider + "n");
  }

  private boolean dated(int first, int second, int third, Form form, String newShape) {
    date = Optional.of(new DateParts(first, second, third, form));
    shape.append(newShape);
    return true;
  }

  /** May 1, 2021. */
  private boolean readMonthFirstDate() {
    int month = month();
    skip(" .-/");
    int width = digits(at);
    int day = measured(width);
    if (month == 0 || width < 1 || width > 2) {
      return false;
    }
    skip(" ,-/");
    int yearWidth = digits(at);
    return (yearWidth == 4 || yearWidth == 2)
        && dated(day, month, number(yearWidth), named(yearWidth), "MMM d y" + yearWidth);
  }

  /** 1 May 2021, 1-May-21 or 2021-May-01; the first number and its divider are read. */
  private boolean readNamedDate(int first, int width, String divider) {
    skip(" ");
    int month = month();
    if (month == 0) {
      return false;
    }
    skip(" .,-/");
    int lastWidth = digits(at);
    int last = measured(lastWidth);
    if (width == 4 && lastWidth >= 1 && lastWidth <= 2) {
      return dated(last, month, first, Form.NAMED, "y" + divider + "MMM d");
    }
    return width <= 2
        && (lastWidth == 4 || lastWidth == 2)
        && dated(first, month, last, named(lastWidth), "d" + divider + "MMM y" + lastWidth);
  }

  private static Form named(int yearWidth) {
    return yearWidth == 4 ? Form.NAMED : Form.NAMED_SHORT;
  }

  private int month() {
    var word = word(at);
    int month = word.length() < 3 ? -1 : startsAny(word, MONTHS);
    if (month < 0 && word.equalsIgnoreCase("sept")) {
      month = 8;
    }
    at += month < 0 ? 0 : word.length();
    return month + 1;
  }

  /** Digits without dividers: year, month, day and perhaps hour, minute and second. */
  private boolean readBasic(int width) {
    if (width == 7) {
      return dated(number(4), number(3), 0, Form.DAY_OF_YEAR, "yyyyDDD");
    }
    if (width != 8 && width != 10 && width != 12 && width != 14) {
      return false;
    }
    int year = number(4);
    int month = number(2);
    int day = number(2);
    int earliest = width == 8 ? EARLIEST_YEAR : EARLIEST_YEAR_WITH_HOUR;
    if (year < earliest || year > 2150 || month < 1 || month > 12 || day < 1 || day > 31) {
      return false;
    }
    dated(year, month, day, Form.YEAR_FIRST, "basic" + width);
    return width == 8
        || setClock(number(2), width > 10 ? number(2) : 0, width > 12 ? number(2) : 0);
  }

  /** What stands between date and time. */
  private boolean readDivider() {
    if (clock != WrittenTime.NO_CLOCK) {
      return true;
    }
    int start = at;
    while (at < text.length() && " ,_T".indexOf(Character.toUpperCase(peek())) >= 0) {
      at++;
    }
    if (at == start && peek() == '-' && digits(at + 1) == 2) {
      at++;
    }
    int blanks = at - start + (digits(at) == 1 ? -1 : 0);
    shape.append(" ".repeat(Math.max(0, blanks - 1)));
    // Where no time follows but a zone, as in 2021-05-01Z, the zone is read later.
    return at > start || "Z+-".indexOf(peek()) >= 0;
  }

  private boolean readClock() {
    int width = digits(at);
    if (width == 0) {
      return true;
    }
    if (width == 4 || width == 6) {
      if (date.isEmpty()) {
        return false;
      }
      shape.append(" HHmm");
      return setClock(number(2), number(2), width == 6 ? number(2) : 0);
    }
    if (width > 2) {
      return false;
    }
    int hour = measured(width);
    int minute = 0;
    int second = 0;
    char divider = peek();
    if (divider == ':' || (isClockDivider(divider) && digits(at + 1) == 2)) {
      at++;
      if (digits(at) != 2) {
        return false;
      }
      minute = number(2);
      shape.append('H').append(divider).append("mm");
      if (peek() == divider && divider != 'h') {
        at++;
        if (digits(at) != 2) {
          return false;
        }
        second = number(2);
        readFraction();
      }
      return readHalfDay(hour, minute, second);
    }
    shape.append('H');
    int before = shape.length();
    return readHalfDay(hour, 0, 0) && shape.length() > before;
  }

  /** A time of the day alone with a point could as well be a temperature. */
  private boolean isClockDivider(char divider) {
    return divider == 'h' || (divider == '.' && date.isPresent());
  }

  private void readFraction() {
    if ((peek() == '.' || peek() == ',') && digits(at + 1) > 0) {
      at++;
      while (at < text.length() && Character.isDigit(peek())) {
        hasFraction |= peek() != '0';
        at++;
      }
    }
  }

  private boolean readHalfDay(int hour, int minute, int second) {
    int start = at;
    skip(BLANKS);
    int end = endOfHalfDay(at);
    if (end < 0) {
      at = start;
      return setClock(hour, minute, second);
    }
    boolean afternoon = Character.toLowerCase(peek()) == 'p';
    at = end;
    shape.append(" a");
    return hour >= 1 && hour <= 12 && setClock(hour % 12 + (afternoon ? 12 : 0), minute, second);
  }

  /** Where a word such as "am", "p", "a.m." or "p. m." ends that begins at a place; -1 for none. */
  private int endOfHalfDay(int from) {
    if (from >= text.length() || "aApP".indexOf(text.charAt(from)) < 0) {
      return -1;
    }
    int end = from + 1;
    boolean dotted = end < text.length() && text.charAt(end) == '.';
    end += dotted ? 1 : 0;
    while (dotted && end < text.length() && BLANKS.indexOf(text.charAt(end)) >= 0) {
      end++;
    }
    boolean hasM = end < text.length() && "mM".indexOf(text.charAt(end)) >= 0;
    if (!hasM) {
      return dotted || !word(from + 1).isEmpty() ? -1 : from + 1;
    }
    end++;
    if (!word(end).isEmpty()) {
      return -1;
    }
    return end + (dotted && end < text.length() && text.charAt(end) == '.' ? 1 : 0);
  }

  private boolean setClock(int hour, int minute, int second) {
    boolean endOfDay = hour == 24 && minute == 0 && second == 0;
    if (!endOfDay && (hour > 23 || minute > 59 || second > 59)) {
      return false;
    }
    clock = hour * 3600 + minute * 60 + second;
    return true;
  }

  private char peek() {
    return at < text.length() ? text.charAt(at) : 0;
  }

  private char next() {
    return at + 1 < text.length() ? text.charAt(at + 1) : 0;
  }

  private void skip(String characters) {
    while (at < text.length() && characters.indexOf(peek()) >= 0) {
      at++;
    }
  }

  private int digits(int from) {
    int end = from;
    while (end < text.length() && text.charAt(end) >= '0' && text.charAt(end) <= '9') {
      end++;
    }
    return end - from;
  }

  /** The next digits as a number. */
  private int number(int width) {
    int value = 0;
    for (int i = 0; i < width; i++) {
      value = 10 * value + (text.charAt(at++) - '0');
    }
    return value;
  }

  /** The next digits as a number; how wide it is written is kept. */
  private int measured(int width) {
    widths.append(width != 2 ? (char) ('0' + Math.min(9, width)) : peek() == '0' ? '0' : '2');
    return number(width);
  }

  private String word(int from) {
    int end = from;
    while (end < text.length() && Character.isLetter(text.charAt(end))) {
      end++;
    }
    return text.substring(from, end);
  }

  /** Index of the name that a word of three letters or more begins or is; -1 for none. */
  private static int startsAny(String word, String[] names) {
    var lower = word.toLowerCase(Locale.ROOT);
    for (int i = 0; i < names.length; i++) {
      if (names[i].equals(lower) || (lower.length() == 3 && names[i].startsWith(lower))) {
        return i;
      }
    }
    return -1;
  }
}
