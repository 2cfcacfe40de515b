package agro.weather.siting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import agro.ReferenceTable;
import agro.report.InputProblem;
import agro.weather.DailyTemperatures;
import agro.weather.DayOrigin;
import agro.weather.Medium;
import java.time.Duration;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Effects of siting on daily extremes, held against degree-days computed elsewhere. */
class SitingDegreeDaysTest {

  private static final LocalDate DAY = LocalDate.of(2021, 7, 1);

  /** Minimum, maximum and the degree-days without and with a horizontal cutoff. */
  private static Map<String, double[]> cases() {
    var cases = new HashMap<String, double[]>();
    for (var line : ReferenceTable.read(SitingDegreeDaysTest.class, "siting-degree-days.csv")) {
      cases.put(
          line.getField("case"),
          new double[] {
            ReferenceTable.number(line, "min"),
            ReferenceTable.number(line, "max"),
            ReferenceTable.number(line, "none"),
            ReferenceTable.number(line, "horizontal")
          });
    }
    return cases;
  }

  private static DailyTemperatures day(double low, double high, int days) {
    var builder = DailyTemperatures.builder(DAY, DAY.plusDays(days - 1));
    for (int i = 0; i < days; i++) {
      builder.putAt(i, low, high, DayOrigin.OBSERVED);
    }
    return builder.build("Field", Medium.shelterAir());
  }

  @Test
  void sunOnTheSensorAddsLessThanItSeems() {
    var cases = cases();
    double[] hot = cases.get("hot day");
    double[] sunny = cases.get("hot day with sun on the sensor");
    var shielded = day(hot[0], hot[1], 1);

    var spoilt = RadiationError.ofMaximum(3).spoil(shielded);

    assertThat(spoilt.maxCelsius(DAY)).isEqualTo(sunny[1]);
    assertThat(spoilt.minCelsius(DAY)).isEqualTo(sunny[0]);
    assertThat(spoilt.origin(DAY)).isEqualTo(DayOrigin.MODELLED);
    assertThat(sunny[2] - hot[2]).isCloseTo(1.5, within(1e-4));
    assertThat(sunny[3] - hot[3]).isCloseTo(0.509, within(5e-4));
    assertThat(RadiationError.ofMaximum(3).presentation().toText()).contains("1.5", "0.5");
  }

  @Test
  void degreesOfMicroclimate() {
    var cases = cases();
    double shelter = cases.get("shelter")[2];

    assertThat(cases.get("one degree warmer")[2] - shelter).isCloseTo(0.6855, within(1e-4));
    assertThat(cases.get("two degrees warmer")[2] - shelter).isCloseTo(1.4109, within(1e-4));
    assertThat(cases.get("cool day one degree warmer")[2] / cases.get("cool day")[2])
        .isCloseTo(1.41, within(0.005));
    var field = new HeightLapse(0.65, 0.65, 0).carry(day(5, 25, 1), 300, 300 - 100 / 0.65);
    assertThat(field.days().minCelsius(DAY)).isCloseTo(6, within(1e-12));
    assertThat(field.days().maxCelsius(DAY)).isCloseTo(26, within(1e-12));
  }

  @Test
  void soilOfTheTable() {
    for (var name : new String[] {"soil above 6", "cool soil above 6"}) {
      double[] soil = cases().get(name);
      double[] air = cases().get(name.replace("soil", "air"));
      var estimate =
          SoilFromAir.at(0.06, SoilDiffusivity.ofSquareMetresPerSecond(0.5e-6))
              .estimate(day(air[0], air[1], 40))
              .soil();
      assertThat(estimate.minCelsius(estimate.lastDay())).isCloseTo(soil[0], within(1e-5));
      assertThat(estimate.maxCelsius(estimate.lastDay())).isCloseTo(soil[1], within(1e-5));
    }
    assertThat(cases().get("cool soil above 6")[2] / cases().get("cool air above 6")[2])
        .isCloseTo(0.6, within(0.005));
  }

  @Test
  void standardLapseAndItsPage() {
    var estimate = HeightLapse.standard().withStandardError(1.5).carry(day(5, 25, 3), 200, 500);

    assertThat(estimate.minimumShiftCelsius()).isCloseTo(-1.95, within(1e-12));
    assertThat(estimate.days().maxCelsius(DAY)).isCloseTo(23.05, within(1e-12));
    assertThat(estimate.days().origin(DAY)).isEqualTo(DayOrigin.MODELLED);
    assertThat(estimate.days().minStandardErrorCelsius(DAY)).isEqualTo(1.5);
    assertThat(estimate.presentation().toText()).contains("ISO 2533", "drains", "-1.95 °C");
    assertThatThrownBy(() -> new HeightLapse(6.5, 6.5, 0))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("6.5 °C per km");
  }

  @Test
  void whatMayBeComparedWithWhat() {
    var station =
        Siting.of(Medium.shelterAir())
            .with(SensorShield.NATURALLY_VENTILATED)
            .reading(ExtremeKind.EVERY_MOMENT, Duration.ZERO);
    var hourly = station.reading(ExtremeKind.INSTANTS, Duration.ofHours(1));
    var crop =
        Siting.of(new Medium.CanopyAir(0.3))
            .with(SensorShield.NONE)
            .reading(ExtremeKind.INSTANTS, Duration.ofMinutes(15));
    var soil = Siting.of(new Medium.Soil(0.06));

    assertThat(station.comparableWith(station)).isTrue();
    assertThat(station.differencesFrom(hourly)).hasSize(1);
    assertThat(station.differencesFrom(crop))
        .anyMatch(line -> line.contains("offset"))
        .anyMatch(line -> line.contains("sun"));
    assertThat(station.differencesFrom(soil)).anyMatch(line -> line.contains("different"));
    assertThat(Siting.of(new Medium.ShelterAir(0.5)).differencesFrom(station))
        .anyMatch(line -> line.contains("nearer to the ground"));
    assertThat(soil.differencesFrom(Siting.of(new Medium.Soil(0.2))))
        .anyMatch(line -> line.contains("fades with depth"));
    assertThat(station.comparison(soil).toText()).contains("buried", "soil at 6 cm");
    assertThatThrownBy(() -> Siting.of(Medium.shelterAir()).with(SensorShield.SOIL))
        .isInstanceOf(InputProblem.class);
  }
}
