package agro.development;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import agro.report.InputProblem;
import agro.units.Temperature;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.SplittableRandom;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class DegreeDayBatchTest {

  private static final Thresholds BETWEEN =
      Thresholds.between(new Temperature(10), new Temperature(30));
  private static final DegreeDayModel MODEL =
      DegreeDayModel.singleSine(BETWEEN, UpperCutoff.HORIZONTAL);

  private final SplittableRandom random = new SplittableRandom(3);

  private double[] minima(int days) {
    var min = new double[days];
    Arrays.setAll(min, i -> 50 * random.nextDouble() - 15);
    return min;
  }

  private double[] maxima(double[] min) {
    var max = new double[min.length];
    Arrays.setAll(max, i -> min[i] + 20 * random.nextDouble());
    return max;
  }

  @ParameterizedTest
  @EnumSource(DegreeDayMethod.class)
  void everyMethodAgreesWithItsModel(DegreeDayMethod method) {
    var min = minima(700);
    var max = maxima(min);
    int refused = 0;
    for (var cutoff : UpperCutoff.values()) {
      DegreeDayModel model;
      double[] expected;
      try {
        model = new DegreeDayModel(method, BETWEEN, cutoff);
        expected = model.degreeDaysC(min, max);
      } catch (InputProblem notDefined) {
        refused++;
        continue;
      }
      assertThat(DegreeDayBatch.of(model).degreeDaysC(min, max))
          .containsExactly(expected, within(1e-9));
    }
    boolean needsMore =
        method == DegreeDayMethod.SINE_AND_DECAY || method == DegreeDayMethod.SUM_OVER_READINGS;
    assertThat(refused).isEqualTo(needsMore ? 4 : method.curve().isPresent() ? 0 : 2);
  }

  @Test
  void resultDoesNotDependOnTheNumberOfThreads() {
    var min = minima(100_003);
    var max = maxima(min);
    var alone = DegreeDayBatch.of(MODEL).withThreads(1).degreeDaysC(min, max);
    for (int threads : new int[] {2, 3, 8}) {
      assertThat(DegreeDayBatch.of(MODEL).withThreads(threads).degreeDaysC(min, max))
          .isEqualTo(alone);
    }
  }

  @Test
  void resultMayGoIntoAnArrayOfTemperatures() {
    var min = minima(1000);
    var max = maxima(min);
    var expected = DegreeDayBatch.of(MODEL).degreeDaysC(min, max);
    DegreeDayBatch.of(MODEL).degreeDaysC(min, max, max);
    assertThat(max).isEqualTo(expected);
  }

  @ParameterizedTest
  @EnumSource(UpperCutoff.class)
  void aDayWithoutATemperatureHasNoDegreeDaysAndItsNeighboursHave(UpperCutoff cutoff) {
    var min = minima(300);
    var max = maxima(min);
    var model = DegreeDayModel.singleSine(BETWEEN, cutoff);
    var whole = DegreeDayBatch.of(model).degreeDaysC(min, max);
    min[17] = Double.NaN;
    max[18] = Double.NaN;
    min[280] = Double.NEGATIVE_INFINITY;
    max[281] = Double.POSITIVE_INFINITY;
    var found = DegreeDayBatch.of(model).degreeDaysC(min, max);
    for (int i = 0; i < 300; i++) {
      if (i == 17 || i == 18 || i == 280 || i == 281) {
        assertThat(found[i]).as("%s", i).isNaN();
      } else {
        assertThat(found[i]).as("%s", i).isEqualTo(whole[i]);
      }
    }
  }

  @Test
  void theFirstSwappedDayIsToldWhateverTheNumberOfThreads() {
    var min = minima(200_000);
    var max = maxima(min);
    for (int day : new int[] {40_001, 90_000, 150_000}) {
      min[day] = 20;
      max[day] = 10;
    }
    for (int threads = 1; threads <= 4; threads++) {
      var batch = DegreeDayBatch.of(MODEL).withThreads(threads);
      assertThatThrownBy(() -> batch.degreeDaysC(min, max))
          .isInstanceOf(InputProblem.class)
          .hasMessageContaining("place 40001 ")
          .hasMessageContaining("minimum 20.0")
          .hasMessageContaining("not above the maximum");
    }
  }

  @Test
  void arraysOfDifferentLengthAreRefused() {
    var batch = DegreeDayBatch.of(MODEL);
    assertThatThrownBy(() -> batch.degreeDaysC(new double[3], new double[4]))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("3 daily minima and 4 maxima");
    assertThatThrownBy(() -> batch.degreeDaysC(new double[3], new double[3], new double[2]))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("2 places for the result");
    assertThatThrownBy(() -> batch.withThreads(0)).isInstanceOf(InputProblem.class);
  }

  @Test
  void noDaysAreNoProblem() {
    assertThat(DegreeDayBatch.of(MODEL).degreeDaysC(new double[0], new double[0])).isEmpty();
  }

  @Test
  void progressIsToldToTheEndAndInOrder() {
    var min = minima(100_000);
    var told = new ArrayList<Long>();
    DegreeDayBatch.of(MODEL)
        .withThreads(2)
        .withProgress(
            (what, done, total) -> {
              assertThat(total).isEqualTo(7);
              told.add(done);
              return true;
            })
        .degreeDaysC(min, maxima(min));
    assertThat(told).isSorted().endsWith(7L);
  }

  @Test
  void aCancelledBatchEndsSoon() {
    var min = minima(1_000_000);
    var max = maxima(min);
    var result = new double[min.length];
    Arrays.fill(result, -1);
    var calls = new AtomicInteger();
    var batch =
        DegreeDayBatch.of(MODEL)
            .withThreads(1)
            .withProgress((what, done, total) -> calls.incrementAndGet() < 3);
    assertThatThrownBy(() -> batch.degreeDaysC(min, max, result))
        .isInstanceOf(CancellationException.class);
    assertThat(result[result.length - 1]).isEqualTo(-1);
  }
}
