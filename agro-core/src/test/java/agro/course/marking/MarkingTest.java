package agro.course.marking;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import agro.course.CourseContext;
import agro.course.ExerciseContract;
import agro.course.topic.ExerciseCatalogue;
import agro.working.TextLanguage;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.CharRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.StringLength;
import org.junit.jupiter.api.Test;

/** Words, print and odd texts. */
class MarkingTest {

  private static final List<String> KINDS =
      List.of(
          "ml",
          "rate",
          "gram",
          "area",
          "speed",
          "dd",
          "temperature",
          "percent",
          "pumps",
          "money",
          "day",
          "choice",
          "codes",
          "nocodes",
          "floz",
          "dense");

  private static final List<String> SCRAPS =
      List.of(
          "3", "37.5", ",", ".", "'", "1,500", "1/0", "0/0", "e999", "^", "x10^", "10^999", "-",
          "±", " mL", " L/ha", "/", " per ", " oz", " %", "°", " gal", "(", ")", "July", "31/2",
          "99999", "ſ", "İ", "\u0000", "\ud800", "½", "⁻", "¹", "a)", "=", "≈", "none", " and ",
          "K", "d");

  @Test
  void bothLanguagesHaveTheSameKeys() {
    ExerciseContract.sameKeys(Marker.class, "marking");
  }

  @Property(seed = "8", tries = 400)
  void noTextIsTooOdd(
      @ForAll @StringLength(max = 60) String typed, @ForAll @IntRange(max = 15) int kind) {
    neverThrows(typed, KINDS.get(kind));
  }

  @Property(seed = "9", tries = 400)
  void noTextOfUsualSignsIsTooOdd(
      @ForAll @StringLength(max = 25) @CharRange(from = ' ', to = '~') String typed,
      @ForAll @IntRange(max = 15) int kind) {
    neverThrows(typed, KINDS.get(kind));
  }

  @Test
  void noMixtureOfScrapsIsTooOdd() {
    var random = new Random(8);
    for (int i = 0; i < 1_000; i++) {
      var typed = new StringBuilder();
      for (int scrap = random.nextInt(7); scrap >= 0; scrap--) {
        typed.append(SCRAPS.get(random.nextInt(SCRAPS.size())));
      }
      neverThrows(typed.toString(), KINDS.get(i % KINDS.size()));
    }
  }

  @Test
  void textsOfAnyLengthAreSafe() {
    for (var piece : List.of("1", "1 ", ",", "a", "=", "((", "1'000", " ", "per ", "3.7.", "½")) {
      for (var kind : KINDS) {
        neverThrows(piece.repeat(100), kind);
        neverThrows(piece.repeat(5_000), kind);
      }
    }
  }

  private static void neverThrows(String typed, String kind) {
    for (var language : TextLanguage.values()) {
      assertThatCode(
              () -> {
                var exercise = MarkedExercises.exercise(kind, language);
                var mark = Marker.withDefaults().mark(exercise, typed);
                assertThat(mark.parts().get(0).feedback()).isNotBlank();
                AnswerOptions.of(exercise, 0, 8).mark(typed);
              })
          .as("%s %s", kind, typed.length() > 100 ? typed.length() : typed)
          .doesNotThrowAnyException();
    }
  }

  @Test
  void feedbackSaysWhy() {
    assertThat(feedback("ml", "20 g")).contains("density is not given").contains("a mass");
    assertThat(feedback("rate", "200 L")).contains("An amount is not an amount per area");
    assertThat(feedback("ml", "37.5")).contains("37.5 of what?");
    assertThat(feedback("ml", "50")).contains("50 of what?").contains("not right");
    assertThat(feedback("ml", "0.0375")).contains("right in L");
    assertThat(feedback("ml", "37.6 mL")).contains("37 to 38 mL").contains("measuring vessel");
    assertThat(feedback("big", "1,500 mL")).contains("read as 1500");
    assertThat(feedback("big", "1,800 mL")).contains("1800 or 1.8");
    assertThat(feedback("dense", "45 g")).contains("1.2 kg/L");
    assertThat(feedback("floz", "12 oz")).contains("read as fl oz (US)");
    assertThat(feedback("litres", "2 gal")).contains("gal (US) or gal (imp)");
    assertThat(feedback("dd", "123.4 °C")).contains("added up over days");
    assertThat(feedback("day", "3/7")).contains("3 July or 7 March");
    assertThat(feedback("ml", "37.5 ML")).contains("read as mL");
    assertThat(feedback("ml", "37.5 ml")).doesNotContain("read as");
    assertThat(feedback("percent", "0.875")).contains("share of one");
  }

