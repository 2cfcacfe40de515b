package agro.season;

import agro.development.DegreeDayModel;
import agro.generation.IntervalRange;
import agro.generation.StageOffset;
import agro.source.Reference;
import agro.weather.MediumKind;
import java.util.List;
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
 * @param stages stages that follow each flight, in the order of print
 * @param limits what may end the season beside want of warmth
 */
public record MonitoredPest(
    String name,
    String scientificName,
    MediumKind medium,
    DegreeDayModel model,
    Reference thresholdSource,
    IntervalRange range,
    SeasonWindow season,
    List<StageOffset> stages,
    PestLimits limits) {

  /** Refuses nulls. */
  public MonitoredPest {
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(scientificName, "scientificName");
    Objects.requireNonNull(medium, "medium");
    Objects.requireNonNull(model, "model");
    Objects.requireNonNull(thresholdSource, "thresholdSource");
    Objects.requireNonNull(range, "range");
    Objects.requireNonNull(season, "season");
    Objects.requireNonNull(limits, "limits");
    stages = List.copyOf(stages);
  }

  /**
   * A pest without stages that follow its flights, whose season only want of warmth ends.
   *
   * @param name name of the pest, as the other tables write it
   * @param scientificName scientific name, may be empty
   * @param medium what its thresholds were measured in
   * @param model degree-day model from its thresholds and cutoff
   * @param thresholdSource where the thresholds come from
   * @param range where the interval from flight to flight is sought, with its sources
   * @param season the part of the year in which degree-days are counted
   */
  public MonitoredPest(
      String name,
      String scientificName,
      MediumKind medium,
      DegreeDayModel model,
      Reference thresholdSource,
      IntervalRange range,
      SeasonWindow season) {
    this(
        name,
        scientificName,
        medium,
        model,
        thresholdSource,
        range,
        season,
        List.of(),
        PestLimits.NONE);
  }

  /**
   * The same pest with stages that follow its flights.
   *
   * @param others the stages in the order of print
   * @return the changed pest
   */
  public MonitoredPest with(List<StageOffset> others) {
    return new MonitoredPest(
        name, scientificName, medium, model, thresholdSource, range, season, others, limits);
  }
}
