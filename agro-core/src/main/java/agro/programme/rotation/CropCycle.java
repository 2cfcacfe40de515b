package agro.programme.rotation;

import agro.programme.CropPlanting;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Optional;

/**
 * A crop's time in the field.
 *
 * @param planting the crop
 * @param first day of planting
 * @param last last day in the field
 */
record CropCycle(CropPlanting planting, LocalDate first, LocalDate last) {

  /** The cycle of a planting, up to its clearing or last picking; nothing if neither is known. */
  static Optional<CropCycle> of(CropPlanting planting) {
    var picked = planting.picking().days();
    var last =
        planting
            .cleared()
            .or(
                () ->
                    picked.isEmpty()
                        ? Optional.empty()
                        : Optional.of(picked.get(picked.size() - 1)));
    return last.map(day -> new CropCycle(planting, planting.planted(), day));
  }

  /** Number of days, first and last included. */
  long days() {
    return ChronoUnit.DAYS.between(first, last) + 1;
  }
}
