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
import agro.dose.ApplicationLimit;
import agro.dose.IntervalLimit;
import agro.dose.LabelLimits;
import agro.dose.PreHarvestLimit;
import agro.programme.interval.LimitRule;
import agro.programme.interval.Permission;
import agro.working.Block;
import agro.working.Caution;
import agro.working.Cell;
import agro.working.ResultTable;
import agro.working.Working;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.IntFunction;

/** Whether a record in which a limit is missing, or denied, allows a spray. */
final class MissingLimit implements ExerciseType {

  private static final String PRODUCT = "A";

  /** A limit that is denied by the label. */
  private static final int NONE = 0;

  /** A limit of which nothing is recorded. */
  private static final int MISSING = -1;

  private static final Set<LimitRule> ASKED =
      EnumSet.of(LimitRule.NUMBER, LimitRule.INTERVAL, LimitRule.PRE_HARVEST);

  private record Entries(int most, int interval, int preHarvest) {
    boolean holds(int entry) {
      return most == entry || interval == entry || preHarvest == entry;
    }

    LabelLimits limits() {
      return LabelLimits.of(PRODUCT)
          .with(
              entry(
                  most,
                  ApplicationLimit::maximum,
                  ApplicationLimit.none(),
                  ApplicationLimit.notRecorded()))
          .with(
              entry(
                  interval,
                  IntervalLimit::ofDays,
                  IntervalLimit.none(),
                  IntervalLimit.notRecorded()))
          .with(
              entry(
                  preHarvest,
                  PreHarvestLimit::ofDays,
                  PreHarvestLimit.none(),
                  PreHarvestLimit.notRecorded()));
    }

    private static <L> L entry(int number, IntFunction<L> stated, L none, L missing) {
      return number > 0 ? stated.apply(number) : number == NONE ? none : missing;
    }
  }

  private record Case(Entries record, LocalDate sprayed, LocalDate asked, LocalDate harvest) {
    Permission permission() {
      var programme =
          LabelledField.programme(List.of(LabelledField.record(PRODUCT, record.limits())), harvest)
              .with(LabelledField.spray("1", sprayed, PRODUCT));
      return LabelledField.asked(programme, PRODUCT, asked, ASKED);
    }
  }

  @Override
  public String code() {
    return "rotation-limit";
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
        RotationMistake.MISSING_AS_NONE,
        RotationMistake.MISSING_AS_BAN,
        RotationMistake.BREACH_OVERLOOKED,
        RotationMistake.BREACH_LEFT_OPEN,
        RotationMistake.NONE_AS_MISSING,
        RotationMistake.NONE_AS_BAN);
  }

  @Override
  public ExerciseBody set(ExerciseDraw draw, Difficulty difficulty, CourseContext context) {
    int odd = draw.whole(0, 2);
    int entry = draw.whole(0, 2) == 0 ? NONE : MISSING;
    var record =
        new Entries(
            odd == 0 ? entry : draw.whole(1, 3),
            odd == 1 ? entry : draw.whole(7, 14),
            odd == 2 ? entry : draw.whole(3, 21));
    var sprayed = LabelledField.day(draw.whole(20, 100));
    var asked = sprayed.plusDays(draw.whole(6, 18));
    var drawn = new Case(record, sprayed, asked, asked.plusDays(draw.whole(2, 25)));
    var field = draw.oneOf(context.setting().fields());
    var words = context.words().in(MissingLimit.class, "rotation");
    return ExerciseBody.titled(words.say("limit.title"))
        .story(
            words.say(
                "limit.story",
                "field",
                field,
                "sprayed",
                words.day(sprayed),
                "harvest",
                words.day(drawn.harvest())))
        .exhibit(table(record, words))
        .givens(
            Givens.none()
                .withNumber("most", record.most())
                .withNumber("interval", record.interval())
                .withNumber("harvest", record.preHarvest())
                .withDay("sprayed", sprayed)
                .withDay("asked", asked)
                .withDay("day", drawn.harvest()))
        .part(words.say("limit.question", "day", words.day(asked)), earlier -> solve(drawn, words))
        .cautions(Caution.all())
        .build();
  }

  private static Block table(Entries record, CourseWords words) {
    return new Block.TableBlock(
        ResultTable.of(
            words.say("limit.table"),
            List.of(
                ResultTable.Column.of(words.say("limit.column.limit")),
                ResultTable.Column.of(words.say("limit.column.entry"))),
            List.of(
                row("limit.most", record.most(), "limit.sprays", words),
                row("limit.interval", record.interval(), "days", words),
                row("limit.harvest", record.preHarvest(), "days", words))));
  }

  private static List<Cell> row(String name, int entry, String unit, CourseWords words) {
    return List.of(Cell.text(words.say(name)), Cell.text(entry(entry, unit, words)));
  }

  private static String entry(int entry, String unit, CourseWords words) {
    if (entry <= 0) {
      return words.say(entry == NONE ? "limit.none" : "limit.missing");
    }
    return words.say(entry == 1 ? unit.replaceAll("s$", "") : unit, "number", entry);
  }

  private static SolvedPart solve(Case drawn, CourseWords words) {
    var choices =
        List.of(
            new AnswerChoice("yes", words.say("limit.choice.yes")),
            new AnswerChoice("no", words.say("limit.choice.no")),
            new AnswerChoice("look", words.say("limit.choice.look")));
    var permission = drawn.permission();
    boolean missing = drawn.record().holds(MISSING);
    var slips = new ArrayList<TypicalSlip>();
    String right;
    if (permission == Permission.REFUSED) {
      right = "no";
      var yes = new ChoiceAnswer(choices, "yes");
      slips.add(new TypicalSlip(RotationMistake.BREACH_OVERLOOKED, yes));
      slips.add(
          new TypicalSlip(
              missing ? RotationMistake.BREACH_LEFT_OPEN : RotationMistake.NONE_AS_MISSING,
              yes.withCode("look")));
    } else {
      right = missing ? "look" : "yes";
      var no = new ChoiceAnswer(choices, "no");
      slips.add(
          new TypicalSlip(
              missing ? RotationMistake.MISSING_AS_BAN : RotationMistake.NONE_AS_BAN, no));
      slips.add(
          new TypicalSlip(
              missing ? RotationMistake.MISSING_AS_NONE : RotationMistake.NONE_AS_MISSING,
              no.withCode(missing ? "yes" : "look")));
    }
    var answer = new ChoiceAnswer(choices, right);
    return new SolvedPart(answer, working(drawn, answer, words), slips);
  }

  private static Working working(Case drawn, ChoiceAnswer answer, CourseWords words) {
    var record = drawn.record();
    long since = drawn.asked().toEpochDay() - drawn.sprayed().toEpochDay();
    long before = drawn.harvest().toEpochDay() - drawn.asked().toEpochDay();
    return Working.of(words.say("limit.title"))
        .step(
            words.say("limit.most") + ": " + entry(record.most(), "limit.sprays", words),
            "",
            "",
            words.say("limit.second"))
        .step(
            words.say("limit.interval") + ": " + entry(record.interval(), "days", words),
            "",
            words.day(drawn.asked()) + " − " + words.day(drawn.sprayed()),
            words.say("days", "number", since))
        .step(
            words.say("limit.harvest") + ": " + entry(record.preHarvest(), "days", words),
            "",
            words.day(drawn.harvest()) + " − " + words.day(drawn.asked()),
            words.say("days", "number", before))
        .step(words.say("limit.answer"), "", "", answer.print(words));
  }
}
