package agro.development.cycle;

import agro.report.InputProblem;
import agro.source.Bibliography;
import agro.source.Reference;
import java.util.List;

/**
 * The share of a population in each of several stages at one time, for samples in which stages are
 * counted: P(stage ≤ i at t) = 1 / (1 + exp(−(a_i − t) / √(b t))).
 *
 * @param boundaries a_i, times (days or degree-days) at which half has left stage i, ascending
 * @param variance b, variance per unit of time, above 0
 */
public record OrdinalStages(List<Double> boundaries, double variance) {

  /**
   * Checks the parameters.
   *
   * @throws InputProblem when boundaries do not ascend or the variance is not above zero
   */
  public OrdinalStages {
    boundaries = List.copyOf(boundaries);
    DistributionInput.requirePositive(variance, "variance");
    for (int i = 0; i < boundaries.size(); i++) {
      double before = i == 0 ? 0 : boundaries.get(i - 1);
      if (!(boundaries.get(i) > before)) {
        throw InputProblem.of("a boundary at " + boundaries.get(i) + " after " + before)
            .expected("boundaries above 0 in ascending order")
            .because("a stage ends after the one before it")
            .mend("sort the boundaries, and look for one that is mistyped");
      }
    }
  }

  /**
   * Share of the population that is in a stage or an earlier one.
   *
   * @param stage 0 for the first stage; the last stage has no boundary
   * @param time above 0, in the unit of the boundaries
   * @return 0 to 1
   */
  public double upTo(int stage, double time) {
    DistributionInput.requirePositive(time, "time");
    if (stage >= boundaries.size()) {
      return 1;
    }
    return 1 / (1 + Math.exp(-(boundaries.get(stage) - time) / Math.sqrt(variance * time)));
  }

  /**
   * Share of the population in each stage.
   *
   * @param time above 0, in the unit of the boundaries
   * @return one share for each stage, one more than there are boundaries; they add up to 1
   */
  public List<Double> shares(double time) {
    var shares = new Double[boundaries.size() + 1];
    double below = 0;
    for (int i = 0; i < shares.length; i++) {
      double up = upTo(i, time);
      shares[i] = up - below;
      below = up;
    }
    return List.of(shares);
  }

  /**
   * Where the model is published.
   *
   * @return the source
   */
  public Reference source() {
    return Bibliography.DENNIS_KEMP_BECKWITH_1986;
  }
}
