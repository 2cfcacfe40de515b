package agro.course.topic.sampling;

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
import agro.course.PercentAnswer;
import agro.course.SolutionDraft;
import agro.course.SolvedPart;
import agro.sampling.presence.PresenceRelation;
import agro.source.SamplingBibliography;
import agro.units.Area;
import agro.units.Unit;
import java.util.Set;

/** Mean number on a plant from the share of infested plants. */
final class MeanFromPresence {

  private static final double PER_CENT = 100;

  private MeanFromPresence() {}

  /** Plants looked at, those with animals, clumping, plants on a unit of land. */
  private record Seen(int plants, int infested, double k, double stand) {
    double share() {
      return (double) infested / plants;
    }
  }

  static ExerciseType type() {
    return new DeclaredType(
        "sampling-presence",
        CourseTopic.SAMPLING,
        Set.of(Difficulty.BASIC, Difficulty.ROUTINE, Difficulty.DEMANDING),
        Set.of(
            SamplingMistake.SHARE_AS_MEAN,
            SamplingMistake.LOGARITHM_OF_INFESTED_SHARE,
            SamplingMistake.COMMON_LOGARITHM,
            SamplingMistake.HEALTHY_PLANTS_COUNTED,
            SamplingMistake.INFESTED_OVER_HEALTHY,
            SamplingMistake.CLUMPING_IGNORED,
            SamplingMistake.EXPONENT_NOT_INVERTED,
            SamplingMistake.DIVIDED_BY_MEAN,
            SamplingMistake.INFESTED_PLANTS_FOR_ANIMALS),
        MeanFromPresence::set);
  }

  private static ExerciseBody set(ExerciseDraw draw, Difficulty difficulty, CourseContext context) {
    int plants = 10 * draw.whole(4, 12);
    int infested = draw.whole(plants / 5, 4 * plants / 5);
    var land = context.units().land();
    double most = Area.of(1, land).squareMetres();
    var seen =
        new Seen(
            plants, infested, draw.sensible(0.5, 2.5, 2), draw.sensible(2 * most, 8 * most, 2));
    var pest = draw.oneOf(context.setting().pests());
    var field = draw.oneOf(context.setting().fields());
    var words = context.words().in(SamplingExercises.class, "sampling");
    var body =
        ExerciseBody.titled(words.say("presence.title"))
            .story(
                words.say(
                    "presence.story",
                    "pest",
                    pest,
                    "field",
                    field,
                    "plants",
                    plants,
                    "infested",
                    infested));
    var givens = Givens.none().withNumber("plants", plants).withNumber("infested", infested);
    return switch (difficulty) {
      case BASIC ->
          body.givens(givens)
              .source(SamplingBibliography.PRESENCE_AT_RANDOM)
              .part(words.say("presence.question.random"), e -> atRandom(seen.share(), words))
              .build();
      case ROUTINE ->
          body.story(words.say("presence.story.k", "k", words.exact(seen.k())))
              .givens(givens.withNumber("k", seen.k()))
              .source(SamplingBibliography.PRESENCE_AT_RANDOM)
              .source(SamplingBibliography.KUNO_1986)
              .part(words.say("presence.question.share"), e -> share(seen, words))
              .part(
                  words.say("presence.question.random"),
                  e -> atRandom(e.number(0) / PER_CENT, words))
              .part(
                  words.say("presence.question.clumped", "k", words.exact(seen.k())),
                  e -> clumped(e.number(0) / PER_CENT, seen.k(), words))
              .build();
      case DEMANDING -> demanding(body, givens, seen, land, words);
    };
  }

  private static ExerciseBody demanding(
      ExerciseBody.Builder body, Givens givens, Seen seen, Unit<Area> land, CourseWords words) {
    return body.story(words.say("presence.story.k", "k", words.exact(seen.k())))
        .story(
            words.say(
                "presence.story.stand", "stand", words.exact(seen.stand()), "land", land.symbol()))
        .givens(givens.withNumber("k", seen.k()).withNumber("stand", seen.stand()))
        .source(SamplingBibliography.KUNO_1986)
        .part(words.say("presence.question.share"), e -> share(seen, words))
        .part(
            words.say("presence.question.clumped", "k", words.exact(seen.k())),
            e -> clumped(e.number(0) / PER_CENT, seen.k(), words))
        .part(
            PestsPerArea.ask("presence.question.land", land, words),
            e -> onLand(seen, e, land, words))
        .build();
  }

