package agro.stats.multiple;

import agro.report.InputProblem;
import agro.source.Reference;
import java.util.Arrays;
import java.util.Comparator;
import java.util.stream.IntStream;

/**
 * Ways to adjust the p-values of several tests, so that each may be held against the level meant
 * for all of them.
 *
 * <p>Adjusted values come in the order of the given ones, equal values get equal answers, and a
 * smaller value never gets a larger answer.
 */
public enum PValueAdjustment {
  /** The values as they are: the chance of any false difference grows with every test. */
  NONE(MultipleSources.FISHER_1935) {
    @Override
    double[] ascending(double[] sorted) {
      return sorted.clone();
    }
  },

  /** Times the number of tests; keeps the chance of any false difference. */
  BONFERRONI(MultipleSources.DUNN_1961) {
    @Override
    double[] ascending(double[] sorted) {
      return Arrays.stream(sorted).map(p -> Math.min(1, sorted.length * p)).toArray();
    }
  },

  /**
   * 1 - (1 - p)^m for m tests; keeps the chance of any false difference for comparisons of means.
   */
  SIDAK(MultipleSources.SIDAK_1967) {
    @Override
    double[] ascending(double[] sorted) {
      return Arrays.stream(sorted).map(p -> -Math.expm1(sorted.length * Math.log1p(-p))).toArray();
    }
  },

  /** Step down: the smallest times m, the next times m - 1; never weaker than Bonferroni. */
  HOLM(MultipleSources.HOLM_1979) {
    @Override
    double[] ascending(double[] sorted) {
      double[] adjusted = new double[sorted.length];
      double largest = 0;
      for (int rank = 0; rank < sorted.length; rank++) {
        largest = Math.max(largest, (sorted.length - rank) * sorted[rank]);
        adjusted[rank] = Math.min(1, largest);
      }
      return adjusted;
    }
  },

  /** Step up with Holm's factors; for tests that are independent or positively dependent. */
  HOCHBERG(MultipleSources.HOCHBERG_1988) {
    @Override
    double[] ascending(double[] sorted) {
      double[] adjusted = new double[sorted.length];
      double smallest = 1;
      for (int rank = sorted.length - 1; rank >= 0; rank--) {
        smallest = Math.min(smallest, (sorted.length - rank) * sorted[rank]);
        adjusted[rank] = smallest;
      }
      return adjusted;
    }
  },

  /** Keeps the expected share of false ones among the differences found, not the chance of any. */
  BENJAMINI_HOCHBERG(MultipleSources.BENJAMINI_HOCHBERG_1995) {
    @Override
    double[] ascending(double[] sorted) {
      double[] adjusted = new double[sorted.length];
      double smallest = 1;
      for (int rank = sorted.length - 1; rank >= 0; rank--) {
        smallest = Math.min(smallest, sorted[rank] * sorted.length / (rank + 1));
        adjusted[rank] = smallest;
      }
      return adjusted;
    }
  };

  private final Reference source;

  PValueAdjustment(Reference source) {
    this.source = source;
  }

  /** Adjusts values that rise. */
  abstract double[] ascending(double[] sorted);

  /**
   * Adjusts the p-values of all tests of one family.
   *
   * @param pValues one p-value for each test, each from 0 to 1
   * @return the adjusted values in the same order
   * @throws InputProblem if a value is not a number from 0 to 1
   */
  public double[] adjust(double... pValues) {
    for (double p : pValues) {
      if (!(p >= 0 && p <= 1)) {
        throw InputProblem.of("A p-value of " + Checks.plain(p))
            .expected("a number from 0 to 1")
            .because("it is the chance of so large a difference")
            .mend("leave out tests that gave no p-value, and say how many were made");
      }
    }
    int[] order =
        IntStream.range(0, pValues.length)
            .boxed()
            .sorted(Comparator.comparingDouble(each -> pValues[each]))
            .mapToInt(Integer::intValue)
            .toArray();
    double[] sorted = Arrays.stream(order).mapToDouble(each -> pValues[each]).toArray();
    double[] rising = ascending(sorted);
    double[] adjusted = new double[pValues.length];
    for (int rank = 0; rank < order.length; rank++) {
      adjusted[order[rank]] = rising[rank];
    }
    return adjusted;
  }

  /**
   * The work that the adjustment is published in.
   *
   * @return the reference
   */
  public Reference source() {
    return source;
  }
}
