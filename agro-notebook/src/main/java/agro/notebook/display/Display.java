package agro.notebook.display;

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
    var id = "display-" + COUNT.incrementAndGet();
    var bundle = render(value);
    var sink = SINK.get();
    if (sink == null) {
      System.out.println(bundle.plainText());
    } else if (!bundle.isEmpty()) {
      sink.show(id, bundle);
    }
    LAST.set(id);
    return id;
  }

  /**
   * Replaces something that was shown.
   *
   * @param id the name that {@link #display} gave
   * @param value what to show instead
   */
  public static void updateDisplay(String id, Object value) {
    Objects.requireNonNull(id, "id");
    var bundle = render(value);
    var sink = SINK.get();
    if (sink == null) {
      System.out.println(bundle.plainText());
    } else {
      sink.update(id, bundle);
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
   * Leads what this thread, and every thread that it starts from now on, shows to a sink.
   *
   * @param sink the sink, or null for the standard output
   */
  public static void connect(DisplaySink sink) {
    if (sink == null) {
      SINK.remove();
    } else {
      SINK.set(sink);
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
