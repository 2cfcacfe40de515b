package agro.notebook.kernel;

import java.util.Objects;

/**
 * A cell of Java code.
 *
 * @param name how messages call it, for example {@code "cell 3"}
 * @param code the whole code of the cell
 */
public record CellSource(String name, String code) {
  /** Refuses nulls. */
  public CellSource {
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(code, "code");
  }
}
