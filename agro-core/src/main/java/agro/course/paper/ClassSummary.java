package agro.course.paper;

import agro.course.CourseWords;
import agro.course.Mistake;
import agro.course.marking.PartMark;
import agro.working.Cell;
import agro.working.Presentable;
import agro.working.Presentation;
import agro.working.ResultTable;
import agro.working.ResultTable.Column;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * How a class has done, for the teacher's next lesson. Who handed in nothing does not count.
 *
 * @param papers what was asked
 * @param handedIn how many papers were handed in
 * @param meanMarks mean marks of a paper; 0 if none was handed in
 * @param questions how each question went, in order
 * @param mistakes known mistakes, the most frequent first
 */
public record ClassSummary(
    ClassPapers papers,
    int handedIn,
    double meanMarks,
    List<QuestionMean> questions,
    List<MistakeCount> mistakes)
    implements Presentable {

  private static final double PERCENT = 100;

  /**
   * How a question went.
   *
   * @param number number on the paper
   * @param titles titles of the exercises; one where everybody had the same type
   * @param marks marks that can be had
   * @param mean mean of the marks given
   * @param full how many students have all marks
   */
  public record QuestionMean(int number, Set<String> titles, double marks, double mean, int full) {
    /** Copies the titles. */
    public QuestionMean {
      titles = Set.copyOf(titles);
    }
  }

  /**
   * How often a mistake was made.
   *
   * @param mistake the mistake
   * @param students how many students made it at least once
   * @param questions numbers of the questions in which it was made
   */
  public record MistakeCount(Mistake mistake, int students, Set<Integer> questions) {
    /** Copies the numbers. */
    public MistakeCount {
      questions = Set.copyOf(questions);
    }
  }

  /** Copies the lists. */
  public ClassSummary {
    questions = List.copyOf(questions);
    mistakes = List.copyOf(mistakes);
  }

  static ClassSummary of(MarkSheet sheet) {
    var present = sheet.marked().stream().filter(MarkedPaper::handedIn).toList();
    double mean = present.stream().mapToDouble(MarkedPaper::marks).average().orElse(0);
    var questions = new ArrayList<QuestionMean>();
    for (int at = 0; at < sheet.papers().plan().blueprint().questions(); at++) {
      questions.add(mean(present, at));
    }
    return new ClassSummary(sheet.papers(), present.size(), mean, questions, mistakes(present));
  }

  private static QuestionMean mean(List<MarkedPaper> present, int at) {
    var titles = new LinkedHashSet<String>();
    double marks = 0;
    double sum = 0;
    int full = 0;
    for (var paper : present) {
      var one = paper.questions().get(at);
      titles.add(one.question().exercise().title());
      marks = one.question().marks();
      sum += one.marks();
      full += one.parts().stream().allMatch(PartMark::isFull) ? 1 : 0;
    }
    return new QuestionMean(
        at + 1, titles, marks, present.isEmpty() ? 0 : sum / present.size(), full);
  }

  private static List<MistakeCount> mistakes(List<MarkedPaper> present) {
    var students = new LinkedHashMap<Mistake, Set<String>>();
    var questions = new LinkedHashMap<Mistake, Set<Integer>>();
    for (var paper : present) {
      for (var question : paper.questions()) {
        for (var part : question.parts()) {
          part.mistake()
              .ifPresent(
                  mistake -> {
                    add(students, mistake, paper.paper().student().id());
                    add(questions, mistake, question.question().number());
                  });
        }
      }
    }
    return students.entrySet().stream()
        .map(
            each ->
                new MistakeCount(
                    each.getKey(), each.getValue().size(), questions.get(each.getKey())))
        .sorted(
            Comparator.comparingInt((MistakeCount each) -> -each.students())
                .thenComparing(each -> each.mistake().code()))
        .toList();
  }

  private static <T> void add(Map<Mistake, Set<T>> map, Mistake mistake, T value) {
    map.computeIfAbsent(mistake, missing -> new LinkedHashSet<>()).add(value);
  }

  private CourseWords words() {
    return PaperWords.of(papers.plan().language());
  }

  /**
   * How each question went.
   *
   * @return one row for each question
   */
  public ResultTable questionTable() {
    var words = words();
    var rows = new ArrayList<List<Cell>>();
    for (var each : questions) {
      rows.add(
          List.of(
              Cell.text(String.valueOf(each.number())),
              Cell.text(String.join(", ", new TreeSet<>(each.titles()))),
              Cell.text(words.number(each.mean(), 2)),
              Cell.text(words.exact(each.marks())),
              Cell.text(
                  each.marks() == 0 ? "–" : words.number(PERCENT * each.mean() / each.marks(), 0)),
              Cell.text(String.valueOf(each.full()))));
    }
    return ResultTable.of(
        words.say("summary.questions"),
        List.of(
            Column.of(words.say("column.question")),
            Column.of(words.say("column.title")),
            Column.of(words.say("column.mean")),
            Column.of(words.say("column.of")),
            Column.of(words.say("column.percent"), "%"),
            Column.of(words.say("column.full"))),
        rows);
  }

  /**
   * What was done wrong most often.
   *
   * @return one row for each known mistake
   */
  public ResultTable mistakeTable() {
    var words = words();
    var rows = new ArrayList<List<Cell>>();
    for (var each : mistakes) {
      rows.add(
          List.of(
              Cell.text(each.mistake().phrase(words)),
              Cell.text(String.valueOf(each.students())),
              Cell.text(
                  new TreeSet<>(each.questions())
                      .stream().map(String::valueOf).collect(Collectors.joining(", ")))));
    }
    return ResultTable.of(
        words.say("summary.mistakes"),
        List.of(
            Column.of(words.say("column.mistake")),
            Column.of(words.say("column.students")),
            Column.of(words.say("column.questions"))),
        rows);
  }

  @Override
  public Presentation presentation() {
    var words = words();
    var page =
        Presentation.titled(papers.plan().heading() + ": " + words.say("summary.title"))
            .fact(words.say("fact.students"), String.valueOf(papers.papers().size()))
            .fact(words.say("fact.handed.in"), String.valueOf(handedIn))
            .fact(
                words.say("fact.mean"),
                words.say(
                    "marks.out.of",
                    "marks",
                    words.number(meanMarks, 2),
                    "of",
                    words.exact(papers.plan().blueprint().marks())))
            .table(questionTable());
    if (mistakes.isEmpty()) {
      page.paragraph(words.say("summary.no.mistakes"));
    } else {
      page.table(mistakeTable());
    }
    return page.paragraph(papers.plan().origin()).build();
  }
}
