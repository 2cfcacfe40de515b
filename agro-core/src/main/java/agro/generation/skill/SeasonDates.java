package agro.generation.skill;

import agro.generation.FlightShare;
import agro.generation.FlightTimingFit;
import agro.generation.ObservedSeason;
import agro.report.Progress;
import agro.units.Numbers;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Collections;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * When the flights of one whole season came: what forecasts are judged by. Every flight has a
 * middle and a spread of its own, fitted to the counts of that season; the number of flights and
 * the scatter of counts are those of the fit of all seasons.
 *
 * @param year the season
 * @param firstDay first day of the season
 * @param dates each event with its date, or why there is none
 */
public record SeasonDates(
    int year, LocalDate firstDay, SortedMap<FlightEvent, ObservedDate> dates) {

  /** Animals in all traps below which a flight has no date. */
  public static final double LEAST_ANIMALS = 10;

  /** Standard error above which a date is no date to judge by, in days. */
  public static final double MOST_ERROR_DAYS = 7;

  /** Animals below which a flight was not there. */
  private static final double HARDLY_ANY = 3;

  /** Days before the season's end at which a trap may be taken in. */
  private static final int LAST_DAYS = 14;

  /** Copies the map. */
  public SeasonDates {
    dates = Collections.unmodifiableSortedMap(new TreeMap<>(dates));
  }

  /**
   * Reads the dates of a season.
   *
   * @param fit fit of the flights, which gives their number, form and the scatter of counts
   * @param season the whole season
   * @param lastDay last day of the season
   * @return the date of every share of every flight
   */
  public static SeasonDates of(FlightTimingFit fit, ObservedSeason season, LocalDate lastDay) {
    var flights = new FreeFlights(fit, season);
    var dates = new TreeMap<FlightEvent, ObservedDate>();
    for (var g = 1; g <= flights.generations(); g++) {
      for (var share : FlightShare.values()) {
        var event = new FlightEvent(g, share);
        dates.put(event, date(flights, event, season, lastDay));
      }
    }
    return new SeasonDates(season.year(), season.scale().firstDay(), dates);
  }

  /**
   * Reads the dates of all seasons of an archive that are over.
   *
   * @param archive the seasons
   * @return the dates in order of years, possibly none
   */
  public static List<SeasonDates> of(SeasonArchive archive) {
    return of(archive, Progress.ofThread());
  }

  static List<SeasonDates> of(SeasonArchive archive, Progress progress) {
    var seasons = archive.seasons();
    if (seasons.isEmpty()) {
      return List.of();
    }
    var fit = archive.timing().fit(seasons, progress);
    return seasons.stream().map(season -> of(fit, season, archive.lastDay(season.year()))).toList();
  }

  private static ObservedDate date(
      FreeFlights flights, FlightEvent event, ObservedSeason season, LocalDate lastDay) {
    var scale = season.scale();
    var place = flights.place(event);
    var animals = flights.animals(event.generation());
    var stood = stoodToTheEnd(season, lastDay);
    var whole = !scale.lastDay().isBefore(lastDay);
    if (stood && whole && (place > scale.totalC() || animals < HARDLY_ANY)) {
      return ObservedDate.didNotCome();
    }
    if (animals < LEAST_ANIMALS) {
      return ObservedDate.notIdentified(
          "about " + Numbers.fixed(animals, 0) + " animals of the flight were caught");
    }
    if (!flights.inOrder(event.generation())) {
      return ObservedDate.notIdentified("the flight does not stand apart from its neighbours");
    }
    if (place < flights.firstSeenC() || place > flights.lastSeenC()) {
      return ObservedDate.notIdentified("no trap stood then");
    }
    var error = flights.placeError(event);
    var late = scale.daysUntil(Math.min(scale.totalC(), place + error));
    var early = scale.daysUntil(Math.max(0, place - error));
    var errorDays = (late - early) / 2;
    return errorDays > MOST_ERROR_DAYS
        ? ObservedDate.notIdentified(
            "its date is known to " + Numbers.fixed(errorDays, 0) + " days only")
        : ObservedDate.came(scale.daysUntil(place), errorDays);
  }

  private static boolean stoodToTheEnd(ObservedSeason season, LocalDate lastDay) {
    return season.traps().visits().stream()
        .anyMatch(visit -> ChronoUnit.DAYS.between(visit.date(), lastDay) <= LAST_DAYS);
  }

  /**
   * The date of one event.
   *
   * @param event the event
   * @return the date; not identified when the fit has no such flight
   */
  public ObservedDate date(FlightEvent event) {
    return dates.getOrDefault(event, ObservedDate.notIdentified("no such flight"));
  }
}
