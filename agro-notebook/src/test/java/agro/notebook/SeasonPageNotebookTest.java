package agro.notebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import agro.notebook.run.NotebookRun;
import agro.notebook.run.NotebookRunner;
import agro.programme.LabelRecord;
import agro.programme.bulletin.CountVerdict;
import agro.programme.bulletin.FieldBulletin;
import agro.programme.bulletin.WrittenBulletin;
import agro.programme.rotation.PlanOutcome;
import agro.programme.window.SprayHours;
import agro.reading.DelimitedFormat;
import agro.reading.DelimitedLine;
import agro.reading.DelimitedText;
import agro.working.Sheet;
import agro.working.Working;
import java.math.BigInteger;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.Period;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * The notebook of the season on a page says what it is meant to say. Its data are invented; what
 * can be is counted anew from the tables of the folder.
 */
class SeasonPageNotebookTest {

  private static final Path VALE = Path.of("..", "demo-data", "osmere-vale");
  private static final LocalDate FIRST_PICKING = LocalDate.of(2026, 6, 22);
  private static final List<LocalDate> PICKINGS =
      FIRST_PICKING.datesUntil(LocalDate.of(2026, 7, 21), Period.ofDays(7)).toList();
  private static final List<LocalDate> PAIR =
      List.of(LocalDate.of(2026, 6, 22), LocalDate.of(2026, 7, 3));

  private static NotebookRun run;

  @BeforeAll
  static void runTheNotebook() {
    run =
        NotebookRunner.standard()
            .withParameter("folder", VALE.toString())
            .run(Path.of("..", "notebooks", "12-the-season-on-a-page.ipynb"));
    assertThat(run.failed()).isEmpty();
  }

  private static List<DelimitedLine> lines(String file, String column) {
    return DelimitedText.read(VALE.resolve(file), DelimitedFormat.COMMA, List.of(column)).lines();
  }

  private static String words(Sheet sheet) {
    var words = new StringBuilder();
    for (var mark : sheet.marks()) {
      if (mark instanceof Sheet.Words said) {
        words.append(said.text()).append('\n');
      }
    }
    return words.toString();
  }

  @Test
  void theBestDayExposesAboutSevenInTenAndTodayFarFewer() {
    var said = run.checked("exposed", String.class);
    var found =
        Pattern.compile(
                "Best day (\\S+): (\\d+) % exposed, .* chance of (\\d+) %; on (\\S+): (\\d+) %")
            .matcher(said);
    assertThat(found.matches()).as(said).isTrue();
    assertThat(LocalDate.parse(found.group(1)))
        .isBetween(LocalDate.of(2026, 6, 26), LocalDate.of(2026, 6, 28));
    assertThat(Double.parseDouble(found.group(2))).isCloseTo(70, within(2.0));
    assertThat(Double.parseDouble(found.group(3))).isBetween(10.0, 25.0);
    assertThat(found.group(4)).isEqualTo("2026-06-16");
    assertThat(Double.parseDouble(found.group(5))).isCloseTo(18, within(2.0));
    assertThat((Object) run.checked("days", List.class)).isEqualTo(PAIR);
  }

  /** 1.8 ha at 1.2 ha/h, and three fillings of 200 L for 540 L, a quarter of an hour each. */
  @Test
  void theHoursOfTheJob() {
    assertThat(run.checked("job", Working.class).steps().get(2).result()).matches("2\\.25\\Wh");
    assertThat(words(run.checked("hours", Sheet.class)))
        .contains("The job takes 2.3 h.", "10 h, job fits", "4 h, job fits *");
  }

  /** By day, when no air stands still by rule, wind, warmth and rain of the table alone decide. */
  @Test
  void theHoursOfTheDayAreThoseOfTheTable() {
    var weather = new HashMap<LocalDateTime, DelimitedLine>();
    lines("spray-weather.csv", "time")
        .forEach(line -> weather.put(LocalDateTime.parse(line.text("time")), line));
    var hours = run.checked("bulletin", FieldBulletin.class).hours().orElseThrow();
    int compared = 0;
    for (var day : hours.days()) {
      for (var verdict : day.hours()) {
        var at = LocalDateTime.ofInstant(verdict.hour().start(), hours.field().zone());
        if (at.getHour() >= 8 && at.getHour() < 18) {
          assertThat(verdict.meetsAll()).as("%s", at).isEqualTo(meets(weather, at));
          compared++;
        }
      }
    }
    assertThat(compared).isEqualTo(60);
    sameLongestRuns(hours);
  }

  private static boolean meets(Map<LocalDateTime, DelimitedLine> weather, LocalDateTime at) {
    double wind = weather.get(at).number("wind_m_s");
    boolean dry = true;
    for (int hour = -2; hour <= 4; hour++) {
      var line = weather.get(at.plusHours(hour));
      dry &= line != null && line.number("rain_mm") == 0;
    }
    return dry && wind >= 0.5 && wind <= 3.5 && weather.get(at).number("air_c") <= 24;
  }

  /** The limits that the notebook writes out are those of the folder. */
  private static void sameLongestRuns(SprayHours hours) {
    var sheet = words(run.checked("hours", Sheet.class));
    for (var day : hours.days()) {
      assertThat(sheet).contains(day.longestRun() + " h, job fits");
    }
  }

