package agro.units;

import java.math.BigInteger;

/** Reads a UCUM code in its case-sensitive form into an exact factor and a dimension. */
final class UcumReader {

  private static final int HIGHEST_POWER = 30;

  private final String code;
  private int at;

  private UcumReader(String code) {
    this.code = code;
  }

  /** A code in metre, gram, second and kelvin. */
  record Size(ExactFactor factor, UcumDimension dimension) {

    Size times(Size other, int power) {
      var result = factor;
      for (int i = 0; i < Math.abs(power); i++) {
        result = result.times(power > 0 ? other.factor : other.factor.inverse());
      }
      return new Size(result, dimension.plus(other.dimension, power));
    }
  }

  private static final Size ONE = new Size(ExactFactor.ONE, UcumDimension.NONE);

  /** The size of a code. */
  static Size read(String code) {
    var reader = new UcumReader(code);
    if (code.isEmpty()) {
      throw reader.problem(0, "the code is empty", "a UCUM code", "write a code such as L/har");
    }
    var size = reader.term();
    if (reader.at < code.length()) {
      throw reader.problem(
          reader.at,
          "a bracket is closed that was never opened",
          "one closing bracket for each opening one",
          "drop the bracket");
    }
    return size;
  }

  /** The factor that turns a number of a code into the base unit of a kind. */
  static ExactFactor factor(String code, QuantityKind kind, Unit<?> base) {
    var size = read(code);
    var wanted = read(base.ucum());
    if (!size.dimension().sameAs(wanted.dimension())) {
      throw new UnreadableQuantity(
          code,
          0,
          "the UCUM code " + code + " is not " + kind.words(),
          kind.words() + ", for example " + base.ucum(),
          "a code of another dimension cannot be converted",
          "write a code of the dimension of " + base.ucum());
    }
    return size.factor().times(wanted.factor().inverse());
  }

  private Size term() {
    var size = ONE;
    int power = 1;
    if (peek() == '/') {
      at++;
      power = -1;
    }
    while (true) {
      size = size.times(component(), power);
      char sign = peek();
      if (sign != '.' && sign != '/') {
        return size;
      }
      power = sign == '.' ? 1 : -1;
      at++;
    }
  }

  private Size component() {
    if (peek() == '(') {
      int open = at++;
      var inner = term();
      if (peek() != ')') {
        throw problem(open, "a bracket stays open", "a closing bracket", "close the bracket");
      }
      at++;
      skipAnnotation();
      return inner;
    }
    int start = at;
    skipAnnotation();
    if (at > start) {
      return ONE;
    }
    var unit = simpleUnit();
    skipAnnotation();
    return unit;
  }

  private void skipAnnotation() {
    if (peek() != '{') {
      return;
    }
    int close = code.indexOf('}', at);
    if (close < 0) {
      throw problem(at, "an annotation stays open", "a closing brace", "close the brace");
    }
    at = close + 1;
  }

  private Size simpleUnit() {
    int start = at;
    int end = end(start);
    if (end == start) {
      throw problem(
          start,
          "no unit stands here",
          "a unit of UCUM",
          "write a unit or drop the sign before it");
    }
    at = end;
    var whole = code.substring(start, end);
    if (isDigits(whole)) {
      var number = new BigInteger(whole);
      if (number.signum() == 0) {
        throw problem(start, "a factor of zero", "a number above zero", "write the number");
      }
      return new Size(new ExactFactor(number, BigInteger.ONE), UcumDimension.NONE);
    }
    refuseTrap(whole, start);
    int powerStart = powerStart(whole);
    var name = whole.substring(0, powerStart);
    refuseTrap(name, start);
    return ONE.times(atom(name, start), power(whole.substring(powerStart), start));
  }

  private int power(String digits, int start) {
    if (digits.isEmpty()) {
      return 1;
    }
    int value = digits.length() > 3 ? HIGHEST_POWER + 1 : Integer.parseInt(digits);
    if (Math.abs(value) > HIGHEST_POWER) {
      throw problem(start, "a power of " + digits, "a small power", "check the power");
    }
    return value;
  }

  private void refuseTrap(String name, int start) {
    var trap = UcumTraps.find(name);
    if (trap != null) {
      throw new UnreadableQuantity(
          code,
          start,
          "in UCUM " + name + " is " + trap.reading(),
          "a code of UCUM in its case-sensitive form",
          "a code that looks right and means something else converts without a word",
          "write " + trap.right());
    }
    if (name.equals("Cel") || name.equals("[degF]")) {
      throw new UnreadableQuantity(
          code,
          start,
          name + " has an offset and cannot stand here",
          "a unit that converts by a factor",
          "a sum of degrees converted with an offset is wrong",
          name.equals("Cel")
              ? "write K for a difference and K.d for degree-days"
              : "write [degR] for a difference and [degR].d for degree-days");
    }
  }

  private Size atom(String name, int start) {
    var atom = name.isEmpty() ? null : UcumAtoms.find(name);
    if (atom != null) {
      return new Size(atom.factor(), atom.dimension());
    }
    for (int length = 2; length >= 1; length--) {
      if (name.length() > length) {
        var prefix = UcumAtoms.prefix(name.substring(0, length));
        var prefixed = prefix == null ? null : UcumAtoms.find(name.substring(length));
        if (prefixed != null && prefixed.metric()) {
          return new Size(prefix.times(prefixed.factor()), prefixed.dimension());
        }
      }
    }
    throw problem(
        start,
        "\"" + name + "\" is no code of UCUM that is known here",
        "a code of UCUM in its case-sensitive form",
        otherCase(name));
  }

  private static String otherCase(String name) {
    var lower = name.isEmpty() ? "" : TextCursor.lower(name);
    return !lower.equals(name) && UcumAtoms.find(lower) != null
        ? "write " + lower
        : "look the code up in UCUM; codes of customary units stand in square brackets";
  }

  private int end(int start) {
    int end = start;
    boolean bracket = false;
    while (end < code.length()) {
      char next = code.charAt(end);
      if (!bracket && "./(){".indexOf(next) >= 0) {
        break;
      }
      bracket = next == '[' || (bracket && next != ']');
      end++;
    }
    return end;
  }

  private static int powerStart(String whole) {
    int start = whole.length();
    while (start > 0 && TextCursor.isDigit(whole.charAt(start - 1))) {
      start--;
    }
    boolean signed =
        start > 0
            && start < whole.length()
            && (whole.charAt(start - 1) == '-' || whole.charAt(start - 1) == '+');
    return signed ? start - 1 : start;
  }

  private static boolean isDigits(String word) {
    for (int i = 0; i < word.length(); i++) {
      if (!TextCursor.isDigit(word.charAt(i))) {
        return false;
      }
    }
    return true;
  }

  private char peek() {
    return at < code.length() ? code.charAt(at) : 0;
  }

  private UnreadableQuantity problem(int position, String what, String expected, String cure) {
    return new UnreadableQuantity(
        code, position, what, expected, "a unit that is not known cannot be converted", cure);
  }
}
