package agro.development;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import agro.report.InputProblem;
import agro.units.Temperature;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.SplittableRandom;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/** Days by counting against days by a plain loop over every member, draw and day. */
class ThermalTimeEnsembleTest {

  private static final LocalDate FIRST = LocalDate.of(2001, 3, 1);
  private static final double[] MULTIPLES = {0.9, 1, 1.1, 2};
  private static final DegreeDayModel MODEL =
      DegreeDayModel.singleSine(Thresholds.above(new Temperature(7.4)), UpperCutoff.NONE);

  private static StationSums sums(int members, int days, long seed, double... missing) {
    var random = new SplittableRandom(seed);
    var min = new double[members * days];
    var max = new double[min.length];
    for (int i = 0; i < min.length; i++) {
      min[i] = 1 + 12 * Math.sin(Math.PI * (i % days) / days) + 6 * random.nextDouble() - 3;
      max[i] = min[i] + 12 * random.nextDouble();
    }
    for (double index : missing) {
      min[(int) index] = Double.NaN;
    }
    return DegreeDayBatch.of(MODEL).accumulate(FIRST, days, min, max);
  }

  private static int plainDay(StationSums sums, int member, LocalDate start, double wanted) {
    for (int day = 0; !start.plusDays(day).isAfter(sums.lastDay()); day++) {
      if (sums.degreeDaysC(member, start, start.plusDays(day)) >= wanted) {
        return day;
      }
    }
    return Integer.MAX_VALUE;
  }

  private static void sameDays(EventDays found, int... days) {
    Arrays.sort(days);
    assertThat(found.members()).isEqualTo(days.length);
    for (int day = -1; day < 130; day++) {
      int wanted = day;
      assertThat(found.countOn(day))
          .as("day %s", day)
          .isEqualTo(Arrays.stream(days).filter(each -> each == wanted).count());
      assertThat(found.shareBy(FIRST.plusDays(10L + day)))
          .isEqualTo(
              Arrays.stream(days).filter(each -> each <= wanted).count() / (double) days.length);
    }
    for (double p : new double[] {0, 0.05, 0.25, 0.5, 0.8, 0.95, 1}) {
      double rank = (days.length - 1) * p;
      double lower = day(days[(int) rank]);
      double upper = day(days[(int) Math.ceil(rank)]);
      double expected = lower == upper ? lower : lower + (rank - (int) rank) * (upper - lower);
      assertThat(found.quantile(p)).isEqualTo(expected);
    }
    assertThat(found.dateOf(1).isPresent()).isEqualTo(days[days.length - 1] < Integer.MAX_VALUE);
    found
        .dateOf(0.5)
        .ifPresent(
            date ->
                assertThat(date).isEqualTo(FIRST.plusDays(10L + days[(days.length + 1) / 2 - 1])));
  }

  private static double day(int day) {
    return day == Integer.MAX_VALUE ? Double.POSITIVE_INFINITY : day;
  }

  @Property(tries = 30, seed = "31")
  void everyMemberWithItsOwnRequirement(
      @ForAll long seed, @ForAll @IntRange(min = 20, max = 500) int mean) {
    int members = 17;
    var sums = sums(members, 120, seed);
    var random = new SplittableRandom(seed);
    var requirements = new double[members];
    Arrays.setAll(requirements, i -> mean * (0.8 + 0.4 * random.nextDouble()));
    var start = FIRST.plusDays(10);
    var found = ThermalTimeEnsemble.of(sums, start).each(requirements, MULTIPLES);
    for (int k = 0; k < MULTIPLES.length; k++) {
      var days = new int[members];
      for (int i = 0; i < members; i++) {
        days[i] = plainDay(sums, i, start, MULTIPLES[k] * requirements[i]);
      }
      sameDays(found.get(k), days);
    }
  }

  @Property(tries = 30, seed = "32")
  void everyMemberWithEveryDraw(
      @ForAll long seed, @ForAll @IntRange(min = -5, max = 500) int mean) {
    int members = 4;
    int count = 11;
    var sums = sums(members, 120, seed);
    var random = new SplittableRandom(seed);
    var draws = new double[count];
    Arrays.setAll(draws, i -> mean * (0.5 + random.nextDouble()));
    draws[3] = draws[4];
    var start = FIRST.plusDays(10);
    var ensemble = ThermalTimeEnsemble.of(sums, start);
    // A draw that is exactly a sum is reached on the day of that sum.
    draws[5] = sums.degreeDaysC(1, start, start.plusDays(60));
    var pooled = ensemble.crossed(draws, MULTIPLES);
    var single = ensemble.crossedByMember(draws, MULTIPLES);
    for (int k = 0; k < MULTIPLES.length; k++) {
      var all = new int[members * count];
      for (int i = 0; i < members; i++) {
        var days = new int[count];
        for (int j = 0; j < count; j++) {
          days[j] = plainDay(sums, i, start, MULTIPLES[k] * draws[j]);
        }
        System.arraycopy(days, 0, all, i * count, count);
        sameDays(single.get(i).get(k), days);
      }
      sameDays(pooled.get(k), all);
    }
  }

  @Test
  void membersThatNeverReachTheSumAreKept() {
    var sums = sums(3, 100, 5);
    double most = Arrays.stream(sums.degreeDaysC(FIRST, sums.lastDay())).max().orElseThrow();
    var ensemble = ThermalTimeEnsemble.of(sums, FIRST);
    var found = ensemble.each(new double[] {10, 10, most + 1}, 1).get(0);
    assertThat(found.shareReached()).isCloseTo(2 / 3.0, within(1e-12));
    assertThat(found.quantile(1)).isEqualTo(Double.POSITIVE_INFINITY);
    assertThat(found.quantile(0.5)).isFinite();
    assertThat(found.dateOf(0.9)).isEmpty();
    assertThat(found.presentation().toText())
        .contains("66.7 %", "not within the series", "product label");
  }

  @Test
  void badInputIsRefused() {
    var sums = sums(2, 100, 5, 150);
    assertThatThrownBy(() -> ThermalTimeEnsemble.of(sums, FIRST))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("station 2: a day is missing");
    var ensemble = ThermalTimeEnsemble.of(sums, FIRST.plusDays(51));
    assertThat(ensemble.members()).isEqualTo(2);
    assertThatThrownBy(() -> ensemble.each(new double[] {1}, 1)).isInstanceOf(InputProblem.class);
    assertThatThrownBy(() -> ensemble.crossed(new double[0], 1)).isInstanceOf(InputProblem.class);
    assertThatThrownBy(() -> ensemble.crossed(new double[] {Double.NaN}, 1))
        .isInstanceOf(InputProblem.class);
    assertThatThrownBy(() -> ensemble.crossed(new double[] {5}, 0))
        .isInstanceOf(InputProblem.class);
    var event = ensemble.crossed(new double[] {5}, 1).get(0);
    assertThatThrownBy(() -> event.quantile(1.1)).isInstanceOf(InputProblem.class);
    assertThatThrownBy(() -> event.dateOf(0)).isInstanceOf(InputProblem.class);
  }
}
