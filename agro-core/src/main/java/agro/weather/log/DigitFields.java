package agro.weather.log;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * A written form of dates and times in which every number has a fixed width, read by position: a
 * formatter for every line would cost more than all the rest of reading a log.
 */
final class DigitFields {

  static final DigitFields ISO_DATE = of("yyyy-MM-dd").orElseThrow();
  static final DigitFields CLOCK = of("HH:mm").orElseThrow();
  static final DigitFields CLOCK_WITH_SECONDS = of("HH:mm:ss").orElseThrow();

  private static final int SECONDS_OF_DAY = 86_400;
  private static final String LETTERS = "yMdHms";

  /** Letter of each position that holds a digit, and the character itself elsewhere. */
  private final String mask;

  /** True where the mask means a digit of a field. */
  private final boolean[] digits;

  private final boolean hasDate;

  private DigitFields(String mask, boolean[] digits, boolean hasDate) {
    this.mask = mask;
    this.digits = digits;
    this.hasDate = hasDate;
  }

  /** The form for a pattern, or nothing when the pattern holds more than fixed-width numbers. */
  static Optional<DigitFields> of(String pattern) {
    var mask = new StringBuilder();
    var digits = new boolean[pattern.length()];
    boolean quoted = false;
    int i = 0;
    while (i < pattern.length()) {
      char letter = pattern.charAt(i);
      if (letter == '\'') {
        quoted = !quoted;
        i++;
        continue;
      }
      if (quoted || !Character.isLetter(letter)) {
        if (!quoted && "[]{}#".indexOf(letter) >= 0) {
          return Optional.empty();
        }
        mask.append(letter);
        i++;
        continue;
      }
      char field = letter == 'u' ? 'y' : letter;
      int width = 1;
      while (i + width < pattern.length() && pattern.charAt(i + width) == letter) {
        width++;
      }
      boolean known = LETTERS.indexOf(field) >= 0 && mask.indexOf(String.valueOf(field)) < 0;
      if (!known || width != (field == 'y' ? 4 : 2)) {
        return Optional.empty();
      }
      for (int k = 0; k < width; k++) {
        digits[mask.length()] = true;
        mask.append(field);
      }
      i += width;
    }
    return finished(mask.toString(), digits);
  }

  private static Optional<DigitFields> finished(String mask, boolean[] digits) {
    int dateFields = 0;
    for (char field : new char[] {'y', 'M', 'd'}) {
      dateFields += mask.indexOf(field) >= 0 ? 1 : 0;
    }
    boolean usable = dateFields == 3 || (dateFields == 0 && mask.indexOf('H') >= 0);
    return usable ? Optional.of(new DigitFields(mask, digits, dateFields == 3)) : Optional.empty();
  }

  int length() {
    return mask.length();
  }

  /** Letter of each position that holds a digit, and the character itself elsewhere. */
  String mask() {
    return mask;
  }

  /** Where a field begins, or -1 when the form does not have it. */
  int at(char field) {
    for (int i = 0; i < mask.length(); i++) {
      if (digits[i] && mask.charAt(i) == field) {
        return i;
      }
    }
    return -1;
  }

  /** The positions that hold no digit. */
  int[] literals() {
    return IntStream.range(0, mask.length()).filter(i -> !digits[i]).toArray();
  }

  /**
   * Seconds from 1970-01-01T00:00, or from midnight for a form without a date. 24:00 is the
   * midnight at the end of the day.
   *
   * @throws DateTimeException when the text has another form or is no date or time
   */
  long seconds(String text) {
    if (text.length() != mask.length()) {
      throw new DateTimeException("another length than " + mask);
    }
    int year = 0;
    int month = 0;
    int day = 0;
    int hour = 0;
    int minute = 0;
    int second = 0;
    for (int i = 0; i < digits.length && i < text.length(); i++) {
      char character = text.charAt(i);
      if (!digits[i]) {
        requireSame(character, mask.charAt(i));
        continue;
      }
      int digit = digit(character);
      switch (mask.charAt(i)) {
        case 'y' -> year = 10 * year + digit;
        case 'M' -> month = 10 * month + digit;
        case 'd' -> day = 10 * day + digit;
        case 'H' -> hour = 10 * hour + digit;
        case 'm' -> minute = 10 * minute + digit;
        default -> second = 10 * second + digit;
      }
    }
    long clock = clockSeconds(hour, minute, second);
    return hasDate ? LocalDate.of(year, month, day).toEpochDay() * SECONDS_OF_DAY + clock : clock;
  }

  private static void requireSame(char found, char wanted) {
    if (found != wanted) {
      throw new DateTimeException("'" + found + "' instead of '" + wanted + "'");
    }
  }

  private static int digit(char character) {
    if (character < '0' || character > '9') {
      throw new DateTimeException("'" + character + "' instead of a digit");
    }
    return character - '0';
  }

  private static long clockSeconds(int hour, int minute, int second) {
    boolean endOfDay = hour == 24 && minute == 0 && second == 0;
    if (!endOfDay && (hour > 23 || minute > 59 || second > 59)) {
      throw new DateTimeException("no time of the day");
    }
    return hour * 3600L + minute * 60L + second;
  }
}
