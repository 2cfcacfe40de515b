package agro.units;

import java.util.List;

/** One reading of one text, from left to right. */
final class QuantityReader {

  private final TextCursor cursor;
  private final NumberReader numbers;
  private final UnitReader units;

  QuantityReader(String text) {
    this.cursor = new TextCursor(text);
    this.numbers = new NumberReader(cursor);
    this.units = new UnitReader(cursor);
  }

  ParsedQuantity read() {
    cursor.skipSpaces();
    if (!TextCursor.isDigit(cursor.peek())) {
      QuantityRefusals.refuseStart(cursor);
    }
    if (cursor.peek() == '@') {
      cursor.skip(1);
      cursor.skipSpaces();
    }
    int start = cursor.at();
    var range = numbers.range();
    int afterNumbers = cursor.at();
    cursor.skipSpaces();
    char next = cursor.peek();
    if (next == 0 || ":+itpITP/".indexOf(next) >= 0) {
      var dilution = DilutionReader.read(cursor, numbers, range);
      if (dilution != null) {
        return dilution;
      }
      QuantityRefusals.refuseMissingUnit(cursor, start, afterNumbers);
    }
    int unitStart = cursor.at();
    var above = units.unit();
    int unitEnd = cursor.at();
    range = secondEnd(range, start, afterNumbers, above);
    var of = units.substance();
    if (!units.skipPer()) {
      return endedWithoutRate(range, above, unitStart, unitEnd, of);
    }
    return rate(range, above, unitStart, unitEnd, of);
  }

  private ParsedQuantity endedWithoutRate(
      NumberRange range, UnitWord above, int unitStart, int unitEnd, String of) {
    int here = cursor.at();
    var inverse = units.inverseUnit();
    if (inverse != null) {
      var below = clear(inverse, here, cursor.at(), "");
      var clear = clear(above, unitStart, unitEnd, UnitClarity.system(inverse));
      return finished(range, clear, of, new RateDenominator.PerUnit(1, below, ""), here);
    }
    var unit = clear(above, unitStart, unitEnd, "");
    QuantityRefusals.refuseRest(cursor);
    if (unit.kind() == QuantityKind.MASS_PER_MASS
        || unit.kind() == QuantityKind.VOLUME_PER_VOLUME) {
      QuantityRefusals.refuseMoreThanWhole(cursor, range, unit, unitStart);
    }
    return new ParsedAmount(cursor.text(), range, unit, of, "");
  }

  private ParsedQuantity rate(
      NumberRange range, UnitWord above, int unitStart, int unitEnd, String of) {
    int belowStart = cursor.at();
    double amount = amountBelow();
    int thingStart = cursor.at();
    var below = units.unitOrNull();
    if (below == null) {
      var thing = units.thing();
      if (thing == null) {
        throw QuantityRefusals.unknownUnit(cursor, "a unit or a thing such as ha, L or plant");
      }
      var unit = clear(above, unitStart, unitEnd, "");
      return finished(range, unit, of, new RateDenominator.PerThing(amount, thing), belowStart);
    }
    int belowEnd = cursor.at();
    var substance = units.substance();
    var mark = above.isClear() && below.isClear() ? "" : units.trailingMark();
    var lower =
        clear(below, thingStart, belowEnd, mark.isEmpty() ? UnitClarity.system(above) : mark);
    var unit = clear(above, unitStart, unitEnd, mark.isEmpty() ? UnitClarity.system(below) : mark);
    return finished(
        range, unit, of, new RateDenominator.PerUnit(amount, lower, substance), belowStart);
  }

  private Unit<?> clear(UnitWord word, int start, int end, String system) {
    return word.isClear() ? word.unit() : UnitClarity.clear(cursor, word, start, end, system);
  }

  private double amountBelow() {
    if (!numbers.startsNumber()) {
      return 1;
    }
    int start = cursor.at();
    var amount = numbers.range();
    if (!amount.isSingle()) {
      throw cursor.problem(
          start,
          "a range stands below the line of a rate",
          "one amount, such as 100 L",
          "nobody can tell which end of one range belongs to which end of the other",
          "write one amount below the line, and the range above it");
    }
    if (!(amount.low() > 0)) {
      throw cursor.problem(
          start,
          "nothing stands below the line of a rate",
          "an amount above zero",
          "nothing can be divided by zero",
          "write the amount that the rate is meant for");
    }
    cursor.skipSpaces();
    return amount.low();
  }

  private NumberRange secondEnd(NumberRange range, int start, int afterLow, UnitWord above) {
    int here = cursor.at();
    if (!range.isSingle() || units.standsInverse() || !numbers.skipRangeSign(false)) {
      cursor.moveTo(here);
      return range;
    }
    int second = cursor.at();
    double high = numbers.number();
    int secondEnd = cursor.at();
    cursor.skipSpaces();
    int unitStart = cursor.at();
    var other = units.unit();
    int unitEnd = cursor.at();
    if (!other.candidates().equals(above.candidates())) {
      throw cursor.problem(
          unitStart,
          "the two ends of the range have different units",
          "one unit for both ends",
          "a range is one amount from low to high",
          "write both ends in " + above.unit().symbol() + ", or both in " + other.unit().symbol());
    }
    cursor.moveTo(secondEnd);
    var both = numbers.upTo(range.low(), high, start, afterLow, second);
    cursor.moveTo(unitEnd);
    return both;
  }

  private ParsedRate finished(
      NumberRange range, Unit<?> unit, String of, RateDenominator per, int belowStart) {
    QuantityRefusals.refuseRest(cursor);
    var rate =
        new ParsedRate(cursor.text(), new ParsedAmount(cursor.text(), range, unit, of, ""), per);
    if (per instanceof RateDenominator.PerUnit perUnit && rate.kind().isEmpty()) {
      throw cursor.problem(
          belowStart,
          unit.kind().words() + " per " + bare(perUnit.unit().kind().words()) + " is no rate",
          "a mass, a volume or a count per area, volume, mass or length, or a length or volume per"
              + " time",
          "no quantity of this library is measured so",
          List.of(Numbers.plain(range.low()) + " " + unit.symbol()));
    }
    return rate;
  }

  private static String bare(String words) {
    return words.substring(words.indexOf(' ') + 1);
  }
}
