package agro.course.marking;

import agro.units.ParsedAmount;
import agro.units.ParsedQuantity;
import agro.units.ParsedRate;
import agro.units.QuantityKind;
import agro.units.QuantityText;
import agro.units.RateDenominator;
import agro.units.Unit;
import agro.units.UnreadableQuantity;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The units that a typed text may mean: one, several for a word of several sizes, or none. */
final class UnitCandidates {

  /** How a refusal names a word that stands for units of several sizes. */
  private static final String SEVERAL_SIZES = "a unit of one size";

  private static final int DEEPEST = 3;

  private UnitCandidates() {}

  /** One of each unit that the text may mean; trailing words are left out if need be. */
  static List<ParsedQuantity> of(String typed) {
    var unit = UnitWords.english(typed);
    var found = read("1 " + unit, 0);
    boolean rate = unit.contains("/") || unit.contains("per ") || unit.contains("-1");
    while (found.isEmpty() && !rate && endsWithWord(unit)) {
      unit = unit.substring(0, unit.lastIndexOf(' ')).strip();
      found = read("1 " + unit, 0);
    }
    return found;
  }

  private static boolean endsWithWord(String unit) {
    int blank = unit.lastIndexOf(' ');
    return blank > 0 && unit.substring(blank).chars().noneMatch(Character::isDigit);
  }

  private static List<ParsedQuantity> read(String text, int depth) {
    try {
      return List.of(QuantityText.parse(text));
    } catch (UnreadableQuantity unclear) {
      var all = new ArrayList<ParsedQuantity>();
      if (depth < DEEPEST && unclear.expected().equals(SEVERAL_SIZES)) {
        for (var reading : unclear.readings()) {
          all.addAll(read(reading, depth + 1));
        }
      }
      return all;
    }
  }

  /** Whether the text is one unit as it stands, capitals included. */
  static boolean isClear(String typed) {
    try {
      return QuantityText.parse("1 " + UnitWords.english(typed)).numbers().isSingle();
    } catch (UnreadableQuantity unclear) {
      return false;
    }
  }

  static AnswerKind kind(ParsedQuantity unit) {
    return unit.kind().map(AnswerKind::of).orElse(AnswerKind.PER_THING);
  }

  /** The units above and below the line. */
  static List<Unit<?>> parts(ParsedQuantity unit) {
    if (unit instanceof ParsedAmount amount) {
      return List.of(amount.unit());
    }
    var rate = (ParsedRate) unit;
    return rate.per() instanceof RateDenominator.PerUnit per
        ? List.of(rate.amount().unit(), per.unit())
        : List.of(rate.amount().unit());
  }

  /** The unit in print, without the number. */
  static String print(ParsedQuantity unit) {
    return unit instanceof ParsedRate rate
        ? rate.amount().unit().symbol() + "/" + rate.per()
        : ((ParsedAmount) unit).unit().symbol();
  }

  /** Whether it can be an amount of the wanted kind. */
  static boolean isOf(ParsedQuantity unit, QuantityKind wanted) {
    var kind = unit.kind();
    return kind.equals(Optional.of(wanted))
        || (wanted == QuantityKind.DENSITY
            && kind.equals(Optional.of(QuantityKind.MASS_PER_VOLUME)));
  }
}
