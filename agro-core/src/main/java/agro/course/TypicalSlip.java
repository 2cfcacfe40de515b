package agro.course;

import java.util.Objects;

/**
 * What comes out when a mistake is made.
 *
 * @param mistake the mistake
 * @param answer the wrong answer that it leads to, computed and not typed in
 */
public record TypicalSlip(Mistake mistake, ExpectedAnswer answer) {
  /** Refuses what is missing. */
  public TypicalSlip {
    Objects.requireNonNull(mistake, "mistake");
    Objects.requireNonNull(answer, "answer");
  }
}
