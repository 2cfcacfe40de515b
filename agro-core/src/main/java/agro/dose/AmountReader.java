package agro.dose;

import agro.report.InputProblem;
import agro.units.Count;
import agro.units.Mass;
import agro.units.NumberRange;
import agro.units.ParsedAmount;
import agro.units.Quantity;
import agro.units.QuantityKind;
import agro.units.QuantityRange;
import agro.units.Unit;
import agro.units.Volume;
import java.util.Set;
import java.util.function.DoubleFunction;

/** Amounts above the line of a rate: which are product, and which are active ingredient. */
final class AmountReader {

  private static final Set<String> PRODUCT =
      Set.of("", "product", "formulation", "formulated product");
  private static final Set<String> INGREDIENT = Set.of("ai", "active ingredient");
  private static final Set<String> ACID = Set.of("ae", "acid equivalent");

  private AmountReader() {}

  static boolean isActive(ParsedAmount amount) {
    return INGREDIENT.contains(amount.of()) || ACID.contains(amount.of());
  }

  /** Refuses an amount of water, of active ingredient or of another thing than product. */
  static void requireProduct(ParsedAmount amount) {
    if (isActive(amount)) {
      throw InputProblem.of("\"" + amount.text() + "\" is an amount of active ingredient")
          .expected("an amount of product")
          .because(
              "a product of 20 % holds a fifth of active ingredient, so that one read as the other"
                  + " is wrong by five times")
          .mend("turn it into product with the strength of the product, or leave out \"ai\"");
    }
    if (!PRODUCT.contains(amount.of())) {
      throw InputProblem.of("\"" + amount.text() + "\" is an amount of " + amount.of())
          .expected("an amount of product, such as 250 mL, or of active ingredient, 100 g ai")
          .because("water and spray are no product; their volume is a rate of its own")
          .mend("read a volume of spray with SprayVolume.parse, or name the product");
    }
  }

  /** The product that a text states. */
  static ProductAmount product(ParsedAmount amount) {
    return product(amount.text(), amount.unit(), amount.numbers());
  }

  /** The product that numbers and a unit state. */
  @SuppressWarnings("unchecked") // The kind of a unit says of which quantity it is.
  static ProductAmount product(String text, Unit<?> unit, NumberRange numbers) {
    if (unit.kind() == QuantityKind.VOLUME) {
      return new ProductAmount.Liquid(
          range(numbers, n -> Volume.of(n, (Unit<Volume>) unit)), (Unit<Volume>) unit);
    }
    if (unit.kind() == QuantityKind.MASS) {
      return new ProductAmount.Solid(
          range(numbers, n -> Mass.of(n, (Unit<Mass>) unit)), (Unit<Mass>) unit);
    }
    if (unit.kind() == QuantityKind.COUNT) {
      return new ProductAmount.Living(
          range(numbers, n -> Count.of(n, (Unit<Count>) unit)), (Unit<Count>) unit);
    }
    throw InputProblem.of("\"" + text + "\" states " + unit.kind().words())
        .expected("a volume, a mass or a count of product")
        .because("nothing else of a product is measured out")
        .mend("write the amount in mL, L, g, kg or living units");
  }

  /** The active ingredient that a text states. */
  @SuppressWarnings("unchecked") // The kind of a unit says of which quantity it is.
  static ActiveAmount active(ParsedAmount amount) {
    if (amount.unit().kind() != QuantityKind.MASS) {
      throw InputProblem.of(
              "\""
                  + amount.text()
                  + "\" states active ingredient as "
                  + amount.unit().kind().words())
          .expected("a mass of active ingredient, such as 100 g ai")
          .because("active ingredient is weighed; a volume of it has no size without its density")
          .mend("write the mass of active ingredient, or leave out \"ai\" if it is product");
    }
    var unit = (Unit<Mass>) amount.unit();
    return new ActiveAmount(
        range(amount.numbers(), n -> Mass.of(n, unit)),
        unit,
        ACID.contains(amount.of()) ? ActiveBasis.ACID_EQUIVALENT : ActiveBasis.ACTIVE_INGREDIENT);
  }

  static InputProblem unlike(ProductAmount one, ProductAmount other) {
    return InputProblem.of(one + " and " + other + " were put together")
        .expected("two amounts of " + one.words() + " in like units")
        .because(
            "a volume, a mass and a count have nothing in common without a density or a strength,"
                + " and neither is guessed")
        .mend("state both the same way, or convert one with the density or strength of the label");
  }

  private static <Q extends Quantity<Q>> QuantityRange<Q> range(
      NumberRange numbers, DoubleFunction<Q> of) {
    return new QuantityRange<>(of.apply(numbers.low()), of.apply(numbers.high()));
  }
}
