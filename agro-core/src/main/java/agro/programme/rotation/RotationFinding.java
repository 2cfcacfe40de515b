package agro.programme.rotation;

import agro.dose.Severity;
import java.util.List;

/**
 * What one rule says of some uses.
 *
 * @param severity an error where the rule is broken, a warning where it is in doubt
 * @param rule the rule
 * @param words what was found, with products and dates
 * @param sprayings names of the applications concerned
 */
public record RotationFinding(
    Severity severity, RotationRule rule, String words, List<String> sprayings) {

  /** Copies the list. */
  public RotationFinding {
    sprayings = List.copyOf(sprayings);
  }

  @Override
  public String toString() {
    return severity.words() + ": " + words;
  }
}
