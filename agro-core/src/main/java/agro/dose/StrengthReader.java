package agro.dose;

import agro.report.InputProblem;
import agro.units.CountPerMass;
import agro.units.CountPerVolume;
import agro.units.Counted;
import agro.units.MassPerMass;
import agro.units.MassPerVolume;
import agro.units.Numbers;
import agro.units.ParsedAmount;
import agro.units.ParsedQuantity;
import agro.units.ParsedRate;
import agro.units.Quantity;
import agro.units.QuantityKind;
import agro.units.QuantityRange;
import agro.units.QuantityText;
import java.util.Optional;

/** Reads strengths and refuses those that no product has. */
final class StrengthReader {

  /** Heavier than any formulated product; a strength above it is a slip of the unit. */
  private static final double MOST_GRAMS_PER_LITRE = 3000;

  private StrengthReader() {}

  static Strength read(String text) {
    var parsed = QuantityText.parse(text);
    var kind = parsed.kind().orElse(null);
    var basis = basis(parsed);
    if (kind == QuantityKind.MASS_PER_VOLUME || kind == QuantityKind.DENSITY) {
      var content = single(text, MassPerVolume.from(parsed));
      return new ContentByVolume(content, basis, Optional.empty());
    }
    if (kind == QuantityKind.MASS_PER_MASS) {
      return new ContentByMass(single(text, MassPerMass.from(parsed)), basis, Optional.empty());
    }
    if (kind == QuantityKind.COUNT_PER_MASS) {
      return new LivingByMass(single(text, CountPerMass.from(parsed)));
    }
    if (kind == QuantityKind.COUNT_PER_VOLUME) {
      return new LivingByVolume(single(text, CountPerVolume.from(parsed)));
    }
    throw InputProblem.of(
            "\"" + text + "\" is " + (kind == null ? "an amount per a thing" : kind.words()))
        .expected("a strength: g/L, g/kg, % w/w, lb/gal, or living units by mass or volume")
        .because("what a product holds is a mass or a count in a mass or volume of it")
        .mend("copy the strength from the label, for example \"200 g/L\" or \"25 % w/w\"");
  }

  private static ActiveBasis basis(ParsedQuantity parsed) {
    var above = parsed instanceof ParsedRate rate ? rate.amount() : (ParsedAmount) parsed;
    return switch (above.of()) {
      case "", "ai", "active ingredient" -> ActiveBasis.ACTIVE_INGREDIENT;
      case "ae", "acid equivalent" -> ActiveBasis.ACID_EQUIVALENT;
      default ->
          throw InputProblem.of("\"" + parsed.text() + "\" is a content of " + above.of())
              .expected("a content of active ingredient or acid equivalent")
              .because("a strength says how much of the active substance is in the product")
              .mend("write \"ai\" or \"ae\" behind the mass, or nothing");
    };
  }

  private static <Q extends Quantity<Q>> Q single(String text, QuantityRange<Q> range) {
    if (!range.isSingle()) {
      throw InputProblem.of("\"" + text + "\" is a range")
          .expected("the one strength that the label guarantees")
          .because("a product has one declared content, and every dose is divided by it")
          .mend("write the declared content alone");
    }
    return range.low();
  }

  static void requireContent(double content, String unit) {
    double most = unit.equals("g/kg") ? 1000 : MOST_GRAMS_PER_LITRE;
    if (!(content > 0 && content <= most)) {
      throw InputProblem.of("a strength of " + Numbers.plain(content) + " " + unit)
          .expected("more than 0 and at most " + Numbers.plain(most) + " " + unit)
          .because("a product holds something of its active ingredient and not more than itself")
          .mend("look at the unit of the strength on the label: % w/w, g/L and g/kg differ");
    }
  }

  static void requireLiving(double content) {
    if (!(content > 0)) {
      throw InputProblem.of("a strength of " + Numbers.plain(content) + " living units")
          .expected("a count above zero")
          .because("a product without living units has no dose")
          .mend("write the count that the label states, for example \"2 x 10^9 CFU/g\"");
    }
  }

  static void requireSameCount(ProductAmount.Living living, Counted counted) {
    if (!living.unit().equals(counted)) {
      throw InputProblem.of(living + " were asked of a product that is counted in " + counted)
          .expected("dose and strength in " + counted)
          .because("spores, colony-forming units and the rest count different things")
          .mend("take dose and strength from one label, in one sort of count");
    }
  }
}
