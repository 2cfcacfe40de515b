package agro.dose.scaling;

import agro.report.InputProblem;
import agro.units.Density;
import agro.units.Mass;
import agro.units.MassPerMass;
import agro.units.Numbers;
import agro.units.Quantity;
import agro.units.QuantityStyle;
import agro.units.Volume;
import agro.working.Caution;
import agro.working.Working;
import java.util.Objects;
import java.util.Optional;

/**
 * A dilution, C1 × V1 = C2 × V2: what is dissolved in the stock is dissolved in the whole. Both
 * strengths have one basis, because they have one type: % w/v and % v/v do not compile together.
 * The amounts are volumes for a strength by volume and masses for one by mass.
 *
 * <p>The whole is made up to its amount; the diluent is the difference, exact for masses, and for
 * volumes as far as they add up.
 *
 * @param <C> kind of both strengths, for example {@link agro.units.MassPerVolume}
 * @param <A> kind of both amounts, {@link Volume} or {@link Mass}
 */
public final class Dilution<C extends Quantity<C>, A extends Quantity<A>> {

  private enum Sought {
    STOCK,
    TOTAL,
    STRENGTH
  }

  /** A volume of a carrier that is counted by its mass. */
  private record Carrier(Volume volume, Density density) {
    Working weighed(Working working, String mass, QuantityStyle style) {
      return working.step(
          "mass of the whole",
          "volume × density of the carrier",
          style.print(volume) + " × " + style.print(density),
          mass,
          ScalingSources.UNITS_ALONE);
    }
  }

  private final Sought sought;
  private final C stock;
  private final A stockAmount;
  private final C strength;
  private final A total;
  private final Optional<Carrier> carrier;

  private Dilution(
      Sought sought, C stock, A stockAmount, C strength, A total, Optional<Carrier> carrier) {
    this.sought = sought;
    this.stock = stock;
    this.stockAmount = stockAmount;
    this.strength = strength;
    this.total = total;
    this.carrier = carrier;
  }

  /**
   * How much stock goes into a whole of a wanted strength: V1 = C2 × V2 / C1.
   *
   * @param stock strength of the stock, above zero
   * @param wanted strength of the whole, above zero and not above the stock
   * @param total amount of the whole, above zero
   * @param <C> kind of the strengths
   * @param <A> kind of the amounts
   * @return the dilution
   * @throws InputProblem if the whole would be stronger than the stock
   */
  public static <C extends Quantity<C>, A extends Quantity<A>> Dilution<C, A> stockFor(
      C stock, C wanted, A total) {
    requireStrengths(stock, wanted);
    requireAmount(stock, total, "whole");
    var amount = total.times(wanted.ratioTo(stock));
    return new Dilution<>(Sought.STOCK, stock, amount, wanted, total, Optional.empty());
  }

  /**
   * How much powder or liquid goes into a volume of a suspension whose strength is by mass. The
   * mass of the whole is its volume times the density of the carrier, as is usual for weak mixes.
   *
   * @param stock strength of the product by mass
   * @param wanted strength of the suspension by mass
   * @param total volume of the suspension
   * @param carrier density of the carrier, 1 kg/L for water
   * @return the dilution by mass
   * @throws InputProblem if the whole would be stronger than the stock
   */
  public static Dilution<MassPerMass, Mass> inCarrier(
      MassPerMass stock, MassPerMass wanted, Volume total, Density carrier) {
    requireStrengths(stock, wanted);
    requireAmount(carrier, total, "whole");
    var mass = total.times(carrier);
    var stockMass = mass.times(wanted.ratioTo(stock));
    var liquid = Optional.of(new Carrier(total, carrier));
    return new Dilution<>(Sought.STOCK, stock, stockMass, wanted, mass, liquid);
  }

  /**
   * How far an amount of stock goes at a wanted strength: V2 = C1 × V1 / C2.
   *
   * @param stock strength of the stock, above zero
   * @param stockAmount amount of the stock, above zero
   * @param wanted strength of the whole, above zero and not above the stock
   * @param <C> kind of the strengths
   * @param <A> kind of the amounts
   * @return the dilution
   * @throws InputProblem if the whole would be stronger than the stock
   */
  public static <C extends Quantity<C>, A extends Quantity<A>> Dilution<C, A> reachOf(
      C stock, A stockAmount, C wanted) {
    requireStrengths(stock, wanted);
    requireAmount(stock, stockAmount, "stock");
    var total = stockAmount.times(stock.ratioTo(wanted));
    return new Dilution<>(Sought.TOTAL, stock, stockAmount, wanted, total, Optional.empty());
  }

