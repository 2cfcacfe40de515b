package agro.course.paper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import agro.reading.DelimitedFormat;
import agro.reading.SafeFile;
import agro.report.InputProblem;
import agro.report.Progress;
import agro.working.TextLanguage;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Answers from files, and what becomes of them. */
class MarkSheetTest {

  private static final PaperPlan PLAN =
      PaperPlan.of(PaperSamples.blueprint(), PaperSamples.students(4), 8);
  private static final ClassPapers PAPERS = ClassPapers.of(PLAN);

  private static AnswerFile parse(String text) {
    return AnswerFile.parse("answers.csv", text, DelimitedFormat.COMMA, PAPERS);
  }

  private static MarkSheet mark(AnswerFile answers) {
    return MarkSheet.of(PAPERS, answers, Progress.silent());
  }

  @ParameterizedTest
  @EnumSource
  void theRightAnswersHaveAllMarks(TextLanguage language) {
    var papers = ClassPapers.of(PLAN.in(language));
    var text = PaperSamples.rightAnswers(papers);
    var answers = AnswerFile.parse("a.csv", text, DelimitedFormat.SEMICOLON, papers);
    var sheet = MarkSheet.of(papers, answers, Progress.silent());
    assertThat(sheet.marked()).allSatisfy(each -> assertThat(each.marks()).isEqualTo(15));
    assertThat(sheet.summary().meanMarks()).isEqualTo(15);
    assertThat(sheet.summary().mistakes()).isEmpty();
    assertThat(sheet.marksFile(DelimitedFormat.COMMA))
        .startsWith("student,name,group,1,2,3,4,total,of,remark\r\nS1,,,2,3,5,5,15,15,\r\n");
  }

  @Test
  void optionsAreAnsweredByTheirLetter() {
    var question = PAPERS.papers().get(0).questions().get(1);
    var options = question.options(0).orElseThrow();
    var sheet =
        mark(parse("student,part,answer\nS1,2a," + options.right().letter() + "\nS2,2a,Z\n"));
    assertThat(sheet.marked().get(0).questions().get(1).marks()).isEqualTo(3);
    assertThat(sheet.marked().get(1).questions().get(1).marks()).isZero();
    var slip = options.options().stream().filter(each -> each.mistake().isPresent()).findFirst();
    var wrong = mark(parse("student,part,answer\nS1,2a," + slip.orElseThrow().letter() + "\n"));
    assertThat(wrong.summary().mistakes()).singleElement().extracting("students").isEqualTo(1);
  }

  @Test
  void mistakesAreCountedByStudent() {
    var text = new StringBuilder("student,part,answer\n");
    for (var paper : PAPERS.papers().subList(0, 3)) {
      var slip = paper.questions().get(0).solution().get(0).slips().get(0);
      var typed = slip.answer().print(PaperWords.of(TextLanguage.ENGLISH));
      text.append(paper.student().id()).append(",1a,").append(typed).append('\n');
    }
    var summary = mark(parse(text.toString())).summary();
    assertThat(summary.handedIn()).isEqualTo(3);
    assertThat(summary.mistakes().get(0).students()).isEqualTo(3);
    assertThat(summary.mistakes().get(0).questions()).containsExactly(1);
    assertThat(summary.questions().get(0).mean()).isZero();
    assertThat(summary.presentation().toText())
        .contains("rate divided by area")
        .contains("Papers handed in:  3");
  }

  @Test
  void whoHandsInNothingHasNoMarks() {
    var sheet = mark(parse("student,part,answer\nS2,1a,1 mL\nS3,1a,\n"));
    var lines = sheet.marksFile(DelimitedFormat.COMMA).lines().toList();
    assertThat(lines.get(1)).isEqualTo("S1,,,,,,,,15,nothing handed in");
    assertThat(lines.get(2)).startsWith("S2,,,0,0,0,0,0,15,");
    assertThat(lines.get(3)).endsWith("nothing handed in");
    assertThat(sheet.detailsFile(DelimitedFormat.COMMA)).doesNotContain("S1,").contains("S2,1a,");
  }

  @Test
  void noCellIsTakenForAFormula() {
    var list = ClassList.parse("c.csv", "student,name\nS1,=cmd()\n", DelimitedFormat.COMMA);
    var papers = ClassPapers.of(PaperPlan.of(PaperSamples.onlyDose(1), list, 8));
    var answers =
        AnswerFile.parse("a.csv", "student,1a\nS1,@SUM(A1)\n", DelimitedFormat.COMMA, papers);
    var sheet = MarkSheet.of(papers, answers, Progress.silent());
    assertThat(sheet.marksFile(DelimitedFormat.COMMA)).contains("S1,'=cmd(),");
    assertThat(sheet.detailsFile(DelimitedFormat.COMMA)).contains(",'@SUM(A1),");
    assertThat(AnswerFile.template(papers, DelimitedFormat.COMMA)).contains("S1,'=cmd(),,");
  }

  @Test
  void semicolonsBringDecimalCommas() {
    var typed =
        PaperSamples.right(PAPERS.papers().get(0)).entrySet().stream()
            .filter(each -> each.getKey().startsWith("3"))
            .limit(1)
            .map(each -> "S1," + each.getKey() + "," + each.getValue())
            .collect(Collectors.joining());
    var marks =
        mark(parse("student,part,answer\n" + typed + "\n")).marksFile(DelimitedFormat.SEMICOLON);
    assertThat(marks).startsWith("student;name;group;1;2;3;4;total;of;remark\r\n");
    assertThat(marks.lines().toList().get(1)).containsPattern(";(1|1,5|2|2,5);");
  }

