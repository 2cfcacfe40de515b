package agro.programme.window;

import static agro.programme.window.InventedHours.CALM;
import static agro.programme.window.InventedHours.FIELD;
import static agro.programme.window.InventedHours.ZONE;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import agro.programme.FarmField;
import agro.report.InputProblem;
import agro.units.Length;
import agro.units.Speed;
import agro.units.Temperature;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

/** Hours against limits, one limit at a time, on days of 23, 24 and 25 hours. */
class SprayHoursTest {

  private static final LocalDate DAY = LocalDate.of(2026, 6, 18);

  private static SprayHours judge(HourlyWeather weather, SprayLimits limits) {
    return SprayHours.of(weather, FIELD, limits);
  }

  /** Numbers of the hours of the first day that meet all limits. */
  private static List<Integer> meeting(SprayHours hours) {
    var found = new ArrayList<Integer>();
    var day = hours.days().get(0).hours();
    for (int i = 0; i < day.size(); i++) {
      if (day.get(i).meetsAll()) {
        found.add(i);
      }
    }
    return found;
  }

  private static List<Integer> range(int from, int to) {
    return IntStream.rangeClosed(from, to).boxed().toList();
  }

  @Test
  void windAndGustsAreHeldAgainstTheirLimits() {
    var weather =
        InventedHours.hours(
            DAY,
            24,
            i -> (i < 8 ? "2.0" : i < 16 ? "3.0" : "3.1") + (i == 4 ? ",9" : ",4") + ",0,16,60");
    var limits = SprayLimits.none().windUpTo(Speed.parse("3 m/s")).gustsUpTo(Speed.parse("8 m/s"));
    var hours = judge(weather, limits);
    assertThat(meeting(hours)).hasSize(15).doesNotContain(4, 16);
    var day = hours.days().get(0);
    assertThat(day.longestRun()).isEqualTo(11);
    assertThat(day.runStart()).contains(DAY.atTime(5, 0).atZone(ZONE).toInstant());
    assertThat(day.hours().get(4).letters()).isEqualTo("g");
    assertThat(day.hours().get(20).letters()).isEqualTo("w");
    assertThat(hours.table().toCsv()).contains("gusts\u00a01, wind\u00a08");
  }

  @Test
  void temperatureAndHumidityAreSpans() {
    var weather = InventedHours.hours(DAY, 24, i -> "2,4,0," + i + "," + (100 - 3 * i));
    var limits =
        SprayLimits.none()
            .temperatureBetween(Temperature.ofCelsius(8), Temperature.ofCelsius(20))
            .humidityBetween(50, 90);
    assertThat(meeting(judge(weather, limits))).isEqualTo(range(8, 16));
  }

  @Test
  void rainCountsBeforeAndAfterAndWhereItIsNotKnownTheHourDoesNotCount() {
    var weather = InventedHours.hours(DAY, 48, i -> "2,4," + (i == 12 ? "0.4" : "0") + ",16,60");
    var after = judge(weather, SprayLimits.none().rainAfter(3, Length.parse("0 mm")));
    var expected = new ArrayList<>(range(0, 8));
    expected.addAll(range(13, 23));
    assertThat(meeting(after)).isEqualTo(expected);
    assertThat(after.days().get(1).hours().get(21).letters()).isEqualTo("?");
    assertThat(after.days().get(1).hours().get(20).meetsAll()).isTrue();
    var before = judge(weather, SprayLimits.none().rainBefore(2, Length.parse("0.3 mm")));
    expected = new ArrayList<>(range(2, 12));
    expected.addAll(range(15, 23));
    assertThat(meeting(before)).isEqualTo(expected);
    assertThat(meeting(judge(weather, SprayLimits.none().rainAfter(3, Length.parse("0.4 mm")))))
        .hasSize(24);
  }

  @Test
  void whatTheFileDoesNotHoldIsNotJudgedAndSaid() {
    var weather = InventedHours.parse("time,air_c\n", DAY, 24, i -> "16");
    var limits =
        SprayLimits.none()
            .windUpTo(Speed.parse("3 m/s"))
            .temperatureBetween(Temperature.ofCelsius(5), Temperature.ofCelsius(25));
    var hours = judge(weather, limits);
    assertThat(hours.notJudged()).hasSize(1);
    assertThat(hours.notJudged().get(0)).contains("wind is not in the file: not judged");
    assertThat(meeting(hours)).hasSize(24);
    assertThat(hours.presentation().toText())
        .contains("Not judged")
        .contains("rain is not in the file");
  }

