package agro.notebook.display;

import java.util.Optional;

/**
 * Explains slips with the types of one library. Explanations are found as services ({@link
 * java.util.ServiceLoader}), so that a library brings its own without being known here.
 */
public interface SlipHint {

  /**
   * What a reader should do about a slip.
   *
   * @param slip the slip
   * @return one or two sentences, or empty when this library has nothing to say
   */
  Optional<String> hint(Slip slip);
}
