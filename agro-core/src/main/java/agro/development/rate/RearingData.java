package agro.development.rate;

import agro.reading.DelimitedFormat;
import agro.report.InputProblem;
import agro.report.ReadReport;
import agro.working.Presentable;
import agro.working.Presentation;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * A rearing at constant temperatures: means by cabinet, or the records of single animals. The
 * cabinet is the unit of replication; animals in one cabinet share its temperature and its luck.
 *
 * @param subject what was reared and which part of its development, as a title
 * @param means mean durations; those of single animals are worked out from their records
 * @param animals records of single animals, none when only means are known
 * @param report what was done to the data
 */
public record RearingData(
    String subject, List<RearingMean> means, List<RearedAnimals> animals, ReadReport report)
    implements Presentable {

  /** Copies the lists and refuses data without a temperature. */
  public RearingData {
    means = List.copyOf(means);
    animals = List.copyOf(animals);
    Objects.requireNonNull(subject, "subject");
    Objects.requireNonNull(report, "report");
    if (means.isEmpty() && animals.isEmpty()) {
      throw InputProblem.of("a rearing without data")
          .expected("a mean duration at each of several temperatures, or records of animals")
          .because("there is nothing to fit a rate to")
          .mend("add the means or the records");
    }
  }

  /**
   * Means without number and spread.
   *
   * @param subject what was reared
   * @param celsius temperatures
   * @param days mean durations, as many
   * @return the data
   * @throws InputProblem if the numbers do not match or a figure is impossible
   */
  public static RearingData ofMeans(String subject, double[] celsius, double[] days) {
    if (celsius.length != days.length) {
      throw InputProblem.of(celsius.length + " temperatures with " + days.length + " durations")
          .expected("one duration for each temperature")
          .because("each mean was measured at one temperature")
          .mend(
              "give both for each cabinet; a temperature without development is added with"
                  + " withoutDevelopmentAt");
    }
    var means = new ArrayList<RearingMean>();
    for (int i = 0; i < celsius.length; i++) {
      means.add(RearingMean.of(celsius[i], days[i]));
    }
    return of(subject, means);
  }

  /**
   * Means.
   *
   * @param subject what was reared
   * @param means the means, at least one
   * @return the data
   */
  public static RearingData of(String subject, List<RearingMean> means) {
    return new RearingData(subject, means, List.of(), new ReadReport(subject, 0, List.of()));
  }

  /**
   * Records of single animals, from which the means of the cabinets follow: the middle between two
   * looks stands for the moment, and animals that did not develop are left out of the mean.
   *
   * @param subject what was reared
   * @param animals the records, at least one
   * @return the data
   */
  public static RearingData ofAnimals(String subject, List<RearedAnimals> animals) {
    return new RearingData(
        subject, meansOf(animals), animals, new ReadReport(subject, 0, List.of()));
  }

  /**
   * Reads means from a file with the columns {@code set_celsius} and {@code days}, and if wanted
   * {@code cabinet}, {@code measured_celsius}, {@code n} and {@code sd_days}. Where no animal
   * developed, {@code days} reads {@code none}.
   *
   * @param subject what was reared
   * @param file the file
   * @param format how it is written
   * @return the data
   * @throws InputProblem naming line and column of what cannot be used
   */
  public static RearingData readMeans(String subject, Path file, DelimitedFormat format) {
    return RearingReader.means(subject, file, format);
  }

  /**
   * Reads records of animals from a file with the columns {@code set_celsius}, {@code from_days},
   * {@code to_days} and {@code fate} (developed, alive or died), and if wanted {@code cabinet},
   * {@code measured_celsius} and {@code n}.
   *
   * @param subject what was reared
   * @param file the file
   * @param format how it is written
   * @return the data
   * @throws InputProblem naming line and column of what cannot be used
   */
  public static RearingData readAnimals(String subject, Path file, DelimitedFormat format) {
    return RearingReader.animals(subject, file, format);
  }

  /**
   * These data with temperatures at which no animal developed, each a rate of zero.
   *
   * @param celsius the temperatures
   * @return new data
   */
  public RearingData withoutDevelopmentAt(double... celsius) {
    var more = new ArrayList<>(means);
    for (double one : celsius) {
      more.add(RearingMean.noDevelopment(one));
    }
    return new RearingData(subject, more, animals, report);
  }

  /**
   * These data with a rate of zero for each cabinet in which all animals died before they had
   * developed.
   *
   * @return new data
   */
  public RearingData countingDeathsAsNoDevelopment() {
    var more = new ArrayList<>(means);
    for (var cabinet : cabinets(animals).values()) {
      if (cabinet.stream().allMatch(one -> one.fate() == RearingFate.DIED)) {
        var first = cabinet.get(0);
        more.add(
            new RearingMean(
                first.cabinet(),
                first.setCelsius(),
                first.measuredCelsius(),
                OptionalDouble.empty(),
                OptionalInt.empty(),
                OptionalDouble.empty()));
      }
    }
    return new RearingData(subject, more, animals, report);
  }

  /**
   * Whether records of single animals are there.
   *
   * @return false when only means are known
   */
  public boolean hasAnimals() {
    return !animals.isEmpty();
  }

  /** Cabinets from which not one animal was seen to develop and that are not counted as zero. */
  List<String> cabinetsWithoutDuration() {
    var lacking = new ArrayList<String>();
    for (var cabinet : cabinets(animals).values()) {
      var first = cabinet.get(0);
      boolean known =
          means.stream()
              .anyMatch(
                  mean ->
                      mean.cabinet().equals(first.cabinet()) && mean.celsius() == first.celsius());
      if (!known) {
        lacking.add(
            (first.cabinet().isEmpty() ? "the cabinet" : "cabinet " + first.cabinet())
                + " at "
                + agro.units.Numbers.plain(first.celsius())
                + " °C");
      }
    }
    return lacking;
  }

  static Map<String, List<RearedAnimals>> cabinets(List<RearedAnimals> animals) {
    var cabinets = new LinkedHashMap<String, List<RearedAnimals>>();
    for (var one : animals) {
      cabinets
          .computeIfAbsent(one.cabinet() + "\n" + one.celsius(), key -> new ArrayList<>())
          .add(one);
    }
    return cabinets;
  }

  static List<RearingMean> meansOf(List<RearedAnimals> animals) {
    var means = new ArrayList<RearingMean>();
    for (var cabinet : cabinets(animals).values()) {
      int n = 0;
      double sum = 0;
      double squares = 0;
      for (var one : cabinet) {
        if (one.fate() == RearingFate.DEVELOPED) {
          double middle = 0.5 * (one.fromDays() + one.toDays());
          n += one.animals();
          sum += one.animals() * middle;
          squares += one.animals() * middle * middle;
        }
      }
      if (n > 0) {
        double mean = sum / n;
        double variance = n > 1 ? Math.max(0, (squares - n * mean * mean) / (n - 1)) : Double.NaN;
        var first = cabinet.get(0);
        means.add(
            new RearingMean(
                first.cabinet(),
                first.setCelsius(),
                first.measuredCelsius(),
                OptionalDouble.of(mean),
                OptionalInt.of(n),
                n > 1 ? OptionalDouble.of(Math.sqrt(variance)) : OptionalDouble.empty()));
      }
    }
    return means;
  }

  @Override
  public Presentation presentation() {
    return RatePages.data(this);
  }
}
