package agro.course.marking;

import agro.units.Area;
import agro.units.AreaUnit;
import agro.units.ParsedQuantity;
import agro.units.ParsedRate;
import agro.units.QuantityKind;
import agro.units.Unit;
import java.util.Arrays;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * A teacher's own unit of land, which no other text knows: it is read as hectares, and the amount
 * is put right by the size of both.
 *
 * @param land unit of land of the class
 * @param word where it stands in a typed text
 * @param isOwn whether it is none of the units that all know
 */
record LandWord(Unit<Area> land, Pattern word, boolean isOwn) {

  private static final String HECTARE = AreaUnit.HECTARE.symbol();

  static LandWord of(Unit<Area> land) {
    var words =
        Arrays.stream(land.symbol().strip().split("\\s+", -1))
            .map(Pattern::quote)
            .collect(Collectors.joining("[ -]*"));
    var word =
        Pattern.compile(
            "(?<![\\p{L}\\d])" + words + "s?(?![\\p{L}\\d])",
            Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);
    return new LandWord(land, word, !(land instanceof AreaUnit));
  }

  /** Whether the text names it. */
  boolean isIn(String typed) {
    return isOwn && word.matcher(typed).find();
  }

  /** The text with hectares in its place. */
  String inHectares(String typed) {
    return word.matcher(typed).replaceFirst(HECTARE);
  }

  /** What an amount read with hectares is multiplied with. */
  double factor(ParsedQuantity read) {
    double hectares = land.toBase(1) / AreaUnit.HECTARE.toBase(1);
    boolean above =
        !(read instanceof ParsedRate rate) || rate.amount().unit().kind() == QuantityKind.AREA;
    return above ? hectares : 1 / hectares;
  }

  /** The unit in print with the own word again. */
  String print(String symbol) {
    return symbol.replace(HECTARE, land.symbol());
  }
}
