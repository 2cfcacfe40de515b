package agro.development.cycle;

import agro.report.InputProblem;
import agro.report.Progress;
import agro.weather.DailyTemperatures;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;

/**
 * A life cycle of stages with thresholds and requirements of their own. Each stage hands those that
 * complete it to the next; the adults lay the eggs of the next generation. What enters a stage on a
 * day is taken to enter at the middle of that day's gain in age, and completes by the distribution
 * of the stage on its own clock: no stage is stepped through time, so that the spread of a cohort
 * does not depend on the length of a step.
 *
 * @param stages stages before the adult, in order, at least one
 * @param adults the adult
 */
public record LifeCycle(List<LifeStage> stages, AdultStage adults) {

  /** A generation that is smaller than this share of what it could be is not followed further. */
  private static final double NEGLIGIBLE = 1e-9;

  private static final int MOST_GENERATIONS = 40;

  /**
   * Checks the names.
   *
   * @throws InputProblem when there is no stage or two bear one name
   */
  public LifeCycle {
    stages = List.copyOf(stages);
    Objects.requireNonNull(adults, "adults");
    var names = new HashSet<String>();
    for (var stage : stages) {
      names.add(stage.name());
    }
    names.add(adults.name());
    if (stages.isEmpty() || names.size() != stages.size() + 1) {
      throw InputProblem.of(
              stages.stream().map(LifeStage::name).toList() + " and then " + adults.name())
          .expected("at least one stage before the adult, each with a name of its own")
          .because("results are asked for by name")
          .mend("name the stages apart");
    }
  }

  /**
   * Names of all stages.
   *
   * @return the stages before the adult in order, then the adult
   */
  public List<String> stageNames() {
    var names = new ArrayList<String>();
    stages.forEach(stage -> names.add(stage.name()));
    names.add(adults.name());
    return names;
  }

  /**
   * Follows founders through the days of a series.
   *
   * @param temperatures daily extremes without a missing day
   * @param founders whom it begins with, at least one
   * @return numbers in each stage and generation at the end of each day
   * @throws InputProblem when a day is missing, the temperatures are of another medium than a
   *     clock, or founders enter an unknown stage or outside the series
   */
  public LifeCycleRun run(DailyTemperatures temperatures, List<Founders> founders) {
    int days = temperatures.size();
    var start = new double[stages.size() + 1][days];
    double weight = 0;
    var potential = new double[stages.size() + 1];
    for (var each : founders) {
      int stage = index(each.stage());
      start[stage][day(temperatures, each)] += each.number();
      potential[stage] += each.number();
      weight += each.number();
    }
    if (weight == 0) {
      throw InputProblem.of("a life cycle without founders")
          .expected("at least one group of insects that enter a stage on a day")
          .because("nobody would be followed")
          .mend("give for example List.of(new Founders(\"egg\", day, 1))");
    }
    var passages = passages(temperatures);
    var generations = new ArrayList<GenerationRun>();
    var entering = start;
    var progress = Progress.ofThread();
    for (int g = 0; g < MOST_GENERATIONS; g++) {
      progress.step("generations", g, MOST_GENERATIONS);
      var generation = generation(passages, entering, potential);
      generations.add(generation);
      double nextPotential = generation.potential()[stages.size()] * adults.eggsPerAdult();
      if (sum(generation.eggs()) < NEGLIGIBLE * nextPotential) {
        break;
      }
      entering = new double[stages.size() + 1][days];
      entering[0] = generation.eggs();
      potential = new double[stages.size() + 1];
      potential[0] = nextPotential;
    }
    progress.step("generations", MOST_GENERATIONS, MOST_GENERATIONS);
    return new LifeCycleRun(this, temperatures, generations);
  }

  private GenerationRun generation(Passages passages, double[][] entering, double[] potential) {
    int last = stages.size();
    var entered = new double[last + 1][];
    var present = new double[last + 1][];
    var possible = potential.clone();
    double[] handed = new double[entering[0].length];
    for (int s = 0; s < last; s++) {
      entered[s] = plus(entering[s], handed);
      var passage = passages.of(s);
      present[s] = passage.present(entered[s], stages.get(s).distribution());
      handed = passage.completed(entered[s], stages.get(s).distribution());
      scale(handed, stages.get(s).survival());
      possible[s + 1] += possible[s] * stages.get(s).survival();
    }
    entered[last] = plus(entering[last], handed);
    var passage = passages.of(last);
    present[last] = passage.present(entered[last], adults.death());
    var eggs = passage.completed(entered[last], adults.laying());
    scale(eggs, adults.eggsPerAdult());
    return new GenerationRun(entered, present, eggs, possible);
  }

  private Passages passages(DailyTemperatures temperatures) {
    var all = new ArrayList<Passage>();
    for (var stage : stages) {
      all.add(Passage.of(stage.clock().dailyAges(temperatures)));
    }
    all.add(Passage.of(adults.clock().dailyAges(temperatures)));
    return new Passages(all);
  }

  /** One passage for each stage. */
  private record Passages(List<Passage> all) {
    Passage of(int stage) {
      return all.get(stage);
    }
  }

  private int index(String name) {
    int index = stageNames().indexOf(name);
    if (index < 0) {
      throw InputProblem.of("founders in the stage \"" + name + "\"")
          .expected("one of " + String.join(", ", stageNames()))
          .because("the life cycle has no such stage")
          .mend("correct the name");
    }
    return index;
  }

  private static int day(DailyTemperatures temperatures, Founders founders) {
    if (!temperatures.covers(founders.day())) {
      throw InputProblem.of("founders on " + founders.day())
          .expected("a day from " + temperatures.firstDay() + " to " + temperatures.lastDay())
          .because("there are no temperatures on that day")
          .mend("give a longer series, or a day inside it");
    }
    return (int) ChronoUnit.DAYS.between(temperatures.firstDay(), founders.day());
  }

  private static double[] plus(double[] a, double[] b) {
    var sum = a.clone();
    for (int i = 0; i < sum.length; i++) {
      sum[i] += b[i];
    }
    return sum;
  }

  private static void scale(double[] values, double factor) {
    for (int i = 0; i < values.length; i++) {
      values[i] *= factor;
    }
  }

  private static double sum(double[] values) {
    double sum = 0;
    for (double value : values) {
      sum += value;
    }
    return sum;
  }
}
