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
              Cell.text(daysUntil(row.dates(), forecast.season().asOf())),
              Cell.text(interval(row.dates().interval(0.5))),
              Cell.text(interval(row.dates().interval(0.8))),
              Cell.text(interval(row.dates().interval(0.9))),
              Cell.text(row.notThisSeason().words())));
    }
    var season = forecast.season();
    var table =
        ResultTable.of(
            title(season),
            List.of(
                Column.of("Flight"),
                Column.of("Share of the flight"),
                Column.of("Median date"),
                Column.of("Days until", "d"),
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
                + " all. Days until: from the day of issue to the median date and, in brackets, to"
                + " the ends of 8 in 10. Not this season: "
                + ends(season)
                + ".")
        .withNote(ForecastNotes.resolution(season.members().size()))
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

  private static String daysUntil(DateDistribution dates, LocalDate asOf) {
    var median = dates.daysFrom(asOf, 0.5);
    if (median.isEmpty()) {
      return NOT_THIS_SEASON;
    }
    if (median.getAsInt() < 0) {
      return "passed";
    }
    var early = Math.max(0, dates.daysFrom(asOf, 0.1).orElse(0));
    var late = dates.daysFrom(asOf, 0.9);
    var range =
        late.isPresent()
            ? early + DayWords.TO.replace(' ', DayWords.NO_BREAK) + late.getAsInt()
            : early + " or more".replace(' ', DayWords.NO_BREAK);
    return String.valueOf(median.getAsInt()) + DayWords.NO_BREAK + "(" + range + ")";
  }

  /** What makes a date fail, as far as it was asked for. */
  private static String ends(SeasonUnderWay season) {
    var words = new StringBuilder("the warmth does not suffice by ");
    words.append(DayWords.inFull(season.lastDay()));
    var limits = season.limits();
    limits
        .dayLength()
        .ifPresent(
            cut ->
                words
                    .append("; day length: the eggs are laid after days have become shorter than ")
                    .append(Numbers.plain(cut.criticalHours()))
                    .append(" h"));
    limits
        .cold()
        .ifPresent(
            cold ->
                words
                    .append("; cold: a day at ")
                    .append(cold.minimum())
                    .append(" or below came before, from ")
                    .append(DayWords.day(cold.from()))
                    .append(" on"));
    limits
        .lastUsefulDay()
        .ifPresent(
            day -> words.append("; last useful day: it comes after ").append(DayWords.day(day)));
    return words.toString();
  }

  private static String range(FlownShare share) {
    var low = perCent(share.low());
    var high = perCent(share.high());
    return low.equals(high) ? low : low + DayWords.TO + high;
  }

  static ResultTable flown(GenerationForecast forecast) {
    var rows = new ArrayList<List<Cell>>();
    for (var share : forecast.flown()) {
      rows.add(
          List.of(
              Cell.number(share.generation(), 0),
              Cell.text(perCent(share.median())),
              Cell.text(range(share))));
    }
    var table =
        ResultTable.of(
            "Flown already by the beginning of " + DayWords.inFull(forecast.season().asOf()),
            List.of(Column.of("Flight"), Column.of("Share of the flight"), Column.of("8 in 10")),
            rows);
    return rows.isEmpty() ? table.withNote("Nothing to speak of has flown yet.") : table;
  }

  static Presentation page(GenerationForecast forecast) {
    return Presentation.titled("Forecast")
        .table(table(forecast))
        .table(flown(forecast))
        .part(details(forecast))
        .build();
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
    var limits = forecast.season().limits();
    limits.dayLength().ifPresent(cut -> sources.add(cut.source()));
    limits.dayLength().ifPresent(cut -> sources.add(cut.rule().declination().source()));
    limits.cold().ifPresent(cold -> sources.add(cold.source()));
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
        + " past years"
        + (season.trendOfMembers() == 0
            ? "."
            : ", moved along a stated trend of "
                + Numbers.plain(season.trendOfMembers())
                + " °C a decade.");
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
                          perCent(spread.temperatures(), spread),
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
                Column.of("Known days", "% of variance"),
                Column.of("Interaction", "% of variance")),
            rows)
        .withNote(
            "Weather: the days ahead. Parameters: what the counts leave open. Season: the pest is"
                + " not the same every year. Known days: errors of those that the place did not"
                + " measure. A date that may not come has no variance and is left"
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

  /** A share in whole per cent; certainty is not for a forecast. */
  private static String perCent(double share) {
    if (share < 0.01) {
      return "below 1" + DayWords.NO_BREAK + "%";
    }
    return (share > 0.99 ? "above 99" : Numbers.fixed(100 * share, 0)) + DayWords.NO_BREAK + "%";
  }
}
