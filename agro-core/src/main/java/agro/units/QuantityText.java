package agro.units;

import java.util.Objects;

/**
 * Reads what people write on labels and in notes: "0.75 L/ha", "250-300 ml/acre", "2 pt/100 gal
 * (US)", "1 in 500", "0.2 % v/v". What has two readings is refused with both of them, and never
 * guessed: a comma in a number, the size of a gallon, the basis of a per cent.
 */
public final class QuantityText {

  private static final int LONGEST_TEXT = 200;

  private QuantityText() {}

  /**
   * Reads a text.
   *
   * @param text a number or range with its unit
   * @return what it says
   * @throws UnreadableQuantity if the text is not clear; it points at the character and says what
   *     to write instead
   */
  public static ParsedQuantity parse(String text) {
    Objects.requireNonNull(text, "text");
    if (text.length() > LONGEST_TEXT) {
      throw new UnreadableQuantity(
          text.substring(0, LONGEST_TEXT),
          LONGEST_TEXT,
          "the text is " + text.length() + " characters long",
          "one quantity in at most " + LONGEST_TEXT + " characters",
          "a longer text is not one quantity",
          "pass the quantity alone");
    }
    return new QuantityReader(text).read();
  }
}
