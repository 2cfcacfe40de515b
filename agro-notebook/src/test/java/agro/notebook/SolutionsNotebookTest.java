package agro.notebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import agro.course.CourseTopic;
import agro.course.handwork.HandProbitFit;
import agro.course.paper.ClassPapers;
import agro.course.paper.MarkSheet;
import agro.course.paper.MarkedPaper;
import agro.course.paper.StudentPaper;
import agro.notebook.run.NotebookRun;
import agro.notebook.run.NotebookRunner;
import agro.reading.DelimitedFormat;
import agro.reading.DelimitedLine;
import agro.reading.DelimitedText;
import agro.working.Presentation;
import agro.working.ResultTable;
import agro.working.Working;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The notebook of solutions says what it is meant to say. Class and sprayers are invented; answers
 * and volumes are computed again here from the tables of the folder or from the story.
 */
class SolutionsNotebookTest {

  private static final Path VALE = Path.of("..", "demo-data", "osmere-vale");

  private static NotebookRun run;

  @BeforeAll
  static void runTheNotebook() {
    run =
        NotebookRunner.standard()
            .withParameter("folder", VALE.toString())
            .run(Path.of("..", "notebooks", "14-solutions.ipynb"));
    assertThat(run.failed()).isEmpty();
  }

  private static List<DelimitedLine> lines(String file, String column) {
    return DelimitedText.read(VALE.resolve(file), DelimitedFormat.COMMA, List.of(column)).lines();
  }

  private static List<String> row(ResultTable table, String first) {
    return table.rows().stream()
        .filter(row -> row.get(0).printed().equals(first))
        .findFirst()
        .orElseThrow()
        .stream()
        .map(cell -> cell.printed())
        .toList();
  }

  /** Answers of the first, second and third part, worked out on paper from the stories. */
  @ParameterizedTest
  @CsvSource({
    "spoons, 37.5, 0, 0",
    "boom, 0.65333, 181.48, 0",
    "units, 261.91, 0, 0",
    "tank, 1.10526, 2431.6, 692.4",
    "lines, 18, 7, 0",
    "threshold, 14.88, 5.1523, 2.9592",
    "week, 38.5, 126.5, 253.5",
    "rate, 11.101, 249.0, 50.83",
    "plots, 0.04054, 0.69421, 94.16",
    "doses, 1.7859, 5.6569, 0",
    "left, 4, 260, 1"
  })
  void theWorkedSolutions(String name, double first, double second, double third) {
    var text = run.checked(name, Presentation.class).toText();
    var found = Pattern.compile("Answer to [abc]: (-?[\\d.]+)").matcher(text).results().toList();
    var expected = Arrays.stream(new double[] {first, second, third}).filter(one -> one > 0);
    var answers = expected.toArray();
    assertThat(found).hasSameSizeAs(answers);
    for (int part = 0; part < answers.length; part++) {
      // Print has three digits or the decimals that are asked for.
      assertThat(Double.parseDouble(found.get(part).group(1)))
          .as("%s, part %d", name, part)
          .isCloseTo(answers[part], within(Math.max(0.005 * answers[part], 0.0006)));
    }
  }

  @Test
  void theNozzlesThatDepart() {
    var catches = new double[] {570, 650, 580, 485, 620, 585, 570};
    double mean = Arrays.stream(catches).average().orElseThrow();
    var off = new StringBuilder();
    for (int i = 0; i < catches.length; i++) {
      off.append(Math.abs(catches[i] / mean - 1) > 0.1 ? ", " + (i + 1) : "");
    }
    var text = run.checked("nozzles", Presentation.class).toText();
    for (double one : catches) {
      assertThat(text).contains(String.valueOf((int) one));
    }
    assertThat(text).contains("Answer to b: " + off.substring(2));
  }

  @Test
  void theDozenHasTwelveAnswers() {
    var lines = run.checked("dozen", String.class).lines().toList();
    assertThat(lines).hasSize(12).allMatch(line -> line.matches("\\d+: .* L/min   .* L/ha"));
    var letters = run.checked("letters", ResultTable.class);
    assertThat(letters.rows()).hasSize(5);
    assertThat(letters.rows().stream().filter(row -> row.get(2).printed().equals("right")))
        .hasSize(1);
  }

  @Test
  void theClassHasItsPapers() {
    var papers = run.checked("papers", ClassPapers.class);
    assertThat(papers.papers()).hasSameSizeAs(lines("class-list.csv", "student"));
    var page = run.checked("question-page", StudentPaper.class).presentation().toText();
    assertThat(page).contains("S07", "osmere rood", "1. ", "3. ", "2a C:", "Seed 8, generator 1");
    assertThat(page).doesNotContain("4. Probit");
    assertThat(papers.papers())
        .allMatch(paper -> paper.questions().size() == 11 && paper.marks() == 30);
    assertThat(papers.papers().get(0).questions().stream().map(one -> one.exercise().topic()))
        .hasSize(11)
        .contains(CourseTopic.values());
    assertThat(run.checked("origin", String.class).lines())
        .containsExactly("Seed 8, generator 1", "Seed 8, generator 1, sitting 2");
  }

