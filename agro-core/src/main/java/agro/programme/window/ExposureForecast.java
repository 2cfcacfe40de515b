package agro.programme.window;

import agro.generation.DateDistribution;
import agro.generation.GenerationForecast;
import agro.report.InputProblem;
import agro.report.Progress;
import agro.working.Presentable;
import agro.working.Presentation;
import agro.working.ResultTable;
import agro.working.Working;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * How much of a generation each day of treatment would expose, with its chances.
 *
 * <p>Within one course of the generation let G be the share of all its animals that have entered
 * the stage by a sum of degree-days, and D the thermal time that an animal stays in it. A treatment
 * at time d, whose residue lasts to d + L and has the effect e left after a time, exposes
 *
 * <p>∫ (entered before d) P(still there at d + a) dG + ∫ (entering in d to d + L) e(t − d) P(still
 * there at t + a) dG,
 *
 * <p>where a is the time of contact that the treatment needs. With e = 1 and a = 0 this is G(d + L)
 * less the share that has left by d. The chances are those over the courses, which differ in flight
 * and weather; nothing is drawn at random.
 *
 * @param courses the courses of the generation
 * @param target the stage that is hit
 * @param residue how long and how fast
 * @param settings what was asked
 * @param days the days that were weighed, in order; none when the stage is over or does not come
 * @param bestDates the best day of each course as a date that is not known for certain; "not this
 *     season" where the generation does not come or no day exposes anything
 * @param chanceNotThisSeason chance that the generation does not come to the stage this season
 * @param bestPair the pair of days with the highest mean share; nothing when none was asked for, or
 *     no two days lie far enough apart
 */
public record ExposureForecast(
    StageCourses courses,
    StageTarget target,
    ResidueDays residue,
    ExposureSettings settings,
    List<ExposedDay> days,
    DateDistribution bestDates,
    double chanceNotThisSeason,
    Optional<ExposedPair> bestPair)
    implements Presentable {

  /** Copies the list. */
  public ExposureForecast {
    Objects.requireNonNull(courses, "courses");
    Objects.requireNonNull(target, "target");
    Objects.requireNonNull(residue, "residue");
    Objects.requireNonNull(settings, "settings");
    Objects.requireNonNull(bestDates, "bestDates");
    Objects.requireNonNull(bestPair, "bestPair");
    days = List.copyOf(days);
  }

  /**
   * Weighs the days of a generation to come.
   *
   * @param forecast the forecast of the flights
   * @param generation number of the flight
   * @param target the stage that is hit
   * @param residue how long and how fast
   * @param settings what is asked
   * @return the days with their shares
   * @throws InputProblem when the forecast has left the flight out, or no day of the season is
   *     asked for
   */
  public static ExposureForecast of(
      GenerationForecast forecast,
      int generation,
      StageTarget target,
      ResidueDays residue,
      ExposureSettings settings) {
    return of(StageCourses.of(forecast, generation, target.structure()), target, residue, settings);
  }

  /**
   * Weighs the days of given courses.
   *
   * @param courses courses of the generation
   * @param target the stage that is hit
   * @param residue how long and how fast
   * @param settings what is asked
   * @return the days with their shares
   * @throws InputProblem when no day of the season is asked for
   */
  public static ExposureForecast of(
      StageCourses courses, StageTarget target, ResidueDays residue, ExposureSettings settings) {
    return of(courses, target, residue, settings, Progress.ofThread());
  }

  /**
   * Weighs the days of given courses.
   *
   * @param courses courses of the generation
   * @param target the stage that is hit
   * @param residue how long and how fast
   * @param settings what is asked
   * @param progress hears of the steps and may cancel
   * @return the days with their shares
   * @throws InputProblem when no day of the season is asked for
   */
  public static ExposureForecast of(
      StageCourses courses,
      StageTarget target,
      ResidueDays residue,
      ExposureSettings settings,
      Progress progress) {
    return new ExposureProcedure(courses, target, residue, settings, progress).run();
  }

  /**
   * The day with the highest mean share, the first of equal ones.
   *
   * @return nothing when no day exposes anything
   */
  public Optional<ExposedDay> bestDay() {
    return days.stream()
        .filter(each -> each.mean() > 0)
        .max(
            Comparator.comparingDouble(ExposedDay::mean)
                .thenComparing(ExposedDay::day, Comparator.reverseOrder()));
  }

  /**
   * The best pair among some of the days, such as those that the weather allows.
   *
   * @param some the days
   * @return nothing when no pair was asked for, or no two of them lie far enough apart
   */
  public Optional<ExposedPair> bestPairAmong(List<LocalDate> some) {
    var chosen = days.stream().map(ExposedDay::day).filter(some::contains).toList();
    return new ExposureProcedure(courses, target, residue, settings, Progress.ofThread())
        .pairAmong(chosen);
  }

  /**
   * What a treatment on one day reaches.
   *
   * @param day the day
   * @return nothing when the day was not weighed
   */
  public Optional<ExposedDay> on(LocalDate day) {
    return days.stream().filter(each -> each.day().equals(day)).findFirst();
  }

  /**
   * The steps to the mean share of a day.
   *
   * @param day a day that was weighed
   * @return entered, left, and what is between
   * @throws InputProblem when the day was not weighed
   */
  public Working working(LocalDate day) {
    return ExposurePages.working(
        this,
        on(day)
            .orElseThrow(
                () ->
                    InputProblem.of(day + " was not weighed")
                        .expected("one of " + days.size() + " days that were weighed")
                        .because("there is no share of that day")
                        .mend("ask for the day in the settings")));
  }

  /**
   * The days as a table.
   *
   * @return one line for each day
   */
  public ResultTable table() {
    return ExposurePages.table(this);
  }

  @Override
  public Presentation presentation() {
    return ExposurePages.page(this);
  }

  @Override
  public String toString() {
    return table().toText();
  }
}
