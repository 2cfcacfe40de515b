package agro.season;

import static org.assertj.core.api.Assertions.assertThat;

import agro.report.ReadReport.Deed;
import agro.weather.DailyExtremes;
import agro.weather.DailyTemperatures;
import agro.weather.DayOrigin;
import agro.weather.Medium;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class SeasonTemperaturesTest {
  private static final LocalDate START = LocalDate.of(2024, 3, 1);

  private static DailyTemperatures days(String place, Medium medium, int first, int last) {
    var days = new ArrayList<DailyExtremes>();
    for (int i = first; i <= last; i++) {
      days.add(new DailyExtremes(START.plusDays(i), i % 7, 10 + i % 5));
    }
    return DailyTemperatures.of(place, medium, days, DayOrigin.OBSERVED);
  }

  private static final DailyTemperatures FIELD = days("field", Medium.shelterAir(), 5, 60);

  @Test
  void aNeighbourReachesFurtherOnBothSides() {
    var station = days("station", Medium.shelterAir(), -20, 80);
    var season =
        SeasonTemperatures.of(FIELD, Optional.of(station)).between(START, START.plusDays(70));
    var known = season.days().orElseThrow();
    assertThat(known.firstDay()).isEqualTo(START);
    assertThat(known.lastDay()).isEqualTo(START.plusDays(70));
    assertThat(known.place()).isEqualTo("field");
    assertThat(known.missingDays()).isEmpty();
    assertThat(season.report().entries(Deed.FILLED)).hasSize(2);
  }

  @Test
  void withoutANeighbourTheStartMustBeKnown() {
    var alone = SeasonTemperatures.of(FIELD, Optional.empty());
    assertThat(alone.between(START, START.plusDays(70)).days()).isEmpty();
    var later = alone.between(START.plusDays(5), START.plusDays(70));
    assertThat(later.days().orElseThrow().lastDay()).isEqualTo(START.plusDays(60));
    assertThat(later.report().entries(Deed.NOTED)).hasSize(1);
  }

  @Test
  void soilCannotBridgeAir() {
    var soil = days("bed", new Medium.Soil(0.06), -20, 80);
    var temperatures = SeasonTemperatures.of(FIELD, Optional.of(soil));
    assertThat(temperatures.offset()).isEmpty();
    assertThat(temperatures.report().entries(Deed.NOTED).get(0).text()).contains("soil");
  }

  @Test
  void fewCommonDaysAreNoOffset() {
    var station = days("station", Medium.shelterAir(), 50, 80);
    var temperatures = SeasonTemperatures.of(FIELD, Optional.of(station));
    assertThat(temperatures.offset()).isEmpty();
    assertThat(temperatures.report().entries(Deed.NOTED).get(0).text())
        .contains("11 days in common");
  }

  /** Bridged and interpolated days carry their errors; observed ones are exact. */
  @Test
  void filledDaysCarryTheirErrors() {
    var gappy = DailyTemperatures.builder(FIELD.firstDay(), FIELD.lastDay());
    FIELD.copyInto(gappy, FIELD.firstDay());
    var open = START.plusDays(30);
    gappy.put(open, Double.NaN, Double.NaN, DayOrigin.MISSING);
    var field = gappy.build("field", Medium.shelterAir());
    var warmer = DailyTemperatures.builder(START, START.plusDays(80));
    for (int i = 0; i <= 80; i++) {
      warmer.put(START.plusDays(i), i % 7 + i % 2, 12 + i % 5, DayOrigin.OBSERVED);
    }
    var station = warmer.build("station", Medium.shelterAir());
    var known =
        SeasonTemperatures.of(field, Optional.of(station))
            .between(START, START.plusDays(70))
            .days()
            .orElseThrow();
    assertThat(known.origin(open)).isEqualTo(DayOrigin.INTERPOLATED);
    assertThat(known.minStandardErrorCelsius(open)).isGreaterThan(1);
    assertThat(known.origin(START)).isEqualTo(DayOrigin.NEIGHBOUR);
    // Day to day the offset of the minima is 0 or 1 °C: a standard deviation of a half.
    assertThat(known.minStandardErrorCelsius(START)).isBetween(0.49, 0.52);
    assertThat(known.maxStandardErrorCelsius(START)).isBetween(0.0, 1e-9);
    assertThat(known.minStandardErrorCelsius(START.plusDays(20))).isZero();
  }
}
