package agro.notebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import agro.development.ThermalTimeBounds;
import agro.development.ThermalTimeError;
import agro.development.ThermalTimeErrorDate;
import agro.notebook.figure.DrawnFigure;
import agro.notebook.run.NotebookRun;
import agro.notebook.run.NotebookRunner;
import agro.units.TemperatureUnit;
import agro.weather.DailyTemperatures;
import agro.weather.archive.ArchivedDays;
import agro.weather.archive.ArchivedReadings;
import agro.weather.gap.FilledDays;
import agro.weather.gap.FilledReadings;
import agro.weather.gap.GapMethod;
import agro.weather.gap.GapTrial;
import agro.weather.gap.ReadingGapMethod;
import agro.weather.log.CellSeparator;
import agro.weather.log.DateOrder;
import agro.weather.log.DecimalMark;
import agro.weather.log.TemperatureLog;
import agro.weather.quality.QualityFlags;
import agro.weather.quality.QualityRule;
import agro.weather.siting.ObservationBias;
import agro.weather.siting.ReadingHourHint;
import agro.weather.siting.SoilEstimate;
import agro.working.Cell;
import agro.working.ResultTable;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * The notebook of bad logs says what is in the files, which this test reads line by line in its own
 * plain way, and what can be computed from that by other means. What the invented weather adds is a
 * regression and proves nothing about real loggers.
 */
class FieldLogNotebookTest {

  private static final Path VALE = Path.of("..", "demo-data", "osmere-vale");
  private static final double LOWER = 7;

  private static NotebookRun run;

  @BeforeAll
  static void runTheNotebook() {
    run =
        NotebookRunner.standard()
            .withParameter("folder", VALE.toString().replace('\\', '/'))
            .run(Path.of("..", "notebooks", "05-a-log-from-the-field.ipynb"));
    assertThat(run.failed()).isEmpty();
  }

  private static List<String[]> lines(String file, String separator) throws IOException {
    return Files.readAllLines(VALE.resolve("logs").resolve(file), StandardCharsets.UTF_8).stream()
        .skip(3)
        .map(line -> line.split(separator))
        .toList();
  }

  private static double celsius(String fahrenheit) {
    return (Double.parseDouble(fahrenheit.replace(',', '.')) - 32) / 1.8;
  }

  @Test
  void theBookInFahrenheit() throws IOException {
    var book = run.checked("book", TemperatureLog.class);
    assertThat(book.format().table().separator()).contains(CellSeparator.SEMICOLON);
    assertThat(book.format().table().decimalMark()).contains(DecimalMark.COMMA);
    assertThat(book.format().times().order()).contains(DateOrder.DAY_FIRST);
    assertThat(book.format().unit()).contains(TemperatureUnit.FAHRENHEIT);
    assertThat(book.format().missingCodes()).containsExactly("--");
    assertThat(book.presentation().toText()).contains(".withDateOrder(DateOrder.DAY_FIRST)");
    var declared = run.checked("mill", DailyTemperatures.class);
    assertThat(declared.place()).isEqualTo("Mill Field");
    assertThat(declared.maximaCelsius()).isEqualTo(book.daily().maximaCelsius());
    var rows = lines("mill-field.csv", ";");
    assertThat(declared.size()).isEqualTo(rows.size());
    for (int i = 0; i < rows.size(); i++) {
      var day = declared.day(i);
      assertThat(declared.extremes(day).isEmpty()).isEqualTo(rows.get(i)[1].equals("--"));
      if (!rows.get(i)[1].equals("--")) {
        assertThat(declared.maxCelsius(day)).isCloseTo(celsius(rows.get(i)[1]), within(1e-9));
        assertThat(declared.minCelsius(day)).isCloseTo(celsius(rows.get(i)[2]), within(1e-9));
      }
    }
  }

  /** The hour that comes twice: two readings an hour apart, and no reading lost. */
  @Test
  void theClockThatIsSetBack() throws IOException {
    var croft = run.checked("croft", TemperatureLog.class);
    var rows = lines("upper-croft-2024.csv", ",");
    long stored = rows.stream().filter(row -> !row[1].equals("-999")).count();
    var readings = croft.readings().orElseThrow();
    assertThat(readings.size()).isEqualTo((int) stored);
    var twice =
        rows.stream()
            .filter(row -> row[0].equals("2024-10-27 02:00"))
            .mapToDouble(row -> Double.parseDouble(row[1]))
            .toArray();
    assertThat(twice).hasSize(2);
    long first = java.time.Instant.parse("2024-10-27T00:00:00Z").getEpochSecond();
    int at = Arrays.binarySearch(readings.epochSeconds(), first);
    assertThat(readings.celsius(at)).isEqualTo(twice[0]);
    assertThat(readings.epochSecond(at + 1)).isEqualTo(first + 3600);
    assertThat(readings.celsius(at + 1)).isEqualTo(twice[1]);
    assertThat(croft.daily().missingDays()).hasSize(10).contains(LocalDate.of(2024, 7, 1));
    assertThat(croft.report().toString()).doesNotContain("cut off");
  }

