package agro.course.practical;

import agro.units.VolumePerArea;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Objects;

/**
 * A group's own figure beside the one that follows from its readings.
 *
 * @param own volume per area as the group wrote it
 * @param timesOurs own figure ÷ ours
 * @param agrees whether the two differ by rounding alone
 * @param likelySlips slips that explain the difference, the closest first; none where the figures
 *     agree or no single slip fits
 */
public record OwnArithmetic(
    VolumePerArea own, double timesOurs, boolean agrees, List<ArithmeticSlip> likelySlips) {

  /** Copies the list. */
  public OwnArithmetic {
    Objects.requireNonNull(own, "own");
    likelySlips = List.copyOf(likelySlips);
  }

  /** Compares a group's own figure with ours, which may differ by a share for rounding. */
  static OwnArithmetic of(
      GroupReadings group, VolumePerArea own, VolumePerArea ours, double tolerance) {
    double times = own.ratioTo(ours);
    boolean agrees = Math.abs(times - 1) <= tolerance;
    return new OwnArithmetic(
        own, times, agrees, agrees ? List.of() : explained(group, times, tolerance));
  }

  private static List<ArithmeticSlip> explained(
      GroupReadings group, double times, double tolerance) {
    var distances = new EnumMap<ArithmeticSlip, Double>(ArithmeticSlip.class);
    for (var slip : ArithmeticSlip.values()) {
      slip.ratioFor(group)
          .map(ratio -> Math.abs(times / ratio - 1))
          .filter(distance -> distance <= tolerance)
          .ifPresent(distance -> distances.put(slip, distance));
    }
    return distances.keySet().stream().sorted(Comparator.comparingDouble(distances::get)).toList();
  }
}
