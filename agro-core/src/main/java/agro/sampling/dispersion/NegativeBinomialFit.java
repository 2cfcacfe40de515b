package agro.sampling.dispersion;

import agro.report.InputProblem;
import agro.sampling.CountSample;
import agro.sampling.NegativeBinomialCounts;
import agro.source.SamplingBibliography;
import agro.units.Numbers;
import agro.working.Cell;
import agro.working.Presentable;
import agro.working.Presentation;
import agro.working.ResultTable;
import agro.working.ResultTable.Column;
import java.util.ArrayList;
import java.util.List;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;

/**
 * The exponent k of the negative binomial for the counts of one field, by three methods. A k that
 * is infinite means counts no more uneven than chance: there is no finite k.
 *
 * @param sample the counts
 * @param byMoments m² / (s² − m); infinite when s² is not above m
 * @param byZeroClass solution of k ln(1 + m / k) = −ln(n0 / n); infinite when there are no more
 *     zeros than chance gives, NaN when no count is zero
 * @param byLikelihood solution of Σ f(x) [ψ(x + k) − ψ(k)] = n ln(1 + m / k)
 * @param standardError of the k by likelihood, from the observed information at fixed mean; NaN
 *     when k is infinite
 */
public record NegativeBinomialFit(
    CountSample sample,
    double byMoments,
    double byZeroClass,
    double byLikelihood,
    double standardError)
    implements Presentable {

  /** Classes are pooled until this many units are expected in the last one. */
  private static final double LEAST_EXPECTED = 5;

  private static final double ACCURACY = 1e-14;

  /**
   * Fits the negative binomial.
   *
   * @param sample the counts, at least one animal
   * @return the fit
   * @throws InputProblem when all counts are zero
   */
  public static NegativeBinomialFit of(CountSample sample) {
    sample.requireAnimals("the exponent k");
    double mean = sample.mean();
    double excess = sample.variance() - mean;
    var score = new ExponentScore(List.of(sample));
    double k = score.solve();
    return new NegativeBinomialFit(
        sample,
        excess > 0 ? mean * mean / excess : Double.POSITIVE_INFINITY,
        zeroClass(sample),
        k,
        Double.isInfinite(k) ? Double.NaN : 1 / Math.sqrt(score.information(k)));
  }

  private static double zeroClass(CountSample sample) {
    int zeros = sample.unitsWith(0);
    if (zeros == 0) {
      return Double.NaN;
    }
    double mean = sample.mean();
    double wanted = -Math.log((double) zeros / sample.size());
    if (wanted >= mean) {
      return Double.POSITIVE_INFINITY;
    }
    double high = 0;
    while (zeroTerm(Math.exp(high), mean) < wanted) {
      high += 1;
    }
    double low = high - 1;
    while (zeroTerm(Math.exp(low), mean) > wanted) {
      low -= 1;
    }
    return Math.exp(
        new BracketingNthOrderBrentSolver(ACCURACY, ACCURACY, 5)
            .solve(200, logK -> zeroTerm(Math.exp(logK), mean) - wanted, low, high));
  }

  private static double zeroTerm(double k, double mean) {
    return k * Math.log1p(mean / k);
  }

  /**
   * Whether the counts are more uneven than chance by likelihood.
   *
   * @return false when k has no finite value
   */
  public boolean isFinite() {
    return Double.isFinite(byLikelihood);
  }

  /**
   * The fitted distribution.
   *
   * @return negative binomial by likelihood, or the Poisson distribution without a finite k
   */
  public NegativeBinomialCounts distribution() {
    return new NegativeBinomialCounts(sample.mean(), byLikelihood);
  }

  /**
   * Logarithm of the likelihood of the fitted distribution.
   *
   * @return Σ ln P(x)
   */
  public double logLikelihood() {
    return logLikelihood(distribution());
  }

  /**
   * Logarithm of the likelihood of counts at random.
   *
   * @return Σ ln P(x) of the Poisson distribution with the same mean
   */
  public double poissonLogLikelihood() {
    return logLikelihood(NegativeBinomialCounts.poisson(sample.mean()));
  }

  private double logLikelihood(NegativeBinomialCounts counts) {
    double sum = 0;
    for (int count : sample.counts()) {
      sum += counts.logProbability(count);
    }
    return sum;
  }

  /**
   * Units expected with a count.
   *
   * @param count 0 or more
   * @return n P(x)
   */
  public double expected(int count) {
    return sample.size() * distribution().probability(count);
  }

  /**
   * Goodness of fit with all counts from a class on put together.
   *
   * @param pooledFrom first count of the last class, 1 or more
   * @return the test
   * @throws InputProblem when no degree of freedom is left
   */
  public GoodnessOfFit goodnessOfFit(int pooledFrom) {
    return GoodnessOfFit.of(sample, distribution(), pooledFrom, isFinite() ? 2 : 1);
  }

  /**
   * Goodness of fit with the last class so large that at least five units are expected in it.
   *
   * @return the test
   * @throws InputProblem when so few classes are left that no degree of freedom remains
   */
  public GoodnessOfFit goodnessOfFit() {
    int from = 1;
    while (sample.size() * distribution().chanceOfMoreThan(from) >= LEAST_EXPECTED) {
      from++;
    }
    return goodnessOfFit(from);
  }

  @Override
  public Presentation presentation() {
    var rows = new ArrayList<List<Cell>>();
    for (int x = 0; x <= sample.largest(); x++) {
      rows.add(
          List.of(
              Cell.number(x, 0), Cell.number(sample.unitsWith(x), 0), Cell.number(expected(x), 2)));
    }
    var page =
        Presentation.titled("Negative binomial: " + sample.label())
            .fact("Units", sample.size() + " × " + sample.unit())
            .fact("Mean", Numbers.fixed(sample.mean(), 3))
            .fact("k by moments", words(byMoments))
            .fact("k from the zero class", words(byZeroClass))
            .fact(
                "k by maximum likelihood",
                isFinite()
                    ? words(byLikelihood) + ", standard error " + Numbers.fixed(standardError, 3)
                    : words(byLikelihood));
    try {
      page.fact("Goodness of fit", goodnessOfFit().words());
    } catch (InputProblem tooFew) {
      page.fact("Goodness of fit", "not tested: " + tooFew.read());
    }
    return page.table(
            ResultTable.of(
                "Units by count",
                List.of(Column.of("Count"), Column.of("Observed"), Column.of("Expected")),
                rows))
        .sources(List.of(SamplingBibliography.BLISS_FISHER_1953))
        .build();
  }

  private static String words(double k) {
    if (Double.isNaN(k)) {
      return "not to be had: no count is zero";
    }
    return Double.isInfinite(k)
        ? "no finite value: the counts are no more uneven than chance"
        : Numbers.fixed(k, 3);
  }
}