  private static String feedback(String kind, String typed) {
    var exercise = MarkedExercises.exercise(kind, TextLanguage.ENGLISH);
    return Marker.withDefaults().mark(exercise, typed).parts().get(0).feedback();
  }

  @Test
  void generalMistakesAreNamed() {
    assertThat(mistake("ml", "375 mL")).isEqualTo(GeneralMistake.DECIMAL_POINT);
    assertThat(mistake("ml", "0.375 mL")).isEqualTo(GeneralMistake.DECIMAL_POINT);
    assertThat(mistake("ml", "37500 mL")).isEqualTo(GeneralMistake.WRONG_PREFIX);
    assertThat(mistake("ml", "37.5 L")).isEqualTo(GeneralMistake.WRONG_UNIT);
    assertThat(mistake("ml", "37.5 kg")).isEqualTo(GeneralMistake.WRONG_UNIT);
    assertThat(mistake("ml", "0.02667 mL")).isEqualTo(GeneralMistake.UPSIDE_DOWN);
    assertThat(mistake("ml", "-37.5 mL")).isEqualTo(GeneralMistake.WRONG_SIGN);
    assertThat(mistake("odd", "1200 mL")).isEqualTo(GeneralMistake.ROUNDED_TOO_FAR);
    assertThat(mistake("day", "4 July")).isEqualTo(GeneralMistake.OFF_BY_ONE_DAY);
    assertThat(mistake("ml", "75 mL")).isEqualTo(MarkedExercises.Doubled.TWICE);
  }

  private static agro.course.Mistake mistake(String kind, String typed) {
    var exercise = MarkedExercises.exercise(kind, TextLanguage.ENGLISH);
    return Marker.withDefaults().mark(exercise, typed).parts().get(0).mistake().orElseThrow();
  }

  @Test
  void everyPairOfKindsHasAReason() {
    for (var language : TextLanguage.values()) {
      var words = Marker.words(MarkedExercises.exercise("ml", language));
      for (var found : kinds()) {
        for (var wanted : kinds()) {
          assertThat(KindReason.of(words, found, wanted)).isNotBlank().doesNotContain("{");
        }
      }
    }
  }

  private static List<AnswerKind> kinds() {
    var all = new java.util.ArrayList<AnswerKind>();
    for (var kind : agro.units.QuantityKind.values()) {
      all.add(AnswerKind.of(kind));
    }
    all.addAll(
        List.of(
            AnswerKind.NUMBER,
            AnswerKind.PERCENT,
            AnswerKind.THERMAL_TIME,
            AnswerKind.TEMPERATURE,
            AnswerKind.DAY,
            AnswerKind.PER_THING));
    return all;
  }

