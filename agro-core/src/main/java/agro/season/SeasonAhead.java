package agro.season;

import agro.generation.SeasonUnderWay;
import agro.report.ReadReport;
import java.util.Objects;

/**
 * The season under way with the weather it may still have, as a forecast takes it.
 *
 * @param underWay visits and temperatures so far, and the past years for the days ahead
 * @param report past years that were left out
 */
public record SeasonAhead(SeasonUnderWay underWay, ReadReport report) {

  /** Refuses nulls. */
  public SeasonAhead {
    Objects.requireNonNull(underWay, "underWay");
    Objects.requireNonNull(report, "report");
  }
}
