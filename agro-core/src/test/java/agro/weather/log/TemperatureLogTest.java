package agro.weather.log;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import agro.reading.DelimitedFormat;
import agro.reading.DelimitedText;
import agro.report.InputProblem;
import agro.report.Progress;
import agro.report.ReadReport.Deed;
import agro.units.TemperatureUnit;
import agro.weather.Medium;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Logs as they come, with invented temperatures. */
class TemperatureLogTest {

  private static final ZoneId LJUBLJANA = ZoneId.of("Europe/Ljubljana");
  private static final LogFormat CIVIL =
      LogFormat.readings().withZone(LJUBLJANA).withUnit(TemperatureUnit.CELSIUS);
  private static final LogFormat DAILY =
      LogFormat.dailyExtremes().withUnit(TemperatureUnit.CELSIUS);

  private static TemperatureLog read(String text, LogFormat format) {
    var cells =
        DelimitedText.parse("log.csv", text, format.plainText(), format.plainColumns().names());
    return TemperatureLog.of(cells, format, "Upper Croft", Medium.shelterAir(), Progress.silent());
  }

  private static void refused(String text, LogFormat format, String... words) {
    assertThatThrownBy(() -> read(text, format))
        .isInstanceOf(InputProblem.class)
        .hasMessageContainingAll(words);
  }

  /**
   * Hourly lines on a clock without changes; the temperature is the hour counted from the start.
   */
  private static String hours(String from, int count) {
    var start = LocalDateTime.parse(from);
    var text = new StringBuilder("time,temperature\n");
    for (int i = 0; i < count; i++) {
      text.append(start.plusHours(i)).append(',').append(i % 24).append('\n');
    }
    return text.toString();
  }

  private static List<String> texts(TemperatureLog log, Deed deed) {
    return log.report().entries(deed).stream().map(Object::toString).toList();
  }

  @Test
  void doublesWrittenInFullAreNumbers() {
    var text = "date,min,max\n2025-01-01,-3.3618611150576623,-1.250000000000000000E-5\n";
    var days = read(text, DAILY).daily();
    assertThat(days.minimaCelsius()).containsExactly(-3.3618611150576623);
    assertThat(days.maximaCelsius()).containsExactly(-1.25E-5);

    var cool = -3.3618611150576623;
    var wave = hours("2021-05-01T00:00", 24).replace(",7\n", "," + cool + "\n");
    assertThat(wave).contains(String.valueOf(cool));
    assertThat(read(wave, LogFormat.readings()).daily().minimaCelsius()).containsExactly(cool);
  }

  @Test
  void hourlyReadingsBecomeDays() {
    var log = read(hours("2021-05-01T00:00", 48), LogFormat.readings());
    assertThat(log.daily().size()).isEqualTo(2);
    assertThat(log.daily().minimaCelsius()).containsExactly(0, 0);
    assertThat(log.daily().maximaCelsius()).containsExactly(23, 23);
    assertThat(log.report().rowsRead()).isEqualTo(48);
    assertThat(texts(log, Deed.ASSUMED))
        .anyMatch(text -> text.contains("no time zone is declared"))
        .anyMatch(text -> text.contains("no unit is declared"))
        .anyMatch(text -> text.contains("a step of 1 h"));
    assertThat(log.presentation().toText()).contains("Upper Croft", "2021-05-01 to 2021-05-02");
  }

  @Test
  void incompleteDaysAtTheEndsAreLeftOutAndTold() {
    var log = read(hours("2021-05-01T12:00", 48), LogFormat.readings());
    assertThat(log.daily().firstDay()).isEqualTo(LocalDate.of(2021, 5, 2));
    assertThat(log.daily().size()).isEqualTo(1);
    assertThat(texts(log, Deed.DROPPED))
        .anyMatch(text -> text.contains("2021-05-01: left out"))
        .anyMatch(text -> text.contains("2021-05-03: left out"));
  }

  /** Eight hours lost leave two thirds of a day; four hours and a half leave a gap too long. */
  @Test
  void daysWithTooFewReadingsAreMissing() {
    var lines = hours("2021-05-01T00:00", 72).lines().toList();
    var text = new StringBuilder();
    for (int i = 0; i < lines.size(); i++) {
      boolean lost = i > 30 && i <= 35;
      text.append(lost ? "" : lines.get(i) + "\n");
    }
    var log = read(text.toString(), LogFormat.readings());
    assertThat(log.daily().missingDays()).containsExactly(LocalDate.of(2021, 5, 2));
    assertThat(texts(log, Deed.DROPPED)).singleElement().asString().contains("2021-05-02");
  }

  @Test
  void dayMissingInsideIsTold() {
    var log = read("date,min,max\n2021-05-01,2,12\n2021-05-02,3,13\n2021-05-05,4,14\n", DAILY);
    assertThat(log.daily().missingDays())
        .containsExactly(LocalDate.of(2021, 5, 3), LocalDate.of(2021, 5, 4));
    assertThat(texts(log, Deed.NOTED))
        .singleElement()
        .asString()
        .contains("2021-05-03 to 2021-05-04 (2 days): not in the log");
  }

