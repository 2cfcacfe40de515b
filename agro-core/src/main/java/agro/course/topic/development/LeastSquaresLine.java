package agro.course.topic.development;

import agro.course.AnswerTolerance;
import agro.course.CourseContext;
import agro.course.CourseTopic;
import agro.course.Difficulty;
import agro.course.EarlierAnswers;
import agro.course.ExerciseBody;
import agro.course.ExerciseDraw;
import agro.course.ExerciseType;
import agro.course.Givens;
import agro.course.Mistake;
import agro.course.NumberAnswer;
import agro.course.SolvedPart;
import agro.course.ThermalTimeAnswer;
import agro.course.TypicalSlip;
import agro.development.rate.LineMethod;
import agro.stats.LinearFit;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** A least-squares line of rates through four temperatures, and how sure its threshold is. */
final class LeastSquaresLine implements ExerciseType {

  private static final MathContext THREE_DIGITS = new MathContext(3);

  /** Degrees below which an error of a threshold with two decimals shows nothing. */
  private static final double LEAST_ERROR = 0.3;

  @Override
  public String code() {
    return "development-least-squares";
  }

  @Override
  public CourseTopic topic() {
    return CourseTopic.DEVELOPMENT;
  }

  @Override
  public Set<Difficulty> difficulties() {
    return EnumSet.of(Difficulty.DEMANDING);
  }

  @Override
  public Set<Mistake> mistakes() {
    return Set.of(
        DevelopmentMistake.DAYS_ON_A_LINE,
        DevelopmentMistake.FORCED_THROUGH_ORIGIN,
        DevelopmentMistake.SIGN_FORGOTTEN,
        DevelopmentMistake.DAYS_AVERAGED,
        DevelopmentMistake.SLOPE_FOR_REQUIREMENT,
        DevelopmentMistake.THRESHOLD_FORGOTTEN,
        DevelopmentMistake.ROOT_FORGOTTEN,
        DevelopmentMistake.SLOPE_ERROR_LEFT_OUT);
  }

  @Override
  public ExerciseBody set(ExerciseDraw draw, Difficulty difficulty, CourseContext context) {
    var scale = DevelopmentScale.of(context, "squares.title");
    var table = draw(draw, scale);
    var fit = table.rates();
    double deviation = new BigDecimal(fit.residualDeviation()).round(THREE_DIGITS).doubleValue();
    var words = scale.words();
    return ExerciseBody.titled(scale.title())
        .story(
            words.say(
                "squares.story",
                "pest",
                draw.oneOf(context.setting().pests()),
                "deviation",
                words.exact(deviation)))
        .exhibit(table.exhibit(scale))
        .givens(table.in(Givens.none().withNumber("deviation", deviation)))
        .part(
            words.say("squares.question.slope", "unit", scale.degree()),
            earlier -> slope(scale, table))
        .part(
            words.say("squares.question.lower", "unit", scale.degree()),
            earlier -> lower(scale, table, earlier))
        .part(
            words.say("question.requirement", "unit", context.units().thermalTime().symbol()),
            earlier -> requirement(scale, table, earlier))
        .part(
            words.say("squares.question.error", "unit", scale.degree()),
            earlier -> error(scale, fit, deviation, earlier))
        .source(LineMethod.LEAST_SQUARES.source())
        .build();
  }

  /** Rates that scatter so much that the error of the threshold shows in two decimals. */
  private static RearingTable draw(ExerciseDraw draw, DevelopmentScale scale) {
    while (true) {
      var table = scattered(draw, scale);
      var fit = table.rates();
      double slopeError = fit.residualDeviation() / Math.sqrt(fit.squaresX()) / fit.slope();
      if (slopeError * fit.meanY() / fit.slope() > LEAST_ERROR) {
        return table;
      }
    }
  }

  private static RearingTable scattered(ExerciseDraw draw, DevelopmentScale scale) {
    boolean fahrenheit = scale.fahrenheit();
    double lower = fahrenheit ? draw.step(45, 53, 0.5) : draw.step(7, 11.5, 0.5);
    double requirement = draw.step(130, 420, 1) * (fahrenheit ? 1.8 : 1);
    double coolest = fahrenheit ? draw.step(59, 62, 1) : draw.step(14, 16, 1);
    double step = fahrenheit ? draw.step(6, 7, 1) : draw.step(3, 4, 1);
    var at = new ArrayList<Double>();
    var days = new ArrayList<Double>();
    for (int i = 0; i < 4; i++) {
      double one = coolest + i * step;
      at.add(one);
      days.add(
          DevelopmentScale.tenth(requirement / (one - lower) * (1 + draw.step(-0.05, 0.05, 0.01))));
    }
    return new RearingTable(at, days);
  }

