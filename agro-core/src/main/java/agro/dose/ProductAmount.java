package agro.dose;

import agro.report.InputProblem;
import agro.units.Count;
import agro.units.Counted;
import agro.units.Density;
import agro.units.Mass;
import agro.units.MassUnit;
import agro.units.ParsedAmount;
import agro.units.QuantityRange;
import agro.units.QuantityStyle;
import agro.units.QuantityText;
import agro.units.Unit;
import agro.units.Volume;
import agro.units.VolumeUnit;
import java.util.Objects;

/**
 * An amount, or a range of amounts, of formulated product: a liquid that is measured, a solid that
 * is weighed, or living units that are counted. It is never an amount of active ingredient, which
 * is an {@link ActiveAmount}. A liquid does not become a mass here, nor a solid a volume, because
 * that takes a density.
 */
public sealed interface ProductAmount {

  /**
   * A liquid product.
   *
   * @param range low and high volume
   * @param unit unit in which it is written
   */
  record Liquid(QuantityRange<Volume> range, Unit<Volume> unit) implements ProductAmount {
    /** Refuses nulls. */
    public Liquid {
      Objects.requireNonNull(range, "range");
      Objects.requireNonNull(unit, "unit");
    }

    /**
     * What this liquid weighs.
     *
     * @param density density of the product, as its label or safety data sheet states it
     * @return the mass, printed in kilograms
     */
    public Solid weighed(Density density) {
      return solid(new QuantityRange<>(range.low().times(density), range.high().times(density)));
    }

    @Override
    public Liquid low() {
      return new Liquid(QuantityRange.exactly(range.low()), unit);
    }

    @Override
    public Liquid high() {
      return new Liquid(QuantityRange.exactly(range.high()), unit);
    }

    @Override
    public Liquid times(double factor) {
      return new Liquid(range.times(factor), unit);
    }

    @Override
    public String toString() {
      return AmountPrint.range(range, unit);
    }
  }

  /**
   * A solid product.
   *
   * @param range low and high mass
   * @param unit unit in which it is written
   */
  record Solid(QuantityRange<Mass> range, Unit<Mass> unit) implements ProductAmount {
    /** Refuses nulls. */
    public Solid {
      Objects.requireNonNull(range, "range");
      Objects.requireNonNull(unit, "unit");
    }

    /**
     * The volume that this solid fills.
     *
     * @param density bulk density of the product, as its label states it; for powders it differs
     *     three times and more
     * @return the volume, printed in litres
     */
    public Liquid measured(Density density) {
      return liquid(
          new QuantityRange<>(range.low().dividedBy(density), range.high().dividedBy(density)));
    }

    @Override
    public Solid low() {
      return new Solid(QuantityRange.exactly(range.low()), unit);
    }

    @Override
    public Solid high() {
      return new Solid(QuantityRange.exactly(range.high()), unit);
    }

    @Override
    public Solid times(double factor) {
      return new Solid(range.times(factor), unit);
    }

    @Override
    public String toString() {
      return AmountPrint.range(range, unit);
    }
  }

  /**
   * Living units of a product, for example spores; what they weigh is not known.
   *
   * @param range low and high count
   * @param unit what is counted
   */
  record Living(QuantityRange<Count> range, Unit<Count> unit) implements ProductAmount {
    /** Refuses nulls. */
    public Living {
      Objects.requireNonNull(range, "range");
      Objects.requireNonNull(unit, "unit");
    }

    @Override
    public Living low() {
      return new Living(QuantityRange.exactly(range.low()), unit);
    }

    @Override
    public Living high() {
      return new Living(QuantityRange.exactly(range.high()), unit);
    }

    @Override
    public Living times(double factor) {
      return new Living(range.times(factor), unit);
    }

    @Override
    public String toString() {
      return AmountPrint.range(range, unit);
    }
  }

  /**
   * A liquid.
   *
   * @param number number in the unit
   * @param unit unit in which it is written
   * @return the amount
   */
  static Liquid liquid(double number, Unit<Volume> unit) {
    return new Liquid(QuantityRange.exactly(Volume.of(number, unit)), unit);
  }

  /**
   * A range of a liquid.
   *
   * @param range low and high volume
   * @return the amount, printed in litres
   */
  static Liquid liquid(QuantityRange<Volume> range) {
    return new Liquid(range, VolumeUnit.LITRE);
  }

