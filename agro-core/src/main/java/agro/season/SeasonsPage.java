package agro.season;

import agro.generation.TrapState;
import agro.source.Reference;
import agro.units.Numbers;
import agro.weather.DailyTemperatures;
import agro.weather.DayOrigin;
import agro.working.Cell;
import agro.working.Presentation;
import agro.working.ResultTable;
import agro.working.ResultTable.Column;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;

/** What a season folder gave for a pest at a place, on a page. */
final class SeasonsPage {

  private SeasonsPage() {}

  static Presentation of(PestSeasons seasons) {
    var pest = seasons.pest();
    var page =
        Presentation.titled(pest.name() + " at " + seasons.place().name())
            .fact("Pest", pest.name() + scientific(pest.scientificName()))
            .fact("Place", seasons.place().name() + ", " + seasons.place().medium().words())
            .fact("Day of issue", seasons.issueDate() + ", nothing later is used")
            .fact("Degree-days", pest.model().toString())
            .fact("Counted from", pest.season().words())
            .fact("Interval between flights, sought", range(pest))
            .table(table(seasons));
    seasons.offset().ifPresent(offset -> page.part(offset.presentation()));
    var sources = new LinkedHashSet<Reference>();
    sources.add(pest.thresholdSource());
    sources.addAll(pest.range().sources());
    return page.sources(List.copyOf(sources)).part(Presentation.of(seasons.report())).build();
  }

  private static String scientific(String name) {
    return name.isEmpty() ? "" : " (" + name + ")";
  }

  private static String range(MonitoredPest pest) {
    var range = pest.range();
    return Numbers.fixed(range.low().degreeDaysC(), 0)
        + " to "
        + Numbers.fixed(range.high().degreeDaysC(), 0)
        + " °C·d, expected "
        + Numbers.fixed(range.expected().degreeDaysC(), 0);
  }

  private static ResultTable table(PestSeasons seasons) {
    var rows = new ArrayList<List<Cell>>();
    seasons.seasons().forEach(season -> rows.add(row(season)));
    return ResultTable.of(
            "Seasons",
            List.of(
                Column.of("Season"),
                Column.of("Temperatures to"),
                Column.of("Measured", "d"),
                Column.of("Straight line", "d"),
                Column.of("Neighbour", "d"),
                Column.of("Visits"),
                Column.of("Trap failed"),
                Column.of("Trap full"),
                Column.of("Catch")),
            rows)
        .withNote("A season is named after the year in which it starts.");
  }

  private static List<Cell> row(FieldSeason season) {
    var days = season.temperatures();
    return List.of(
        Cell.text(Integer.toString(season.year())),
        Cell.day(days.lastDay()),
        Cell.number(count(days, DayOrigin.OBSERVED), 0),
        Cell.number(count(days, DayOrigin.INTERPOLATED), 0),
        Cell.number(count(days, DayOrigin.NEIGHBOUR), 0),
        Cell.number(season.traps().visits().size(), 0),
        Cell.number(count(season, TrapState.FAILED), 0),
        Cell.number(count(season, TrapState.FULL), 0),
        Cell.number((double) season.traps().totalCatch(), 0));
  }

  private static int count(DailyTemperatures days, DayOrigin origin) {
    int count = 0;
    for (int i = 0; i < days.size(); i++) {
      count += days.origin(days.day(i)) == origin ? 1 : 0;
    }
    return count;
  }

  private static int count(FieldSeason season, TrapState state) {
    int count = 0;
    for (var visit : season.traps().visits()) {
      count += visit.state() == state ? 1 : 0;
    }
    return count;
  }
}
