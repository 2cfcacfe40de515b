package agro.trial.series;

import agro.report.InputProblem;
import agro.source.Reference;
import agro.stats.BlockedValues;
import agro.stats.GroupedValues;
import agro.stats.multiple.LetterOrder;
import agro.stats.multiple.PValueAdjustment;
import agro.stats.rank.Friedman;
import agro.stats.rank.FriedmanPairs;
import agro.stats.rank.KruskalWallis;
import agro.stats.rank.KruskalWallisPairs;
import agro.stats.rank.RankPairs;
import agro.stats.rank.RankedGroup;
import agro.stats.rank.SkillingsMack;
import agro.trial.NaturalOrder;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;

/**
 * The rank test of the scores of plots.
 *
 * @param method which test, by the layout
 * @param statistic its statistic
 * @param degreesOfFreedom degrees of freedom of the chi-squared approximation
 * @param pValue chance of such a statistic or a larger one when treatments do not differ
 * @param chanceFrom where the chance comes from
 * @param sentence the test as papers print it
 * @param meanRanks mean rank of each treatment; empty for blocks with missing plots
 * @param pairs comparisons of pairs, if there are any
 * @param sources works that it rests on
 * @param notes what a reader has to know
 */
public record RankTest(
    RankMethod method,
    double statistic,
    int degreesOfFreedom,
    double pValue,
    String chanceFrom,
    String sentence,
    Map<String, Double> meanRanks,
    Optional<RankPairs> pairs,
    List<Reference> sources,
    List<String> notes) {

  /** Copies lists and map. */
  public RankTest {
    Objects.requireNonNull(method, "method");
    meanRanks = Map.copyOf(meanRanks);
    Objects.requireNonNull(pairs, "pairs");
    sources = List.copyOf(sources);
    notes = List.copyOf(notes);
  }

  /** Within blocks where there are at least two of them, else over all plots. */
  static RankTest of(List<PlotScore> plots, PValueAdjustment adjustment) {
    boolean blocked = plots.stream().map(RankTest::block).distinct().count() > 1;
    return blocked ? inBlocks(plots, adjustment) : kruskalWallis(plots, adjustment);
  }

  static String block(PlotScore each) {
    return each.plot().environment() + " / " + each.plot().block();
  }

  private static RankTest inBlocks(List<PlotScore> plots, PValueAdjustment adjustment) {
    Map<String, Map<String, List<Double>>> cells = new LinkedHashMap<>();
    for (var each : plots) {
      cells
          .computeIfAbsent(block(each), name -> new LinkedHashMap<>())
          .computeIfAbsent(each.plot().treatment(), name -> new ArrayList<>())
          .add(each.median());
    }
    var blocks = new ArrayList<String>();
    var treatments = new ArrayList<String>();
    var values = new ArrayList<Double>();
    var notes = new ArrayList<String>();
    boolean doubled = false;
    for (var block : cells.entrySet()) {
      for (var cell : block.getValue().entrySet()) {
        blocks.add(block.getKey());
        treatments.add(cell.getKey());
        values.add(PlotScore.median(cell.getValue().stream().sorted().toList()));
        doubled |= cell.getValue().size() > 1;
      }
    }
    if (doubled) {
      notes.add("A treatment stands several times in a block; the median of its plots is ranked");
    }
    var table =
        BlockedValues.of(
            blocks, treatments, values.stream().mapToDouble(Double::doubleValue).toArray());
    return table.isComplete()
        ? friedman(Friedman.test(table), adjustment, notes)
        : skillingsMack(SkillingsMack.test(table), notes);
  }

  private static RankTest friedman(Friedman test, PValueAdjustment adjustment, List<String> notes) {
    RankPairs pairs;
    try {
      pairs = test.pairs(FriedmanPairs.CONOVER, adjustment);
    } catch (InputProblem alike) {
      notes.add("All blocks rank the treatments alike; pairs are compared after Nemenyi");
      pairs = test.pairs(FriedmanPairs.NEMENYI, PValueAdjustment.NONE);
    }
    return new RankTest(
        RankMethod.FRIEDMAN,
        test.chiSquared(),
        test.df(),
        test.pValue(),
        test.method().words(),
        test.sentence(),
        ranks(test.treatments()),
        Optional.of(pairs),
        PairSources.of(test.sources(), pairs),
        notes);
  }

  private static RankTest skillingsMack(SkillingsMack test, List<String> notes) {
    notes.addAll(test.remarks());
    notes.add(
        "Blocks lack plots, so treatments have no ranks that compare and no letters by ranks; take"
            + " those of the model");
    return new RankTest(
        RankMethod.SKILLINGS_MACK,
        test.statistic(),
        test.df(),
        test.pValue(),
        "chi-squared approximation",
        test.sentence(),
        Map.of(),
        Optional.empty(),
        List.of(test.source()),
        notes);
  }

  private static RankTest kruskalWallis(List<PlotScore> plots, PValueAdjustment adjustment) {
    var groups = new TreeMap<String, List<Double>>(NaturalOrder.ofNames());
    plots.forEach(
        each ->
            groups
                .computeIfAbsent(each.plot().treatment(), name -> new ArrayList<>())
                .add(each.median()));
    if (groups.values().stream().allMatch(each -> each.size() == 1)) {
      throw SummaryAnalysis.noReplicates(plots.size(), groups.size());
    }
    Map<String, double[]> arrays = new LinkedHashMap<>();
    groups.forEach(
        (name, values) ->
            arrays.put(name, values.stream().mapToDouble(Double::doubleValue).toArray()));
    var test = KruskalWallis.test(GroupedValues.of(arrays));
    var pairs = test.pairs(KruskalWallisPairs.DUNN, adjustment);
    return new RankTest(
        RankMethod.KRUSKAL_WALLIS,
        test.h(),
        test.df(),
        test.pValue(),
        test.method().words(),
        test.sentence(),
        ranks(test.groups()),
        Optional.of(pairs),
        PairSources.of(List.of(test.source()), pairs),
        test.remarks());
  }

  private static Map<String, Double> ranks(List<RankedGroup> groups) {
    Map<String, Double> ranks = new LinkedHashMap<>();
    groups.forEach(each -> ranks.put(each.label(), each.meanRank()));
    return ranks;
  }

  OptionalDouble meanRank(String treatment) {
    var rank = meanRanks.get(treatment);
    return rank == null ? OptionalDouble.empty() : OptionalDouble.of(rank);
  }

  String letters(String treatment, double level) {
    return pairs
        .map(each -> each.letters(level, LetterOrder.LARGEST_FIRST).letters(treatment))
        .orElse("");
  }

  /** Works behind a test and its pairs. */
  private static final class PairSources {
    static List<Reference> of(List<Reference> test, RankPairs pairs) {
      var all = new ArrayList<>(test);
      if (!all.contains(pairs.source())) {
        all.add(pairs.source());
      }
      return all;
    }
  }
}
