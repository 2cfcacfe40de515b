package agro.dose.scaling;

import agro.working.Working;
import java.util.Map;
import java.util.Objects;

/**
 * A hardness in all units.
 *
 * @param numbers number in each unit, not rounded
 * @param working the steps
 */
public record HardnessConversion(Map<HardnessUnit, Double> numbers, Working working)
    implements ScalingResult {

  /** Copies the map. */
  public HardnessConversion {
    numbers = Map.copyOf(numbers);
    Objects.requireNonNull(working, "working");
  }
}
