package agro.development.rate;

import agro.report.InputProblem;
import agro.report.Progress;
import agro.stats.Bootstrap;
import agro.stats.Refit;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Objects;
import java.util.function.Supplier;

/**
 * What a bootstrap of a rate fit draws and how its limits are read.
 *
 * @param resampling what is drawn
 * @param limits how limits are read
 * @param refits number of refits
 * @param level chance that an interval should hold the truth, between 0 and 1
 * @param seed start of all chance
 */
public record RateBootstrap(
    Resampling resampling, BootstrapLimits limits, int refits, double level, long seed) {

  private static final int USUAL_REFITS = 1000;
  private static final double USUAL_LEVEL = 0.9;
  private static final int LEAST_REFITS = 100;

  /** Checks number and level. */
  public RateBootstrap {
    Objects.requireNonNull(resampling, "resampling");
    Objects.requireNonNull(limits, "limits");
    if (refits < LEAST_REFITS || !(level > 0 && level < 1)) {
      throw InputProblem.of("a bootstrap of " + refits + " refits for a level of " + level)
          .expected("at least 100 refits and a level between 0 and 1, such as 0.9")
          .because("the limits are far percentiles of the refits")
          .mend("give 1000 refits and a level of 0.9");
    }
  }

  /**
   * A bootstrap with 1,000 refits and Student's t limits of 90 %.
   *
   * @param resampling what is drawn
   * @return the bootstrap
   */
  public static RateBootstrap of(Resampling resampling) {
    return new RateBootstrap(resampling, BootstrapLimits.STUDENT_T, USUAL_REFITS, USUAL_LEVEL, 1);
  }

  /**
   * The bootstrap that suits a fit: of residuals of cabinets for least squares, of means by their
   * standard errors where these are the weights, of cabinets for a likelihood if temperatures have
   * several, and else of animals.
   *
   * @param fit the fit
   * @return the bootstrap with 1,000 refits, the seed of the fitting and 90 % limits
   */
  public static RateBootstrap suitedTo(RateFit fit) {
    Resampling resampling;
    if (fit.fitting().distribution().isPresent()) {
      resampling = replicated(fit.data()) ? Resampling.CABINETS : Resampling.ANIMALS;
    } else {
      resampling =
          fit.fitting().weights() == RateWeights.STANDARD_ERRORS
              ? Resampling.PARAMETRIC
              : Resampling.RESIDUALS;
    }
    return of(resampling).withSeed(fit.fitting().seed());
  }

  /** Whether each temperature has two named cabinets or more. */
  static boolean replicated(RearingData data) {
    var names = new HashMap<Double, HashSet<String>>();
    for (var mean : data.means()) {
      if (mean.meanDays().isPresent()) {
        names.computeIfAbsent(mean.setCelsius(), key -> new HashSet<>()).add(mean.cabinet());
      }
    }
    return names.values().stream().allMatch(cabinets -> cabinets.size() > 1);
  }

  /**
   * This bootstrap with other limits.
   *
   * @param other how limits are read
   * @return a new bootstrap
   */
  public RateBootstrap withLimits(BootstrapLimits other) {
    return new RateBootstrap(resampling, other, refits, level, seed);
  }

  /**
   * This bootstrap with another number of refits.
   *
   * @param number the number, at least 100
   * @return a new bootstrap
   */
  public RateBootstrap withRefits(int number) {
    return new RateBootstrap(resampling, limits, number, level, seed);
  }

  /**
   * This bootstrap for another level.
   *
   * @param other chance that an interval should hold the truth
   * @return a new bootstrap
   */
  public RateBootstrap withLevel(double other) {
    return new RateBootstrap(resampling, limits, refits, other, seed);
  }

  /**
   * This bootstrap with another seed.
   *
   * @param other the seed
   * @return a new bootstrap
   */
  public RateBootstrap withSeed(long other) {
    return new RateBootstrap(resampling, limits, refits, level, other);
  }

  RateIntervals run(RateFit fit, Progress progress) {
    requireJudgeable(fit);
    int values = fit.curve().parameters().size() + DerivedPoint.values().length;
    boolean likelihood = fit.fitting().distribution().isPresent();
    if (likelihood && limits == BootstrapLimits.STUDENTISED) {
      throw InputProblem.of("studentised limits of a fit by the likelihood of durations")
          .expected("limits by Student's t, or a fit by least squares")
          .because("a standard error of every refit would take hours and adds little")
          .mend("leave the limits as they are, or take profile intervals");
    }
    boolean errors = limits == BootstrapLimits.STUDENTISED;
    Supplier<Refit> workers =
        likelihood
            ? new LikelihoodRefit.Workers(fit, resampling)
            : new RateRefit.Workers(fit, resampling, errors);
    var sample = Bootstrap.run(refits, errors ? 2 * values : values, seed, progress, workers);
    return RateIntervals.ofBootstrap(fit, this, sample);
  }

  static void requireJudgeable(RateFit fit) {
    if (fit.isSaturated()) {
      throw InputProblem.of(
              fit.curve().model().words()
                  + " was fitted with "
                  + fit.freeParameters()
                  + " parameters to "
                  + fit.points().size()
                  + " rates")
          .expected("at least two rates more than parameters for an interval")
          .because("a curve that goes through nearly all points shows nothing of its own error")
          .mend("choose a model with fewer parameters, fix one, or add temperatures");
    }
  }
}
