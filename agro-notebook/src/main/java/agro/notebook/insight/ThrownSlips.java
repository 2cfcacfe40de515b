package agro.notebook.insight;

import java.io.FileNotFoundException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ConcurrentModificationException;
import java.util.NoSuchElementException;
import java.util.Optional;

/** Hints to exceptions that beginners meet. */
final class ThrownSlips {

  private ThrownSlips() {}

  /**
   * What to do about an exception.
   *
   * @param thrown the exception
   * @param message its message
   * @param line the line of the cell, possibly empty
   * @return a sentence, if there is something to say
   */
  static Optional<String> hint(Throwable thrown, String message, String line) {
    var text =
        thrown instanceof NumberFormatException
            ? number(message)
            : thrown instanceof IndexOutOfBoundsException
                ? "Positions are counted from 0, so the last one is the length less 1."
                : thrown instanceof ArithmeticException && message.contains("by zero")
                    ? "Whole numbers cannot be divided by 0; with a double the result would be"
                        + " Infinity."
                    : other(thrown, message);
    return Optional.ofNullable(text).filter(hint -> !hint.isEmpty());
  }

  private static String number(String message) {
    if (message.matches("(?s).*\"\\s*[-+]?\\d+,\\d+\\s*\".*")) {
      return "The text has a decimal comma; Java reads decimals behind a point.";
    }
    if (message.matches("(?s).*\"[-+]?\\d+\\.\\d+\".*")) {
      return "The text has decimals: read it with Double.parseDouble.";
    }
    return message.contains("empty String") || message.contains("\"\"")
        ? "The text is empty."
        : "The text is not a number alone; strip() takes spaces away.";
  }

  private static String other(Throwable thrown, String message) {
    if (thrown instanceof NullPointerException) {
      return "Something that should be an object is null: it was never given a value, or a method found"
          + " nothing.";
    }
    if (thrown instanceof StackOverflowError) {
      return "A method calls itself without end: check the condition that should stop it.";
    }
    if (thrown instanceof OutOfMemoryError) {
      return "The memory is full: work on a part of the data, or give Java more with -Xmx.";
    }
    if (thrown instanceof ConcurrentModificationException) {
      return "A collection was changed while a loop went through it: use removeIf, or collect the"
          + " changes first.";
    }
    if (thrown instanceof UnsupportedOperationException && message.isEmpty()) {
      return "Lists from List.of, toList() and the like cannot be changed: copy one with new"
          + " ArrayList<>(...).";
    }
    if (thrown instanceof NoSuchFileException || thrown instanceof FileNotFoundException) {
      return "Relative names begin in "
          + Path.of("").toAbsolutePath()
          + ", where this program was started.";
    }
    return thrown instanceof NoSuchElementException && message.contains("No value present")
        ? "The Optional is empty: ask isPresent() first, or take orElse(...)."
        : "";
  }
}
