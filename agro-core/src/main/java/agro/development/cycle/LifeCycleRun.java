package agro.development.cycle;

import agro.report.InputProblem;
import agro.source.Reference;
import agro.units.Numbers;
import agro.weather.DailyTemperatures;
import agro.working.Cell;
import agro.working.Presentable;
import agro.working.Presentation;
import agro.working.ResultTable;
import agro.working.ResultTable.Column;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;

/**
 * A life cycle through a series of days: how many are in each stage at the end of each day, and
 * when each generation comes. Generation 1 is that of the founders; the eggs that its adults lay
 * are generation 2. Immutable.
 */
public final class LifeCycleRun implements Presentable {

  private static final double FIRST = 0.05;
  private static final double HALF = 0.5;
  private static final double NEARLY_ALL = 0.95;

  /** A generation of which less than this comes is not listed. */
  private static final double LISTED = 0.001;

  private final LifeCycle cycle;
  private final DailyTemperatures temperatures;
  private final List<GenerationRun> generations;

  LifeCycleRun(LifeCycle cycle, DailyTemperatures temperatures, List<GenerationRun> generations) {
    this.cycle = cycle;
    this.temperatures = temperatures;
    this.generations = List.copyOf(generations);
  }

  /**
   * The life cycle that was followed.
   *
   * @return as given
   */
  public LifeCycle cycle() {
    return cycle;
  }

  /**
   * The temperatures that it was followed through.
   *
   * @return as given
   */
  public DailyTemperatures temperatures() {
    return temperatures;
  }

  /**
   * Number of generations of which anything came.
   *
   * @return 1 or more
   */
  public int generations() {
    return generations.size();
  }

  /**
   * How many of a generation are in a stage at the end of a day.
   *
   * @param generation 1 for that of the founders
   * @param stage name of the stage
   * @param day a day of the series
   * @return a number in the unit of the founders
   * @throws InputProblem for an unknown generation, stage or day
   */
  public double present(int generation, String stage, LocalDate day) {
    return generation(generation).present(stageIndex(stage))[dayIndex(day)];
  }

  /**
   * How many of all generations are in a stage at the end of a day.
   *
   * @param stage name of the stage
   * @param day a day of the series
   * @return a number in the unit of the founders
   * @throws InputProblem for an unknown stage or day
   */
  public double present(String stage, LocalDate day) {
    double sum = 0;
    for (int g = 1; g <= generations(); g++) {
      sum += present(g, stage, day);
    }
    return sum;
  }

  /**
   * Share of the population that is in a stage at the end of a day.
   *
   * @param stage name of the stage
   * @param day a day of the series
   * @return 0 to 1; NaN on a day on which nobody is there
   * @throws InputProblem for an unknown stage or day
   */
  public double share(String stage, LocalDate day) {
    double all = 0;
    for (var name : cycle.stageNames()) {
      all += present(name, day);
    }
    return present(stage, day) / all;
  }

  /**
   * How many of a generation enter a stage on each day.
   *
   * @param generation 1 for that of the founders
   * @param stage name of the stage
   * @return a new array with one number for each day of the series
   * @throws InputProblem for an unknown generation or stage
   */
  public double[] entered(int generation, String stage) {
    return generation(generation).entered(stageIndex(stage)).clone();
  }

  /**
   * Share of a generation that has entered a stage by the end of the series, of those that would
   * enter it if the season went on.
   *
   * @param generation 1 for that of the founders
   * @param stage name of the stage
   * @return 0 to 1; NaN for a stage before the one in which the founders began
   * @throws InputProblem for an unknown generation or stage
   */
  public double completeness(int generation, String stage) {
    int index = stageIndex(stage);
    var run = generation(generation);
    double sum = 0;
    for (double number : run.entered(index)) {
      sum += number;
    }
    return run.potential()[index] == 0 ? Double.NaN : sum / run.potential()[index];
  }

  /**
   * Day by whose end a share of a generation has entered a stage.
   *
   * @param generation 1 for that of the founders
   * @param stage name of the stage
   * @param share above 0 to 1, of those that would enter it if the season went on
   * @return the day, or nothing when it does not come in this series
   * @throws InputProblem for an unknown generation or stage
   */
  public Optional<LocalDate> enteredBy(int generation, String stage, double share) {
    int index = stageIndex(stage);
    var run = generation(generation);
    double wanted = share * run.potential()[index];
    if (wanted == 0) {
      return Optional.empty();
    }
    double sum = 0;
    var entered = run.entered(index);
    for (int day = 0; day < entered.length; day++) {
      sum += entered[day];
      if (sum >= wanted) {
        return Optional.of(temperatures.day(day));
      }
    }
    return Optional.empty();
  }

