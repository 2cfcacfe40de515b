package agro.units;

/** Takes numbers of a parsed text over into one kind. */
final class TypedReading {

  private TypedReading() {}

  /** The only number of a text, in the base unit of a kind. */
  static double single(ParsedQuantity parsed, QuantityKind kind) {
    var numbers = parsed.numbers();
    if (!numbers.isSingle()) {
      var text = parsed.text();
      throw new UnreadableQuantity(
          text,
          firstDigit(text),
          "a range where one amount is wanted",
          "one number",
          "the middle of a range stands on no label, so none is chosen here",
          "read it with parseRange, or write the end that is meant: "
              + Numbers.plain(numbers.low())
              + " or "
              + Numbers.plain(numbers.high()));
    }
    return low(parsed, kind);
  }

  /** The lower number, in the base unit of a kind. */
  static double low(ParsedQuantity parsed, QuantityKind kind) {
    return base(parsed, parsed.numbers().low(), kind);
  }

  /** The upper number, in the base unit of a kind. */
  static double high(ParsedQuantity parsed, QuantityKind kind) {
    return base(parsed, parsed.numbers().high(), kind);
  }

  /** What a parsed count, or count per something, counts. */
  static Counted counted(ParsedQuantity parsed) {
    return Counted.of(
        parsed instanceof ParsedRate rate ? rate.amount().unit() : ((ParsedAmount) parsed).unit());
  }

  private static double base(ParsedQuantity parsed, double value, QuantityKind kind) {
    if (parsed instanceof ParsedAmount amount && amount.unit().kind() == kind) {
      return amount.unit().toBase(value);
    }
    if (parsed instanceof ParsedRate rate
        && rate.per() instanceof RateDenominator.PerUnit per
        && matches(RatioKinds.of(rate.amount().unit().kind(), per.unit().kind()), kind)) {
      return RatioKinds.toBase(value, kind, rate.amount().unit(), per.amount(), per.unit());
    }
    throw wrongKind(parsed, kind);
  }

  private static boolean matches(QuantityKind found, QuantityKind wanted) {
    return found == wanted
        || (wanted == QuantityKind.DENSITY && found == QuantityKind.MASS_PER_VOLUME);
  }

  private static UnreadableQuantity wrongKind(ParsedQuantity parsed, QuantityKind wanted) {
    var found = parsed.kind();
    var words =
        found.isPresent() ? found.get().words() : "an amount per " + ((ParsedRate) parsed).per();
    return new UnreadableQuantity(
        parsed.text(),
        unitStart(parsed.text()),
        "this is " + words + " and not " + wanted.words(),
        wanted.words() + why(wanted),
        "the two cannot be turned into one another without a further figure",
        "write " + wanted.words() + ", or convert by hand with a stated density, area or number");
  }

  private static String why(QuantityKind wanted) {
    return ", for example in " + Samples.of(wanted);
  }

  private static int firstDigit(String text) {
    for (int i = 0; i < text.length(); i++) {
      if (TextCursor.isDigit(text.charAt(i))) {
        return i;
      }
    }
    return 0;
  }

  private static int unitStart(String text) {
    for (int i = firstDigit(text); i < text.length(); i++) {
      char c = text.charAt(i);
      if (c == '%' || (Character.isLetter(c) && !text.startsWith("to ", i))) {
        return i;
      }
    }
    return 0;
  }
}
