package agro.course.paper;

import agro.course.CourseWords;
import agro.course.marking.MarkVerdict;
import agro.course.marking.Marker;
import agro.reading.DelimitedFormat;
import agro.report.Progress;
import agro.working.Cell;
import agro.working.Presentable;
import agro.working.Presentation;
import agro.working.ResultTable;
import agro.working.ResultTable.Column;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * The marks of a class.
 *
 * @param papers what was asked
 * @param marked one for each paper, in the order of the class list
 */
public record MarkSheet(ClassPapers papers, List<MarkedPaper> marked) implements Presentable {

  /** Copies the list. */
  public MarkSheet {
    Objects.requireNonNull(papers, "papers");
    marked = List.copyOf(marked);
  }

  /**
   * Marks what a class typed, by the usual rules, with a bar of progress where one is shown.
   *
   * @param papers what was asked
   * @param answers what was typed
   * @return the marks
   */
  public static MarkSheet of(ClassPapers papers, AnswerFile answers) {
    return of(papers, answers, Progress.ofThread());
  }

  /**
   * Marks what a class typed, by the usual rules.
   *
   * @param papers what was asked
   * @param answers what was typed
   * @param progress hears after each student
   * @return the marks
   */
  public static MarkSheet of(ClassPapers papers, AnswerFile answers, Progress progress) {
    return of(papers, answers, Marker.withDefaults(), progress);
  }

  /**
   * Marks what a class typed.
   *
   * @param papers what was asked
   * @param answers what was typed
   * @param marker how strictly marks are given
   * @param progress hears after each student
   * @return the marks
   */
  public static MarkSheet of(
      ClassPapers papers, AnswerFile answers, Marker marker, Progress progress) {
    var marked = new ArrayList<MarkedPaper>();
    int done = 0;
    for (var paper : papers.papers()) {
      var own = answers.of(paper.student());
      var typed = own.orElse(Map.of());
      marked.add(
          new MarkedPaper(
              paper,
              own.isPresent(),
              paper.questions().stream().map(one -> mark(one, typed, marker)).toList()));
      done++;
      progress.step("marking", done, papers.papers().size());
    }
    return new MarkSheet(papers, marked);
  }

  private static MarkedQuestion mark(
      PaperQuestion question, Map<String, String> typed, Marker marker) {
    var texts = question.labels().stream().map(label -> typed.getOrDefault(label, "")).toList();
    return MarkedQuestion.of(question, texts, marker);
  }

  /**
   * One row for each student: marks by question and their sum. Cells of who handed in nothing are
   * empty.
   *
   * @param format how the file is written
   * @return the content of the file; columns have the same names in every language
   */
  public String marksFile(DelimitedFormat format) {
    return MarkFiles.marks(this, format);
  }

  /**
   * One row for each part of each student: what was typed, how it was read, and what became of it.
   * Who handed in nothing has no rows, since the right answers stand in them.
   *
   * @param format how the file is written
   * @return the content of the file; columns have the same names in every language
   */
  public String detailsFile(DelimitedFormat format) {
    return MarkFiles.details(this, format);
  }

  /**
   * The marks of the class.
   *
   * @return one row for each student: marks by question and their sum; no marks, not zero, for who
   *     handed in nothing
   */
  public ResultTable table() {
    var words = words();
    var columns = new ArrayList<Column>();
    columns.add(Column.of(words.say("column.student")));
    // Heads are bare numbers, since the table of a long paper has to fit a page.
    int questions = papers.plan().blueprint().questions();
    for (int number = 1; number <= questions; number++) {
      columns.add(Column.of(String.valueOf(number)));
    }
    columns.add(Column.of(words.say("sheet.total")));
    var title = words.say("fact.marks") + ": " + words.say("column.question") + " 1";
    return ResultTable.of(
        questions > 1 ? title + "–" + questions : title,
        columns,
        marked.stream().map(one -> row(one, words)).toList());
  }

  private static List<Cell> row(MarkedPaper paper, CourseWords words) {
    var row = new ArrayList<Cell>();
    row.add(Cell.text(paper.paper().student().heading()));
    for (var question : paper.questions()) {
      row.add(Cell.text(paper.handedIn() ? words.exact(question.marks()) : ""));
    }
    row.add(Cell.text(paper.handedIn() ? words.exact(paper.marks()) : words.say("marks.nothing")));
    return row;
  }

  /**
   * The marked paper of a student.
   *
   * @param id id of the student
   * @return the paper with its marks; empty if the student has none here
   */
  public Optional<MarkedPaper> paper(String id) {
    return papers
        .paper(id)
        .flatMap(own -> marked.stream().filter(one -> one.paper().equals(own)).findFirst());
  }

  /**
   * Who has to sit again: who handed in nothing, or has less than a share of the marks.
   *
   * @param share share of the marks that is enough, 0 to 1
   * @return ids in the order of the class list
   */
  public List<String> below(double share) {
    return marked.stream()
        .filter(one -> !one.handedIn() || one.marks() < share * one.paper().marks())
        .map(one -> one.paper().student().id())
        .toList();
  }

  /**
   * What the class has done well and what it has to hear again.
   *
   * @return means by question and the most frequent mistakes
   */
  public ClassSummary summary() {
    return ClassSummary.of(this);
  }

  /**
   * The words of the papers.
   *
   * @return the words
   */
  public CourseWords words() {
    return PaperWords.of(papers.plan().language());
  }

  /**
   * A verdict in words.
   *
   * @param verdict the verdict
   * @return a few words in the language of the papers
   */
  public String say(MarkVerdict verdict) {
    return words().in(Marker.class, "marking").say("verdict." + verdict.name());
  }

  @Override
  public Presentation presentation() {
    return summary().presentation();
  }
}
