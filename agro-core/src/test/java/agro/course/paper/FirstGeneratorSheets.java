package agro.course.paper;

import agro.course.CourseContext;
import agro.course.CourseSetting;
import agro.course.CourseUnits;
import agro.course.CourseWords;
import agro.course.ExerciseType;
import agro.course.GeneratorVersion;
import agro.course.topic.ExerciseCatalogue;
import agro.working.TextLanguage;
import java.nio.file.Path;
import java.util.List;

/**
 * What the first generator prints, as text: each type and difficulty for two seeds in both
 * languages, and for a third seed as an exam in US units.
 */
final class FirstGeneratorSheets {

  private FirstGeneratorSheets() {}

  static List<ExerciseType> types() {
    return ExerciseCatalogue.of(GeneratorVersion.FIRST).types();
  }

  static Path folder() {
    return Path.of(System.getProperty("basedir", "."))
        .resolve("src/test/resources/agro/course/paper/first");
  }

  static String text(ExerciseType type) {
    var text = new StringBuilder();
    for (var difficulty : type.difficulties().stream().sorted().toList()) {
      for (var language : TextLanguage.values()) {
        var words = CourseWords.of(language);
        var metric = CourseSetting.osmereVale(language);
        var home = new CourseContext(metric, words, false);
        var exam = new CourseContext(metric.withUnits(CourseUnits.US), words, true);
        for (int seed = 1; seed <= 3; seed++) {
          var exercise =
              ExerciseCatalogue.of(GeneratorVersion.FIRST)
                  .exercise(type.code(), difficulty, seed, seed == 3 ? exam : home);
          text.append(exercise.worked().toText()).append('\n');
          for (var part : exercise.solution()) {
            for (var slip : part.slips()) {
              text.append("- ").append(slip.answer().print(words)).append(": ");
              text.append(slip.mistake().feedback(words)).append('\n');
            }
          }
          text.append("\n\n");
        }
      }
    }
    return text.toString();
  }
}