  /**
   * A solid.
   *
   * @param number number in the unit
   * @param unit unit in which it is written
   * @return the amount
   */
  static Solid solid(double number, Unit<Mass> unit) {
    return new Solid(QuantityRange.exactly(Mass.of(number, unit)), unit);
  }

  /**
   * A range of a solid.
   *
   * @param range low and high mass
   * @return the amount, printed in kilograms
   */
  static Solid solid(QuantityRange<Mass> range) {
    return new Solid(range, MassUnit.KILOGRAM);
  }

  /**
   * Living units.
   *
   * @param number how many
   * @param counted what is counted
   * @return the amount
   */
  static Living living(double number, Counted counted) {
    return new Living(QuantityRange.exactly(Count.of(number, counted)), counted);
  }

  /**
   * An amount or range as people write it, for example {@code "250-300 mL"}.
   *
   * @param text a volume, a mass or a count
   * @return the amount
   * @throws agro.units.UnreadableQuantity if the text is not clear
   * @throws InputProblem if it is a rate or something that is no amount of a product
   */
  static ProductAmount parse(String text) {
    if (QuantityText.parse(text) instanceof ParsedAmount amount) {
      AmountReader.requireProduct(amount);
      return AmountReader.product(amount);
    }
    throw InputProblem.of("\"" + text + "\" was read as an amount of product")
        .expected("a volume, a mass or a count without anything below the line, such as 250 mL")
        .because("a rate becomes an amount only for a stated area, volume or number")
        .mend("read it as a rate with LabelRate.parse, or write the amount alone");
  }

  /**
   * The low and the high amount.
   *
   * @return the range
   */
  QuantityRange<?> range();

  /**
   * The low end alone.
   *
   * @return a single amount
   */
  ProductAmount low();

  /**
   * The high end alone.
   *
   * @return a single amount
   */
  ProductAmount high();

  /**
   * The amount times a number.
   *
   * @param factor zero or more
   * @return low and high times the number
   * @throws IllegalArgumentException if the number is negative or not finite
   */
  ProductAmount times(double factor);

  /**
   * The sum with an amount of the same kind, end by end.
   *
   * @param other amount to add
   * @return the sum in the unit of this amount
   * @throws InputProblem if one is a liquid and the other a solid, or they count different things
   */
  default ProductAmount plus(ProductAmount other) {
    if (this instanceof Liquid a && other instanceof Liquid b) {
      return new Liquid(a.range().plus(b.range()), a.unit());
    }
    if (this instanceof Solid a && other instanceof Solid b) {
      return new Solid(a.range().plus(b.range()), a.unit());
    }
    if (this instanceof Living a && other instanceof Living b && a.unit().equals(b.unit())) {
      return new Living(a.range().plus(b.range()), a.unit());
    }
    throw AmountReader.unlike(this, other);
  }

  /**
   * Whether low and high are the same.
   *
   * @return true for a single amount
   */
  default boolean isSingle() {
    return range().isSingle();
  }

  /**
   * The low end as a number.
   *
   * @return litres of a liquid, kilograms of a solid, or living units
   */
  default double lowNumber() {
    return range().low().inBaseUnit();
  }

  /**
   * The high end as a number.
   *
   * @return litres of a liquid, kilograms of a solid, or living units
   */
  default double highNumber() {
    return range().high().inBaseUnit();
  }

  /**
   * Whether two amounts are measured alike, so that they can be added and compared.
   *
   * @param other the other amount
   * @return true for two liquids, two solids, or two counts of the same thing
   */
  default boolean isLike(ProductAmount other) {
    return (this instanceof Liquid && other instanceof Liquid)
        || (this instanceof Solid && other instanceof Solid)
        || (this instanceof Living a && other instanceof Living b && a.unit().equals(b.unit()));
  }

  /**
   * The amount in a reader's units.
   *
   * @param style family of units and digits
   * @return for example {@code "0.25 to 0.3 L"}
   */
  default String print(QuantityStyle style) {
    return AmountPrint.styled(range(), style);
  }

  /**
   * What kind of amount this is.
   *
   * @return {@code "a liquid product"}, {@code "a solid product"} or {@code "living units"}
   */
  default String words() {
    if (this instanceof Liquid) {
      return "a liquid product";
    }
    return this instanceof Solid ? "a solid product" : "living units";
  }
}
