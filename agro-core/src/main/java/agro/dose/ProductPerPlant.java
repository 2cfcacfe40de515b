package agro.dose;

import java.util.Objects;

/**
 * Product per plant, tree, hole or other planting place.
 *
 * @param amount product above the line
 * @param number how many plants it is for, above zero
 * @param place what is counted
 */
public record ProductPerPlant(ProductAmount amount, double number, PlantingPlace place)
    implements ProductRate {

  /** Refuses nulls and numbers that are not above zero. */
  public ProductPerPlant {
    Objects.requireNonNull(amount, "amount");
    Objects.requireNonNull(place, "place");
    RateReader.requireNumber(number);
  }

  /**
   * A rate as labels write it, for example {@code "20 g per 1000 plants"}.
   *
   * @param text the rate
   * @return the rate
   * @throws agro.units.UnreadableQuantity if the quantity is not clear
   * @throws agro.report.InputProblem if the text states another kind of rate
   */
  public static ProductPerPlant parse(String text) {
    return RateReader.only(text, ProductPerPlant.class, RateKind.PRODUCT_PER_PLANT);
  }

  /**
   * The amount for one plant.
   *
   * @return low and high amount
   */
  public ProductAmount perPlant() {
    return amount.times(1 / number);
  }

  /**
   * The amount for a number of plants.
   *
   * @param count how many, zero or more
   * @return low and high amount
   */
  public ProductAmount on(double count) {
    return amount.times(count / number);
  }

  @Override
  public RateKind kind() {
    return RateKind.PRODUCT_PER_PLANT;
  }

  @Override
  public String below() {
    return AmountPrint.counted(number, place.words(), place.plural());
  }

  @Override
  public ProductPerPlant withAmount(ProductAmount other) {
    return new ProductPerPlant(other, number, place);
  }

  @Override
  public ProductPerPlant low() {
    return withAmount(amount.low());
  }

  @Override
  public ProductPerPlant high() {
    return withAmount(amount.high());
  }

  @Override
  public String toString() {
    return RatePrint.asWritten(amount, below());
  }
}
