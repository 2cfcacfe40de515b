package agro.notebook.command;

import java.io.Console;
import java.io.PrintWriter;

/** The line that says how far the program is: rewritten on a terminal, left out in a log. */
final class StatusLine {

  private static final int COLUMNS = 79;

  private final PrintWriter err;
  private final Place place;
  private int shown;

  private enum Place {
    TERMINAL,
    LOG,
    NOWHERE
  }

  private StatusLine(PrintWriter err, Place place) {
    this.err = err;
    this.place = place;
  }

  /**
   * A line for people, on a terminal if there is one.
   *
   * @param err where it goes
   * @return the line
   */
  static StatusLine on(PrintWriter err) {
    return new StatusLine(err, isTerminal() ? Place.TERMINAL : Place.LOG);
  }

  /**
   * A line that is rewritten whatever the surroundings.
   *
   * @param err where it goes
   * @return the line
   */
  static StatusLine onTerminal(PrintWriter err) {
    return new StatusLine(err, Place.TERMINAL);
  }

  /**
   * A line that nobody sees.
   *
   * @return the line
   */
  static StatusLine silent() {
    return new StatusLine(new PrintWriter(java.io.Writer.nullWriter()), Place.NOWHERE);
  }

  /** From JDK 22 on there may be a console without a terminal; it says so itself. */
  @SuppressWarnings("SystemConsoleNull")
  private static boolean isTerminal() {
    var console = System.console();
    if (console == null || "dumb".equals(System.getenv("TERM"))) {
      return false;
    }
    try {
      return (boolean) Console.class.getMethod("isTerminal").invoke(console);
    } catch (ReflectiveOperationException olderJdk) {
      return true;
    }
  }

  boolean isRewritten() {
    return place == Place.TERMINAL;
  }

  /**
   * Shows how far it is; a log does not hear of it.
   *
   * @param text one line
   */
  synchronized void now(String text) {
    if (place == Place.TERMINAL) {
      var line = text.length() <= COLUMNS ? text : text.substring(0, COLUMNS - 1) + "…";
      err.print("\r" + line + " ".repeat(Math.max(0, shown - line.length())));
      err.flush();
      shown = line.length();
    }
  }

  /**
   * Says something that stays.
   *
   * @param text one line
   */
  synchronized void stays(String text) {
    wipe();
    if (place != Place.NOWHERE) {
      err.println(text);
      err.flush();
    }
  }

  /** Takes the line away, so that something else can be printed. */
  synchronized void wipe() {
    if (shown > 0) {
      err.print("\r" + " ".repeat(shown) + "\r");
      err.flush();
      shown = 0;
    }
  }
}
