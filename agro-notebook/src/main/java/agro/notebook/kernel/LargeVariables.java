package agro.notebook.kernel;

import java.lang.reflect.Array;
import java.lang.reflect.Field;
import java.util.Collection;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Which variables hold most, for a reader who has run out of memory. An estimate from the lengths
 * of arrays and the sizes of the JDK's collections; no code of the reader is asked.
 */
final class LargeVariables {

  private static final long BYTES_OF_ENTRY = 32;
  private static final int DEPTH = 3;
  private static final int LOOKED_INTO = 1_000;
  private static final int NAMED = 3;

  private record Held(String name, long bytes) {}

  private LargeVariables() {}

  /**
   * What a reader can do who has run out of memory.
   *
   * @param fields the variables by name
   * @return a sentence without a full stop
   */
  static String advice(Map<String, Field> fields) {
    var largest =
        fields.entrySet().stream()
            .flatMap(each -> held(each.getKey(), each.getValue()).stream())
            .filter(held -> held.bytes() >= 1 << 20)
            .sorted(Comparator.comparingLong(Held::bytes).reversed())
            .limit(NAMED)
            .map(held -> held.name() + " (about " + (held.bytes() >> 20) + " MB)")
            .collect(Collectors.joining(", "));
    return "the memory of this process, "
        + (Runtime.getRuntime().maxMemory() >> 20)
        + " MB, is used up; set variables that you no longer need to null"
        + (largest.isEmpty() ? "" : ", the largest are " + largest)
        + ", or start Java with more, for example -Xmx4g";
  }

  private static Optional<Held> held(String name, Field field) {
    try {
      var value = field.get(null);
      var seen = new IdentityHashMap<Object, Boolean>();
      return Optional.of(new Held(name, bytes(value, DEPTH, seen)));
    } catch (IllegalAccessException | RuntimeException | LinkageError notReadable) {
      return Optional.empty();
    }
  }

  private static long bytes(Object value, int depth, IdentityHashMap<Object, Boolean> seen) {
    if (value == null || depth == 0 || seen.put(value, true) != null) {
      return 0;
    }
    if (value.getClass().isArray()) {
      return value instanceof Object[] parts
          ? 4L * parts.length + parts(List.of(), parts, depth, seen)
          : Array.getLength(value) * bytesOf(value.getClass().getComponentType());
    }
    if (value instanceof StringBuilder || value instanceof String) {
      return ((CharSequence) value).length();
    }
    if (!value.getClass().getName().startsWith("java.util.")) {
      return 0;
    }
    if (value instanceof Map<?, ?> map) {
      return BYTES_OF_ENTRY * map.size() + parts(map.values(), null, depth, seen);
    }
    return value instanceof Collection<?> many
        ? BYTES_OF_ENTRY * many.size() + parts(many, null, depth, seen)
        : 0;
  }

  private static long parts(
      Collection<?> many, Object[] array, int depth, IdentityHashMap<Object, Boolean> seen) {
    var size = array == null ? many.size() : array.length;
    var stream = array == null ? many.stream() : java.util.Arrays.stream(array);
    var sample = stream.limit(LOOKED_INTO).mapToLong(part -> bytes(part, depth - 1, seen)).sum();
    return size <= LOOKED_INTO ? sample : sample / LOOKED_INTO * size;
  }

  private static long bytesOf(Class<?> primitive) {
    return primitive == long.class || primitive == double.class
        ? 8
        : primitive == int.class || primitive == float.class
            ? 4
            : primitive == short.class || primitive == char.class ? 2 : 1;
  }
}
