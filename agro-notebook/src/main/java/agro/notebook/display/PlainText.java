package agro.notebook.display;

import java.lang.reflect.Array;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Iterator;
import java.util.Map;
import java.util.Optional;

/** Values in plain text: what toString says, except where that would tell a reader nothing. */
final class PlainText {

  private static final int HEAD = 20;
  private static final int TAIL = 3;
  private static final int DEEPEST = 4;

  private PlainText() {}

  /**
   * A value in words.
   *
   * @param value any value, also null
   * @return the text; long arrays and collections are cut in the middle and say how many there are
   */
  static String of(Object value) {
    return of(value, 0);
  }

  private static String of(Object value, int depth) {
    if (value == null) {
      return "null";
    }
    if (value.getClass().isArray()) {
      return array(value, depth);
    }
    if (depth < DEEPEST && isPlainCollection(value)) {
      return listed("[", ((Collection<?>) value).iterator(), ((Collection<?>) value).size(), depth);
    }
    if (depth < DEEPEST && value instanceof Map<?, ?> map && isOfTheLibrary(value)) {
      return map(map, depth);
    }
    if (value instanceof Optional<?> optional) {
      return optional.map(inside -> of(inside, depth + 1)).orElse("(nothing)");
    }
    var text = String.valueOf(value);
    return text == null ? "(its toString gave null)" : text;
  }

  private static boolean isPlainCollection(Object value) {
    return value instanceof Collection<?> && isOfTheLibrary(value);
  }

  /** Collections of other libraries know better how they look. */
  private static boolean isOfTheLibrary(Object value) {
    return value.getClass().getName().startsWith("java.util.");
  }

  private static String array(Object array, int depth) {
    var size = Array.getLength(array);
    if (depth == 0 && array instanceof Object[] rows && isTable(rows)) {
      return String.join("\n", Arrays.stream(rows).limit(200).map(row -> of(row, 1)).toList())
          + (size > 200 ? "\n... (" + size + " rows)" : "");
    }
    if (depth >= DEEPEST) {
      return "[...]";
    }
    var elements = new ArrayElements(array, size);
    return listed("[", elements.iterator(), size, depth);
  }

  private static boolean isTable(Object[] rows) {
    return rows.length > 0
        && Arrays.stream(rows).allMatch(row -> row != null && row.getClass().isArray());
  }

  private static String map(Map<?, ?> map, int depth) {
    var entries =
        map.entrySet().stream()
            .limit(HEAD + TAIL + 1L)
            .map(entry -> of(entry.getKey(), depth + 1) + "=" + of(entry.getValue(), depth + 1))
            .toList();
    var cut = map.size() > entries.size() ? ", ... (" + map.size() + " entries)" : "";
    return "{" + String.join(", ", entries) + cut + "}";
  }

  private static String listed(String open, Iterator<?> values, int size, int depth) {
    var words = new ArrayList<String>();
    var cut = size > HEAD + TAIL + 1;
    for (var index = 0; values.hasNext(); index++) {
      var value = values.next();
      if (!cut || index < HEAD || index >= size - TAIL) {
        words.add(of(value, depth + 1));
      } else if (index == HEAD) {
        words.add("...");
      }
    }
    return open + String.join(", ", words) + "]" + (cut ? " (" + size + " values)" : "");
  }

  /**
   * The sentence that stands for a value that cannot be shown.
   *
   * @param value the value
   * @param trouble what its toString or its renderer threw
   * @return one sentence
   */
  static String trouble(Object value, Throwable trouble) {
    String message;
    try {
      message = trouble.getMessage();
    } catch (Throwable worse) {
      message = null;
    }
    return "A value of type "
        + value.getClass().getSimpleName()
        + " could not be shown: "
        + trouble.getClass().getName()
        + (message == null ? "" : ": " + message);
  }

  /** The elements of an array of any type, primitive ones boxed one at a time. */
  private record ArrayElements(Object array, int size) implements Iterable<Object> {
    @Override
    public Iterator<Object> iterator() {
      return new Iterator<>() {
        private int next;

        @Override
        public boolean hasNext() {
          return next < size;
        }

        @Override
        public Object next() {
          return Array.get(array, next++);
        }
      };
    }
  }
}
