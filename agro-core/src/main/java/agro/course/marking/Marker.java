package agro.course.marking;

import agro.course.CourseWords;
import agro.course.Exercise;
import agro.report.InputProblem;
import agro.working.Cell;
import agro.working.ResultTable;
import agro.working.ResultTable.Column;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;

/**
 * Marks typed answers. A text is read as students write: with units in words or signs, with points
 * or commas, about or exactly. Every answer is compared with the right solution and with the ones
 * that follow from the student's own earlier answers, so a slip costs marks once.
 *
 * @param rules how strictly marks are given
 */
public record Marker(MarkingRules rules) {

  /** Refuses missing rules. */
  public Marker {
    Objects.requireNonNull(rules, "rules");
  }

  /**
   * A marker with the usual rules.
   *
   * @return the marker
   */
  public static Marker withDefaults() {
    return new Marker(MarkingRules.USUAL);
  }

  /**
   * A marker with other rules.
   *
   * @param rules the rules
   * @return the marker
   */
  public static Marker with(MarkingRules rules) {
    return new Marker(rules);
  }

  /**
   * Marks the answers of one student, one mark for each part.
   *
   * @param exercise the exercise with the student's numbers
   * @param typed what was typed for each part in order; blank or missing at the end for not
   *     answered
   * @return the marks
   * @throws InputProblem if there are more answers than parts
   */
  public ExerciseMark mark(Exercise exercise, String... typed) {
    return mark(exercise, List.of(typed));
  }

  /**
   * Marks the answers of one student, one mark for each part.
   *
   * @param exercise the exercise with the student's numbers
   * @param typed what was typed for each part in order; blank or missing at the end for not
   *     answered
   * @return the marks
   * @throws InputProblem if there are more answers than parts
   */
  public ExerciseMark mark(Exercise exercise, List<String> typed) {
    return mark(exercise, typed, exercise.parts().size());
  }

  /**
   * Marks the answers of one student.
   *
   * @param exercise the exercise with the student's numbers
   * @param typed what was typed for each part in order; blank or missing at the end for not
   *     answered
   * @param of marks that the exercise is worth, shared among its parts by their weights
   * @return the marks
   * @throws InputProblem if there are more answers than parts, or the marks are not above zero
   */
  public ExerciseMark mark(Exercise exercise, List<String> typed, double of) {
    requireFitting(exercise, typed, of);
    var words = words(exercise);
    var shares = MarkShares.share(exercise.parts(), of);
    var marks = new ArrayList<PartMark>();
    var answers = new ArrayList<String>();
    var ways = List.of(EarlierWay.start());
    for (int i = 0; i < exercise.parts().size(); i++) {
      var solved = EarlierWay.solve(ways, exercise.parts().get(i));
      var text = i < typed.size() && typed.get(i) != null ? typed.get(i) : "";
      var read = new AnswerReader(exercise, words).read(text, solved.get(0).part());
      var judgement = new AnswerJudge(rules, solved).judge(read);
      marks.add(partMark(i, text, read, judgement, shares.get(i), words));
      answers.add(solved.get(0).part().answer().print(words));
      ways = EarlierWay.next(solved, judgement.own(), judgement.isCleanRight(), i);
    }
    return new ExerciseMark(exercise, marks, rules.answersShown() ? answers : List.of());
  }

  /**
   * Several answers to the first part side by side, for a look at what is read as what.
   *
   * @param exercise the exercise
   * @param typed answers to its first part, as if each were the only one
   * @return one row for each: as typed, as read, verdict, marks and feedback
   */
  public ResultTable sideBySide(Exercise exercise, String... typed) {
    var words = words(exercise);
    var columns =
        Stream.of("typed", "reading", "verdict", "marks", "feedback")
            .map(key -> Column.of(words.say("mark.column." + key)))
            .toList();
    var rows =
        Arrays.stream(typed)
            .map(text -> mark(exercise, text).parts().get(0))
            .map(
                part ->
                    Stream.of(
                            part.typed(),
                            part.reading(),
                            words.say("verdict." + part.verdict()),
                            words.say(
                                "mark.of",
                                "marks",
                                words.exact(part.marks()),
                                "of",
                                words.exact(part.of())),
                            part.feedback())
                        .map(Cell::text)
                        .toList())
            .toList();
    return ResultTable.of(words.say("mark.table"), columns, rows);
  }

  static CourseWords words(Exercise exercise) {
    return exercise.context().words().in(Marker.class, "marking");
  }

  private static void requireFitting(Exercise exercise, List<String> typed, double of) {
    int parts = exercise.parts().size();
    if (typed.size() > parts) {
      throw InputProblem.of(typed.size() + " answers to the exercise " + exercise.key().type())
          .expected("at most " + parts + ", one for each part")
          .because("an answer belongs to one part")
          .mend("leave out the answers that belong to other exercises");
    }
    if (!(of > 0 && Double.isFinite(of))) {
      throw InputProblem.of(of + " marks for the exercise " + exercise.key().type())
          .expected("a number above zero")
          .because("the marks are shared among its parts")
          .mend("say what the exercise is worth");
    }
  }

  PartMark partMark(
      int part, String text, ReadAnswer read, Judgement judgement, double of, CourseWords words) {
    return new PartMark(
        Exercise.letter(part),
        text,
        print(read, judgement),
        MarkShares.award(of, share(judgement)),
        of,
        judgement.verdict(),
        !judgement.from().way().isClean(),
        judgement.mistake(),
        new MarkFeedback(words).of(judgement, read));
  }

  private static String print(ReadAnswer read, Judgement judgement) {
    if (judgement.read().isPresent()) {
      return judgement.read().get().print();
    }
    if (read instanceof ReadAnswer.Values values) {
      return values.otherwise().map(other -> print(other, judgement)).orElse("");
    }
    return read instanceof ReadAnswer.WrongKind other ? other.print() : "";
  }

  private double share(Judgement judgement) {
    double share =
        switch (judgement.verdict()) {
          case RIGHT -> 1;
          case ROUNDED_TOO_FAR -> rules.roundedTooFar();
          case MISTAKE -> rules.recognisedMistake();
          case UNIT_MISSING -> rules.missingUnit() * shareOfNumber(judgement);
          default -> 0;
        };
    return judgement.from().way().isClean() ? share : share * rules.carriedForward();
  }

  private double shareOfNumber(Judgement judgement) {
    if (judgement.mistake().isEmpty()) {
      boolean right = MarkFeedback.isRight(judgement);
      return right || isRightWithoutSign(judgement) ? 1 : 0;
    }
    return judgement.mistake().get() == GeneralMistake.ROUNDED_TOO_FAR
        ? rules.roundedTooFar()
        : rules.recognisedMistake();
  }

  private boolean isRightWithoutSign(Judgement judgement) {
    return !rules.signMatters()
        && judgement
            .read()
            .filter(
                value -> AnswerNumbers.accepts(judgement.from().part().answer(), -value.number()))
            .isPresent();
  }
}
