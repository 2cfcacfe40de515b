package agro.notebook.kernel;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.Locale;

/**
 * Stands in for a standard stream of the process. Each call goes whole to the stream of the cell
 * that the calling thread works for, and for all other threads to the stream that was there before.
 * It has no lock of its own and cannot be closed.
 */
final class RoutedPrintStream extends PrintStream {

  private final StandardStream stream;
  private final PrintStream before;

  RoutedPrintStream(StandardStream stream, PrintStream before) {
    super(nullOutputStream(), false, StandardCharsets.UTF_8);
    this.stream = stream;
    this.before = before;
  }

  private PrintStream target() {
    var cell = RunningCell.ofThisThread();
    return cell == null || cell.session().isClosed() ? before : cell.streams().get(stream);
  }

  @Override
  public void flush() {
    target().flush();
  }

  /** Standard streams belong to the process, so a cell that closes one only flushes it. */
  @Override
  public void close() {
    flush();
  }

  @Override
  public boolean checkError() {
    return target().checkError();
  }

  @Override
  public void write(int oneByte) {
    target().write(oneByte);
  }

  @Override
  public void write(byte[] bytes, int from, int length) {
    target().write(bytes, from, length);
  }

  @Override
  public void write(byte[] bytes) throws IOException {
    target().write(bytes);
  }

  @Override
  public void writeBytes(byte[] bytes) {
    target().writeBytes(bytes);
  }

  @Override
  public void print(boolean value) {
    target().print(value);
  }

  @Override
  public void print(char value) {
    target().print(value);
  }

  @Override
  public void print(int value) {
    target().print(value);
  }

  @Override
  public void print(long value) {
    target().print(value);
  }

  @Override
  public void print(float value) {
    target().print(value);
  }

  @Override
  public void print(double value) {
    target().print(value);
  }

  @Override
  public void print(char[] value) {
    target().print(value);
  }

  @Override
  public void print(String value) {
    target().print(value);
  }

  @Override
  public void print(Object value) {
    target().print(value);
  }

  @Override
  public void println(boolean value) {
    target().println(value);
  }

  @Override
  public void println(char value) {
    target().println(value);
  }

  @Override
  public void println(int value) {
    target().println(value);
  }

  @Override
  public void println(long value) {
    target().println(value);
  }

  @Override
  public void println(float value) {
    target().println(value);
  }

  @Override
  public void println(double value) {
    target().println(value);
  }

  @Override
  public void println(char[] value) {
    target().println(value);
  }

  @Override
  public void println(String value) {
    target().println(value);
  }

  @Override
  public void println(Object value) {
    target().println(value);
  }

  @Override
  public void println() {
    target().println();
  }

  @Override
  public PrintStream printf(String format, Object... values) {
    target().printf(format, values);
    return this;
  }

  @Override
  public PrintStream printf(Locale locale, String format, Object... values) {
    target().printf(locale, format, values);
    return this;
  }

  @Override
  public PrintStream format(String format, Object... values) {
    target().format(format, values);
    return this;
  }

  @Override
  public PrintStream format(Locale locale, String format, Object... values) {
    target().format(locale, format, values);
    return this;
  }

  @Override
  public PrintStream append(CharSequence text) {
    target().append(text);
    return this;
  }

  @Override
  public PrintStream append(CharSequence text, int from, int to) {
    target().append(text, from, to);
    return this;
  }

  @Override
  public PrintStream append(char letter) {
    target().append(letter);
    return this;
  }
}
