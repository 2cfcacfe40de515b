package agro.weather.quality;

import agro.report.ReadReport;
import agro.weather.DailyTemperatures;
import agro.weather.DayOrigin;
import agro.working.Presentable;
import agro.working.Presentation;
import java.util.BitSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;

/**
 * Days from which somebody left out flagged ones.
 *
 * @param days the same days, the flagged ones missing
 * @param report what was left out, flag by flag
 */
public record CleanedDays(DailyTemperatures days, ReadReport report) implements Presentable {

  /** Refuses nulls. */
  public CleanedDays {
    Objects.requireNonNull(days, "days");
    Objects.requireNonNull(report, "report");
  }

  static CleanedDays of(
      DailyTemperatures days, List<QualityFlag> flags, Set<QualityRule> rules, BitSet flagged) {
    var builder = DailyTemperatures.builder(days.firstDay(), days.lastDay());
    days.copyInto(builder, days.firstDay());
    flagged.stream().forEach(i -> builder.putAt(i, Double.NaN, Double.NaN, DayOrigin.MISSING));
    return new CleanedDays(
        builder.build(days.place(), days.medium()),
        CleanedReadings.report(days.place(), days.size(), flags, rules));
  }

  @Override
  public Presentation presentation() {
    return Presentation.of(report);
  }
}
