package agro.season;

import agro.report.InputProblem;
import agro.report.ReadReport;
import agro.report.ReadReport.Deed;
import agro.report.SourceLocation;
import agro.units.Numbers;
import agro.weather.DailyTemperatures;
import agro.weather.DayOrigin;
import agro.weather.climate.StationOffset;
import agro.weather.gap.GapFilling;
import java.time.LocalDate;
import java.util.Objects;
import java.util.Optional;

/**
 * The temperatures of a field, season by season and without gaps: its own log, gaps of at most
 * {@value #LONGEST_GAP_DAYS} days on a straight line, then a neighbour shifted to the field by the
 * difference between the two on the days that both observed.
 */
public final class SeasonTemperatures {

  /** Longest gap that is filled on a straight line, in days (common practice, no source). */
  public static final int LONGEST_GAP_DAYS = 2;

  /** Mean difference of neighbours that is still believed, in °C (common practice, no source). */
  public static final double WIDEST_OFFSET_CELSIUS = 10;

  private final DailyTemperatures field;
  private final Optional<DailyTemperatures> bridge;
  private final Optional<StationOffset> offset;
  private final ReadReport report;

  private SeasonTemperatures(DailyTemperatures field, Optional<DailyTemperatures> neighbour) {
    this.field = Objects.requireNonNull(field, "field");
    var collector = new ReadReport.Collector(field.place());
    var obstacle = neighbour.map(station -> obstacle(field, station)).orElse("");
    if (obstacle.isEmpty()) {
      offset = neighbour.map(station -> StationOffset.fit(field, station));
      offset.ifPresent(SeasonTemperatures::requireSameUnit);
      bridge = offset.map(shift -> shift.apply(neighbour.orElseThrow()));
    } else {
      offset = Optional.empty();
      bridge = Optional.empty();
    }
    offset.ifPresent(shift -> note(collector, Deed.NOTED, "bridged by " + shift));
    if (!obstacle.isEmpty()) {
      note(collector, Deed.NOTED, obstacle);
    }
    report = collector.report();
  }

  /**
   * The temperatures of a field with or without a neighbour that helps out. A neighbour in another
   * kind of medium, or with fewer than {@link StationOffset#LEAST_DAYS} days in common, cannot
   * help; the report says so.
   *
   * @param field the field's own log, gaps left open
   * @param neighbour the neighbour's log, as measured there
   * @return the temperatures, to be asked season by season
   */
  public static SeasonTemperatures of(
      DailyTemperatures field, Optional<DailyTemperatures> neighbour) {
    return new SeasonTemperatures(field, neighbour);
  }

  /** A log in a wrong unit is tens of degrees off; two places of one district are not. */
  private static void requireSameUnit(StationOffset offset) {
    var widest =
        Math.max(
            Math.abs(offset.minimum().meanCelsius()), Math.abs(offset.maximum().meanCelsius()));
    if (widest > WIDEST_OFFSET_CELSIUS) {
      throw InputProblem.of(
              offset.field()
                  + " and "
                  + offset.station()
                  + " differ by "
                  + Numbers.fixed(widest, 1)
                  + " °C on average")
          .expected("at most " + Numbers.fixed(WIDEST_OFFSET_CELSIUS, 0) + " °C")
          .because("neighbours differ less; a log read in the wrong unit differs more")
          .mend("correct the unit of one of the logs in logs.csv, or name another neighbour");
    }
  }

  private static String obstacle(DailyTemperatures field, DailyTemperatures station) {
    if (station.medium().kind() != field.medium().kind()) {
      return station.place() + " cannot bridge gaps: one log is of air, one of soil";
    }
    long common =
        field
            .firstDay()
            .datesUntil(field.lastDay().plusDays(1))
            .filter(
                day ->
                    field.origin(day) == DayOrigin.OBSERVED
                        && station.origin(day) == DayOrigin.OBSERVED)
            .count();
    return common >= StationOffset.LEAST_DAYS
        ? ""
        : station.place()
            + " cannot bridge gaps: the two logs have "
            + common
            + " days in common, and "
            + StationOffset.LEAST_DAYS
            + " are needed";
  }

