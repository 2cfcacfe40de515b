package agro.weather.gap;

import agro.report.Progress;
import agro.units.Numbers;
import agro.weather.TemperatureReadings;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

/** Fills the gaps of one log one after the other, each from observed readings alone. */
final class ReadingGapWork {

  private final ReadingGapFilling settings;
  private final TemperatureReadings known;
  private final ReadingLookup lookup;
  private final ReadingBridge bridge;
  private final ReadingTrial trial;
  private final List<ReadingGap> gaps = new ArrayList<>();
  private final List<FilledStretch> stretches = new ArrayList<>();
  private final List<FilledReadings.Value> values = new ArrayList<>();

  ReadingGapWork(ReadingGapFilling settings, TemperatureReadings known) {
    this.settings = settings;
    this.known = known;
    lookup = new ReadingLookup(known);
    bridge = new ReadingBridge(lookup);
    trial = new ReadingTrial(lookup);
  }

  FilledReadings filled() {
    var progress = Progress.ofThread();
    for (int i = 0; i < known.size(); i++) {
      if (i > 0 && lookup.isGap(known.epochSecond(i - 1), known.epochSecond(i))) {
        fill(known.epochSecond(i - 1), known.epochSecond(i));
        progress.step("gaps between readings", i, known.size());
      }
      values.add(new FilledReadings.Value(known.epochSecond(i), known.celsius(i), 0, false));
    }
    return new FilledReadings(known, settings.leastShare(), values, stretches, gaps, trial);
  }

  private void fill(long before, long after) {
    var moments = moments(before, after);
    int missing = moments.length - 2;
    var step = Duration.ofSeconds(lookup.step());
    var method = settings.method(step.multipliedBy(missing));
    if (method == ReadingGapMethod.LEFT_OPEN) {
      leaveOpen(moments, "longer than what may be filled");
      return;
    }
    var bridged = bridge.values(moments, method);
    if (bridged.isEmpty()) {
      leaveOpen(
          moments,
          "fewer than "
              + ReadingBridge.LEAST_SHAPE_DAYS
              + " days within a week have all the same hours");
      return;
    }
    var errors = trial.errors(moments, method);
    if (!errors.areTold()) {
      leaveOpen(
          moments,
          "only " + errors.trials() + " other days have these hours to judge the error by");
      return;
    }
    take(moments, method, bridged.get(), errors);
  }

  private void take(
      long[] moments, ReadingGapMethod method, double[] bridged, ReadingTrial.Errors errors) {
    double squares = 0;
    int missing = moments.length - 2;
    for (int i = 1; i <= missing; i++) {
      double error = errors.at(i);
      squares += error * error;
      values.add(new FilledReadings.Value(moments[i], bridged[i], error, true));
    }
    double error = Math.sqrt(squares / missing);
    gaps.add(
        gap(
            moments,
            method,
            error,
            "the same hours of "
                + errors.trials()
                + " other days missed by"
                + " "
                + Numbers.fixed(error, 1)
                + " °C when filled so"));
    stretches.add(new FilledStretch(moments, method));
  }

  private void leaveOpen(long[] moments, String why) {
    gaps.add(gap(moments, ReadingGapMethod.LEFT_OPEN, Double.NaN, why));
  }

  private ReadingGap gap(long[] moments, ReadingGapMethod method, double error, String words) {
    return new ReadingGap(
        Instant.ofEpochSecond(moments[1]).atOffset(known.dayOffset()),
        moments.length - 2,
        Duration.ofSeconds(lookup.step()),
        method,
        error,
        words);
  }

  /** The reading before, the moments without a reading at the step of the log, the one after. */
  private long[] moments(long before, long after) {
    int missing = (int) Math.max(1, Math.round((after - before) / (double) lookup.step()) - 1);
    var moments = new long[missing + 2];
    for (int i = 0; i <= missing; i++) {
      moments[i] = before + i * lookup.step();
    }
    moments[missing + 1] = after;
    return moments;
  }
}
