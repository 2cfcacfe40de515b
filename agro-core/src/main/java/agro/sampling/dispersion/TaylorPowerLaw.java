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
 * Variance as a power of the mean over fields, s² = a m^b, from the straight line ln s² = ln a + b
 * ln m. Neither a nor b depends on the base of the logarithm.
 *
 * @param samples fields with a mean and a variance above zero
 * @param line the line of ln s² on ln m
 * @param report fields that were left out
 */
public record TaylorPowerLaw(List<CountSample> samples, LinearFit line, ReadReport report)
    implements Presentable {

  /** Makes the list immutable. */
  public TaylorPowerLaw {
    samples = List.copyOf(samples);
    Objects.requireNonNull(line, "line");
    Objects.requireNonNull(report, "report");
  }

  /**
   * Fits the law.
   *
   * @param samples fields counted in one unit; those without animals or without variance are left
   *     out and reported, for their logarithm does not exist
   * @return the fit
   * @throws agro.report.InputProblem when fewer than three usable fields with different means are
   *     left, or units differ
   */
  public static TaylorPowerLaw fit(List<CountSample> samples) {
    var report = new ReadReport.Collector("power law of the variance");
    var usable =
        MeanVarianceLine.usable(
            samples,
            "a power law",
            each -> each.mean() > 0 && each.variance() > 0,
            "a mean or a variance of zero has no logarithm",
            report);
    var x = usable.stream().mapToDouble(each -> Math.log(each.mean())).toArray();
    var y = usable.stream().mapToDouble(each -> Math.log(each.variance())).toArray();
    return new TaylorPowerLaw(usable, LinearFit.of(x, y), report.report());
  }

  /**
   * The factor a.
   *
   * @return variance at a mean of 1
   */
  public double a() {
    return Math.exp(line.intercept());
  }

  /**
   * The exponent b: 1 for animals at random at every density, more for clumps that grow with it.
   *
   * @return the slope
   */
  public double b() {
    return line.slope();
  }

  /**
   * The variance to be expected at a mean.
   *
   * @param mean above 0
   * @return a m^b
   */
  public double variance(double mean) {
    return a() * Math.pow(mean, b());
  }

  /**
   * Student's t of b against 1.
   *
   * @return (b − 1) / SE(b)
   */
  public double tAgainstOne() {
    return (b() - 1) / line.slopeStandardError();
  }

  /**
   * Chance of a t as far from zero when b is 1.
   *
   * @return 0 to 1, two-sided
   */
  public double chanceIfOne() {
    return 2
        * new TDistribution(line.degreesOfFreedom())
            .cumulativeProbability(-Math.abs(tAgainstOne()));
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
              Cell.number(variance(each.mean()), 3)));
    }
    double half =
        new TDistribution(line.degreesOfFreedom()).inverseCumulativeProbability(0.975)
            * line.slopeStandardError();
    var page =
        Presentation.titled("Power law of the variance over " + samples.size() + " fields")
            .fact("Law", "s² = " + Numbers.fixed(a(), 3) + " × m^" + Numbers.fixed(b(), 3))
            .fact(
                "b",
                Numbers.fixed(b(), 3)
                    + ", 95 % from "
                    + Numbers.fixed(b() - half, 3)
                    + " to "
                    + Numbers.fixed(b() + half, 3))
            .fact(
                "b against 1",
                "t = "
                    + Numbers.fixed(tAgainstOne(), 2)
                    + "; df = "
                    + line.degreesOfFreedom()
                    + "; P "
                    + (chanceIfOne() < 0.001
                        ? "below 0.001"
                        : "= " + Numbers.fixed(chanceIfOne(), 3)))
            .fact("R²", Numbers.fixed(line.rSquared(), 3))
            .table(
                ResultTable.of(
                    "Fields",
                    List.of(
                        Column.of("Field"),
                        Column.of("Units"),
                        Column.of("Mean"),
                        Column.of("Variance"),
                        Column.of("Variance by the law")),
                    rows));
    if (!report.entries().isEmpty()) {
      page.part(Presentation.of(report));
    }
    return page.sources(List.of(SamplingBibliography.TAYLOR_1961)).build();
  }
}
