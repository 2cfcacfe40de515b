package agro.weather.quality;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Each defect, put into an invented log, is found; a clean log stays almost free of flags. */
class ReadingDefectsTest {

  private static final int HOURS = 24;
  private static final int DAY = 150;

  private static QualityFlags check(InventedLog log) {
    return QualityControl.withDefaults().check(log.readings());
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5})
  void cleanYearHasAlmostNoFlags(long seed) {
    var hourly = check(new InventedLog(seed, 365, 60));
    var quarters = check(new InventedLog(seed, 120, 15));

    assertThat(hourly.valuesChecked()).isEqualTo(365 * HOURS);
    assertThat(hourly.all()).hasSizeLessThanOrEqualTo(2);
    assertThat(quarters.all()).hasSizeLessThanOrEqualTo(2);
  }

  @Test
  void missingCodeIsOutsideTheSensor() {
    var log = new InventedLog(1, 365, 60);
    log.celsius[1000] = -99.9;
    log.celsius[1001] = 85;

    var flags = check(log);

    assertThat(places(flags, QualityRule.SENSOR_RANGE)).containsExactly(1000, 1001);
    assertThat(flags.rulesBroken()).containsExactly(QualityRule.SENSOR_RANGE);
    assertThat(flags.all().get(0).value()).isEqualTo(-99.9);
    assertThat(flags.all().get(0).limit()).isEqualTo(-80);
    assertThat(flags.all().get(0).when()).isEqualTo("2021-02-11 16:00");
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3})
  void spikeIsFoundAndIsNoStep(int width) {
    var log = new InventedLog(2, 365, 60);
    var expected = new ArrayList<Integer>();
    for (int start : new int[] {500, 2500, 6000}) {
      for (int i = start; i < start + width; i++) {
        log.celsius[i] += start == 2500 ? -11 : 11;
        expected.add(i);
      }
    }

    var flags = check(log);

    assertThat(places(flags, QualityRule.SPIKE)).containsAll(expected);
    assertThat(flags.all()).hasSizeLessThanOrEqualTo(expected.size() + 2);
  }

  @Test
  void jumpThatStaysIsStepAndNoSpike() {
    var log = new InventedLog(3, 365, 60);
    for (int i = 4000; i < log.celsius.length; i++) {
      log.celsius[i] += 9;
    }

    var flags = check(log);

    assertThat(places(flags, QualityRule.STEP)).contains(4000);
    assertThat(flags.of(QualityRule.SPIKE)).isEmpty();
    assertThat(flags.of(QualityRule.STEP))
        .filteredOn(flag -> flag.first() == 4000)
        .allMatch(flag -> flag.why().contains("stays there"));
  }

  @Test
  void stuckSensorIsOneFlag() {
    var log = new InventedLog(4, 365, 60);
    for (int i = 3000; i < 3050; i++) {
      log.celsius[i] = log.celsius[2999];
    }

    var stuck = check(log).of(QualityRule.STUCK);

    assertThat(stuck).hasSize(1);
    assertThat(stuck.get(0).first()).isEqualTo(2999);
    assertThat(stuck.get(0).last()).isBetween(3049, 3050);
    assertThat(stuck.get(0).unit()).isEqualTo("h");
    assertThat(stuck.get(0).value()).isBetween(50.0, 51.0);
  }

  @ParameterizedTest
  @ValueSource(ints = {60, 15})
  void fahrenheitStretchIsOneFlag(int stepMinutes) {
    var log = new InventedLog(5, 365, stepMinutes);
    int perDay = 1440 / stepMinutes;
    for (int i = DAY * perDay + 3; i < (DAY + 9) * perDay + 5; i++) {
      log.celsius[i] = Math.rint(10 * (1.8 * log.celsius[i] + 32)) / 10;
    }

    var flags = check(log);

    assertThat(flags.of(QualityRule.FAHRENHEIT)).hasSize(1);
    var flag = flags.of(QualityRule.FAHRENHEIT).get(0);
    assertThat(flag.first()).isEqualTo(DAY * perDay + 3);
    assertThat(flag.last()).isEqualTo((DAY + 9) * perDay + 4);
    assertThat(flags.all()).hasSizeLessThanOrEqualTo(3);
  }

  @Test
  void fahrenheitAtBothEndsOfTheLog() {
    var log = new InventedLog(6, 100, 60);
    for (int i = 0; i < log.celsius.length; i++) {
      if (i < 200 || i >= 2000) {
        log.celsius[i] = 1.8 * log.celsius[i] + 32;
      }
    }

    var stretches = check(log).of(QualityRule.FAHRENHEIT);

    assertThat(stretches).extracting(QualityFlag::first).containsExactly(0, 2000);
    assertThat(stretches).extracting(QualityFlag::last).containsExactly(199, 2399);
  }

  @ParameterizedTest
  @ValueSource(ints = {-5, -3, 3, 6})
  void shiftedClockIsFoundWithinDays(int hours) {
    var log = new InventedLog(7, 365, 60);
    var clean = log.celsius.clone();
    for (int i = 120 * HOURS; i < 200 * HOURS; i++) {
      log.celsius[i] = clean[i - hours];
    }

    var shifts = check(log).of(QualityRule.CLOCK);

    assertThat(shifts).hasSize(1);
    assertThat(shifts.get(0).value()).isBetween(hours - 1.0, hours + 1.0);
    assertThat(shifts.get(0).first() / HOURS).isBetween(117, 123);
    assertThat(shifts.get(0).last() / HOURS).isBetween(197, 203);
  }

  @Test
  void dayAndNightSwappedThroughoutTheLog() {
    var log = new InventedLog(8, 60, 60);
    var clean = log.celsius.clone();
    for (int i = 12; i < log.celsius.length; i++) {
      log.celsius[i] = clean[i - 12];
    }

    var shifts = check(log).of(QualityRule.CLOCK);

    assertThat(shifts).hasSize(1);
    assertThat(shifts.get(0).places()).isEqualTo(log.celsius.length);
    assertThat(shifts.get(0).value()).isBetween(1.0, 5.0);
  }

  @Test
  void copiedDayIsFound() {
    var log = new InventedLog(9, 365, 60);
    System.arraycopy(log.celsius, 100 * HOURS, log.celsius, 180 * HOURS, 2 * HOURS);

    var copies = check(log).of(QualityRule.REPEATED);

    assertThat(copies).extracting(QualityFlag::first).containsExactly(180 * HOURS, 181 * HOURS);
    assertThat(copies.get(0).why()).contains("2021-04-11");
  }

  @Test
  void localRangeIsStatedByTheUser() {
    var log = new InventedLog(10, 365, 60);
    log.celsius[50] = -29;

    var flags = QualityControl.none().with(RangeCheck.local(-25, 45)).check(log.readings());

    assertThat(places(flags, QualityRule.LOCAL_RANGE)).containsExactly(50);
    assertThat(flags.applied()).hasSize(1);
  }

  static List<Integer> places(QualityFlags flags, QualityRule rule) {
    var places = new ArrayList<Integer>();
    for (var flag : flags.of(rule)) {
      for (int place = flag.first(); place <= flag.last(); place++) {
        places.add(place);
      }
    }
    return places;
  }
}