  /**
   * How strong the whole becomes: C2 = C1 × V1 / V2.
   *
   * @param stock strength of the stock, above zero
   * @param stockAmount amount of the stock, above zero
   * @param total amount to which it is made up, not below the stock
   * @param <C> kind of the strengths
   * @param <A> kind of the amounts
   * @return the dilution
   * @throws InputProblem if there is more stock than whole
   */
  public static <C extends Quantity<C>, A extends Quantity<A>> Dilution<C, A> strengthOf(
      C stock, A stockAmount, A total) {
    requireStrengths(stock, stock);
    requireAmount(stock, stockAmount, "stock");
    requireAmount(stock, total, "whole");
    ScalingChecks.notAbove(
        stockAmount,
        "amount of stock",
        total,
        "whole to which it is made up",
        "a dilution holds its stock and the diluent, so it is not smaller than the stock",
        "check which figure is the stock, and the units of both");
    var strength = stock.times(Math.min(1, stockAmount.ratioTo(total)));
    return new Dilution<>(Sought.STRENGTH, stock, stockAmount, strength, total, Optional.empty());
  }

  /**
   * Calculates the dilution, printed in metric units.
   *
   * @return amounts, strengths and the steps
   */
  public DilutionResult<C, A> evaluate() {
    return evaluate(QuantityStyle.METRIC);
  }

  /**
   * Calculates the dilution.
   *
   * @param style units of print
   * @return amounts, strengths and the steps
   */
  public DilutionResult<C, A> evaluate(QuantityStyle style) {
    Objects.requireNonNull(style, "style");
    var diluent = total.minus(stockAmount);
    var working = Working.of("Dilution");
    if (carrier.isPresent()) {
      working = carrier.get().weighed(working, style.print(total), style);
    }
    working =
        soughtStep(working, style)
            .step(
                "diluent",
                "V2 - V1",
                style.print(total) + " - " + style.print(stockAmount),
                style.print(diluent) + ", made up to " + style.print(total))
            .step(
                "dilution",
                "V2 / V1",
                style.print(total) + " / " + style.print(stockAmount),
                "1 in " + Numbers.significant(total.ratioTo(stockAmount), style.digits()))
            .withCautions(Caution.all());
    return new DilutionResult<>(stock, stockAmount, strength, total, diluent, working);
  }

  private Working soughtStep(Working working, QuantityStyle style) {
    var c1 = style.print(stock);
    var c2 = style.print(strength);
    var v1 = style.print(stockAmount);
    var v2 = style.print(total);
    var source = ScalingSources.MASS_BALANCE;
    return switch (sought) {
      case STOCK ->
          working.step("stock", "V1 = C2 × V2 / C1", c2 + " × " + v2 + " / " + c1, v1, source);
      case TOTAL ->
          working.step("whole", "V2 = C1 × V1 / C2", c1 + " × " + v1 + " / " + c2, v2, source);
      case STRENGTH ->
          working.step(
              "strength of the whole",
              "C2 = C1 × V1 / V2",
              c1 + " × " + v1 + " / " + v2,
              c2,
              source);
    };
  }

  private static <C extends Quantity<C>> void requireStrengths(C stock, C wanted) {
    StrengthChecks.sameThing(stock, wanted);
    ScalingChecks.aboveZero(
        stock,
        "strength of the stock",
        "a stock that holds nothing cannot be diluted",
        "copy the strength from the label of the stock");
    ScalingChecks.aboveZero(
        wanted,
        "wanted strength",
        "nothing dissolved is plain diluent, and its stock would go for ever",
        "state the strength that the whole is to have");
    ScalingChecks.notAbove(
        wanted,
        "wanted strength",
        stock,
        "strength of the stock",
        "diluting never makes a stock stronger",
        "check which figure is the stock, and that both are in the unit that was meant");
  }

  private static void requireAmount(Quantity<?> strength, Quantity<?> amount, String what) {
    StrengthChecks.amountFits(strength, amount, what);
  }

  @Override
  public String toString() {
    return stockAmount + " at " + stock + " in " + total + " at " + strength;
  }
}
