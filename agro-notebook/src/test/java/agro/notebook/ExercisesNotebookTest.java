package agro.notebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import agro.course.Exercise;
import agro.course.marking.AnswerOptions;
import agro.course.marking.ExerciseMark;
import agro.course.marking.MarkVerdict;
import agro.course.marking.PartMark;
import agro.notebook.run.NotebookRun;
import agro.notebook.run.NotebookRunner;
import agro.working.ResultTable;
import agro.working.Sheet;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * The notebook of exercises says what it is meant to say. Its numbers are invented; every answer is
 * computed again here by plain arithmetic from what the exercise prints.
 */
class ExercisesNotebookTest {

  private static final double GALLON = 3.785411784;
  private static final double ACRE = 0.40468564224;

  private static NotebookRun run;

  @BeforeAll
  static void runTheNotebook() {
    run = NotebookRunner.standard().run(Path.of("..", "notebooks", "13-exercises.ipynb"));
    assertThat(run.failed()).isEmpty();
  }

  private static List<String> column(ResultTable table, int column) {
    return table.rows().stream().map(row -> row.get(column).printed()).toList();
  }

  private static double[] numbers(String text) {
    return Pattern.compile("\\d+(?:\\.\\d+)?")
        .matcher(text)
        .results()
        .mapToDouble(found -> Double.parseDouble(found.group()))
        .toArray();
  }

  private static List<MarkVerdict> verdicts(ExerciseMark mark) {
    return mark.parts().stream().map(PartMark::verdict).toList();
  }

  @Test
  void everyTopicHasExercisesOfEveryDifficulty() {
    var shelf = run.checked("shelf", ResultTable.class);
    assertThat(shelf.rows()).hasSize(10);
    for (int level = 1; level <= 3; level++) {
      assertThat(column(shelf, level)).doesNotContain("0");
    }
    assertThat(run.checked("again", String.class)).endsWith("true");
  }

  /** 2.5 spoons of 15 mL. */
  @Test
  void theSameGlassInOtherWordsCostsNothing() {
    var story = String.join(" ", run.checked("spoons", Exercise.class).body().story());
    assertThat(story).contains("2.5 tbsp (metric)").contains("1 tbsp (metric) = 15 mL");
    var said = run.checked("notations", ResultTable.class);
    assertThat(said.rows()).hasSize(8);
    assertThat(column(said, 3)).containsOnly("1 of 1");
    assertThat(column(said, 1)).startsWith("37.5 mL", "37.5 mL", "0.0375 L");
  }

  @Test
  void whatCostsSomethingHasItsReason() {
    var said = run.checked("wrong", ResultTable.class);
    assertThat(column(said, 2))
        .containsExactly(
            "unit missing",
            "another kind of answer",
            "known mistake",
            "known mistake",
            "wrong",
            "another kind of answer",
            "unclear");
    assertThat(column(said, 3)).startsWith("0.5 of 1").filteredOn("0 of 1"::equals).hasSize(6);
    var why = column(said, 4);
    assertThat(why.get(0)).contains("of what?");
    assertThat(why.get(1)).contains("density is not given");
    assertThat(why.get(2)).contains("tablespoon of another country");
    assertThat(why.get(3)).contains("Teaspoons");
  }

  @Test
  void aVesselDecidesHowExactAnAnswerIs() {
    var said = run.checked("jug", ResultTable.class);
    assertThat(column(said, 2).get(0)).isEqualTo("right");
    assertThat(column(said, 2).subList(2, 4)).doesNotContain("right");
    assertThat(column(said, 4).get(0)).contains("measuring vessel");
  }

  @Test
  void aBlankIsABlankAndGivesNothingAway() {
    var blank = run.checked("blank", ExerciseMark.class);
    assertThat(verdicts(blank)).containsExactly(MarkVerdict.NOT_ANSWERED);
    assertThat(blank.marks()).isZero();
    assertThat(blank.presentation().toText()).doesNotContain("37.5").doesNotContain("label");
  }

