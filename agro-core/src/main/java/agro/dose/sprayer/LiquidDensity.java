package agro.dose.sprayer;

import agro.dose.SprayVolume;
import agro.report.InputProblem;
import agro.units.Density;
import agro.units.DensityUnit;
import agro.units.FlowRate;
import agro.units.MassPerArea;
import agro.units.MassPerMass;
import agro.units.MassPerVolume;
import agro.units.Numbers;
import agro.units.VolumePerArea;

/**
 * The density of a spray liquid, such as a liquid fertiliser. Nozzle tables and catches are for
 * water; a heavier liquid flows more slowly through the same nozzle at the same pressure: q = q of
 * water ÷ √SG, where SG is the density divided by that of water, 8.34 lb per US gallon.
 *
 * @param density density of the liquid, 0.5 to 3 times that of water
 */
public record LiquidDensity(Density density) {

  private static final double WATER_POUNDS_PER_US_GALLON = 8.34;

  /** The density of water on which the published factors rest, 8.34 lb per US gallon. */
  public static final Density WATER =
      Density.of(WATER_POUNDS_PER_US_GALLON, DensityUnit.POUND_PER_US_GALLON);

  private static final double LIGHTEST = 0.5;
  private static final double HEAVIEST = 3;

  /** Refuses densities that no spray liquid has. */
  public LiquidDensity {
    double gravity = density.ratioTo(WATER);
    if (gravity < LIGHTEST || gravity > HEAVIEST) {
      throw InputProblem.of(
              "the liquid is "
                  + Numbers.significant(gravity, 4)
                  + " times as heavy as water ("
                  + density
                  + ")")
          .expected("0.5 to 3 times; published tables run from 0.79 to 1.92")
          .because("no spray liquid is that light or heavy, so a unit was mistaken")
          .mend("check the unit: water is 1 kg/L, 1000 kg/m³ or 8.34 lb per US gallon");
    }
  }

  /**
   * A liquid from its specific gravity.
   *
   * @param specificGravity density ÷ density of water, 0.5 to 3
   * @return the liquid
   * @throws InputProblem if the number is outside 0.5 to 3
   */
  public static LiquidDensity ofSpecificGravity(double specificGravity) {
    if (!(specificGravity > 0 && specificGravity < Double.POSITIVE_INFINITY)) {
      throw InputProblem.of("the specific gravity is " + specificGravity)
          .expected("a number from 0.5 to 3, 1 for water")
          .because("the flow is divided by its square root")
          .mend("weigh a litre of the liquid in kg");
    }
    return new LiquidDensity(WATER.times(specificGravity));
  }

  /**
   * Density divided by that of water.
   *
   * @return 1 for water
   */
  public double specificGravity() {
    return density.ratioTo(WATER);
  }

  /**
   * The factor by which a wanted flow or volume is multiplied before a table for water is read.
   *
   * @return √SG
   */
  public double factor() {
    return Math.sqrt(specificGravity());
  }

  /**
   * The flow of this liquid through nozzles that were caught with water.
   *
   * @param water flow of water
   * @return flow of water ÷ √SG
   */
  public FlowRate flowOf(FlowRate water) {
    return water.dividedBy(factor());
  }

  /**
   * The flow of water for which nozzles are chosen so that this liquid flows as wanted.
   *
   * @param wanted flow of this liquid
   * @return wanted flow × √SG
   */
  public FlowRate waterFlowFor(FlowRate wanted) {
    return wanted.times(factor());
  }

  /**
   * The volume of water per area for which nozzles are chosen so that this liquid comes out as
   * wanted.
   *
   * @param wanted volume of this liquid per area
   * @return wanted volume × √SG, with the steps
   */
  public DensityCorrection correct(SprayVolume wanted) {
    return DensityCorrection.of(this, wanted, SprayUnits.METRIC);
  }

  /**
   * How much of a substance a volume of this liquid holds.
   *
   * @param share mass of the substance per mass of liquid, for example 280 g/kg nitrogen
   * @return mass per volume
   */
  public MassPerVolume contentOf(MassPerMass share) {
    return new MassPerVolume(share.gramsPerKilogram() * density.kilogramsPerLitre());
  }

  /**
   * The volume of this liquid per area that carries a mass of a substance per area.
   *
   * @param wanted mass of the substance per area, above zero
   * @param share mass of the substance per mass of liquid, above zero
   * @return volume of liquid per area
   * @throws InputProblem if the share is zero
   */
  public SprayVolume volumeCarrying(MassPerArea wanted, MassPerMass share) {
    SprayerChecks.aboveZero(
        share,
        "content of the liquid",
        "a liquid without the substance cannot carry it",
        "take the content from the label: 28 % is 280 g/kg");
    double litresPerHectare =
        1000 * wanted.kilogramsPerHectare() / contentOf(share).gramsPerLitre();
    return new SprayVolume(new VolumePerArea(litresPerHectare));
  }

  String printedRoot() {
    return "√" + Numbers.significant(specificGravity(), 4);
  }
}
