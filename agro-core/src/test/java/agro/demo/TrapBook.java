package agro.demo;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalInt;

/** How the traps of one pest see its flights, and how the visits are kept. */
final class TrapBook {
  private static final int LOST_IN = 2022;
  private static final int FULL_IN = 2024;
  private static final int LURE_DAYS = 42;
  private static final double LURE_FADES_DAYS = 90;

  private final Pest pest;
  private final SiteWeather air;
  private final TrueSeason truth;
  private final Draws draws;

  private TrapBook(Pest pest, SiteWeather air, TrueSeason truth, long seed) {
    this.pest = pest;
    this.air = air;
    this.truth = truth;
    draws = Draws.of(seed, "traps for " + pest.title + " " + truth.year());
  }

  /** The visit book of all traps of a pest in one season, up to the day of issue. */
  static List<VisitNote> season(
      Pest pest, List<String> traps, TrueSeason truth, SiteWeather air, long seed) {
    return new TrapBook(pest, air, truth, seed).keep(traps);
  }

  private List<VisitNote> keep(List<String> traps) {
    var visitDays = visitDays();
    var expected = expectedNightly(visitDays.get(visitDays.size() - 1));
    var book = new ArrayList<VisitNote>();
    for (var trap : traps) {
      var notes = keepOne(trap, visitDays, expected);
      if (truth.year() == FULL_IN && trap.equals(traps.get(traps.size() - 1))) {
        fillUp(notes);
      }
      if (truth.year() == LOST_IN && trap.equals(traps.get(0))) {
        notes.remove(notes.size() / 2 + draws.whole(-8, 8));
      }
      book.addAll(notes);
    }
    book.sort(Comparator.comparing(VisitNote::date).thenComparing(VisitNote::trap));
    return book;
  }

  private List<LocalDate> visitDays() {
    int year = truth.year();
    var last = LocalDate.of(year, 10, 14);
    if (year == OsmereVale.ISSUE_DATE.getYear()) {
      last = OsmereVale.ISSUE_DATE;
    }
    var days = new ArrayList<LocalDate>();
    var day = LocalDate.of(year, 3, 22).plusDays(draws.whole(0, 5));
    while (day.isBefore(last.minusDays(2))) {
      days.add(day);
      day = day.plusDays(draws.whole(3, 5));
    }
    days.add(last);
    return days;
  }

  /** Moths a trap in order, with a fresh lure, would catch on average, night by night. */
  private double[] expectedNightly(LocalDate until) {
    var from = LocalDate.of(truth.year(), 1, 1);
    var expected = new double[until.getDayOfYear()];
    double moths = pest.size.firstFlight() * StrictMath.exp(0.35 * draws.gaussian());
    for (var flight : truth.flights()) {
      if (flight.generation() > 1) {
        moths *= flight.generation() == 2 ? pest.size.secondGrowth() : pest.size.laterGrowth();
        moths *= StrictMath.exp(0.25 * draws.gaussian());
      }
      for (int i = 0; i < expected.length; i++) {
        expected[i] += moths * flight.share(from.plusDays(i));
      }
    }
    return expected;
  }

  private List<VisitNote> keepOne(String trap, List<LocalDate> days, double[] expected) {
    var notes = new ArrayList<VisitNote>();
    var renewed = days.get(0);
    double strength = StrictMath.exp(0.15 * draws.gaussian());
    var mood = new ValeWeather.Lagged(2.5, 0.5, draws);
    notes.add(new VisitNote(trap, renewed, "set", OptionalInt.empty(), true, ""));
    for (int i = 1; i < days.size(); i++) {
      var date = days.get(i);
      int count = 0;
      for (var night = days.get(i - 1); night.isBefore(date); night = night.plusDays(1)) {
        double age = night.toEpochDay() - renewed.toEpochDay();
        double fresh = StrictMath.exp(-age / LURE_FADES_DAYS);
        double luck = StrictMath.exp(mood.next() - 0.125);
        count += draws.poisson(strength * fresh * luck * expected[night.getDayOfYear() - 1]);
      }
      boolean renew = date.toEpochDay() - renewed.toEpochDay() >= LURE_DAYS;
      renewed = renew ? date : renewed;
      var note = new VisitNote(trap, date, "working", OptionalInt.of(count), renew, "");
      notes.add(blownDown(days.get(i - 1), date) ? note.withFailure("blown down") : note);
    }
    return notes;
  }

  /** A stormy night may blow a trap down. */
  private boolean blownDown(LocalDate from, LocalDate to) {
    double strongest = 0;
    for (var night = from; night.isBefore(to); night = night.plusDays(1)) {
      strongest = Math.max(strongest, air.wind(night));
    }
    return draws.uniform() < (strongest > 7 ? 0.25 : 0.004);
  }

  /** The visit with the largest catch found a liner that held seven in ten of it. */
  private static void fillUp(List<VisitNote> notes) {
    int most = 0;
    for (int i = 1; i < notes.size(); i++) {
      if (notes.get(i).count().orElse(0) > notes.get(most).count().orElse(0)) {
        most = i;
      }
    }
    var note = notes.get(most);
    notes.set(most, note.withFull((int) (0.7 * note.count().orElse(1))));
  }
}
