package agro.course.marking;

import agro.course.marking.WrittenNumber.NumberReading;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads the number at the head of a clean text as people write it in two languages. */
final class NumberScan {

  /** Thousands with points between them; another sign is put in place of the point before. */
  private static final Pattern GROUPS = Pattern.compile("[1-9][0-9]{0,2}(?:\\.[0-9]{3})+");

  private static final Pattern SIGN =
      Pattern.compile("\\G(?:([+-])|(minus|plus)\\b) *", Pattern.CASE_INSENSITIVE);
  private static final Pattern DIGITS =
      Pattern.compile(
          "\\G(?:(?:[0-9]{1,3}(?:[ '][0-9]{3})+(?![0-9]|/[0-9])|[0-9]+)(?:[.,][0-9]+)*"
              + "|[.,][0-9]+)");
  private static final Pattern WHOLE = Pattern.compile("[0-9]+");
  private static final Pattern DIVISOR = Pattern.compile("\\G ?/ ?([0-9]{1,9})(?![0-9.,])");
  private static final Pattern MIXED =
      Pattern.compile("\\G[ -]([0-9]{1,9}) ?/ ?([0-9]{1,9})(?![0-9.,])");
  private static final Pattern EXPONENT = Pattern.compile("\\G[eE]([+-]?[0-9]{1,3})(?![0-9])");
  private static final Pattern POWER =
      Pattern.compile("\\G ?[x×*·] ?10 ?(?:\\^|\\*\\*) ?\\(?([+-]?[0-9]{1,3})\\)?");
  private static final Pattern BARE_POWER = Pattern.compile("\\G10\\^([+-]?[0-9]{1,3})");
  private static final Pattern MULTIPLE =
      Pattern.compile(
          "\\G ?(thousand|tausend|million(?:en)?|mio\\.?|mill\\.)(?![\\p{L}])",
          Pattern.CASE_INSENSITIVE);
  private static final Pattern WORD = Pattern.compile("\\G\\p{L}+");
  private static final Map<String, Integer> WORDS =
      Map.ofEntries(
          Map.entry("zero", 0),
          Map.entry("null", 0),
          Map.entry("one", 1),
          Map.entry("eins", 1),
          Map.entry("ein", 1),
          Map.entry("eine", 1),
          Map.entry("einen", 1),
          Map.entry("two", 2),
          Map.entry("zwei", 2),
          Map.entry("three", 3),
          Map.entry("drei", 3),
          Map.entry("four", 4),
          Map.entry("vier", 4),
          Map.entry("five", 5),
          Map.entry("fünf", 5),
          Map.entry("six", 6),
          Map.entry("sechs", 6),
          Map.entry("seven", 7),
          Map.entry("sieben", 7),
          Map.entry("eight", 8),
          Map.entry("acht", 8),
          Map.entry("nine", 9),
          Map.entry("neun", 9),
          Map.entry("ten", 10),
          Map.entry("zehn", 10),
          Map.entry("eleven", 11),
          Map.entry("elf", 11),
          Map.entry("twelve", 12),
          Map.entry("zwölf", 12));

  private final String text;
  private final boolean commaLanguage;

  NumberScan(String text, boolean commaLanguage) {
    this.text = text;
    this.commaLanguage = commaLanguage;
  }

  /** The number with all its readings; nothing if none stands here. */
  Optional<WrittenNumber> read() {
    var sign = at(SIGN, 0);
    boolean minus = sign != null && "-mM".indexOf(sign.group().charAt(0)) >= 0;
    return unsigned(sign == null ? 0 : sign.end())
        .map(number -> minus ? number.times(-1, number.end()) : number)
        .filter(WrittenNumber::isFinite);
  }

  private Optional<WrittenNumber> unsigned(int start) {
    var power = at(BARE_POWER, start);
    if (power != null) {
      return Optional.of(exactly(powerOfTen(power.group(1)), 0, power.end()));
    }
    var digits = at(DIGITS, start);
    if (digits == null) {
      return word(start);
    }
    var token = digits.group().replace(" ", "").replace("'", "");
    boolean grouped = token.length() < digits.group().length();
    if (WHOLE.matcher(token).matches()) {
      var fraction = fraction(token, digits.end());
      if (fraction.isPresent()) {
        return fraction;
      }
    }
    return marked(token, grouped, digits.end()).map(this::multiplied);
  }

