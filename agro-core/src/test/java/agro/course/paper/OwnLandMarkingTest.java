package agro.course.paper;

import static org.assertj.core.api.Assertions.assertThat;

import agro.course.CourseContext;
import agro.course.Exercise;
import agro.course.ExerciseKey;
import agro.course.GeneratorVersion;
import agro.course.marking.Marker;
import agro.course.topic.ExerciseCatalogue;
import agro.reading.DelimitedFormat;
import agro.working.TextLanguage;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A unit of land that a teacher has named himself is read in answers as it is printed. */
class OwnLandMarkingTest {

  private static final String SETTING =
      "key,value\nplace,Lower Osmere\nunits,metric\nland_unit,1 osmere rood = 1180 m2\n";

  private static CourseContext context() {
    var setting =
        SettingFile.parse("setting", SETTING, DelimitedFormat.COMMA, TextLanguage.ENGLISH)
            .setting();
    return new CourseContext(setting, PaperWords.of(TextLanguage.ENGLISH), false);
  }

  private static Exercise exercise(String code, CourseContext context) {
    var type =
        ExerciseCatalogue.latest().types().stream()
            .filter(one -> one.code().equals(code))
            .findFirst()
            .orElseThrow();
    var difficulty = type.difficulties().iterator().next();
    var key = new ExerciseKey(code, difficulty, GeneratorVersion.latest(), 5);
    return Exercise.set(type, key, context);
  }

  @Test
  void rightAnswersOfEveryTypeAreRight() {
    var context = context();
    var wrong = new ArrayList<String>();
    for (var type : ExerciseCatalogue.latest().types()) {
      var exercise = exercise(type.code(), context);
      var typed =
          exercise.solution().stream().map(part -> part.answer().print(context.words())).toList();
      var mark = Marker.withDefaults().mark(exercise, typed, 4);
      if (mark.parts().stream().anyMatch(part -> part.marks() < part.of())) {
        wrong.add(type.code() + " " + typed + " " + mark.parts());
      }
    }
    assertThat(wrong).isEmpty();
  }

  @Test
  void itIsReadHoweverItIsWrittenAndByItsSize() {
    var exercise = exercise("units-rate", context());
    var right = exercise.solution().get(0).answer().print(context().words());
    assertThat(right).endsWith("L/osmere rood");
    for (var typed :
        List.of(
            right,
            right.replace("osmere rood", "Osmere-Rood"),
            right.replace("/osmere rood", " per osmere rood"),
            right + "s")) {
      var mark = Marker.withDefaults().mark(exercise, List.of(typed), 2);
      assertThat(mark.parts().get(0).marks()).as(typed).isEqualTo(2);
    }
    var hectares = right.replace("osmere rood", "ha");
    assertThat(Marker.withDefaults().mark(exercise, List.of(hectares), 2).parts().get(0).marks())
        .as("so much per hectare is far less")
        .isZero();
  }
}
