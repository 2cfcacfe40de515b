package agro.programme.rotation;

import java.util.List;
import java.util.Map;

/**
 * One programme that keeps to all rules.
 *
 * @param choices what is done in each window, in order
 * @param scores the figure of each criterion
 * @param doubts what has to be looked up or thought over before it is followed
 */
public record ProposedProgramme(
    List<WindowChoice> choices, Map<PlanCriterion, Double> scores, List<String> doubts) {

  /** Copies the lists. */
  public ProposedProgramme {
    choices = List.copyOf(choices);
    scores = Map.copyOf(scores);
    doubts = List.copyOf(doubts);
  }

  @Override
  public String toString() {
    return String.join("; ", choices.stream().map(WindowChoice::words).toList());
  }
}
