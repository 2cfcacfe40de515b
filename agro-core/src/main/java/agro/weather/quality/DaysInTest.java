package agro.weather.quality;

import agro.weather.DailyTemperatures;
import agro.weather.Medium;
import agro.weather.TemperatureReadings;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Daily extremes on their way through the checks; a value that has failed reads as NaN. */
final class DaysInTest {

  static final List<FlaggedValue> EXTREMES = List.of(FlaggedValue.MINIMUM, FlaggedValue.MAXIMUM);

  private final Medium medium;
  private final LocalDate firstDay;
  private final double[] minima;
  private final double[] maxima;
  private final Optional<TemperatureReadings> readings;
  private final List<QualityFlag> flags = new ArrayList<>();
  private final List<String> notChecked = new ArrayList<>();

  DaysInTest(
      Medium medium,
      LocalDate firstDay,
      double[] minima,
      double[] maxima,
      Optional<TemperatureReadings> readings) {
    this.medium = medium;
    this.firstDay = firstDay;
    this.minima = minima.clone();
    this.maxima = maxima.clone();
    this.readings = readings;
  }

  static DaysInTest of(DailyTemperatures days, Optional<TemperatureReadings> readings) {
    return new DaysInTest(
        days.medium(), days.firstDay(), days.minimaCelsius(), days.maximaCelsius(), readings);
  }

  int size() {
    return minima.length;
  }

  Medium medium() {
    return medium;
  }

  LocalDate day(int index) {
    return firstDay.plusDays(index);
  }

  Optional<TemperatureReadings> readings() {
    return readings;
  }

  /** An extreme in °C; NaN when it is missing, has failed or is outside the run. */
  double celsius(FlaggedValue element, int index) {
    return index < 0 || index >= minima.length ? Double.NaN : values(element)[index];
  }

  double min(int index) {
    return celsius(FlaggedValue.MINIMUM, index);
  }

  double max(int index) {
    return celsius(FlaggedValue.MAXIMUM, index);
  }

  /** A copy of one extreme of all days. */
  double[] all(FlaggedValue element) {
    return values(element).clone();
  }

  private double[] values(FlaggedValue element) {
    return element == FlaggedValue.MINIMUM ? minima : maxima;
  }

  /** Flags extremes, which fail for the checks to come. */
  void fail(
      QualityRule rule,
      FlaggedValue element,
      int first,
      int last,
      double value,
      double limit,
      String unit,
      String why) {
    note(rule, element, first, last, value, limit, unit, why);
    if (element != FlaggedValue.MAXIMUM) {
      Arrays.fill(minima, first, last + 1, Double.NaN);
    }
    if (element != FlaggedValue.MINIMUM) {
      Arrays.fill(maxima, first, last + 1, Double.NaN);
    }
  }

  /** Flags extremes, which the later checks still see. */
  void note(
      QualityRule rule,
      FlaggedValue element,
      int first,
      int last,
      double value,
      double limit,
      String unit,
      String why) {
    var when = first == last ? day(first).toString() : day(first) + " to " + day(last);
    flags.add(new QualityFlag(rule, element, first, last, when, value, limit, unit, why));
  }

  void notChecked(QualityRule rule, String why) {
    var line = rule.words() + ": " + why;
    if (!notChecked.contains(line)) {
      notChecked.add(line);
    }
  }

  List<QualityFlag> flags() {
    return flags;
  }

  List<String> notChecked() {
    return notChecked;
  }
}
