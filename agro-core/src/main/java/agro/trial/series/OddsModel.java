package agro.trial.series;

import agro.report.InputProblem;
import agro.source.Reference;
import agro.stats.glm.DevianceRow;
import agro.stats.glm.OrdinalFit;
import agro.stats.glm.OrdinalMeans;
import agro.stats.glm.OrdinalModel;
import agro.stats.glm.OrdinalScores;
import agro.stats.linear.Factor;
import agro.stats.linear.ModelTerm;
import agro.stats.multiple.CompactLetters;
import agro.stats.multiple.ComparisonMethod;
import agro.stats.multiple.LetterOrder;
import agro.stats.multiple.PairwiseComparison;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * The proportional-odds model of the medians of plots, with blocks where there are any.
 *
 * @param classes classes that plots had, from low to high
 * @param treatments test of treatments by likelihood ratio
 * @param parallel test that treatments shift all classes alike, if it can be made
 * @param shares share of each class for each treatment, for those that can be told
 * @param letters treatments that share a letter were not found to differ
 * @param deviance twice the negative log-likelihood
 * @param notes separation, few plots and what else a reader has to know
 * @param sources works that the model rests on
 */
public record OddsModel(
    List<String> classes,
    DevianceRow treatments,
    Optional<String> parallel,
    Map<String, List<Double>> shares,
    Map<String, String> letters,
    double deviance,
    List<String> notes,
    List<Reference> sources) {

  /** Copies lists and maps. */
  public OddsModel {
    classes = List.copyOf(classes);
    Objects.requireNonNull(treatments, "treatments");
    Objects.requireNonNull(parallel, "parallel");
    shares = Map.copyOf(shares);
    letters = Map.copyOf(letters);
    notes = List.copyOf(notes);
    sources = List.copyOf(sources);
  }

  /**
   * Fits the model.
   *
   * @throws InputProblem when the plots cannot tell it
   */
  static OddsModel of(List<PlotScore> plots, double level) {
    var medians = plots.stream().map(PlotScore::median).toList();
    var scale = medians.stream().distinct().sorted().map(PlainFigure::of).toList();
    var scores = OrdinalScores.of(scale, medians.stream().map(PlainFigure::of).toList());
    var treatment =
        Factor.of("treatment", plots.stream().map(each -> each.plot().treatment()).toList());
    var blocks = plots.stream().map(RankTest::block).toList();
    var terms = new ArrayList<ModelTerm>();
    if (blocks.stream().distinct().count() > 1) {
      terms.add(ModelTerm.of(Factor.of("block", blocks)));
    }
    terms.add(ModelTerm.of(treatment));
    var fit = OrdinalModel.withDefaults().fit(scores, terms.toArray(ModelTerm[]::new));
    var notes = new ArrayList<>(fit.remarks());
    if (scale.stream().anyMatch(each -> each.contains("."))) {
      notes.add("a median half-way between two grades is a class of its own between them");
    }
    var means = fit.means(treatment);
    Map<String, List<Double>> shares = new LinkedHashMap<>();
    means.levels().forEach(each -> shares.put(each.label(), each.shares()));
    return new OddsModel(
        fit.scores().classes(),
        fit.termTests().get(terms.size() - 1),
        parallel(fit),
        shares,
        letters(means, level, notes),
        fit.deviance(),
        notes,
        fit.sources());
  }

  private static Optional<String> parallel(OrdinalFit fit) {
    try {
      return Optional.of(fit.parallelCuts().sentence());
    } catch (InputProblem noTest) {
      return Optional.empty();
    }
  }

  private static Map<String, String> letters(OrdinalMeans means, double level, List<String> notes) {
    Map<String, String> letters = new LinkedHashMap<>();
    if (!means.leftOut().isEmpty()) {
      notes.add(
          "no letters by the model: all plots of "
              + String.join(", ", means.leftOut())
              + " lie at one end of the scale, and their distance from the others has no bound");
      return letters;
    }
    CompactLetters compact =
        new PairwiseComparison(ComparisonMethod.HOLM, level)
            .compare(means.compared())
            .letters(LetterOrder.LARGEST_FIRST);
    compact.labels().forEach(label -> letters.put(label, compact.letters(label)));
    return letters;
  }
}
