package agro.sampling.injury;

import agro.sampling.SamplingUnit;
import java.util.Objects;

/**
 * What an injury level is stated in: pests, or pests times the days that they feed, for each
 * sampling unit.
 *
 * @param kind pests or pest-days
 * @param unit the sampling unit
 */
public record PestMeasure(Kind kind, SamplingUnit unit) {

  /** Pests on one day, or summed over days. */
  public enum Kind {
    /** Pests on the day of the count. */
    PESTS("pests"),
    /** Pests summed over the days that they feed. */
    PEST_DAYS("pest-days");

    private final String words;

    Kind(String words) {
      this.words = words;
    }

    /**
     * The kind in words.
     *
     * @return a plural noun
     */
    public String words() {
      return words;
    }
  }

  /** Refuses null. */
  public PestMeasure {
    Objects.requireNonNull(kind, "kind");
    Objects.requireNonNull(unit, "unit");
  }

  /**
   * Pests for each unit.
   *
   * @param unit the sampling unit
   * @return the measure
   */
  public static PestMeasure pestsPer(SamplingUnit unit) {
    return new PestMeasure(Kind.PESTS, unit);
  }

  /**
   * Pest-days for each unit.
   *
   * @param unit the sampling unit
   * @return the measure
   */
  public static PestMeasure pestDaysPer(SamplingUnit unit) {
    return new PestMeasure(Kind.PEST_DAYS, unit);
  }

  /**
   * The measure in words.
   *
   * @return for example {@code "pests per plant"}
   */
  public String words() {
    return kind.words() + " per " + unit.words();
  }

  @Override
  public String toString() {
    return words();
  }
}
