package agro.course.topic.rotation;

import agro.course.CodesAnswer;
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
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/** Which groups, and which products, may be used in the next window. */
final class GroupsForWindow implements ExerciseType {

  private static final int PAST = 3;

  private record Shelf(List<WindowUse> products, List<WindowUse> past) {
    WindowUse last() {
      return past.get(past.size() - 1);
    }

    Set<String> numbers(Predicate<String> which) {
      return products.stream()
          .flatMap(product -> product.codes().stream())
          .filter(which)
          .map(WindowUse::number)
          .collect(Collectors.toCollection(TreeSet::new));
    }

    boolean usedIn(int window, String number) {
      return past.get(window).codes().stream()
          .anyMatch(code -> WindowUse.number(code).equals(number));
    }

    Set<String> names(Predicate<WindowUse> which) {
      return products.stream()
          .filter(which)
          .map(WindowUse::product)
          .collect(Collectors.toCollection(TreeSet::new));
    }
  }

  @Override
  public String code() {
    return "rotation-groups";
  }

  @Override
  public CourseTopic topic() {
    return CourseTopic.ROTATION;
  }

  @Override
  public Set<Difficulty> difficulties() {
    return EnumSet.of(Difficulty.BASIC, Difficulty.ROUTINE);
  }

  @Override
  public Set<Mistake> mistakes() {
    return Set.of(
        RotationMistake.WINDOW_BEFORE_LAST,
        RotationMistake.SUB_GROUP_AS_ANOTHER,
        RotationMistake.NAMES_FOR_GROUPS,
        RotationMistake.ONCE_A_SEASON,
        RotationMistake.MIXTURE_BY_ONE_GROUP);
  }

  @Override
  public ExerciseBody set(ExerciseDraw draw, Difficulty difficulty, CourseContext context) {
    boolean mixture = difficulty == Difficulty.ROUTINE;
    var shelf = shelf(draw, mixture);
    var allowed = shelf.numbers(code -> allowed(shelf, code));
    var field = draw.oneOf(context.setting().fields());
    var pest = draw.oneOf(context.setting().pests());
    var words = context.words().in(GroupsForWindow.class, "rotation");
    var body =
        ExerciseBody.titled(words.say("groups.title"))
            .story(words.say("groups.story", "field", field, "pest", pest))
            .exhibit(products(shelf, words))
            .exhibit(BrokenRotation.table(shelf.past(), words))
            .givens(
                Givens.none()
                    .withText("products", shelf.products().toString())
                    .withText("past", shelf.past().toString()))
            .part(words.say("groups.question.groups"), earlier -> groups(shelf, allowed, words))
            .cautions(Caution.all())
            .source(RotationRule.SUCCESSIVE_WINDOWS.source());
    if (mixture) {
      body.part(
          words.say("groups.question.products"),
          earlier -> products(shelf, earlier.codes(0), words));
    }
    return body.build();
  }

  /** Two sub-groups of a number, two products of one group, three others, perhaps a mixture. */
  private static Shelf shelf(ExerciseDraw draw, boolean mixture) {
    var pair = draw.oneOf(WindowUse.SUB_GROUPS);
    var others = draw.some(WindowUse.SINGLE, 4);
    var groups = new ArrayList<String>();
    groups.addAll(pair);
    groups.addAll(List.of(others.get(0), others.get(0), others.get(1), others.get(2)));
    boolean subGroup = draw.whole(0, 1) == 1;
    var last = subGroup ? pair.get(draw.whole(0, 1)) : others.get(0);
    if (mixture) {
      groups.add(last + "+" + others.get(3));
    }
    var products = new ArrayList<WindowUse>();
    for (var group : draw.some(groups, groups.size())) {
      products.add(new WindowUse(0, String.valueOf((char) ('A' + products.size())), group));
    }
    var past = new ArrayList<WindowUse>();
    past.add(used(0, others.get(1), products));
    past.add(used(1, others.get(2), products));
    past.add(used(2, last, products));
    return new Shelf(List.copyOf(products), List.copyOf(past));
  }

