package agro.course;

import agro.report.InputProblem;
import java.util.Arrays;
import java.util.Locale;
import java.util.stream.Collectors;

/** How much an exercise asks for. */
public enum Difficulty {
  /** One step with one formula. */
  BASIC,
  /** Two or three steps, as an adviser does them every week. */
  ROUTINE,
  /** Several steps that lean on one another, or a choice of method. */
  DEMANDING;

  /**
   * The difficulty as files write it.
   *
   * @return lower case, for example {@code "routine"}
   */
  public String code() {
    return name().toLowerCase(Locale.ROOT);
  }

  /**
   * The difficulty with a code.
   *
   * @param code as {@link #code()} gives it; case does not matter
   * @return the difficulty
   * @throws InputProblem if there is no such difficulty
   */
  public static Difficulty of(String code) {
    return Arrays.stream(values())
        .filter(difficulty -> difficulty.code().equalsIgnoreCase(code.strip()))
        .findFirst()
        .orElseThrow(
            () ->
                InputProblem.of("the difficulty \"" + code + "\"")
                    .expected(
                        "one of "
                            + Arrays.stream(values())
                                .map(Difficulty::code)
                                .collect(Collectors.joining(", ")))
                    .because("each topic has exercises of several difficulties")
                    .mend("write one of them"));
  }
}
