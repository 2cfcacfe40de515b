package agro.notebook.figure;

import static org.assertj.core.api.Assertions.assertThat;

import org.hipparchus.distribution.discrete.PascalDistribution;
import org.hipparchus.distribution.discrete.PoissonDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Round steps, chances in words, and the band of the counts. */
class AxesTest {

  @ParameterizedTest
  @CsvSource({"0, 1556, 100", "0, 24, 2", "-5, 19, 2", "0, 1, 0.1", "-2, 42, 5", "0, 16, 1"})
  void stepsAreRound(double from, double to, double step) {
    assertThat(NumberAxis.step(from, to)).isEqualTo(step);
  }

  @ParameterizedTest
  @CsvSource({
    "0, below 1 %",
    "0.004, below 1 %",
    "0.07, 7 %",
    "0.994, above 99 %",
    "1, above 99 %",
  })
  void chancesNeverClaimMoreThanWasComputed(double chance, String words) {
    assertThat(FigureWords.chance(chance)).isEqualTo(words);
  }

  @ParameterizedTest
  @CsvSource({"0, 0.0 °C·d", "0.01, below 0.1 °C·d", "0.05, 0.1 °C·d", "12.34, 12.3 °C·d"})
  void aLittleIsNotNothing(double degreeDaysC, String words) {
    assertThat(FigureWords.degreeDaysFine(degreeDaysC)).isEqualTo(words);
  }

  /** Against the Pascal distribution of Hipparchus: failures before the k-th success. */
  @ParameterizedTest
  @CsvSource({"0.1, 12, 4", "0.9, 12, 4", "0.5, 0.3, 1", "0.9, 250, 2", "0.95, 2000, 7"})
  void bandIsTheNegativeBinomials(double probability, double mean, int size) {
    var outside = new PascalDistribution(size, size / (size + mean));
    assertThat(CountBand.quantile(probability, mean, size))
        .isEqualTo(outside.inverseCumulativeProbability(probability));
  }

  @ParameterizedTest
  @CsvSource({"0.1, 4", "0.9, 4", "0.9, 900"})
  void bandWithoutExtraScatterIsThePoissons(double probability, double mean) {
    assertThat(CountBand.quantile(probability, mean, Double.POSITIVE_INFINITY))
        .isEqualTo(new PoissonDistribution(mean).inverseCumulativeProbability(probability));
  }

  @Test
  void nothingComesOfAMeanOfZero() {
    assertThat(CountBand.quantile(0.9, 0, 1)).isZero();
    assertThat(CountBand.quantile(0.9, Double.NaN, 1)).isZero();
  }
}
