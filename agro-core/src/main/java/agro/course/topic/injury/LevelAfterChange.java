package agro.course.topic.injury;

import agro.course.CourseContext;
import agro.course.CourseTopic;
import agro.course.CourseWords;
import agro.course.DeclaredType;
import agro.course.Difficulty;
import agro.course.ExerciseBody;
import agro.course.ExerciseDraw;
import agro.course.ExerciseType;
import agro.course.Givens;
import agro.course.NumberAnswer;
import agro.course.PercentAnswer;
import agro.course.SolutionDraft;
import agro.course.SolvedPart;
import agro.source.SamplingBibliography;
import agro.working.Caution;
import java.util.Set;

/** How far the injury level moves when cost and price change. */
final class LevelAfterChange {

  private static final double PER_CENT = 100;

  private LevelAfterChange() {}

  /** Level of last year and changes of cost and price in per cent. */
  private record Change(double level, double cost, double price) {
    double costFactor() {
      return 1 + cost / PER_CENT;
    }

    double priceFactor() {
      return 1 + price / PER_CENT;
    }
  }

  static ExerciseType type() {
    return new DeclaredType(
        "injury-level-change",
        CourseTopic.INJURY_LEVEL,
        Set.of(Difficulty.BASIC, Difficulty.ROUTINE),
        Set.of(
            InjuryMistake.PRICE_MULTIPLIED,
            InjuryMistake.COST_DIVIDED,
            InjuryMistake.CHANGE_ALONE,
            InjuryMistake.CHANGES_ADDED,
            InjuryMistake.PRICE_CHANGE_LEFT_OUT,
            InjuryMistake.COST_CHANGE_LEFT_OUT,
            InjuryMistake.NEW_LEVEL_AS_BASE,
            InjuryMistake.SHARE_FOR_CHANGE),
        LevelAfterChange::set);
  }

  private static ExerciseBody set(ExerciseDraw draw, Difficulty difficulty, CourseContext context) {
    double sign = draw.whole(0, 1) == 0 ? -1 : 1;
    double level = draw.step(1.2, 8, 0.1);
    double cost = draw.step(10, 40, 5);
    double price = sign * draw.step(10, 30, 5);
    boolean basic = difficulty == Difficulty.BASIC;
    boolean priceOnly = draw.whole(0, 1) == 0;
    var change =
        basic
            ? new Change(level, priceOnly ? 0 : sign * cost, priceOnly ? price : 0)
            : new Change(level, cost, price);
    var pest = draw.oneOf(context.setting().pests());
    var crop = draw.oneOf(context.setting().crops());
    var words = context.words().in(InjuryExercises.class, "injury");
    var body =
        ExerciseBody.titled(words.say("change.title"))
            .story(
                words.say("change.story", "pest", pest, "crop", crop, "level", words.exact(level)))
            .story(changes(change, words))
            .givens(
                Givens.none()
                    .withNumber("level", level)
                    .withNumber("cost", change.cost())
                    .withNumber("price", change.price()))
            .cautions(Caution.all())
            .source(SamplingBibliography.PEDIGO_1986)
            .part(words.say("change.question"), earlier -> level(change, words));
    if (!basic) {
      body.part(words.say("change.question.share"), e -> share(change, e.number(0), words));
    }
    return body.build();
  }

  private static String changes(Change change, CourseWords words) {
    var text = new StringBuilder();
    if (change.cost() != 0) {
      text.append(
          words.say(
              change.cost() > 0 ? "change.cost.up" : "change.cost.down",
              "percent",
              words.exact(Math.abs(change.cost()))));
    }
    if (change.price() != 0) {
      text.append(text.length() > 0 ? " " : "")
          .append(
              words.say(
                  change.price() > 0 ? "change.price.up" : "change.price.down",
                  "percent",
                  words.exact(Math.abs(change.price()))));
    }
    return text.toString();
  }

  private static SolvedPart level(Change change, CourseWords words) {
    var unit = words.say("per.plant");
    double old = change.level();
    double up = change.costFactor();
    double down = change.priceFactor();
    var draft =
        SolutionDraft.titled(words, words.say("change.title"))
            .step(
                "change",
                words.exact(old) + " × " + words.exact(up) + " / " + words.exact(down),
                words.number(old * up / down) + " " + unit);
    if (change.price() != 0) {
      draft.slip(InjuryMistake.PRICE_MULTIPLIED, NumberAnswer.computed(old * up * down, 3, unit));
    }
    if (change.cost() != 0) {
      draft.slip(InjuryMistake.COST_DIVIDED, NumberAnswer.computed(old / up / down, 3, unit));
    }
    if (change.price() != 0 && change.cost() != 0) {
      double added = (change.cost() - change.price()) / PER_CENT;
      draft
          .slip(InjuryMistake.CHANGES_ADDED, NumberAnswer.computed(old * (1 + added), 3, unit))
          .slip(InjuryMistake.PRICE_CHANGE_LEFT_OUT, NumberAnswer.computed(old * up, 3, unit))
          .slip(InjuryMistake.COST_CHANGE_LEFT_OUT, NumberAnswer.computed(old / down, 3, unit));
    }
    if (change.price() == 0 || change.cost() == 0) {
      double percent = Math.abs(change.price() + change.cost());
      draft.slip(
          InjuryMistake.CHANGE_ALONE, NumberAnswer.computed(old * percent / PER_CENT, 3, unit));
    }
    return draft.answer(NumberAnswer.computed(old * up / down, 3, unit));
  }

  private static SolvedPart share(Change change, double level, CourseWords words) {
    double percent = PER_CENT * (level - change.level()) / change.level();
    return SolutionDraft.titled(words, words.say("change.share.step"))
        .step(
            "change.share",
            "100 × ("
                + words.number(level)
                + " − "
                + words.exact(change.level())
                + ") / "
                + words.exact(change.level()),
            words.number(percent) + " %")
        .slip(
            InjuryMistake.NEW_LEVEL_AS_BASE,
            PercentAnswer.rounded(PER_CENT * (level - change.level()) / level, 1))
        .slip(
            InjuryMistake.SHARE_FOR_CHANGE,
            PercentAnswer.rounded(PER_CENT * level / change.level(), 1))
        .answer(PercentAnswer.rounded(percent, 1));
  }
}
