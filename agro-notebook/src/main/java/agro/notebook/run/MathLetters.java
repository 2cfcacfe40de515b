package agro.notebook.run;

import java.util.Map;

/** Letters of another shape, each of which Unicode has a sign for. */
final class MathLetters {

  private static final int ALPHABET = 26;

  /**
   * Where the letters of a shape begin in Unicode.
   *
   * @param capitals the letter A
   * @param digits the digit 0, or 0 when there are none
   */
  private record Shape(int capitals, int digits) {}

  private static final Map<String, Shape> SHAPES =
      Map.of(
          "mathbf", new Shape(0x1D400, 0x1D7CE),
          "boldsymbol", new Shape(0x1D468, 0x1D7CE),
          "bm", new Shape(0x1D468, 0x1D7CE),
          "mathcal", new Shape(0x1D49C, 0),
          "mathscr", new Shape(0x1D49C, 0),
          "mathfrak", new Shape(0x1D504, 0),
          "mathbb", new Shape(0x1D538, 0x1D7D8),
          "mathsf", new Shape(0x1D5A0, 0x1D7E2),
          "mathtt", new Shape(0x1D670, 0x1D7F6),
          "mathit", new Shape(0x1D434, 0));

  /** Letters that Unicode had before it got the alphabets, by the place that was left free. */
  private static final Map<Integer, String> EARLIER =
      Map.ofEntries(
          Map.entry(0x1D455, "ℎ"),
          Map.entry(0x1D49D, "ℬ"),
          Map.entry(0x1D4A0, "ℰ"),
          Map.entry(0x1D4A1, "ℱ"),
          Map.entry(0x1D4A3, "ℋ"),
          Map.entry(0x1D4A4, "ℐ"),
          Map.entry(0x1D4A7, "ℒ"),
          Map.entry(0x1D4A8, "ℳ"),
          Map.entry(0x1D4AD, "ℛ"),
          Map.entry(0x1D4BA, "ℯ"),
          Map.entry(0x1D4BC, "ℊ"),
          Map.entry(0x1D4C4, "ℴ"),
          Map.entry(0x1D506, "ℭ"),
          Map.entry(0x1D50B, "ℌ"),
          Map.entry(0x1D50C, "ℑ"),
          Map.entry(0x1D515, "ℜ"),
          Map.entry(0x1D51D, "ℨ"),
          Map.entry(0x1D53A, "ℂ"),
          Map.entry(0x1D53F, "ℍ"),
          Map.entry(0x1D545, "ℕ"),
          Map.entry(0x1D547, "ℙ"),
          Map.entry(0x1D548, "ℚ"),
          Map.entry(0x1D549, "ℝ"),
          Map.entry(0x1D551, "ℤ"));

  private MathLetters() {}

  static boolean isShape(String command) {
    return SHAPES.containsKey(command);
  }

  /**
   * Letters and digits in another shape.
   *
   * @param command the command of TeX
   * @param text letters, digits and anything else
   * @return the same text; what the shape does not have stays as it is
   */
  static String shaped(String command, String text) {
    var shape = SHAPES.get(command);
    var shaped = new StringBuilder();
    text.codePoints().forEach(c -> shaped.append(shaped(shape, c)));
    return shaped.toString();
  }

  private static String shaped(Shape shape, int c) {
    if (c >= 'A' && c <= 'Z') {
      return letter(shape.capitals() + c - 'A');
    }
    if (c >= 'a' && c <= 'z') {
      return letter(shape.capitals() + ALPHABET + c - 'a');
    }
    if (c >= '0' && c <= '9' && shape.digits() > 0) {
      return Character.toString(shape.digits() + c - '0');
    }
    return Character.toString(c);
  }

  private static String letter(int code) {
    return EARLIER.getOrDefault(code, Character.toString(code));
  }
}
