package agro.course.topic.rotation;

import agro.course.ChoiceAnswer;
import agro.course.ChoiceAnswer.AnswerChoice;
import agro.course.CourseContext;
import agro.course.CourseTopic;
import agro.course.CourseWords;
import agro.course.Difficulty;
import agro.course.ExerciseBody;
import agro.course.ExerciseDraw;
import agro.course.ExerciseType;
import agro.course.Givens;
import agro.course.Mistake;
import agro.course.SolvedPart;
import agro.course.TypicalSlip;
import agro.programme.rotation.RotationRule;
import agro.working.Block;
import agro.working.Caution;
import agro.working.Cell;
import agro.working.ResultTable;
import agro.working.Working;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** Which spray of a season breaks the rotation. */
final class BrokenRotation implements ExerciseType {

  private static final int LENGTH = 5;
  private static final String NONE = "none";

  /** The season, and where its traps lie; a window of -1 says that there is none. */
  private record Season(List<WindowUse> uses, int breach, int rested, int twice) {
    String first(int window) {
      return uses.stream()
          .filter(use -> use.window() == window)
          .map(WindowUse::product)
          .findFirst()
          .orElseThrow();
    }

    String second(int window) {
      return uses.stream()
          .filter(use -> use.window() == window)
          .map(WindowUse::product)
          .reduce((a, b) -> b)
          .orElseThrow();
    }

    boolean isClear() {
      return breach != rested
          && breach != twice
          && rested != twice
          && breach != twice + 1
          && WindowUse.breaches(uses).equals(breach < 0 ? Set.of() : Set.of(first(breach)));
    }
  }

  @Override
  public String code() {
    return "rotation-breach";
  }

  @Override
  public CourseTopic topic() {
    return CourseTopic.ROTATION;
  }

  @Override
  public Set<Difficulty> difficulties() {
    return EnumSet.of(Difficulty.BASIC);
  }

  @Override
  public Set<Mistake> mistakes() {
    return Set.of(
        RotationMistake.NAMES_FOR_GROUPS,
        RotationMistake.RESTED_GROUP,
        RotationMistake.SAME_WINDOW);
  }

  @Override
  public ExerciseBody set(ExerciseDraw draw, Difficulty difficulty, CourseContext context) {
    var season = season(draw);
    while (!season.isClear()) {
      season = season(draw);
    }
    var drawn = season;
    var broken = WindowUse.breaches(season.uses());
    var field = draw.oneOf(context.setting().fields());
    var pest = draw.oneOf(context.setting().pests());
    var words = context.words().in(BrokenRotation.class, "rotation");
    var names = season.uses().stream().map(WindowUse::product).collect(Collectors.joining(", "));
    return ExerciseBody.titled(words.say("breach.title"))
        .story(words.say("breach.story", "field", field, "pest", pest))
        .exhibit(table(season.uses(), words))
        .givens(Givens.none().withText("uses", season.uses().toString()))
        .part(words.say("breach.question", "names", names), earlier -> solve(drawn, broken, words))
        .cautions(Caution.all())
        .source(RotationRule.SUCCESSIVE_WINDOWS.source())
        .build();
  }

  private static Season season(ExerciseDraw draw) {
    var pair = draw.oneOf(WindowUse.SUB_GROUPS);
    var groups = new ArrayList<>(draw.some(WindowUse.SINGLE, LENGTH));
    int breach = draw.whole(0, 4) == 0 ? -1 : draw.whole(1, LENGTH - 1);
    int rested = draw.whole(2, LENGTH - 1);
    int twice = draw.whole(0, LENGTH - 1);
    groups.set(rested, groups.get(rested - 2));
    if (breach > 0) {
      boolean subGroups = draw.whole(0, 1) == 1;
      if (subGroups) {
        groups.set(breach - 1, pair.get(0));
      }
      groups.set(breach, subGroups ? pair.get(1) : groups.get(breach - 1));
    }
    var uses = new ArrayList<WindowUse>();
    for (int window = 0; window < LENGTH; window++) {
      uses.add(new WindowUse(window, name(uses), groups.get(window)));
      if (window == twice) {
        uses.add(new WindowUse(window, name(uses), groups.get(window)));
      }
    }
    boolean rests = groups.get(rested).equals(groups.get(rested - 2));
    return new Season(uses, breach, rests ? rested : breach, twice);
  }

  private static String name(List<WindowUse> before) {
    return String.valueOf((char) ('A' + before.size()));
  }

  static Block table(List<WindowUse> uses, CourseWords words) {
    var rows = new ArrayList<List<Cell>>();
    for (var use : uses) {
      rows.add(
          List.of(
              Cell.text(String.valueOf(use.window() + 1)),
              Cell.text(words.say("product", "name", use.product())),
              Cell.text(String.join(" + ", use.codes()))));
    }
    return new Block.TableBlock(
        ResultTable.of(
            words.say("breach.table"),
            List.of(
                ResultTable.Column.of(words.say("column.window")),
                ResultTable.Column.of(words.say("column.product")),
                ResultTable.Column.of(words.say("column.group"))),
            rows));
  }

  private static SolvedPart solve(Season season, Set<String> broken, CourseWords words) {
    var choices = new ArrayList<AnswerChoice>();
    for (var use : season.uses()) {
      choices.add(new AnswerChoice(use.product(), words.say("product", "name", use.product())));
    }
    choices.add(new AnswerChoice(NONE, words.say("answer.none")));
    var answer = new ChoiceAnswer(choices, broken.stream().findFirst().orElse(NONE));
    var slips = new ArrayList<TypicalSlip>();
    if (!broken.isEmpty()) {
      slips.add(new TypicalSlip(RotationMistake.NAMES_FOR_GROUPS, answer.withCode(NONE)));
    }
    slips.add(
        new TypicalSlip(
            RotationMistake.RESTED_GROUP, answer.withCode(season.first(season.rested()))));
    slips.add(
        new TypicalSlip(
            RotationMistake.SAME_WINDOW, answer.withCode(season.second(season.twice()))));
    var working = Working.of(words.say("breach.title"));
    for (int window = 1; window < LENGTH; window++) {
      var before = numbers(season, window - 1);
      var now = numbers(season, window);
      working =
          working.step(
              words.say("breach.step", "before", window, "window", window + 1)
                  + ": "
                  + before
                  + " → "
                  + now,
              "",
              "",
              words.say(before.equals(now) ? "breach.same" : "breach.another"));
    }
    working = working.step(words.say("breach.answer"), "", "", answer.print(words));
    return new SolvedPart(answer, working, slips);
  }

  private static String numbers(Season season, int window) {
    return season.uses().stream()
        .filter(use -> use.window() == window)
        .flatMap(use -> use.codes().stream())
        .map(WindowUse::number)
        .distinct()
        .collect(Collectors.joining(", "));
  }
}
