package agro.notebook.display;

import java.lang.reflect.InvocationTargetException;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;

/** Reads records by their components. */
final class RecordParts {

  private RecordParts() {}

  /** Stands for a component that could not be read. */
  private record Unreadable(String sentence) {
    @Override
    public String toString() {
      return sentence;
    }
  }

  /**
   * The components of a record.
   *
   * @param value a record
   * @return value by name, in order; a sentence stands for a component that cannot be read
   */
  static Map<String, Object> of(Record value) {
    var parts = new LinkedHashMap<String, Object>();
    for (var component : value.getClass().getRecordComponents()) {
      Object part;
      try {
        var accessor = component.getAccessor();
        accessor.setAccessible(true);
        part = accessor.invoke(value);
      } catch (InvocationTargetException thrown) {
        Interruption.passOn(thrown.getCause());
        part =
            new Unreadable("(could not be read: " + thrown.getCause().getClass().getName() + ")");
      } catch (ReflectiveOperationException | RuntimeException unreadable) {
        part = new Unreadable("(could not be read)");
      }
      parts.put(component.getName(), part);
    }
    return parts;
  }

  /**
   * Whether the text of a record is the one that the compiler makes.
   *
   * @param value the record
   * @param text what its toString gave
   * @return false for a record that says itself how it looks
   */
  static boolean isOrdinary(Record value, String text) {
    return text != null
        && text.startsWith(value.getClass().getSimpleName() + "[")
        && value.getClass().getRecordComponents().length > 0;
  }

  /**
   * A Java name in words: {@code meanCelsius} becomes "Mean celsius".
   *
   * @param name the name
   * @return at least one word
   */
  static String words(String name) {
    var words =
        name.replaceAll("(?<=[\\p{Ll}0-9])(?=\\p{Lu})", " ")
            .replace('_', ' ')
            .strip()
            .toLowerCase(Locale.ROOT);
    return words.isEmpty()
        ? "Record"
        : words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
  }
}
