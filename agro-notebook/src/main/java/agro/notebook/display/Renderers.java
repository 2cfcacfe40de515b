package agro.notebook.display;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.ServiceConfigurationError;
import java.util.ServiceLoader;
import java.util.stream.Collectors;

/** All renderers together. Rendering never throws: trouble is shown as a sentence. */
public final class Renderers {

  /** When so many services are broken, looking for more could go on for ever. */
  private static final int MOST_FAILURES = 100;

  private static final class Standard {
    private static volatile Renderers instance = of(found());

    private static List<RichRenderer<?>> found() {
      var all = services(Renderers.class.getClassLoader());
      all.addAll(BuiltInRenderers.all());
      return all;
    }
  }

  @SuppressWarnings("rawtypes")
  private static List<RichRenderer<?>> services(ClassLoader loader) {
    var all = new ArrayList<RichRenderer<?>>();
    var found = ServiceLoader.load(RichRenderer.class, loader).iterator();
    var more = true;
    for (var failures = 0; more && failures < MOST_FAILURES; ) {
      try {
        more = found.hasNext();
        if (more) {
          var renderer = found.next();
          Objects.requireNonNull(renderer.type(), "type");
          all.add(renderer);
        }
      } catch (ServiceConfigurationError | RuntimeException | LinkageError broken) {
        tell(broken);
        failures++;
      }
    }
    return all;
  }

  /** A renderer whose own type is not on the class path is not needed, and not worth a word. */
  private static void tell(Throwable broken) {
    if (!(broken instanceof NoClassDefFoundError)
        && !(broken.getCause() instanceof NoClassDefFoundError)) {
      System.err.println("A renderer could not be loaded: " + broken.getMessage());
    }
  }

  private final List<RichRenderer<?>> renderers;

  private Renderers(List<RichRenderer<?>> renderers) {
    this.renderers = List.copyOf(renderers);
  }

  /**
   * The renderers found as services, then the built-in ones.
   *
   * @return the same set each time, unless {@link #addServicesOf} has found more
   */
  public static Renderers standard() {
    return Standard.instance;
  }

  /**
   * Looks for renderers in jars that were added to the class path later. Those that are there
   * already stay as they are.
   *
   * @param loader a class loader that sees the added jars
   */
  public static synchronized void addServicesOf(ClassLoader loader) {
    var known = Standard.instance.renderers;
    var types = known.stream().map(Object::getClass).collect(Collectors.toSet());
    var all = services(loader);
    all.removeIf(renderer -> types.contains(renderer.getClass()));
    if (!all.isEmpty()) {
      all.addAll(known);
      Standard.instance = of(all);
    }
  }

  /**
   * A set of renderers.
   *
   * @param renderers the renderers; of two for the same type the earlier one is asked
   * @return the set
   */
  public static Renderers of(List<RichRenderer<?>> renderers) {
    return new Renderers(renderers);
  }

  /**
   * The types that are shown in a way of their own.
   *
   * @return each type once
   */
  public List<Class<?>> types() {
    return renderers.stream().<Class<?>>map(RichRenderer::type).distinct().toList();
  }

  /**
   * Shows a value.
   *
   * @param value any value, also null
   * @return a bundle; empty only when the renderer of the type wants nothing shown
   */
  public MimeBundle render(Object value) {
    if (value == null) {
      return MimeBundle.text("null");
    }
    try {
      if (value instanceof MimeBundle bundle) {
        return withText(bundle, value);
      }
      var renderer = mostSpecific(value);
      return renderer.isPresent()
          ? withText(rendered(renderer.get(), value), value)
          : MimeBundle.text(PlainText.of(value));
    } catch (Throwable trouble) {
      return MimeBundle.text(PlainText.trouble(value, trouble));
    }
  }

  /**
   * Whether there is a renderer for a value, so that it may have more forms than plain text.
   *
   * @param value any value, also null
   * @return false when it is shown as what its toString says
   */
  boolean know(Object value) {
    return value instanceof MimeBundle || (value != null && mostSpecific(value).isPresent());
  }

  private static <T> MimeBundle rendered(RichRenderer<T> renderer, Object value) {
    return renderer.render(renderer.type().cast(value));
  }

  /** Every value can be read as plain text, also when its renderer did not think of that. */
  private static MimeBundle withText(MimeBundle bundle, Object value) {
    if (bundle == null) {
      return MimeBundle.text(PlainText.of(value));
    }
    if (bundle.isEmpty() || bundle.get(MimeBundle.TEXT).isPresent()) {
      return bundle;
    }
    var text =
        bundle
            .get(MimeBundle.HTML)
            .map(Markup::words)
            .or(() -> bundle.get(MimeBundle.MARKDOWN))
            .or(() -> bundle.get(MimeBundle.LATEX))
            .or(() -> bundle.get(MimeBundle.JSON))
            .orElse("(" + String.join(", ", bundle.data().keySet()) + ")");
    return bundle.with(MimeBundle.TEXT, text);
  }

  private Optional<RichRenderer<?>> mostSpecific(Object value) {
    RichRenderer<?> best = null;
    for (var renderer : renderers) {
      var fits = renderer.type().isInstance(value);
      if (fits && (best == null || isNarrower(renderer.type(), best.type()))) {
        best = renderer;
      }
    }
    return Optional.ofNullable(best);
  }

  private static boolean isNarrower(Class<?> type, Class<?> other) {
    return type != other && other.isAssignableFrom(type);
  }
}