  @Test
  void yearMissingInsideIsTold() {
    var log = read("date,min,max\n2019-12-31,2,12\n2021-01-01,3,13\n", DAILY);
    assertThat(log.daily().missingDays()).hasSize(366);
    assertThat(texts(log, Deed.NOTED)).singleElement().asString().contains("no day at all of 2020");
  }

  @Test
  void dateWithoutItsYearIsRefused() {
    refused("date,min,max\n05-17,2,12\n", DAILY, "log.csv, line 2, column \"date\"", "\"05-17\"");
  }

  @Test
  void emptyFileAndHeaderOnlyAreRefused() {
    refused("", DAILY, "log.csv", "empty");
    refused("date,min,max\n", DAILY, "log.csv", "no lines below it");
    refused("time,temperature\n", CIVIL, "no lines below it");
  }

  @Test
  void textInANumberColumnIsRefused() {
    refused(
        "date,min,max\n2021-05-01,2,12\n2021-05-02,cold,13\n",
        DAILY,
        "log.csv, line 3, column \"min\"",
        "\"cold\"",
        "Mend:");
    refused("time,temperature\n2021-05-01T00:00,n/a\n", CIVIL, "line 2", "\"n/a\"", "Mend:");
  }

  @Test
  void minimumAboveMaximumIsRefused() {
    refused(
        "date,min,max\n2021-05-01,12,2\n",
        DAILY,
        "line 2, column \"min\"",
        "the minimum 12 of 2021-05-01 is above the maximum 2",
        "swapped");
  }

  @Test
  void datesOutOfOrderAreRefused() {
    refused(
        "date,min,max\n2021-05-02,2,12\n2021-05-01,2,12\n",
        DAILY,
        "line 3, column \"date\"",
        "the day 2021-05-01 after 2021-05-02");
    refused(
        "time,temperature\n2021-05-01T02:00,1\n2021-05-01T01:00,1\n",
        LogFormat.readings(),
        "line 3",
        "earlier than the line before it",
        "declare the time zone");
  }

  @Test
  void duplicateDayWithOtherValuesIsRefused() {
    refused(
        "date,min,max\n2021-05-01,2,12\n2021-05-01,3,12\n",
        DAILY,
        "line 3",
        "the day 2021-05-01 again, with other values");
    refused(
        "time,temperature\n2021-05-01T02:00,1\n2021-05-01T02:00,2\n",
        LogFormat.readings(),
        "line 3",
        "again, with another value");
  }

  @Test
  void exactRepetitionIsDroppedAndTold() {
    var log = read("date,min,max\n2021-05-01,2,12\n2021-05-01,2,12\n", DAILY);
    assertThat(log.daily().size()).isEqualTo(1);
    assertThat(texts(log, Deed.DROPPED)).singleElement().asString().contains("line 3", "repeats");
  }

  @Test
  void fahrenheitReadAsCelsiusIsRefusedWithTheHint() {
    refused(
        "date,min,max\n2021-05-01,45,75\n2021-05-02,48,78\n2021-05-03,50,80\n",
        LogFormat.dailyExtremes(),
        "the values look like °F that are read as °C",
        "declare the unit");
    refused(
        "date,min,max\n2021-05-01,280,295\n", LogFormat.dailyExtremes(), "the values look like K");
  }

  @Test
  void oneImplausibleValueIsDroppedAndTold() {
    var text = new StringBuilder("date,min,max\n");
    for (int day = 1; day <= 30; day++) {
      text.append(LocalDate.of(2021, 4, day)).append(",5,").append(day == 7 ? 999 : 15);
      text.append('\n');
    }
    var log = read(text.toString(), DAILY);
    assertThat(log.daily().missingDays()).containsExactly(LocalDate.of(2021, 4, 7));
    assertThat(texts(log, Deed.DROPPED))
        .anyMatch(entry -> entry.contains("line 8") && entry.contains("outside -60 to 60 °C"))
        .anyMatch(entry -> entry.contains("one extreme of a day without the other"));
  }

  @Test
  void declaredFormatsAreRead() {
    var format =
        LogFormat.dailyExtremes()
            .withText(new DelimitedFormat(';', ',', StandardCharsets.UTF_8))
            .withColumns(new LogColumns.Extremes("day", "lowest", "highest"))
            .withTimePattern("dd.MM.yyyy")
            .withUnit(TemperatureUnit.FAHRENHEIT)
            .withMissingCodes(Set.of("--"));
    var log =
        read(
            "day;highest;lowest\n01.05.2021;68,0;41,0\n02.05.2021;--;--\n03.05.2021;50;32\n",
            format);
    assertThat(log.daily().minimaCelsius()[0]).isCloseTo(5, within(1e-12));
    assertThat(log.daily().maximaCelsius()[0]).isCloseTo(20, within(1e-12));
    assertThat(log.daily().missingDays()).containsExactly(LocalDate.of(2021, 5, 2));
    refused("day;highest;lowest\n31.02.2021;68;41\n", format, "line 2", "\"31.02.2021\"");
  }