  private static Map<String, Map<String, String>> typed() {
    var typed = new TreeMap<String, Map<String, String>>();
    for (var line : lines("course-answers.csv", "student")) {
      typed
          .computeIfAbsent(line.text("student"), any -> new TreeMap<>())
          .put(line.text("part"), line.optionalText("answer").orElse(""));
    }
    return typed;
  }

  private static double[] numbers(String text) {
    return Pattern.compile("\\d+(?:\\.\\d+)?")
        .matcher(text)
        .results()
        .mapToDouble(found -> Double.parseDouble(found.group()))
        .toArray();
  }

  /** The numbers that the story of a question tells a student. */
  private static double[] told(String student, int question) {
    var paper = run.checked("papers", ClassPapers.class).paper(student).orElseThrow();
    return numbers(paper.questions().get(question - 1).exercise().body().story().get(0));
  }

  private static boolean near(String answer, double value) {
    var numbers = numbers(answer);
    return numbers.length > 0 && Math.abs(numbers[0] - value) < 0.005 * value;
  }

  /** From the table of answers alone: who has none, and who left out the unit. */
  @Test
  void theMarksOfTheClass() {
    var typed = typed();
    var table = run.checked("marks", ResultTable.class);
    assertThat(table.rows()).hasSize(24);
    for (var student : table.rows()) {
      var id = student.get(0).printed();
      assertThat(student.get(12).printed().equals("nothing handed in"))
          .isEqualTo(!typed.containsKey(id));
    }
    assertThat(row(table, "S15").get(1)).isEqualTo("1");
    assertThat(typed.get("S15").get("1a")).matches("\\d+");
    assertThat(run.checked("summary", MarkSheet.class).summary().handedIn())
        .isEqualTo(typed.size());
    var questions = IntStream.rangeClosed(1, 11).boxed().toList();
    assertThat(questions.stream().min(Comparator.comparingDouble(one -> share(table, one))))
        .contains(11);
    assertThat(questions.stream().filter(one -> share(table, one) < 0.7)).containsExactly(1, 5, 11);
  }

  /** Marks of a question over what could be had: four for several parts, two for one. */
  private static double share(ResultTable table, int question) {
    var marks =
        table.rows().stream()
            .map(row -> row.get(question).printed())
            .filter(printed -> !printed.isEmpty())
            .mapToDouble(Double::parseDouble)
            .toArray();
    assertThat(marks).hasSize(23);
    return Arrays.stream(marks).average().orElseThrow()
        / (List.of(3, 6, 7, 9).contains(question) ? 4 : 2);
  }

  /** Area × dose for one rood. */
  @Test
  void theRoodIsTheDifficulty() {
    var right = new ArrayList<String>();
    var forOne = new ArrayList<String>();
    var divided = new ArrayList<String>();
    var bare = new ArrayList<String>();
    var blank = new ArrayList<String>();
    typed()
        .forEach(
            (student, own) -> {
              var answer = own.get("1a");
              var story = told(student, 1);
              boolean unit = answer.endsWith(" mL");
              if (answer.isEmpty()) {
                blank.add(student);
              } else if (near(answer, story[1])) {
                forOne.add(student);
              } else if (near(answer, story[1] / story[0])) {
                divided.add(student);
              } else {
                assertThat(near(answer, story[0] * story[1])).as(student).isTrue();
                (unit ? right : bare).add(student);
              }
            });
    assertThat(forOne).containsExactly("S01", "S06", "S16");
    assertThat(told("S01", 1)).containsExactly(11, 330);
    assertThat(divided).containsExactly("S22", "S24");
    assertThat(bare).containsExactly("S15", "S20");
    assertThat(blank).containsExactly("S02", "S19");
    var first = run.checked("summary", MarkSheet.class).summary().questions().get(0);
    assertThat(first.full()).isEqualTo(right.size());
  }

  /** The catch in litres as it stands, and 600 × that ÷ (speed × spacing) for 0.118 ha. */
  @Test
  void theCommonestMistake() {
    var slipped = new ArrayList<String>();
    typed()
        .forEach(
            (student, own) -> {
              var story = told(student, 6);
              double litres = story[2] / 1000;
              if (near(own.get("6a"), litres)) {
                slipped.add(student);
                double volume = 600 * litres / (story[4] * story[1]) * 0.118;
                assertThat(near(own.get("6b"), volume)).as(student).isTrue();
              }
            });
    assertThat(slipped).containsExactly("S03", "S13", "S22", "S23", "S24");
    assertThat(slipped.stream().filter(one -> !typed().get(one).get("6b").contains(" ")))
        .containsExactly("S23");
    var named = run.checked("summary", MarkSheet.class).summary().mistakes().get(0);
    assertThat(named.students()).isEqualTo(slipped.size());
    assertThat(named.questions()).containsExactly(6);
  }

