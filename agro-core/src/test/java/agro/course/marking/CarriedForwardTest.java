package agro.course.marking;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import agro.course.CourseUnits;
import agro.course.EarlierAnswers;
import agro.course.Exercise;
import agro.course.ExercisePart;
import agro.course.Givens;
import agro.course.MeasuredAnswer;
import agro.course.NumberAnswer;
import agro.course.SolvedPart;
import agro.course.TypicalSlip;
import agro.report.InputProblem;
import agro.units.Volume;
import agro.units.VolumeUnit;
import agro.working.TextLanguage;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Slips carried forward, and marks shared among parts. */
class CarriedForwardTest {

  private static final double TOTAL = 1234.5;

  /** a) 1234.5 mL; b) the tank of 15 L holds so many of them, whole; c) 2.5 times a, in mL. */
  private static final Exercise CHAIN =
      MarkedExercises.exercise(
          TextLanguage.ENGLISH,
          CourseUnits.METRIC,
          Givens.none(),
          earlier -> solved(TOTAL),
          earlier -> tanks(earlier),
          earlier -> solved(2.5 * millilitres(earlier, 0) / earlier.number(1)));

  private static SolvedPart solved(double number) {
    return new SolvedPart(
        amount(number),
        MarkedExercises.working(),
        List.of(new TypicalSlip(MarkedExercises.Doubled.TWICE, amount(2 * number))));
  }

  private static SolvedPart tanks(EarlierAnswers earlier) {
    long whole = (long) Math.floor(15_000 / millilitres(earlier, 0));
    if (whole < 1) {
      throw new IllegalArgumentException("no tank holds it");
    }
    return new SolvedPart(
        NumberAnswer.whole(whole, "tanks"),
        MarkedExercises.working(),
        List.of(new TypicalSlip(MarkedExercises.Doubled.TWICE, NumberAnswer.whole(2 * whole + 1))));
  }

  private static double millilitres(EarlierAnswers earlier, int part) {
    return earlier.quantity(part, Volume.class).in(VolumeUnit.MILLILITRE);
  }

  private static MeasuredAnswer<Volume> amount(double number) {
    return MeasuredAnswer.of(Volume.of(number, VolumeUnit.MILLILITRE), VolumeUnit.MILLILITRE);
  }

  private static ExerciseMark mark(String... typed) {
    return Marker.withDefaults().mark(CHAIN, typed);
  }

  private static List<MarkVerdict> verdicts(ExerciseMark mark) {
    return mark.parts().stream().map(PartMark::verdict).toList();
  }

  @Test
  void rightAnswersGetAllMarks() {
    // 15000 / 1234.5 = 12.15, so 12 tanks; 2.5 x 1234.5 / 12 = 257.19.
    var mark = mark("1234.5 mL", "12", "257.19 mL");
    assertThat(mark.marks()).isEqualTo(3);
    assertThat(mark.parts()).noneMatch(PartMark::carriedForward);
    var words = CHAIN.context().words();
    assertThat(mark.rightAnswers())
        .isEqualTo(CHAIN.solution().stream().map(part -> part.answer().print(words)).toList())
        .contains("12 tanks");
  }

  @Test
  void aSlipCostsMarksOnce() {
    // Twice 1234.5 is 2469: 6 tanks, and 2.5 x 2469 / 6 = 1028.75.
    var mark = mark("2469 mL", "6 tanks", "1028.75 mL");
    assertThat(verdicts(mark))
        .containsExactly(MarkVerdict.MISTAKE, MarkVerdict.RIGHT, MarkVerdict.RIGHT);
    assertThat(mark.marks()).isEqualTo(2);
    assertThat(mark.parts().get(0).mistake()).contains(MarkedExercises.Doubled.TWICE);
    assertThat(mark.parts().get(1).carriedForward()).isTrue();
    assertThat(mark.parts().get(1).feedback()).contains("own answer to a");
  }

  @Test
  void rightAndOwnAnswersMayBeMixed() {
    // Wrong a; b from the right a; c from the own a and that b: 2.5 x 3000 / 12 = 625.
    var mark = mark("3000 mL", "12", "625 mL");
    assertThat(verdicts(mark))
        .containsExactly(MarkVerdict.WRONG, MarkVerdict.RIGHT, MarkVerdict.RIGHT);
    assertThat(mark.parts().get(1).carriedForward()).isFalse();
    assertThat(mark.parts().get(2).carriedForward()).isTrue();
  }

