package agro.season;

import agro.reading.DelimitedLine;
import agro.report.InputProblem;
import agro.report.ReadReport;
import agro.report.ReadReport.Deed;
import agro.weather.sun.SunHeight;
import java.time.MonthDay;
import java.util.Optional;

/** Reads the cells of the table of pests that tell what ends the season. */
final class PestLimitCells {

  private static final String HOURS = "critical_day_length_h";
  private static final String SUN = "day_length_ends";
  private static final String SOURCE = "day_length_source";
  private static final String COLD = "cold_end_c";
  private static final String COLD_FROM = "cold_end_from";
  private static final String COLD_SOURCE = "cold_end_source";
  private static final String LAST_USEFUL = "last_useful_day";

  private final DelimitedLine line;
  private final SeasonWindow window;
  private final ReadReport.Collector report;

  PestLimitCells(DelimitedLine line, SeasonWindow window, ReadReport.Collector report) {
    this.line = line;
    this.window = window;
    this.report = report;
  }

  PestLimits limits() {
    return new PestLimits(dayLength(), cold(), lastUsefulDay());
  }

  private Optional<CriticalDayLength> dayLength() {
    var hours = line.optionalNumber(HOURS);
    if (hours.isEmpty()) {
      requireEmpty(HOURS, SUN, SOURCE);
      return Optional.empty();
    }
    if (!(hours.getAsDouble() > 0 && hours.getAsDouble() < 24)) {
      throw InputProblem.at(line.location(HOURS), "the cell reads " + hours.getAsDouble())
          .expected("hours above 0 and below 24")
          .because("a day has 24 hours")
          .mend("give hours with a decimal point, such as 15.5 for fifteen and a half");
    }
    var ends = line.optionalChoice(SUN, SunHeight.class);
    if (ends.isEmpty()) {
      report.add(
          Deed.ASSUMED,
          line.location(SUN),
          line.text("pest")
              + ": day length counts while "
              + SunHeight.UPPER_EDGE_SEEN.words()
              + ", as not stated");
    }
    return Optional.of(
        new CriticalDayLength(
            hours.getAsDouble(),
            ends.orElse(SunHeight.UPPER_EDGE_SEEN),
            PestTable.source(line, SOURCE)));
  }

  private Optional<ColdOfSeasonEnd> cold() {
    var minimum = line.optionalNumber(COLD);
    if (minimum.isEmpty()) {
      requireEmpty(COLD, COLD_FROM, COLD_SOURCE);
      return Optional.empty();
    }
    return Optional.of(
        new ColdOfSeasonEnd(
            PestTable.celsius(line, COLD, minimum.getAsDouble()),
            inSeason(COLD_FROM),
            PestTable.source(line, COLD_SOURCE)));
  }

  private Optional<MonthDay> lastUsefulDay() {
    return line.optionalText(LAST_USEFUL).map(text -> inSeason(LAST_USEFUL));
  }

  /** Cells that say something about a figure that is not there were meant for one. */
  private void requireEmpty(String figure, String... others) {
    for (var column : others) {
      if (line.optionalText(column).isPresent()) {
        throw InputProblem.at(line.location(figure), "an empty cell, but " + column + " is filled")
            .expected("both " + figure + " and " + column + ", or neither")
            .because("one tells nothing without the other")
            .mend("fill in " + figure + ", or empty " + column);
      }
    }
  }

  private MonthDay inSeason(String column) {
    var day = PestTable.monthDay(line, column);
    if (window.dayOf(2024, day).isEmpty()) {
      throw InputProblem.at(line.location(column), "the cell reads " + line.text(column))
          .expected("a day of the season, " + window.words())
          .because("a day outside the season can neither begin nor end anything in it")
          .mend("correct the day, or season_start and season_end");
    }
    return day;
  }
}
