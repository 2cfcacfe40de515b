package agro.stats.rank;

import agro.source.Reference;
import agro.stats.NormalTail;
import agro.stats.UpperTail;
import agro.stats.multiple.PValueAdjustment;

/** Comparisons of two groups after the test of Kruskal and Wallis. */
public enum KruskalWallisPairs {
  /** Dunn 1964: difference of mean ranks against the variance of ranks when nothing differs. */
  DUNN("Dunn", RankSources.DUNN_1964) {
    @Override
    double variance(KruskalWallis test) {
      return test.rankVariance();
    }

    @Override
    double df(KruskalWallis test) {
      return Double.POSITIVE_INFINITY;
    }
  },
  /**
   * Conover and Iman 1979: Student's t of mean ranks with the variance of ranks within groups. Sees
   * more than Dunn's, and is meant for use after a test of all groups that found a difference.
   */
  CONOVER_IMAN("Conover-Iman", RankSources.CONOVER_IMAN_1979) {
    @Override
    double variance(KruskalWallis test) {
      double n = test.n();
      return test.rankVariance() * Math.max(0, n - 1 - test.h()) / (n - test.groups().size());
    }

    @Override
    double df(KruskalWallis test) {
      return test.n() - test.groups().size();
    }
  };

  private static final double NOTHING = 1e-12;

  private final String title;
  private final Reference source;

  KruskalWallisPairs(String title, Reference source) {
    this.title = title;
    this.source = source;
  }

  abstract double variance(KruskalWallis test);

  abstract double df(KruskalWallis test);

  RankPairs compare(KruskalWallis test, PValueAdjustment adjustment) {
    double df = df(test);
    double variance = variance(test);
    if (variance <= NOTHING * test.rankVariance()) {
      throw agro.report.InputProblem.of("Within every group all ranks are equal")
          .expected("ranks that scatter within groups")
          .because("Student's t needs a variance within groups")
          .mend("take Dunn's comparison");
    }
    var labels = test.groups().stream().map(RankedGroup::label).toList();
    return RankPairs.of(
        title,
        source,
        labels,
        adjustment,
        (i, j) -> {
          var first = test.groups().get(i);
          var second = test.groups().get(j);
          double difference = second.meanRank() - first.meanRank();
          double error = Math.sqrt(variance * (1.0 / first.n() + 1.0 / second.n()));
          double statistic = difference / error;
          double size = Math.abs(statistic);
          double tail = Double.isInfinite(df) ? NormalTail.above(size) : UpperTail.t(size, df);
          double p = 2 * tail;
          return new RankPair(
              first.label(), second.label(), difference, error, statistic, df, p, p);
        });
  }
}