  private static SolvedPart slope(DevelopmentScale scale, RearingTable table) {
    double right = table.rates().slope();
    double products = 0;
    double squares = 0;
    for (int i = 0; i < table.at().size(); i++) {
      products += table.at().get(i) / table.days().get(i);
      squares += table.at().get(i) * table.at().get(i);
    }
    return new SolvedPart(
        RearingTable.slope(right),
        table.slopeSteps(scale, scale.working()),
        List.of(
            new TypicalSlip(
                DevelopmentMistake.DAYS_ON_A_LINE, RearingTable.slope(table.durations().slope())),
            new TypicalSlip(
                DevelopmentMistake.FORCED_THROUGH_ORIGIN, RearingTable.slope(products / squares))));
  }

  private static double positive(double slope) {
    if (!(slope > 0)) {
      throw new IllegalArgumentException("the rate does not rise with a slope of " + slope);
    }
    return slope;
  }

  /** The line with a slope of a student's own through the means. */
  static LinearFit withSlope(LinearFit fit, double slope) {
    return new LinearFit(
        fit.points(),
        fit.meanY() - slope * fit.meanX(),
        positive(slope),
        fit.meanX(),
        fit.meanY(),
        fit.squaresX(),
        fit.squaresY(),
        fit.residualSquares(),
        fit.totalWeight());
  }

  static SolvedPart lower(DevelopmentScale scale, RearingTable table, double slope) {
    var fit = withSlope(table.rates(), slope);
    double right = fit.zero().orElseThrow();
    var words = scale.words();
    return new SolvedPart(
        scale.temperatureAnswer(right),
        scale.step(
            "lower.means",
            words.number(fit.meanX())
                + " − "
                + words.number(fit.meanY())
                + " / "
                + words.number(slope),
            scale.degreesText(right)),
        List.of(
            scale.temperatureSlip(
                DevelopmentMistake.SIGN_FORGOTTEN, fit.meanX() + fit.meanY() / slope),
            scale.temperatureSlip(
                DevelopmentMistake.DAYS_AVERAGED, fit.meanX() - 1 / table.meanDays() / slope)));
  }

  private static SolvedPart lower(
      DevelopmentScale scale, RearingTable table, EarlierAnswers earlier) {
    return lower(scale, table, earlier.number(0));
  }

  private static SolvedPart requirement(
      DevelopmentScale scale, RearingTable table, EarlierAnswers earlier) {
    double slope = positive(earlier.number(0));
    double right = 1 / slope;
    double products = 0;
    for (int i = 0; i < table.at().size(); i++) {
      products += table.at().get(i) * table.days().get(i) / table.at().size();
    }
    return new SolvedPart(
        scale.sumAnswer(right),
        scale.step("requirement.line", "1 / " + scale.words().number(slope), scale.sumText(right)),
        List.of(
            new TypicalSlip(
                DevelopmentMistake.SLOPE_FOR_REQUIREMENT,
                new ThermalTimeAnswer(
                    scale.sum(slope), scale.units().thermalTime(), AnswerTolerance.usual(slope))),
            scale.sumSlip(DevelopmentMistake.THRESHOLD_FORGOTTEN, products)));
  }

  /** Standard error of the threshold, with the residual deviation as it is printed. */
  private static SolvedPart error(
      DevelopmentScale scale, LinearFit fit, double deviation, EarlierAnswers earlier) {
    double slope = positive(earlier.number(0));
    double level = deviation * deviation / (fit.points() * fit.meanY() * fit.meanY());
    double relative = deviation / Math.sqrt(fit.squaresX()) / slope;
    double inside = level + relative * relative;
    double distance = fit.meanY() / slope;
    double right = distance * Math.sqrt(inside);
    var words = scale.words();
    var working =
        scale.step(
            scale.working(),
            "error.slope",
            words.number(deviation) + " / √" + words.number(fit.squaresX()),
            words.number(relative * slope));
    working =
        scale.step(
            working,
            "error.lower",
            words.number(distance)
                + " × √("
                + words.number(level)
                + " + "
                + words.number(relative * relative)
                + ")",
            words.number(right, 2) + " " + scale.degree());
    return new SolvedPart(
        difference(scale, right),
        working,
        List.of(
            new TypicalSlip(
                DevelopmentMistake.ROOT_FORGOTTEN, difference(scale, distance * inside)),
            new TypicalSlip(
                DevelopmentMistake.SLOPE_ERROR_LEFT_OUT,
                difference(scale, distance * Math.sqrt(level)))));
  }

  private static NumberAnswer difference(DevelopmentScale scale, double degrees) {
    return NumberAnswer.rounded(degrees, 2, scale.degree(), "K");
  }
}
