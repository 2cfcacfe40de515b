package agro.course;

import agro.report.InputProblem;
import agro.working.TextLanguage;
import java.util.Locale;
import java.util.Objects;
import java.util.regex.Pattern;

/**
 * What an exercise can be set again from.
 *
 * @param type code of its type
 * @param difficulty how much it asks for
 * @param version generator that set it
 * @param seed seed of its numbers
 */
public record ExerciseKey(String type, Difficulty difficulty, GeneratorVersion version, long seed) {

  // Eighteen digits are the most that surely fit into a seed, nine into a number of a generator.
  private static final Pattern LINE =
      Pattern.compile(
          "(?:\\p{L}+\\s+)?(?<type>[a-z]+(?:-[a-z]+)+)\\s*,\\s*(?<difficulty>\\p{L}+)\\s*,"
              + "\\s*(?:\\p{L}+\\s+)?(?<seed>-?\\d{1,18})\\s*,"
              + "\\s*(?:\\p{L}+\\s+)?(?<version>\\d{1,9})\\.?");

  private static final String EXAMPLE = "Exercise dose-field, basic, seed 7, generator 1";

  /** Refuses what is missing. */
  public ExerciseKey {
    Objects.requireNonNull(type, "type");
    Objects.requireNonNull(difficulty, "difficulty");
    Objects.requireNonNull(version, "version");
  }

  /**
   * Reads the line that stands below an exercise, in whatever language it was printed.
   *
   * @param line as {@link #print} gives it, for example {@code "Exercise dose-field, basic, seed 7,
   *     generator 1"}; the words before type, seed and generator may be left out
   * @return the key
   * @throws InputProblem if it is no such line, or names an unknown difficulty or generator
   */
  public static ExerciseKey parse(String line) {
    var found = LINE.matcher(line.strip());
    if (!found.matches()) {
      throw InputProblem.of("\"" + line.strip() + "\"")
          .expected("type, difficulty, seed and generator, with commas between them")
          .because("an exercise is set again from all four")
          .mend("copy the whole line below the exercise, for example: " + EXAMPLE);
    }
    return new ExerciseKey(
        found.group("type"),
        difficulty(found.group("difficulty")),
        GeneratorVersion.of(Integer.parseInt(found.group("version"))),
        Long.parseLong(found.group("seed")));
  }

  private static Difficulty difficulty(String word) {
    for (var language : TextLanguage.values()) {
      var words = CourseWords.of(language);
      for (var difficulty : Difficulty.values()) {
        if (words.say("difficulty." + difficulty.code()).equalsIgnoreCase(word)) {
          return difficulty;
        }
      }
    }
    return Difficulty.of(word);
  }

  /**
   * The key in one line, as printed below an exercise.
   *
   * @param words language
   * @return type, difficulty, seed and version
   */
  public String print(CourseWords words) {
    return words.say(
        "exercise.key",
        "type",
        type,
        "difficulty",
        words.say("difficulty." + difficulty.code()),
        "seed",
        String.format(Locale.ROOT, "%d", seed),
        "version",
        version.number());
  }
}
