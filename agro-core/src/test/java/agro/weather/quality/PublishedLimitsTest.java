package agro.weather.quality;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import agro.ReferenceTable;
import agro.report.InputProblem;
import agro.source.Standing;
import agro.weather.Medium;
import agro.weather.TemperatureReadings;
import java.time.Duration;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

class PublishedLimitsTest {

  @Test
  void tolerancesOfSteps() {
    var check = StepCheck.published();
    for (var line : ReferenceTable.read(getClass(), "temperature-steps.csv")) {
      assertThat(check.toleranceCelsius(ReferenceTable.whole(line, "seconds")))
          .isEqualTo(ReferenceTable.number(line, "celsius"));
    }
    assertThat(check.toleranceCelsius(1)).isEqualTo(3);
    assertThat(check.toleranceCelsius(5400)).isEqualTo(5.5);
    assertThat(check.toleranceCelsius(43_201)).isInfinite();
  }

  @Test
  void limitsOfTheOtherRules() {
    assertThat(RangeCheck.world().lowestCelsius()).isEqualTo(-89.2);
    assertThat(RangeCheck.world().highestCelsius()).isEqualTo(56.7);
    assertThat(StreakCheck.published().leastDays()).isEqualTo(15);
    assertThat(MonthGapCheck.published().gapCelsius()).isEqualTo(10);
    assertThat(ClimateCheck.published().standardDeviations()).isEqualTo(6);
    assertThat(ClimateCheck.published().windowDays()).isEqualTo(15);
    assertThat(DailySpikeCheck.published().standoffCelsius()).isEqualTo(25);
    assertThat(LaggedRangeCheck.published().rangeCelsius()).isEqualTo(40);
  }

  @Test
  void everyRuleNamesItsSourceWithItsStanding() {
    for (var rule : QualityRule.values()) {
      assertThat(rule.sources()).as(rule.words()).isNotEmpty();
      assertThat(rule.words()).as("fits beside a figure").hasSizeLessThanOrEqualTo(26);
      assertThat(rule.sources())
          .allMatch(
              source -> source.year() > 1900 || source.standing() == Standing.COMMON_PRACTICE);
    }
    assertThat(QualityRule.DAILY_SPIKE.sources().get(0).standing()).isEqualTo(Standing.FROM_MEMORY);
    assertThat(QualityRule.STREAK.sources().get(0).standing()).isEqualTo(Standing.READ);
  }

  @Test
  void biweightAgreesWithR() {
    for (var line : ReferenceTable.read(getClass(), "biweight.csv")) {
      double[] values =
          Arrays.stream(line.getField("values").trim().split(" "))
              .mapToDouble(Double::parseDouble)
              .toArray();
      var biweight = Biweight.of(values);
      assertThat(biweight.mean()).isCloseTo(ReferenceTable.number(line, "mean"), within(1e-9));
      assertThat(biweight.standardDeviation())
          .isCloseTo(ReferenceTable.number(line, "sd"), within(1e-9));
    }
    assertThat(Biweight.of(new double[] {5, 5, 5, 9}).standardDeviation()).isZero();
    assertThat(Biweight.of(new double[0]).mean()).isNaN();
  }

  @Test
  void soilHasItsOwnRangeAndMayStayTheSame() {
    var seconds = new long[60];
    var celsius = new double[60];
    for (int i = 0; i < 60; i++) {
      seconds[i] = 3600L * i;
      celsius[i] = i == 59 ? 52 : 11.5;
    }
    var soil =
        TemperatureReadings.of("Field", new Medium.Soil(0.5), ZoneOffset.UTC, seconds, celsius);
    var air =
        TemperatureReadings.of("Field", Medium.shelterAir(), ZoneOffset.UTC, seconds, celsius);

    var inSoil = QualityControl.withDefaults().check(soil);
    var inAir = QualityControl.withDefaults().check(air);

    assertThat(inSoil.of(QualityRule.WORLD_RANGE)).hasSize(1);
    assertThat(inSoil.of(QualityRule.STUCK)).isEmpty();
    assertThat(inAir.of(QualityRule.WORLD_RANGE)).isEmpty();
    assertThat(inAir.of(QualityRule.STUCK)).hasSize(1);
  }

