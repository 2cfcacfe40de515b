package agro.demo;

import agro.generation.TrapSeason;
import agro.generation.TrapState;
import agro.generation.TrapVisit;
import agro.weather.DailyExtremes;
import agro.weather.DailyTemperatures;
import agro.weather.DayOrigin;
import agro.weather.Medium;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;

/** The vale's data as the library's own types, in memory and without files. */
final class DemoSeries {

  private DemoSeries() {}

  /** Daily extremes to a tenth of a degree; days that are lost are missing. */
  static DailyTemperatures daily(
      Site site, SiteWeather air, LocalDate first, LocalDate last, Predicate<LocalDate> lost) {
    var days = new ArrayList<DailyExtremes>();
    for (var day = first; !day.isAfter(last); day = day.plusDays(1)) {
      if (!lost.test(day)) {
        days.add(new DailyExtremes(day, tenth(air.minimum(day)), tenth(air.maximum(day))));
      }
    }
    return DailyTemperatures.of(site.title, Medium.shelterAir(), days, DayOrigin.OBSERVED);
  }

  private static double tenth(double celsius) {
    // Adding zero turns a negative zero into the plain one.
    return StrictMath.rint(celsius * 10) / 10 + 0.0;
  }

  /** The visits of a season, each with the nights since the visit to the same trap before. */
  static TrapSeason traps(int year, List<VisitNote> notes) {
    var visits = new ArrayList<TrapVisit>();
    var before = new HashMap<String, LocalDate>();
    for (var note : notes) {
      var from = before.put(note.trap(), note.date());
      if (!note.state().equals("set")) {
        visits.add(visit(note, from));
      }
    }
    return new TrapSeason(year, visits);
  }

  private static TrapVisit visit(VisitNote note, LocalDate from) {
    var state = TrapState.valueOf(note.state().toUpperCase(Locale.ROOT));
    return new TrapVisit(
        note.trap(),
        from,
        note.date(),
        note.count().orElse(0),
        state,
        state == TrapState.FAILED ? 0 : ChronoUnit.DAYS.between(from, note.date()),
        note.lureRenewed());
  }
}
