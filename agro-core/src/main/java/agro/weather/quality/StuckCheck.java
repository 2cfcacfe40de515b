package agro.weather.quality;

import agro.report.InputProblem;
import agro.units.Numbers;
import agro.weather.MediumKind;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Readings that do not move: for a long time, or for a shorter time that is many times as long as
 * the log's own usual runs of equal readings. A log to 0.01 °C betrays a stuck sensor sooner than
 * one to 0.5 °C.
 *
 * @param withinCelsius a reading counts as unmoved while it lies within this distance of the first
 *     one of its run, in °C, 0 or more
 * @param leastReadings fewest readings that make a run
 * @param span time that makes a run by itself
 * @param shortSpan shortest time that makes a run when it is long for this log
 * @param timesOwnRuns how many times as long as 99 in 100 of the log's runs, in readings
 * @param soilFactor how many times longer both times are in soil, where little moves, 1 or more
 */
public record StuckCheck(
    double withinCelsius,
    int leastReadings,
    Duration span,
    Duration shortSpan,
    double timesOwnRuns,
    double soilFactor)
    implements QualityCheck, ReadingsTest {

  private static final double SECONDS_OF_HOUR = 3600;
  private static final double SHARE_OF_RUNS = 0.99;

  /**
   * Checks the limits.
   *
   * @throws InputProblem when a limit is out of range
   */
  public StuckCheck {
    if (!(withinCelsius >= 0)
        || leastReadings < 2
        || shortSpan.isNegative()
        || shortSpan.isZero()
        || span.compareTo(shortSpan) < 0
        || !(timesOwnRuns >= 1)
        || !(soilFactor >= 1)) {
      throw InputProblem.of(
              "a stuck sensor of " + leastReadings + " readings in " + span + " or " + shortSpan)
          .expected(
              "two readings or more, times above zero with the short one first, factors of 1"
                  + " or more")
          .because("two equal readings are no sign of a fault")
          .mend("take StuckCheck.usual()");
    }
  }

  /**
   * Unmoved for 24 hours, or for 6 hours and five times as long as 99 in 100 of the log's own runs;
   * 12 readings or more; seven times as long in soil (common practice).
   *
   * @return the check
   */
  public static StuckCheck usual() {
    return new StuckCheck(0, 12, Duration.ofHours(24), Duration.ofHours(6), 5, 7);
  }

  @Override
  public QualityRule rule() {
    return QualityRule.STUCK;
  }

  @Override
  public String limits() {
    return "at least "
        + leastReadings
        + " readings within "
        + Numbers.plain(withinCelsius)
        + " °C for "
        + hours(span)
        + ", or for "
        + hours(shortSpan)
        + " and "
        + Numbers.plain(timesOwnRuns)
        + " times the log's usual runs; in soil "
        + Numbers.plain(soilFactor)
        + " times as long";
  }

  private static String hours(Duration time) {
    return Numbers.significant(time.toSeconds() / SECONDS_OF_HOUR, 4) + " h";
  }

  /** A run of readings, as places among the usable ones. */
  private record Run(int first, int last) {
    int readings() {
      return last - first + 1;
    }
  }

  @Override
  public void flag(ReadingsInTest series) {
    int[] places = series.usable();
    double factor = series.medium().kind() == MediumKind.SOIL ? soilFactor : 1;
    var runs = runs(series, places, factor);
    double usual = usualReadings(runs);
    for (var run : runs) {
      double seconds =
          (double) series.second(places[run.last()]) - series.second(places[run.first()]);
      boolean isLong = seconds >= factor * span.toSeconds();
      boolean isLongHere =
          seconds >= factor * shortSpan.toSeconds() && run.readings() >= timesOwnRuns * usual;
      if (run.readings() >= leastReadings && (isLong || isLongHere)) {
        raise(series, places, run, seconds, factor * (isLong ? span : shortSpan).toSeconds());
      }
    }
  }

  private void raise(
      ReadingsInTest series, int[] places, Run run, double seconds, double limitSeconds) {
    series.fail(
        rule(),
        places[run.first()],
        places[run.last()],
        seconds / SECONDS_OF_HOUR,
        limitSeconds / SECONDS_OF_HOUR,
        "h",
        "stays at "
            + Numbers.plain(series.celsius(places[run.first()]))
            + " °C for "
            + run.readings()
            + " readings: a stuck or frozen sensor, or a logger that repeats its last value");
  }

  private List<Run> runs(ReadingsInTest series, int[] places, double factor) {
    var runs = new ArrayList<Run>();
    double longestGap = factor * span.toSeconds() / 4;
    int start = 0;
    for (int i = 1; i <= places.length; i++) {
      if (i == places.length || !goesOn(series, places, start, i, longestGap)) {
        runs.add(new Run(start, i - 1));
        start = i;
      }
    }
    return runs;
  }

  /** Whether a reading goes on with a run; a long gap ends it, for nobody knows what was in it. */
  private boolean goesOn(
      ReadingsInTest series, int[] places, int start, int at, double longestGap) {
    return Math.abs(series.celsius(places[at]) - series.celsius(places[start])) <= withinCelsius
        && series.second(places[at]) - series.second(places[at - 1]) <= longestGap;
  }

  private static double usualReadings(List<Run> runs) {
    int[] sizes = runs.stream().mapToInt(Run::readings).sorted().toArray();
    return sizes.length == 0
        ? 0
        : Arrays.stream(sizes)
            .skip((long) (SHARE_OF_RUNS * (sizes.length - 1)))
            .findFirst()
            .orElse(0);
  }
}
