package agro.generation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.hipparchus.distribution.continuous.TDistribution;
import org.hipparchus.random.RandomDataGenerator;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The weather ahead as a predictive distribution over few past years. */
class WeatherAheadTest {

  private static final double KNOWN_SUM = 61 * 4;

  @Test
  void coversAboutNineInTenOfExchangeableYears() {
    assertThat(coverage(8, 400)).isBetween(0.85, 0.945);
  }

  @ParameterizedTest
  @ValueSource(ints = {5, 10, 15, 30})
  @Tag("slow")
  void coversNineInTenOfExchangeableYears(int members) {
    var coverage = coverage(members, 2000);
    System.out.printf(Locale.ROOT, "%d past years: coverage %.3f%n", members, coverage);
    assertThat(coverage).isBetween(0.87, 0.93);
  }

  /** The truth is one more year of the same kind; its date is reached in almost every year. */
  private static double coverage(int members, int draws) {
    var random = new RandomDataGenerator(41);
    var target = 500.0;
    var inside = 0;
    for (var draw = 0; draw < draws; draw++) {
      var weather = new WeatherAhead(YearsAlike.season(years(random, members)));
      var dates = dates(weather, KNOWN_SUM + target);
      var truth = 61 + YearsAlike.daysUntil(target, YearsAlike.year(random));
      inside += dates.quantileDays(0.05) <= truth && truth <= dates.quantileDays(0.95) ? 1 : 0;
    }
    return (double) inside / draws;
  }

  @Test
  void chanceOfNeverIsThatOfTheSumAtTheEnd() {
    var years = years(new RandomDataGenerator(3), 12);
    var ends = years.stream().mapToDouble(year -> Arrays.stream(year).sum()).toArray();
    var mean = Arrays.stream(ends).average().orElseThrow();
    var sd = Math.sqrt(Arrays.stream(ends).map(x -> (x - mean) * (x - mean)).sum() / 11);
    var weather = new WeatherAhead(YearsAlike.season(years));
    for (var target : new double[] {mean - 2 * sd, mean - sd, mean, mean + sd, mean + 2 * sd}) {
      var direct =
          new TDistribution(11)
              .cumulativeProbability((target - mean) / (sd * Math.sqrt(13.0 / 12)));
      assertThat(dates(weather, KNOWN_SUM + target).chanceNotThisSeason())
          .isCloseTo(direct, within(1.0 / WeatherAhead.OUTCOMES));
    }
  }

  @Test
  void yearsThatNeverReachStayInEveryQuantile() {
    var years = years(new RandomDataGenerator(4), 15);
    var ends = years.stream().mapToDouble(year -> Arrays.stream(year).sum()).sorted().toArray();
    var weather = new WeatherAhead(YearsAlike.season(years));
    var dates = dates(weather, KNOWN_SUM + ends[4]);
    assertThat(dates.chanceNotThisSeason()).isBetween(0.1, 0.5);
    assertThat(dates.quantile(1 - dates.chanceNotThisSeason() - 0.02)).isPresent();
    assertThat(dates.quantile(1 - dates.chanceNotThisSeason() + 0.02)).isEmpty();
    assertThat(dates.interval(0.9).from()).isPresent();
    assertThat(dates.interval(0.9).to()).isEmpty();
    var never = dates(weather, KNOWN_SUM + 1e5);
    assertThat(never.chanceNotThisSeason()).isOne();
    assertThat(never.median()).isEmpty();
  }

  @Test
  void sumsNeverFallAndKeepTheirOrder() {
    var weather = new WeatherAhead(YearsAlike.season(years(new RandomDataGenerator(5), 4)));
    for (var i = 0; i < WeatherAhead.OUTCOMES; i++) {
      var sums = weather.outcome(i);
      assertThat(sums[0]).isZero();
      for (var d = 1; d < sums.length; d++) {
        assertThat(sums[d]).isGreaterThanOrEqualTo(sums[d - 1]);
        if (i > 0) {
          assertThat(sums[d]).isGreaterThanOrEqualTo(weather.outcome(i - 1)[d]);
        }
      }
    }
  }

  /** Equal years leave no spread: the date is the one of every year. */
  @Test
  void equalYearsGiveOneDate() {
    var year = YearsAlike.year(new RandomDataGenerator(6));
    var weather = new WeatherAhead(YearsAlike.season(List.of(year, year, year)));
    var expected = 61 + YearsAlike.daysUntil(300, year);
    var dates = dates(weather, KNOWN_SUM + 300);
    assertThat(dates.quantileDays(0.01)).isCloseTo(expected, within(1e-9));
    assertThat(dates.quantileDays(0.99)).isCloseTo(expected, within(1e-9));
    assertThat(weather.daysUntil(-3, year)).isZero();
    assertThat(weather.daysUntil(10, year)).isCloseTo(2.5, within(1e-9));
  }

  @Test
  void tellsTheStepAtTheSeam() {
    var flat = new double[138];
    Arrays.fill(flat, 9);
    var step = new WeatherAhead(YearsAlike.season(List.of(flat, flat, flat))).stepAtSeam();
    assertThat(step[0]).isCloseTo(4, within(1e-12));
    assertThat(step[1]).isCloseTo(9, within(1e-12));
  }

  private static List<double[]> years(RandomDataGenerator random, int number) {
    var years = new ArrayList<double[]>();
    for (var i = 0; i < number; i++) {
      years.add(YearsAlike.year(random));
    }
    return years;
  }

  private static DateDistribution dates(WeatherAhead weather, double degreeDaysC) {
    var days = new double[WeatherAhead.OUTCOMES];
    Arrays.setAll(days, i -> weather.daysUntil(degreeDaysC, weather.outcome(i)));
    return DateDistribution.ofOutcomes(YearsAlike.FIRST, days);
  }
}
