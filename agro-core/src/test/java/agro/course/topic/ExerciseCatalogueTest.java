package agro.course.topic;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import agro.course.CourseContext;
import agro.course.CourseSetting;
import agro.course.CourseTopic;
import agro.course.CourseUnits;
import agro.course.CourseWords;
import agro.course.Difficulty;
import agro.course.Exercise;
import agro.report.InputProblem;
import agro.working.TextLanguage;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ExerciseCatalogueTest {

  private static final CourseContext VALE =
      new CourseContext(
          CourseSetting.osmereVale(TextLanguage.ENGLISH),
          CourseWords.of(TextLanguage.ENGLISH),
          false);

  private final ExerciseCatalogue catalogue = ExerciseCatalogue.latest();

  @Test
  void codesAreDifferentAndBeginWithTheirTopic() {

    assertThat(catalogue.types().stream().map(type -> type.code())).doesNotHaveDuplicates();
    for (var type : catalogue.types()) {
      assertThat(type.code()).startsWith(type.topic().code() + "-");
      assertThat(type.difficulties()).isNotEmpty();
    }
  }

  @Test
  void twelveLikeItAreDifferentAndComeAgain() {
    var model = catalogue.exercise("dose-field", Difficulty.BASIC, 8, VALE);
    var twelve = catalogue.like(model, 12, 3);
    assertThat(twelve).hasSize(12);
    assertThat(twelve.stream().map(one -> one.givens().fingerprint()))
        .doesNotHaveDuplicates()
        .doesNotContain(model.givens().fingerprint());
    assertThat(twelve.stream().map(Exercise::key))
        .isEqualTo(catalogue.like(model, 12, 3).stream().map(Exercise::key).toList());
    var again =
        catalogue.exercise("dose-field", Difficulty.BASIC, twelve.get(4).key().seed(), VALE);
    assertThat(again.worked().toText()).isEqualTo(twelve.get(4).worked().toText());
  }

  @Test
  void seriesAreDifferent() {
    var series = catalogue.series(CourseTopic.DOSE, Difficulty.BASIC, 30, 8, VALE);
    assertThat(series.stream().map(one -> one.key().type() + one.givens().fingerprint()))
        .hasSize(30)
        .doesNotHaveDuplicates();
  }

  @Test
  void theLineBelowAnExerciseSetsItAgain() {
    for (var language : TextLanguage.values()) {
      var context = CourseContext.osmereVale(language);
      for (var type : catalogue.types()) {
        var difficulty = type.difficulties().iterator().next();
        var first = catalogue.exercise(type.code(), difficulty, 123_456_789, context);
        var again = ExerciseCatalogue.again(first.key().print(context.words()), VALE);
        assertThat(again.key()).isEqualTo(first.key());
      }
    }
    assertThat(ExerciseCatalogue.again("dose-field, BASIC, 8, 1", VALE).worked())
        .isEqualTo(catalogue.exercise("dose-field", Difficulty.BASIC, 8, VALE).worked());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "dose-field",
        "dose-field, basic, seed 8",
        "dose-field, basic, seed x, generator 1",
        "dose-field, basic, seed 99999999999999999999, generator 1",
        "dose-field, easy, seed 8, generator 1",
        "dose-field, basic, seed 8, generator 99",
        "dose-fild, basic, seed 8, generator 1"
      })
  void aLineThatIsNoneIsRefused(String line) {
    assertThatThrownBy(() -> ExerciseCatalogue.again(line, VALE)).isInstanceOf(InputProblem.class);
  }

  @Test
  void theOverviewCountsTheTypes() {
    var topics = List.of(CourseTopic.values());
    var difficulties = List.of(Difficulty.values());
    for (var language : TextLanguage.values()) {
      var table = catalogue.overview(language);
      for (var topic : topics) {
        for (var difficulty : difficulties) {
          long types =
              catalogue.types().stream()
                  .filter(type -> type.topic() == topic)
                  .filter(type -> type.difficulties().contains(difficulty))
                  .count();
          var cell =
              table.rows().get(topics.indexOf(topic)).get(1 + difficulties.indexOf(difficulty));
          assertThat(cell.printed()).isEqualTo(String.valueOf(types));
        }
      }
    }
    assertThat(catalogue.overview(TextLanguage.GERMAN).toText()).contains("Thema", "einfach");
  }

  @Test
  void aClassMayWorkInOtherUnitsAndSitAnExam() {
    var german = CourseContext.osmereVale(TextLanguage.GERMAN);
    assertThat(CourseContext.osmereVale(TextLanguage.ENGLISH)).isEqualTo(VALE);
    assertThat(german.words().language()).isEqualTo(TextLanguage.GERMAN);
    assertThat(german.exam()).isFalse();
    assertThat(german.asExam().exam()).isTrue();
    var american = german.asExam().withUnits(CourseUnits.US);
    assertThat(american.units()).isEqualTo(CourseUnits.US);
    assertThat(american.exam()).isTrue();
    assertThat(american.setting().crops()).isEqualTo(german.setting().crops());
  }

  @Test
  void unknownTypesAreRefused() {
    assertThatThrownBy(() -> catalogue.exercise("dose-fild", Difficulty.BASIC, 8, VALE))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("dose-field");
  }
}
