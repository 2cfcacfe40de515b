package agro.notebook.kernel;

import static org.assertj.core.api.Assertions.assertThat;

import agro.notebook.display.MimeBundle;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What cells call to show something works in the shell without imports. */
class DisplayInCellsTest {

  private final CellEvaluator evaluator = CellEvaluator.open();
  private OutputRecorder recorder = OutputRecorder.first();

  @AfterEach
  void close() {
    evaluator.close();
  }

  private CellResult run(String code) {
    recorder = recorder.next();
    var result = evaluator.evaluate(new CellSource("cell", code), recorder);
    assertThat(result.failure()).isEmpty();
    return result;
  }

  private List<String> shown() {
    return recorder.outputs().stream().map(CellOutput::plainText).toList();
  }

  @Test
  void valuesAreShownReplacedAndRestrictedToFormats() {
    run("var id = display(1); updateDisplay(id, 2); display(3, \"text/plain\");");
    assertThat(shown()).containsExactly("2", "3");
    run("display(\"<b>K</b>\", \"text/html\"); updateDisplay(id, \"<i>x</i>\", \"text/html\");");
    assertThat(recorder.outputs().get(0).bundle().orElseThrow().get(MimeBundle.HTML))
        .contains("<b>K</b>");
    assertThat(run("render(\"<i>x</i>\", \"text/html\")").value().shown().plainText())
        .isEqualTo("x");
    assertThat(run("display(null, \"text/html\")").value().present()).isFalse();
    assertThat(shown()).containsExactly("null");
  }

  @Test
  void markupPicturesAndBarsNeedNoImport() {
    assertThat(run("Markup.json(\"{}\")").value().shown().get(MimeBundle.JSON)).contains("{}");
    assertThat(run("Picture.svg(\"<svg/>\").withAlternative(\"a\")").value().shown().plainText())
        .isEqualTo("a");
    run("var sum = 0; for (var n : ProgressBar.over(List.of(1, 2), \"adding\")) sum += n;");
    assertThat(run("sum").value().object()).isEqualTo(3);
    assertThat(shown()).isEmpty();
    assertThat(run("agro.report.Progress.ofThread()").value().object().getClass().getSimpleName())
        .isEqualTo("ProgressBar");
  }

  @Test
  void readersMayUseTheNamesForTypesOfTheirOwn() {
    run("record Picture(int points) {}");
    assertThat(run("new Picture(3)").value().shown().plainText()).isEqualTo("Picture[points=3]");
    assertThat(run("Picture.class").value().shown().plainText()).isEqualTo("record Picture");
    run("class Plain {}");
    assertThat(run("new Plain()").value().shown().plainText()).matches("Plain@[0-9a-f]+");
  }

  @Test
  void longOutputOfACellGoesToAFile(@TempDir Path folder) throws Exception {
    var output = new LongOutput(recorder, "cell 1", 2_000, folder);
    evaluator.evaluate(
        new CellSource(
            "cell 1", "for (int i = 0; i < 1000; i++) System.out.println(\"row \" + i);"),
        output);
    output.finish();
    try (var files = Files.list(folder)) {
      assertThat(Files.readAllLines(files.findFirst().orElseThrow())).hasSize(1_000);
    }
    assertThat(String.join("", shown())).contains("row 0\n", "row 999\n").doesNotContain("row 500");
  }
}
