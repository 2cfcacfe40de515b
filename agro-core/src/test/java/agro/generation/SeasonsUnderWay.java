package agro.generation;

import agro.generation.InventedSeasons.Truth;
import agro.report.ReadReport;
import agro.weather.DailyExtremes;
import agro.weather.DailyTemperatures;
import agro.weather.DayOrigin;
import agro.weather.Medium;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/** Past seasons and one under way, from the invented seasons. */
final class SeasonsUnderWay {

  static final int YEAR = 2030;
  static final LocalDate AS_OF = LocalDate.of(YEAR, 6, 10);

  final List<ObservedSeason> past;
  final ObservedSeason whole;
  final DailyTemperatures weather;
  private final List<DailyTemperatures> years = new ArrayList<>();

  SeasonsUnderWay(long seed, Truth truth, int pastSeasons) {
    var invented = new InventedSeasons(seed, truth);
    past = invented.seasons(pastSeasons);
    weather = invented.weather(YEAR);
    whole = invented.season(YEAR, weather);
    for (var i = 0; i < 15; i++) {
      years.add(invented.weather(YEAR));
    }
  }

  FlightTimingFit fit() {
    return FlightTiming.searching(InventedSeasons.range()).fit(past);
  }

  /** The season as it was known on a day: yesterday's temperatures, that day's visit. */
  SeasonUnderWay asOf(LocalDate day) {
    return asOf(day, whole.traps(), weather);
  }

  SeasonUnderWay asOf(LocalDate day, TrapSeason traps, DailyTemperatures temperatures) {
    return new SeasonUnderWay(
        "test pest",
        InventedSeasons.MODEL,
        traps.upTo(day),
        InventedSeasons.firstDay(YEAR),
        InventedSeasons.lastDay(YEAR),
        day,
        temperatures.upTo(day.minusDays(1)),
        members(day));
  }

  List<DailyTemperatures> members(LocalDate ahead) {
    return years.stream()
        .map(year -> moved(year.between(ahead, InventedSeasons.lastDay(YEAR))))
        .toList();
  }

  private static DailyTemperatures moved(DailyTemperatures year) {
    var days = new ArrayList<DailyExtremes>();
    for (var i = 0; i < year.size(); i++) {
      days.add(year.extremes(year.day(i)).orElseThrow());
    }
    return DailyTemperatures.of("Test field", Medium.shelterAir(), days, DayOrigin.PAST_YEAR);
  }

  /** True day, with its fraction, on which the middle of a flight falls. */
  double middleDays(double start, double interval, int flight) {
    return whole.scale().daysUntil(start + (flight - 1) * interval);
  }

  static ReadReport.Collector report() {
    return new ReadReport.Collector("test");
  }
}
