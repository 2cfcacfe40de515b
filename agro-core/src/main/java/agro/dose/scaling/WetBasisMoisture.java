package agro.dose.scaling;

import agro.report.InputProblem;
import agro.units.Numbers;

/**
 * Moisture on wet mass: water / (water + dry matter).
 *
 * @param share share of the wet mass, 0 or more and below 1
 */
public record WetBasisMoisture(double share) implements SubstrateMoisture {

  /** Refuses shares that leave no dry matter. */
  public WetBasisMoisture {
    if (!(share >= 0 && share < 1)) {
      throw InputProblem.of("a moisture of " + Numbers.plain(100 * share) + " % on the wet basis")
          .expected("0 % or more and less than 100 % of the wet mass")
          .because("at 100 % of the wet mass there is water and no manure")
          .mend(
              "write 25 % as 0.25 or with WetBasisMoisture.percent(25); figures above 100 % are on"
                  + " dry matter");
    }
  }

  /**
   * A moisture in per cent of the wet mass.
   *
   * @param percent 0 or more and below 100
   * @return the moisture
   */
  public static WetBasisMoisture percent(double percent) {
    return new WetBasisMoisture(percent / 100);
  }

  @Override
  public double waterPerDryMatter() {
    return share / (1 - share);
  }

  @Override
  public WetBasisMoisture onWetBasis() {
    return this;
  }

  @Override
  public String toString() {
    return Numbers.significant(100 * share, 6) + " % (wet basis)";
  }
}
