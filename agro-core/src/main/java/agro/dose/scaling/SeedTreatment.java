package agro.dose.scaling;

import agro.dose.ProductPerArea;
import agro.dose.ProductPerSeedCount;
import agro.dose.ProductPerSeedMass;
import agro.dose.WrittenAmount;
import agro.units.Mass;
import agro.units.MassPerArea;
import agro.units.MassUnit;
import agro.units.Numbers;
import agro.units.QuantityStyle;
import agro.working.Caution;
import agro.working.Working;
import java.util.Objects;
import java.util.Optional;

/**
 * A seed treatment: product for a lot of seed, and what a hectare gets through the seed: product
 * per mass of seed × sowing rate.
 *
 * @param rate product per mass of seed
 * @param lot mass of seed to treat, above zero
 * @param sowing mass of seed per area of field; nothing if only the lot is treated
 */
public record SeedTreatment(ProductPerSeedMass rate, Mass lot, Optional<MassPerArea> sowing) {

  /** Refuses a lot of nothing. */
  public SeedTreatment {
    Objects.requireNonNull(rate, "rate");
    Objects.requireNonNull(sowing, "sowing");
    ScalingChecks.aboveZero(
        lot,
        "seed lot",
        "product is measured out for a mass of seed",
        "weigh the seed that goes into the treater");
    sowing.ifPresent(
        density ->
            ScalingChecks.aboveZero(
                density,
                "sowing rate",
                "what a hectare gets comes through its seed",
                "state the seed per area, or leave the sowing rate out"));
  }

  /**
   * A treatment of a lot.
   *
   * @param rate product per mass of seed
   * @param lot mass of seed to treat
   * @return the treatment without a sowing rate
   */
  public static SeedTreatment of(ProductPerSeedMass rate, Mass lot) {
    return new SeedTreatment(rate, lot, Optional.empty());
  }

  /**
   * A treatment of a lot from a rate per number of seeds: product per seed / mass of a seed.
   *
   * @param rate product per number of seeds
   * @param thousandSeeds mass of 1000 seeds, above zero
   * @param lot mass of seed to treat
   * @return the treatment with its rate per mass of seed
   * @throws agro.report.InputProblem if the seeds weigh nothing
   */
  public static SeedTreatment of(ProductPerSeedCount rate, Mass thousandSeeds, Mass lot) {
    ScalingChecks.aboveZero(
        thousandSeeds,
        "mass of 1000 seeds",
        "a lot is weighed and a rate per seed needs the number of seeds in it",
        "count and weigh 1000 seeds, or read it from the bag");
    double seedsPerKilogram = 1000 / thousandSeeds.kilograms();
    var perKilogram = rate.on(seedsPerKilogram);
    return of(new ProductPerSeedMass(perKilogram, WrittenAmount.one(MassUnit.KILOGRAM)), lot);
  }

  /**
   * The same treatment for seed that is sown at a rate.
   *
   * @param seedPerArea mass of seed per area
   * @return the treatment
   */
  public SeedTreatment sownAt(MassPerArea seedPerArea) {
    return new SeedTreatment(rate, lot, Optional.of(seedPerArea));
  }

  /**
   * Treats, printed in metric units.
   *
   * @return product for the lot and per area, and the steps
   */
  public SeedTreatmentResult evaluate() {
    return evaluate(QuantityStyle.METRIC);
  }

  /**
   * Treats.
   *
   * @param style units of print
   * @return product for the lot and per area, and the steps
   */
  public SeedTreatmentResult evaluate(QuantityStyle style) {
    var product = rate.on(lot);
    var working =
        Working.of("Seed treatment")
            .step(
                "product for the lot",
                "rate × mass of seed",
                rate + " × " + style.print(lot),
                product.print(style),
                ScalingSources.UNITS_ALONE);
    Optional<ProductPerArea> perArea = Optional.empty();
    if (sowing.isPresent()) {
      var seed = sowing.get();
      var dose = ProductPerArea.ofHectare(rate.on(new Mass(seed.kilogramsPerHectare())));
      perArea = Optional.of(dose);
      working =
          working.step(
              "product per area of field",
              "rate × sowing rate",
              rate + " × " + style.print(seed),
              dose.print(style));
    }
    var per100 = asPer(100, MassUnit.KILOGRAM);
    var perHundredweight = asPer(1, MassUnit.SHORT_HUNDREDWEIGHT);
    working =
        working
            .step(
                "the same rate per 100 kg and per US hundredweight",
                "",
                "1 cwt (US) = " + Numbers.plain(MassUnit.SHORT_HUNDREDWEIGHT.toBase(1)) + " kg",
                per100.amount().print(style)
                    + " per 100 kg, "
                    + perHundredweight.amount().print(style)
                    + " per cwt (US)")
            .withCautions(Caution.all());
    return new SeedTreatmentResult(product, perArea, per100, perHundredweight, working);
  }

  private ProductPerSeedMass asPer(double number, MassUnit unit) {
    var per = new WrittenAmount<>(number, unit);
    return new ProductPerSeedMass(rate.on(Mass.of(number, unit)), per);
  }
}