  /** 600 × flow ÷ (speed × spacing) for one nozzle, with the flow as the student has it. */
  @Test
  void aSlipIsCarriedForward() {
    var given = numbers(run.checked("boom", Exercise.class).body().story().get(0));
    assertThat(given).hasSize(5);
    double spacing = given[1];
    double caught = given[2];
    double speed = given[4];
    var mark = run.checked("carried", ExerciseMark.class);
    assertThat(mark.parts().get(0).typed()).startsWith("0.49 ");
    assertThat(caught / 1000).isCloseTo(0.49, within(1e-9));
    assertThat(600 * caught / 1000 / (speed * spacing)).isCloseTo(136, within(0.5));
    assertThat(verdicts(mark)).containsExactly(MarkVerdict.MISTAKE, MarkVerdict.RIGHT);
    assertThat(mark.parts().get(1).carriedForward()).isTrue();
    assertThat(mark.parts().get(1).isFull()).isTrue();
    assertThat(mark.parts().get(0).marks()).isZero();
  }

  @Test
  void twelveLikeItAreTwelve() {
    var lines = run.checked("twelve", String.class).lines().toList();
    assertThat(lines).hasSize(12).doesNotHaveDuplicates();
    assertThat(lines).allMatch(line -> numbers(line).length == 6);
    assertThat(lines.stream().map(line -> line.substring(line.indexOf("  "))))
        .doesNotHaveDuplicates();
  }

  @Test
  void otherUnitsAndAnotherPlace() {
    var american = run.checked("american", Exercise.class).presentation().toText();
    assertThat(american).contains(" ac").contains("fl oz (US)").doesNotContain(" ha");
    var rood = run.checked("rood", Exercise.class).presentation().toText();
    assertThat(rood).contains("osmere rood").contains("Reed Piece").doesNotContain(" ha");
  }

  /** 210 L of 190 L/ha is 1.105 ha, which takes 2432 mL; 2200 divided by it is the slip. */
  @Test
  void germanIsMarkedAsItIsWritten() {
    assertThat(run.checked("german", Exercise.class).presentation().toText())
        .contains("Wie viel Mittel", "1,42 ha", "Startzahl 7");
    var mark = run.checked("deutsch", ExerciseMark.class);
    assertThat(210.0 / 190).isCloseTo(1.105, within(0.0005));
    assertThat(2200 / 1.1053 / 1000).isCloseTo(1.99, within(0.005));
    assertThat(verdicts(mark))
        .containsExactly(MarkVerdict.RIGHT, MarkVerdict.MISTAKE, MarkVerdict.NOT_ANSWERED);
  }

  /** The area of a sine above its threshold, added up in narrow strips. */
  @Test
  void theExamNeedsOneLookIntoATable() {
    var exam = run.checked("exam", Exercise.class);
    assertThat(exam.context().exam()).isTrue();
    assertThat(exam.presentation().toText()).contains("printed table").doesNotContain("arcsin");
    double half = (13.1 - 3.1) / 2;
    double z = (10 - (13.1 + 3.1) / 2) / half;
    int strips = 200_000;
    double sum = 0;
    for (int i = 0; i < strips; i++) {
      sum += Math.max(0, Math.sin(2 * Math.PI * (i + 0.5) / strips) - z) / strips;
    }
    // The table is entered with two decimals, and this z has no more.
    assertThat(z).isCloseTo(0.38, within(1e-9));
    var entry = String.format(Locale.ROOT, "%.4f", sum);
    var words =
        run.checked("table", Sheet.class).marks().stream()
            .filter(Sheet.Words.class::isInstance)
            .map(mark -> ((Sheet.Words) mark).text());
    assertThat(words).contains(entry);
    var printed =
        exam.solution().stream().map(one -> one.answer().print(exam.context().words())).toList();
    var asked = String.format(Locale.ROOT, "%.2f", half * sum);
    assertThat(printed).containsExactly("0.38", asked + " °C·d");
  }

  /** 28 US gallons on an acre. */
  @Test
  void oneOptionIsRight() {
    var options = run.checked("options", AnswerOptions.class);
    double right = 28 * GALLON / ACRE;
    var near =
        options.options().stream()
            .filter(one -> Math.abs(numbers(one.text())[0] - right) < 0.005 * right)
            .toList();
    assertThat(near).containsExactly(options.right());
    assertThat(options.options().stream().filter(one -> one.mistake().isPresent())).hasSize(4);
    assertThat(options.presentation().toText()).contains("28 gal (US)/ac");
    assertThat(Arrays.stream(numbers(run.checked("named", String.class))).sum()).isGreaterThan(300);
  }
}