  @Test
  void aBlankPartIsBridgedByWhatFollowsFromTheOwnAnswer() {
    // b is left out, but c was worked on with a = 3000 mL, so 5 tanks: 2.5 x 3000 / 5 = 1500.
    var mark = mark("3000 mL", "", "1500 mL");
    assertThat(mark.parts().get(2).verdict()).isEqualTo(MarkVerdict.RIGHT);
    assertThat(mark.parts().get(2).carriedForward()).isTrue();
  }

  @Test
  void slipsAreRecognisedOnOwnAnswersToo() {
    var mark = mark("3000 mL", "5", "3000 mL");
    assertThat(mark.parts().get(2).verdict()).isEqualTo(MarkVerdict.MISTAKE);
    assertThat(mark.parts().get(2).mistake()).contains(MarkedExercises.Doubled.TWICE);
    assertThat(mark.parts().get(2).feedback()).contains("own answer to a");
  }

  @Test
  void nothingComesOfAbsurdAnswers() {
    for (var absurd : List.of("99999999999 L", "20000 mL", "0 mL", "1e300 L", "-5 mL", "5 kg")) {
      var mark = mark(absurd, "12", "257.19 mL");
      assertThat(mark.marks()).as(absurd).isEqualTo(2);
    }
  }

  @Test
  void roundingMidwayCostsNothing() {
    // Right within the tolerance: 1240 mL, then 2.5 x 1240 / 12 = 258.3 or the exact 257.19.
    for (var last : List.of("257.2 mL", "258.3 mL", "259.5 mL")) {
      var mark = mark("1240 mL", "12", last);
      assertThat(mark.marks()).as(last).isEqualTo(3);
      assertThat(mark.parts()).noneMatch(PartMark::carriedForward);
    }
  }

  @Test
  void theTeacherMayChangeTheRules() {
    var strict =
        Marker.with(
            MarkingRules.USUAL
                .withCarriedForward(0.5)
                .withRecognisedMistake(0.5)
                .withMissingUnit(0)
                .withAnswersShown(false));
    var mark = strict.mark(CHAIN, List.of("2469 mL", "6", "1028.75"), 6);
    assertThat(mark.parts().stream().map(PartMark::marks)).containsExactly(1.0, 1.0, 0.0);
    assertThat(mark.rightAnswers()).isEmpty();
    assertThatThrownBy(() -> MarkingRules.USUAL.withMissingUnit(1.5))
        .isInstanceOf(IllegalArgumentException.class);
    var mild = Marker.with(MarkingRules.USUAL.withSignMatters(false).withRoundedTooFar(1));
    var percent = MarkedExercises.exercise("percent", TextLanguage.ENGLISH);
    assertThat(mild.mark(percent, "-87.5 %").marks()).isEqualTo(1);
    assertThat(mild.mark(percent, "88 %").marks()).isEqualTo(1);
  }

  @Test
  void marksAddUp() {
    for (double of : new double[] {1, 1.5, 2, 3, 4.5, 5, 7, 10, 0.5, 3.3}) {
      for (var weights :
          List.of(List.of(1.0, 1.0, 1.0), List.of(1.0, 2.0, 5.0, 0.1), List.of(3.0))) {
        var parts = new ArrayList<ExercisePart>();
        weights.forEach(weight -> parts.add(new ExercisePart("?", weight, earlier -> solved(1))));
        var shares = MarkShares.share(parts, of);
        double sum = shares.stream().mapToDouble(Double::doubleValue).sum();
        assertThat(sum).isCloseTo(of, org.assertj.core.api.Assertions.within(1e-12));
        if (of * 2 == Math.rint(of * 2) && of * 2 >= weights.size()) {
          assertThat(sum).isEqualTo(of);
          assertThat(shares).allMatch(share -> share * 2 == Math.rint(share * 2) && share > 0);
        }
      }
    }
    assertThat(MarkShares.award(1.5, 0.5)).isEqualTo(1);
    assertThat(MarkShares.award(0.5, 0.5)).isEqualTo(0.25);
    assertThat(MarkShares.award(2, 0.5)).isEqualTo(1);
  }

  @Test
  void tooManyAnswersAreRefused() {
    assertThatThrownBy(() -> mark("1", "2", "3", "4"))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("at most 3");
    assertThat(mark().marks()).isZero();
    assertThat(mark().parts()).allMatch(part -> part.mistake().equals(Optional.empty()));
  }
}
