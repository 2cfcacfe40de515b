package agro.notebook.display;

import agro.report.Progress;
import java.util.Objects;
import java.util.concurrent.atomic.AtomicLong;

/**
 * What cells call to show something before they end. In a plain Java program, where nobody listens,
 * the plain text goes to the standard output.
 */
public final class Display {

  private static final InheritableThreadLocal<DisplaySink> SINK = new InheritableThreadLocal<>();
  private static final AtomicLong COUNT = new AtomicLong();
  private static final ThreadLocal<String> LAST = new ThreadLocal<>();

  private Display() {}

  /**
   * Shows a value below what the cell has shown so far.
   *
   * @param value any value, also null
   * @return the name under which {@link #updateDisplay} can replace it
   */
  public static String display(Object value) {
    return show(render(value));
  }

  /**
   * Shows a value below what the cell has shown so far, in some formats only.
   *
   * @param value any value, also null; text and bytes are taken for content of the first format
   * @param mimeTypes media types such as {@code text/html}, in the order of preference
   * @return the name under which {@link #updateDisplay} can replace it
   */
  public static String display(Object value, String... mimeTypes) {
    return show(render(value, mimeTypes));
  }

  private static String show(MimeBundle bundle) {
    var id = newName();
    var sink = SINK.get();
    if (sink == null) {
      System.out.println(bundle.plainText());
    } else if (!bundle.isEmpty()) {
      sink.show(id, bundle);
    }
    LAST.set(id);
    return id;
  }

  /** A name that nothing was shown under. */
  static String newName() {
    return "display-" + COUNT.incrementAndGet();
  }

  /** Where this thread's displays go, or null for the standard output. */
  static DisplaySink sink() {
    return SINK.get();
  }

  /**
   * Replaces something that was shown.
   *
   * @param id the name that {@link #display} gave
   * @param value what to show instead
   */
  public static void updateDisplay(String id, Object value) {
    update(id, render(value));
  }

  /**
   * Replaces something that was shown, in some formats only.
   *
   * @param id the name that {@link #display} gave
   * @param value what to show instead; text and bytes are taken for content of the first format
   * @param mimeTypes media types such as {@code text/html}, in the order of preference
   */
  public static void updateDisplay(String id, Object value, String... mimeTypes) {
    update(id, render(value, mimeTypes));
  }

  private static void update(String id, MimeBundle bundle) {
    Objects.requireNonNull(id, "id");
    var sink = SINK.get();
    if (sink == null) {
      System.out.println(bundle.plainText());
    } else {
      sink.update(id, bundle);
    }
  }

  /**
   * Takes away what the running cell has printed and shown so far.
   *
   * @param wait whether to wait with that until the next output is there, so that nothing flickers
   */
  public static void clearOutput(boolean wait) {
    var sink = SINK.get();
    if (sink != null) {
      sink.clear(wait);
    }
  }

  /**
   * The formats in which a value would be shown.
   *
   * @param value any value, also null
   * @return the bundle
   */
  public static MimeBundle render(Object value) {
    return Renderers.standard().render(value);
  }

  /**
   * Some of the formats in which a value would be shown. Text is taken for content of the formats
   * wanted, so that {@code render("<b>K</b>", "text/html")} is bold; bytes for a file of the first
   * one.
   *
   * @param value any value, also null
   * @param mimeTypes media types such as {@code text/html}, in the order of preference
   * @return the bundle, with plain text besides
   */
  public static MimeBundle render(Object value, String... mimeTypes) {
    return ChosenFormats.of(value, mimeTypes);
  }

  /**
   * Leads what this thread, and every thread that it starts from now on, shows to a sink. Long
   * computations of the library that are given no listener show their progress there too.
   *
   * @param sink the sink, or null for the standard output
   */
  public static void connect(DisplaySink sink) {
    if (sink == null) {
      SINK.remove();
      Progress.listenOnThread(null);
    } else {
      SINK.set(sink);
      Progress.listenOnThread(() -> ProgressBar.passing(sink));
    }
  }

  /**
   * Whether a value is the very name that the last {@link #display} on this thread gave. A cell
   * that ends with such a call has shown what it wanted; the name itself is not worth showing.
   *
   * @param value any value, also null
   * @return true for that name
   */
  @SuppressWarnings("StringEquality")
  public static boolean isLastName(Object value) {
    return value instanceof String && value == LAST.get();
  }
}