  /** E = (1 − treated ÷ untreated) · 100, and with the wrong divisor as S07 has it. */
  @Test
  void oneStudentIsTalkedTo() {
    var marked = run.checked("student", MarkedPaper.class);
    assertThat(marked.marks()).isEqualTo(24);
    double untreated = (68 + 62 + 65 + 62) / 4.0;
    double treated = (20 + 7 + 12 + 3) / 4.0;
    var text = marked.presentation().toText();
    assertThat(100 * (1 - treated / untreated)).isCloseTo(83.7, within(0.05));
    assertThat(100 * (untreated - treated) / treated).isCloseTo(511.9, within(0.05));
    assertThat(100 * (171.0 - 64) / 64).isCloseTo(167.2, within(0.05));
    assertThat(100 * (171.0 - 64) / 171).isCloseTo(62.6, within(0.05));
    assertThat(text).contains("83.7 %", "511.9 %", "divided by the count", "label");
    assertThat(text).contains("62.6 %", "167.2 %");
    var others = run.checked("marks", ResultTable.class).rows();
    assertThat(
            others.stream()
                .map(row -> row.get(12).printed())
                .filter(total -> !total.startsWith("nothing"))
                .mapToDouble(Double::parseDouble)
                .average()
                .orElseThrow())
        .isLessThan(24);
  }

  @Test
  void theResitIsForFourWithOtherNumbers() {
    var resit = run.checked("resit", ClassPapers.class);
    var again =
        run.checked("marks", ResultTable.class).rows().stream()
            .filter(row -> row.get(12).printed().matches("nothing.*|(\\d|1[0-7])(\\.5)?"))
            .map(row -> row.get(0).printed())
            .toList();
    assertThat(again).containsExactly("S01", "S02", "S17", "S21");
    assertThat(resit.papers().stream().map(paper -> paper.student().id()))
        .containsExactlyElementsOf(again);
    var first =
        run.checked("papers", ClassPapers.class).papers().stream()
            .flatMap(paper -> paper.questions().stream())
            .map(question -> question.exercise().givens().fingerprint())
            .toList();
    assertThat(resit.papers().stream().flatMap(paper -> paper.questions().stream()))
        .allMatch(one -> !first.contains(one.exercise().givens().fingerprint()));
  }

  /** 600 × (sum of catches ÷ half a minute) ÷ (speed × width), group by group. */
  @Test
  void theCalibrationsOfTheClass() {
    var table = run.checked("class", ResultTable.class);
    var off = new StringBuilder();
    double sum = 0;
    for (var line : lines("class-calibrations.csv", "group")) {
      double seconds = mean(line.text("time (s)"));
      double flow = mean(line.text("catches (mL)")) * 4 / 1000 / 0.5;
      double volume = 600 * flow / (25 / seconds * 3.6 * 4 * 0.5);
      sum += volume;
      assertThat(Double.parseDouble(row(table, line.text("group")).get(1)))
          .isCloseTo(volume, within(0.051));
      off.append(Math.abs(volume / 300 - 1) > 0.1 ? line.text("group") + " " : "");
    }
    assertThat(off.toString()).isEqualTo("4 9 13 18 20 ");
    assertThat(sum / 24).isCloseTo(301.4, within(0.05));
    var own = run.checked("own", ResultTable.class);
    assertThat(own.rows().stream().map(row -> row.get(0).printed()))
        .containsExactly("2", "6", "11", "16", "22");
    assertThat(row(own, "11").get(5)).matches("×\\W4");
    assertThat(run.checked("blocked", Working.class).toText())
        .contains("0.445 + 0.455 + 0.2 + 0.445")
        .containsPattern("−12\\.2\\W%");
  }

  private static double mean(String readings) {
    return Arrays.stream(readings.split("[;|]", -1))
        .mapToDouble(one -> Double.parseDouble(one.strip()))
        .average()
        .orElseThrow();
  }

  @Test
  void theSlipsByTheirDose() {
    var text = run.checked("slips", ResultTable.class).toText().replaceAll("×\\W", "× ");
    assertThat(1 / 0.40468564224).isCloseTo(2.47, within(0.005));
    assertThat(29.5735295625).isCloseTo(29.6, within(0.05));
    assertThat(text).contains("× 0.405", "× 2.47", "× 29.6", "× 10", "× 1000");
  }

  /** Lei and Sun (2018) print an intercept of -2.887 and a slope of 4.213 for these counts. */
  @Test
  void theLineByHand() {
    var hand = run.checked("hand", HandProbitFit.class);
    assertThat(hand.line().slope()).isCloseTo(4.213, within(0.0005));
    assertThat(hand.line().intercept() - 5).isCloseTo(-2.887, within(0.001));
    var lines = run.checked("likelihood", String.class).lines().toList();
    assertThat(lines).hasSize(4);
    assertThat(lines.get(2)).endsWith("slope 4.2132, LD50 4.845 mg/L");
    assertThat(lines.get(3)).endsWith("slope 4.2132, LD50 4.845 mg/L");
  }

  @Test
  void thePictures() {
    assertThat(run.pictures()).containsKeys("class", "slips");
  }
}
