package agro.dose.scaling;

import agro.report.InputProblem;
import agro.source.Reference;
import agro.units.Numbers;
import agro.units.Temperature;
import agro.units.WorkTime;
import java.util.Objects;
import java.util.Optional;

/**
 * A half-life in water as the label or a handbook states it for one pH. This library holds none.
 *
 * @param acidity pH for which it is stated, 0 to 14
 * @param halfLife time in which half is lost, above zero
 * @param at temperature for which it is stated; nothing if that is not recorded
 * @param source label or handbook
 */
public record HydrolysisHalfLife(
    double acidity, WorkTime halfLife, Optional<Temperature> at, Reference source) {

  /** Refuses figures that no label states. */
  public HydrolysisHalfLife {
    Objects.requireNonNull(at, "at");
    Objects.requireNonNull(source, "source");
    requireAcidity(acidity);
    ScalingChecks.aboveZero(
        halfLife,
        "half-life",
        "what is lost at once was never in the tank",
        "copy the half-life with its unit from the label or handbook");
  }

  /**
   * A half-life whose temperature is not recorded.
   *
   * @param acidity pH for which it is stated
   * @param halfLife time in which half is lost
   * @param source label or handbook
   * @return the half-life
   */
  public static HydrolysisHalfLife of(double acidity, WorkTime halfLife, Reference source) {
    return new HydrolysisHalfLife(acidity, halfLife, Optional.empty(), source);
  }

  /**
   * The same half-life with its temperature.
   *
   * @param temperature temperature for which it is stated
   * @return the half-life
   */
  public HydrolysisHalfLife at(Temperature temperature) {
    return new HydrolysisHalfLife(acidity, halfLife, Optional.of(temperature), source);
  }

  String circumstances() {
    return "pH " + Numbers.plain(acidity) + at.map(warmth -> ", " + warmth).orElse("");
  }

  static void requireAcidity(double acidity) {
    if (!(acidity >= 0 && acidity <= 14)) {
      throw InputProblem.of("a pH of " + Numbers.plain(acidity))
          .expected("0 to 14")
          .because("the pH of water lies between those of strong acid and strong lye")
          .mend("read the pH from the strip or meter again");
    }
  }
}
