package agro.weather.siting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import agro.ReferenceTable;
import agro.report.InputProblem;
import agro.weather.DailyTemperatures;
import agro.weather.DayOrigin;
import agro.weather.Medium;
import agro.weather.TemperatureReadings;
import java.time.Duration;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Random;
import java.util.function.IntToDoubleFunction;
import org.junit.jupiter.api.Test;

class ObservationHourTest {

  private static final LocalDate START = LocalDate.of(2021, 1, 1);
  private static final ZoneOffset OFFSET = ZoneOffset.ofHours(2);

  /** Half cosines between a minimum at 5 h and a maximum at 15 h of each day. */
  private static TemperatureReadings log(
      int days, int stepMinutes, IntToDoubleFunction low, IntToDoubleFunction high) {
    int perDay = 1440 / stepMinutes;
    var seconds = new long[days * perDay];
    var celsius = new double[seconds.length];
    for (int i = 0; i < seconds.length; i++) {
      double hour = 24.0 * i / perDay;
      int day = i / perDay;
      double ofDay = hour - 24 * day;
      seconds[i] = START.toEpochDay() * 86_400 - OFFSET.getTotalSeconds() + 60L * stepMinutes * i;
      if (ofDay < 5) {
        celsius[i] = between(high.applyAsDouble(day - 1), low.applyAsDouble(day), (ofDay + 9) / 14);
      } else if (ofDay < 15) {
        celsius[i] = between(low.applyAsDouble(day), high.applyAsDouble(day), (ofDay - 5) / 10);
      } else {
        celsius[i] =
            between(high.applyAsDouble(day), low.applyAsDouble(day + 1), (ofDay - 15) / 14);
      }
    }
    return TemperatureReadings.of("Field", Medium.shelterAir(), OFFSET, seconds, celsius);
  }

  private static double between(double from, double to, double share) {
    return from + (to - from) * (1 - Math.cos(Math.PI * share)) / 2;
  }

  private static TemperatureReadings weather(long seed, int days) {
    var random = new Random(seed);
    var mean = new double[days + 2];
    var swing = new double[days + 2];
    for (int i = 0; i < mean.length; i++) {
      mean[i] = 0.7 * (i == 0 ? 0 : mean[i - 1]) + 2.5 * random.nextGaussian();
      swing[i] = 2 + 4 * random.nextDouble();
    }
    return log(
        days,
        60,
        day -> 12 + mean[day + 1] - swing[day + 1],
        day -> 12 + mean[day + 1] + swing[day + 1]);
  }

  @Test
  void observersOfTheTable() {
    var maxima = log(44, 5, day -> 10, day -> Math.floorMod(day, 2) == 0 ? 30 : 18);
    var minima = log(44, 5, day -> Math.floorMod(day, 2) == 0 ? 11 : 1, day -> 20);
    for (var line : ReferenceTable.read(getClass(), "observation-hours.csv")) {
      var log = line.getField("case").endsWith("maxima") ? maxima : minima;
      var observed = ObservationHour.at(ReferenceTable.whole(line, "hour")).observe(log);
      double low = 0;
      double high = 0;
      double average = 0;
      for (int i = 2; i < 42; i++) {
        var day = observed.day(i);
        low += observed.minCelsius(day) / 40;
        high += observed.maxCelsius(day) / 40;
        double middle = 0.5 * (observed.minCelsius(day) + observed.maxCelsius(day));
        average += Math.max(0, middle - 10) / 40;
      }
      assertThat(low).isCloseTo(ReferenceTable.number(line, "mean_min"), within(2e-3));
      assertThat(high).isCloseTo(ReferenceTable.number(line, "mean_max"), within(2e-3));
      assertThat(average)
          .isCloseTo(ReferenceTable.number(line, "average_degree_days"), within(2e-3));
    }
  }

  @Test
  void morningMaximumGoesToTheDayBefore() {
    var observed = DailyTemperatures.builder(START, START.plusDays(2));
    observed.putAt(0, 1, 11, DayOrigin.OBSERVED);
    observed.putAt(1, 2, 12, DayOrigin.OBSERVED);
    observed.putAt(2, 3, 13, DayOrigin.OBSERVED);
    var days = observed.build("Field", Medium.shelterAir());

    var morning = ObservationHour.at(7).assign(days);
    var evening = ObservationHour.at(17).assign(days);

    assertThat(morning.days().minCelsius(START)).isEqualTo(1);
    assertThat(morning.days().maxCelsius(START)).isEqualTo(12);
    assertThat(morning.days().origin(START.plusDays(2))).isEqualTo(DayOrigin.MISSING);
    assertThat(morning.warnings()).anyMatch(line -> line.contains("minima are too cold"));
    assertThat(evening.days()).isEqualTo(days);
    assertThat(evening.warnings()).anyMatch(line -> line.contains("maxima are too warm"));
    assertThat(evening.presentation().toText()).contains("Baker", "Schaal", "Karl", "17:00");
  }

