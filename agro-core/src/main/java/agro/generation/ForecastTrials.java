package agro.generation;

import agro.report.Progress;
import agro.weather.DailyTemperatures;
import agro.weather.DayOrigin;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;

/** The forecasts of one seed of {@link ForecastCoverage}: one fit, and a forecast a lead. */
final class ForecastTrials {

  private final FlightTiming timing;
  private final List<Integer> leadDays;
  private final int flight;
  private final List<ObservedSeason> past;
  private final InventedFlights.Drawn last;
  private final List<DailyTemperatures> years;

  ForecastTrials(InventedFlights flights, FlightTiming timing, List<Integer> leadDays, long seed) {
    this.timing = timing;
    this.leadDays = leadDays;
    flight = 2 + (int) ((seed - 1) % 2);
    var drawn = flights.drawWithTruth(seed);
    past =
        drawn.subList(0, drawn.size() - 1).stream()
            .map(InventedFlights.Drawn::season)
            .map(season -> timing.conditions().none() ? withoutTemperatures(season) : season)
            .toList();
    last = drawn.get(drawn.size() - 1);
    years = InventedFlights.otherYears(seed, ForecastCoverage.pastYears());
  }

  List<ForecastCoverage.Trial> run() {
    var fit = timing.fit(past, Progress.silent());
    var trials = new ArrayList<ForecastCoverage.Trial>();
    var mean = meanDays(fit);
    for (var lead : leadDays) {
      trials.add(trial(fit, lead, firstDay().plusDays((long) Math.floor(mean) - lead)));
    }
    return trials;
  }

  /** Spares the fit the dates at other thresholds, which nothing here depends on. */
  private static ObservedSeason withoutTemperatures(ObservedSeason season) {
    return new ObservedSeason(season.traps(), season.scale());
  }

  private LocalDate firstDay() {
    return last.season().scale().firstDay();
  }

  /** Mean of the dates of a flight in the fitted seasons. */
  private double meanDays(FlightTimingFit fit) {
    var sum = 0.0;
    for (var i = 0; i < past.size(); i++) {
      var scale = past.get(i).scale();
      var middle =
          fit.seasons().get(i).start().degreeDaysC()
              + (flight - 1) * fit.workingInterval().degreeDaysC();
      sum +=
          Math.min(scale.sumsC().length - 1.0, scale.daysUntil(Math.min(middle, scale.totalC())));
    }
    return sum / past.size();
  }

  private ForecastCoverage.Trial trial(FlightTimingFit fit, int lead, LocalDate issue) {
    var forecast = GenerationForecast.of(fit, underWay(issue), List.of(), Progress.silent());
    var truth = last.middleDays(flight);
    var row = forecast.flight(flight, FlightShare.HALF);
    if (row.isEmpty()) {
      // A flight that is left out is over for certain, or not to come.
      var over = truth < ChronoUnit.DAYS.between(firstDay(), issue);
      return new ForecastCoverage.Trial(lead, flight, truth, truth, over ? 0.5 : 1);
    }
    var dates = row.get().dates();
    return new ForecastCoverage.Trial(
        lead, flight, truth, dates.quantileDays(0.5), chanceBelow(dates, truth));
  }

  private static double chanceBelow(DateDistribution dates, double truth) {
    var low = 0.0005;
    var high = 0.9995;
    while (high - low > 1e-4) {
      var middle = (low + high) / 2;
      if (dates.quantileDays(middle) < truth) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return high;
  }

  private SeasonUnderWay underWay(LocalDate issue) {
    var season = last.season();
    var weather = season.temperatures().orElseThrow();
    return new SeasonUnderWay(
        "invented pest",
        InventedFlights.MODEL,
        season.traps().upTo(issue),
        weather.firstDay(),
        weather.lastDay(),
        issue,
        weather.upTo(issue),
        years.stream().map(year -> moved(year, weather)).toList());
  }

  /** The days of another year under the dates of this one. */
  private static DailyTemperatures moved(DailyTemperatures year, DailyTemperatures to) {
    var builder = DailyTemperatures.builder(to.firstDay(), to.lastDay());
    for (var day = 0; day < to.size(); day++) {
      var other = Math.min(day, year.size() - 1);
      builder.putAt(
          day, year.minimaCelsius()[other], year.maximaCelsius()[other], DayOrigin.PAST_YEAR);
    }
    return builder.build(year.place(), year.medium());
  }
}
