package agro.sampling.dispersion;

import agro.report.InputProblem;
import agro.sampling.CountSample;
import agro.source.SamplingBibliography;
import agro.units.Numbers;
import agro.working.Cell;
import agro.working.Presentable;
import agro.working.Presentation;
import agro.working.ResultTable;
import agro.working.ResultTable.Column;
import java.util.ArrayList;
import java.util.List;

/**
 * One exponent k for several fields. With x' = m² − s² / n and y' = s² − m of each field, 1 / k is
 * the slope of y' on x'. An infinite or negative slope means that there is no finite common k.
 *
 * @param samples the fields
 * @param byRatio Σx' / Σy'
 * @param throughOrigin Σx'² / Σx'y'
 * @param weighted the iterated weighted slope
 * @param iterations values of k during the iteration, from {@code byRatio} on
 * @param byLikelihood k of greatest likelihood with a mean for each field
 * @param standardError of the k by likelihood; NaN when it is infinite
 */
public record CommonExponent(
    List<CountSample> samples,
    double byRatio,
    double throughOrigin,
    double weighted,
    List<Double> iterations,
    double byLikelihood,
    double standardError)
    implements Presentable {

  private static final double CONVERGED = 1e-12;
  private static final int MOST_ITERATIONS = 500;

  /** Makes the lists immutable. */
  public CommonExponent {
    samples = List.copyOf(samples);
    iterations = List.copyOf(iterations);
  }

  /**
   * Fits a common k.
   *
   * @param samples at least two fields counted in one unit, each with at least one animal
   * @return the fit
   * @throws InputProblem when there are fewer than two fields, units differ, or a field has no
   *     animal
   */
  public static CommonExponent of(List<CountSample> samples) {
    if (samples.size() < 2) {
      throw InputProblem.of(samples.size() + " samples for a common k")
          .expected("at least two fields")
          .because("one field has a k of its own, not a common one")
          .mend("add fields, or fit NegativeBinomialFit to the one");
    }
    CountSample.requireOneUnit(samples, "a common k");
    samples.forEach(each -> each.requireAnimals("a common k"));
    double xs = 0;
    double ys = 0;
    double xx = 0;
    double xy = 0;
    for (var each : samples) {
      xs += x(each);
      ys += y(each);
      xx += x(each) * x(each);
      xy += x(each) * y(each);
    }
    var iterations = new ArrayList<Double>();
    double ratio = positive(xs / ys);
    double weighted = iterate(samples, ratio, iterations);
    var score = new ExponentScore(samples);
    double k = score.solve();
    return new CommonExponent(
        samples,
        ratio,
        positive(xx / xy),
        weighted,
        iterations,
        k,
        Double.isInfinite(k) ? Double.NaN : 1 / Math.sqrt(score.information(k)));
  }

  private static double positive(double k) {
    return k > 0 ? k : Double.POSITIVE_INFINITY;
  }

  /**
   * x' of a field.
   *
   * @param sample the field
   * @return m² − s² / n
   */
  public static double x(CountSample sample) {
    return sample.mean() * sample.mean() - sample.variance() / sample.size();
  }

  /**
   * y' of a field.
   *
   * @param sample the field
   * @return s² − m
   */
  public static double y(CountSample sample) {
    return sample.variance() - sample.mean();
  }

  /**
   * Weight of a field at a value of k: 0.5 (n − 1) k⁴ / {m² (m + k)² [k (k + 1) − (2k − 1) / n − 3
   * / n²]}.
   *
   * @param sample the field
   * @param k common exponent, above 0
   * @return the weight
   */
  public static double weight(CountSample sample, double k) {
    double n = sample.size();
    double m = sample.mean();
    return 0.5
        * (n - 1)
        * Math.pow(k, 4)
        / (m * m * (m + k) * (m + k) * (k * (k + 1) - (2 * k - 1) / n - 3 / (n * n)));
  }

  private static double iterate(List<CountSample> samples, double start, List<Double> iterations) {
    if (Double.isInfinite(start)) {
      return start;
    }
    double k = start;
    for (int i = 0; i < MOST_ITERATIONS; i++) {
      iterations.add(k);
      double xx = 0;
      double xy = 0;
      for (var each : samples) {
        double weight = weight(each, k);
        xx += weight * x(each) * x(each);
        xy += weight * x(each) * y(each);
      }
      double next = positive(xx / xy);
      if (Double.isInfinite(next) || Math.abs(next - k) <= CONVERGED * next) {
        return next;
      }
      k = next;
    }
    return Double.NaN;
  }

  @Override
  public Presentation presentation() {
    var rows = new ArrayList<List<Cell>>();
    for (var each : samples) {
      rows.add(
          List.of(
              Cell.text(each.label()),
              Cell.number(each.size(), 0),
              Cell.number(each.mean(), 3),
              Cell.number(each.variance(), 3),
              Cell.number(x(each), 3),
              Cell.number(y(each), 3)));
    }
    return Presentation.titled("One exponent k for " + samples.size() + " fields")
        .fact("k, ratio of sums", words(byRatio))
        .fact("k, line through the origin", words(throughOrigin))
        .fact("k, weighted and iterated", words(weighted))
        .fact(
            "k, maximum likelihood",
            words(byLikelihood)
                + (Double.isInfinite(byLikelihood)
                    ? ""
                    : ", standard error " + Numbers.fixed(standardError, 2)))
        .table(
            ResultTable.of(
                "Fields",
                List.of(
                    Column.of("Field"),
                    Column.of("Units"),
                    Column.of("Mean, m"),
                    Column.of("Variance, s²"),
                    Column.of("x' = m² − s²/n"),
                    Column.of("y' = s² − m")),
                rows))
        .sources(List.of(SamplingBibliography.BLISS_OWEN_1958))
        .build();
  }

  private static String words(double k) {
    if (Double.isNaN(k)) {
      return "did not settle";
    }
    return Double.isInfinite(k)
        ? "no finite value: the counts are no more uneven than chance"
        : Numbers.fixed(k, 3);
  }
}
