package agro.weather.siting;

import agro.source.Reference;
import agro.working.Cell;
import agro.working.ResultTable;
import agro.working.ResultTable.Column;
import java.util.ArrayList;
import java.util.List;

/** Kinds of soil with their thermal diffusivity, dry and saturated with water. */
public enum SoilKind {
  /** Sandy soil, dry. */
  SAND_DRY("sandy soil, dry", 0.24e-6, SitingSources.OKE_1987),
  /** Sandy soil, saturated. */
  SAND_WET("sandy soil, saturated", 0.74e-6, SitingSources.OKE_1987),
  /** Loam, dry. */
  LOAM_DRY("loam, dry", 0.21e-6, SitingSources.LOAM),
  /** Loam, saturated. */
  LOAM_WET("loam, saturated", 0.625e-6, SitingSources.LOAM),
  /** Clay soil, dry. */
  CLAY_DRY("clay soil, dry", 0.18e-6, SitingSources.PIELKE_1984),
  /** Clay soil, saturated. */
  CLAY_WET("clay soil, saturated", 0.51e-6, SitingSources.OKE_1987),
  /** Peat, dry. */
  PEAT_DRY("peat, dry", 0.10e-6, SitingSources.OKE_1987),
  /** Peat, saturated. */
  PEAT_WET("peat, saturated", 0.12e-6, SitingSources.OKE_1987);

  private final String words;
  private final double squareMetresPerSecond;
  private final Reference source;

  SoilKind(String words, double squareMetresPerSecond, Reference source) {
    this.words = words;
    this.squareMetresPerSecond = squareMetresPerSecond;
    this.source = source;
  }

  /**
   * The soil in words.
   *
   * @return a phrase in lower case
   */
  public String words() {
    return words;
  }

  /**
   * Thermal diffusivity of this soil.
   *
   * @return the value with its source
   */
  public SoilDiffusivity diffusivity() {
    return new SoilDiffusivity(squareMetresPerSecond, words, source);
  }

  /**
   * All kinds with diffusivity, damping depth and what is left of the daily swing at a depth.
   *
   * @param depthMetres the depth in m, above 0
   * @return one line for each kind
   */
  public static ResultTable table(double depthMetres) {
    var rows = new ArrayList<List<Cell>>();
    for (var kind : values()) {
      var wave = DampedWave.daily(kind.diffusivity(), depthMetres);
      rows.add(
          List.of(
              Cell.text(kind.words),
              Cell.number(1e6 * kind.squareMetresPerSecond, 3),
              Cell.number(100 * wave.dampingDepthMetres(), 1),
              Cell.number(100 * wave.amplitudeFactor(), 0),
              Cell.number(wave.lagHours(), 1),
              Cell.text(kind.source.shortCitation())));
    }
    return ResultTable.of(
        "The daily wave at " + agro.units.Numbers.plain(100 * depthMetres) + " cm",
        List.of(
            Column.of("Soil"),
            Column.of("Diffusivity", "10⁻⁶ m²/s"),
            Column.of("Damping depth", "cm"),
            Column.of("Swing left", "%"),
            Column.of("Lag", "h"),
            Column.of("Source of the diffusivity")),
        rows);
  }
}
