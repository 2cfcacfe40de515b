package agro.sampling.injury;

import agro.report.InputProblem;
import agro.sampling.CountSample;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Counts of several stages on the same units. Stages that do no harm are left out; those that feed
 * more than others can be weighted by what they eat.
 *
 * @param stages each stage with its counts, unit by unit in the same order
 */
public record StageCounts(List<Stage> stages) {

  /**
   * The counts of one stage.
   *
   * @param name such as "young larvae"
   * @param counts one for each unit
   */
  public record Stage(String name, CountSample counts) {}

  /**
   * Checks that the stages belong together.
   *
   * @throws InputProblem when there is none, names repeat, units or numbers differ
   */
  public StageCounts {
    stages = List.copyOf(stages);
    var names = new HashSet<String>();
    stages.forEach(stage -> names.add(stage.name()));
    var sizes = new HashSet<Integer>();
    stages.forEach(stage -> sizes.add(stage.counts().size()));
    if (stages.isEmpty() || names.size() < stages.size() || sizes.size() > 1) {
      throw InputProblem.of("stages " + names + " with " + sizes + " counts")
          .expected("each stage once, and a count of every stage on every unit")
          .because("the stages of one unit are added up")
          .mend("write a zero where a stage was not there");
    }
    CountSample.requireOneUnit(stages.stream().map(Stage::counts).toList(), "all stages");
  }

  /**
   * Stages that were counted together on each unit.
   *
   * @param stages the stages
   * @return the counts
   * @throws InputProblem when the stages do not belong together
   */
  public static StageCounts of(Stage... stages) {
    return new StageCounts(List.of(stages));
  }

  /**
   * Animals of chosen stages on each unit.
   *
   * @param chosen names of the stages that count
   * @return the sums
   * @throws InputProblem when a name is not among the stages, or none is chosen
   */
  public CountSample only(Set<String> chosen) {
    requireKnown(chosen);
    var first = stages.get(0).counts();
    var sums = new ArrayList<Integer>();
    for (int i = 0; i < first.size(); i++) {
      int sum = 0;
      for (var stage : stages) {
        sum += chosen.contains(stage.name()) ? stage.counts().counts().get(i) : 0;
      }
      sums.add(sum);
    }
    return new CountSample(first.label(), first.unit(), sums);
  }

  /**
   * Density in equivalents of one stage: each animal counts by what it eats.
   *
   * @param weights weight of each stage that counts; stages left out count nothing
   * @return mean and standard error of the weighted sums
   * @throws InputProblem when a name is not among the stages or a weight is below zero
   */
  public MeanDensity weighted(Map<String, Double> weights) {
    requireKnown(weights.keySet());
    weights.forEach(StageCounts::requireWeight);
    var first = stages.get(0).counts();
    int n = first.size();
    double[] sums = new double[n];
    double mean = 0;
    for (int i = 0; i < n; i++) {
      for (var stage : stages) {
        sums[i] += weights.getOrDefault(stage.name(), 0.0) * stage.counts().counts().get(i);
      }
      mean += sums[i] / n;
    }
    double squares = 0;
    for (double sum : sums) {
      squares += (sum - mean) * (sum - mean);
    }
    return new MeanDensity(first.unit(), mean, Math.sqrt(squares / (n - 1.0) / n));
  }

  private static void requireWeight(String name, double weight) {
    if (!(weight >= 0 && Double.isFinite(weight))) {
      throw InputProblem.of(name + ": a weight of " + weight)
          .expected("a finite number of 0 or more")
          .because("no stage mends what others eat")
          .mend("give what one animal eats beside one of the stage that counts 1");
    }
  }

  private void requireKnown(Set<String> chosen) {
    var known = new ArrayList<String>();
    stages.forEach(stage -> known.add(stage.name()));
    if (chosen.isEmpty() || !known.containsAll(chosen)) {
      throw InputProblem.of("the stages " + chosen)
          .expected("some of " + known)
          .because("a stage that was not counted cannot count")
          .mend("choose by the names of the counts");
    }
  }
}
