package agro.notebook.display;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.ServiceConfigurationError;
import java.util.ServiceLoader;

/** All renderers together. Rendering never throws: trouble is shown as a sentence. */
public final class Renderers {

  private static final class Standard {
    private static final Renderers INSTANCE = of(found());

    @SuppressWarnings("rawtypes")
    private static List<RichRenderer<?>> found() {
      var all = new ArrayList<RichRenderer<?>>();
      var loader = Renderers.class.getClassLoader();
      for (var service : ServiceLoader.load(RichRenderer.class, loader).stream().toList()) {
        try {
          all.add(service.get());
        } catch (ServiceConfigurationError broken) {
          System.err.println("A renderer could not be loaded: " + broken.getMessage());
        }
      }
      all.addAll(BuiltInRenderers.all());
      return all;
    }
  }

  private final List<RichRenderer<?>> renderers;

  private Renderers(List<RichRenderer<?>> renderers) {
    this.renderers = List.copyOf(renderers);
  }

  /**
   * The renderers found as services, then the built-in ones.
   *
   * @return the same set each time
   */
  public static Renderers standard() {
    return Standard.INSTANCE;
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
   * Shows a value.
   *
   * @param value any value, also null
   * @return a bundle; empty only when the renderer of the type wants nothing shown
   */
  public MimeBundle render(Object value) {
    if (value == null) {
      return MimeBundle.text("null");
    }
    if (value instanceof MimeBundle bundle) {
      return bundle;
    }
    try {
      var renderer = mostSpecific(value);
      return renderer.isPresent()
          ? rendered(renderer.get(), value)
          : MimeBundle.text(PlainText.of(value));
    } catch (Throwable trouble) {
      return MimeBundle.text(PlainText.trouble(value, trouble));
    }
  }

  private static <T> MimeBundle rendered(RichRenderer<T> renderer, Object value) {
    return renderer.render(renderer.type().cast(value));
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