  /**
   * Generations that are completed in the series: the shares of each that become adult, added up.
   *
   * @return 0 or more, with a fraction for the last one
   */
  public double completedGenerations() {
    double sum = 0;
    for (int g = 1; g <= generations(); g++) {
      sum += completeness(g, cycle.adults().name());
    }
    return sum;
  }

  private GenerationRun generation(int number) {
    if (number < 1 || number > generations.size()) {
      throw InputProblem.of("generation " + number)
          .expected("1 to " + generations.size())
          .because("nothing of it came in this series")
          .mend("ask for one that came, or give a longer series");
    }
    return generations.get(number - 1);
  }

  private int stageIndex(String stage) {
    int index = cycle.stageNames().indexOf(stage);
    if (index < 0) {
      throw InputProblem.of("the stage \"" + stage + "\"")
          .expected("one of " + String.join(", ", cycle.stageNames()))
          .because("the life cycle has no such stage")
          .mend("correct the name");
    }
    return index;
  }

  private int dayIndex(LocalDate day) {
    if (!temperatures.covers(day)) {
      throw InputProblem.of("the day " + day)
          .expected("a day from " + temperatures.firstDay() + " to " + temperatures.lastDay())
          .because("the life cycle was followed on these days")
          .mend("give a longer series, or a day inside it");
    }
    return (int) ChronoUnit.DAYS.between(temperatures.firstDay(), day);
  }

  @Override
  public Presentation presentation() {
    var page =
        Presentation.titled("Life cycle at " + temperatures.place())
            .fact("Days", temperatures.firstDay() + " to " + temperatures.lastDay())
            .fact("Generations completed", Numbers.fixed(completedGenerations(), 2))
            .table(table());
    page.paragraph(
        "Shares are of the insects that would enter the stage if the season went on; a share that"
            + " does not come in these days is no delay but does not come at all.");
    page.table(stages());
    var sources = new LinkedHashSet<Reference>();
    cycle.stages().forEach(stage -> sources.add(stage.distribution().source()));
    sources.add(cycle.adults().laying().source());
    return page.sources(List.copyOf(sources)).build();
  }

  private ResultTable table() {
    var rows = new ArrayList<List<Cell>>();
    for (int g = 1; g <= generations(); g++) {
      for (var stage : cycle.stageNames()) {
        if (completeness(g, stage) >= LISTED) {
          rows.add(
              List.of(
                  Cell.number(g, 0),
                  Cell.text(stage),
                  day(g, stage, FIRST),
                  day(g, stage, HALF),
                  day(g, stage, NEARLY_ALL),
                  Cell.number(100 * completeness(g, stage), 0)));
        }
      }
    }
    return ResultTable.of(
        "When each stage is entered",
        List.of(
            Column.of("Generation"),
            Column.of("Stage"),
            Column.of("First 5 %"),
            Column.of("Half"),
            Column.of("95 %"),
            Column.of("Entered by the end", "%")),
        rows);
  }

  private Cell day(int generation, String stage, double share) {
    return enteredBy(generation, stage, share)
        .map(Cell::day)
        .orElse(Cell.text("not in these days"));
  }

  private ResultTable stages() {
    var rows = new ArrayList<List<Cell>>();
    for (var stage : cycle.stages()) {
      rows.add(
          List.of(
              Cell.text(stage.name()),
              Cell.text(stage.clock().words()),
              Cell.text(stage.distribution().words()),
              Cell.number(100 * stage.survival(), 0)));
    }
    var adults = cycle.adults();
    rows.add(
        List.of(
            Cell.text(adults.name()),
            Cell.text(adults.clock().words()),
            Cell.text("laying " + adults.laying().words() + "; death " + adults.death().words()),
            Cell.notKnown()));
    return ResultTable.of(
        "Stages",
        List.of(
            Column.of("Stage"), Column.of("Clock"), Column.of("Spread"), Column.of("Survive", "%")),
        rows);
  }

  @Override
  public String toString() {
    return "life cycle at "
        + temperatures.place()
        + ", "
        + temperatures.firstDay()
        + " to "
        + temperatures.lastDay()
        + ": "
        + Numbers.fixed(completedGenerations(), 2)
        + " generations";
  }
}
