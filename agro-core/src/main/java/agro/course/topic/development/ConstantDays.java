package agro.course.topic.development;

import agro.course.CourseContext;
import agro.course.CourseTopic;
import agro.course.Difficulty;
import agro.course.ExerciseBody;
import agro.course.ExerciseDraw;
import agro.course.ExerciseType;
import agro.course.Givens;
import agro.course.Mistake;
import agro.course.SolvedPart;
import agro.development.PublishedRequirements;
import agro.development.Span;
import agro.development.ThermalRequirement;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** Days at a constant temperature, from a published threshold and requirement. */
final class ConstantDays implements ExerciseType {

  private record Choice(String species, Span span, String host) {}

  private static final double LONGEST_DAYS = 75;

  private static final List<Choice> CHOICES =
      List.of(
          new Choice("Acrolepiopsis assectella", Span.EGG_TO_ADULT, ""),
          new Choice("Plutella xylostella", Span.EGG_TO_ADULT, "cauliflower"),
          new Choice("Plutella xylostella", Span.EGG_TO_ADULT, "cabbage"),
          new Choice("Helicoverpa armigera", Span.EGG_TO_ADULT, ""),
          new Choice("Bemisia tabaci", Span.EGG_TO_ADULT, "soybean"),
          new Choice("Tetranychus urticae", Span.GENERATION, ""),
          new Choice("Aphis gossypii", Span.BIRTH_TO_ADULT, "cotton"));

  /** Read once, when an exercise first asks for them. */
  private static final class Published {
    private static final PublishedRequirements ALL = PublishedRequirements.load();

    private static ThermalRequirement of(Choice choice) {
      return ALL.find(choice.species, choice.span).stream()
          .filter(one -> one.host().equals(choice.host))
          .findFirst()
          .orElseThrow(() -> new IllegalStateException("no published requirement " + choice));
    }
  }

  @Override
  public String code() {
    return "development-days";
  }

  @Override
  public CourseTopic topic() {
    return CourseTopic.DEVELOPMENT;
  }

  @Override
  public Set<Difficulty> difficulties() {
    return EnumSet.of(Difficulty.BASIC);
  }

  @Override
  public Set<Mistake> mistakes() {
    return Set.of(
        DevelopmentMistake.THRESHOLD_FORGOTTEN,
        DevelopmentMistake.THRESHOLD_ADDED,
        DevelopmentMistake.THRESHOLD_OFF_REQUIREMENT);
  }

  @Override
  public ExerciseBody set(ExerciseDraw draw, Difficulty difficulty, CourseContext context) {
    var scale = DevelopmentScale.of(context, "constant.title");
    var choice = draw.oneOf(CHOICES);
    var published = Published.of(choice);
    var words = scale.words();
    double lower = scale.number(published.thresholds().lower());
    double requirement = scale.number(published.requirement());
    double at = warmEnough(draw, scale, requirement, lower);
    return ExerciseBody.titled(scale.title())
        .story(
            words.say(
                "constant.story",
                "species",
                choice.species,
                "span",
                words.say("span." + choice.span.name()),
                "lower",
                scale.degrees(lower),
                "requirement",
                scale.exactSum(requirement)))
        .givens(
            Givens.none()
                .withText("species", choice.species + " " + choice.host)
                .withNumber("lower", lower)
                .withNumber("requirement", requirement)
                .withNumber("at", at))
        .part(
            words.say("constant.question", "at", scale.degrees(at)),
            earlier -> solve(scale, published, at))
        .source(published.source())
        .build();
  }

  /** A temperature at which a rearing ends before the season does. */
  private static double warmEnough(
      ExerciseDraw draw, DevelopmentScale scale, double requirement, double lower) {
    while (true) {
      double at = scale.fahrenheit() ? draw.step(62, 84, 0.2) : draw.step(16, 28, 0.1);
      if (requirement < LONGEST_DAYS * (at - lower)) {
        return at;
      }
    }
  }

  private static SolvedPart solve(DevelopmentScale scale, ThermalRequirement published, double at) {
    double lower = scale.number(published.thresholds().lower());
    double requirement = scale.number(published.requirement());
    double right = published.daysAt(scale.celsius(at));
    return new SolvedPart(
        scale.daysAnswer(right),
        scale.step(
            "constant",
            scale.term(requirement) + " / (" + scale.term(at) + " − " + scale.term(lower) + ")",
            scale.daysText(right)),
        List.of(
            scale.daysSlip(DevelopmentMistake.THRESHOLD_FORGOTTEN, requirement / at),
            scale.daysSlip(DevelopmentMistake.THRESHOLD_ADDED, requirement / (at + lower)),
            scale.daysSlip(
                DevelopmentMistake.THRESHOLD_OFF_REQUIREMENT, (requirement - lower) / at)));
  }
}
