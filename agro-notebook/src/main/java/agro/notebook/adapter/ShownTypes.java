package agro.notebook.adapter;

import agro.notebook.display.MimeBundle;
import agro.notebook.display.Renderers;
import java.awt.Image;
import java.util.Arrays;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What other kernels are to show our way. Pictures they can show themselves, and collections and
 * records only concern us when they are made of our types.
 */
final class ShownTypes {

  /** The formats that we may give. */
  static final String[] FORMATS = {
    MimeBundle.HTML, MimeBundle.MARKDOWN, MimeBundle.LATEX, MimeBundle.PNG, MimeBundle.TEXT
  };

  private static final String OURS = "agro.";

  private ShownTypes() {}

  /**
   * The types to register.
   *
   * @return classes and interfaces
   */
  static List<Class<?>> all() {
    return Renderers.standard().types().stream()
        .filter(type -> type != Object.class && !Image.class.isAssignableFrom(type))
        .toList();
  }

  /**
   * A value in all its formats.
   *
   * @param value a value of one of the registered types
   * @return content by media type; never throws
   */
  static Map<String, String> formats(Object value) {
    if (!isOurs(value)) {
      return Map.of(MimeBundle.TEXT, plain(value));
    }
    var formats = new LinkedHashMap<>(Renderers.standard().render(value).data());
    formats.keySet().retainAll(Arrays.asList(FORMATS));
    return formats;
  }

  /** As the other kernel would print it, unless that fails: such an error can end its threads. */
  private static String plain(Object value) {
    try {
      return String.valueOf((Object) value.toString());
    } catch (Throwable itsOwnTrouble) {
      return Renderers.standard().render(value).plainText();
    }
  }

  private static boolean isOurs(Object value) {
    var special =
        Renderers.standard().types().stream()
            .anyMatch(type -> !isOfEverybody(type) && type.isInstance(value));
    return special || value.getClass().getName().startsWith(OURS) || holdsOurs(value);
  }

  private static boolean isOfEverybody(Class<?> type) {
    return type.isArray() || type.getName().startsWith("java.");
  }

  private static boolean holdsOurs(Object value) {
    try {
      return inside(value)
          .limit(1)
          .anyMatch(one -> one != null && one.getClass().getName().startsWith(OURS));
    } catch (RuntimeException | Error itsOwnTrouble) {
      return false;
    }
  }

  private static Stream<?> inside(Object value) {
    if (value instanceof Object[] array) {
      return Stream.of(array);
    }
    if (value instanceof Optional<?> optional) {
      return optional.stream();
    }
    return value instanceof Map<?, ?> map
        ? map.values().stream()
        : value instanceof Collection<?> collection ? collection.stream() : Stream.empty();
  }
}
