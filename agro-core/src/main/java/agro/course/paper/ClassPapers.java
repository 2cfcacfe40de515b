package agro.course.paper;

import agro.course.Exercise;
import agro.report.Progress;
import agro.report.SourceLocation;
import agro.working.Cell;
import agro.working.Presentable;
import agro.working.Presentation;
import agro.working.ResultTable;
import agro.working.ResultTable.Column;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;

/**
 * The papers of a class, each student with numbers of his or her own.
 *
 * <p>What is guaranteed: the same plan gives the same papers on every machine. A student's numbers
 * come from the seed, the student's id, the sitting and the number of the question. No two students
 * get an exercise with the same type and the same givens, nor does one student get it twice, nor
 * anybody in a resit what anybody had in a sitting before. Clashes are settled in the order of the
 * class list: whoever comes later draws again. So a student who is added at the end of the list
 * changes nobody's paper of the first sitting. In a resit it could change a paper only where the
 * newcomer's earlier sitting happens to hold the very numbers, which must not come again.
 *
 * @param plan what the papers were set from
 * @param papers one for each student, in the order of the class list
 */
public record ClassPapers(PaperPlan plan, List<StudentPaper> papers) implements Presentable {

  /** Copies the list. */
  public ClassPapers {
    papers = List.copyOf(papers);
  }

  /**
   * Sets the papers of a class.
   *
   * @param plan blueprint, class, seed and all else
   * @return the papers
   * @throws agro.report.InputProblem if the blueprint asks for what does not exist, or for more
   *     different numbers than a type has
   */
  public static ClassPapers of(PaperPlan plan) {
    return of(plan, Progress.ofThread());
  }

  /**
   * Sets the papers of a class.
   *
   * @param plan blueprint, class, seed and all else
   * @param progress hears after each student
   * @return the papers
   * @throws agro.report.InputProblem if the blueprint asks for what does not exist, or for more
   *     different numbers than a type has
   */
  public static ClassPapers of(PaperPlan plan, Progress progress) {
    return new ClassPapers(plan, new PaperSetter(plan).set(progress));
  }

  /**
   * Homework of the first sitting in the invented vale, in English.
   *
   * @param blueprint what is asked
   * @param classList who is asked
   * @param seed seed of all numbers
   * @return the papers
   * @throws agro.report.InputProblem as for {@link #of(PaperPlan)}
   */
  public static ClassPapers of(Blueprint blueprint, ClassList classList, long seed) {
    return of(PaperPlan.of(blueprint, classList, seed));
  }

  /**
   * The papers of some students, for example of those who sit again. The others keep their numbers.
   *
   * @param ids ids of the students
   * @return their papers in the order of the class list
   * @throws agro.report.InputProblem if somebody is not in the class
   */
  public ClassPapers only(List<String> ids) {
    var wanted = new LinkedHashSet<CourseStudent>();
    for (var id : ids) {
      wanted.add(plan.classList().require(id, SourceLocation.NONE));
    }
    return new ClassPapers(
        plan, papers.stream().filter(paper -> wanted.contains(paper.student())).toList());
  }

  /**
   * The paper of a student.
   *
   * @param id id of the student
   * @return the paper; empty if the student has none here
   */
  public Optional<StudentPaper> paper(String id) {
    return plan.classList()
        .student(id)
        .flatMap(
            student ->
                papers.stream().filter(paper -> paper.student().equals(student)).findFirst());
  }

  /**
   * The labels of all parts of all papers, in order.
   *
   * @return for example {@code "1a"}, {@code "2a"}, {@code "2b"}
   */
  public List<String> labels() {
    var labels = new ArrayList<String>();
    for (int number = 1; number <= plan.blueprint().questions(); number++) {
      int most = 0;
      for (var paper : papers) {
        most = Math.max(most, paper.questions().get(number - 1).solution().size());
      }
      for (int part = 0; part < most; part++) {
        labels.add(number + Exercise.letter(part));
      }
    }
    return List.copyOf(labels);
  }

  /**
   * Which type each question is of, for a look before printing.
   *
   * @return one row for each question of the first paper
   */
  public ResultTable table() {
    var rows = new ArrayList<List<Cell>>();
    var words = PaperWords.of(plan.language());
    papers.stream()
        .limit(1)
        .flatMap(paper -> paper.questions().stream())
        .forEach(
            question ->
                rows.add(
                    List.of(
                        Cell.number(question.number(), 0),
                        Cell.text(question.exercise().title()),
                        Cell.text(question.exercise().key().type()),
                        Cell.text(
                            words.say(
                                "difficulty." + question.exercise().key().difficulty().code())),
                        Cell.number(question.solution().size(), 0),
                        Cell.text(words.exact(question.marks())))));
    return ResultTable.of(
        words.say("table.questions"),
        List.of(
            Column.of(words.say("column.question")),
            Column.of(words.say("column.title")),
            Column.of(words.say("column.type")),
            Column.of(words.say("column.difficulty")),
            Column.of(words.say("column.parts")),
            Column.of(words.say("column.marks"))),
        rows);
  }

  @Override
  public Presentation presentation() {
    var words = PaperWords.of(plan.language());
    return Presentation.titled(plan.heading())
        .fact(words.say("fact.students"), String.valueOf(papers.size()))
        .fact(words.say("fact.questions"), String.valueOf(plan.blueprint().questions()))
        .fact(words.say("fact.marks"), words.exact(plan.blueprint().marks()))
        .fact(words.say("fact.place"), plan.context().setting().place())
        .table(table())
        .paragraph(plan.origin())
        .build();
  }
}
