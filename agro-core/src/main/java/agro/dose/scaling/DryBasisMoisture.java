package agro.dose.scaling;

import agro.report.InputProblem;
import agro.units.Numbers;

/**
 * Moisture on dry matter: water / dry matter. It may be above 100 %.
 *
 * @param ratio water to dry matter, 0 or more
 */
public record DryBasisMoisture(double ratio) implements SubstrateMoisture {

  /** Refuses ratios that no substrate has. */
  public DryBasisMoisture {
    if (!(ratio >= 0 && ratio < Double.POSITIVE_INFINITY)) {
      throw InputProblem.of("a moisture of " + Numbers.plain(100 * ratio) + " % on the dry basis")
          .expected("a finite figure of 0 % or more of the dry matter")
          .because("there is never less than no water")
          .mend("write 25 % as 0.25 or with DryBasisMoisture.percent(25)");
    }
  }

  /**
   * A moisture in per cent of the dry matter.
   *
   * @param percent 0 or more
   * @return the moisture
   */
  public static DryBasisMoisture percent(double percent) {
    return new DryBasisMoisture(percent / 100);
  }

  @Override
  public double waterPerDryMatter() {
    return ratio;
  }

  @Override
  public DryBasisMoisture onDryBasis() {
    return this;
  }

  @Override
  public String toString() {
    return Numbers.significant(100 * ratio, 6) + " % (dry basis)";
  }
}
