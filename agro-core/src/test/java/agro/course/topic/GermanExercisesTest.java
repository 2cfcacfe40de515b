package agro.course.topic;

import static org.assertj.core.api.Assertions.assertThat;

import agro.course.CourseContext;
import agro.course.CourseSetting;
import agro.course.CourseUnits;
import agro.course.CourseWords;
import agro.course.Exercise;
import agro.working.TextLanguage;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** What students read in German holds no English, whatever is drawn. */
class GermanExercisesTest {

  /** Words that any English sentence, step name, unit or list of sources would bring along. */
  private static final Pattern ENGLISH =
      Pattern.compile(
          "(?<!\\p{L})(?:the|and|with|from|per|for|by|or|not|is|are|days|plants|tanks|pumps|sources?"
              + "|value|memory|answer|given|short|metric|tbsp|tsp|cwt|spray|dose|product|volume"
              + "|area|mean|threshold|treated|untreated|yes|none|label)(?!\\p{L})",
          Pattern.CASE_INSENSITIVE);

  @Test
  void noWordIsLeftInEnglish() {
    var found = new TreeSet<String>();
    found.addAll(english(german(CourseUnits.METRIC, true), 8));
    found.addAll(english(german(CourseUnits.US, false), 21));

    assertThat(found).isEmpty();
  }

  private static CourseContext german(CourseUnits units, boolean exam) {
    var language = TextLanguage.GERMAN;
    return new CourseContext(
        CourseSetting.osmereVale(language).withUnits(units), CourseWords.of(language), exam);
  }

  private static Set<String> english(CourseContext context, long seed) {
    var catalogue = ExerciseCatalogue.latest();
    return catalogue.types().stream()
        .flatMap(
            type ->
                type.difficulties().stream()
                    .map(level -> catalogue.exercise(type.code(), level, seed, context)))
        .flatMap(exercise -> englishWords(exercise).stream())
        .collect(Collectors.toSet());
  }

  private static Set<String> englishWords(Exercise exercise) {
    var text = new StringBuilder(exercise.worked().toText().replace(exercise.key().type(), ""));
    for (var part : exercise.solution()) {
      for (var slip : part.slips()) {
        text.append('\n').append(slip.answer().print(exercise.context().words()));
        text.append('\n').append(slip.mistake().feedback(exercise.context().words()));
      }
    }
    return ENGLISH
        .matcher(text)
        .results()
        .map(word -> exercise.key().type() + ": " + word.group())
        .collect(Collectors.toSet());
  }
}