  @Test
  void theFaultsOfSandLane() throws IOException {
    var sand = run.checked("sand", TemperatureLog.class);
    var rows = lines("sand-lane-2026.csv", ",");
    var values = rows.stream().mapToDouble(row -> Double.parseDouble(row[1])).toArray();
    long impossible = Arrays.stream(values).filter(value -> value > 60).count();
    assertThat(impossible).isEqualTo(4);
    assertThat(sand.readings().orElseThrow().size()).isEqualTo(rows.size() - 4);
    var flags = run.checked("flags", QualityFlags.class);
    var stuck = flags.of(QualityRule.STUCK);
    assertThat(stuck).hasSize(1);
    assertThat(stuck.get(0).places()).isEqualTo(longestRun(values)).isEqualTo(45);
    assertThat(flags.of(QualityRule.SPIKE)).hasSize((int) spikes(values)).hasSize(2);
    assertThat(flags.of(QualityRule.STEP)).hasSize(1);
    assertThat(flags.valuesFlagged(flags.rulesBroken())).isEqualTo(48);
    assertThat(run.checked("days", QualityFlags.class).all()).isEmpty();
  }

  private static int longestRun(double[] values) {
    int longest = 1;
    int length = 1;
    for (int i = 1; i < values.length; i++) {
      length = values[i] == values[i - 1] ? length + 1 : 1;
      longest = Math.max(longest, length);
    }
    return longest;
  }

  /** Readings that stand 15 °C off both neighbours and are possible weather. */
  private static long spikes(double[] values) {
    long found = 0;
    for (int i = 1; i + 1 < values.length; i++) {
      double off = values[i] - Math.max(values[i - 1], values[i + 1]);
      found += off > 15 && values[i] < 60 ? 1 : 0;
    }
    return found;
  }

  @Test
  void hoursAreMendedByShape() {
    var mended = run.checked("mended", FilledReadings.class);
    assertThat(mended.readings().size()).isEqualTo(105 * 96);
    assertThat(mended.gaps()).hasSize(7);
    assertThat(mended.gaps().get(2).method()).isEqualTo(ReadingGapMethod.DIURNAL_SHAPE);
    assertThat(mended.gaps().get(2).readings()).isEqualTo(45);
  }

  /** Sums over readings and over extremes, once more by a plain trapezoid and by integration. */
  @Test
  void whatTheFaultsWereWorth() {
    var rows = run.checked("faults", ResultTable.class).rows();
    var mended = run.checked("mended", FilledReadings.class);
    assertThat(value(rows.get(0).get(2))).isCloseTo(trapezoid(mended), within(0.3));
    assertThat(value(rows.get(1).get(2))).isCloseTo(sineSum(mended.daily()), within(0.01));
    assertThat(value(rows.get(0).get(1)) - value(rows.get(0).get(2))).isCloseTo(0.4, within(0.3));
    assertThat(value(rows.get(1).get(1)) - value(rows.get(1).get(2))).isCloseTo(13.4, within(0.3));
  }

  private static double trapezoid(FilledReadings mended) {
    double sum = 0;
    var readings = mended.readings();
    for (int i = 1; i < readings.size(); i++) {
      double one = Math.max(0, readings.celsius(i - 1) - LOWER);
      double other = Math.max(0, readings.celsius(i) - LOWER);
      sum += (one + other) / 2 / 96;
    }
    return sum;
  }

  private static double sineSum(DailyTemperatures days) {
    double sum = 0;
    for (int i = 0; i < days.size(); i++) {
      sum += sineDay(days.minCelsius(days.day(i)), days.maxCelsius(days.day(i)));
    }
    return sum;
  }

  private static double sineDay(double min, double max) {
    DoubleUnaryOperator rate =
        share -> Math.max(0, (max + min) / 2 - (max - min) / 2 * Math.cos(2 * Math.PI * share) - 7);
    int points = 20_000;
    double sum = 0;
    for (int i = 0; i < points; i++) {
      sum += rate.applyAsDouble((i + 0.5) / points);
    }
    return sum / points;
  }

  @Test
  void daysAreMendedFromTheNeighbour() {
    var filled = run.checked("filled", FilledDays.class);
    assertThat(filled.filledDays()).isEqualTo(10);
    assertThat(filled.gaps().get(0).method()).isEqualTo(GapMethod.NEIGHBOUR);
    assertThat(filled.gaps().get(0).minErrorCelsius()).isCloseTo(0.5, within(0.1));
    for (var row : run.checked("trialNeighbour", GapTrial.class).rows()) {
      assertThat(row.coverage()).isBetween(0.85, 0.95);
      assertThat(row.missCelsius()).isLessThan(0.8);
    }
    for (var row : run.checked("trialNormals", GapTrial.class).rows()) {
      assertThat(row.coverage()).isBetween(0.85, 0.95);
      assertThat(row.missCelsius()).isGreaterThan(1.2);
    }
  }

