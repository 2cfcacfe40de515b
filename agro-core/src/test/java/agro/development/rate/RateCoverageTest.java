package agro.development.rate;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** How often nominal intervals of 90 % hold the truth, over seeds 1 to 1000. */
@Tag("slow")
class RateCoverageTest {

  private static final int WORLDS = Integer.getInteger("agro.rate.worlds", 1000);
  private static final double[] CELSIUS = {12, 15, 18, 21, 24, 27, 30, 33};
  private static final RateCurve TRUTH = RateModel.BRIERE_1.curve(3e-5, 9.5, 36);
  private static final String[] PARAMETERS = {"a", "T0", "TL"};
  private static final DerivedPoint[] POINTS = {
    DerivedPoint.OPTIMUM, DerivedPoint.GREATEST_RATE, DerivedPoint.LOWER_THRESHOLD
  };

  /** Scatter of the same size everywhere, three per cent of the greatest rate. */
  @Test
  void equalScatter() {
    check(
        RateFitting.of(RateModel.BRIERE_1),
        (random, rate) -> rate + 0.03 * 0.045 * random.nextGaussian(),
        BootstrapLimits.STUDENT_T);
  }

  @Test
  void equalScatterStudentised() {
    check(
        RateFitting.of(RateModel.BRIERE_1),
        (random, rate) -> rate + 0.03 * 0.045 * random.nextGaussian(),
        BootstrapLimits.STUDENTISED);
  }

  /** Scatter of three per cent of each rate, with the weights that belong to it. */
  @Test
  void proportionalScatter() {
    check(
        RateFitting.of(RateModel.BRIERE_1).withWeights(RateWeights.CONSTANT_VARIATION),
        (random, rate) -> rate * (1 + 0.03 * random.nextGaussian()),
        BootstrapLimits.STUDENT_T);
  }

  private interface Noise {
    double observed(SplittableRandom random, double rate);
  }

  private static void check(RateFitting fitting, Noise noise, BootstrapLimits limits) {
    int[] hits = new int[PARAMETERS.length + POINTS.length];
    for (int seed = 1; seed <= WORLDS; seed++) {
      var random = new SplittableRandom(seed);
      double[] days = new double[CELSIUS.length];
      for (int i = 0; i < days.length; i++) {
        days[i] = 1 / Math.max(1e-4, noise.observed(random, TRUTH.rate(CELSIUS[i])));
      }
      var fit = fitting.fit(RearingData.ofMeans("world " + seed, CELSIUS, days));
      var intervals =
          fit.bootstrap(
              RateBootstrap.of(Resampling.RESIDUALS)
                  .withLimits(limits)
                  .withRefits(500)
                  .withSeed(seed));
      for (int j = 0; j < PARAMETERS.length; j++) {
        boolean holds =
            intervals.interval(PARAMETERS[j]).limits().covers(TRUTH.parameter(PARAMETERS[j]));
        hits[j] += holds ? 1 : 0;
      }
      for (int j = 0; j < POINTS.length; j++) {
        double truth = TRUTH.derived(POINTS[j]).orElseThrow();
        boolean holds = intervals.interval(POINTS[j]).limits().covers(truth);
        hits[PARAMETERS.length + j] += holds ? 1 : 0;
      }
    }
    for (int hit : hits) {
      assertThat(hit / (double) WORLDS).isBetween(0.86, 0.94);
    }
  }
}
