package agro.dose.scaling;

/**
 * How wet manure or compost is. The same heap has two figures: water per wet mass and water per dry
 * matter, and 25 % of the one are 33.3 % of the other.
 */
public sealed interface SubstrateMoisture permits WetBasisMoisture, DryBasisMoisture {

  /**
   * Water per dry matter, whatever the basis of the figure.
   *
   * @return kilograms of water to a kilogram of dry matter, 0 or more
   */
  double waterPerDryMatter();

  /**
   * The same moisture on wet mass.
   *
   * @return water per wet mass
   */
  default WetBasisMoisture onWetBasis() {
    return new WetBasisMoisture(waterPerDryMatter() / (1 + waterPerDryMatter()));
  }

  /**
   * The same moisture on dry matter.
   *
   * @return water per dry matter
   */
  default DryBasisMoisture onDryBasis() {
    return new DryBasisMoisture(waterPerDryMatter());
  }
}