  @Test
  void stuckSensorOfAFineLogIsSeenSooner() {
    var log = new InventedLog(1, 100, 15);
    var random = new java.util.Random(5);
    for (int i = 0; i < log.celsius.length; i++) {
      log.celsius[i] = Math.rint(100 * (log.celsius[i] + 0.1 * random.nextGaussian())) / 100;
    }
    Arrays.fill(log.celsius, 5000, 5044, log.celsius[5000]);

    var stuck = QualityControl.withDefaults().check(log.readings()).of(QualityRule.STUCK);

    assertThat(stuck).hasSize(1);
    assertThat(stuck.get(0).first()).isEqualTo(5000);
    assertThat(stuck.get(0).limit()).isEqualTo(6);
  }

  @Test
  void limitsCanBeStatedAndRulesLeftOut() {
    var control =
        QualityControl.withDefaults()
            .with(new SpikeCheck(2, 1, Duration.ofMinutes(30)))
            .without(QualityRule.STEP);

    assertThat(control.checks()).extracting(QualityCheck::rule).doesNotContain(QualityRule.STEP);
    assertThat(control.checks())
        .filteredOn(check -> check.rule() == QualityRule.SPIKE)
        .singleElement()
        .extracting(QualityCheck::limits)
        .isEqualTo(
            "2 °C off both neighbours, at most 1 readings wide, neighbours at most 0.5 h away");
    assertThat(QualityControl.withDefaults().checks())
        .extracting(QualityCheck::rule)
        .contains(QualityRule.STEP);
    assertThat(StepCheck.ofHourly(2).toleranceCelsius(7200)).isEqualTo(4);
  }

  @Test
  void limitsThatFlagEverythingAreRefused() {
    assertThatThrownBy(() -> RangeCheck.local(30, -10)).isInstanceOf(InputProblem.class);
    assertThatThrownBy(() -> new RangeCheck(QualityRule.STEP, 0, 1))
        .isInstanceOf(InputProblem.class);
    assertThatThrownBy(() -> new SpikeCheck(0, 1, Duration.ofHours(1)))
        .isInstanceOf(InputProblem.class);
    assertThatThrownBy(() -> new StepCheck(List.of())).isInstanceOf(InputProblem.class);
    assertThatThrownBy(() -> new StreakCheck(2)).isInstanceOf(InputProblem.class);
    assertThatThrownBy(() -> new ClockCheck(13, 11, 11, 19)).isInstanceOf(InputProblem.class);
    assertThatThrownBy(() -> new ExtremesCheck(QualityRule.STEP, 0))
        .isInstanceOf(InputProblem.class);
  }

  @Test
  void readingsGoOnlyOnRequest() {
    var log = new InventedLog(3, 30, 60);
    log.celsius[100] += 12;
    log.celsius[200] = -99.9;
    var readings = log.readings();
    var flags = QualityControl.withDefaults().check(readings);

    var cleaned = flags.withoutFlagged(readings, Set.of(QualityRule.SENSOR_RANGE));

    assertThat(cleaned.readings().size()).isEqualTo(readings.size() - 1);
    assertThat(cleaned.readings().epochSeconds()).doesNotContain(readings.epochSecond(200));
    assertThat(cleaned.readings().epochSeconds()).contains(readings.epochSecond(100));
    assertThat(cleaned.report().rowsRead()).isEqualTo(readings.size());
    assertThat(cleaned.report().entries()).hasSize(1);
    assertThat(cleaned.presentation().toText()).contains("2021-01-09 08:00", "on request");
    assertThatThrownBy(() -> flags.withoutFlagged(readings, Set.of()))
        .isInstanceOf(InputProblem.class);
  }

  @Test
  void pageShowsRulesFlagsAndSources() {
    var log = new InventedLog(3, 30, 60);
    for (int i = 0; i < 15; i++) {
      log.celsius[20 * i + 50] = 70;
    }
    var page = QualityControl.withDefaults().check(log.readings()).presentation();

    assertThat(page.toText())
        .contains("Values flagged:  15 (2.1 %)", "no verdict", "first 10 of 15", "Zahumenský");
    assertThat(page.toHtml()).startsWith("<section").contains("Invented Field");
  }

  @Test
  void rareReadingsAreSaidNotToBeCheckedForSpikes() {
    var flags = QualityControl.withDefaults().check(new InventedLog(2, 60, 180).readings());

    assertThat(flags.notChecked()).anyMatch(line -> line.startsWith("spike: readings every 3"));
    assertThat(flags.presentation().toText()).contains("Not checked: spike");
  }

  @Test
  void emptyLogHasNoFlags() {
    var empty =
        TemperatureReadings.of(
            "Field", Medium.shelterAir(), ZoneOffset.UTC, new long[0], new double[0]);

    assertThat(QualityControl.withDefaults().check(empty).all()).isEmpty();
  }
}
