package agro.weather.siting;

import agro.report.InputProblem;
import agro.units.Numbers;
import agro.working.Presentable;
import agro.working.Presentation;
import agro.working.Working;
import java.util.Objects;

/**
 * A wave of temperature at the surface, and what is left of it at a depth in uniform soil: the
 * amplitude falls to exp(-z/D) and the wave comes later by z/D radians, with the damping depth D =
 * √(2κ/ω) (Carslaw and Jaeger 1959, section 2.6).
 *
 * @param diffusivity κ of the soil
 * @param periodHours period of the wave in h, above 0
 * @param depthMetres depth z in m, 0 or more
 */
public record DampedWave(SoilDiffusivity diffusivity, double periodHours, double depthMetres)
    implements Presentable {

  private static final double DAY_HOURS = 24;
  private static final double YEAR_HOURS = 365.25 * DAY_HOURS;
  private static final double HOUR_SECONDS = 3600;

  /**
   * Checks the ranges.
   *
   * @throws InputProblem when the period is not above zero or the depth below zero
   */
  public DampedWave {
    Objects.requireNonNull(diffusivity, "diffusivity");
    if (!(Double.isFinite(periodHours) && periodHours > 0)
        || !(Double.isFinite(depthMetres) && depthMetres >= 0)) {
      throw InputProblem.of("a wave of " + periodHours + " h at " + depthMetres + " m")
          .expected("a period above 0 h and a depth of 0 m or more")
          .because("the wave starts at the surface and goes down")
          .mend("give the depth in metres below the surface, for example 0.06");
    }
  }

  /**
   * The wave of a day.
   *
   * @param diffusivity κ of the soil
   * @param depthMetres depth in m
   * @return the wave
   */
  public static DampedWave daily(SoilDiffusivity diffusivity, double depthMetres) {
    return new DampedWave(diffusivity, DAY_HOURS, depthMetres);
  }

  /**
   * The wave of a year of 365.25 days.
   *
   * @param diffusivity κ of the soil
   * @param depthMetres depth in m
   * @return the wave
   */
  public static DampedWave annual(SoilDiffusivity diffusivity, double depthMetres) {
    return new DampedWave(diffusivity, YEAR_HOURS, depthMetres);
  }

  /**
   * Depth at which 1/e of the swing is left.
   *
   * @return D in m
   */
  public double dampingDepthMetres() {
    double angularFrequency = 2 * Math.PI / (periodHours * HOUR_SECONDS);
    return Math.sqrt(2 * diffusivity.squareMetresPerSecond() / angularFrequency);
  }

  /**
   * Share of the swing at the surface that is left.
   *
   * @return 0 to 1
   */
  public double amplitudeFactor() {
    return Math.exp(-depthMetres / dampingDepthMetres());
  }

  /**
   * How much later the wave comes than at the surface.
   *
   * @return hours
   */
  public double lagHours() {
    return depthMetres / dampingDepthMetres() * periodHours / (2 * Math.PI);
  }

  /**
   * The steps of the calculation.
   *
   * @return damping depth, share of the swing, lag
   */
  public Working working() {
    var depth = Numbers.significant(dampingDepthMetres(), 4);
    return Working.of("A wave of " + Numbers.plain(periodHours) + " h in the soil")
        .step(
            "damping depth",
            "D = √(κ P / π)",
            "√("
                + Numbers.significant(1e6 * diffusivity.squareMetresPerSecond(), 3)
                + " · 10⁻⁶ m²/s × "
                + Numbers.plain(periodHours * HOUR_SECONDS)
                + " s / π)",
            depth + " m",
            SitingSources.CARSLAW_JAEGER_1959,
            diffusivity.source())
        .step(
            "share of the swing at the depth",
            "f = exp(-z / D)",
            "exp(-" + Numbers.plain(depthMetres) + " m / " + depth + " m)",
            Numbers.fixed(amplitudeFactor(), 4),
            SitingSources.CARSLAW_JAEGER_1959)
        .step(
            "lag",
            "L = (z / D) × P / 2π",
            Numbers.plain(depthMetres)
                + " m / "
                + depth
                + " m × "
                + Numbers.plain(periodHours)
                + " h / 2π",
            Numbers.fixed(lagHours(), 2) + " h",
            SitingSources.CARSLAW_JAEGER_1959);
  }

  @Override
  public Presentation presentation() {
    return working().presentation();
  }
}
