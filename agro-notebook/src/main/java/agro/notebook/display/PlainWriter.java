package agro.notebook.display;

import java.lang.reflect.Array;
import java.util.AbstractList;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.RandomAccess;
import java.util.Set;

/**
 * Writes one value in plain text. Looks into arrays, collections, maps and records a few levels
 * deep, notices a value that contains itself, and stops when its room is used up.
 */
final class PlainWriter {

  private static final int HEAD = 20;
  private static final int TAIL = 3;
  private static final int ROWS = 200;
  private static final int DEEPEST = 6;
  private static final int LONGEST_PART = 10_000;
  private static final String LEFT_OUT = "...";

  private final Set<Object> around = Collections.newSetFromMap(new IdentityHashMap<>());
  private int room;

  /**
   * A writer for one value.
   *
   * @param room characters to write, roughly
   */
  PlainWriter(int room) {
    this.room = room;
  }

  /**
   * Writes the value.
   *
   * @param value any value, also null
   * @return the text
   */
  String whole(Object value) {
    var most = room;
    if (value instanceof Object[] rows && isTable(rows)) {
      return PlainText.cut(lines(rows), most);
    }
    return PlainText.cut(of(value, 0), most);
  }

  /**
   * Writes a collection, array or map of which a sample was taken already.
   *
   * @param value the collection, array or map itself
   * @param sample its values or entries
   * @return the text
   */
  String sampled(Object value, Sample sample) {
    var most = room;
    if (!isContainer(value) || (value instanceof Object[] rows && isTable(rows))) {
      return whole(value);
    }
    around.add(value);
    return PlainText.cut(
        value instanceof Map<?, ?>
            ? map(sample.shortened(HEAD + TAIL, 0), 0)
            : listed(sample.shortened(HEAD, TAIL), 0),
        most);
  }

  private String of(Object value, int depth) {
    if (value == null) {
      return "null";
    }
    if (!isContainer(value)) {
      return words(value, depth);
    }
    if (depth >= DEEPEST) {
      return value instanceof Map<?, ?> ? "{...}" : "[...]";
    }
    if (!around.add(value)) {
      return "(itself)";
    }
    try {
      return inside(value, depth);
    } finally {
      around.remove(value);
    }
  }

  private String inside(Object value, int depth) {
    if (value instanceof Map<?, ?> map) {
      return map(Sample.of(map.entrySet(), HEAD + TAIL, 0), depth);
    }
    if (value instanceof Record record) {
      return record(record, depth);
    }
    if (value instanceof Optional<?> optional) {
      return optional.map(inside -> of(inside, depth + 1)).orElse("(nothing)");
    }
    return listed(
        Sample.of(value instanceof Collection<?> values ? values : elements(value), HEAD, TAIL),
        depth);
  }

  private static boolean isContainer(Object value) {
    return value.getClass().isArray()
        || value instanceof Record
        || value instanceof Optional<?>
        || ((value instanceof Collection<?> || value instanceof Map<?, ?>)
            && hasTextOfTheJdk(value));
  }

  /** Collections of other libraries know better how they look. */
  private static boolean hasTextOfTheJdk(Object value) {
    try {
      return value
          .getClass()
          .getMethod("toString")
          .getDeclaringClass()
          .getName()
          .startsWith("java.");
    } catch (ReflectiveOperationException | RuntimeException | LinkageError unreadable) {
      return false;
    }
  }

  private static boolean isTable(Object[] rows) {
    return rows.length > 0
        && Arrays.stream(rows)
            .limit(ROWS)
            .allMatch(row -> row != null && row != rows && row.getClass().isArray());
  }

  private String lines(Object[] rows) {
    around.add(rows);
    var lines = Arrays.stream(rows).limit(ROWS).map(row -> part(row, 1)).toList();
    return String.join("\n", lines)
        + (rows.length > ROWS ? "\n... (" + rows.length + " rows)" : "");
  }

  private String listed(Sample sample, int depth) {
    var words = new ArrayList<String>();
    sample.first().forEach(value -> words.add(part(value, depth + 1)));
    if (sample.trouble() != null) {
      words.add("... (then it failed with " + PlainText.inWords(sample.trouble()) + ")");
    } else if (!sample.complete()) {
      words.add(LEFT_OUT);
    }
    sample.last().forEach(value -> words.add(part(value, depth + 1)));
    return "[" + String.join(", ", words) + "]" + count(sample, "values");
  }

  private static String count(Sample sample, String what) {
    if (sample.trouble() != null) {
      return "";
    }
    if (!sample.isAsLongAsItSays()) {
      return " (its size() says " + sample.size() + ")";
    }
    if (sample.complete()) {
      return "";
    }
    return sample.size() > sample.all().size()
        ? " (" + sample.size() + " " + what + ")"
        : " (more than the " + sample.size() + " that its size() says)";
  }

  private String map(Sample sample, int depth) {
    var words = new ArrayList<String>();
    for (var entry : sample.first()) {
      words.add(
          entry instanceof Map.Entry<?, ?> pair
              ? part(pair.getKey(), depth + 1) + "=" + part(pair.getValue(), depth + 1)
              : "null");
    }
    if (sample.trouble() != null) {
      words.add("... (then it failed with " + PlainText.inWords(sample.trouble()) + ")");
    } else if (!sample.complete()) {
      words.add(LEFT_OUT + count(sample, "entries"));
    }
    return "{"
        + String.join(", ", words)
        + "}"
        + (sample.complete() ? count(sample, "entries") : "");
  }

  private String record(Record record, int depth) {
    var own = record.getClass().getRecordComponents();
    if (Arrays.stream(own).allMatch(part -> isSimple(part.getType()))) {
      return words(record, depth);
    }
    var text = String.valueOf(record);
    if (!RecordParts.isOrdinary(record, text)) {
      return shortened(text, depth);
    }
    var words = new ArrayList<String>();
    RecordParts.of(record).forEach((name, value) -> words.add(name + "=" + part(value, depth + 1)));
    return record.getClass().getSimpleName() + "[" + String.join(", ", words) + "]";
  }

  /** Types whose text is right inside the text that the compiler makes for a record. */
  private static boolean isSimple(Class<?> type) {
    return type.isPrimitive()
        || type.isEnum()
        || type == String.class
        || Number.class.isAssignableFrom(type)
        || type.getName().startsWith("java.time.");
  }

  private String part(Object value, int depth) {
    if (room <= 0) {
      return LEFT_OUT;
    }
    try {
      var text = of(value, depth);
      if (value == null || !isContainer(value)) {
        room -= text.length() + 2;
      }
      return text;
    } catch (RuntimeException | Error trouble) {
      Interruption.passOn(trouble);
      return PlainText.trouble(value, trouble);
    }
  }

  private String words(Object value, int depth) {
    return shortened(SpecialWords.of(value).orElseGet(() -> String.valueOf(value)), depth);
  }

  private static String shortened(String text, int depth) {
    if (text == null) {
      return "(its toString gave null)";
    }
    return depth == 0 || text.length() <= LONGEST_PART
        ? text
        : PlainText.head(text, LONGEST_PART) + "... (" + text.length() + " characters)";
  }

  /** The elements of an array of any type, primitive ones boxed one at a time. */
  static List<Object> elements(Object array) {
    return new ArrayElements(array);
  }

  private static final class ArrayElements extends AbstractList<Object> implements RandomAccess {
    private final Object array;

    ArrayElements(Object array) {
      this.array = array;
    }

    @Override
    public Object get(int index) {
      return Array.get(array, index);
    }

    @Override
    public int size() {
      return Array.getLength(array);
    }
  }
}
