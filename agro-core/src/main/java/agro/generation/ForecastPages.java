package agro.generation;

import agro.source.Reference;
import agro.units.Numbers;
import agro.weather.DayOrigin;
import agro.working.Caution;
import agro.working.Cell;
import agro.working.Presentation;
import agro.working.ResultTable;
import agro.working.ResultTable.Column;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Optional;

/** Forecasts and their parts as a person reads them. */
final class ForecastPages {

  private static final String NOT_THIS_SEASON = "not this season".replace(' ', DayWords.NO_BREAK);

  private ForecastPages() {}

  static ResultTable table(GenerationForecast forecast) {
    var rows = new ArrayList<List<Cell>>();
    for (var row : forecast.rows()) {
      rows.add(
          List.of(
              Cell.number(row.generation(), 0),
              Cell.text(shareWords(row)),
              Cell.text(median(row, forecast.season().asOf())),
              Cell.text(interval(row.dates().interval(0.5))),
              Cell.text(interval(row.dates().interval(0.8))),
              Cell.text(interval(row.dates().interval(0.9))),
              Cell.text(chance(row.dates().chanceNotThisSeason()))));
    }
    var season = forecast.season();
    var table =
        ResultTable.of(
            title(season),
            List.of(
                Column.of("Flight"),
                Column.of("Share of the flight"),
                Column.of("Median date"),
                Column.of("5 in 10"),
                Column.of("8 in 10"),
                Column.of("9 in 10"),
                Column.of("Not this season")),
            rows);
    if (rows.isEmpty()) {
      table = table.withNote("No flight is to come this season; the report says why.");
    }
    return table
        .withNote(
            "Shares are of the animals. 5, 8 and 9 in 10 are chances: that the date lies between"
                + " the two days or, where it says so, that it comes from that day on or not at"
                + " all. Not this season: the warmth does not suffice by "
                + DayWords.inFull(season.lastDay())
                + ".")
        .withNote("The dates say when to look in the field, not that anything needs treating.");
  }

  private static String shareWords(ForecastRow row) {
    var share = row.share().words().replace(" %", DayWords.NO_BREAK + "%");
    return row.isFlight() ? share : row.event() + ", " + share;
  }

  private static String median(ForecastRow row, LocalDate asOf) {
    var median = row.dates().median();
    var passed = median.filter(date -> date.isBefore(asOf)).isPresent();
    return day(median) + (passed ? " (passed)" : "");
  }

  static Presentation page(GenerationForecast forecast) {
    return Presentation.titled("Forecast").table(table(forecast)).part(details(forecast)).build();
  }

  static Presentation details(GenerationForecast forecast) {
    var season = forecast.season();
    var fit = forecast.fit();
    return Presentation.titled("What the dates rest on")
        .paragraph(temperatures(season))
        .paragraph(
            "Interval between flights: "
                + FitPages.intervalWords(fit)
                + ". Degree-days: "
                + season.model()
                + ", from the start of "
                + DayWords.inFull(season.firstDay())
                + ".")
        .table(spreads(forecast))
        .part(Presentation.of(forecast.report()))
        .sources(sources(forecast))
        .cautions(List.of(Caution.LABEL_FIRST, Caution.LICENSED_ADVISER))
        .build();
  }

  private static List<Reference> sources(GenerationForecast forecast) {
    var sources = new ArrayList<>(forecast.fit().timing().range().sources());
    sources.add(forecast.season().model().method().source());
    return sources;
  }

  private static String title(SeasonUnderWay season) {
    return "Flights to come: "
        + season.pest()
        + ", "
        + season.known().place()
        + ", as of "
        + DayWords.inFull(season.asOf());
  }

  private static String temperatures(SeasonUnderWay season) {
    var known = season.known().between(season.firstDay(), season.known().lastDay());
    var counts = new EnumMap<DayOrigin, Integer>(DayOrigin.class);
    var lastObserved = season.firstDay();
    for (var i = 0; i < known.size(); i++) {
      var origin = known.origin(known.day(i));
      counts.merge(origin, 1, Integer::sum);
      lastObserved = origin == DayOrigin.OBSERVED ? known.day(i) : lastObserved;
    }
    return "Temperatures: "
        + counts.getOrDefault(DayOrigin.OBSERVED, 0)
        + " days observed at the place (the last on "
        + DayWords.inFull(lastObserved)
        + "), "
        + counts.getOrDefault(DayOrigin.INTERPOLATED, 0)
        + " interpolated, "
        + counts.getOrDefault(DayOrigin.NEIGHBOUR, 0)
        + " from the neighbour station with its offset, "
        + counts.getOrDefault(DayOrigin.FORECAST, 0)
        + " forecast; from "
        + DayWords.inFull(season.known().lastDay().plusDays(1))
        + " on "
        + season.members().size()
        + " past years.";
  }

  private static ResultTable spreads(GenerationForecast forecast) {
    var rows = new ArrayList<List<Cell>>();
    for (var row : forecast.rows()) {
      row.spread()
          .ifPresent(
              spread ->
                  rows.add(
                      List.of(
                          Cell.number(row.generation(), 0),
                          Cell.text(shareWords(row)),
                          Cell.number(spread.standardDeviationDays(), 1),
                          perCent(spread.weather(), spread),
                          perCent(spread.parameters(), spread),
                          perCent(spread.season(), spread),
                          perCent(spread.interaction(), spread))));
    }
    return ResultTable.of(
            "Where the spread of the dates comes from",
            List.of(
                Column.of("Flight"),
                Column.of("Share of the flight"),
                Column.of("Standard deviation", "d"),
                Column.of("Weather", "% of variance"),
                Column.of("Parameters", "% of variance"),
                Column.of("Season", "% of variance"),
                Column.of("Interaction", "% of variance")),
            rows)
        .withNote(
            "Weather: the days ahead. Parameters: what the counts leave open. Season: the pest is"
                + " not the same every year. A date that may not come has no variance and is left"
                + " out.");
  }

  private static Cell perCent(double variance, SpreadSplit spread) {
    var deviation = spread.standardDeviationDays();
    return deviation > 0
        ? Cell.number(100 * variance / (deviation * deviation), 0)
        : Cell.notKnown();
  }

  private static String day(Optional<LocalDate> date) {
    return date.map(DayWords::day).orElse(NOT_THIS_SEASON);
  }

  private static String interval(DateInterval interval) {
    if (interval.from().isEmpty()) {
      return NOT_THIS_SEASON;
    }
    return interval
        .to()
        .map(to -> DayWords.between(interval.from().get(), to))
        .orElseGet(() -> "from " + DayWords.day(interval.from().get()) + ", or not at all");
  }

  /** A chance in whole per cent; certainty is not for a forecast. */
  private static String chance(double chance) {
    if (chance < 0.01) {
      return "below 1 %";
    }
    return chance > 0.99 ? "above 99 %" : Numbers.fixed(100 * chance, 0) + " %";
  }
}
