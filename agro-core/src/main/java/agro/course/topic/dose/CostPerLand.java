package agro.course.topic.dose;

import agro.course.AnswerTolerance;
import agro.course.ChoiceAnswer;
import agro.course.CourseContext;
import agro.course.CourseTopic;
import agro.course.CourseWords;
import agro.course.DeclaredType;
import agro.course.Difficulty;
import agro.course.EarlierAnswers;
import agro.course.ExerciseBody;
import agro.course.ExerciseDraw;
import agro.course.ExerciseType;
import agro.course.Givens;
import agro.course.NumberAnswer;
import agro.course.SolvedPart;
import agro.course.UnitSizes;
import agro.units.Area;
import agro.units.AreaUnit;
import agro.units.Unit;
import agro.units.Volume;
import agro.units.VolumePerArea;
import agro.working.Caution;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * What a treatment costs per land, and which of two products is the cheaper one.
 *
 * @param first product A
 * @param second product B
 * @param area size of the field
 * @param field name of the field
 * @param context for whom
 */
record CostPerLand(Pack first, Pack second, Area area, String field, CourseContext context) {

  private static final double HUNDREDTH = 0.01;
  private static final List<Double> LITRES = List.of(0.5, 1.0, 2.0, 5.0, 10.0);
  private static final List<Double> GALLONS = List.of(0.25, 0.5, 1.0, 2.5, 5.0);

  /**
   * A product with its rate and its pack.
   *
   * @param rate product per land
   * @param size volume of a pack
   * @param price price of a pack
   */
  record Pack(VolumePerArea rate, Volume size, double price) {
    /** Price of the product that a piece of land needs. */
    double cost(Area land) {
      return price * rate.times(land).ratioTo(size);
    }
  }

  static ExerciseType type() {
    return new DeclaredType(
        "dose-price",
        CourseTopic.DOSE,
        EnumSet.of(Difficulty.BASIC, Difficulty.ROUTINE),
        Set.of(
            DosingMistake.PACK_PRICE_AS_COST,
            DosingMistake.RATIO_INVERTED,
            DosingMistake.CHEAPER_PACK_CHOSEN,
            DosingMistake.COSTS_ADDED,
            DosingMistake.RATE_TAKEN_AS_TOTAL),
        (draw, difficulty, context) ->
            difficulty == Difficulty.BASIC
                ? draw(draw, context).basic()
                : draw(draw, context).routine());
  }

  private static CostPerLand draw(ExerciseDraw draw, CourseContext context) {
    var units = new DoseUnits(context);
    var first = pack(draw, units);
    var second = pack(draw, units);
    while (isNear(first, second)) {
      second = pack(draw, units);
    }
    var area = draw.sensible(new Area(3_000), new Area(50_000), units.land(), 2);
    return new CostPerLand(first, second, area, draw.oneOf(context.setting().fields()), context);
  }

  private static Pack pack(ExerciseDraw draw, DoseUnits units) {
    var rate = draw.sensible(new VolumePerArea(0.2), new VolumePerArea(3), units.rate(), 2);
    var sizes =
        (units.american() ? GALLONS : LITRES)
            .stream()
                .map(number -> Volume.of(number, units.water()))
                .filter(size -> isUsual(size.litres() / rate.litresPerHectare()))
                .toList();
    var size = draw.oneOf(sizes);
    // What a hectare costs decides: a product of a low rate is dear by the litre.
    double hectare = draw.step(15, 80, 1);
    double price = StrictMath.rint(2 * hectare * size.litres() / rate.litresPerHectare()) / 2;
    return new Pack(rate, size, price);
  }

  /** Whether the costs differ by less than anybody would change the product for. */
  private static boolean isNear(Pack first, Pack second) {
    var hectare = Area.of(1, AreaUnit.HECTARE);
    return Math.abs(second.cost(hectare) / first.cost(hectare) - 1) < 0.1;
  }

  /** Whether a pack lasts for a usual piece of land. */
  private static boolean isUsual(double hectares) {
    return hectares >= 1.5 && hectares <= 12;
  }

  private DoseUnits units() {
    return new DoseUnits(context);
  }

  private Area oneLand() {
    return Area.of(1, units().land());
  }

  private Unit<Volume> packUnit() {
    return units().water();
  }

  private String currency() {
    return context.setting().currency();
  }

