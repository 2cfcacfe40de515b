package agro.weather.quality;

import agro.report.ReadReport;
import agro.report.ReadReport.Deed;
import agro.report.SourceLocation;
import agro.weather.TemperatureReadings;
import agro.working.Presentable;
import agro.working.Presentation;
import java.util.BitSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;

/**
 * Readings from which somebody left out flagged ones.
 *
 * @param readings the readings that stay
 * @param report what was left out, flag by flag
 */
public record CleanedReadings(TemperatureReadings readings, ReadReport report)
    implements Presentable {

  /** Refuses nulls. */
  public CleanedReadings {
    Objects.requireNonNull(readings, "readings");
    Objects.requireNonNull(report, "report");
  }

  static CleanedReadings of(
      TemperatureReadings readings,
      List<QualityFlag> flags,
      Set<QualityRule> rules,
      BitSet flagged) {
    int stay = readings.size() - flagged.cardinality();
    var seconds = new long[stay];
    var celsius = new double[stay];
    int at = 0;
    for (int i = 0; i < readings.size(); i++) {
      if (!flagged.get(i)) {
        seconds[at] = readings.epochSecond(i);
        celsius[at++] = readings.celsius(i);
      }
    }
    return new CleanedReadings(
        TemperatureReadings.of(
            readings.place(), readings.medium(), readings.dayOffset(), seconds, celsius),
        report(readings.place(), readings.size(), flags, rules));
  }

  /** One entry for each flag of the rules. */
  static ReadReport report(
      String place, int rows, List<QualityFlag> flags, Set<QualityRule> rules) {
    var collector = new ReadReport.Collector(place);
    for (int i = 0; i < rows; i++) {
      collector.countRow();
    }
    flags.stream()
        .filter(flag -> rules.contains(flag.rule()))
        .forEach(
            flag ->
                collector.add(
                    Deed.DROPPED,
                    SourceLocation.file(place),
                    flag.when()
                        + ", "
                        + flag.element().words()
                        + ": left out on request by the rule \""
                        + flag.rule().words()
                        + "\": "
                        + flag.why()));
    return collector.report();
  }

  @Override
  public Presentation presentation() {
    return Presentation.of(report);
  }
}
