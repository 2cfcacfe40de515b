package agro.dose.sprayer;

import agro.report.InputProblem;
import agro.units.Quantity;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * One quantity measured several times in the same way: catches of one nozzle, timings of one
 * course.
 *
 * @param readings the readings in any order, at least one, all above zero
 * @param <Q> what was measured
 */
public record RepeatedReadings<Q extends Quantity<Q>>(List<Q> readings) {

  /** Refuses no reading at all and readings of nothing. */
  public RepeatedReadings {
    readings = List.copyOf(readings);
    if (readings.isEmpty()) {
      throw InputProblem.of("the list of readings is empty")
          .expected("at least one reading, better three or more")
          .because("without a reading there is no mean")
          .mend("measure again and write each reading down");
    }
    for (var reading : readings) {
      SprayerChecks.aboveZero(
          reading,
          "reading",
          "a reading of nothing is a slip or a blocked nozzle and would pull the mean down",
          "leave it out or measure again");
    }
  }

  /**
   * Readings from single amounts.
   *
   * @param first the first reading
   * @param others further readings
   * @param <Q> what was measured
   * @return the readings
   */
  @SafeVarargs
  public static <Q extends Quantity<Q>> RepeatedReadings<Q> of(Q first, Q... others) {
    var all = new ArrayList<Q>();
    all.add(first);
    for (var other : others) {
      all.add(other);
    }
    return new RepeatedReadings<>(all);
  }

  /**
   * How many readings there are.
   *
   * @return 1 or more
   */
  public int count() {
    return readings.size();
  }

  /**
   * The mean, not rounded.
   *
   * @return sum ÷ count
   */
  public Q mean() {
    Q sum = readings.get(0);
    for (var reading : readings.subList(1, readings.size())) {
      sum = sum.plus(reading);
    }
    return sum.dividedBy(readings.size());
  }

  /**
   * The standard deviation, with n - 1 below the line.
   *
   * @return the spread of single readings; nothing for a single reading
   */
  public Optional<Q> standardDeviation() {
    if (readings.size() < 2) {
      return Optional.empty();
    }
    double mean = mean().inBaseUnit();
    double sum = 0;
    for (var reading : readings) {
      double deviation = reading.inBaseUnit() - mean;
      sum += deviation * deviation;
    }
    return Optional.of(mean().withBaseValue(Math.sqrt(sum / (readings.size() - 1))));
  }

  /**
   * The standard error of the mean as a share of the mean: s ÷ (√n × mean), with n - 1 degrees of
   * freedom.
   *
   * @return the uncertainty; nothing for a single reading, whose spread nobody knows
   */
  public Optional<RelativeUncertainty> uncertainty() {
    return standardDeviation()
        .map(
            spread ->
                new RelativeUncertainty(
                    spread.ratioTo(mean()) / Math.sqrt(readings.size()), readings.size() - 1));
  }
}
