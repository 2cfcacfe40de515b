package agro.dose;

import agro.report.InputProblem;
import java.util.Locale;

/**
 * Under what circumstance a limit of a label holds, in the words of the label.
 *
 * @param words the circumstance in lower case, for example {@code "small larvae"}
 */
public record UseCondition(String words) {

  /** Strips and lowers the words, so that the same words are the same condition. */
  public UseCondition {
    words = words.strip().toLowerCase(Locale.ROOT);
    if (words.isEmpty()) {
      throw InputProblem.of("a condition without words")
          .expected("the circumstance that the label names")
          .because("a limit that holds always has no condition at all")
          .mend("write the words of the label, for example \"dense crop\"");
    }
  }

  @Override
  public String toString() {
    return words;
  }
}
