package agro.dose.sprayer;

import agro.dose.ProductAmount;
import agro.report.InputProblem;
import agro.units.Numbers;
import agro.units.QuantityRange;
import agro.units.QuantityStyle;
import agro.units.Volume;
import agro.units.WorkTimeUnit;
import agro.working.Caution;
import agro.working.Presentable;
import agro.working.Presentation;
import agro.working.Working;
import java.util.List;
import java.util.Optional;

/**
 * What is made up and injected into a drip line.
 *
 * @param product product for the area, low and high
 * @param stock volume to which it is filled up with water
 * @param waterToAdd water beside a liquid product, low and high, if volumes add up; nothing for a
 *     solid, which is dissolved and filled up to the stock
 * @param perLitreOfStock product in one litre of stock
 * @param perLitreOfWater product in one litre of water behind the injector
 * @param water water that runs during the injection, the stock counted
 * @param waterPerStock litres of water for one litre of stock
 * @param working the steps, with cautions
 */
public record InjectionPlan(
    ProductAmount product,
    Volume stock,
    Optional<QuantityRange<Volume>> waterToAdd,
    ProductAmount perLitreOfStock,
    ProductAmount perLitreOfWater,
    Volume water,
    double waterPerStock,
    Working working)
    implements Presentable {

  /** What has to be seen to in the field. */
  private static final String REMARK =
      "The label must allow this way of application. The line needs a valve that keeps water from"
          + " flowing back to the source, and is rinsed with water afterwards.";

  static InjectionPlan of(DripInjection job) {
    var product = job.rate().on(job.field());
    var stock = job.injector().times(job.time());
    var water = job.water().times(job.time());
    var toAdd = waterBeside(product, stock);
    var inStock = product.times(1 / stock.litres());
    var inWater = product.times(1 / water.litres());
    double ratio = job.water().ratioTo(job.injector());
    var working =
        Working.of("Injection into a drip line")
            .step(
                "product for the area",
                "rate × area",
                job.rate() + " × " + job.field(),
                product.toString(),
                SprayerSources.MASS_BALANCE)
            .step(
                "stock to make up",
                "injector flow × time",
                job.injector() + " × " + SprayUnits.print(job.time(), WorkTimeUnit.MINUTE),
                filledUp(product, stock, toAdd),
                SprayerSources.MASS_BALANCE)
            .step(
                "product in one litre of stock",
                "product / stock",
                product + " / " + stock,
                perLitre(inStock))
            .step(
                "water that carries it",
                "water flow × time",
                job.water() + " × " + SprayUnits.print(job.time(), WorkTimeUnit.MINUTE),
                water.toString(),
                SprayerSources.MASS_BALANCE)
            .step(
                "product in one litre of water",
                "product / water",
                product + " / " + water,
                perLitre(inWater)
                    + ", one part of stock in "
                    + Numbers.significant(ratio, 4)
                    + " parts")
            .step("in the field", "", "", REMARK)
            .withCautions(Caution.all());
    return new InjectionPlan(product, stock, toAdd, inStock, inWater, water, ratio, working);
  }

  private static Optional<QuantityRange<Volume>> waterBeside(ProductAmount product, Volume stock) {
    if (!(product instanceof ProductAmount.Liquid liquid)) {
      return Optional.empty();
    }
    if (liquid.range().high().compareTo(stock) > 0) {
      throw InputProblem.of(
              "the product alone, " + product + ", is more than the stock of " + stock)
          .expected("a stock that holds the product and water")
          .because("the injector would not take up the whole dose in this time")
          .mend("inject for longer, or set the injector to a higher flow");
    }
    var range = liquid.range();
    return Optional.of(stock.minus(range.high()).to(stock.minus(range.low())));
  }

  private static String filledUp(
      ProductAmount product, Volume stock, Optional<QuantityRange<Volume>> water) {
    return product
        + " filled up with water to "
        + Numbers.significant(stock.litres(), 5)
        + " L"
        + water.map(range -> " (" + range + " of water)").orElse("");
  }

  private static String perLitre(ProductAmount amount) {
    return amount.print(QuantityStyle.METRIC) + " per litre";
  }

  /**
   * What has to be seen to in the field.
   *
   * @return sentences
   */
  public List<String> remarks() {
    return List.of(REMARK);
  }

  @Override
  public Presentation presentation() {
    return working.presentation();
  }
}