  /** The error of a hole of one kind: squares and correlations of its days, put together here. */
  @Test
  void theDateAndItsError() {
    assertThat(run.checked("open", String.class)).startsWith("2024-07-01, after 215.1");
    var error = run.checked("error", ThermalTimeError.class);
    var filled = run.checked("filled", FilledDays.class);
    assertThat(error.totalStandardErrorC())
        .isCloseTo(errorOfTheHole(filled), within(0.02 * error.totalStandardErrorC()));
    var neighbour = run.checked("dateByNeighbour", ThermalTimeErrorDate.class);
    var normals = run.checked("dateByNormals", ThermalTimeErrorDate.class);
    assertThat(neighbour.reached().day()).isEqualTo("2024-07-21");
    assertThat(neighbour.standardErrorDays()).isCloseTo(0.15, within(0.02));
    assertThat(normals.standardErrorDays()).isCloseTo(1.15, within(0.05));
    var bounds = run.checked("bounds", ThermalTimeBounds.class);
    assertThat(bounds.missingDays()).hasSize(10);
    assertThat(bounds.low().totalC()).isCloseTo(1060.2, within(0.1));
    assertThat(bounds.high().totalC()).isCloseTo(1103.6, within(0.1));
    assertThat(run.checked("ways", List.class).size()).isEqualTo(3);
    assertThat(run.summary()).contains("between nearby days", "2024-07-24");
  }

  /** All nights of the hole are above 7 °C, so a day's sum is the middle of its extremes less 7. */
  private static double errorOfTheHole(FilledDays filled) {
    var gap = filled.gaps().get(0);
    var days = filled.daily();
    double square = 0;
    int length = (int) gap.days().days();
    for (int i = 0; i < length; i++) {
      for (int j = 0; j < length; j++) {
        double between = Math.pow(gap.correlation().dayToDay(), Math.abs(i - j));
        double one = half(days, gap.days().first().plusDays(i), gap.correlation().minToMax());
        double other = half(days, gap.days().first().plusDays(j), gap.correlation().minToMax());
        square += between * one * other;
      }
    }
    return Math.sqrt(square);
  }

  private static double half(DailyTemperatures days, LocalDate day, double minToMax) {
    double min = days.minStandardErrorCelsius(day) / 2;
    double max = days.maxStandardErrorCelsius(day) / 2;
    return Math.sqrt(min * min + max * max + 2 * minToMax * min * max);
  }

  @Test
  void soilAndSun() {
    var soil = run.checked("soil", SoilEstimate.class);
    double depth = Math.sqrt(0.625e-6 * 86_400 / Math.PI);
    assertThat(soil.working().steps().get(1).result())
        .startsWith(String.format(java.util.Locale.ROOT, "%.4f", Math.exp(-0.06 / depth)));
    assertThat(run.checked("airAndSoil", DrawnFigure.class).alternative())
        .contains("580 °C·d on 2025-06-26", "580 °C·d on 2025-06-28");
    assertThat(run.checked("sun", DrawnFigure.class).alternative())
        .contains("in the sun", "2025-07-03", "in a shelter", "2025-07-11");
  }

  @Test
  void theHourOfReading() {
    var bias = run.checked("observed", ObservationBias.class);
    assertThat(bias.overall().maximumCelsius()).isCloseTo(0.17, within(0.02));
    assertThat(run.checked("hourOfReading", Double.class)).isCloseTo(5.37, within(0.05));
    assertThat(run.checked("hint", ReadingHourHint.class).verdict())
        .isEqualTo(ReadingHourHint.Verdict.NO_TRACE);
  }

  @Test
  void layoutsOfArchives() {
    var days = run.checked("archive", ArchivedDays.class).daily();
    assertThat(days.maxCelsius(LocalDate.of(2026, 5, 1))).isCloseTo(19.1, within(1e-12));
    assertThat(days.missingDays()).containsExactly(LocalDate.of(2026, 5, 2));
    var hours = run.checked("hours", ArchivedReadings.class).readings();
    assertThat(hours.celsius()).containsExactly(6.8, 6.3, 5.7);
  }

  @Test
  void theQuestionsAreAnsweredByRefusals() {
    var page = run.toPage(agro.notebook.run.CodeView.FOLDED);
    assertThat(page).contains("declare the time zone with withZone", "give a log of soil");
    assertThat(run.pictures())
        .containsOnlyKeys("flagged-log", "filled-days", "in-the-sun", "season-and-normals");
  }

  private static double value(Cell cell) {
    return ((Cell.Figure) cell).value();
  }
}
