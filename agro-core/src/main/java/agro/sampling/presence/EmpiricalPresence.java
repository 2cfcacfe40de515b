package agro.sampling.presence;

import agro.report.InputProblem;
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

/**
 * The line ln m = α + β ln(−ln(1 − P)) through fields whose mean m and share P of units with more
 * than a tally are both known. The variance of a mean that is read off it has the parts c1 (the
 * share is sampled), c2 (the line is estimated) and c3 − c4 (fields scatter about the line; c4
 * takes out what the sampling of the mean adds to that scatter). Authors differ in whether c3 − c4
 * may be below zero: it is taken as it is by {@link #variance}, and not below zero by {@link
 * #cautiousVariance}.
 *
 * @param line the line
 * @param fields the fields
 */
public record EmpiricalPresence(LinearFit line, List<Field> fields) implements Presentable {

  /**
   * A field with both figures.
   *
   * @param mean mean count for each unit, above 0
   * @param share share of units with more than the tally, above 0 and below 1
   */
  public record Field(double mean, double share) {
    /**
     * Checks the figures.
     *
     * @throws InputProblem when the mean is not above 0 or the share not between 0 and 1
     */
    public Field {
      if (!(mean > 0 && Double.isFinite(mean) && share > 0 && share < 1)) {
        throw InputProblem.of("a field with mean " + mean + " and share " + share)
            .expected("a mean above 0 and a share above 0 and below 1")
            .because("their logarithms do not exist otherwise")
            .mend("leave fields out in which no unit or every unit has animals");
      }
    }
  }

  /** Makes the list immutable. */
  public EmpiricalPresence {
    Objects.requireNonNull(line, "line");
    fields = List.copyOf(fields);
  }

  /**
   * Fits the line.
   *
   * @param fields at least three fields with different shares
   * @return the fit
   * @throws InputProblem when there are fewer, or all shares are equal
   */
  public static EmpiricalPresence fit(List<Field> fields) {
    if (fields.size() < 3 || fields.stream().mapToDouble(Field::share).distinct().count() < 2) {
      throw InputProblem.of(fields.size() + " fields for the line of means on shares")
          .expected("at least three fields with different shares")
          .because("a line with its errors needs points that lie apart")
          .mend("add fields with few and with many animals");
    }
    var x = fields.stream().mapToDouble(each -> place(each.share())).toArray();
    var y = fields.stream().mapToDouble(each -> Math.log(each.mean())).toArray();
    return new EmpiricalPresence(LinearFit.of(x, y), fields);
  }

  private static double place(double share) {
    return Math.log(-Math.log1p(-share));
  }

  /**
   * Mean read off the line.
   *
   * @param share share of units with more than the tally, above 0 and below 1
   * @return the mean count for each unit
   */
  public double mean(double share) {
    requireShare(share);
    return Math.exp(line.at(place(share)));
  }

  /**
   * Share read off the line.
   *
   * @param mean mean count for each unit, above 0
   * @return the share of units with more than the tally
   */
  public double share(double mean) {
    return -Math.expm1(-Math.exp((Math.log(mean) - line.intercept()) / line.slope()));
  }

  /**
   * c1: variance of ln m from the sampled share, β² P / (n (1 − P) ln(1 − P)²).
   *
   * @param share share of units
   * @param units units looked at
   * @return the part
   */
  public double samplingPart(double share, int units) {
    requireShare(share);
    double log = Math.log1p(-share);
    return line.slope() * line.slope() * share / (units * (1 - share) * log * log);
  }

  /**
   * c2: variance of ln m from the estimated line, mse / N + (x − x̄)² s_β².
   *
   * @param share share of units
   * @return the part
   */
  public double linePart(double share) {
    double error = line.meanStandardErrorAt(place(share));
    return error * error;
  }

  /**
   * c3: scatter of fields about the line, its mean squared residual.
   *
   * @return the part
   */
  public double scatterPart() {
    return line.residualDeviation() * line.residualDeviation();
  }

  /**
   * c4: what the sampling of means adds to the scatter, exp(ln a + (b − 2)(α + β x)) / n.
   *
   * @param share share of units
   * @param units units looked at
   * @param a factor of the power law of the variance
   * @param b exponent of the power law of the variance
   * @return the part
   */
  public double meanSamplingPart(double share, int units, double a, double b) {
    return Math.exp(Math.log(a) + (b - 2) * line.at(place(share))) / units;
  }

  /**
   * Variance of the mean, m² (c1 + c2 + c3 − c4), with c3 − c4 as it is.
   *
   * @param share share of units
   * @param units units looked at
   * @param a factor of the power law of the variance
   * @param b exponent of the power law of the variance
   * @return the variance
   */
  public double variance(double share, int units, double a, double b) {
    return variance(share, units, scatterPart() - meanSamplingPart(share, units, a, b));
  }

  /**
   * Variance of the mean with c3 − c4 not below zero.
   *
   * @param share share of units
   * @param units units looked at
   * @param a factor of the power law of the variance
   * @param b exponent of the power law of the variance
   * @return the variance, never below m² (c1 + c2)
   */
  public double cautiousVariance(double share, int units, double a, double b) {
    return variance(
        share, units, Math.max(0, scatterPart() - meanSamplingPart(share, units, a, b)));
  }

  private double variance(double share, int units, double rest) {
    double mean = mean(share);
    return mean * mean * (samplingPart(share, units) + linePart(share) + rest);
  }

  private static void requireShare(double share) {
    if (!(share > 0 && share < 1)) {
      throw InputProblem.of("a share of " + share + " of units with animals")
          .expected("a share above 0 and below 1")
          .because("when no unit or every unit has animals their mean cannot be told")
          .mend("look at more units, or raise the tally above which a unit counts");
    }
  }

  @Override
  public Presentation presentation() {
    var rows = new ArrayList<List<Cell>>();
    for (var each : fields) {
      rows.add(
          List.of(
              Cell.number(each.mean(), 3),
              Cell.number(each.share(), 3),
              Cell.number(mean(each.share()), 3)));
    }
    return Presentation.titled("Means from shares of units with animals")
        .fact(
            "Line",
            "ln m = "
                + Numbers.fixed(line.intercept(), 4)
                + " + "
                + Numbers.fixed(line.slope(), 4)
                + " ln(−ln(1 − P))")
        .fact("R²", Numbers.fixed(line.rSquared(), 3))
        .table(
            ResultTable.of(
                "Fields",
                List.of(Column.of("Mean"), Column.of("Share"), Column.of("Mean by the line")),
                rows))
        .sources(
            List.of(
                SamplingBibliography.GERRARD_CHIANG_1970,
                SamplingBibliography.BINNS_BOSTANIAN_1990,
                SamplingBibliography.SCHAALJE_1991))
        .build();
  }
}
