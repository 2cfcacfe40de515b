package agro.dose.scaling;

import agro.dose.ProductAmount;
import agro.report.InputProblem;
import agro.units.Density;
import agro.units.Mass;
import agro.units.MassUnit;
import agro.units.ParsedAmount;
import agro.units.QuantityText;
import agro.units.Unit;
import agro.units.Volume;
import agro.units.VolumeUnit;
import java.util.Set;

/**
 * A measure that is at hand in the field: a spoon, a bottle cap, a sachet. It holds a volume of
 * liquid or a mass of powder; a volume of powder becomes a mass only with a bulk density.
 *
 * @param name name for print, for example {@code "tbsp (US)"}
 * @param holds what it holds when it is level, one amount above zero
 */
public record FieldMeasure(String name, ProductAmount holds) {

  private static final Set<VolumeUnit> SPOONS =
      Set.of(
          VolumeUnit.US_TABLESPOON,
          VolumeUnit.US_TEASPOON,
          VolumeUnit.METRIC_TABLESPOON,
          VolumeUnit.METRIC_TEASPOON,
          VolumeUnit.AUSTRALIAN_TABLESPOON);

  /** Refuses a measure that holds nothing or a range. */
  public FieldMeasure {
    name = ScalingChecks.named(name, "measure");
    if (!holds.isSingle() || !(holds.lowNumber() > 0)) {
      throw InputProblem.of("the measure " + name + " holds " + holds)
          .expected("one amount above zero")
          .because("a count of measures is the amount divided by what one holds")
          .mend("fill the measure ten times, measure or weigh it all and divide by ten");
    }
  }

  /**
   * A level spoon of a stated kind.
   *
   * @param unit a tablespoon or teaspoon; US 14.79, metric 15, Australian 20 mL
   * @return the spoon
   * @throws InputProblem if the unit is no spoon
   */
  public static FieldMeasure spoon(Unit<Volume> unit) {
    if (unit instanceof VolumeUnit spoon && SPOONS.contains(spoon)) {
      return new FieldMeasure(unit.symbol(), ProductAmount.liquid(1, unit));
    }
    throw InputProblem.of(unit.symbol() + " was given as a spoon")
        .expected("a tablespoon or a teaspoon: US, metric or Australian")
        .because("what is no spoon has no size that everybody agrees on")
        .mend("measure what it holds and use FieldMeasure.cap");
  }

  /**
   * A level spoon as people write it.
   *
   * @param words kind and size, for example {@code "tbsp (US)"} or {@code "metric teaspoon"}
   * @return the spoon
   * @throws agro.units.UnreadableQuantity if the kind is missing: a tablespoon is 14.79, 15 or 20
   *     mL
   * @throws InputProblem if it is no spoon
   */
  public static FieldMeasure spoon(String words) {
    var parsed = QuantityText.parse("1 " + words);
    if (parsed instanceof ParsedAmount amount && amount.unit() instanceof VolumeUnit unit) {
      return spoon(unit);
    }
    throw InputProblem.of("\"" + words + "\" was read as a spoon")
        .expected("a spoon with its kind, such as \"tbsp (US)\"")
        .because("a spoon holds a volume")
        .mend("write the kind behind it: (US), (metric) or (AU)");
  }

  /**
   * A bottle cap or other measure whose content was measured. No size is known beforehand: caps
   * differ from bottle to bottle.
   *
   * @param name name for print
   * @param measured what it holds, above zero
   * @return the measure
   */
  public static FieldMeasure cap(String name, Volume measured) {
    return new FieldMeasure(
        name, ProductAmount.liquid(measured.in(VolumeUnit.MILLILITRE), VolumeUnit.MILLILITRE));
  }

  /**
   * A sachet with its declared content.
   *
   * @param content what is in one sachet
   * @return the measure
   */
  public static FieldMeasure sachet(ProductAmount content) {
    return new FieldMeasure("sachet of " + content, content);
  }

  /**
   * The same measure filled level with a powder.
   *
   * @param bulkDensity bulk density of the powder, weighed and not guessed
   * @return a measure of mass
   * @throws InputProblem if the measure holds no volume
   */
  public FieldMeasure filledWith(Density bulkDensity) {
    if (holds instanceof ProductAmount.Liquid liquid) {
      Mass mass = liquid.range().low().times(bulkDensity);
      return new FieldMeasure(
          name + " of powder", ProductAmount.solid(mass.in(MassUnit.GRAM), MassUnit.GRAM));
    }
    throw InputProblem.of("the measure " + name + " holds " + holds.words())
        .expected("a measure of volume, such as a spoon")
        .because("a bulk density turns a volume of powder into its mass")
        .mend("use the measure as it is");
  }

  /** Whether it is a spoon of one of the kinds that are known here. */
  boolean isSpoon() {
    return holds instanceof ProductAmount.Liquid liquid
        && liquid.unit() instanceof VolumeUnit unit
        && SPOONS.contains(unit);
  }

  @Override
  public String toString() {
    return name;
  }
}
