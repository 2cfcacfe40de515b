package agro.weather.siting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import agro.ReferenceTable;
import agro.report.InputProblem;
import agro.weather.DailyTemperatures;
import agro.weather.DayOrigin;
import agro.weather.Medium;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;

class SoilFromAirTest {

  private static final LocalDate START = LocalDate.of(2020, 1, 1);

  private static DailyTemperatures constant(double low, double high, int days) {
    var builder = DailyTemperatures.builder(START, START.plusDays(days - 1));
    for (int i = 0; i < days; i++) {
      builder.putAt(i, low, high, DayOrigin.OBSERVED);
    }
    return builder.build("Field", Medium.shelterAir());
  }

  @Test
  void wavesAgreeWithTheSolutionByFiniteDifferences() {
    for (var line : ReferenceTable.read(getClass(), "soil-waves.csv")) {
      var wave =
          new DampedWave(
              SoilDiffusivity.ofSquareMetresPerSecond(ReferenceTable.number(line, "kappa")),
              ReferenceTable.number(line, "period_hours"),
              ReferenceTable.number(line, "depth"));
      double lag = ReferenceTable.number(line, "lag_hours");
      assertThat(wave.amplitudeFactor())
          .isCloseTo(ReferenceTable.number(line, "share"), within(2e-4));
      assertThat(wave.lagHours()).isCloseTo(lag, within(0.005 * lag));
    }
  }

  @Test
  void workedExampleAtSixCentimetres() {
    var wave = DampedWave.daily(SoilDiffusivity.ofSquareMetresPerSecond(0.5e-6), 0.06);

    assertThat(wave.dampingDepthMetres()).isCloseTo(0.1173, within(5e-5));
    assertThat(wave.amplitudeFactor()).isCloseTo(0.5995, within(5e-5));
    assertThat(wave.lagHours()).isCloseTo(1.95, within(0.005));
    assertThat(wave.working().toText()).contains("0.1173 m", "0.5995", "1.95 h");
  }

  @Test
  void steadyAirGivesItsMeanAndTheDampedSwing() {
    var model = SoilFromAir.at(0.06, SoilDiffusivity.ofSquareMetresPerSecond(0.5e-6));

    var soil = model.estimate(constant(5, 25, 60)).soil();

    assertThat(soil.medium()).isEqualTo(new Medium.Soil(0.06));
    assertThat(soil.originAt(59)).isEqualTo(DayOrigin.MODELLED);
    assertThat(soil.minCelsius(soil.lastDay())).isCloseTo(15 - 5.995, within(1e-3));
    assertThat(soil.maxCelsius(soil.lastDay())).isCloseTo(15 + 5.995, within(1e-3));
  }

  @Test
  void yearlyWaveIsDampedAndDelayedAsTheFormulaSays() {
    double depth = 0.3;
    var diffusivity = SoilKind.CLAY_WET.diffusivity();
    int days = 4 * 1461;
    var builder = DailyTemperatures.builder(START, START.plusDays(days - 1));
    for (int i = 0; i < days; i++) {
      double mean = 10 + 10 * Math.cos(2 * Math.PI * (i + 0.5) / 365.25);
      builder.putAt(i, mean, mean, DayOrigin.OBSERVED);
    }
    var air = builder.build("Field", Medium.shelterAir());

    var soil =
        SoilFromAir.at(depth, diffusivity).withMeanOfYear(10).estimate(air).soil().minimaCelsius();

    double cosine = 0;
    double sine = 0;
    for (int i = days - 1461; i < days; i++) {
      double angle = 2 * Math.PI * (i + 0.5) / 365.25;
      cosine += 2.0 / 1461 * soil[i] * Math.cos(angle);
      sine += 2.0 / 1461 * soil[i] * Math.sin(angle);
    }
    var wave = DampedWave.annual(diffusivity, depth);
    assertThat(Math.hypot(cosine, sine) / 10).isCloseTo(wave.amplitudeFactor(), within(0.005));
    assertThat(Math.atan2(sine, cosine) * 365.25 / (2 * Math.PI))
        .isCloseTo(wave.lagHours() / 24, within(0.3));
  }

