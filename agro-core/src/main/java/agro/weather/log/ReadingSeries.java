package agro.weather.log;

import agro.report.InputProblem;
import agro.report.ReadReport;
import agro.report.ReadReport.Deed;
import agro.report.SourceLocation;
import agro.weather.Medium;
import agro.weather.TemperatureReadings;
import java.time.Duration;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.Optional;

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

  /** The median step of the first so many readings, kept since it is asked for more than once. */
  private Duration median = Duration.ZERO;

  private int sizeOfMedian;

  ReadingSeries(String file, String column, int mostReadings) {
    this.file = file;
    this.column = column;
    seconds = new long[mostReadings];
    celsius = new double[mostReadings];
    lines = new long[mostReadings];
  }

  /** Readings that are in no line of a file. */
  static ReadingSeries of(TemperatureReadings readings, String name) {
    var series = new ReadingSeries(name, "temperature", readings.size());
    for (int i = 0; i < readings.size(); i++) {
      series.add(readings.epochSecond(i), readings.celsius(i), 0);
    }
    return series;
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
    if (sizeOfMedian == size) {
      return median;
    }
    var steps = new long[size - 1];
    for (int i = 1; i < size; i++) {
      steps[i - 1] = seconds[i] - seconds[i - 1];
    }
    Arrays.sort(steps);
    median = Duration.ofSeconds(steps[steps.length / 2]);
    sizeOfMedian = size;
    return median;
  }

  /**
   * Points at readings that look wrong, without changing any: a first look that costs one pass and
   * names the line. The published rules are in agro.weather.quality.
   */
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
        add(spikes, i);
      }
      if (i == size || celsius[i] != celsius[runStart]) {
        boolean isLong = seconds[i - 1] - seconds[runStart] >= STUCK.toSeconds();
        if (isLong && i - runStart >= LEAST_STUCK_READINGS) {
          add(stuck, runStart);
        }
        runStart = i;
      }
    }
    stuck.tell(collector);
    spikes.tell(collector);
  }

  /** A place is made only where it is listed, for there may be very many. */
  private void add(Tally tally, int index) {
    if (tally.lists()) {
      tally.add(place(index));
    } else {
      tally.add();
    }
  }

  private SourceLocation place(int index) {
    return SourceLocation.line(file, lines[index]).column(column);
  }

  /** The same readings some seconds earlier. */
  ReadingSeries earlier(long by) {
    var result = new ReadingSeries(file, column, size);
    for (int i = 0; i < size; i++) {
      result.add(seconds[i] - by, celsius[i], lines[i]);
    }
    return result;
  }

  /** The readings without their lines. */
  TemperatureReadings readings(String place, Medium medium, ZoneOffset dayOffset) {
    return TemperatureReadings.of(
        place, medium, dayOffset, Arrays.copyOf(seconds, size), Arrays.copyOf(celsius, size));
  }

  /** The declared step, or the median distance; readings at no usual distance are told. */
  Duration step(Optional<Duration> declared, ReadReport.Collector collector, SourceLocation place) {
    if (declared.isPresent()) {
      return declared.get();
    }
    if (size < 2) {
      throw InputProblem.at(
              place, size == 1 ? "one reading alone" : "no reading with a temperature")
          .expected("readings of at least one day")
          .because("a day's extremes cannot be told from it")
          .mend("give a longer log, or declare its missing codes rightly");
    }
    var median = medianStep();
    collector.add(
        Deed.ASSUMED,
        place,
        "a step of " + Durations.words(median) + " between readings, the median distance");
    return median;
  }

  /** Whether fewer than half of the distances are the median one. */
  boolean isIrregular() {
    long usual = medianStep().toSeconds();
    int same = 0;
    for (int i = 1; i < size; i++) {
      same += seconds[i] - seconds[i - 1] == usual ? 1 : 0;
    }
    return same * 2 < size - 1;
  }
}
