package agro.notebook.display;

import java.io.Console;
import java.io.PrintStream;

/**
 * A bar on the error stream of a plain program: on a terminal one line that is written again and
 * again, in a file a line every few seconds.
 */
final class ConsoleFace implements ProgressFace {

  private static final long FIFTH_OF_A_SECOND = 200_000_000;
  private static final long FIVE_SECONDS = 5_000_000_000L;
  private static final int WIDEST = 78;

  private final PrintStream stream;
  private final boolean terminal;
  private int width;

  ConsoleFace(PrintStream stream, boolean terminal) {
    this.stream = stream;
    this.terminal = terminal;
  }

  static ConsoleFace ofProcess() {
    return new ConsoleFace(System.err, isTerminal(System.console()));
  }

  /** From JDK 22 on there is a console without a terminal too, and a method that tells. */
  private static boolean isTerminal(Console console) {
    if (console == null) {
      return false;
    }
    try {
      return (boolean) Console.class.getMethod("isTerminal").invoke(console);
    } catch (ReflectiveOperationException olderJdk) {
      return true;
    }
  }

  @Override
  public long pauseNanos() {
    return terminal ? FIFTH_OF_A_SECOND : FIVE_SECONDS;
  }

  @Override
  public void draw(ProgressState state) {
    write(state.line(), false);
  }

  private void write(String line, boolean last) {
    if (!terminal) {
      stream.println(line);
      return;
    }
    var shown = PlainText.head(line, WIDEST);
    stream.print("\r" + shown + " ".repeat(Math.max(0, width - shown.length())));
    width = shown.length();
    if (last) {
      stream.println();
      width = 0;
    }
    stream.flush();
  }

  @Override
  public void replace(String line) {
    write(line, true);
  }

  @Override
  public void remove() {
    if (terminal) {
      stream.print("\r" + " ".repeat(width) + "\r");
      stream.flush();
      width = 0;
    }
  }

  @Override
  public ProgressFace another() {
    return new ConsoleFace(stream, terminal);
  }
}
