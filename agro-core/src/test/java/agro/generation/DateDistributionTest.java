package agro.generation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Dates with chances, "not this season" among them. */
class DateDistributionTest {

  private static final LocalDate MARCH = LocalDate.of(2026, 3, 1);
  private static final double NEVER = Double.POSITIVE_INFINITY;

  @Test
  void quantilesIncludeNotThisSeason() {
    var dates = DateDistribution.ofOutcomes(MARCH, new double[] {NEVER, 3.5, 1.2, NEVER, 2});
    assertThat(dates.chanceNotThisSeason()).isCloseTo(0.4, within(1e-12));
    assertThat(dates.quantile(0.1)).contains(MARCH.plusDays(1));
    assertThat(dates.median()).contains(MARCH.plusDays(3));
    assertThat(dates.quantile(0.61)).isEmpty();
    assertThat(dates.quantileDays(0.61)).isEqualTo(NEVER);
    var interval = dates.interval(0.5);
    assertThat(interval.from()).contains(MARCH.plusDays(2));
    assertThat(interval.to()).isEmpty();
    assertThat(interval.probability()).isEqualTo(0.5);
  }

  /** A day counts to its end; what comes at the very start of the next day has not come. */
  @Test
  void chancesByADay() {
    var dates = DateDistribution.ofOutcomes(MARCH, new double[] {0, 0.99, 1, NEVER});
    assertThat(dates.chanceBy(MARCH.minusDays(1))).isZero();
    assertThat(dates.chanceBy(MARCH)).isEqualTo(0.5);
    assertThat(dates.chanceBy(MARCH.plusDays(1))).isEqualTo(0.75);
    assertThat(dates.chanceBy(MARCH.plusYears(5))).isEqualTo(0.75);
  }

  @Test
  void oneOutcomeIsEveryQuantile() {
    var certain = DateDistribution.ofOutcomes(MARCH, new double[] {10.9});
    assertThat(certain.quantile(0.001)).contains(MARCH.plusDays(10));
    assertThat(certain.quantile(0.999)).contains(MARCH.plusDays(10));
    assertThat(certain.chanceNotThisSeason()).isZero();
    var never = DateDistribution.ofOutcomes(MARCH, new double[] {NEVER});
    assertThat(never.median()).isEmpty();
    assertThat(never.chanceNotThisSeason()).isOne();
  }

  @Test
  void laterChangesOfTheArrayChangeNothing() {
    var days = new double[] {1, 2, 3};
    var dates = DateDistribution.ofOutcomes(MARCH, days);
    days[1] = 99;
    assertThat(dates.median()).contains(MARCH.plusDays(2));
  }

  @Test
  void refusesWhatIsNoDate() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> DateDistribution.ofOutcomes(MARCH, new double[0]))
        .withMessageContaining("at least one");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> DateDistribution.ofOutcomes(MARCH, new double[] {1, Double.NaN}))
        .withMessageContaining("numbers");
    assertThatIllegalArgumentException()
        .as("minus infinity is no way to say that a date does not come")
        .isThrownBy(
            () -> DateDistribution.ofOutcomes(MARCH, new double[] {1, Double.NEGATIVE_INFINITY}));
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, 1, -0.2, Double.NaN})
  void refusesWhatIsNoProbability(double probability) {
    var dates = DateDistribution.ofOutcomes(MARCH, new double[] {1});
    assertThatIllegalArgumentException()
        .isThrownBy(() -> dates.quantile(probability))
        .withMessageContaining("between 0 and 1");
  }
}
