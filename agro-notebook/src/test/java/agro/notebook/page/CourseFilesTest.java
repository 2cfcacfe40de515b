package agro.notebook.page;

import static org.assertj.core.api.Assertions.assertThat;

import agro.course.paper.AnswerFile;
import agro.course.paper.ClassPapers;
import agro.course.paper.MarkSheet;
import agro.notebook.run.NotebookDocument;
import agro.notebook.run.NotebookRunner;
import agro.reading.DelimitedFormat;
import agro.report.Progress;
import agro.working.TextLanguage;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Sheets of a class on paper and as notebooks. */
class CourseFilesTest {

  private static final Set<String> ENGLISH =
      Set.of(
          "the",
          "and",
          "of",
          "with",
          "is",
          "are",
          "answer",
          "marks",
          "mark",
          "question",
          "total",
          "seed",
          "exam",
          "exercise",
          "exercises",
          "solutions",
          "feedback",
          "how",
          "what",
          "which",
          "right",
          "wrong",
          "from",
          "for",
          "not",
          "your",
          "to",
          "per",
          "each",
          "unit",
          "product",
          "found",
          "before",
          "after",
          "sources",
          "step");

  private static String words(String html) {
    return html.replaceAll("(?s)<style>.*?</style>", "").replaceAll("<[^>]*>", " ");
  }

  private static Set<String> english(String text) {
    var found = new TreeSet<String>();
    for (var word : text.toLowerCase(Locale.ROOT).split("[^a-zäöüß]+", -1)) {
      if (ENGLISH.contains(word)) {
        found.add(word);
      }
    }
    return found;
  }

  @Test
  void pagesOfTheFirstGeneratorAreThoseThatWerePrinted() throws IOException {
    for (var text : FirstGeneratorPages.texts().entrySet()) {
      var file = FirstGeneratorPages.folder().resolve(text.getKey());
      assertThat(file).as("write it as WriteFirstGeneratorPages says").exists();
      assertThat(text.getValue().equals(Files.readString(file, StandardCharsets.UTF_8)))
          .as("%s is byte for byte what was printed", text.getKey())
          .isTrue();
    }
  }

  @Test
  void everySheetSaysWhoseItIsAndWhereItComesFrom() {
    var files = FirstGeneratorPages.files(TextLanguage.ENGLISH).texts();
    assertThat(files.keySet())
        .containsExactly(
            "questions.html",
            "questions/S1.html",
            "questions/S2.html",
            "solutions.html",
            "solutions/S1.html",
            "solutions/S2.html",
            "notebooks/S1.ipynb",
            "notebooks/S1-solutions.ipynb",
            "notebooks/S2.ipynb",
            "notebooks/S2-solutions.ipynb");
    var all = files.get("questions.html");
    assertThat(all).contains("Seed 8, generator 1").contains("/ 13").contains("&lt;b&gt;N &amp; M");
    assertThat(all).doesNotContain("<b>N").doesNotContain("<script").contains("lang=\"en\"");
    assertThat(all.split("class=\"sheet\"", -1)).hasSize(3);
    // One table for two students, drawn once.
    assertThat(all.split("<symbol", -1)).hasSize(2);
    assertThat(all.split("<use", -1)).hasSize(3);
    assertThat(files.get("solutions.html")).doesNotContain("<symbol");
  }

  @Test
  void questionsGiveNothingAway() {
    var papers = ClassPapers.of(FirstGeneratorPages.plan(TextLanguage.ENGLISH));
    var files = CourseFiles.sheets(papers, Progress.silent()).texts();
    var question = papers.papers().get(0).questions().get(0);
    var words = question.exercise().context().words();
    var right = question.solution().get(0).answer().print(words);
    assertThat(words(files.get("questions/S1.html"))).doesNotContain(right);
    assertThat(files.get("notebooks/S1.ipynb")).doesNotContain(right);
    assertThat(words(files.get("solutions/S1.html"))).contains(right);
    assertThat(files.get("notebooks/S1-solutions.ipynb")).contains(right);
  }

  @Test
  void germanSheetsHoldNoEnglishWord() {
    var files = FirstGeneratorPages.files(TextLanguage.GERMAN).texts();
    assertThat(english(words(files.get("questions.html")))).isEmpty();
    assertThat(english(words(files.get("solutions.html")))).isEmpty();
    for (var name : new String[] {"notebooks/S1.ipynb", "notebooks/S1-solutions.ipynb"}) {
      var prose = new StringBuilder();
      NotebookDocument.parse(name, files.get(name)).cells().stream()
          .filter(cell -> cell.toString().startsWith("markdown"))
          .forEach(cell -> prose.append(cell.source()).append('\n'));
      assertThat(prose.toString()).contains("Startzahl 8");
      assertThat(english(prose.toString())).isEmpty();
    }
  }