  private static SolvedPart share(Seen seen, CourseWords words) {
    int healthy = seen.plants() - seen.infested();
    double percent = PER_CENT * seen.share();
    return SolutionDraft.titled(words, words.say("presence.share.step"))
        .step(
            "presence.share",
            "100 × " + seen.infested() + " / " + seen.plants(),
            words.number(percent) + " %")
        .slip(
            SamplingMistake.HEALTHY_PLANTS_COUNTED,
            PercentAnswer.rounded(PER_CENT * healthy / seen.plants(), 1))
        .slip(
            SamplingMistake.INFESTED_OVER_HEALTHY,
            PercentAnswer.rounded(PER_CENT * seen.infested() / healthy, 1))
        .answer(PercentAnswer.rounded(percent, 1));
  }

  private static NumberAnswer mean(double value) {
    return NumberAnswer.computed(value, 3);
  }

  private static SolvedPart atRandom(double share, CourseWords words) {
    double mean = new PresenceRelation.AtRandom().mean(share);
    return SolutionDraft.titled(words, words.say("presence.random.step"))
        .step("presence.healthy", "1 − " + words.number(share), words.number(1 - share))
        .step("presence.random", "−ln(" + words.number(1 - share) + ")", words.number(mean))
        .slip(SamplingMistake.SHARE_AS_MEAN, mean(share))
        .slip(SamplingMistake.LOGARITHM_OF_INFESTED_SHARE, mean(-Math.log(share)))
        .slip(SamplingMistake.COMMON_LOGARITHM, mean(-Math.log10(1 - share)))
        .answer(mean(mean));
  }

  private static SolvedPart clumped(double share, double k, CourseWords words) {
    double mean = new PresenceRelation.ZeroTerm(k).mean(share);
    double healthy = 1 - share;
    return SolutionDraft.titled(words, words.say("presence.clumped.step"))
        .step("presence.healthy", "1 − " + words.number(share), words.number(healthy))
        .step(
            "presence.clumped",
            words.exact(k) + " × (" + words.number(healthy) + "^(−1 / " + words.exact(k) + ") − 1)",
            words.number(mean))
        .slip(SamplingMistake.CLUMPING_IGNORED, mean(-Math.log(healthy)))
        .slip(SamplingMistake.LOGARITHM_OF_INFESTED_SHARE, mean(k * (Math.pow(share, -1 / k) - 1)))
        .slip(SamplingMistake.EXPONENT_NOT_INVERTED, mean(k * (Math.pow(healthy, -k) - 1)))
        .answer(mean(mean));
  }

  private static SolvedPart onLand(
      Seen seen, EarlierAnswers earlier, Unit<Area> land, CourseWords words) {
    double mean = earlier.number(1);
    double share = earlier.number(0) / PER_CENT;
    double pests = PestsPerArea.onLand(mean, seen.stand(), land);
    var unit = words.say("per.land", "land", land.symbol());
    return SolutionDraft.titled(words, words.say("area.pests.step"))
        .step(
            "area.pests",
            words.exact(seen.stand()) + " × " + words.number(mean),
            words.number(pests) + " " + unit)
        .slip(
            SamplingMistake.INFESTED_PLANTS_FOR_ANIMALS,
            NumberAnswer.computed(seen.stand() * share, PestsPerArea.decimals(land), unit))
        .slip(
            SamplingMistake.DIVIDED_BY_MEAN,
            NumberAnswer.computed(seen.stand() / mean, PestsPerArea.decimals(land), unit))
        .answer(NumberAnswer.computed(pests, PestsPerArea.decimals(land), unit));
  }
}
