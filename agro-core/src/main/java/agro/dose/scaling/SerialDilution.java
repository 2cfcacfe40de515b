package agro.dose.scaling;

import agro.report.InputProblem;
import agro.units.CountPerVolume;
import agro.units.Numbers;
import agro.units.QuantityStyle;
import agro.units.Volume;
import agro.working.Caution;
import agro.working.Working;
import java.util.ArrayList;
import java.util.Objects;

/**
 * Equal dilution steps one after the other: after n steps of v into d the concentration is C0 × (v
 * / (v + d))^n.
 *
 * @param start concentration of the undiluted sample
 * @param transferred volume carried over in each step, above zero
 * @param diluent volume into which it is carried, above zero
 * @param steps number of steps, 1 to 30
 */
public record SerialDilution(CountPerVolume start, Volume transferred, Volume diluent, int steps) {

  /** More steps than any living sample survives; a larger number is a slip. */
  private static final int MOST_STEPS = 30;

  /** Refuses a series that does not dilute. */
  public SerialDilution {
    Objects.requireNonNull(start, "start");
    ScalingChecks.aboveZero(
        transferred,
        "volume carried over",
        "a step that carries nothing ends the series",
        "state the volume of the pipette, for example 1 mL");
    ScalingChecks.aboveZero(
        diluent,
        "volume of diluent",
        "without diluent nothing is diluted",
        "state the volume in the tube before the step, for example 9 mL");
    if (steps < 1 || steps > MOST_STEPS) {
      throw InputProblem.of("the number of dilution steps is " + steps)
          .expected("1 to " + MOST_STEPS)
          .because("a series has at least one step, and no sample is left after so many")
          .mend("count the tubes behind the undiluted sample");
    }
  }

  /**
   * The dilution of one step.
   *
   * @return v / (v + d), between 0 and 1
   */
  public double stepFactor() {
    return transferred.litres() / transferred.plus(diluent).litres();
  }

  /**
   * Dilutes.
   *
   * @return dilution and concentration behind each step
   */
  public DilutionSeries evaluate() {
    double factor = stepFactor();
    var tubes = new ArrayList<DilutionSeries.Tube>();
    for (int n = 1; n <= steps; n++) {
      double dilution = Math.pow(factor, n);
      tubes.add(new DilutionSeries.Tube(n, dilution, start.times(dilution)));
    }
    var last = tubes.get(steps - 1);
    var style = QuantityStyle.METRIC;
    var v = style.print(transferred);
    var unit = " " + start.counted().symbol() + "/mL";
    var working =
        Working.of("Serial dilution")
            .step(
                "dilution of one step",
                "v / (v + d)",
                v + " / (" + v + " + " + style.print(diluent) + ")",
                Numbers.plain(factor),
                ScalingSources.MASS_BALANCE)
            .step(
                "dilution after " + steps + " steps",
                "(v / (v + d)) to the power n",
                Numbers.plain(factor) + " to the power " + steps,
                PowerOfTen.print(last.dilution()))
            .step(
                "concentration in the last tube",
                "C0 × dilution",
                PowerOfTen.print(start.perMillilitre())
                    + unit
                    + " × "
                    + PowerOfTen.print(last.dilution()),
                PowerOfTen.print(last.concentration().perMillilitre()) + unit)
            .withCautions(Caution.all());
    return new DilutionSeries(tubes, working);
  }
}
