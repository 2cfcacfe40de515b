package agro.trial.analysis;

import java.util.Objects;
import java.util.OptionalDouble;

/**
 * What one check of the assumptions found.
 *
 * @param name the assumption and the test, for example "normal residuals (Shapiro-Wilk)"
 * @param sentence the test as papers print it, or why it could not be made
 * @param pValue chance of the statistic when the assumption holds, where the test could be made
 * @param words what it says about this trial
 */
public record CheckedAssumption(String name, String sentence, OptionalDouble pValue, String words) {

  /** Refuses null. */
  public CheckedAssumption {
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(sentence, "sentence");
    Objects.requireNonNull(pValue, "pValue");
    Objects.requireNonNull(words, "words");
  }

  @Override
  public String toString() {
    return name + ": " + sentence + ". " + words;
  }
}
