package agro.development;

import static agro.ReferenceTable.number;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import agro.ReferenceTable;
import agro.units.Temperature;
import java.util.Locale;
import java.util.SplittableRandom;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The figures of blocks of days against decimal arithmetic, integration in R and the model. */
class DegreeDayBatchAccuracyTest {

  private static final double PROMISED = 1e-9;
  private static final double[] SMALL = {0, 1e-300, 1e-14, 1e-9, 1e-6, 1e-3};

  private static Thresholds thresholds(double lower, double upper) {
    return Thresholds.between(new Temperature(lower), new Temperature(upper));
  }

  private static void agrees(
      CrossingCurve curve, double[] min, double[] max, double lower, double upper) {
    var found = new double[min.length];
    for (var cutoff : UpperCutoff.values()) {
      new CrossingBlock(curve, thresholds(lower, upper), cutoff)
          .degreeDays(min, max, 0, min.length, found);
      for (int i = 0; i < min.length; i++) {
        assertThat(found[i])
            .as("%s, %s, %s to %s, %s to %s", curve, cutoff, min[i], max[i], lower, upper)
            .isCloseTo(
                new ExactDay(curve, min[i], max[i]).degreeDays(lower, upper, cutoff),
                within(PROMISED))
            .isNotNegative();
      }
    }
  }

  /** Days of every size within ±60 °C, with extremes at, beside and far from the thresholds. */
  private static void fill(
      double[] min, double[] max, double lower, double upper, SplittableRandom random) {
    for (int i = 0; i < min.length; i++) {
      double level = random.nextBoolean() ? lower : upper;
      double range =
          random.nextInt(3) == 0 ? SMALL[random.nextInt(SMALL.length)] : 120 * random.nextDouble();
      double first =
          switch (random.nextInt(5)) {
            case 0 -> level;
            case 1 -> Math.nextUp(level);
            case 2 -> Math.nextDown(level);
            default -> 120 * random.nextDouble() - 60;
          };
      double second =
          Math.min(60, Math.max(-60, random.nextBoolean() ? first + range : first - range));
      if (random.nextInt(8) == 0) {
        second = 2 * level - first;
      }
      min[i] = Math.min(first, second);
      max[i] = Math.max(first, second);
    }
  }

  @Property(tries = 25, seed = "1969")
  void everyDayIsWithinThePromise(
      @ForAll @DoubleRange(min = -60, max = 59) double lower,
      @ForAll @DoubleRange(min = 0.01, max = 60) double width,
      @ForAll long seed) {
    var min = new double[60];
    var max = new double[60];
    double upper = Math.min(60, lower + width);
    fill(min, max, lower, upper, new SplittableRandom(seed));
    for (var curve : CrossingCurve.values()) {
      agrees(curve, min, max, lower, upper);
    }
  }

  @ParameterizedTest
  @EnumSource(CrossingCurve.class)
  void theWidestDaysAreWithinThePromiseAtEveryThreshold(CrossingCurve curve) {
    for (double lower = -59.5; lower < 59; lower += 3.7) {
      agrees(curve, new double[] {-60, -60, 0}, new double[] {60, 0, 60}, lower, lower + 0.5);
      agrees(curve, new double[] {-60, -60, 0}, new double[] {60, 0, 60}, -60, lower);
    }
  }

  @ParameterizedTest
  @EnumSource(UpperCutoff.class)
  void agreesWithNumericalIntegrationInR(UpperCutoff cutoff) {
    var lines =
        ReferenceTable.read(DegreeDayBatchAccuracyTest.class, "single-sine-random-days.csv");
    assertThat(lines).hasSize(500);
    for (var line : lines) {
      var model =
          DegreeDayModel.singleSine(
              thresholds(number(line, "lower"), number(line, "upper")), cutoff);
      var found =
          DegreeDayBatch.of(model)
              .degreeDaysC(new double[] {number(line, "min")}, new double[] {number(line, "max")});
      assertThat(found[0])
          .isCloseTo(number(line, cutoff.name().toLowerCase(Locale.ROOT)), within(PROMISED));
    }
  }

  /** The closed form with the arcsine of the JDK, on many days. */
  @Test
  void agreesWithTheClosedFormOnManyDays() {
    int days = 200_000;
    var random = new SplittableRandom(7);
    var min = new double[days];
    var max = new double[days];
    for (int i = 0; i < days; i++) {
      min[i] = 60 * random.nextDouble() - 30;
      max[i] = min[i] + 25 * random.nextDouble();
    }
    for (var cutoff : UpperCutoff.values()) {
      var model = DegreeDayModel.singleSine(thresholds(10, 30), cutoff);
      var found = DegreeDayBatch.of(model).degreeDaysC(min, max);
      double worst = 0;
      for (int i = 0; i < days; i++) {
        worst = Math.max(worst, Math.abs(found[i] - model.degreeDaysC(min[i], max[i])));
      }
      assertThat(worst).as("%s", cutoff).isLessThan(PROMISED);
    }
  }
}