  @Test
  void memoryWeightsAreTheAnswerToAStep() {
    double[] weights = SoilKernel.weights(0.5e-6, 0.06, 400);

    double sum = 0;
    for (double weight : weights) {
      assertThat(weight).isPositive();
      sum += weight;
    }
    assertThat(sum).isBetween(0.98, 1.0);
    assertThat(SoilKernel.weights(0.5e-6, 1e-6, 1)[0]).isCloseTo(1, within(1e-4));
  }

  @Test
  void firstDaysOfADepthAreMissingUnlessTheMeanOfTheYearIsGiven() {
    var model = SoilFromAir.at(0.5, SoilKind.CLAY_WET);
    var air = constant(5, 25, 100);

    var without = model.estimate(air).soil();
    var with = model.withMeanOfYear(9).estimate(air).soil();

    assertThat(without.originAt(0)).isEqualTo(DayOrigin.MISSING);
    assertThat(without.originAt(99)).isEqualTo(DayOrigin.MODELLED);
    assertThat(with.missingDays()).isEmpty();
    assertThat(with.minCelsius(START)).isBetween(8.0, 9.5);
    assertThat(with.minCelsius(START.plusDays(99))).isBetween(12.0, 15.0);
  }

  @Test
  void missingAirIsMissingSoil() {
    var builder = DailyTemperatures.builder(START, START.plusDays(49));
    for (int i = 0; i < 50; i++) {
      if (i != 30) {
        builder.put(START.plusDays(i), 5, 25, 1, 1, DayOrigin.OBSERVED);
      }
    }
    var air = builder.build("Field", Medium.shelterAir());

    var soil = SoilFromAir.at(0.06, SoilKind.LOAM_WET).withStandardError(2).estimate(air).soil();

    assertThat(soil.missingDays()).containsExactly(START.plusDays(30));
    assertThat(soil.minStandardErrorCelsius(soil.lastDay())).isBetween(2.0, 2.3);
  }

  @Test
  void deepMaximumBelongsToTheDayBefore() {
    var builder = DailyTemperatures.builder(START, START.plusDays(49));
    for (int i = 0; i < 50; i++) {
      builder.putAt(i, i == 40 ? 5 : 15, i == 40 ? 25 : 15, DayOrigin.OBSERVED);
    }
    var air = builder.build("Field", Medium.shelterAir());
    var diffusivity = SoilDiffusivity.ofSquareMetresPerSecond(0.5e-6);

    var shallow = SoilFromAir.at(0.06, diffusivity).estimate(air).soil();
    var deep = SoilFromAir.at(0.30, diffusivity).estimate(air).soil();

    assertThat(DampedWave.daily(diffusivity, 0.30).lagHours()).isBetween(9.0, 10.5);
    assertThat(shallow.maxCelsius(START.plusDays(40))).isCloseTo(20.995, within(1e-3));
    assertThat(deep.maxCelsius(START.plusDays(40))).isCloseTo(15, within(1e-9));
    assertThat(deep.maxCelsius(START.plusDays(41))).isGreaterThan(15.5);
  }

  @Test
  void pageNamesDiffusivityAndWhatIsLeftOut() {
    var page =
        SoilFromAir.at(0.06, SoilKind.SAND_DRY)
            .estimate(constant(5, 25, 60))
            .presentation()
            .toText();

    assertThat(page).contains("sandy soil, dry", "No snow", "canopy", "evaporation", "not stated");
    assertThat(SoilKind.table(0.06).rows()).hasSize(SoilKind.values().length);
    assertThat(SoilKind.table(0.06).toCsv()).contains("value from memory", "common practice");
  }

  @Test
  void otherUnitsAndSoilAreRefused() {
    assertThatThrownBy(() -> SoilDiffusivity.ofSquareMetresPerSecond(0.5))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("cm²/s");
    assertThatThrownBy(() -> SoilFromAir.at(-0.1, SoilKind.CLAY_WET))
        .isInstanceOf(InputProblem.class);
    var soil = SoilFromAir.at(0.06, SoilKind.CLAY_WET).estimate(constant(5, 25, 60)).soil();
    assertThatThrownBy(() -> SoilFromAir.at(0.06, SoilKind.CLAY_WET).estimate(soil))
        .isInstanceOf(InputProblem.class);
  }
}
