package agro.season;

import agro.source.Reference;
import java.util.Objects;

/**
 * A stated trend of the climate at a place, along which past years are moved.
 *
 * @param celsiusPerDecade warming in °C a decade
 * @param source where it comes from
 */
public record ClimateTrend(double celsiusPerDecade, Reference source) {

  /** Refuses nulls. */
  public ClimateTrend {
    Objects.requireNonNull(source, "source");
  }
}