  /**
   * The shift from the neighbour to the field.
   *
   * @return the offset; empty when no neighbour can help
   */
  public Optional<StationOffset> offset() {
    return offset;
  }

  /**
   * Whether and why a neighbour helps out or cannot.
   *
   * @return the report that holds for all seasons
   */
  public ReadReport report() {
    return report;
  }

  /**
   * Days of a season, with what was filled.
   *
   * @param days unbroken days from the season's start on; empty when its first day is not known
   * @param report what was filled, and where the days end too early
   */
  public record SeasonDays(Optional<DailyTemperatures> days, ReadReport report) {
    /** Refuses nulls. */
    public SeasonDays {
      Objects.requireNonNull(days, "days");
      Objects.requireNonNull(report, "report");
    }
  }

  /**
   * The days from a season's start on, to a last day or to the day before the first one that is not
   * known.
   *
   * @param start first day of the season
   * @param last last day wanted, not before the start
   * @return the days and the report
   */
  public SeasonDays between(LocalDate start, LocalDate last) {
    var collector = new ReadReport.Collector(field.place());
    var known = joined(start, last, collector).flatMap(run -> unbroken(run, start));
    known.ifPresent(
        run -> {
          reportBridge(run, collector);
          if (run.lastDay().isBefore(last)) {
            note(
                collector,
                Deed.NOTED,
                "from " + start + " on, temperatures are known without a gap to " + run.lastDay());
          }
        });
    return new SeasonDays(known, collector.report());
  }

  private static Optional<DailyTemperatures> unbroken(DailyTemperatures run, LocalDate start) {
    if (run.origin(start) == DayOrigin.MISSING) {
      return Optional.empty();
    }
    var missing = run.missingDays();
    return Optional.of(missing.isEmpty() ? run : run.between(start, missing.get(0).minusDays(1)));
  }

  private Optional<DailyTemperatures> joined(
      LocalDate start, LocalDate last, ReadReport.Collector collector) {
    var rest = bridge.flatMap(days -> part(days, start, last));
    var own = part(field, start, last).map(run -> interpolated(run, collector));
    if (own.isEmpty() || rest.isEmpty()) {
      return own.isEmpty() ? rest : own;
    }
    var run = own.get();
    if (run.firstDay().isAfter(start) && rest.get().firstDay().isBefore(run.firstDay())) {
      run = rest.get().upTo(run.firstDay().minusDays(1)).followedBy(run);
    }
    return Optional.of(run.filledFrom(rest.get()).followedBy(rest.get()));
  }

  private DailyTemperatures interpolated(DailyTemperatures run, ReadReport.Collector collector) {
    var filled = GapFilling.interpolateShortGaps(run, LONGEST_GAP_DAYS);
    filled
        .report()
        .entries(Deed.FILLED)
        .forEach(entry -> note(collector, Deed.FILLED, field.place() + ", " + entry.text()));
    return filled.daily();
  }

  /** The part of a run inside a window; empty when they do not meet. */
  private static Optional<DailyTemperatures> part(
      DailyTemperatures run, LocalDate start, LocalDate last) {
    if (run.firstDay().isAfter(last) || run.lastDay().isBefore(start)) {
      return Optional.empty();
    }
    return Optional.of(
        run.between(
            run.firstDay().isAfter(start) ? run.firstDay() : start,
            run.lastDay().isBefore(last) ? run.lastDay() : last));
  }

  private void reportBridge(DailyTemperatures known, ReadReport.Collector collector) {
    int i = 0;
    while (i < known.size()) {
      int first = i;
      while (i < known.size() && known.origin(known.day(i)) == DayOrigin.NEIGHBOUR) {
        i++;
      }
      if (i == first) {
        i++;
        continue;
      }
      note(
          collector,
          Deed.FILLED,
          field.place()
              + ", "
              + known.day(first)
              + " to "
              + known.day(i - 1)
              + ": from "
              + offset.orElseThrow().station()
              + ", shifted to the field");
    }
  }

  private static void note(ReadReport.Collector collector, Deed deed, String text) {
    collector.add(deed, SourceLocation.NONE, text);
  }
}
