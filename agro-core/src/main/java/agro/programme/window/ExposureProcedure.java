package agro.programme.window;

import agro.generation.DateDistribution;
import agro.report.InputProblem;
import agro.report.Progress;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The steps to an {@link ExposureForecast}. */
final class ExposureProcedure {

  private static final String WORK = "treatment windows";
  private static final int LOOK_COURSES = 60;
  private static final int PAIR_COURSES = 300;
  private static final int MOST_PAIR_DAYS = 120;
  private static final double WORTH_WEIGHING = 0.02;

  private final StageCourses courses;
  private final StageTarget target;
  private final ResidueDays residue;
  private final ExposureSettings settings;
  private final Progress progress;
  private final DelayTable during;
  private final StageEntry[] entries;

  ExposureProcedure(
      StageCourses courses,
      StageTarget target,
      ResidueDays residue,
      ExposureSettings settings,
      Progress progress) {
    this.courses = courses;
    this.target = target;
    this.residue = residue;
    this.settings = settings;
    this.progress = progress;
    during = DelayTable.of(List.of(target.during()));
    entries = new StageEntry[courses.size()];
  }

  ExposureForecast run() {
    var before = DelayTable.of(target.before());
    int missing = 0;
    for (int c = 0; c < entries.length; c++) {
      progress.step(WORK, c, 2L * entries.length);
      entries[c] = StageEntry.of(courses.course(c), courses.days(), before);
      missing += entries[c].comes() ? 0 : 1;
    }
    double notThisSeason = (double) missing / entries.length;
    var candidates = candidates();
    var shares = new double[candidates.size()][entries.length];
    var gone = new double[candidates.size()];
    var toCome = new double[candidates.size()];
    for (int c = 0; c < entries.length; c++) {
      progress.step(WORK, (long) entries.length + c, 2L * entries.length);
      for (int d = 0; d < shares.length; d++) {
        var contact = contact(c, candidates.get(d));
        shares[d][c] = contact.map(DayContact::share).orElse(0.0);
        gone[d] += contact.map(DayContact::gone).orElse(0.0) / entries.length;
        toCome[d] += contact.map(DayContact::toCome).orElse(1.0) / entries.length;
      }
    }
    progress.step(WORK, 2L * entries.length, 2L * entries.length);
    var chances = new double[candidates.size()];
    var best = best(candidates, shares, chances);
    var days = days(candidates, shares, chances, gone, toCome);
    return new ExposureForecast(
        courses, target, residue, settings, days, best, notThisSeason, pair(candidates));
  }

  private Optional<DayContact> contact(int course, LocalDate day) {
    double begins = ChronoUnit.DAYS.between(courses.firstDay(), day) + residue.momentOfDay();
    return entries[course].comes()
        ? Optional.of(DayContact.of(entries[course], during, residue, begins))
        : Optional.empty();
  }

  /** Days that are stated, or those between which the stage is worth weighing. */
  private List<LocalDate> candidates() {
    var first = latest(courses.firstDay(), settings.from().orElse(courses.asOf()));
    var last = courses.lastDay();
    if (settings.to().isPresent() && settings.to().get().isBefore(last)) {
      last = settings.to().get();
    }
    if (last.isBefore(first)) {
      throw InputProblem.of("days from " + first + " to " + last)
          .expected("days within the season, " + courses.firstDay() + " to " + courses.lastDay())
          .because("nothing is foreseen outside of it")
          .mend("choose days of the season");
    }
    var all = first.datesUntil(last.plusDays(1)).toList();
    return settings.to().isPresent() ? all : worthWeighing(all);
  }

  private List<LocalDate> worthWeighing(List<LocalDate> all) {
    int every = Math.max(1, entries.length / LOOK_COURSES);
    var means = new double[all.size()];
    double most = 0;
    for (int d = 0; d < means.length; d++) {
      for (int c = 0; c < entries.length; c += every) {
        means[d] += contact(c, all.get(d)).map(DayContact::share).orElse(0.0);
      }
      most = Math.max(most, means[d]);
    }
    int from = 0;
    int to = means.length - 1;
    while (from < to && means[from] <= WORTH_WEIGHING * most) {
      from++;
    }
    while (to > from && means[to] <= WORTH_WEIGHING * most) {
      to--;
    }
    return most > 0 ? all.subList(from, to + 1) : List.of();
  }

  private static LocalDate latest(LocalDate a, LocalDate b) {
    return a.isAfter(b) ? a : b;
  }

  /** Dates of the best day, course by course; fills the chances of the days. */
  private DateDistribution best(List<LocalDate> candidates, double[][] shares, double[] chances) {
    var dates = new double[entries.length];
    for (int c = 0; c < dates.length; c++) {
      int best = ShareSpread.best(shares, c);
      dates[c] =
          best < 0
              ? Double.POSITIVE_INFINITY
              : ChronoUnit.DAYS.between(courses.firstDay(), candidates.get(best));
      if (best >= 0) {
        chances[best] += 1.0 / entries.length;
      }
    }
    return DateDistribution.ofOutcomes(courses.firstDay(), dates);
  }

  private List<ExposedDay> days(
      List<LocalDate> candidates,
      double[][] shares,
      double[] chances,
      double[] gone,
      double[] toCome) {
    var days = new ArrayList<ExposedDay>();
    for (int d = 0; d < shares.length; d++) {
      var spread = ShareSpread.of(shares[d], settings.wantedShare());
      days.add(
          new ExposedDay(
              candidates.get(d),
              spread.mean(),
              spread.low(),
              spread.high(),
              chances[d],
              spread.chanceWanted(),
              gone[d],
              toCome[d]));
    }
    return days;
  }

  /** The best pair among some days, in courses that have not been prepared yet. */
  Optional<ExposedPair> pairAmong(List<LocalDate> days) {
    var before = DelayTable.of(target.before());
    for (int c : pairCourses()) {
      entries[c] = StageEntry.of(courses.course(c), courses.days(), before);
    }
    return pair(days);
  }

  private Optional<ExposedPair> pair(List<LocalDate> days) {
    if (settings.intervalDays().isEmpty() || days.isEmpty()) {
      return Optional.empty();
    }
    int step = (days.size() + MOST_PAIR_DAYS - 1) / MOST_PAIR_DAYS;
    var chosen = new ArrayList<LocalDate>();
    for (int d = 0; d < days.size(); d += step) {
      chosen.add(days.get(d));
    }
    return new PairSearch(chosen, settings).best(pairCourses(), this::contact);
  }

  private List<Integer> pairCourses() {
    int every = Math.max(1, entries.length / PAIR_COURSES);
    var chosen = new ArrayList<Integer>();
    for (int c = 0; c < entries.length; c += every) {
      chosen.add(c);
    }
    return chosen;
  }
}
