package agro.notebook.kernel;

import java.io.InputStream;
import java.io.PrintStream;

/**
 * Puts itself in the place of the process's standard streams. Threads of an evaluator print to
 * their cell and read what its reader types; all other threads see what was there before.
 */
final class StandardStreams {

  private static PrintStream output;
  private static PrintStream error;
  private static InputStream input;

  private StandardStreams() {}

  /** Takes the place of the standard streams, again if the program has replaced one meanwhile. */
  static synchronized void install() {
    if (System.out != output) {
      output = new RoutedPrintStream(StandardStream.OUTPUT, System.out);
      System.setOut(output);
    }
    if (System.err != error) {
      error = new RoutedPrintStream(StandardStream.ERROR, System.err);
      System.setErr(error);
    }
    if (System.in != input) {
      input = new RoutedInput(System.in);
      System.setIn(input);
    }
  }

  /** Takes the place again that a cell may have taken; what a cell set there is forgotten. */
  static synchronized void putBack() {
    if (System.out != output) {
      System.setOut(output);
    }
    if (System.err != error) {
      System.setErr(error);
    }
    if (System.in != input) {
      System.setIn(input);
    }
  }
}
