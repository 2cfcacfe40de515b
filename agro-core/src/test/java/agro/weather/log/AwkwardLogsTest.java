package agro.weather.log;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowable;
import static org.assertj.core.api.Assertions.within;

import agro.ReferenceTable;
import agro.report.InputProblem;
import agro.units.TemperatureUnit;
import agro.weather.Medium;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.net.URISyntaxException;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The corpus of awkward logs. All are invented and written by corpus.py, which computes from the
 * invented truth what has to come out; nothing in the index comes from the reader.
 */
class AwkwardLogsTest {

  /** Two decimals of °F are good to 0.003 °C. */
  private static final double TOLERANCE = 0.006;

  static List<NamedCsvRecord> index() {
    return ReferenceTable.read(AwkwardLogsTest.class, "corpus/index.csv");
  }

  static List<NamedCsvRecord> readable() {
    return index().stream().filter(line -> line.getField("outcome").equals("read")).toList();
  }

  static List<NamedCsvRecord> unreadable() {
    return index().stream().filter(line -> line.getField("outcome").equals("refused")).toList();
  }

  static Path file(String name) throws URISyntaxException {
    var found = AwkwardLogsTest.class.getResource("corpus/" + name);
    return Path.of(Objects.requireNonNull(found, name).toURI());
  }

  static LogFormat format(String option) {
    var declared = LogFormat.detect();
    if (option.isEmpty()) {
      return declared;
    }
    var parts = option.split("=", 2);
    return switch (parts[0]) {
      case "unit" -> declared.withUnit(TemperatureUnit.valueOf(parts[1]));
      case "sensor" -> declared.withSensor(parts[1]);
      case "serial" -> declared.withSerialDays(SerialDays.valueOf(parts[1]));
      case "zone" -> declared.withZone(ZoneId.of(parts[1]));
      case "column" -> declared.withColumns(new LogColumns.Readings("time", parts[1]));
      case "moved" ->
          declared.withExtremesReadAt(
              new ExtremesReadAt(LocalTime.parse(parts[1]), ExtremesReadAt.MaximumDay.DAY_BEFORE));
      default -> throw new IllegalArgumentException(option);
    };
  }

  private static TemperatureLog read(String name, LogFormat format) throws URISyntaxException {
    return TemperatureLog.read(file(name), format, "Osmere Vale", Medium.shelterAir());
  }

  @ParameterizedTest
  @MethodSource("readable")
  void isReadRight(NamedCsvRecord line) throws URISyntaxException {
    var log = read(line.getField("file"), format(line.getField("options")));
    assertHolds(line, log);
    for (var words : line.getField("words").split("\\|", -1)) {
      assertThat(log.report().toString()).contains(words);
    }
  }

  /** What was detected is declared, and then the same comes out and nothing is detected. */
  @ParameterizedTest
  @MethodSource("readable")
  void whatWasDetectedCanBeDeclared(NamedCsvRecord line) throws URISyntaxException {
    var name = line.getField("file");
    var first = read(name, format(line.getField("options")));
    var again = read(name, first.format());
    assertThat(again.format()).isEqualTo(first.format());
    assertThat(again.readings()).isEqualTo(first.readings());
    assertThat(again.daily()).isEqualTo(first.daily());
    assertThat(again.report().toString())
        .doesNotContain("no unit is declared", "taken for missing", "are read as", "a step of");
    assertHolds(line, again);
  }

  private static void assertHolds(NamedCsvRecord line, TemperatureLog log) {
    if (!line.getField("readings").isEmpty()) {
      var readings = log.readings().orElseThrow();
      int last = ReferenceTable.whole(line, "readings") - 1;
      assertThat(readings.size()).isEqualTo(last + 1);
      assertThat(Instant.ofEpochSecond(readings.epochSecond(0))).isEqualTo(line.getField("first"));
      assertThat(Instant.ofEpochSecond(readings.epochSecond(last)))
          .isEqualTo(line.getField("last"));
      assertThat(readings.celsius(0)).isCloseTo(number(line, "first_c"), within(TOLERANCE));
      assertThat(readings.celsius(last)).isCloseTo(number(line, "last_c"), within(TOLERANCE));
    }
    var day = LocalDate.parse(line.getField("day"));
    assertThat(log.daily().firstDay()).isEqualTo(day);
    assertThat(log.daily().size()).isEqualTo(ReferenceTable.whole(line, "days"));
    assertThat(log.daily().missingDays()).isEmpty();
    assertThat(log.daily().minCelsius(day)).isCloseTo(number(line, "min"), within(TOLERANCE));
    assertThat(log.daily().maxCelsius(day)).isCloseTo(number(line, "max"), within(TOLERANCE));
  }

  private static double number(NamedCsvRecord line, String column) {
    return ReferenceTable.number(line, column);
  }

  @ParameterizedTest
  @MethodSource("unreadable")
  void isRefusedWithTheRightSentence(NamedCsvRecord line) {
    var thrown =
        catchThrowable(() -> read(line.getField("file"), format(line.getField("options"))));
    assertThat(thrown).isInstanceOf(InputProblem.class);
    assertThat(thrown)
        .hasMessageContaining(line.getField("file"))
        .hasMessageContainingAll(line.getField("words").split("\\|", -1));
  }

  /** Nothing is said about the medium, so the heading is asked. */
  @Test
  void theMediumIsThatOfTheHeading() throws URISyntaxException {
    var soil = TemperatureLog.read(file("soil-in-heading.csv"));
    assertThat(soil.daily().medium()).isEqualTo(new Medium.Soil(0.1));
    assertThat(soil.readings().orElseThrow().medium()).isEqualTo(new Medium.Soil(0.1));
    assertThat(soil.report().toString()).contains("soil at 10 cm").doesNotContain("medium given");
    var sensor = LogFormat.detect().withSensor("Soil");
    var undug = TemperatureLog.read(file("two-sensors.csv"), sensor);
    assertThat(undug.daily().medium()).isEqualTo(new Medium.Soil(0.1));
    assertThat(undug.report().toString()).contains("but not how deep");
    var air = TemperatureLog.read(file("two-sensors.csv"), LogFormat.detect().withSensor("Air"));
    assertThat(air.daily().medium()).isEqualTo(Medium.shelterAir());
    assertThat(read("soil-in-heading.csv", LogFormat.detect()).report().toString())
        .contains("the medium given is air in a shelter");
  }

  @Test
  void corpusIsLargeEnough() {
    assertThat(readable()).hasSizeGreaterThanOrEqualTo(30);
    assertThat(unreadable()).hasSizeGreaterThanOrEqualTo(30);
  }
}
