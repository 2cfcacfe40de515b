package agro.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import agro.generation.FlightShare;
import agro.generation.ForecastRow;
import agro.generation.SeasonEnd;
import agro.report.InputProblem;
import agro.report.ReadReport.Deed;
import agro.weather.DayOrigin;
import agro.weather.sun.DayLength;
import agro.weather.sun.Latitude;
import agro.weather.sun.SunHeight;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.MonthDay;
import java.util.Locale;
import java.util.function.UnaryOperator;
import org.assertj.core.api.AbstractThrowableAssert;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Stages, limits of the season, trend and errors of forecast days in a season folder. */
class ForecastTablesTest {

  private static final String STAGES = "pest,stage,after_flight_c_d,lower_c,upper_c,source\n";

  @TempDir Path temporary;

  private BellbirdDistrict district() {
    return new BellbirdDistrict(temporary.resolve("district"));
  }

  private AbstractThrowableAssert<?, ? extends Throwable> reading(
      UnaryOperator<BellbirdDistrict> change) {
    var folder = change.apply(district()).folder;
    return assertThatThrownBy(() -> SeasonFolder.read(folder)).isInstanceOf(InputProblem.class);
  }

  @Test
  void stagesStandInTheForecast() {
    var seasons =
        district()
            .put(
                "stages.csv",
                STAGES
                    + "tomato leafminer,eggs hatch,70,8.0,37.3,invented for demonstration\n"
                    + "tomato leafminer,larvae half grown,150,9.5,35,Someone (2015) A paper\n")
            .seasons();
    assertThat(seasons.pest().stages())
        .extracting(stage -> stage.stage())
        .containsExactly("eggs hatch", "larvae half grown");
    assertThat(seasons.pest().stages().get(1).source().title()).isEqualTo("Someone (2015) A paper");
    var forecast = seasons.forecast(seasons.fit(), 1);
    var events =
        forecast.rows().stream()
            .filter(row -> row.share() == FlightShare.HALF)
            .map(row -> row.event())
            .distinct()
            .toList();
    assertThat(events).containsExactly("flight", "eggs hatch", "larvae half grown");
  }

