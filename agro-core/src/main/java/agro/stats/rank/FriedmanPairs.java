package agro.stats.rank;

import agro.report.InputProblem;
import agro.stats.UpperTail;
import agro.stats.multiple.PValueAdjustment;
import agro.stats.multiple.StudentisedRange;

/** Comparisons of two treatments after Friedman's test. */
public enum FriedmanPairs {
  /**
   * Conover 1999: Student's t of rank sums with the residual variance of the ranks; differences are
   * those of rank sums. Meant for use after a test of all treatments that found a difference.
   */
  CONOVER {
    @Override
    RankPairs compare(Friedman test, PValueAdjustment adjustment) {
      double df = test.errorDf();
      double b = test.blocks();
      double sums = 0;
      for (RankedGroup each : test.treatments()) {
        sums += each.rankSum() * each.rankSum();
      }
      double left = b * test.rankSquares() - sums;
      if (left <= 1e-12 * sums) {
        throw InputProblem.of("All blocks rank the treatments alike")
            .expected("ranks that scatter between blocks")
            .because("Student's t needs a residual variance of the ranks")
            .mend("take Nemenyi's comparison");
      }
      double error = Math.sqrt(2 * left / df);
      return RankPairs.of(
          "Conover",
          RankSources.CONOVER_1999,
          test.treatments().stream().map(RankedGroup::label).toList(),
          adjustment,
          (i, j) -> {
            var first = test.treatments().get(i);
            var second = test.treatments().get(j);
            double difference = second.rankSum() - first.rankSum();
            double p = 2 * UpperTail.t(Math.abs(difference / error), df);
            return new RankPair(
                first.label(), second.label(), difference, error, difference / error, df, p, p);
          });
    }
  },

  /**
   * Nemenyi 1963: the largest difference of mean ranks against the range of as many normal means.
   * Holds the level of the whole family by itself.
   */
  NEMENYI {
    @Override
    RankPairs compare(Friedman test, PValueAdjustment adjustment) {
      if (adjustment != PValueAdjustment.NONE) {
        throw new IllegalArgumentException(
            "Nemenyi's comparison holds the level of all pairs by itself: take the adjustment NONE,"
                + " not "
                + adjustment);
      }
      int k = test.treatments().size();
      double error = Math.sqrt(k * (k + 1) / (6.0 * test.blocks()));
      var range = StudentisedRange.of(k, Double.POSITIVE_INFINITY);
      return RankPairs.of(
          "Nemenyi",
          RankSources.NEMENYI_1963,
          test.treatments().stream().map(RankedGroup::label).toList(),
          adjustment,
          (i, j) -> {
            var first = test.treatments().get(i);
            var second = test.treatments().get(j);
            double difference = second.meanRank() - first.meanRank();
            double z = difference / error;
            double p = range.above(Math.sqrt(2) * Math.abs(z));
            return new RankPair(
                first.label(),
                second.label(),
                difference,
                error,
                z,
                Double.POSITIVE_INFINITY,
                p,
                p);
          });
    }
  };

  abstract RankPairs compare(Friedman test, PValueAdjustment adjustment);
}
