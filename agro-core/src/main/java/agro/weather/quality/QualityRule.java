package agro.weather.quality;

import agro.source.Reference;
import java.util.List;

/**
 * The rules of quality control, in the order in which they are applied. A value that fails one rule
 * is not put to the later ones, so that one defect has one flag where that is possible.
 */
public enum QualityRule {
  /** A stretch of the log holds degrees Fahrenheit. */
  FAHRENHEIT("°F inside a log in °C", QualitySources.FAHRENHEIT),
  /** The reading is outside what a sensor can give. */
  SENSOR_RANGE("outside the sensor's range", QualitySources.ZAHUMENSKY_RANGE),
  /** The value is outside the records of the world. */
  WORLD_RANGE("beyond world records", QualitySources.WORLD_RECORDS),
  /** The value is outside the range that the user states for the place. */
  LOCAL_RANGE(
      "outside the stated range",
      Reference.commonPractice("Whoever knows the place states what can occur there")),
  /** The lowest temperature of a day is above the highest. */
  EXTREMES_ORDER("minimum above maximum", QualitySources.GHCN_DAILY_PAGE),
  /** Minimum and maximum are both zero, which stands for missing in some files. */
  NAUGHT("both extremes zero", QualitySources.GHCN_DAILY_PAGE),
  /** A day and the next one do not meet at midnight. */
  MIDNIGHT("days apart at midnight", QualitySources.DURRE_2010),
  /** The extremes of a day do not enclose its readings, or are far from them. */
  EXTREMES_AND_READINGS("extremes against readings", QualitySources.ENCLOSED),
  /** A few values stand off the ones before and after them. */
  SPIKE("spike", QualitySources.SPIKE_FORMULA, QualitySources.WMO_305),
  /** A change too large for the time it took. */
  STEP("step", QualitySources.WMO_305, QualitySources.ZAHUMENSKY_TIME),
  /** The reading does not move. */
  STUCK("stuck", QualitySources.STUCK_SPAN, QualitySources.ESTEVEZ_2011),
  /** The same daily extreme day after day. */
  STREAK("streak of equal days", QualitySources.GHCN_DAILY_PAGE),
  /** Days that are a copy of other days. */
  REPEATED("copied days", QualitySources.GHCN_DAILY_PAGE),
  /** A daily extreme that stands off the days before and after it. */
  DAILY_SPIKE("spike of a day", QualitySources.DURRE_2010),
  /** A maximum too far above the minima around it, or the reverse. */
  LAGGED_RANGE("range over three days", QualitySources.DURRE_2010),
  /** A daily extreme far from all others of its calendar month. */
  MONTH_GAP("apart in its month", QualitySources.GHCN_DAILY_PAGE),
  /** A daily extreme far from what is usual on that day of the year. */
  CLIMATE_OUTLIER(
      "climatological outlier", QualitySources.GHCN_DAILY_PAGE, QualitySources.LANZANTE_1996),
  /** A daily extreme far from what the neighbours say. */
  NEIGHBOUR("against the neighbours", QualitySources.HUBBARD_2005),
  /** The difference from a neighbour shifts from one day on. */
  OFFSET("sudden offset", QualitySources.ALEXANDERSSON_1986),
  /** The warmest hour of the day is not where it should be. */
  CLOCK("clock shifted", QualitySources.DUNN_2012);

  private final String words;
  private final List<Reference> sources;

  QualityRule(String words, Reference... sources) {
    this.words = words;
    this.sources = List.of(sources);
  }

  /**
   * The rule in words.
   *
   * @return a short phrase in lower case
   */
  public String words() {
    return words;
  }

  /**
   * Where the rule and its usual limit come from, with the standing of each.
   *
   * @return at least one reference
   */
  public List<Reference> sources() {
    return sources;
  }
}
