package agro.dose.sprayer;

import agro.units.FlowRate;
import agro.units.Numbers;
import agro.units.Pressure;
import agro.working.Caution;
import agro.working.Presentable;
import agro.working.Presentation;
import agro.working.Working;

/**
 * How the flow of water through one nozzle grows with pressure: q₂ = q₁ √(p₂ ÷ p₁). It holds within
 * the range of pressures that the nozzle is made for, and not for nozzles that cut in or out.
 *
 * @param flow known flow, above zero
 * @param pressure gauge pressure at the nozzle at which it was found, above zero
 */
public record NozzleCurve(NozzleFlow flow, Pressure pressure) {

  /** Refuses a pressure of zero. */
  public NozzleCurve {
    checked(pressure);
  }

  /**
   * The flow at another pressure.
   *
   * @param other pressure, above zero
   * @return the flow, not rounded
   * @throws agro.report.InputProblem if the pressure is zero
   */
  public FlowRate flowAt(Pressure other) {
    return flow.flow().times(Math.sqrt(checked(other).ratioTo(pressure)));
  }

  /**
   * The pressure for another flow.
   *
   * @param other flow, above zero
   * @return known pressure × (flow ÷ known flow)²
   */
  public Pressure pressureFor(NozzleFlow other) {
    double ratio = other.flow().ratioTo(flow.flow());
    return pressure.times(ratio * ratio);
  }

  /**
   * The flow at another pressure, with the steps.
   *
   * @param other pressure, above zero
   * @param units units of print
   * @return pressure, flow and steps
   * @throws agro.report.InputProblem if the pressure is zero
   */
  public Setting atPressure(Pressure other, SprayUnits units) {
    var found = flowAt(other);
    var working =
        Working.of("Flow of a nozzle at another pressure")
            .step(
                "flow",
                "q2 = q1 × √(p2 / p1)",
                units.flow(flow.flow())
                    + " × √("
                    + units.pressure(other)
                    + " / "
                    + units.pressure(pressure)
                    + ")",
                units.flow(found),
                SprayerSources.SQUARE_ROOT_LAW);
    return setting(other, found, working);
  }

  /**
   * The pressure for another flow, with the steps.
   *
   * @param wanted flow
   * @param units units of print
   * @return pressure, flow and steps
   */
  public Setting atFlow(NozzleFlow wanted, SprayUnits units) {
    var found = pressureFor(wanted);
    var working =
        Working.of("Pressure for another flow of a nozzle")
            .step(
                "pressure",
                "p2 = p1 × (q2 / q1)²",
                units.pressure(pressure)
                    + " × ("
                    + units.flow(wanted.flow())
                    + " / "
                    + units.flow(flow.flow())
                    + ")²",
                units.pressure(found),
                SprayerSources.SQUARE_ROOT_LAW);
    return setting(found, wanted.flow(), working);
  }

  private Setting setting(Pressure found, FlowRate at, Working working) {
    double pressureChange = 100 * (found.ratioTo(pressure) - 1);
    double flowChange = 100 * (at.ratioTo(flow.flow()) - 1);
    var compared =
        working.step(
            "change",
            "",
            "",
            signed(pressureChange)
                + " in pressure goes with "
                + signed(flowChange)
                + " in flow; stay within the pressures that the nozzle is made for");
    return new Setting(found, at, compared.withCautions(Caution.all()));
  }

  private static String signed(double percent) {
    return (percent < 0 ? "−" : "+") + Numbers.significant(Math.abs(percent), 3) + " %";
  }

  private static Pressure checked(Pressure pressure) {
    return SprayerChecks.aboveZero(
        pressure,
        "pressure",
        "the flow grows with the square root of the pressure and is nothing at zero",
        "read the gauge while the nozzles spray");
  }

  /**
   * A nozzle at one pressure.
   *
   * @param pressure gauge pressure
   * @param flow flow of water
   * @param working the steps, with cautions
   */
  public record Setting(Pressure pressure, FlowRate flow, Working working) implements Presentable {
    @Override
    public Presentation presentation() {
      return working.presentation();
    }
  }
}
