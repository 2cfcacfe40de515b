package agro.course;

import agro.working.Block;
import agro.working.Presentable;
import agro.working.Presentation;
import agro.working.Working;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * One exercise with its numbers, and how to solve it.
 *
 * @param key what it can be set again from
 * @param topic what it is about
 * @param body story and questions
 * @param context place, units and language for which it was set
 */
public record Exercise(ExerciseKey key, CourseTopic topic, ExerciseBody body, CourseContext context)
    implements Presentable {

  private static final int DRAWS = 400;

  /** Refuses what is missing. */
  public Exercise {
    Objects.requireNonNull(key, "key");
    Objects.requireNonNull(topic, "topic");
    Objects.requireNonNull(body, "body");
    Objects.requireNonNull(context, "context");
  }

  /**
   * Sets an exercise. Numbers whose right and typical wrong answers could be mistaken for one
   * another are drawn again.
   *
   * @param type kind of exercise
   * @param key with the code of that type
   * @param context for whom
   * @return the exercise
   * @throws IllegalArgumentException if the type has no exercise of that difficulty
   * @throws IllegalStateException if no draw gives answers that can be told apart
   */
  public static Exercise set(ExerciseType type, ExerciseKey key, CourseContext context) {
    if (!type.code().equals(key.type()) || !type.difficulties().contains(key.difficulty())) {
      throw new IllegalArgumentException(
          type.code() + " sets " + type.difficulties() + ", but asked for was " + key);
    }
    for (int attempt = 0; attempt < DRAWS; attempt++) {
      long seed = ExerciseDraw.seedFor(key.seed(), type.code() + ' ' + attempt);
      var body = type.set(ExerciseDraw.of(seed), key.difficulty(), context);
      var exercise = new Exercise(key, type.topic(), body, context);
      if (exercise.answersDiffer()) {
        return exercise;
      }
    }
    throw new IllegalStateException(
        "after " + DRAWS + " draws no answers of " + key + " could be told apart");
  }

  private boolean answersDiffer() {
    for (var part : solution()) {
      var answers = new ArrayList<ExpectedAnswer>();
      answers.add(part.answer());
      part.slips().forEach(slip -> answers.add(slip.answer()));
      for (int i = 0; i < answers.size(); i++) {
        for (int j = 0; j < i; j++) {
          if (answers.get(i).meets(answers.get(j))
              || answers
                  .get(i)
                  .print(context.words())
                  .equals(answers.get(j).print(context.words()))) {
            return false;
          }
        }
      }
    }
    return true;
  }

  /**
   * The solution: each part from the right answers to the parts before.
   *
   * @return one for each part
   */
  public List<SolvedPart> solution() {
    var solved = new ArrayList<SolvedPart>();
    var earlier = EarlierAnswers.none();
    for (var part : body.parts()) {
      var next = part.solution().solve(earlier);
      solved.add(next);
      earlier = earlier.and(next.answer().value());
    }
    return List.copyOf(solved);
  }

  /**
   * The title.
   *
   * @return a few words
   */
  public String title() {
    return body.title();
  }

  /**
   * What is given.
   *
   * @return the givens by name
   */
  public Givens givens() {
    return body.givens();
  }

  /**
   * The questions.
   *
   * @return at least one
   */
  public List<ExercisePart> parts() {
    return body.parts();
  }

  /**
   * The letter of a part.
   *
   * @param part part, from zero
   * @return a, b, c, ...
   */
  public static String letter(int part) {
    return String.valueOf((char) ('a' + part));
  }

  /** The exercise as a student gets it, without answers. */
  @Override
  public Presentation presentation() {
    var page = Presentation.titled(title());
    story(page);
    for (int i = 0; i < parts().size(); i++) {
      page.paragraph(question(i));
    }
    if (!body.cautions().isEmpty()) {
      page.paragraph(String.join(" ", context.words().cautions(body.cautions())));
    }
    return page.paragraph(key.print(context.words())).build();
  }

  /**
   * The exercise with its worked solution.
   *
   * @return story, questions, steps and answers
   */
  public Presentation worked() {
    var page = Presentation.titled(title());
    story(page);
    var solved = solution();
    for (int i = 0; i < solved.size(); i++) {
      // The question stands above its steps, in place of a title that all parts would share.
      var steps = solved.get(i).working();
      page.working(new Working(question(i), steps.steps(), steps.cautions()));
      page.paragraph(
          context
              .words()
              .say(
                  "solution.answer",
                  "part",
                  letter(i),
                  "answer",
                  solved.get(i).answer().print(context.words())));
    }
    if (!body.sources().isEmpty()) {
      page.paragraph(
          context.words().say("solution.sources")
              + " "
              + String.join(
                  "; ", body.sources().stream().map(context.words()::source).distinct().toList()));
    }
    if (!body.cautions().isEmpty()) {
      page.paragraph(String.join(" ", context.words().cautions(body.cautions())));
    }
    return page.paragraph(key.print(context.words())).build();
  }

  private void story(Presentation.Builder page) {
    body.story().forEach(page::paragraph);
    for (Block exhibit : body.exhibits()) {
      page.block(exhibit);
    }
  }

  private String question(int part) {
    return letter(part) + ") " + parts().get(part).question();
  }
}