  @Test
  void theLabelsOnTheFirstDayOfThePair() {
    var said = run.checked("allowed", String.class).lines().toList();
    assertThat(said).hasSize(3);
    assertThat(said.get(0)).startsWith("Product A: Not recorded").contains("Bloom");
    assertThat(said.get(1)).startsWith("Product C: Yes");
    assertThat(said.get(2)).startsWith("Product D: No").contains("picking on 2026-06-29");
    assertThat(words(run.checked("calendar", Sheet.class))).contains("H pre-harvest", "D buffer");
  }

  /** What labels.csv says of a product on cabbage. */
  private record Store(String name, String group, int most, int interval, int waiting) {}

  private static final List<Store> STORE =
      List.of(
          new Store("Product A", "28", 2, 10, 3),
          new Store("Product C", "11A", Integer.MAX_VALUE, 5, 0),
          new Store("Product D", "3A", 2, 14, 14));

  private static boolean admits(Store product, List<LocalDate> days) {
    boolean apart =
        days.size() < 2 || ChronoUnit.DAYS.between(days.get(0), days.get(1)) >= product.interval();
    boolean waits =
        days.stream()
            .allMatch(
                day ->
                    PICKINGS.stream()
                        .noneMatch(
                            picking ->
                                picking.isAfter(day)
                                    && picking.isBefore(day.plusDays(product.waiting()))));
    return apart && waits && days.size() <= product.most();
  }

  @Test
  void fourProgrammesAreAllThereAre() {
    var plan = run.checked("plan", PlanOutcome.class);
    var later = plan.planner().windows().get(1).days();
    assertThat(later).containsExactly(LocalDate.of(2026, 7, 14));
    var byHand = new ArrayList<String>();
    for (var first : STORE) {
      if (admits(first, PAIR)) {
        byHand.add(first.name() + " none");
        for (var second : STORE) {
          boolean other = !second.group().equals(first.group());
          if (other && admits(second, later)) {
            byHand.add(first.name() + " " + second.name());
          }
        }
      }
    }
    assertThat(byHand).hasSize(4);
    assertThat(plan.count()).isEqualTo(BigInteger.valueOf(4));
    assertThat(plan.best())
        .extracting(
            each ->
                name(each.choices().get(0).record()) + " " + name(each.choices().get(1).record()))
        .containsExactlyInAnyOrderElementsOf(byHand);
    assertThat(plan.presentation().toText()).contains("134.00", "154.00", "Before you use");
  }

  private static String name(Optional<LabelRecord> record) {
    return record.map(each -> each.product()).orElse("none");
  }

  /** 85 EUR/ha over 11000 EUR/ha, a share of 0.012 lost for each animal, 0.8 of it prevented. */
  @Test
  void theCountsSpeakAgainstIt() {
    var sums = new TreeMap<String, List<Double>>();
    for (var line : lines("scouting.csv", "field")) {
      if (line.text("pest").equals("diamondback moth")
          && line.text("field").startsWith("Mill Field")) {
        sums.computeIfAbsent(line.text("field"), any -> new ArrayList<>())
            .add(line.number("count"));
      }
    }
    double threshold = 85 / (11000 * 0.012 * 0.8);
    var bulletin = run.checked("bulletin", FieldBulletin.class);
    var counts = bulletin.pests().get(0).counts();
    assertThat(counts).extracting(CountVerdict::part).containsExactlyElementsOf(sums.keySet());
    for (var count : counts) {
      var seen = sums.get(count.part());
      double mean = seen.stream().mapToDouble(Double::doubleValue).average().orElseThrow();
      assertThat(count.counts().mean()).isCloseTo(mean, within(1e-12));
      assertThat(count.counts().size()).isEqualTo(seen.size());
      assertThat(mean).isLessThan(threshold);
    }
    var text = bulletin.presentation().toText();
    assertThat(text).contains("0.805", "do not treat all 6 parts", "Before you use");
    assertThat(run.checked("page", WrittenBulletin.class).presentation().toText())
        .contains("do not treat all 6 parts", "look for half of flight 2", "Before you use")
        .doesNotContain("null");
    assertThat(run.checked("message", String.class))
        .hasSizeLessThanOrEqualTo(160)
        .contains("about 22 Jun", "leave it");
  }

  @Test
  void theAnswersAfterTheSpraying() {
    var end = LocalDateTime.of(2026, 6, 22, 19, 0).plus(Duration.ofMinutes(135));
    var said = run.checked("answers", String.class).lines().toList();
    assertThat(said).hasSize(10);
    assertThat(said.get(1))
        .contains("No. Not before " + end.plusHours(12).toString().replace('T', ' '));
    assertThat(said.get(3)).contains("No.", "picking from " + PAIR.get(0).plusDays(3) + " on");
    assertThat(said.get(5)).contains("No.", "4 h", "The rain began 2 h after its end");
    assertThat(said.get(7)).contains("refuses " + PAIR.get(0).plusDays(10), "Bloom");
    assertThat(said.get(9)).contains("No.", "Product A on 2026-06-22, group 28");
  }

  @Test
  void thePictures() {
    assertThat(run.pictures()).containsKeys("flights", "exposure");
    assertThat(run.summary()).contains("Best day", "Label first");
  }
}
