package agro.dose;

import java.util.Objects;

/**
 * What a check of a dose found.
 *
 * @param severity how much it matters
 * @param rule what was checked, for example {@code "maximum dose per application"}
 * @param sentence what was found, with both figures
 */
public record DoseFinding(Severity severity, String rule, String sentence) {

  /** Refuses nulls. */
  public DoseFinding {
    Objects.requireNonNull(severity, "severity");
    Objects.requireNonNull(rule, "rule");
    Objects.requireNonNull(sentence, "sentence");
  }

  @Override
  public String toString() {
    return severity.words() + ", " + rule + ": " + sentence;
  }
}
