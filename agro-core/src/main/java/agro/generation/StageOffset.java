package agro.generation;

import agro.development.Thresholds;
import agro.source.Reference;
import agro.units.ThermalTime;
import java.util.Objects;

/**
 * A stage that follows the flight by a stated thermal time, such as the first eggs or their hatch.
 * A trap sees the flight of adults; every other stage follows from it by such an offset.
 *
 * @param stage the stage in words, for example {@code "eggs hatch"}
 * @param afterFlight thermal time after the same share of the flight
 * @param thresholds thresholds above which the offset counts; they must be those of the fit
 * @param source where the offset comes from
 */
public record StageOffset(
    String stage, ThermalTime afterFlight, Thresholds thresholds, Reference source) {

  /** Refuses nulls. */
  public StageOffset {
    Objects.requireNonNull(stage, "stage");
    Objects.requireNonNull(afterFlight, "afterFlight");
    Objects.requireNonNull(thresholds, "thresholds");
    Objects.requireNonNull(source, "source");
  }
}
