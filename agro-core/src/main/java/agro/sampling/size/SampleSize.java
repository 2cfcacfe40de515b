package agro.sampling.size;

import agro.report.InputProblem;
import agro.sampling.VarianceModel;
import agro.source.SamplingBibliography;
import agro.units.Numbers;
import agro.working.Presentable;
import agro.working.Presentation;
import agro.working.Working;
import java.util.Objects;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.hipparchus.distribution.continuous.TDistribution;

/**
 * Number of units for a stated precision of the mean: n = s² / V, where s² is the variance of
 * counts at the expected mean and V the greatest variance that the mean of the sample may have. For
 * a standard error of D m this is s² / (D m)²; for an interval, z² s² / (half width)².
 *
 * @param model how the variance follows from the mean
 * @param mean expected mean count for each unit, above 0
 * @param precision what is asked for
 * @param population units in the field; nothing when there are many more than the sample
 * @param minutesPerUnit time for a unit; nothing when it is not known
 */
public record SampleSize(
    VarianceModel model,
    double mean,
    Precision precision,
    OptionalInt population,
    OptionalDouble minutesPerUnit)
    implements Presentable {

  private static final int MOST_ROUNDS = 1_000;

  /**
   * Checks the mean.
   *
   * @throws InputProblem when it is not above zero, or the population or the time is not
   */
  public SampleSize {
    Objects.requireNonNull(model, "model");
    Objects.requireNonNull(precision, "precision");
    if (!(mean > 0 && Double.isFinite(mean))) {
      throw InputProblem.of("an expected mean of " + mean)
          .expected("a finite number above 0")
          .because("the sample that a precision takes depends on the density")
          .mend("give the mean you expect, or the one at which the decision turns");
    }
    if ((population.isPresent() && population.getAsInt() < 1)
        || (minutesPerUnit.isPresent() && !(minutesPerUnit.getAsDouble() > 0))) {
      throw InputProblem.of("a population of " + population + " and " + minutesPerUnit + " minutes")
          .expected("1 or more units in the field, and a time above 0")
          .because("the sample and its cost follow from them")
          .mend("leave out what is not known");
    }
  }

  /**
   * The number of units for a precision.
   *
   * @param model how the variance follows from the mean
   * @param mean expected mean count for each unit
   * @param precision what is asked for
   * @return the sample size
   * @throws InputProblem when the mean is not above zero
   */
  public static SampleSize of(VarianceModel model, double mean, Precision precision) {
    return new SampleSize(model, mean, precision, OptionalInt.empty(), OptionalDouble.empty());
  }

  /**
   * States how many units the field has, so that a sample which is a large part of it is smaller.
   *
   * @param units units in the field, 1 or more
   * @return a new sample size
   */
  public SampleSize inPopulationOf(int units) {
    return new SampleSize(model, mean, precision, OptionalInt.of(units), minutesPerUnit);
  }

  /**
   * States the time that a unit takes.
   *
   * @param minutes above 0
   * @return a new sample size
   */
  public SampleSize withMinutesPerUnit(double minutes) {
    return new SampleSize(model, mean, precision, population, OptionalDouble.of(minutes));
  }

  private double quantile() {
    return Double.isNaN(precision.level())
        ? 1
        : new NormalDistribution().inverseCumulativeProbability(0.5 + 0.5 * precision.level());
  }

  /**
   * Number of units before rounding.
   *
   * @return n, corrected for the population by n / (1 + n / N) when that is stated
   */
  public double exact() {
    double n = model.variance(mean) / precision.variance(mean, quantile());
    return population.isPresent() ? n / (1 + n / population.getAsInt()) : n;
  }

  /**
   * Number of units to look at.
   *
   * @return the exact number rounded up, at least 1
   */
  public int units() {
    return (int) Math.max(1, Math.ceil(exact() - 1e-9));
  }

  /**
   * Number of units with Student's t in place of the normal quantile, iterated until it stays: the
   * quantile depends on n itself. For a standard error the same as {@link #units()}.
   *
   * @return the number of units
   */
  public int unitsByStudent() {
    if (Double.isNaN(precision.level())) {
      return units();
    }
    int n = Math.max(2, units());
    for (int i = 0; i < MOST_ROUNDS; i++) {
      double t =
          new TDistribution(n - 1.0).inverseCumulativeProbability(0.5 + 0.5 * precision.level());
      double exact = model.variance(mean) / precision.variance(mean, t);
      if (population.isPresent()) {
        exact /= 1 + exact / population.getAsInt();
      }
      int next = (int) Math.max(2, Math.ceil(exact - 1e-9));
      if (next <= n && i > 0 && next >= n - 1) {
        return next;
      }
      n = next;
    }
    return n;
  }

  /**
   * Time for the sample.
   *
   * @return minutes, or nothing when the time for a unit is not stated
   */
  public OptionalDouble minutes() {
    return minutesPerUnit.isPresent()
        ? OptionalDouble.of(units() * minutesPerUnit.getAsDouble())
        : OptionalDouble.empty();
  }

  /**
   * The steps, as on a blackboard.
   *
   * @return variance at the mean, variance that the mean may have, and their ratio
   */
  public Working working() {
    double variance = model.variance(mean);
    double allowed = precision.variance(mean, quantile());
    var working =
        Working.of("Number of units for " + precision.words())
            .step(
                "variance of the counts at the expected mean",
                "s² by the " + model.words(),
                "m = " + Numbers.plain(mean),
                Numbers.fixed(variance, 4))
            .step(
                "variance that the mean may have",
                Double.isNaN(precision.level()) ? "V = (D m)²" : "V = (half width / z)²",
                Double.isNaN(precision.level()) ? "" : "z = " + Numbers.fixed(quantile(), 4),
                Numbers.fixed(allowed, 6))
            .step(
                "number of units",
                "n = s² / V",
                Numbers.fixed(variance, 4) + " / " + Numbers.fixed(allowed, 6),
                Numbers.fixed(variance / allowed, 2),
                SamplingBibliography.KARANDINOS_1976);
    if (population.isPresent()) {
      working =
          working.step(
              "in a field of " + population.getAsInt() + " units",
              "n / (1 + n / N)",
              "",
              Numbers.fixed(exact(), 2),
              SamplingBibliography.COCHRAN_1977);
    }
    return working.step("rounded up", "", "", units() + " units");
  }

  @Override
  public Presentation presentation() {
    var page =
        Presentation.titled("How many units to look at")
            .fact("Precision", precision.words())
            .fact("Expected mean", Numbers.plain(mean))
            .fact("Spread", model.words())
            .fact("Units", Integer.toString(units()));
    if (!Double.isNaN(precision.level()) && unitsByStudent() != units()) {
      page.fact("Units by Student's t", Integer.toString(unitsByStudent()));
    }
    minutes().ifPresent(time -> page.fact("Time", Numbers.fixed(time, 0) + " min"));
    return page.working(working()).build();
  }
}
