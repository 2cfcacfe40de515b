package agro.dose.sprayer;

import agro.dose.ProductAmount;
import agro.dose.ProductPerArea;
import agro.report.InputProblem;
import agro.units.Area;
import agro.units.FlowRate;
import agro.units.Volume;
import agro.units.WorkTime;
import java.util.Objects;

/**
 * Injection of a product into a drip line. The product for the area is made up with water to a
 * stock, which the injector gives off at a steady rate while the water runs: stock = injector flow
 * × time; product per litre of water = product ÷ (water flow × time).
 *
 * @param field area that the line waters, above zero
 * @param rate product per ground area; a range stays a range
 * @param water flow of water behind the injector, as the drippers give it, above zero
 * @param injector flow of the injector, above zero and below the flow of water
 * @param time time of injection, above zero
 */
public record DripInjection(
    Area field, ProductPerArea rate, FlowRate water, FlowRate injector, WorkTime time) {

  /** Refuses flows that do not fit together. */
  public DripInjection {
    SprayerChecks.aboveZero(
        field,
        "area of the field",
        "the product is the rate times the area",
        "measure what this line waters");
    Objects.requireNonNull(rate, "rate");
    SprayerChecks.aboveZero(
        water,
        "flow of water",
        "the product reaches the plants with the water",
        "multiply the drippers by the flow of one");
    SprayerChecks.aboveZero(
        injector,
        "flow of the injector",
        "an injector that stands still gives nothing",
        "catch what the injector takes up in a minute");
    SprayerChecks.aboveZero(
        time,
        "time of injection",
        "nothing can be injected in no time",
        "choose a time in which the stock goes in, well within the watering");
    if (injector.compareTo(water) >= 0) {
      throw InputProblem.of("the injector gives " + injector + " into a flow of " + water)
          .expected("an injector flow below the flow of water")
          .because("the flow behind the injector contains what the injector gives")
          .mend("check the units of the two flows: L/h and L/min are a factor of 60 apart");
    }
  }

  /**
   * An injection whose stock has a stated volume; the time follows.
   *
   * @param field area
   * @param rate product per ground area
   * @param water flow of water
   * @param injector flow of the injector
   * @param stock volume of the made-up stock, above zero
   * @return the injection
   */
  public static DripInjection ofStock(
      Area field, ProductPerArea rate, FlowRate water, FlowRate injector, Volume stock) {
    checkedStock(stock);
    SprayerChecks.aboveZero(
        injector,
        "flow of the injector",
        "an injector that stands still gives nothing",
        "catch what the injector takes up in a minute");
    double seconds = 60 * stock.litres() / injector.litresPerMinute();
    return new DripInjection(field, rate, water, injector, new WorkTime(seconds));
  }

  /**
   * An injection whose stock has a stated volume and goes in within a stated time; the flow of the
   * injector follows.
   *
   * @param field area
   * @param rate product per ground area
   * @param water flow of water
   * @param stock volume of the made-up stock, above zero
   * @param time time of injection, above zero
   * @return the injection
   */
  public static DripInjection ofStockAndTime(
      Area field, ProductPerArea rate, FlowRate water, Volume stock, WorkTime time) {
    checkedStock(stock);
    SprayerChecks.aboveZero(
        time,
        "time of injection",
        "nothing can be injected in no time",
        "choose a time in which the stock goes in, well within the watering");
    return new DripInjection(field, rate, water, stock.dividedBy(time), time);
  }

  /**
   * An injection that brings the water to a stated strength; the rate per area follows.
   *
   * @param field area, above zero
   * @param perLitreOfWater product in one litre of water behind the injector
   * @param water flow of water
   * @param injector flow of the injector
   * @param time time of injection, above zero
   * @return the injection
   */
  public static DripInjection ofConcentration(
      Area field, ProductAmount perLitreOfWater, FlowRate water, FlowRate injector, WorkTime time) {
    SprayerChecks.aboveZero(
        field,
        "area of the field",
        "the rate is the product divided by the area",
        "measure what this line waters");
    double litresPerHectare = water.times(time).litres() * 10_000 / field.squareMetres();
    return new DripInjection(
        field,
        ProductPerArea.ofHectare(perLitreOfWater.times(litresPerHectare)),
        water,
        injector,
        time);
  }

  private static void checkedStock(Volume stock) {
    SprayerChecks.aboveZero(
        stock,
        "volume of the stock",
        "the injector takes up the stock",
        "choose a tank into which the product and water fit");
  }

  /**
   * The plan.
   *
   * @return product, made-up stock, strengths and steps
   * @throws InputProblem if the liquid product alone is more than the stock
   */
  public InjectionPlan evaluate() {
    return InjectionPlan.of(this);
  }
}