  /** In 2021 the clock went from 02:00 to 03:00 on 28 March and back from 03:00 on 31 October. */
  @Test
  void doubledHourIsReadInOrderAndDaysAreStandardTime() {
    var text = new StringBuilder("time,temperature\n");
    var start = LocalDateTime.of(2021, 10, 29, 22, 0);
    for (int i = 0; i < 96; i++) {
      var instant = start.plusHours(i).toInstant(ZoneOffset.UTC);
      var local = LocalDateTime.ofInstant(instant, LJUBLJANA);
      text.append(local).append(',').append(i % 13).append('\n');
    }
    var log = read(text.toString(), CIVIL);
    // From 22:00 UTC, which is 23:00 of standard time, until 22:00 UTC four days later.
    assertThat(log.daily().firstDay()).isEqualTo(LocalDate.of(2021, 10, 30));
    assertThat(log.daily().missingDays()).isEmpty();
    assertThat(texts(log, Deed.NOTED))
        .anyMatch(entry -> entry.contains("standard time") && entry.contains("UTC+01:00"))
        .anyMatch(entry -> entry.contains("stands in the log twice"));
    assertThat(texts(log, Deed.DROPPED)).noneMatch(entry -> entry.contains("repeats"));
  }

  @Test
  void readingInTheSkippedHourIsDroppedAndTold() {
    var log = read(hours("2021-03-27T00:00", 72), CIVIL);
    assertThat(texts(log, Deed.DROPPED))
        .anyMatch(entry -> entry.contains("a time that the clock skipped"));
    assertThat(log.daily().size()).isEqualTo(3);
  }

  @Test
  void doubledHourLoggedOnceIsAssumed() {
    var log = read(hours("2021-10-30T00:00", 72), CIVIL);
    assertThat(texts(log, Deed.ASSUMED))
        .anyMatch(entry -> entry.contains("stands in the log once"));
  }

  @Test
  void offsetsInTheTimesAreUsed() {
    var format = LogFormat.readings().withZone(ZoneOffset.ofHours(1));
    var text = new StringBuilder("time,temperature\n");
    for (int hour = 0; hour < 24; hour++) {
      var utc = LocalDateTime.of(2021, 4, 30, 23, 0).plusHours(hour);
      text.append(utc).append("Z,").append(hour).append('\n');
    }
    var log = read(text.toString(), format);
    assertThat(log.daily().firstDay()).isEqualTo(LocalDate.of(2021, 5, 1));
    assertThat(log.daily().maxCelsius(LocalDate.of(2021, 5, 1))).isEqualTo(23);
    refused(
        "time,temperature\n2021-05-01T00:00Z,1\n2021-05-01T01:00,2\n",
        format,
        "without its offset");
  }

  @Test
  void stuckSensorAndSpikeAreNotedAndUsed() {
    var text = new StringBuilder("time,temperature\n");
    var start = LocalDateTime.of(2021, 5, 1, 0, 0);
    for (int i = 0; i < 96; i++) {
      text.append(start.plusHours(i)).append(',').append(i < 48 ? i % 5 : 9).append('\n');
    }
    var spiked = text.toString().replace("2021-05-01T12:00,2\n", "2021-05-01T12:00,30\n");
    var log = read(spiked, LogFormat.readings());
    assertThat(log.daily().maxCelsius(LocalDate.of(2021, 5, 1))).isEqualTo(30);
    assertThat(texts(log, Deed.NOTED))
        .anyMatch(entry -> entry.contains("stuck sensor") && entry.contains("line 50"))
        .anyMatch(entry -> entry.contains("spike") && entry.contains("2 lines"));
  }

  @Test
  void aLogWithoutACompleteDayIsRefused() {
    refused(hours("2021-05-01T08:00", 9), CIVIL, "none of 1 days is complete", "at least 75 %");
  }

  @Test
  void formatsAreChecked() {
    assertThatThrownBy(() -> LogFormat.readings().withTimePattern("yyyy-MM-dd bb"))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("time pattern");
    assertThatThrownBy(() -> new CompletenessRule(0, Duration.ofHours(4)))
        .isInstanceOf(InputProblem.class);
  }

  /** 23:00 UTC is midnight at UTC+1, so that the day needs no reading of the evening before. */
  @Test
  void daysOfAClockOnUtcAreCutWhereDeclared() {
    var utc = LogFormat.readings().withZone(ZoneOffset.UTC);
    var text = hours("2021-04-30T23:00", 24);
    refused(
        text,
        utc.withCompleteness(CompletenessRule.USUAL).withStep(Duration.ofMinutes(30)),
        "none of 2 days");
    var log = read(text, utc.withDayOffset(ZoneOffset.ofHours(1)));
    assertThat(log.daily().firstDay()).isEqualTo(LocalDate.of(2021, 5, 1));
    assertThat(log.daily().size()).isEqualTo(1);
    assertThat(texts(log, Deed.DROPPED)).isEmpty();
    assertThat(texts(log, Deed.NOTED)).anyMatch(entry -> entry.contains("UTC+01:00 all year"));
    refused(
        text, LogFormat.readings().withDayOffset(ZoneOffset.ofHours(1)), "a clock of unknown zone");
  }
}
