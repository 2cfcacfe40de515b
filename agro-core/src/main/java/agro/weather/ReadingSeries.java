package agro.weather;

import agro.report.ReadReport;
import agro.report.ReadReport.Deed;
import agro.report.SourceLocation;
import java.time.Duration;
import java.util.Arrays;

/** Readings of one log in ascending order of time, missing values left out. */
final class ReadingSeries {

  /** Reading unchanged for this long (common practice, no source). */
  private static final Duration STUCK = Duration.ofHours(24);

  private static final int LEAST_STUCK_READINGS = 12;

  /** Change within an hour that air in a shelter hardly makes (common practice, no source). */
  private static final double SPIKE_CELSIUS = 10;

  private static final int HOUR_SECONDS = 3600;

  private final String file;
  private final String column;
  private final long[] seconds;
  private final double[] celsius;
  private final long[] lines;
  private int size;

  ReadingSeries(String file, String column, int mostReadings) {
    this.file = file;
    this.column = column;
    seconds = new long[mostReadings];
    celsius = new double[mostReadings];
    lines = new long[mostReadings];
  }

  void add(long second, double valueCelsius, long line) {
    seconds[size] = second;
    celsius[size] = valueCelsius;
    lines[size] = line;
    size++;
  }

  int size() {
    return size;
  }

  long second(int index) {
    return seconds[index];
  }

  double celsius(int index) {
    return celsius[index];
  }

  /** Median distance of neighbouring readings; zero for fewer than two. */
  Duration medianStep() {
    if (size < 2) {
      return Duration.ZERO;
    }
    var steps = new long[size - 1];
    for (int i = 1; i < size; i++) {
      steps[i - 1] = seconds[i] - seconds[i - 1];
    }
    Arrays.sort(steps);
    return Duration.ofSeconds(steps[steps.length / 2]);
  }

  /** Points at readings that look wrong, without changing any. */
  void noteOddities(ReadReport.Collector collector) {
    var stuck =
        new Tally(
            Deed.NOTED,
            "the reading stays the same for "
                + STUCK.toHours()
                + " h or longer from here on: a stuck sensor? The readings are used");
    var spikes =
        new Tally(
            Deed.NOTED,
            "the reading changes by more than "
                + (int) SPIKE_CELSIUS
                + " °C within an hour: a spike? The reading is used");
    int runStart = 0;
    for (int i = 1; i <= size; i++) {
      if (i < size
          && seconds[i] - seconds[i - 1] <= HOUR_SECONDS
          && Math.abs(celsius[i] - celsius[i - 1]) > SPIKE_CELSIUS) {
        spikes.add(place(i));
      }
      if (i == size || celsius[i] != celsius[runStart]) {
        boolean isLong = seconds[i - 1] - seconds[runStart] >= STUCK.toSeconds();
        if (isLong && i - runStart >= LEAST_STUCK_READINGS) {
          stuck.add(place(runStart));
        }
        runStart = i;
      }
    }
    stuck.tell(collector);
    spikes.tell(collector);
  }

  private SourceLocation place(int index) {
    return SourceLocation.line(file, lines[index]).column(column);
  }
}
