package agro.season;

import agro.development.DegreeDayModel;
import agro.generation.IntervalRange;
import agro.source.Reference;
import agro.weather.MediumKind;
import java.util.Objects;

/**
 * A pest, as the table of pests describes it.
 *
 * @param name name of the pest, as the other tables write it
 * @param scientificName scientific name, may be empty
 * @param medium what its thresholds were measured in
 * @param model degree-day model from its thresholds and cutoff
 * @param thresholdSource where the thresholds come from
 * @param range where the interval from flight to flight is sought, with its sources
 * @param season the part of the year in which degree-days are counted
 */
public record MonitoredPest(
    String name,
    String scientificName,
    MediumKind medium,
    DegreeDayModel model,
    Reference thresholdSource,
    IntervalRange range,
    SeasonWindow season) {

  /** Refuses nulls. */
  public MonitoredPest {
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(scientificName, "scientificName");
    Objects.requireNonNull(medium, "medium");
    Objects.requireNonNull(model, "model");
    Objects.requireNonNull(thresholdSource, "thresholdSource");
    Objects.requireNonNull(range, "range");
    Objects.requireNonNull(season, "season");
  }
}
