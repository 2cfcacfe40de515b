package agro.sampling.dispersion;

import agro.report.ReadReport;
import agro.sampling.CountSample;
import agro.source.SamplingBibliography;
import agro.stats.LinearFit;
import agro.units.Numbers;
import agro.working.Cell;
import agro.working.Presentable;
import agro.working.Presentation;
import agro.working.ResultTable;
import agro.working.ResultTable.Column;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.hipparchus.distribution.continuous.TDistribution;

/**
 * Mean crowding as a straight line of the mean over fields, m* = α + β m. α tells how many others
 * are with an animal in an empty field (0 when single animals are the unit of spread), β how groups
 * lie in the field (1 at random). It implies the variance s² = (α + 1) m + (β − 1) m².
 *
 * @param samples fields with at least one animal
 * @param line the line of m* on m
 * @param report fields that were left out
 */
public record IwaoRegression(List<CountSample> samples, LinearFit line, ReadReport report)
    implements Presentable {

  /** Makes the list immutable. */
  public IwaoRegression {
    samples = List.copyOf(samples);
    Objects.requireNonNull(line, "line");
    Objects.requireNonNull(report, "report");
  }

  /**
   * Fits the line.
   *
   * @param samples fields counted in one unit; those without animals are left out and reported
   * @return the fit
   * @throws agro.report.InputProblem when fewer than three usable fields with different means are
   *     left, or units differ
   */
  public static IwaoRegression fit(List<CountSample> samples) {
    var report = new ReadReport.Collector("mean crowding on the mean");
    var usable =
        MeanVarianceLine.usable(
            samples,
            "the line of mean crowding",
            each -> each.mean() > 0,
            "a field without animals has no crowding",
            report);
    var x = usable.stream().mapToDouble(CountSample::mean).toArray();
    var y = usable.stream().mapToDouble(e -> DispersionIndices.of(e).meanCrowding()).toArray();
    return new IwaoRegression(usable, LinearFit.of(x, y), report.report());
  }

  /**
   * α of the line.
   *
   * @return the intercept
   */
  public double alpha() {
    return line.intercept();
  }

  /**
   * β of the line.
   *
   * @return the slope
   */
  public double beta() {
    return line.slope();
  }

  /**
   * The variance to be expected at a mean.
   *
   * @param mean above 0
   * @return (α + 1) m + (β − 1) m²
   */
  public double variance(double mean) {
    return (alpha() + 1) * mean + (beta() - 1) * mean * mean;
  }

  /**
   * Student's t of β against 1.
   *
   * @return (β − 1) / SE(β)
   */
  public double tAgainstOne() {
    return (beta() - 1) / line.slopeStandardError();
  }

  /**
   * Student's t of α against 0.
   *
   * @return α / SE(α)
   */
  public double tOfAlpha() {
    return alpha() / line.interceptStandardError();
  }

  private double chance(double t) {
    return 2 * new TDistribution(line.degreesOfFreedom()).cumulativeProbability(-Math.abs(t));
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
              Cell.number(DispersionIndices.of(each).meanCrowding(), 3),
              Cell.number(line.at(each.mean()), 3)));
    }
    var page =
        Presentation.titled("Mean crowding on the mean over " + samples.size() + " fields")
            .fact(
                "Line",
                "m* = " + Numbers.fixed(alpha(), 3) + " + " + Numbers.fixed(beta(), 3) + " m")
            .fact("α against 0", test(tOfAlpha()))
            .fact("β against 1", test(tAgainstOne()))
            .fact("R²", Numbers.fixed(line.rSquared(), 3))
            .table(
                ResultTable.of(
                    "Fields",
                    List.of(
                        Column.of("Field"),
                        Column.of("Units"),
                        Column.of("Mean, m"),
                        Column.of("Mean crowding, m*"),
                        Column.of("By the line")),
                    rows));
    if (!report.entries().isEmpty()) {
      page.part(Presentation.of(report));
    }
    return page.sources(List.of(SamplingBibliography.IWAO_1968, SamplingBibliography.LLOYD_1967))
        .build();
  }

  private String test(double t) {
    return "t = "
        + Numbers.fixed(t, 2)
        + "; df = "
        + line.degreesOfFreedom()
        + "; P = "
        + Numbers.fixed(chance(t), 3);
  }
}
