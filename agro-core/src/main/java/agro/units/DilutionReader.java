package agro.units;

import java.util.List;

/** Reads "1 in 500", "1:500" and "1 + 499" as a volume per volume. */
final class DilutionReader {

  /** From here on "1 in n" and "1 to n" differ by no more than one per cent. */
  private static final double LARGE = 100;

  private DilutionReader() {}

  /** The dilution whose first number has been read, or null if this is none. */
  static ParsedAmount read(TextCursor cursor, NumberReader numbers, NumberRange first) {
    int before = cursor.at();
    boolean part = cursor.skipWord("part") || cursor.skipWord("parts");
    char sign = cursor.peek();
    boolean in = cursor.skipWord("in") || cursor.skipWord("to");
    if (!in && (sign == ':' || sign == '+')) {
      cursor.skip(1);
      cursor.skipSpaces();
      in = true;
    }
    if (!in || !first.isSingle() || !numbers.startsNumber()) {
      cursor.moveTo(before);
      if (part) {
        throw cursor.problem(
            before,
            "parts of what is not said",
            "a dilution such as \"1 part in 500\"",
            "a part alone has no size",
            "write how many parts of the whole it is one of");
      }
      return null;
    }
    int second = cursor.at();
    double whole = numbers.number();
    cursor.skipSpaces();
    boolean parts = cursor.skipWord("parts") || cursor.skipWord("part");
    if (!cursor.atEnd() && !parts) {
      cursor.moveTo(before);
      return null;
    }
    QuantityRefusals.refuseRest(cursor);
    return dilution(cursor, first.low(), whole, sign, second);
  }

  private static ParsedAmount dilution(
      TextCursor cursor, double part, double whole, char sign, int second) {
    if (!(part > 0 && whole > 0) || (sign != '+' && part > whole)) {
      throw cursor.problem(
          second,
          "a dilution of " + Numbers.plain(part) + " in " + Numbers.plain(whole),
          "a part above zero in a larger whole, such as 1 in 500",
          "no more than the whole can be the part",
          "write the smaller number first");
    }
    if (sign == ':' && whole / part < LARGE) {
      throw cursor.problem(
          second - 1,
          "a colon between small numbers has two readings",
          "\"in\" for parts of the whole, or \"+\" for parts of water",
          "one is stronger than the other by " + Numbers.significant(100 * part / whole, 2) + " %",
          List.of(
              Numbers.plain(part) + " in " + Numbers.plain(whole),
              Numbers.plain(part) + " + " + Numbers.plain(whole)));
    }
    double all = sign == '+' ? part + whole : whole;
    double share = part * 1000 / all;
    return new ParsedAmount(
        cursor.text(),
        new NumberRange(share, share),
        VolumePerVolumeUnit.MILLILITRE_PER_LITRE,
        "",
        "read as volume in volume: "
            + Numbers.plain(part)
            + " in a whole of "
            + Numbers.plain(all)
            + ", "
            + Numbers.plain(share)
            + " mL/L");
  }
}