  @Test
  void theTemplateIsReadAgain() {
    var template = AnswerFile.template(PAPERS, DelimitedFormat.COMMA);
    assertThat(template).startsWith("student,name,group,1a,2a,3a,");
    var answers = parse(template);
    assertThat(answers.of(CourseStudent.of("S1"))).isEmpty();
    assertThat(answers.report().entries()).isEmpty();
  }

  @Test
  void headingsAreReadAsTeachersWriteThem() {
    var labels = PAPERS.labels();
    var heading =
        labels.stream()
            .map(label -> label.equals("1a") ? "1" : label.equals("2a") ? "2 A)" : label)
            .collect(Collectors.joining(","));
    var answers =
        parse("Student," + heading + ",seat\ns1,7 mL,B" + ",".repeat(labels.size() - 1) + "\n");
    assertThat(answers.of(CourseStudent.of("S1")).orElseThrow())
        .containsEntry("1a", "7 mL")
        .containsEntry("2a", "B");
    assertThat(answers.report().toString()).contains("the column seat is not looked at");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "student,part,answer;S9,1a,x | line 2 | no student \"S9\"",
        "student,part,answer;S1,1a,x;S1,1a,y | line 3 | already",
        "student,part,answer;S1,9a,x | line 2 | no part \"9a\"",
        "student,part,answer;S1,1b,x | line 2 | no part \"1b\"",
        "student,1a;S1,x | line 1 | no column for 2a",
        "student,9a;S1,x | answers.csv | the column \"9a\" is on no paper",
      })
  void whatBelongsToNoPaperIsRefused(String lines, String where, String what) {
    assertThatThrownBy(() -> parse(lines.strip().replace(";", "\n") + "\n"))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining(where.strip())
        .hasMessageContaining(what.strip());
  }

  @Test
  void aStudentHasOneRow() {
    var row = ",x".repeat(PAPERS.labels().size());
    var text = "student," + String.join(",", PAPERS.labels()) + "\nS1" + row + "\nS1" + row + "\n";
    assertThatThrownBy(() -> parse(text))
        .hasMessageContaining("line 3")
        .hasMessageContaining("twice");
  }

  @Test
  void filesOfNotebooksAreReadFromAFolder(@TempDir Path folder) {
    for (var paper : PAPERS.papers().subList(0, 2)) {
      var file = folder.resolve("answers-" + paper.student().id() + ".csv");
      AnswerFile.save(file, paper.student().id(), PaperSamples.right(paper));
    }
    // Notebooks know nothing of the habits of the country.
    var answers = AnswerFile.readAll(folder, DelimitedFormat.SEMICOLON, PAPERS);
    assertThat(mark(answers).marked())
        .extracting(MarkedPaper::marks)
        .containsExactly(15.0, 15.0, 0.0, 0.0);
    var again = new LinkedHashMap<>(PaperSamples.right(PAPERS.papers().get(0)));
    AnswerFile.save(folder.resolve("copy.csv"), "S1", again);
    assertThatThrownBy(() -> AnswerFile.readAll(folder, DelimitedFormat.COMMA, PAPERS))
        .hasMessageContaining("S1 is in two files");
  }

  @Test
  void anEmptyFolderIsToldOf(@TempDir Path folder) {
    SafeFile.writeText(folder.resolve("notes.txt"), "x");
    assertThatThrownBy(() -> AnswerFile.readAll(folder, DelimitedFormat.COMMA, PAPERS))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("no answers");
  }

  @Test
  void theMeanIsThatOfThosePresent() {
    var right = PaperSamples.right(PAPERS.papers().get(0)).get("1a");
    var summary =
        mark(parse("student,part,answer\nS1,1a," + right + "\nS2,1a,no idea\n")).summary();
    assertThat(summary.meanMarks()).isCloseTo(1, within(1e-12));
    assertThat(summary.questions().get(0).full()).isEqualTo(1);
  }

  @ParameterizedTest
  @EnumSource
  void marksAreShown(TextLanguage language) {
    var papers = ClassPapers.of(PLAN.in(language));
    var words = PaperWords.of(language);
    var text =
        PaperSamples.rightAnswers(papers)
            .lines()
            .filter(line -> !line.startsWith("S4"))
            .collect(Collectors.joining("\n"));
    var sheet =
        MarkSheet.of(papers, AnswerFile.parse("a.csv", text, DelimitedFormat.SEMICOLON, papers));
    assertThat(sheet.table().columns().stream().map(one -> one.heading()))
        .containsExactly(words.say("column.student"), "1", "2", "3", "4", words.say("sheet.total"));
    assertThat(sheet.table().title()).endsWith(words.say("column.question") + " 1–4");
    var rows = sheet.table().rows();
    assertThat(rows).hasSize(4);
    assertThat(rows.get(0).stream().map(cell -> cell.printed()))
        .containsExactly("S1", "2", "3", "5", "5", "15");
    assertThat(rows.get(3).get(1).printed()).isEmpty();
    assertThat(rows.get(3).get(5).printed()).isEqualTo(words.say("marks.nothing"));
    assertThat(sheet.below(0.5)).containsExactly("S4");
    assertThat(sheet.paper("S9")).isEmpty();
    assertThat(sheet.paper("S4").orElseThrow().presentation().toText())
        .contains(words.say("marks.nothing"));
    assertThat(sheet.paper("S1").orElseThrow().presentation().toText())
        .contains(words.say("sheet.of", "marks", "15", "of", "15"), "4a");
  }

  @Test
  void aPaperShowsWhatThereIsToChooseFrom() {
    var paper = PAPERS.papers().get(0);
    var text = paper.presentation().toText();
    paper
        .questions()
        .get(1)
        .options(0)
        .orElseThrow()
        .options()
        .forEach(one -> assertThat(text).contains("2a " + one.letter() + ":  " + one.text()));
    assertThat(text).contains("1. ", "4. ");
  }
}
