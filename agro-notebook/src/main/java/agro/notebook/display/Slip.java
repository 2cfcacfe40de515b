package agro.notebook.display;

import java.util.Objects;
import java.util.Optional;

/**
 * A mistake in a cell, as far as a compiler or an exception tells of it. Types are written with
 * their packages, as in {@code agro.units.Temperature}; what is not known is an empty text.
 *
 * @param message what the compiler or the exception said
 * @param found the type that the code has, or several with commas for the arguments of a call
 * @param required the type that was wanted, or several with commas; for an operator the type on its
 *     other side
 * @param called the name of the method, type or operator that was used
 * @param line the line of the cell
 * @param thrown the live exception; empty when the compiler refused the code
 */
public record Slip(
    String message,
    String found,
    String required,
    String called,
    String line,
    Optional<Throwable> thrown) {

  /** Refuses nulls. */
  public Slip {
    Objects.requireNonNull(message, "message");
    Objects.requireNonNull(found, "found");
    Objects.requireNonNull(required, "required");
    Objects.requireNonNull(called, "called");
    Objects.requireNonNull(line, "line");
    Objects.requireNonNull(thrown, "thrown");
  }
}
