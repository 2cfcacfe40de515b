package agro.trial.series;

import agro.report.InputProblem;
import agro.sampling.SamplingUnit;
import agro.trial.FieldTrial;
import agro.trial.PlotValues;
import agro.trial.TrialPlot;
import agro.trial.load.LoadMeasure;
import agro.trial.load.PestLoad;
import agro.trial.load.PlotVisits;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * One number for the dates of a plot. A summary turns repeated looks at a plot into one value, so
 * that the usual analysis of plots is valid whatever the correlation in time: the simplest sound
 * way to treat repeated dates.
 */
public final class DateSummary {

  private enum Kind {
    ONLY_DATE,
    MEAN,
    LAST_DATE,
    HIGHEST,
    LOAD,
    TIME_ABOVE
  }

  private final Kind kind;
  private final PestLoad load;
  private final double level;

  private DateSummary(Kind kind, PestLoad load, double level) {
    this.kind = kind;
    this.load = load;
    this.level = level;
  }

  /**
   * The value of the one date of each site.
   *
   * @return the summary
   */
  public static DateSummary onlyDate() {
    return new DateSummary(Kind.ONLY_DATE, null, 0);
  }

  /**
   * The mean of the dates, each counting the same. With uneven intervals {@link #meanOverTime} is
   * the better mean.
   *
   * @return the summary
   */
  public static DateSummary mean() {
    return new DateSummary(Kind.MEAN, null, 0);
  }

  /**
   * The value of the last date of each site.
   *
   * @return the summary
   */
  public static DateSummary lastDate() {
    return new DateSummary(Kind.LAST_DATE, null, 0);
  }

  /**
   * The greatest value of all dates.
   *
   * @return the summary
   */
  public static DateSummary highest() {
    return new DateSummary(Kind.HIGHEST, null, 0);
  }

  /**
   * Area under the curve by straight lines, such as insect-days.
   *
   * @param unit what a value belongs to
   * @return the summary
   */
  public static DateSummary area(SamplingUnit unit) {
    return load(PestLoad.withDefaults(unit));
  }

  /**
   * Area under the curve for each day: the mean in which intervals count by their length.
   *
   * @param unit what a value belongs to
   * @return the summary
   */
  public static DateSummary meanOverTime(SamplingUnit unit) {
    return load(PestLoad.withDefaults(unit).with(LoadMeasure.MEAN_PER_DAY));
  }

  /**
   * Any load.
   *
   * @param settings how the load is summed
   * @return the summary
   */
  public static DateSummary load(PestLoad settings) {
    return new DateSummary(Kind.LOAD, Objects.requireNonNull(settings), 0);
  }

  /**
   * Days above a level, dates joined by straight lines.
   *
   * @param level the level, such as a threshold
   * @return the summary
   * @throws InputProblem when it is not finite
   */
  public static DateSummary timeAbove(double level) {
    if (!Double.isFinite(level)) {
      throw InputProblem.of("a level of " + level)
          .expected("a finite number in the unit of the variable")
          .because("the time above it is counted")
          .mend("give for example the threshold of the pest");
    }
    return new DateSummary(Kind.TIME_ABOVE, null, level);
  }

  /**
   * The summary in words.
   *
   * @return a phrase
   */
  public String words() {
    return switch (kind) {
      case ONLY_DATE -> "value of the one date";
      case MEAN -> "mean of the dates";
      case LAST_DATE -> "value of the last date";
      case HIGHEST -> "greatest value of the dates";
      case LOAD -> load.measure().words();
      case TIME_ABOVE -> "days above " + PlainFigure.of(level);
    };
  }

  /**
   * One number for each plot. Dates are taken site by site, since sites are rarely visited on the
   * same days.
   *
   * @param trial a trial
   * @param variable name of the variable
   * @return one number for each plot; plots that lack dates are left out and named, except that
   *     loads and times bridge gaps between two dates
   * @throws InputProblem when the variable is a score, or a site has other dates than the summary
   *     needs
   */
  public PlotFigures of(FieldTrial trial, String variable) {
    var days = trial.variable(variable).onEachDay();
    var response = trial.variable(variable).response();
    PlotFigures.requireMeasured(response);
    var courses = new LinkedHashMap<String, Map<TrialPlot, SortedMap<LocalDate, Double>>>();
    trial
        .plots()
        .forEach(
            plot ->
                courses
                    .computeIfAbsent(plot.environment(), each -> new LinkedHashMap<>())
                    .put(plot, new TreeMap<>()));
    for (PlotValues day : days) {
      // A trial without dates was seen once; any day stands for it.
      var date = day.date().orElse(LocalDate.EPOCH);
      day.values()
          .forEach(
              value ->
                  courses
                      .get(value.plot().environment())
                      .get(value.plot())
                      .put(date, PlotFigures.figure(value)));
    }
    var figures = new ArrayList<PlotFigure>();
    var notes = new ArrayList<String>();
    courses.forEach((environment, plots) -> add(environment, plots, figures, notes));
    boolean plain = kind == Kind.ONLY_DATE;
    return new PlotFigures(
        plain ? variable : variable + ", " + words(),
        kind == Kind.TIME_ABOVE ? "d" : kind == Kind.LOAD ? "" : PlotFigures.unit(response),
        figures,
        notes);
  }

