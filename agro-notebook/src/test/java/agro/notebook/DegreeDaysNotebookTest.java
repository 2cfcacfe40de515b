package agro.notebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import agro.development.MethodComparison;
import agro.development.ThermalTimeBounds;
import agro.development.ThresholdSensitivity;
import agro.development.UpperCutoff;
import agro.notebook.run.CodeView;
import agro.notebook.run.NotebookRun;
import agro.notebook.run.NotebookRunner;
import agro.units.Temperature;
import agro.working.Cell;
import agro.working.ResultTable;
import agro.working.Working;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * The methods of the degree-day notebook, each against a plain numerical integration of its curve
 * or against the file itself. What comes from the invented weather is a regression.
 */
class DegreeDaysNotebookTest {

  private static final Path VALE = Path.of("..", "demo-data", "osmere-vale");

  private static NotebookRun run;

  @BeforeAll
  static void runTheNotebook() {
    run =
        NotebookRunner.standard()
            .withParameter("folder", VALE.toString().replace('\\', '/'))
            .run(Path.of("..", "notebooks", "02-degree-days.ipynb"));
    assertThat(run.failed()).isEmpty();
  }

  /** A day from 5 to 25 °C, then down to -1 °C, above 10 °C, by every curve. */
  @Test
  void oneDayByEveryMethod() {
    var sums =
        run.checked("curves", ResultTable.class).rows().stream()
            .map(row -> ((Cell.Figure) row.get(1)).value())
            .toList();
    double light = daylight(132, 46.4);
    var expected =
        List.of(
            5.0,
            7.5,
            area(hour -> triangle(hour, 5)),
            area(hour -> triangle(hour, hour < 12 ? 5 : -1)),
            area(hour -> sine(hour, 5)),
            area(hour -> sine(hour, hour < 12 ? 5 : -1)),
            area(hour -> dayAndNight(hour, light)));
    assertThat(sums)
        .zipSatisfy(expected, (sum, integral) -> assertThat(sum).isCloseTo(integral, within(1e-5)));
  }

  private static double area(DoubleUnaryOperator celsiusOfHour) {
    int points = 2_000_000;
    double sum = 0;
    for (int i = 0; i < points; i++) {
      sum += Math.max(0, celsiusOfHour.applyAsDouble(24 * (i + 0.5) / points) - 10);
    }
    return sum / points;
  }

  private static double triangle(double hour, double low) {
    return 25 - (25 - low) * Math.abs(hour - 12) / 12;
  }

  private static double sine(double hour, double low) {
    return (25 + low) / 2 - (25 - low) / 2 * Math.cos(Math.PI * hour / 12);
  }

  /** Linvill (1990): a sine from sunrise to sunset, then a fall with the logarithm of the hours. */
  private static double dayAndNight(double hour, double light) {
    if (hour <= light) {
      return 5 + 20 * Math.sin(Math.PI * hour / (light + 4));
    }
    double sunset = 5 + 20 * Math.sin(Math.PI * light / (light + 4));
    double sinceSunset = Math.max(1, hour - light);
    return sunset - (sunset + 1) / Math.log(24 - light) * Math.log(sinceSunset);
  }

  /** Forsythe and others (1995), equations 1 to 3. */
  private static double daylight(int dayOfYear, double latitude) {
    double turn = 0.2163108 + 2 * Math.atan(0.9671396 * Math.tan(0.00860 * (dayOfYear - 186)));
    double declination = Math.asin(0.39795 * Math.cos(turn));
    double place = Math.toRadians(latitude);
    double edge = Math.sin(Math.toRadians(0.8333));
    double cosine =
        (edge + Math.sin(place) * Math.sin(declination))
            / (Math.cos(place) * Math.cos(declination));
    return 24 - 24 / Math.PI * Math.acos(cosine);
  }

  @Test
  void lengthOfTheDay() {
    var steps = run.checked("light", Working.class).steps();
    var hours = steps.get(steps.size() - 1).result();
    assertThat(Double.parseDouble(hours.substring(0, hours.indexOf(' '))))
        .isCloseTo(daylight(132, 46.4), within(5e-4));
  }

  /** 6.089978 °C·d by integration, times 9/5. */
  @Test
  void fahrenheitDays() {
    assertThat(run.checked("fahrenheitDay", Double.class)).isCloseTo(10.96196, within(1e-5));
  }

  @Test
  void everyMethodOnOneLog() throws IOException {
    var lines = run.checked("methods", MethodComparison.class).lines();
    assertThat(lines).hasSize(28);
    for (var line : lines) {
      assertThat(line.reached()).isPresent();
      if (line.model().method().needsReadings() && line.model().cutoff() == UpperCutoff.NONE) {
        assertThat(line.totalC()).isCloseTo(sumOfTheFile(), within(1.0));
        assertThat(line.reached().orElseThrow().day()).isEqualTo("2025-07-12");
      }
    }
  }

  /** Trapezoids over the readings from 1 May to 24 July of standard time, an hour behind summer. */
  private static double sumOfTheFile() throws IOException {
    var file = VALE.resolve("logs").resolve("upper-croft-2025.csv");
    var from = LocalDateTime.of(2025, 5, 1, 1, 0);
    var until = LocalDateTime.of(2025, 7, 25, 1, 0);
    LocalDateTime before = null;
    double rateBefore = 0;
    double sum = 0;
    for (var row : Files.readAllLines(file, StandardCharsets.UTF_8)) {
      if (!row.startsWith("2025-") || row.endsWith("-999")) {
        continue;
      }
      var time = LocalDateTime.parse(row.substring(0, 16).replace(' ', 'T'));
      double rate = Math.max(0, Double.parseDouble(row.substring(17)) - 7);
      if (before != null && !before.isBefore(from) && !time.isAfter(until)) {
        sum += (rate + rateBefore) / 2 * ChronoUnit.MINUTES.between(before, time) / 1440.0;
      }
      before = time;
      rateBefore = rate;
    }
    return sum;
  }

  @Test
  void thresholdsMovedAloneAndWithTheRequirement() {
    var sensitivity = run.checked("sensitivity", ThresholdSensitivity.class);
    assertThat(sensitivity.chosen().alone().orElseThrow().day()).isEqualTo("2025-07-22");
    for (var row : sensitivity.rows()) {
      double lower = row.lower().celsius();
      assertThat(row.together().degreeDaysC()).isCloseTo(444.6 * (20 - lower) / 13, within(1e-9));
      long alone = Math.abs(days(row.alone().orElseThrow().day()));
      assertThat(alone)
          .isGreaterThanOrEqualTo(Math.abs(days(row.withRequirement().orElseThrow().day())));
    }
    assertThat(sensitivity.rows().get(0).lower()).isEqualTo(Temperature.ofCelsius(5));
  }

  private static long days(LocalDate day) {
    return ChronoUnit.DAYS.between(LocalDate.of(2025, 7, 22), day);
  }

  @Test
  void daysThatAreMissing() {
    assertThat(run.checked("missing", List.class).toString()).isEqualTo("[2025-07-25, 2025-07-26]");
    var bounds = run.checked("bounds", ThermalTimeBounds.class);
    assertThat(bounds.missingDays()).hasSize(2);
    assertThat(bounds.low().totalC()).isLessThan(bounds.high().totalC());
    assertThat(run.toPage(CodeView.FOLDED))
        .contains("an average of two extremes does not say for how long")
        .contains("a day left out would count as a day without development");
    assertThat(run.pictures()).containsOnlyKeys("one-day", "day-length", "every-method");
  }
}
