package agro.course.paper;

import agro.course.CourseWords;
import agro.course.ExamAid;
import agro.working.Presentable;
import agro.working.Presentation;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * The paper of one student.
 *
 * @param student the student
 * @param questions the questions in order
 * @param plan what the paper was set from
 */
public record StudentPaper(CourseStudent student, List<PaperQuestion> questions, PaperPlan plan)
    implements Presentable {

  /** Copies the list. */
  public StudentPaper {
    questions = List.copyOf(questions);
  }

  /**
   * The marks of the whole paper.
   *
   * @return the sum over all questions
   */
  public double marks() {
    return questions.stream().mapToDouble(PaperQuestion::marks).sum();
  }

  /**
   * The labels of all parts in order, as files of answers head their columns.
   *
   * @return for example {@code "1a"}, {@code "2a"}, {@code "2b"}
   */
  public List<String> labels() {
    return questions.stream().flatMap(question -> question.labels().stream()).toList();
  }

  /**
   * What has to lie on the table in a room without computers: tables and papers that the exercises
   * name.
   *
   * @return each once, in a fixed order; none for homework
   */
  public Set<ExamAid> aids() {
    var aids = EnumSet.noneOf(ExamAid.class);
    if (plan.kind() == PaperKind.EXAM) {
      questions.forEach(question -> aids.addAll(question.exercise().body().aids()));
    }
    return aids;
  }

  /** The questions as the student gets them, with what there is to choose from. */
  @Override
  public Presentation presentation() {
    var words = PaperWords.of(plan.language());
    var page = Presentation.titled(plan.heading() + ", " + student.heading());
    page.fact(words.say("fact.marks"), words.exact(marks()));
    questions.forEach(question -> add(question, page, words));
    return page.paragraph(plan.origin()).build();
  }

  private static void add(PaperQuestion question, Presentation.Builder page, CourseWords words) {
    page.paragraph(
        question.number()
            + ". "
            + question.exercise().title()
            + " ("
            + words.say("fact.marks")
            + ": "
            + words.exact(question.marks())
            + ")");
    // Options stand above the line with seed and generator, which ends every exercise.
    var blocks = question.exercise().presentation().blocks();
    int last = blocks.size() - 1;
    blocks.subList(0, last).forEach(page::block);
    for (int part = 0; part < question.solution().size(); part++) {
      var label = question.label(part);
      question
          .options(part)
          .ifPresent(
              choice ->
                  choice
                      .options()
                      .forEach(one -> page.fact(label + " " + one.letter(), one.text())));
    }
    page.block(blocks.get(last));
  }
}
