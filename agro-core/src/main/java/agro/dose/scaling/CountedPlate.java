package agro.dose.scaling;

import agro.report.InputProblem;
import agro.units.Numbers;
import agro.units.QuantityStyle;
import agro.units.Volume;

/**
 * One plate with its colonies.
 *
 * @param colonies colonies on the plate, 0 or more
 * @param plated volume spread on the plate, above zero
 * @param dilution share of the undiluted sample in what was spread, above 0 and up to 1, for
 *     example 1e-6
 */
public record CountedPlate(int colonies, Volume plated, double dilution) {

  /** Refuses plates that say nothing of the sample. */
  public CountedPlate {
    if (colonies < 0) {
      throw InputProblem.of("a plate has " + colonies + " colonies")
          .expected("0 or more")
          .because("a count is never negative")
          .mend("leave out a plate that was lost instead of marking it with a minus");
    }
    ScalingChecks.aboveZero(
        plated,
        "plated volume",
        "colonies are divided by it",
        "state what was spread, for example 0.1 mL");
    if (!(dilution > 0 && dilution <= 1)) {
      throw InputProblem.of("the dilution of a plate is " + Numbers.plain(dilution))
          .expected("a share above 0 and up to 1, for example 0.000001 for the sixth tenfold step")
          .because("a dilution holds less than the sample and not nothing")
          .mend("write 1 divided by the dilution factor: 1e-6, not 1e6");
    }
  }

  String sampleText() {
    return QuantityStyle.METRIC.print(plated) + " × " + PowerOfTen.print(dilution);
  }

  /** Volume of undiluted sample on the plate, in mL. */
  double sampleMillilitres() {
    return plated.litres() * 1000 * dilution;
  }
}
