package agro.notebook.figure;

import agro.weather.quality.QualityFlag;
import agro.weather.quality.QualityFlags;
import agro.weather.quality.QualityRule;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;

/**
 * A log as it is drawn: days since 1970-01-01 to the right, °C upwards.
 *
 * @param flags the flags with their series
 * @param x days, fractions included
 * @param high readings, or daily maxima
 * @param low daily minima; the readings once more
 */
record FlaggedLog(QualityFlags flags, List<Double> x, List<Double> high, List<Double> low) {

  private static final double SECONDS_OF_DAY = 86_400;

  static FlaggedLog of(QualityFlags flags) {
    if (flags.readings().isPresent()) {
      var readings = flags.readings().get();
      double offset = readings.dayOffset().getTotalSeconds();
      var days =
          Arrays.stream(readings.epochSeconds())
              .mapToObj(second -> (second + offset) / SECONDS_OF_DAY)
              .toList();
      var celsius = Arrays.stream(readings.celsius()).boxed().toList();
      return new FlaggedLog(flags, days, celsius, celsius);
    }
    var series = flags.days().orElseThrow();
    double first = series.firstDay().toEpochDay();
    var days =
        java.util.stream.IntStream.range(0, series.size()).mapToObj(i -> first + i + 0.5).toList();
    return new FlaggedLog(
        flags,
        days,
        Arrays.stream(series.maximaCelsius()).boxed().toList(),
        Arrays.stream(series.minimaCelsius()).boxed().toList());
  }

  boolean isDaily() {
    return flags.days().isPresent();
  }

  LocalDate firstDay() {
    return LocalDate.ofEpochDay((long) Math.floor(x.get(0)));
  }

  LocalDate lastDay() {
    return LocalDate.ofEpochDay((long) Math.floor(x.get(x.size() - 1)));
  }

  List<QualityRule> rules() {
    return List.copyOf(flags.rulesBroken());
  }

  /** Lowest or highest value that no range check flagged. */
  double extreme(boolean highest) {
    var flagged = new boolean[x.size()];
    var ranges =
        EnumSet.of(QualityRule.SENSOR_RANGE, QualityRule.WORLD_RANGE, QualityRule.FAHRENHEIT);
    flags.all().stream()
        .filter(flag -> ranges.contains(flag.rule()))
        .forEach(flag -> Arrays.fill(flagged, flag.first(), flag.last() + 1, true));
    double extreme = Double.NaN;
    for (int i = 0; i < flagged.length; i++) {
      double value = highest ? high.get(i) : low.get(i);
      if (!flagged[i] && !Double.isNaN(value)) {
        boolean further = highest ? value > extreme : value < extreme;
        extreme = Double.isNaN(extreme) || further ? value : extreme;
      }
    }
    return Double.isNaN(extreme) ? 0 : extreme;
  }

  /** Heights of the rings of a flag of one place. */
  List<Double> heights(QualityFlag flag) {
    return switch (flag.element()) {
      case READING, MAXIMUM -> List.of(high.get(flag.first()));
      case MINIMUM -> List.of(low.get(flag.first()));
      case BOTH_EXTREMES -> List.of(low.get(flag.first()), high.get(flag.first()));
    };
  }

  double from(QualityFlag flag) {
    return x.get(flag.first()) - (isDaily() ? 0.5 : 0);
  }

  double to(QualityFlag flag) {
    return x.get(flag.last()) + (isDaily() ? 0.5 : 0);
  }

  /** Whether a flag marks one value, or a run of values. */
  static boolean isPoint(QualityFlag flag) {
    return flag.places() == 1;
  }
}
