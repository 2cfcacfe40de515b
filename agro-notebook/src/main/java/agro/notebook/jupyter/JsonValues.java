package agro.notebook.jupyter;

import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonNull;
import com.google.gson.JsonObject;
import com.google.gson.JsonPrimitive;
import java.lang.reflect.Array;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Turns plain values of Java into JSON and back. */
final class JsonValues {

  private JsonValues() {}

  /** A map as a JSON object, in its order. */
  static JsonObject object(Map<?, ?> map) {
    var object = new JsonObject();
    map.forEach((key, value) -> object.add(String.valueOf(key), json(value)));
    return object;
  }

  /**
   * A value as JSON. Numbers that JSON does not have become null.
   *
   * @throws IllegalArgumentException for an object that is no plain value
   */
  static JsonElement json(Object value) {
    if (value == null) {
      return JsonNull.INSTANCE;
    }
    if (value instanceof JsonElement element) {
      return element;
    }
    if (value instanceof Number number) {
      return Double.isFinite(number.doubleValue()) || isExact(number)
          ? new JsonPrimitive(number)
          : JsonNull.INSTANCE;
    }
    if (value instanceof Boolean flag) {
      return new JsonPrimitive(flag);
    }
    if (value instanceof CharSequence || value instanceof Character || value instanceof Enum<?>) {
      return new JsonPrimitive(value.toString());
    }
    if (value instanceof Map<?, ?> map) {
      return object(map);
    }
    return list(value);
  }

  private static boolean isExact(Number number) {
    return !(number instanceof Double || number instanceof Float);
  }

  private static JsonArray list(Object value) {
    var array = new JsonArray();
    if (value instanceof Iterable<?> all) {
      all.forEach(each -> array.add(json(each)));
    } else if (value.getClass().isArray()) {
      for (var at = 0; at < Array.getLength(value); at++) {
        array.add(json(Array.get(value, at)));
      }
    } else {
      throw new IllegalArgumentException(
          "a message to the front end holds texts, numbers, true and false, null, maps and lists; "
              + value.getClass().getName()
              + " is none of them");
    }
    return array;
  }

  /** A JSON object as a map that cannot be changed, in its order. */
  static Map<String, Object> map(JsonObject object) {
    var map = new LinkedHashMap<String, Object>();
    object.entrySet().forEach(entry -> map.put(entry.getKey(), java(entry.getValue())));
    return Collections.unmodifiableMap(map);
  }

  private static Object java(JsonElement element) {
    if (element instanceof JsonObject object) {
      return map(object);
    }
    if (element instanceof JsonArray array) {
      List<Object> list = new ArrayList<>();
      array.forEach(each -> list.add(java(each)));
      return Collections.unmodifiableList(list);
    }
    if (element instanceof JsonPrimitive primitive) {
      return primitive.isBoolean()
          ? (Object) primitive.getAsBoolean()
          : primitive.isNumber() ? number(primitive.getAsString()) : primitive.getAsString();
    }
    return null;
  }

  /** A whole number as a long where it fits, any other as a double. */
  private static Number number(String text) {
    try {
      return Long.valueOf(text);
    } catch (NumberFormatException notWhole) {
      return Double.valueOf(text);
    }
  }
}
