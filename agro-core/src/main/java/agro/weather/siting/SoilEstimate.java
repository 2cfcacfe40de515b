package agro.weather.siting;

import agro.units.Numbers;
import agro.weather.DailyTemperatures;
import agro.weather.Medium;
import agro.working.Presentable;
import agro.working.Presentation;
import agro.working.Working;
import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;

/**
 * Soil temperatures worked out from air.
 *
 * @param soil daily extremes of the soil, with origin {@code MODELLED}
 * @param air medium of the air they were worked out from
 * @param diffusivity thermal diffusivity that was used
 * @param depthMetres depth in m
 * @param standardError standard error of the model in °C, if one was stated
 * @param meanOfYear mean of the year in °C that stands for the time before the log, if stated
 * @param leastKnownShare least share of the depth's memory that a day needs
 */
public record SoilEstimate(
    DailyTemperatures soil,
    Medium air,
    SoilDiffusivity diffusivity,
    double depthMetres,
    OptionalDouble standardError,
    OptionalDouble meanOfYear,
    double leastKnownShare)
    implements Presentable {

  /** Refuses nulls. */
  public SoilEstimate {
    Objects.requireNonNull(soil, "soil");
    Objects.requireNonNull(air, "air");
    Objects.requireNonNull(diffusivity, "diffusivity");
    Objects.requireNonNull(standardError, "standardError");
    Objects.requireNonNull(meanOfYear, "meanOfYear");
  }

  /**
   * What the model leaves out.
   *
   * @return sentences
   */
  public List<String> limits() {
    return List.of(
        "The air is taken for the surface of bare, uniform soil: sun on bare soil makes it warmer by"
            + " day, a canopy or mulch cooler.",
        "No snow, no frost in the soil, no evaporation and no rain: each of them carries or holds"
            + " heat that the formula does not know.",
        "The diffusivity changes with the moisture of the soil; dry and wet sand differ threefold.",
        "Measure the soil where a decision hangs on it.");
  }

  /**
   * The steps of the daily and the annual wave.
   *
   * @return damping depths, shares of the swing, lags
   */
  public Working working() {
    return DampedWave.daily(diffusivity, depthMetres)
        .working()
        .followedBy(DampedWave.annual(diffusivity, depthMetres).working())
        .step(
            "daily mean at the depth",
            "mean of day d = Σ w(j) × air mean of day d - j,"
                + " w(j) from E(t) = erfc(z / 2√(κt))",
            "",
            "every wave between a day and a year damped and delayed by its own period",
            SitingSources.CARSLAW_JAEGER_1959);
  }

  @Override
  public Presentation presentation() {
    var daily = DampedWave.daily(diffusivity, depthMetres);
    var page =
        Presentation.titled("Soil temperature worked out from air")
            .fact("Series", soil.toString())
            .fact("Worked out from", air.words())
            .fact("Diffusivity", diffusivity.words())
            .fact(
                "Daily swing left",
                Numbers.fixed(100 * daily.amplitudeFactor(), 0)
                    + " %, "
                    + Numbers.fixed(daily.lagHours(), 1)
                    + " h later")
            .fact(
                "Standard error of the model",
                standardError.isPresent()
                    ? Numbers.plain(standardError.getAsDouble()) + " °C, as stated"
                    : "not stated; the errors of the air alone are carried on")
            .fact(
                "Time before the log",
                meanOfYear.isPresent()
                    ? "the mean of the year, " + Numbers.plain(meanOfYear.getAsDouble()) + " °C"
                    : "not known; a day needs "
                        + Numbers.plain(100 * leastKnownShare)
                        + " % of the depth's memory inside the log");
    if (!SoilDiffusivity.MEASURED.covers(1e6 * diffusivity.squareMetresPerSecond())) {
      page.paragraph(
          "The diffusivity lies outside what was measured in soil cores, 0.078 to 1.009 · 10⁻⁶"
              + " m²/s.");
    }
    limits().forEach(page::paragraph);
    return page.working(working())
        .sources(
            List.of(
                SitingSources.CARSLAW_JAEGER_1959,
                diffusivity.source(),
                SitingSources.LUKIASHCHENKO_2018))
        .build();
  }
}