  @Test
  void aValueMissingInOneHourLeavesThatHourOpen() {
    var weather = InventedHours.hours(DAY, 24, i -> (i == 9 ? "" : "2") + ",4,0,16,60");
    var hours = judge(weather, SprayLimits.none().windUpTo(Speed.parse("3 m/s")));
    assertThat(meeting(hours)).hasSize(23).doesNotContain(9);
    assertThat(hours.days().get(0).complete()).isFalse();
    assertThat(hours.table().toCsv()).contains("missing in 1");
  }

  /** In June at 46.4° N the sun rises at about 5:10 and sets at about 20:55 of summer time. */
  @Test
  void stillAirCountsBetweenEveningAndMorningOnly() {
    var weather = InventedHours.hours(DAY, 24, i -> (i == 2 ? "1.5" : "0.5") + ",1,0,16,60");
    var limits =
        SprayLimits.none()
            .noStillNightAir(Speed.parse("1 m/s"), Duration.ofHours(1), Duration.ofHours(1));
    var expected = new ArrayList<>(List.of(2));
    expected.addAll(range(7, 18));
    assertThat(meeting(judge(weather, limits))).isEqualTo(expected);
    var nowhere = SprayHours.of(weather, FarmField.of("A field", ZONE), limits);
    assertThat(nowhere.notJudged().get(0)).contains("latitude and longitude");
  }

  @Test
  void eveningDaylightBeesAndWorkingHours() {
    var weather = InventedHours.hours(DAY, 24, i -> CALM);
    var evening =
        SprayLimits.none().forTreatment(ResidueDays.lasting(5).inTheEvening(), Duration.ofHours(2));
    assertThat(meeting(judge(weather, evening)))
        .isEqualTo(List.of(0, 1, 2, 3, 4, 19, 20, 21, 22, 23));
    assertThat(meeting(judge(weather, SprayLimits.none().byDaylight()))).isEqualTo(range(6, 19));
    assertThat(meeting(judge(weather, SprayLimits.none().notWhileBeesFly(Duration.ZERO))))
        .isEqualTo(List.of(0, 1, 2, 3, 4, 21, 22, 23));
    assertThat(meeting(judge(weather, SprayLimits.none().notWhileBeesFly(Duration.ofHours(1)))))
        .isEqualTo(List.of(0, 1, 2, 3, 22, 23));
    var cold = SprayLimits.none().and(new HourLimit.NoBees(Duration.ZERO, OptionalDouble.of(17)));
    assertThat(meeting(judge(weather, cold))).hasSize(24);
    var clock = SprayLimits.none().between(LocalTime.of(20, 0), LocalTime.of(2, 0));
    assertThat(meeting(judge(weather, clock))).isEqualTo(List.of(0, 1, 20, 21, 22, 23));
  }

  @Test
  void aTreatmentBringsItsDryHours() {
    var weather = InventedHours.hours(DAY, 24, i -> "2,4," + (i == 12 ? "1" : "0") + ",16,60");
    var limits =
        SprayLimits.none()
            .forTreatment(ResidueDays.lasting(5).needingHoursWithoutRain(5.5), Duration.ofHours(2));
    assertThat(meeting(judge(weather, limits)))
        .isEqualTo(
            IntStream.concat(IntStream.rangeClosed(0, 5), IntStream.rangeClosed(13, 17))
                .boxed()
                .toList());
  }

  @Test
  void aRunMayGoOnPastMidnightAndBelongsToTheDayOfItsBeginning() {
    var weather = InventedHours.hours(DAY, 48, i -> (i >= 21 && i < 27 ? "2" : "7") + ",4,0,16,60");
    var hours = judge(weather, SprayLimits.none().windUpTo(Speed.parse("3 m/s")));
    assertThat(hours.days().get(0).meeting()).isEqualTo(3);
    assertThat(hours.days().get(0).longestRun()).isEqualTo(6);
    assertThat(hours.days().get(1).longestRun()).isEqualTo(3);
  }