  @Test
  void feedbackIsForThoseWhoHandedIn() {
    var papers = ClassPapers.of(FirstGeneratorPages.plan(TextLanguage.GERMAN));
    var answers =
        AnswerFile.parse(
            "a.csv",
            "student,part,answer\nS2,1a,<i>weiß nicht</i>\n",
            DelimitedFormat.COMMA,
            papers);
    var files = CourseFiles.feedback(MarkSheet.of(papers, answers, Progress.silent())).texts();
    assertThat(files.keySet())
        .containsExactlyInAnyOrder("feedback/S2.html", "feedback.html", "summary.html");
    assertThat(files.get("feedback/S2.html"))
        .contains("&lt;i&gt;weiß nicht&lt;/i&gt;")
        .contains("0 von 13");
    assertThat(english(words(files.get("feedback.html")))).isEmpty();
    assertThat(english(words(files.get("summary.html")))).isEmpty();
  }

  @Test
  void notebooksAreOfTheFormatThatJupyterReads() {
    var notebooks = FirstGeneratorPages.files(TextLanguage.ENGLISH).texts();
    for (var name : new String[] {"notebooks/S1.ipynb", "notebooks/S2-solutions.ipynb"}) {
      var root = JsonParser.parseString(notebooks.get(name)).getAsJsonObject();
      assertThat(root.get("nbformat").getAsInt()).isEqualTo(4);
      assertThat(root.get("nbformat_minor").getAsInt()).isEqualTo(5);
      var ids = new HashSet<String>();
      for (var element : root.getAsJsonArray("cells")) {
        JsonObject cell = element.getAsJsonObject();
        assertThat(cell.get("id").getAsString()).matches("[a-zA-Z0-9_-]{1,64}");
        assertThat(ids.add(cell.get("id").getAsString())).isTrue();
        boolean code = cell.get("cell_type").getAsString().equals("code");
        assertThat(cell.has("outputs")).isEqualTo(code);
        assertThat(cell.has("execution_count")).isEqualTo(code);
        assertThat(cell.has("metadata")).isTrue();
      }
    }
  }

  @Test
  void aStudentAnswersInANotebookAndHandsInAFile(@TempDir Path folder) {
    var papers = ClassPapers.of(FirstGeneratorPages.plan(TextLanguage.GERMAN));
    var texts = CourseFiles.sheets(papers, Progress.silent()).texts();
    var file = folder.resolve("answers-S1.csv");
    var question = papers.papers().get(0).questions().get(0);
    var right = question.solution().get(0).answer().print(question.exercise().context().words());
    var answered =
        texts
            .get("notebooks/S1.ipynb")
            .replace("Path.of(\\\"answers-S1.csv\\\")", "Path.of(\\\"" + file + "\\\")")
            .replace(
                "answers.put(\\\"1a\\\", \\\"\\\")",
                "answers.put(\\\"1a\\\", \\\"" + right + "\\\")");
    var run = NotebookRunner.standard().run(NotebookDocument.parse("S1.ipynb", answered));
    assertThat(run.failed()).isEmpty();
    var answers = AnswerFile.read(file, DelimitedFormat.COMMA, papers);
    var sheet = MarkSheet.of(papers, answers, Progress.silent());
    assertThat(sheet.marked().get(0).questions().get(0).marks()).isEqualTo(2);
    assertThat(sheet.marked().get(0).marks()).isEqualTo(2);
  }

  @Test
  @Tag("slow")
  void solutionNotebooksRunToo() {
    var texts = FirstGeneratorPages.files(TextLanguage.ENGLISH).texts();
    var notebook = NotebookDocument.parse("S2.ipynb", texts.get("notebooks/S2-solutions.ipynb"));
    assertThat(NotebookRunner.standard().run(notebook).failed()).isEmpty();
  }

  @Test
  void textInCodeIsEscaped() {
    assertThat(NotebookText.literal("a\"b\\c\nd")).isEqualTo("\"a\\\"b\\\\c\\u000ad\"");
    assertThat(Pattern.matches("\"ü\"", NotebookText.literal("ü"))).isTrue();
  }
}
