package agro.notebook.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import agro.report.InputProblem;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class NotebookRunnerTest {

  private static final SampleNotebook WITH_PARAMETERS =
      SampleNotebook.empty()
          .tagged(
              "parameters",
              "var place = \"Mill Field\";",
              "int days = 3;",
              "double base = 7;",
              "boolean wet = false;",
              "LocalDate asOf = LocalDate.of(2026, 5, 1);",
              "Path folder = Path.of(\"here\");",
              "List<String> words = List.of();")
          .tagged("check:all", "place + days + base + wet + asOf + folder");

  @Test
  void cellsSeeWhatEarlierOnesDeclared() {
    var run =
        NotebookRunner.standard()
            .run(
                SampleNotebook.empty()
                    .code("int a = 2;")
                    .prose("Twice:")
                    .tagged("check:twice", "a * 2")
                    .document());
    assertThat(run.failed()).isEmpty();
    assertThat(run.checked("twice", Integer.class)).isEqualTo(4);
    assertThat(run.outcomes()).hasSize(2);
  }

  @Test
  void parametersKeepTheirTypes() {
    var run =
        NotebookRunner.standard()
            .withParameter("place", "a \"quoted\" \\ place\n")
            .withParameter("days", "12")
            .withParameter("base", "6")
            .withParameter("wet", "true")
            .withParameter("asOf", "2026-07-02")
            .withParameter("folder", "over there")
            .run(WITH_PARAMETERS.document());
    assertThat(run.checked("all", String.class))
        .isEqualTo("a \"quoted\" \\ place\n126.0true2026-07-02over there");
    assertThat(run.cells()).hasSize(3);
    assertThat(run.cells().get(1).tags()).containsExactly("injected-parameters");
    assertThat(run.cells().get(1).source()).contains("double base = 6.0;");
  }

  @Test
  void parametersOfAnEarlierRunAreReplaced() {
    var first = NotebookRunner.standard().withParameter("days", "5");
    var again =
        NotebookDocument.parse("again.ipynb", first.run(WITH_PARAMETERS.document()).toNotebook());
    var run = NotebookRunner.standard().withParameter("days", "6").run(again);
    assertThat(run.cells()).hasSize(3);
    assertThat(run.checked("all", String.class)).contains("Field6");
    assertThat(NotebookRunner.standard().run(again).checked("all", String.class))
        .contains("Field5");
  }

  @Test
  void anUnknownParameterIsRefusedWithThoseThatExist() {
    var runner = NotebookRunner.standard().withParameter("plaice", "x");
    assertThatThrownBy(() -> runner.run(WITH_PARAMETERS.document()))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("no parameter \"plaice\"")
        .hasMessageContaining("place (String), days (int), base (double)");
    var none = SampleNotebook.empty().code("1").document();
    assertThatThrownBy(() -> runner.run(none))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("no parameter at all");
  }

  @Test
  void aValueOfTheWrongTypeIsRefused() {
    for (var bad :
        List.of(
            List.of("days", "1.5"),
            List.of("base", "1,5"),
            List.of("base", "NaN"),
            List.of("wet", "yes"),
            List.of("asOf", "1/5/2026"),
            List.of("words", "a"))) {
      var runner = NotebookRunner.standard().withParameter(bad.get(0), bad.get(1));
      assertThatThrownBy(() -> runner.run(WITH_PARAMETERS.document()))
          .as(bad.toString())
          .isInstanceOf(InputProblem.class)
          .hasMessageContaining(bad.get(0));
    }
  }

  @Test
  void theFirstFailureEndsTheRun() {
    var run =
        NotebookRunner.standard()
            .run(
                SampleNotebook.empty()
                    .code("int a = 1;")
                    .code("int b = 0;", "a / b")
                    .tagged("check:later", "3")
                    .document());
    var failed = run.failed().orElseThrow();
    assertThat(failed.number()).isEqualTo(2);
    assertThat(failed.result().failure().orElseThrow().place().line()).isEqualTo(2);
    assertThat(run.outcomes()).hasSize(2);
    assertThatThrownBy(() -> run.checked("later", Integer.class))
        .isInstanceOf(IllegalStateException.class)
        .hasMessageContaining("/ by zero");
  }

  @Test
  void anExpectedFailureDoesNot() {
    var run =
        NotebookRunner.standard()
            .run(
                SampleNotebook.empty()
                    .tagged("raises-exception", "1 / 0")
                    .tagged("check:later", "3")
                    .document());
    assertThat(run.failed()).isEmpty();
    assertThat(run.checked("later", Integer.class)).isEqualTo(3);
    assertThat(run.toPage(CodeView.FOLDED)).contains("/ by zero");
  }

  @Test
  void checksSayWhatIsWrong() {
    var run =
        NotebookRunner.standard()
            .run(
                SampleNotebook.empty()
                    .tagged("check:n", "3")
                    .tagged("check:m", "int m;")
                    .document());
    assertThatThrownBy(() -> run.checked("k", Integer.class)).hasMessageContaining("n, m");
    assertThatThrownBy(() -> run.checked("n", String.class))
        .hasMessageContaining("type String, but its value is a Integer");
    assertThatThrownBy(() -> run.checked("m", String.class)).hasMessageContaining("nothing");
  }

  @Test
  void theSummaryIsWhatTaggedCellsSay() {
    var run =
        NotebookRunner.standard()
            .run(
                SampleNotebook.empty()
                    .code("System.out.println(\"not this\");")
                    .tagged(
                        "summary",
                        "System.err.println(\"nor this\");",
                        "System.out.println(\"first\");",
                        "display(\"second\");",
                        "\"third\"")
                    .tagged("summary", "4")
                    .document());
    assertThat(run.summary()).isEqualTo("first\nsecond\nthird\n\n4\n");
  }

  @Test
  void theListenerHearsEveryCell() {
    var heard = new ArrayList<String>();
    var listener =
        new RunListener() {
          @Override
          public void cellStarts(int number, int total) {
            heard.add(number + "/" + total);
          }

          @Override
          public void cellEnded(CellOutcome outcome) {
            heard.add("ended " + outcome.number());
          }
        };
    NotebookRunner.standard()
        .withListener(listener)
        .run(SampleNotebook.empty().code("1").prose("x").code("2").document());
    assertThat(heard).containsExactly("1/2", "ended 1", "2/2", "ended 2");
  }

  @Test
  void somethingShownCanBeReplacedByALaterCell() {
    var run =
        NotebookRunner.standard()
            .run(
                SampleNotebook.empty()
                    .code("var id = display(\"before\");")
                    .code("updateDisplay(id, \"after\");")
                    .document());
    assertThat(run.outcomes().get(0).plainText()).isEqualTo("after\n");
  }
}