  @Test
  void biasIsFittedOnOneYearAndTakenOffAnother() {
    for (int hour : new int[] {7, 17}) {
      var here = ObservationHour.at(hour);
      var bias = here.fit(weather(1, 730));
      var truth = ObservationHour.MIDNIGHT.observe(weather(2, 365));

      var raw = here.assign(here.observe(weather(2, 365)));
      var corrected = bias.correct(here.observe(weather(2, 365)));

      assertThat(hour == 7 ? -bias.overall().minimumCelsius() : bias.overall().maximumCelsius())
          .isGreaterThan(0.3);
      assertThat(bias.byMonth()).hasSize(12);
      assertThat(meanError(corrected.days(), truth))
          .isLessThan(0.35 * meanError(raw.days(), truth));
      assertThat(corrected.days().minStandardErrorCelsius(START.plusDays(50))).isPositive();
      assertThat(bias.presentation().toText()).contains("March", "all days", here.words());
    }
  }

  /** Mean of minima and maxima taken together, less that of the truth, as sizes. */
  private static double meanError(DailyTemperatures days, DailyTemperatures truth) {
    double low = 0;
    double high = 0;
    for (int i = 5; i < 360; i++) {
      var day = truth.day(i);
      low += (days.minCelsius(day) - truth.minCelsius(day)) / 355;
      high += (days.maxCelsius(day) - truth.maxCelsius(day)) / 355;
    }
    return Math.abs(low) + Math.abs(high);
  }

  @Test
  void hintTellsTheHour() {
    var log = weather(3, 1460);

    assertThat(ReadingHourHint.of(ObservationHour.at(17).observe(log)).verdict())
        .isEqualTo(ReadingHourHint.Verdict.AFTERNOON);
    assertThat(ReadingHourHint.of(ObservationHour.at(7).observe(log)).verdict())
        .isEqualTo(ReadingHourHint.Verdict.MORNING);
    assertThat(ReadingHourHint.of(ObservationHour.MIDNIGHT.observe(log)).verdict())
        .isEqualTo(ReadingHourHint.Verdict.NO_TRACE);
  }

  @Test
  void gapsAreMissingDays() {
    var log = weather(4, 60);
    var seconds = new long[log.size() - 6];
    var celsius = new double[log.size() - 6];
    for (int i = 0; i < seconds.length; i++) {
      seconds[i] = log.epochSecond(i < 500 ? i : i + 6);
      celsius[i] = log.celsius(i < 500 ? i : i + 6);
    }
    var gappy = TemperatureReadings.of("Field", Medium.shelterAir(), OFFSET, seconds, celsius);

    var observed = ObservationHour.at(17).observe(gappy);

    assertThat(observed.missingDays()).containsExactly(START, START.plusDays(21));
    assertThatThrownBy(() -> ObservationHour.at(25)).isInstanceOf(InputProblem.class);
    assertThatThrownBy(() -> ObservationHour.at(7).fit(weather(5, 20)))
        .isInstanceOf(InputProblem.class);
  }

  @Test
  void rareReadingsFallShortAsTheFormulaSays() {
    var deficit = new SamplingDeficit(Duration.ofHours(3));
    int days = 20;
    var seconds = new long[days * 288];
    var celsius = new double[seconds.length];
    for (int i = 0; i < seconds.length; i++) {
      seconds[i] = 300L * i;
      celsius[i] = 15 + 10 * Math.sin(2 * Math.PI * (i + 0.5) / 288 - 2);
    }
    var dense =
        TemperatureReadings.of("Field", Medium.shelterAir(), ZoneOffset.UTC, seconds, celsius);

    var measured = deficit.measure(dense);

    assertThat(deficit.meanShare()).isCloseTo(0.025505, within(1e-6));
    assertThat(deficit.worstShare()).isCloseTo(0.07612, within(1e-5));
    assertThat(measured.maximumCelsius()).isCloseTo(deficit.meanCelsius(20), within(0.01));
    assertThat(measured.minimumCelsius()).isCloseTo(deficit.meanCelsius(20), within(0.01));
    assertThat(measured.days()).isEqualTo(days);
    assertThat(deficit.presentation().toText()).contains("0.26", "0.76", "every 3 h");
    assertThatThrownBy(() -> new SamplingDeficit(Duration.ofMinutes(7)).measure(dense))
        .isInstanceOf(InputProblem.class);
  }
}