  @Test
  void daysOnWhichTheClockChangesHaveTheirHours() {
    var spring = LocalDate.of(2026, 3, 29);
    var autumn = LocalDate.of(2026, 10, 25);
    var limits = SprayLimits.none().windUpTo(Speed.parse("3 m/s"));
    var short23 = judge(InventedHours.hours(spring, 23, i -> CALM), limits).days();
    assertThat(short23).hasSize(1);
    assertThat(short23.get(0).dayHours()).isEqualTo(23);
    assertThat(short23.get(0).complete()).isTrue();
    assertThat(short23.get(0).longestRun()).isEqualTo(23);
    var long25 = judge(InventedHours.hours(autumn, 25, i -> CALM), limits);
    assertThat(long25.days()).hasSize(1);
    assertThat(long25.days().get(0).longestRun()).isEqualTo(25);
    assertThat(long25.hourTable().toCsv())
        .contains("02:00\u00a0+02:00")
        .contains("02:00\u00a0+01:00");
    var clock = SprayLimits.none().between(LocalTime.of(2, 0), LocalTime.of(4, 0));
    assertThat(judge(InventedHours.hours(spring, 23, i -> CALM), clock).days().get(0).meeting())
        .isEqualTo(1);
    assertThat(judge(InventedHours.hours(autumn, 25, i -> CALM), clock).days().get(0).meeting())
        .isEqualTo(3);
    assertThat(long25.sheets("Hours", Optional.empty())).hasSize(1);
  }

  @Property(seed = "8", tries = 60)
  void moreLimitsNeverGiveMoreHoursAndTheirOrderDoesNotMatter(@ForAll long seed) {
    var random = new Random(seed);
    var weather =
        InventedHours.hours(
            DAY,
            72,
            i ->
                random.nextInt(7)
                    + ","
                    + random.nextInt(12)
                    + ","
                    + Math.max(0, random.nextInt(9) - 7)
                    + ","
                    + random.nextInt(30)
                    + ","
                    + random.nextInt(100));
    var limits =
        new ArrayList<>(
            SprayLimits.none()
                .windUpTo(Speed.parse("4 m/s"))
                .rainAfter(2, Length.parse("0.5 mm"))
                .humidityBetween(20, 95)
                .byDaylight()
                .limits());
    int before = Integer.MAX_VALUE;
    for (int i = 0; i <= limits.size(); i++) {
      int now = count(judge(weather, new SprayLimits(limits.subList(0, i))));
      assertThat(now).isLessThanOrEqualTo(before);
      before = now;
    }
    Collections.shuffle(limits, random);
    assertThat(count(judge(weather, new SprayLimits(limits)))).isEqualTo(before);
  }

  private static int count(SprayHours hours) {
    return hours.days().stream().mapToInt(SprayDay::meeting).sum();
  }

  @Test
  void theSheetShowsBarsAndLettersInGreysAndEscapesWords() {
    var weather = InventedHours.hours(DAY, 24 * 30, i -> (i % 5 == 0 ? "7" : "2") + ",4,0,16,60");
    var limits = SprayLimits.none().windUpTo(Speed.parse("3 m/s"));
    var job = SprayJob.of(agro.units.Area.parse("3 ha"), 1);
    var sheets = judge(weather, limits).sheets("<Upper Croft>", Optional.of(job));
    assertThat(sheets).hasSize(2);
    var svg = sheets.get(0).toSvg();
    assertThat(svg)
        .contains("&lt;Upper Croft&gt;")
        .contains("4 h, job fits")
        .contains("wind at most 3")
        .doesNotContain("<Upper");
    assertThat(sheets.get(0).marks().stream().filter(Sheets::isBar).count())
        .isEqualTo(
            judge(weather, limits).days().subList(0, 21).stream().mapToInt(SprayDay::meeting).sum()
                + 1);
  }

  /** Marks of a sheet. */
  private static final class Sheets {
    static boolean isBar(agro.working.Sheet.Mark mark) {
      return mark instanceof agro.working.Sheet.Shade shade && shade.grey() == 0;
    }
  }

  @Test
  void limitsThatCannotBeAreRefused() {
    assertThatThrownBy(() -> SprayLimits.none().humidityBetween(90, 50))
        .isInstanceOf(InputProblem.class);
    assertThatThrownBy(() -> new HourLimit.RainAfter(-1, 0)).isInstanceOf(InputProblem.class);
    assertThatThrownBy(() -> new HourLimit.RainBefore(0, 0)).isInstanceOf(InputProblem.class);
    assertThatThrownBy(() -> new HourLimit.InversionRisk(0, Duration.ZERO, Duration.ZERO))
        .isInstanceOf(InputProblem.class);
  }
}
