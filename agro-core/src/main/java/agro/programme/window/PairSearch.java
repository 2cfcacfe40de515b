package agro.programme.window;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Weighs all pairs of days that lie far enough apart. */
final class PairSearch {

  private record Pair(int first, int second) {}

  /** How a course meets a treatment on a day; nothing when its generation does not come. */
  interface Contacts {
    Optional<DayContact> on(int course, LocalDate day);
  }

  private final List<LocalDate> days;
  private final ExposureSettings settings;
  private final List<Pair> pairs = new ArrayList<>();

  PairSearch(List<LocalDate> days, ExposureSettings settings) {
    this.days = days;
    this.settings = settings;
    int interval = settings.intervalDays().orElseThrow();
    for (int i = 0; i < days.size(); i++) {
      for (int j = i + 1; j < days.size(); j++) {
        if (ChronoUnit.DAYS.between(days.get(i), days.get(j)) >= interval) {
          pairs.add(new Pair(i, j));
        }
      }
    }
  }

  /** The pair with the highest mean; nothing when no two days lie far enough apart. */
  Optional<ExposedPair> best(List<Integer> courses, Contacts contacts) {
    if (pairs.isEmpty()) {
      return Optional.empty();
    }
    var shares = new double[pairs.size()][courses.size()];
    for (int c = 0; c < courses.size(); c++) {
      fill(shares, c, courses.get(c), contacts);
    }
    var wins = new int[pairs.size()];
    for (int c = 0; c < courses.size(); c++) {
      int best = ShareSpread.best(shares, c);
      if (best >= 0) {
        wins[best]++;
      }
    }
    int chosen = 0;
    var spread = ShareSpread.of(shares[0], settings.wantedShare());
    for (int p = 1; p < shares.length; p++) {
      var other = ShareSpread.of(shares[p], settings.wantedShare());
      if (other.mean() > spread.mean() + 1e-12) {
        spread = other;
        chosen = p;
      }
    }
    var pair = pairs.get(chosen);
    return Optional.of(
        new ExposedPair(
            days.get(pair.first()),
            days.get(pair.second()),
            spread.mean(),
            spread.low(),
            spread.high(),
            (double) wins[chosen] / courses.size(),
            spread.chanceWanted()));
  }

  private void fill(double[][] shares, int column, int course, Contacts contacts) {
    var met = new ArrayList<DayContact>();
    for (var day : days) {
      var contact = contacts.on(course, day);
      if (contact.isEmpty()) {
        return;
      }
      met.add(contact.get());
    }
    for (int p = 0; p < shares.length; p++) {
      var pair = pairs.get(p);
      shares[p][column] = met.get(pair.first()).shareWith(met.get(pair.second()));
    }
  }
}
