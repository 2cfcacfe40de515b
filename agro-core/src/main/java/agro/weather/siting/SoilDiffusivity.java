package agro.weather.siting;

import agro.report.InputProblem;
import agro.source.Reference;
import agro.source.ValidityRange;
import agro.units.Numbers;
import java.util.Objects;

/**
 * How fast a change of temperature spreads in a soil: conductivity over heat capacity.
 *
 * @param squareMetresPerSecond diffusivity in m²/s
 * @param soil what soil it belongs to
 * @param source where the value comes from
 */
public record SoilDiffusivity(double squareMetresPerSecond, String soil, Reference source) {

  /** Diffusivities measured in soil cores (Lukiashchenko and Arkhangelskaya 2018), in 10⁻⁶ m²/s. */
  public static final ValidityRange MEASURED =
      new ValidityRange("thermal diffusivity of soil", 0.078, 1.009, "10⁻⁶ m²/s");

  private static final double LEAST = 1e-8;
  private static final double MOST = 1e-5;

  /**
   * Refuses what no soil has, which is mostly another unit.
   *
   * @throws InputProblem when the value is not between 0.01e-6 and 10e-6 m²/s
   */
  public SoilDiffusivity {
    Objects.requireNonNull(soil, "soil");
    Objects.requireNonNull(source, "source");
    if (!(squareMetresPerSecond >= LEAST && squareMetresPerSecond <= MOST)) {
      throw InputProblem.of("a thermal diffusivity of " + squareMetresPerSecond + " m²/s")
          .expected("a value between 0.01e-6 and 10e-6 m²/s")
          .because("soils lie between 0.08e-6 and 1.0e-6 m²/s")
          .mend("give it in m²/s: 0.005 cm²/s is 0.5e-6 m²/s; or take one of SoilKind");
    }
  }

  /**
   * A diffusivity that the user states.
   *
   * @param squareMetresPerSecond diffusivity in m²/s, for example 0.5e-6
   * @return the value, marked as stated
   */
  public static SoilDiffusivity ofSquareMetresPerSecond(double squareMetresPerSecond) {
    return new SoilDiffusivity(
        squareMetresPerSecond,
        "soil as stated",
        Reference.commonPractice("Diffusivity stated by the user"));
  }

  /**
   * The value in words.
   *
   * @return for example {@code "0.5 · 10⁻⁶ m²/s (clay soil, saturated)"}
   */
  public String words() {
    return Numbers.significant(1e6 * squareMetresPerSecond, 3) + " · 10⁻⁶ m²/s (" + soil + ")";
  }
}