  @Test
  void optionsAreMarkedByLetterAndText() {
    for (long seed = 0; seed < 20; seed++) {
      var options = AnswerOptions.of(MarkedExercises.exercise("ml", TextLanguage.ENGLISH), 0, seed);
      assertThat(options.options()).hasSize(2);
      var wrong =
          options.options().stream().filter(one -> one.mistake().isPresent()).findFirst().get();
      assertThat(options.mark(options.right().letter()).isFull()).isTrue();
      assertThat(options.mark("37.5 mL").isFull()).isTrue();
      assertThat(options.mark("0,0375 l").isFull()).isTrue();
      assertThat(options.mark(wrong.letter() + ")").feedback()).contains("Twice as much");
      assertThat(options.mark("75 mL").mistake()).contains(MarkedExercises.Doubled.TWICE);
      assertThat(options.mark("375 mL").verdict()).isEqualTo(MarkVerdict.UNCLEAR);
      assertThat(options.mark("E").verdict()).isEqualTo(MarkVerdict.UNCLEAR);
      assertThat(options.mark("").verdict()).isEqualTo(MarkVerdict.NOT_ANSWERED);
    }
    var choice = AnswerOptions.of(MarkedExercises.exercise("choice", TextLanguage.ENGLISH), 0, 3);
    assertThat(choice.options()).hasSize(3);
    assertThat(choice.mark("do not treat").isFull()).isTrue();
    assertThat(choice.mark("Look again").verdict()).isEqualTo(MarkVerdict.WRONG);
    var letters =
        java.util.stream.LongStream.range(0, 20)
            .mapToObj(
                seed ->
                    AnswerOptions.of(MarkedExercises.exercise("ml", TextLanguage.ENGLISH), 0, seed)
                        .right()
                        .letter())
            .distinct();
    assertThat(letters).hasSize(2);
  }

  @Test
  void marksArePrintedInTheLanguageOfTheExercise() {
    var german = MarkedExercises.exercise("ml", TextLanguage.GERMAN);
    var text = Marker.withDefaults().mark(german, "20 g").presentation().toText();
    assertThat(text).contains("Punkte").contains("Dichte ist nicht angegeben").contains("37,5 mL");
  }

  @Test
  void answersStandSideBySide() {
    var exercise = MarkedExercises.exercise("ml", TextLanguage.ENGLISH);
    var table = Marker.withDefaults().sideBySide(exercise, "37.5 mL", "37.5", "20 g", "");
    var marks = table.rows().stream().map(row -> row.get(3).printed());
    assertThat(marks).containsExactly("1 of 1", "0.5 of 1", "0 of 1", "0 of 1");
    assertThat(table.rows().get(1).get(4).printed()).contains("of what?");
    assertThat(table.toText()).contains("Feedback");
  }

  @Test
  void optionsSayWhatLeadsToThem() {
    for (var language : TextLanguage.values()) {
      var context = CourseContext.osmereVale(language);
      var line = "units-rate, basic, seed 3, generator 1";
      var options = AnswerOptions.of(ExerciseCatalogue.again(line, context), 0, 8);
      var rows = options.meanings().rows();
      assertThat(rows).hasSameSizeAs(options.options());
      for (int i = 0; i < rows.size(); i++) {
        var one = options.options().get(i);
        assertThat(rows.get(i).get(0).printed()).isEqualTo(one.letter());
        assertThat(rows.get(i).get(2).printed())
            .isEqualTo(
                one.mistake()
                    .map(mistake -> mistake.phrase(options.exercise().context().words()))
                    .orElse(language == TextLanguage.ENGLISH ? "right" : "richtig"));
      }
      var text = options.presentation().toText().replaceAll("\\s+", " ");
      options.exercise().body().story().forEach(told -> assertThat(text).contains(told));
    }
  }

  @Test
  void aPageOfBlanksHoldsNoFigureAndNoCaution() {
    var exercise =
        ExerciseCatalogue.again(
            "dose-field, basic, seed 8, generator 1",
            CourseContext.osmereVale(TextLanguage.ENGLISH));
    var hidden = Marker.with(MarkingRules.USUAL.withAnswersShown(false));
    var caution = exercise.context().words().cautions(exercise.body().cautions()).get(0);
    var words = caution.substring(0, 20);
    assertThat(hidden.mark(exercise, "").presentation().toText()).doesNotContain(words);
    assertThat(hidden.mark(exercise, "1 L").presentation().toText()).contains(words);
    assertThat(Marker.withDefaults().mark(exercise, "").presentation().toText()).contains(words);
  }
}
