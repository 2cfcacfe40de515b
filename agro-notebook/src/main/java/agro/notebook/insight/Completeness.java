package agro.notebook.insight;

import java.util.Objects;

/**
 * Whether code can be evaluated as it stands.
 *
 * @param state what it is
 * @param indent what the next line should begin with when something is missing
 */
public record Completeness(State state, String indent) {

  /** What can be said of code that is being typed. */
  public enum State {
    /** It can be evaluated. */
    COMPLETE,
    /** Something is still missing, such as a closing brace. */
    INCOMPLETE,
    /** It cannot become Java, whatever follows. */
    INVALID,
    /** Nobody can say. */
    UNKNOWN
  }

  /** Refuses nulls. */
  public Completeness {
    Objects.requireNonNull(state, "state");
    Objects.requireNonNull(indent, "indent");
  }
}
