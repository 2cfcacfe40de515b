package agro.course;

import agro.report.InputProblem;
import java.util.Arrays;

/**
 * Version of the generator. A version never changes once it has set a paper: with the same seed it
 * prints the same sheets, byte for byte, for as long as this library lives. Whoever improves an
 * exercise adds a version and leaves the older types in the catalogue of theirs.
 */
public enum GeneratorVersion {
  /** The first. */
  FIRST(1);

  private final int number;

  GeneratorVersion(int number) {
    this.number = number;
  }

  /**
   * The number that is printed beside the seed.
   *
   * @return 1 or more
   */
  public int number() {
    return number;
  }

  /**
   * The version that new papers are set with.
   *
   * @return the newest version
   */
  public static GeneratorVersion latest() {
    return values()[values().length - 1];
  }

  /**
   * The version with a number.
   *
   * @param number as printed on a paper
   * @return the version
   * @throws InputProblem if this library is older than the paper
   */
  public static GeneratorVersion of(int number) {
    return Arrays.stream(values())
        .filter(version -> version.number == number)
        .findFirst()
        .orElseThrow(
            () ->
                InputProblem.of("generator " + number)
                    .expected("a number from 1 to " + latest().number)
                    .because("a paper can only be set again by the generator that set it")
                    .mend("take the number that is printed on the paper, or a newer library"));
  }
}
