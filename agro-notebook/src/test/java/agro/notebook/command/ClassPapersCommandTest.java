package agro.notebook.command;

import static agro.notebook.command.Said.say;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** One command sets the papers of a class and marks them. */
class ClassPapersCommandTest {

  private static final Path VALE = Path.of("..", "demo-data", "osmere-vale");

  @TempDir private Path folder;
  private Path list;
  private Path blueprint;

  @BeforeEach
  void writeTheClass() throws IOException {
    list = write("class.csv", "student\nS1\nS2\nS3\n");
    blueprint =
        write(
            "blueprint.csv", "topic,difficulty,questions,marks,type\ndose,basic,2,2,dose-field\n");
  }

  private Path write(String name, String text) throws IOException {
    return Files.writeString(folder.resolve(name), text, StandardCharsets.UTF_8);
  }

  private Said papers(String... more) {
    var all =
        new ArrayList<>(
            List.of(
                "class-papers",
                "--class",
                list.toString(),
                "--blueprint",
                blueprint.toString(),
                "--seed",
                "8",
                "--to",
                folder.resolve("out").toString()));
    all.addAll(List.of(more));
    return say(all.toArray(String[]::new));
  }

  private String text(String name) throws IOException {
    return Files.readString(folder.resolve("out").resolve(name), StandardCharsets.UTF_8);
  }

  @Test
  void sheetsNotebooksAndTheFileForAnswersAreWritten() throws IOException {
    var said = papers();
    assertThat(said.status()).as(said.err()).isZero();
    assertThat(said.out())
        .contains("questions.html")
        .contains("answers.csv")
        .contains("notebooks: 6 files");
    assertThat(said.err()).contains("setting papers ...").contains("writing sheets ...");
    assertThat(text("answers.csv")).startsWith("student,name,group,1a,2a\r\nS1,,,,\r\n");
    assertThat(text("questions/S2.html")).contains("Seed 8, generator 1");
    var first = text("solutions.html");
    assertThat(papers().status()).isZero();
    assertThat(text("solutions.html")).isEqualTo(first);
  }

  @Test
  void answersThatSomebodyTypedAreNotWrittenOver() throws IOException {
    papers();
    Files.writeString(folder.resolve("out/answers.csv"), "student,1a,2a\nS1,1 mL,\n");
    var said = papers();
    assertThat(said.out()).contains("answers.csv was there and is left as it is");
    assertThat(text("answers.csv")).contains("1 mL");
    var marked = papers("--answers", folder.resolve("out/answers.csv").toString());
    assertThat(marked.status()).as(marked.err()).isZero();
    assertThat(marked.out()).contains("marks.csv").contains("Papers handed in:  1");
    assertThat(text("marks.csv")).contains("S1,,,0,0,0,4,").contains("S3,,,,,,4,nothing handed in");
    assertThat(text("details.csv")).contains("S1,1a,dose-field,1 mL,1 mL,");
    assertThat(text("feedback/S1.html")).contains("1 mL");
  }

  @Test
  void languageExamAndSittingAreOptions() throws IOException {
    var said = papers("--language", "de", "--exam", "--sitting", "2", "--title", "Probe <1>");
    assertThat(said.status()).as(said.err()).isZero();
    assertThat(text("questions/S1.html"))
        .contains("Probe &lt;1&gt;")
        .contains("Startzahl 8, Generator 1, Termin 2")
        .contains("Taschenrechner");
    assertThat(papers("--language", "xx").err()).contains("take en or de");
    var some = papers("--student", "S2");
    assertThat(some.out()).contains("questions: 1 files");
  }

  @Test
  void semicolonsAreAnOption() throws IOException {
    list = write("class.csv", "student;name\nS1;A, B\n");
    blueprint = write("blueprint.csv", "topic;difficulty;questions;marks\ndose;basic;1;1,5\n");
    var said = papers("--semicolon");
    assertThat(said.status()).as(said.err()).isZero();
    assertThat(text("answers.csv")).startsWith("student;name;group;1a\r\nS1;A, B;");
  }

  @Test
  void theClassOfTheValeIsMarked() {
    list = VALE.resolve("class-list.csv");
    blueprint = VALE.resolve("course-blueprint.csv");
    var said =
        papers(
            "--setting",
            VALE.resolve("course-setting.csv").toString(),
            "--answers",
            VALE.resolve("course-answers.csv").toString());
    assertThat(said.status()).as(said.err()).isZero();
    assertThat(said.out()).contains("1 osmere rood is 1180 m²").contains("Papers handed in:  23");
    assertThat(said.out()).contains("Mistakes by how many students made them");
  }

  @Test
  void badInputIsToldWithItsLine() throws IOException {
    list = write("class.csv", "student\nS1\nS1\n");
    var said = papers();
    assertThat(said.status()).isEqualTo(1);
    assertThat(said.err()).contains("class.csv, line 3").contains("Mend:");
    assertThat(folder.resolve("out")).doesNotExist();
  }
}
