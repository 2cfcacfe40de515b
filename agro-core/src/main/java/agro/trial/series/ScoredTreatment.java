package agro.trial.series;

import java.util.List;
import java.util.OptionalDouble;

/**
 * The scores of one treatment.
 *
 * @param treatment the treatment
 * @param plots number of plots
 * @param median median of the medians of its plots
 * @param meanRank mean of its ranks, where the rank test has one
 * @param rankLetters treatments that share a letter were not found to differ by ranks; empty when
 *     no pairs were compared
 * @param shares share of each grade, the mean over plots, so that each plot counts the same
 * @param modelShares share of each class by the proportional-odds model, empty without a model
 * @param modelLetters letters by the model, empty without
 * @param meanScore plain mean of the scores, to be shown beside only
 */
public record ScoredTreatment(
    String treatment,
    int plots,
    double median,
    OptionalDouble meanRank,
    String rankLetters,
    List<Double> shares,
    List<Double> modelShares,
    String modelLetters,
    double meanScore) {

  /** Copies the lists. */
  public ScoredTreatment {
    shares = List.copyOf(shares);
    modelShares = List.copyOf(modelShares);
  }
}