  private Optional<WrittenNumber> word(int start) {
    var word = at(WORD, start);
    var value = word == null ? null : WORDS.get(word.group().toLowerCase(Locale.ROOT));
    return Optional.ofNullable(value).map(number -> exactly(number, 0.5, word.end()));
  }

  private Optional<WrittenNumber> fraction(String whole, int end) {
    var mixed = at(MIXED, end);
    if (mixed != null && number(mixed.group(1)) < number(mixed.group(2))) {
      double part = number(mixed.group(1)) / number(mixed.group(2));
      return Optional.of(exactly(number(whole) + part, 0, mixed.end()));
    }
    var divisor = at(DIVISOR, end);
    return divisor == null || number(divisor.group(1)) == 0
        ? Optional.empty()
        : Optional.of(exactly(number(whole) / number(divisor.group(1)), 0, divisor.end()));
  }

  /** A number with points and commas, each of which may be a decimal sign or group thousands. */
  private Optional<WrittenNumber> marked(String token, boolean grouped, int end) {
    int point = token.indexOf('.');
    int comma = token.indexOf(',');
    if (point < 0 && comma < 0) {
      return Optional.of(exactly(number(token), halfDigit(token), end));
    }
    if (point >= 0 && comma >= 0) {
      char decimal = token.lastIndexOf('.') > token.lastIndexOf(',') ? '.' : ',';
      char group = decimal == '.' ? ',' : '.';
      int last = token.lastIndexOf(decimal);
      boolean good =
          token.indexOf(decimal) == last && groups(token.substring(0, last), group) && !grouped;
      var plain = token.replace(String.valueOf(group), "").replace(decimal, '.');
      return good ? Optional.of(decimal(plain, end)) : Optional.empty();
    }
    char mark = point >= 0 ? '.' : ',';
    boolean thousands = !grouped && groups(token, mark);
    var joined = token.replace(String.valueOf(mark), "");
    if (token.indexOf(mark) != token.lastIndexOf(mark)) {
      return thousands
          ? Optional.of(exactly(number(joined), halfDigit(joined), end))
          : Optional.empty();
    }
    var asDecimal = decimal(token.replace(mark, '.'), end);
    if (!thousands || (mark == '.' && !commaLanguage)) {
      return Optional.of(asDecimal);
    }
    var asDecimals = asDecimal.readings().get(0);
    var asThousands = new NumberReading(number(joined), halfDigit(joined));
    boolean usual = mark == ',' && commaLanguage;
    return Optional.of(
        new WrittenNumber(
            usual ? List.of(asDecimals, asThousands) : List.of(asThousands, asDecimals),
            !usual,
            end));
  }

  private static boolean groups(String token, char mark) {
    return GROUPS
        .matcher(mark == '.' ? token : token.replace('.', ' ').replace(mark, '.'))
        .matches();
  }

  private WrittenNumber multiplied(WrittenNumber number) {
    var exponent = at(EXPONENT, number.end());
    if (exponent != null) {
      return number.times(powerOfTen(exponent.group(1)), exponent.end());
    }
    var power = at(POWER, number.end());
    if (power != null) {
      return number.times(powerOfTen(power.group(1)), power.end());
    }
    var multiple = at(MULTIPLE, number.end());
    if (multiple != null) {
      boolean million = "mM".indexOf(multiple.group(1).charAt(0)) >= 0;
      return number.times(million ? 1e6 : 1e3, multiple.end());
    }
    return number;
  }

  private Matcher at(Pattern pattern, int start) {
    var matcher = pattern.matcher(text);
    return matcher.find(start) && matcher.start() == start ? matcher : null;
  }

  private static double powerOfTen(String exponent) {
    return Double.parseDouble("1e" + exponent);
  }

  private static double number(String digits) {
    return Double.parseDouble(digits);
  }

  private static WrittenNumber decimal(String text, int end) {
    int decimals = text.length() - text.indexOf('.') - 1;
    return exactly(number(text), 0.5 * Math.pow(10, -decimals), end);
  }

  /** Zeros at the end of a whole number may stand for digits that were rounded away. */
  private static double halfDigit(String whole) {
    int zeros = 0;
    while (zeros < whole.length() - 1 && whole.charAt(whole.length() - 1 - zeros) == '0') {
      zeros++;
    }
    return 0.5 * Math.pow(10, zeros);
  }

  private static WrittenNumber exactly(double value, double halfDigit, int end) {
    return new WrittenNumber(List.of(new NumberReading(value, halfDigit)), false, end);
  }
}
