package agro.weather.quality;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import agro.ReferenceTable;
import agro.weather.DailyTemperatures;
import agro.weather.DayOrigin;
import agro.weather.Medium;
import agro.weather.TemperatureReadings;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.Random;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/**
 * Open data that passed their archive's own control: rules have to leave them in peace, and to find
 * errors seeded into them.
 */
class OpenDataTest {

  private static final int SEEDED = 40;

  private static DailyTemperatures seattle() {
    var lines = ReferenceTable.read(OpenDataTest.class, "/agro/weather/open/seattle-daily.csv");
    var first = LocalDate.parse(lines.get(0).getField("date"));
    var last = LocalDate.parse(lines.get(lines.size() - 1).getField("date"));
    var builder = DailyTemperatures.builder(first, last);
    for (var line : lines) {
      builder.put(
          LocalDate.parse(line.getField("date")),
          ReferenceTable.number(line, "temp_min"),
          ReferenceTable.number(line, "temp_max"),
          DayOrigin.OBSERVED);
    }
    return builder.build("Seattle", Medium.shelterAir());
  }

  @Test
  void fourYearsOfAnArchiveAreLeftInPeace() {
    var flags = QualityControl.withDefaults().check(seattle());

    assertThat(flags.valuesChecked()).isEqualTo(2 * 1461);
    assertThat(flags.notChecked()).isEmpty();
    assertThat(flags.all()).as(flags.table().toText()).hasSizeLessThanOrEqualTo(3);
  }

  @Test
  void seededErrorsOfAnArchiveAreFound() {
    var days = seattle();
    double[] minima = days.minimaCelsius();
    double[] maxima = days.maximaCelsius();
    var random = new Random(17);
    var seeded = new TreeSet<Integer>();
    while (seeded.size() < SEEDED) {
      int day = 30 + random.nextInt(1400);
      if (seeded.add(day)) {
        maxima[day] += 30;
      }
    }

    var flags =
        QualityControl.withDefaults()
            .checkExtremes("Seattle", Medium.shelterAir(), days.firstDay(), minima, maxima);

    var found = new TreeSet<Integer>();
    flags.all().forEach(flag -> found.add(flag.first()));
    assertThat(found).containsAll(seeded);
    assertThat(found).hasSizeLessThanOrEqualTo(SEEDED + 4);
  }

  @Test
  void clockOfHourlyNormalsIsRight() {
    var lines = ReferenceTable.read(getClass(), "/agro/weather/open/seattle-hourly-normals.csv");
    var seconds = new long[lines.size()];
    var celsius = new double[lines.size()];
    for (int i = 0; i < seconds.length; i++) {
      seconds[i] =
          LocalDateTime.parse(lines.get(i).getField("date")).toEpochSecond(ZoneOffset.ofHours(-8));
      celsius[i] = ReferenceTable.number(lines.get(i), "temperature");
    }
    var here =
        TemperatureReadings.of(
            "Seattle", Medium.shelterAir(), ZoneOffset.ofHours(-8), seconds, celsius);
    var wrongDays =
        TemperatureReadings.of("Seattle", Medium.shelterAir(), ZoneOffset.UTC, seconds, celsius);
    var control = QualityControl.withDefaults().without(QualityRule.REPEATED);

    assertThat(control.check(here).all()).isEmpty();
    assertThat(control.check(wrongDays).of(QualityRule.CLOCK))
        .singleElement()
        .satisfies(flag -> assertThat(flag.value()).isCloseTo(23.4, within(0.5)));
  }
}
