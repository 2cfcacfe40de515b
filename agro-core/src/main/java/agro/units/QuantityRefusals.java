package agro.units;

import java.util.ArrayList;
import java.util.List;

/** What stands in the way of reading a quantity, and what to write instead. */
final class QuantityRefusals {

  private static final List<String> LIMITS =
      List.of(
          "up to",
          "max",
          "maximum",
          "min",
          "minimum",
          "at least",
          "at most",
          "not more than",
          "no more than",
          "less than",
          "more than",
          "over",
          "under",
          "above",
          "below");
  private static final List<String> GUESSES =
      List.of("about", "approx", "approximately", "ca", "circa", "around", "roughly", "nearly");

  private QuantityRefusals() {}

  /** Refuses what is no number at the head of the text. */
  static void refuseStart(TextCursor cursor) {
    int start = cursor.at();
    char first = cursor.peek();
    if (cursor.atEnd()) {
      throw cursor.problem(
          start,
          "the text is empty",
          "a number with its unit",
          "nothing is not zero",
          "write an amount such as \"0.75 L/ha\"");
    }
    if ("<>\u2264\u2265".indexOf(first) >= 0) {
      throw limit(cursor, start, 1);
    }
    if (first == '~' || first == '\u2248' || first == '\u00b1') {
      throw guess(cursor, start, 1);
    }
    if (TextCursor.isDigit(first)) {
      return;
    }
    if (TextCursor.isDash(first)) {
      throw cursor.problem(
          start,
          "a sign stands before the number",
          "an amount of zero or more",
          "no field takes less than nothing",
          List.of(cursor.rest().substring(1).strip()));
    }
    for (var word : LIMITS) {
      if (cursor.standsHere(word)) {
        throw limit(cursor, start, word.length());
      }
    }
    for (var word : GUESSES) {
      if (cursor.standsHere(word)) {
        throw guess(cursor, start, word.length());
      }
    }
  }

  private static UnreadableQuantity limit(TextCursor cursor, int start, int length) {
    return cursor.problem(
        start,
        "a limit and not an amount",
        "a number or a range of numbers",
        "a largest dose is not the dose",
        List.of(behind(cursor, start, length)));
  }

  private static UnreadableQuantity guess(TextCursor cursor, int start, int length) {
    return cursor.problem(
        start,
        "a guess and not an amount",
        "a number, or a range from low to high",
        "nothing says how far off the number may be",
        List.of(behind(cursor, start, length)));
  }

  private static String behind(TextCursor cursor, int start, int length) {
    var rest = cursor.text().substring(start + length).strip();
    int skip = 0;
    while (skip < rest.length() && (".=:".indexOf(rest.charAt(skip)) >= 0)) {
      skip++;
    }
    return rest.substring(skip).strip();
  }

  /** Refuses a text that ends, or goes on with "per", where the unit should stand. */
  static void refuseMissingUnit(TextCursor cursor, int start, int afterNumbers) {
    boolean per = cursor.peek() == '/' || cursor.standsHere("per");
    if (cursor.atEnd() || per) {
      var number = cursor.text().substring(start, afterNumbers);
      var rest = (cursor.peek() == '/' || cursor.atEnd() ? "" : " ") + cursor.rest();
      throw cursor.problem(
          cursor.at(),
          "no unit stands behind " + number,
          "a unit such as mL, L, g, kg or lb",
          "a bare number can be wrong by any factor",
          List.of(number + " mL" + rest, number + " g" + rest));
    }
  }

  /** Refuses what is left behind a complete quantity. */
  static void refuseRest(TextCursor cursor) {
    cursor.skipSpaces();
    if (cursor.peek() == '.' && cursor.at() == cursor.text().length() - 1) {
      return;
    }
    if (cursor.atEnd()) {
      return;
    }
    int start = cursor.at();
    if (TextCursor.isDigit(cursor.peek())) {
      throw cursor.problem(
          start,
          "a second amount stands behind the first",
          "one number with one unit",
          "amounts in two units are not added up here",
          "write one number, such as 2.5 h for 2 h 30 min");
    }
    boolean line = cursor.peek() == '/' || cursor.standsHere("per");
    throw cursor.problem(
        start,
        line
            ? "a second line of division"
            : "\"" + cursor.rest().strip() + "\" stands behind a complete quantity",
        "the end of the text",
        line
            ? "a rate is one amount per one other amount"
            : "words that are not understood may change the amount",
        List.of(cursor.text().substring(0, start).strip()));
  }

  /** Refuses more than 100 % or a million parts per million. */
  static void refuseMoreThanWhole(
      TextCursor cursor, NumberRange range, Unit<?> unit, int position) {
    double whole = unit == MassPerMassUnit.PERCENT || unit == VolumePerVolumeUnit.PERCENT ? 100 : 0;
    if (whole > 0 && range.high() > whole) {
      throw cursor.problem(
          position,
          "more than the whole",
          "at most 100 %",
          "a part is not larger than what it is part of",
          "check the decimal point");
    }
  }

  /** A word that is no unit, with the nearest one that is. */
  static UnreadableQuantity unknownUnit(TextCursor cursor, String expected) {
    int start = cursor.at();
    if (cursor.atEnd()) {
      return cursor.problem(
          start,
          "the text ends where a unit should stand",
          expected,
          "the amount hangs on it",
          List.of(
              cursor.text().strip()
                  + (cursor.text().stripTrailing().endsWith("/") ? "ha" : " ha")));
    }
    int end = cursor.wordEnd();
    var word = cursor.text().substring(start, end);
    var what = "\"" + word + "\" is no unit that is known here";
    var why = "a unit that is not known cannot be converted";
    if (!word.isEmpty() && (word.charAt(0) == '\u00b0' || word.charAt(0) == '\u00ba')) {
      return cursor.problem(
          start,
          what,
          expected,
          "degrees convert with an offset",
          "read it with Temperature.parse");
    }
    var readings = new ArrayList<String>();
    for (var near : UnitLexicon.nearest(word)) {
      readings.add(cursor.replaced(start, end, near));
    }
    return readings.isEmpty()
        ? cursor.problem(
            start, what, expected, why, "write the unit in full, or convert the amount first")
        : cursor.problem(start, what, expected, why, readings);
  }
}