  private String tell(String name, Pack pack) {
    var words = units().words();
    return words.say(
        "price.pack",
        "name",
        name,
        "rate",
        words.exact(pack.rate(), units().rate()),
        "size",
        words.exact(pack.size(), packUnit()),
        "price",
        words.money(pack.price(), currency()));
  }

  private String factor() {
    var units = units();
    return units.given(UnitSizes.in(units.words()).and(units.water(), units.measure()));
  }

  private Givens givens(Givens before, String name, Pack pack) {
    return before
        .withQuantity(name + ".rate", pack.rate())
        .withQuantity(name + ".size", pack.size())
        .withNumber(name + ".price", pack.price());
  }

  private ExerciseBody basic() {
    var words = units().words();
    return ExerciseBody.titled(words.say("price.title"))
        .story(tell("A", first))
        .story(factor())
        .givens(givens(Givens.none(), "first", first))
        .part(question(words, "price.question"), earlier -> cost(first))
        .cautions(Caution.all())
        .build();
  }

  private String question(CourseWords words, String key) {
    return words.say(key, "currency", currency(), "unit", units().land().symbol());
  }

  private NumberAnswer money(double number) {
    return NumberAnswer.rounded(number, 2, currency());
  }

  private SolvedPart cost(Pack pack) {
    var units = units();
    var words = units.words();
    double right = pack.cost(oneLand());
    double onLand = pack.rate().in(units.rate());
    double inPack = pack.size().in(units.measure());
    return units
        .part("price")
        .step(
            "price.cost",
            words.money(pack.price(), currency())
                + " × "
                + words.exact(pack.rate(), units.rate())
                + " ÷ "
                + words.show(pack.size(), units.measure()),
            words.money(right, currency()))
        .slip(DosingMistake.PACK_PRICE_AS_COST, money(pack.price()))
        .slip(DosingMistake.RATIO_INVERTED, money(pack.price() * inPack / onLand))
        .answer(money(right));
  }

  private ExerciseBody routine() {
    var words = units().words();
    return ExerciseBody.titled(words.say("price.title"))
        .story(tell("A", first))
        .story(tell("B", second))
        .story(
            words.say("field.measures", "field", field, "area", words.exact(area, units().land())))
        .story(factor())
        .givens(
            givens(givens(Givens.none(), "first", first), "second", second)
                .withQuantity("area", area))
        .part(question(words, "price.a"), earlier -> cost(first))
        .part(question(words, "price.b"), earlier -> cost(second))
        .part(words.say("price.c"), this::cheaper)
        .part(words.say("price.d", "currency", currency()), this::saving)
        .cautions(Caution.all())
        .build();
  }

  private SolvedPart cheaper(EarlierAnswers earlier) {
    var words = units().words();
    var choices =
        List.of(
            new ChoiceAnswer.AnswerChoice("a", words.say("price.choice.a")),
            new ChoiceAnswer.AnswerChoice("b", words.say("price.choice.b")));
    boolean isFirst = earlier.number(0) < earlier.number(1);
    var right = new ChoiceAnswer(choices, isFirst ? "a" : "b");
    return units()
        .part("price")
        .step(
            "price.c",
            words.money(earlier.number(0), currency())
                + (isFirst ? " < " : " > ")
                + words.money(earlier.number(1), currency()),
            right.print(words))
        .slip(DosingMistake.CHEAPER_PACK_CHOSEN, right.withCode(isFirst ? "b" : "a"))
        .answer(right);
  }

  /** Costs were rounded to hundredths, and the area multiplies what was rounded away. */
  private NumberAnswer saved(double difference, double size) {
    return new NumberAnswer(
        difference * size,
        2,
        new AnswerTolerance(HUNDREDTH * (1 + size), AnswerTolerance.Reason.DECIMALS),
        List.of(currency()));
  }

  private SolvedPart saving(EarlierAnswers earlier) {
    var units = units();
    var words = units.words();
    double difference = Math.abs(earlier.number(0) - earlier.number(1));
    double size = area.in(units.land());
    return units
        .part("price")
        .step(
            "price.d",
            words.money(difference, currency()) + " × " + words.exact(area, units.land()),
            words.money(difference * size, currency()))
        .slip(DosingMistake.RATE_TAKEN_AS_TOTAL, money(difference))
        .slip(DosingMistake.COSTS_ADDED, money((earlier.number(0) + earlier.number(1)) * size))
        .answer(saved(difference, size));
  }
}
