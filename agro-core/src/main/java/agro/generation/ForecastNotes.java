package agro.generation;

import agro.report.ReadReport;
import agro.report.ReadReport.Deed;
import agro.report.SourceLocation;
import agro.units.Numbers;
import agro.weather.DayOrigin;
import java.util.stream.IntStream;

/** What a reader should know of the temperatures behind a forecast. */
final class ForecastNotes {

  private final SeasonUnderWay season;
  private final WeatherAhead weather;
  private final KnownSpread known;
  private final ReadReport.Collector report;

  ForecastNotes(
      SeasonUnderWay season, WeatherAhead weather, KnownSpread known, ReadReport.Collector report) {
    this.season = season;
    this.weather = weather;
    this.known = known;
    this.report = report;
  }

  void add() {
    var step = weather.stepAtSeam();
    note(
        "where the past years take over, on "
            + season.known().lastDay().plusDays(1)
            + ", the mean goes from "
            + Numbers.fixed(step[0], 1)
            + " to "
            + Numbers.fixed(step[1], 1)
            + " °C·d a day");
    note(
        "the weather ahead is that of "
            + season.members().size()
            + " past years, each in one unbroken run, smoothed by Student's t. "
            + resolution(season.members().size()));
    if (season.trendOfMembers() != 0) {
      report.add(
          Deed.ASSUMED,
          SourceLocation.NONE,
          "the past years have been moved along a trend of "
              + Numbers.plain(season.trendOfMembers())
              + " °C a decade, as stated");
    }
    noteErrors();
    noteDayLength();
  }

  private void note(String text) {
    report.add(Deed.NOTED, SourceLocation.NONE, text);
  }

  /**
   * What so many years cannot show. Of m years in order the first lies at 1/(m + 1) of the chances
   * and the last at m/(m + 1).
   */
  static String resolution(int years) {
    var shown =
        IntStream.of(5, 10, 25).filter(chance -> chance * (years + 1.0) >= 100).min().orElse(50);
    if (shown == 5) {
      return years + " years reach to the ends of every interval shown.";
    }
    var years100 = 100.0 / (years + 1);
    return years
        + " years by themselves tell chances from "
        + Numbers.fixed(years100, 0)
        + " to "
        + Numbers.fixed(100 - years100, 0)
        + " in 100: what an interval shows below "
        + shown
        + " and above "
        + (100 - shown)
        + " in 100 is smoothed, not seen.";
  }

  private void noteErrors() {
    var errors = season.errors();
    var withErrors = days(true);
    var bridged = errors.offsetMinCelsius() > 0 || errors.offsetMaxCelsius() > 0;
    if (withErrors > 0 || (bridged && known.errorC() > 0)) {
      note(
          withErrors
              + " known days were not measured at the place; their errors make "
              + Numbers.fixed(known.errorC(), 1)
              + " °C·d of the sum that the dates run on from (standard error), which is in the"
              + " dates. Assumed: errors of neighbouring days of one run are correlated by "
              + Numbers.fixed(errors.correlation().dayToDay(), 2)
              + ", those of minimum and maximum by "
              + Numbers.fixed(errors.correlation().minToMax(), 2)
              + "; the error of the neighbour's mean offset ("
              + Numbers.fixed(errors.offsetMinCelsius(), 2)
              + " °C minima, "
              + Numbers.fixed(errors.offsetMaxCelsius(), 2)
              + " °C maxima) is the same on all bridged days and independent of that in the past"
              + " years");
    }
    var exact = days(false);
    if (exact > 0) {
      note(
          exact
              + " days from the neighbour station or a forecast are taken as exact, for no error of"
              + " them is stated; their error is not in the dates");
    }
  }

  /** Known days from elsewhere with an error of their own, or those without. */
  private long days(boolean withErrors) {
    var days = season.known();
    return season
        .firstDay()
        .datesUntil(days.lastDay().plusDays(1))
        .filter(
            day -> {
              var stated =
                  days.minStandardErrorCelsius(day) > 0 || days.maxStandardErrorCelsius(day) > 0;
              var elsewhere =
                  days.origin(day) == DayOrigin.NEIGHBOUR || days.origin(day) == DayOrigin.FORECAST;
              return withErrors ? stated : elsewhere && !stated;
            })
        .count();
  }

  private void noteDayLength() {
    season
        .limits()
        .dayLength()
        .ifPresent(
            cut ->
                note(
                    cut.firstShortDay(season.firstDay(), season.lastDay())
                        .map(
                            day ->
                                "day length falls below "
                                    + Numbers.plain(cut.criticalHours())
                                    + " h on "
                                    + day
                                    + "; eggs laid after that day are taken to give no further"
                                    + " flight this season, share by share of the flight")
                        .orElse(
                            "day length does not fall below "
                                + Numbers.plain(cut.criticalHours())
                                + " h by the end of the season, so it ends nothing")));
  }
}
