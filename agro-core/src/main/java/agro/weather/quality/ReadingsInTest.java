package agro.weather.quality;

import agro.weather.Medium;
import agro.weather.TemperatureReadings;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;

/** Readings on their way through the checks: which have failed, and the flags so far. */
final class ReadingsInTest {

  private final TemperatureReadings readings;
  private final long[] seconds;
  private final double[] celsius;
  private final boolean[] failed;
  private final List<QualityFlag> flags = new ArrayList<>();
  private final List<String> notChecked = new ArrayList<>();

  ReadingsInTest(TemperatureReadings readings) {
    this.readings = readings;
    seconds = readings.epochSeconds();
    celsius = readings.celsius();
    failed = new boolean[celsius.length];
  }

  /** Places of the readings that have not failed, in order. */
  int[] usable() {
    var places = new int[celsius.length];
    int count = 0;
    for (int i = 0; i < celsius.length; i++) {
      if (!failed[i]) {
        places[count++] = i;
      }
    }
    return java.util.Arrays.copyOf(places, count);
  }

  Medium medium() {
    return readings.medium();
  }

  TemperatureReadings readings() {
    return readings;
  }

  int size() {
    return celsius.length;
  }

  long second(int place) {
    return seconds[place];
  }

  double celsius(int place) {
    return celsius[place];
  }

  /** Seconds since midnight of the day of the log. */
  int secondOfDay(int place) {
    return (int) Math.floorMod(seconds[place] + offset(), 86_400L);
  }

  /** Days since 1970-01-01 at the offset of the log. */
  long epochDay(int place) {
    return Math.floorDiv(seconds[place] + offset(), 86_400L);
  }

  private int offset() {
    return readings.dayOffset().getTotalSeconds();
  }

  String when(int place) {
    return LocalDateTime.ofEpochSecond(seconds[place], 0, readings.dayOffset())
        .toString()
        .replace('T', ' ');
  }

  /** Flags a run of readings, which fail for the checks to come. */
  void fail(
      QualityRule rule, int first, int last, double value, double limit, String unit, String why) {
    note(rule, first, last, value, limit, unit, why);
    java.util.Arrays.fill(failed, first, last + 1, true);
  }

  /** Flags a run of readings, which the later checks still see. */
  void note(
      QualityRule rule, int first, int last, double value, double limit, String unit, String why) {
    var when = first == last ? when(first) : when(first) + " to " + when(last);
    flags.add(
        new QualityFlag(rule, FlaggedValue.READING, first, last, when, value, limit, unit, why));
  }

  void notChecked(QualityRule rule, String why) {
    notChecked.add(rule.words() + ": " + why);
  }

  List<QualityFlag> flags() {
    return flags;
  }

  List<String> notChecked() {
    return notChecked;
  }
}
