package agro.demo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;

class TrueFlightTest {
  private static final LocalDate START = LocalDate.of(2024, 3, 1);

  /** Ten degree-days on every day. */
  private static HourlyScale evenScale(int days) {
    var sums = new double[days * 24 + 1];
    for (int hour = 0; hour < sums.length; hour++) {
      sums[hour] = hour * 10.0 / 24;
    }
    return new HourlyScale(START, sums);
  }

  @Test
  void sharesArePassedInTheEveningOfTheirNight() {
    var flight = new TrueFlight(1, evenScale(10), new double[] {0, 0.25, 0.5, 0.25});
    assertThat(flight.dateOf(0.25)).contains(START.plusDays(1));
    assertThat(flight.dateOf(0.5)).contains(START.plusDays(2));
    assertThat(flight.degreeDaysCOf(0.5)).isCloseTo((1.5 * 24 + 21) * 10.0 / 24, within(1e-9));
    assertThat(flight.shareInSeason()).isEqualTo(1);
  }

  @Test
  void aFlightThatTheColdCutsShortNeverReachesItsLaterShares() {
    var flight = new TrueFlight(3, evenScale(10), new double[] {0, 0.2, 0.2});
    assertThat(flight.dateOf(0.05)).isPresent();
    assertThat(flight.dateOf(0.5)).isEmpty();
    assertThat(flight.degreeDaysCOf(0.5)).isNaN();
    assertThat(flight.shareInSeason()).isCloseTo(0.4, within(1e-12));
  }

  @Test
  void theScaleIsReadBothWays() {
    var scale = evenScale(10);
    assertThat(scale.at(36)).isCloseTo(15, within(1e-9));
    assertThat(scale.hourOf(15)).isCloseTo(36, within(1e-9));
    assertThat(scale.hourOf(101)).isInfinite();
  }

  @Test
  void flightsOfAValeFollowEachOtherAtTheInventedInterval() {
    double sum = 0;
    int seasons = 0;
    for (long seed = 1; seed <= 5; seed++) {
      var vale = OsmereVale.of(seed);
      for (int year : OsmereVale.seasons()) {
        sum += vale.leekMothTruth(year).intervalDegreeDaysC(1);
        seasons++;
      }
    }
    // Egg to adult 440, first egg 25, and the mean delay of the other eggs.
    assertThat(sum / seasons).isBetween(475.0, 515.0);
  }
}
