package agro.dose.sprayer;

import agro.units.FlowRate;
import agro.units.FlowRateUnit;
import agro.units.Pressure;
import agro.units.PressureUnit;

/**
 * What the number of a nozzle size counts. The two bases differ by 1.3 %: 0.1 US gal/min at 40 psi
 * is 0.3948 L/min at 3 bar, not 0.4.
 */
public enum FlowBasis {
  /** Tenths stand for 0.4 L/min at 3 bar. */
  LITRES_AT_3_BAR(
      new FlowRate(0.4), Pressure.of(3, PressureUnit.BAR), "0.4 L/min at 3 bar for each 0.1"),
  /** Tenths stand for 0.1 US gal/min at 40 psi. */
  US_GALLONS_AT_40_PSI(
      FlowRate.of(0.1, FlowRateUnit.US_GALLON_PER_MINUTE),
      Pressure.of(40, PressureUnit.POUND_PER_SQUARE_INCH),
      "0.1 US gal/min at 40 psi for each 0.1");

  private final FlowRate perTenth;
  private final Pressure pressure;
  private final String words;

  FlowBasis(FlowRate perTenth, Pressure pressure, String words) {
    this.perTenth = perTenth;
    this.pressure = pressure;
    this.words = words;
  }

  /**
   * The curve of a nozzle.
   *
   * @param tenths size in tenths of a US gallon per minute, above zero
   * @return flow and pressure
   */
  public NozzleCurve curve(double tenths) {
    return new NozzleCurve(new NozzleFlow(perTenth.times(tenths)), pressure);
  }

  /**
   * The basis in words.
   *
   * @return a phrase
   */
  public String words() {
    return words;
  }
}
