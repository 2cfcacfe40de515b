package agro.weather.quality;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import agro.report.InputProblem;
import agro.weather.DailyTemperatures;
import agro.weather.DayOrigin;
import agro.weather.Medium;
import java.util.Arrays;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Defects of daily extremes, put into an invented log. */
class DailyDefectsTest {

  private static final int YEARS = 3;

  /** Minima and maxima that a test may spoil. */
  private static final class Extremes {
    final double[] minima;
    final double[] maxima;

    Extremes(DailyTemperatures days) {
      minima = days.minimaCelsius();
      maxima = days.maximaCelsius();
    }

    static Extremes of(long seed, int days) {
      return new Extremes(new InventedLog(seed, days, 60).daily("Field"));
    }

    DailyTemperatures days() {
      var builder =
          DailyTemperatures.builder(
              InventedLog.START, InventedLog.START.plusDays(minima.length - 1));
      for (int i = 0; i < minima.length; i++) {
        builder.putAt(i, minima[i], maxima[i], DayOrigin.OBSERVED);
      }
      return builder.build("Field", Medium.shelterAir());
    }

    QualityFlags check() {
      return QualityControl.withDefaults()
          .checkExtremes("Field", Medium.shelterAir(), InventedLog.START, minima, maxima);
    }
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5})
  void cleanYearsHaveAlmostNoFlags(long seed) {
    var neighbour = new InventedLog(seed, 900 + seed, 365, 60).daily("Station");
    var control =
        QualityControl.withDefaults()
            .with(NeighbourCheck.of(neighbour))
            .with(OffsetCheck.against(neighbour));

    assertThat(control.check(Extremes.of(seed, 365).days()).all()).isEmpty();
    assertThat(Extremes.of(seed, YEARS * 365).check().all()).hasSizeLessThanOrEqualTo(2);
  }

  @Test
  void swappedExtremes() {
    var days = Extremes.of(1, 365);
    double low = days.minima[77];
    days.minima[77] = days.maxima[77];
    days.maxima[77] = low;

    var flags = days.check();

    assertThat(flags.rulesBroken()).containsExactly(QualityRule.EXTREMES_ORDER);
    assertThat(flags.all().get(0).first()).isEqualTo(77);
    assertThat(flags.all().get(0).element()).isEqualTo(FlaggedValue.BOTH_EXTREMES);
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 40, 150, 355})
  void daysWrittenInFahrenheit(int from) {
    var days = Extremes.of(17, 365);
    int to = Math.min(365, from + 12);
    for (int i = from; i < to; i++) {
      days.minima[i] = 1.8 * days.minima[i] + 32;
      days.maxima[i] = 1.8 * days.maxima[i] + 32;
    }

    var flags = days.check();

    assertThat(flags.of(QualityRule.FAHRENHEIT)).hasSize(1);
    assertThat(flags.all().get(0).first()).isEqualTo(from);
    assertThat(flags.all().get(0).last()).isEqualTo(to - 1);
    assertThat(flags.all()).hasSizeLessThanOrEqualTo(2);
  }

  @Test
  void zerosForMissing() {
    var days = Extremes.of(2, 365);
    days.minima[200] = 0;
    days.maxima[200] = 0;
    days.minima[201] = -17.8;
    days.maxima[201] = -17.8;

    assertThat(ReadingDefectsTest.places(days.check(), QualityRule.NAUGHT))
        .containsExactly(200, 201);
  }

  @Test
  void wrongSignOfAMinimumStandsOffAndIsFarFromUsual() {
    var days = Extremes.of(3, YEARS * 365);
    days.minima[560] = -30;

    var flags = days.check();

    assertThat(ReadingDefectsTest.places(flags, QualityRule.DAILY_SPIKE)).containsExactly(560);
    assertThat(flags.all()).hasSizeLessThanOrEqualTo(3);
  }

  @Test
  void outlierOfTheSeasonNeedsSomeYears() {
    var days = Extremes.of(4, YEARS * 365);
    for (int i = 560; i < 563; i++) {
      days.maxima[i] = 56;
    }

    var flags =
        QualityControl.none()
            .with(ClimateCheck.published())
            .checkExtremes(
                "Field", Medium.shelterAir(), InventedLog.START, days.minima, days.maxima);
    var oneYear =
        QualityControl.none().with(ClimateCheck.published()).check(Extremes.of(4, 365).days());

    assertThat(ReadingDefectsTest.places(flags, QualityRule.CLIMATE_OUTLIER))
        .containsExactly(560, 561, 562);
    assertThat(flags.all().get(0).unit()).isEqualTo("standard deviations");
    assertThat(oneYear.all()).isEmpty();
    assertThat(oneYear.notChecked()).anyMatch(line -> line.contains("fewer than 30 values"));
  }

  @Test
  void outlierAgainstPastYearsGiven() {
    var days = Extremes.of(5, 200);
    days.maxima[150] += 25;
    var past = Extremes.of(6, 5 * 365).days();

    var flags = QualityControl.none().with(ClimateCheck.against(past)).check(days.days());

    assertThat(ReadingDefectsTest.places(flags, QualityRule.CLIMATE_OUTLIER)).contains(150);
    assertThat(flags.all()).hasSizeLessThanOrEqualTo(2);
    assertThat(flags.notChecked()).isEmpty();
  }

  @Test
  void streakCountsKnownDays() {
    var days = Extremes.of(7, 365);
    Arrays.fill(days.maxima, 180, 196, 27.5);
    days.minima[185] = Double.NaN;
    days.maxima[185] = Double.NaN;

    var streaks = days.check().of(QualityRule.STREAK);

    assertThat(streaks).hasSize(1);
    assertThat(streaks.get(0).element()).isEqualTo(FlaggedValue.MAXIMUM);
    assertThat(streaks.get(0).first()).isEqualTo(180);
    assertThat(streaks.get(0).last()).isEqualTo(195);
    assertThat(streaks.get(0).value()).isEqualTo(15);
  }

  @Test
  void copiedMonth() {
    var days = Extremes.of(8, 365);
    System.arraycopy(days.minima, 120, days.minima, 151, 30);
    System.arraycopy(days.maxima, 120, days.maxima, 151, 30);

    var copies = days.check().of(QualityRule.REPEATED);

    assertThat(copies).hasSize(1);
    assertThat(copies.get(0).first()).isEqualTo(151);
    assertThat(copies.get(0).places()).isEqualTo(30);
  }

  @Test
  void daysThatDoNotMeetAtMidnight() {
    var days = Extremes.of(9, 365);
    days.minima[100] = days.maxima[99] + 4;
    days.maxima[100] = days.minima[100] + 5;

    assertThat(days.check().of(QualityRule.MIDNIGHT))
        .anyMatch(flag -> flag.first() == 100 && flag.value() > 3.9 && flag.limit() == 1);
  }

  @Test
  void rangeOverThreeDaysAndGapOfTheMonth() {
    var days = Extremes.of(10, 365);
    for (int i = 200; i < 203; i++) {
      days.maxima[i] = days.minima[i] + 46;
    }

    var flags = days.check();

    assertThat(ReadingDefectsTest.places(flags, QualityRule.LAGGED_RANGE)).isNotEmpty();
    assertThat(ReadingDefectsTest.places(flags, QualityRule.MONTH_GAP)).isNotEmpty();
  }

  @Test
  void neighbourFindsWhatNothingElseFinds() {
    var neighbour = new InventedLog(11, 911, 365, 60).daily("Station");
    var days = Extremes.of(11, 365);
    days.maxima[90] += 5;
    days.minima[140] -= 5;

    var alone = days.check();
    var flags = QualityControl.withDefaults().with(NeighbourCheck.of(neighbour)).check(days.days());

    assertThat(alone.all()).isEmpty();
    assertThat(flags.all()).extracting(QualityFlag::first).containsExactlyInAnyOrder(90, 140);
    assertThat(flags.rulesBroken()).containsExactly(QualityRule.NEIGHBOUR);
  }

  @ParameterizedTest
  @ValueSource(doubles = {-3, 2, 3})
  void sensorReplacedAgainstANeighbour(double shift) {
    var neighbour = new InventedLog(12, 912, 365, 60).daily("Station");
    var days = Extremes.of(12, 365);
    for (int i = 170; i < 365; i++) {
      days.minima[i] += shift;
      days.maxima[i] += shift;
    }

    var offsets =
        QualityControl.none().with(OffsetCheck.against(neighbour)).check(days.days()).all();

    assertThat(offsets).hasSize(2);
    assertThat(offsets).allMatch(flag -> Math.abs(flag.first() - 170) <= 1);
    assertThat(offsets).allMatch(flag -> flag.last() == 364);
    assertThat(offsets).allMatch(flag -> Math.abs(flag.value() - shift) < 0.5);
  }

  @Test
  void shiftThatGoesBackIsOneStretch() {
    var neighbour = new InventedLog(13, 913, 365, 60).daily("Station");
    var days = Extremes.of(13, 365);
    for (int i = 100; i < 200; i++) {
      days.maxima[i] += 3;
    }

    var offsets =
        QualityControl.none().with(OffsetCheck.against(neighbour)).check(days.days()).all();

    assertThat(offsets).hasSize(1);
    assertThat(offsets.get(0).first()).isBetween(99, 101);
    assertThat(offsets.get(0).last()).isBetween(198, 200);
  }

  @Test
  void extremesAgainstReadings() {
    var log = new InventedLog(14, 365, 60);
    var days = new Extremes(log.daily("Field"));
    days.maxima[30] -= 2;
    days.minima[60] -= 8;

    var control = QualityControl.none().with(EnclosingCheck.usual());
    var flags = control.check(days.days(), log.readings());

    assertThat(flags.all()).extracting(QualityFlag::first).containsExactly(30, 60);
    assertThat(flags.all().get(0).element()).isEqualTo(FlaggedValue.MAXIMUM);
    assertThat(flags.all().get(1).element()).isEqualTo(FlaggedValue.MINIMUM);
    assertThat(flags.all().get(1).value()).isEqualTo(8);
    assertThat(flags.all()).noneMatch(flag -> flag.why().contains("day before"));
  }

  @Test
  void extremesOfAnotherDay() {
    var log = new InventedLog(15, 200, 60);
    var days = new Extremes(log.daily("Field"));
    System.arraycopy(days.maxima.clone(), 0, days.maxima, 1, 199);
    for (int i = 0; i < 200; i++) {
      days.minima[i] = Math.min(days.minima[i], days.maxima[i]);
    }

    var flags =
        QualityControl.none().with(EnclosingCheck.usual()).check(days.days(), log.readings());

    assertThat(flags.all()).isNotEmpty();
    assertThat(flags.all())
        .allMatch(flag -> flag.why().endsWith("fit the readings of the day before better"));
  }

  @Test
  void soilIsNotHeldAgainstAir() {
    var soil = DailyTemperatures.builder(InventedLog.START, InventedLog.START.plusDays(99));
    for (int i = 0; i < 100; i++) {
      soil.putAt(i, 10, 12 + 0.01 * i, DayOrigin.OBSERVED);
    }
    var series = soil.build("Field", new Medium.Soil(0.06));
    var control = QualityControl.none().with(NeighbourCheck.of(Extremes.of(1, 100).days()));

    assertThatThrownBy(() -> control.check(series)).isInstanceOf(InputProblem.class);
  }

  @Test
  void flaggedDaysGoOnlyOnRequest() {
    var days = Extremes.of(16, 365);
    days.maxima[90] += 30;
    var series = days.days();
    var flags = QualityControl.withDefaults().check(series);

    var cleaned = flags.withoutFlagged(series, Set.of(QualityRule.DAILY_SPIKE));

    assertThat(flags.days()).contains(series);
    assertThat(series.missingDays()).isEmpty();
    assertThat(cleaned.days().missingDays()).containsExactly(InventedLog.START.plusDays(90));
    assertThat(cleaned.report().entries()).hasSize(1);
    assertThat(cleaned.report().toString()).contains("2021-04-01", "on request", "stands off");
    assertThatThrownBy(() -> flags.withoutFlagged(series, Set.of(QualityRule.NEIGHBOUR)))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("not applied");
    assertThatThrownBy(() -> flags.withoutFlagged(cleaned.days(), Set.of(QualityRule.DAILY_SPIKE)))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("the very series");
  }
}
