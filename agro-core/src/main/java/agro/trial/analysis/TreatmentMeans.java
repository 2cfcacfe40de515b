package agro.trial.analysis;

import agro.report.InputProblem;
import agro.stats.multiple.MeanComparisons;
import agro.stats.multiple.SignificantDifference;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * Means of a treatment factor, or of combinations of several, with their comparisons.
 *
 * @param factors the factors whose levels the means belong to
 * @param means means in the order of the levels
 * @param method how the means were compared, in words; empty where they were not
 * @param pairs compared pairs
 * @param comparisons the comparisons in full, for routes with a standard error of each difference
 * @param standardErrorOfDifference standard errors of the differences on the scale of the analysis
 * @param significantDifference smallest significant difference on that scale, for methods that have
 *     one
 * @param detectable the true difference on that scale that a single test would have found with a
 *     chance of 80 %
 * @param notes sentences about these means
 */
public record TreatmentMeans(
    List<String> factors,
    List<TreatmentMean> means,
    String method,
    List<ComparedDifference> pairs,
    Optional<MeanComparisons> comparisons,
    Optional<SignificantDifference> standardErrorOfDifference,
    Optional<SignificantDifference> significantDifference,
    Optional<SignificantDifference> detectable,
    List<String> notes) {

  /** Copies the lists. */
  public TreatmentMeans {
    factors = List.copyOf(factors);
    means = List.copyOf(means);
    pairs = List.copyOf(pairs);
    notes = List.copyOf(notes);
    Objects.requireNonNull(method, "method");
    Objects.requireNonNull(comparisons, "comparisons");
    Objects.requireNonNull(standardErrorOfDifference, "standardErrorOfDifference");
    Objects.requireNonNull(significantDifference, "significantDifference");
    Objects.requireNonNull(detectable, "detectable");
  }

  static TreatmentMeans uncompared(
      List<String> factors, List<TreatmentMean> means, List<String> notes) {
    return new TreatmentMeans(
        factors,
        means,
        "",
        List.of(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        notes);
  }

  /**
   * The factors in words.
   *
   * @return names joined by "and"
   */
  public String title() {
    return String.join(" and ", factors);
  }

  /**
   * The mean of a level.
   *
   * @param label the level or combination in words
   * @return its mean
   * @throws InputProblem when there is none
   */
  public TreatmentMean mean(String label) {
    return means.stream()
        .filter(mean -> mean.label().equals(label))
        .findFirst()
        .orElseThrow(
            () ->
                InputProblem.of("the mean of \"" + label + "\"")
                    .expected("one of " + means.stream().map(TreatmentMean::label).toList())
                    .because("no other means of " + title() + " were taken")
                    .mend("write the treatment as it stands in the table"));
  }

  /**
   * A compared pair.
   *
   * @param one a treatment
   * @param other another treatment
   * @return the pair, in the order in which it was compared
   * @throws InputProblem when the two were not compared
   */
  public ComparedDifference pair(String one, String other) {
    return pairs.stream()
        .filter(pair -> pair.isOf(one, other))
        .findFirst()
        .orElseThrow(
            () ->
                InputProblem.of("the pair " + one + " and " + other)
                    .expected("two means of " + title() + " that were compared")
                    .because("a mean without an error, or a pair without the control, has no test")
                    .mend("name two of the means, or compare all pairs"));
  }

  @Override
  public String toString() {
    var text = new StringBuilder("Means of ").append(title());
    means.forEach(mean -> text.append("\n  ").append(mean));
    return text.toString();
  }
}