  private static WindowUse used(int window, String group, List<WindowUse> products) {
    return products.stream()
        .filter(product -> product.groups().equals(group))
        .map(product -> new WindowUse(window, product.product(), group))
        .findFirst()
        .orElseThrow();
  }

  private static Block products(Shelf shelf, CourseWords words) {
    var rows = new ArrayList<List<Cell>>();
    for (var product : shelf.products()) {
      rows.add(
          List.of(
              Cell.text(words.say("product", "name", product.product())),
              Cell.text(String.join(" + ", product.codes()))));
    }
    return new Block.TableBlock(
        ResultTable.of(
            words.say("groups.table"),
            List.of(
                ResultTable.Column.of(words.say("column.product")),
                ResultTable.Column.of(words.say("column.group"))),
            rows));
  }

  private static boolean allowed(Shelf shelf, String code) {
    var uses = new ArrayList<>(shelf.past());
    uses.add(new WindowUse(PAST, "next", code));
    return !WindowUse.breaches(uses).contains("next");
  }

  private static SolvedPart groups(Shelf shelf, Set<String> found, CourseWords words) {
    var slips = new ArrayList<TypicalSlip>();
    slips.add(
        slip(
            RotationMistake.WINDOW_BEFORE_LAST,
            shelf.numbers(code -> !shelf.usedIn(PAST - 2, WindowUse.number(code)))));
    slips.add(
        slip(
            RotationMistake.ONCE_A_SEASON,
            shelf.numbers(
                code ->
                    shelf.past().stream()
                        .noneMatch(use -> shelf.usedIn(use.window(), WindowUse.number(code))))));
    boolean subGroup = !shelf.last().groups().equals(WindowUse.number(shelf.last().groups()));
    var everyNumber = shelf.numbers(code -> true);
    // The other sub-group, or the other product of the same group, lets the number pass.
    slips.add(
        slip(
            subGroup && hasOtherSubGroup(shelf)
                ? RotationMistake.SUB_GROUP_AS_ANOTHER
                : RotationMistake.NAMES_FOR_GROUPS,
            everyNumber));
    var all = new CodesAnswer(everyNumber).print(words);
    var last = String.join(", ", numbers(shelf.last()));
    var working =
        Working.of(words.say("groups.title"))
            .step(words.say("groups.step.last") + ": " + shelf.last().groups(), "", "", last)
            .step(
                words.say("groups.step.allowed"),
                words.say("groups.formula.allowed"),
                all + " − " + last,
                new CodesAnswer(found).print(words));
    return new SolvedPart(new CodesAnswer(found), working, slips);
  }

  private static boolean hasOtherSubGroup(Shelf shelf) {
    var number = WindowUse.number(shelf.last().groups());
    return shelf.products().stream()
        .flatMap(product -> product.codes().stream())
        .anyMatch(
            code -> WindowUse.number(code).equals(number) && !code.equals(shelf.last().groups()));
  }

  private static Set<String> numbers(WindowUse use) {
    return use.codes().stream()
        .map(WindowUse::number)
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private static TypicalSlip slip(RotationMistake mistake, Set<String> codes) {
    return new TypicalSlip(mistake, new CodesAnswer(codes));
  }

  private static SolvedPart products(Shelf shelf, Set<String> allowed, CourseWords words) {
    var found = shelf.names(product -> allowed.containsAll(numbers(product)));
    var slips =
        List.of(
            slip(
                RotationMistake.MIXTURE_BY_ONE_GROUP,
                shelf.names(product -> numbers(product).stream().anyMatch(allowed::contains))),
            slip(
                RotationMistake.NAMES_FOR_GROUPS,
                shelf.names(product -> !product.product().equals(shelf.last().product()))));
    var working = Working.of(words.say("groups.title"));
    for (var product : shelf.products()) {
      var own = numbers(product);
      working =
          working.step(
              words.say("product", "name", product.product())
                  + " ("
                  + String.join(" + ", own)
                  + ")",
              "",
              "",
              words.say(allowed.containsAll(own) ? "groups.allowed" : "groups.refused"));
    }
    working =
        working.step(
            words.say("groups.step.products"), "", "", new CodesAnswer(found).print(words));
    return new SolvedPart(new CodesAnswer(found), working, slips);
  }
}