  /** A table with its heading alone, as the template writes it, is no table of stages. */
  @Test
  void aHeadingAloneIsNoStage() {
    assertThat(district().put("stages.csv", STAGES).seasons().pest().stages()).isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "tomato leafminor,eggs,70,8,37,x|\"pest\"|write \"tomato leafminer\" if that is meant",
        "tomato leafminer,flight,70,8,37,x|\"stage\"|none with the name of the flight itself",
        "tomato leafminer,eggs,-70,8,37,x|\"after_flight_c_d\"|a stage follows the flight",
        "tomato leafminer,eggs,70,80,,x|\"lower_c\"|from -20 to 60 °C",
        "tomato leafminer,eggs,70,8,7,x|\"upper_c\"|an upper threshold above the lower one",
        "tomato leafminer,eggs,70,8,,x|\"upper_c\"|upper threshold",
        "tomato leafminer,eggs,70,8,37,|\"source\"|source",
      })
  void stagesThatCannotBe(String line, String where, String what) {
    reading(district -> district.put("stages.csv", STAGES + line + "\n"))
        .hasMessageContaining("stages.csv")
        .hasMessageContaining("line 2")
        .hasMessageContaining(where)
        .hasMessageContaining(what);
  }

  @Test
  void aStageTwice() {
    var line = "tomato leafminer,eggs,70,8,37,x\n";
    reading(district -> district.put("stages.csv", STAGES + line + line))
        .hasMessageContaining("line 3")
        .hasMessageContaining("each stage of a pest once");
  }

  /** South of the equator, over New Year: the cut falls on the day that day length tells. */
  @Test
  void criticalDayLength() {
    var seasons =
        district()
            .column("pests.csv", "critical_day_length_h", "13.5")
            .column("pests.csv", "day_length_source", "invented for demonstration")
            .column("pests.csv", "day_length_ends", "civil twilight")
            .seasons();
    var season = seasons.ahead(1).underWay();
    var cut = season.limits().dayLength().orElseThrow();
    var day = cut.firstShortDay(season.firstDay(), season.lastDay()).orElseThrow();
    var rule = DayLength.at(Latitude.south(37.9)).with(SunHeight.CIVIL_TWILIGHT);
    assertThat(day).isAfter(LocalDate.of(2024, 1, 1));
    assertThat(rule.hours(day)).isLessThan(13.5);
    assertThat(rule.hours(day.minusDays(1))).isGreaterThanOrEqualTo(13.5);
  }

  @Test
  void lastUsefulDayAndCold() {
    var district = district();
    var free = next(district);
    var day = free.dates().quantile(0.6).orElseThrow();
    var written = String.format(Locale.ROOT, "%02d-%02d", day.getMonthValue(), day.getDayOfMonth());
    var cut =
        next(
            district
                .column("pests.csv", "last_useful_day", written)
                .column("pests.csv", "cold_end_c", "2")
                .column("pests.csv", "cold_end_from", "04-01")
                .column("pests.csv", "cold_end_source", "invented for demonstration"));
    var limits = district.seasons().pest().limits();
    assertThat(limits.lastUsefulDay()).contains(MonthDay.from(day));
    assertThat(limits.cold().orElseThrow().from()).isEqualTo(MonthDay.of(4, 1));
    assertThat(free.notThisSeason().chance(SeasonEnd.LAST_USEFUL_DAY)).isZero();
    assertThat(cut.notThisSeason().chance(SeasonEnd.LAST_USEFUL_DAY))
        .isCloseTo(1 - free.dates().chanceBy(day), within(1e-12))
        .isPositive();
  }

  private static ForecastRow next(BellbirdDistrict district) {
    var seasons = district.seasons();
    return seasons.forecast(seasons.fit(), 1).flight(5, FlightShare.HALF).orElseThrow();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "critical_day_length_h|25|hours above 0 and below 24",
        "critical_day_length_h|14|day_length_source",
        "day_length_source|somebody|fill in critical_day_length_h",
        "cold_end_c|-2|cold_end_from",
        "cold_end_from|04-01|fill in cold_end_c",
        "last_useful_day|06-15|a day of the season, 1 September to 30 April",
        "last_useful_day|15 March|such as 03-01",
      })
  void limitsThatCannotBe(String column, String cell, String what) {
    reading(district -> district.column("pests.csv", column, cell))
        .hasMessageContaining("pests.csv")
        .hasMessageContaining("line ")
        .hasMessageContaining(what);
  }

  @Test
  void dayLengthWithoutALatitude() {
    var district =
        district()
            .column("pests.csv", "critical_day_length_h", "13.5")
            .column("pests.csv", "day_length_source", "invented for demonstration")
            .put(
                "places.csv",
                """
                place,medium,sensor_m,neighbour
                Bellbird Flat,tunnel,,Town mast
                Town mast,shelter air,1.5,
                """);
    var seasons = district.seasons();
    assertThat(seasons.fit().verdict().usable()).isFalse();
    assertThatThrownBy(() -> seasons.ahead(1))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("no latitude of Bellbird Flat")
        .hasMessageContaining("critical_day_length_h");
  }

  /** Each past year is warmer by the trend times the decades since, and the pages say so. */
  @Test
  void aStatedTrendMovesThePastYears() {
    var district = district();
    var plain = district.seasons().ahead(1);
    var moved =
        district
            .column("places.csv", "trend_c_per_decade", "0.4")
            .column("places.csv", "trend_source", "invented for demonstration")
            .seasons();
    var ahead = moved.ahead(1);
    var days = plain.underWay().members();
    assertThat(ahead.underWay().members()).hasSameSizeAs(days);
    for (var m = 0; m < days.size(); m++) {
      var day = days.get(m).firstDay().plusDays(3);
      var years = days.size() - m;
      assertThat(ahead.underWay().members().get(m).maxCelsius(day))
          .isCloseTo(days.get(m).maxCelsius(day) + 0.04 * years, within(1e-9));
    }
    assertThat(ahead.report().entries(Deed.ASSUMED).toString())
        .contains("trend of 0.4 °C a decade");
    var forecast = moved.forecast(moved.fit(), 1);
    assertThat(forecast.report().entries(Deed.ASSUMED).toString())
        .contains("moved along a trend of 0.4 °C a decade, as stated");
    assertThat(forecast.details().toText().replaceAll("\\s+", " "))
        .contains("moved along a stated trend of 0.4 °C a decade");
  }

  @Test
  void aTrendThatIsNone() {
    reading(district -> district.column("places.csv", "trend_c_per_decade", "30"))
        .hasMessageContaining("places.csv")
        .hasMessageContaining("at most 2 °C a decade");
  }

  /** Errors of forecast days go by the days since the forecast was made. */
  @Test
  void forecastDaysCarryTheirErrors() {
    var district = district();
    var log = new StringBuilder("Day\tCold\tHot\n");
    for (var day = 11; day <= 15; day++) {
      log.append(day).append("/2/2024\t60\t90\n");
    }
    district
        .put("foreseen.tsv", log.toString())
        .column("logs.csv", "made_on", "")
        .column("logs.csv", "errors_c", "")
        .append(
            "logs.csv",
            "Bellbird Flat,foreseen.tsv,forecast days,[degF],tab,point,Day,d/M/yyyy,Cold,Hot,,"
                + "2024-02-10,1.0 1.5 2\n");
    var season = district.seasons().ahead(1).underWay();
    var known = season.known();
    assertThat(known.lastDay()).isEqualTo("2024-02-15");
    assertThat(known.origin(LocalDate.of(2024, 2, 11))).isEqualTo(DayOrigin.FORECAST);
    assertThat(known.minStandardErrorCelsius(LocalDate.of(2024, 2, 11))).isEqualTo(1.5);
    assertThat(known.maxStandardErrorCelsius(LocalDate.of(2024, 2, 12))).isEqualTo(2);
    assertThat(known.maxStandardErrorCelsius(LocalDate.of(2024, 2, 15))).isEqualTo(2);
  }

  @Test
  void errorsThatAreNone() {
    reading(
            district ->
                district
                    .put("foreseen.tsv", "Day\tCold\tHot\n11/2/2024\t60\t90\n")
                    .column("logs.csv", "made_on", "")
                    .column("logs.csv", "errors_c", "")
                    .append(
                        "logs.csv",
                        "Bellbird Flat,foreseen.tsv,forecast days,[degF],tab,point,Day,d/M/yyyy,"
                            + "Cold,Hot,,2024-02-10,1 -2\n"))
        .hasMessageContaining("logs.csv")
        .hasMessageContaining("standard errors in °C, each 0 or more");
  }

  /** The errors of bridged days hang together as the two logs show. */
  @Test
  void bridgedDaysCarryTheErrorsOfTheOffset() {
    var seasons = district().seasons();
    var errors = seasons.ahead(1).underWay().errors();
    assertThat(errors.offsetMinCelsius())
        .isEqualTo(seasons.offset().orElseThrow().errorMinCelsius());
    assertThat(errors.correlation().dayToDay()).isBetween(0.0, 0.99);
    assertThat(errors.correlation().minToMax()).isBetween(-1.0, 1.0);
  }
}
