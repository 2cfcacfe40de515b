package agro.notebook.insight;

import java.util.List;
import java.util.Objects;

/**
 * How the word at the cursor may go on. Positions count UTF-16 units, as Java's strings do.
 *
 * @param from where the text to be replaced begins
 * @param to where it ends: behind the word that the cursor stands in
 * @param candidates what may stand there instead, best first
 */
public record Completions(int from, int to, List<Candidate> candidates) {

  /** Makes the list immutable. */
  public Completions {
    candidates = List.copyOf(candidates);
  }

  /**
   * No completion.
   *
   * @param cursor where the cursor stands
   * @return nothing to replace and nothing to put there
   */
  static Completions none(int cursor) {
    return new Completions(cursor, cursor, List.of());
  }

  /**
   * One way to go on.
   *
   * @param text the text that takes the place of the whole word
   * @param kind what it is
   * @param signature how it is called and of which type it is, for example {@code "plus(int) :
   *     Sum"}; empty for words of the language
   */
  public record Candidate(String text, NameKind kind, String signature) {

    /** Refuses nulls. */
    public Candidate {
      Objects.requireNonNull(text, "text");
      Objects.requireNonNull(kind, "kind");
      Objects.requireNonNull(signature, "signature");
    }

    /**
     * The word by which front ends choose a symbol.
     *
     * @return for example {@code "function"}
     */
    public String type() {
      return kind.word();
    }
  }
}
