package agro.course;

import agro.working.Working;
import java.util.List;
import java.util.Objects;

/**
 * A part with its solution.
 *
 * @param answer the right answer, given the earlier ones
 * @param working the steps as a teacher writes them on a blackboard
 * @param slips typical wrong answers, at least one; none equals the right answer or another
 */
public record SolvedPart(ExpectedAnswer answer, Working working, List<TypicalSlip> slips) {
  /** Copies the list. */
  public SolvedPart {
    Objects.requireNonNull(answer, "answer");
    Objects.requireNonNull(working, "working");
    slips = List.copyOf(slips);
  }
}