  private void add(
      String environment,
      Map<TrialPlot, SortedMap<LocalDate, Double>> plots,
      List<PlotFigure> figures,
      List<String> notes) {
    SortedSet<LocalDate> days = new TreeSet<>();
    plots.values().forEach(course -> days.addAll(course.keySet()));
    checkDays(environment, days);
    if (kind == Kind.LOAD) {
      addLoads(plots, figures, notes);
      return;
    }
    plots.forEach(
        (plot, course) -> {
          if (enough(course, days)) {
            figures.add(new PlotFigure(plot, figure(course)));
          } else {
            var lacking = days.stream().filter(day -> !course.containsKey(day)).toList();
            notes.add(plot.label() + " is left out: no value on " + days(lacking));
          }
        });
  }

  private static String days(List<LocalDate> days) {
    return days.contains(LocalDate.EPOCH)
        ? "the only day"
        : String.join(", ", days.stream().map(LocalDate::toString).toList());
  }

  private void checkDays(String environment, SortedSet<LocalDate> days) {
    var where = environment.isEmpty() ? "" : " at " + environment;
    if (kind == Kind.ONLY_DATE && days.size() > 1) {
      throw InputProblem.of(days.size() + " dates" + where)
          .expected("one date")
          .because("dates are repeated looks at the same plots and no replicates")
          .mend(
              "choose a summary: the mean of the dates, the area under the curve or the last date");
    }
    boolean several = kind == Kind.LOAD || kind == Kind.TIME_ABOVE;
    if (several && days.size() < 2) {
      throw InputProblem.of(days.size() + (days.size() == 1 ? " date" : " dates") + where)
          .expected("at least two dates")
          .because("one date has no duration")
          .mend("take the values of the date themselves");
    }
  }

  private boolean enough(SortedMap<LocalDate, Double> course, SortedSet<LocalDate> days) {
    return switch (kind) {
      case LAST_DATE -> !days.isEmpty() && course.containsKey(days.last());
      case TIME_ABOVE -> course.containsKey(days.first()) && course.containsKey(days.last());
      default -> !course.isEmpty() && course.size() == days.size();
    };
  }

  private double figure(SortedMap<LocalDate, Double> course) {
    return switch (kind) {
      case LAST_DATE -> course.get(course.lastKey());
      case HIGHEST -> course.values().stream().mapToDouble(Double::doubleValue).max().orElseThrow();
      case TIME_ABOVE -> timeAbove(course);
      default -> course.values().stream().mapToDouble(Double::doubleValue).average().orElseThrow();
    };
  }

  private double timeAbove(SortedMap<LocalDate, Double> course) {
    double sum = 0;
    LocalDate before = null;
    for (var visit : course.entrySet()) {
      if (before != null) {
        double days = visit.getKey().toEpochDay() - before.toEpochDay();
        sum += days * shareAbove(course.get(before) - level, visit.getValue() - level);
      }
      before = visit.getKey();
    }
    return sum;
  }

  /** Share of a straight line that lies above zero. */
  static double shareAbove(double start, double end) {
    if (start <= 0 && end <= 0) {
      return 0;
    }
    if (start >= 0 && end >= 0) {
      return 1;
    }
    return Math.max(start, end) / Math.abs(start - end);
  }

  private void addLoads(
      Map<TrialPlot, SortedMap<LocalDate, Double>> plots,
      List<PlotFigure> figures,
      List<String> notes) {
    var visits = new ArrayList<PlotVisits>();
    var byName = new LinkedHashMap<String, TrialPlot>();
    plots.forEach(
        (plot, course) -> {
          if (course.isEmpty()) {
            notes.add(plot.label() + " is left out: it has no value");
          } else {
            byName.put(plot.name(), plot);
            visits.add(new PlotVisits(plot.name(), plot.block(), plot.treatment(), course));
          }
        });
    var loads = load.evaluate(visits);
    loads
        .plots()
        .forEach(each -> figures.add(new PlotFigure(byName.get(each.plot()), each.value())));
    notes.addAll(loads.notes());
  }

  @Override
  public String toString() {
    return words();
  }
}
