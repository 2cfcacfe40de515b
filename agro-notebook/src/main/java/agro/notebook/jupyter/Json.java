package agro.notebook.jupyter;

import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParseException;
import com.google.gson.JsonParser;
import com.google.gson.JsonPrimitive;
import com.google.gson.Strictness;
import com.google.gson.stream.JsonReader;
import com.google.gson.stream.JsonToken;
import java.io.IOException;
import java.io.StringReader;

/**
 * Reads and writes JSON trees. Trees and not objects built by reflection: they cost less at the
 * start, and a field that is missing or of the wrong kind takes the protocol's default.
 */
final class Json {

  private Json() {}

  /**
   * Parses a text that must be one JSON object.
   *
   * @param text the text
   * @return the object
   * @throws JsonParseException when it is anything else
   */
  static JsonObject object(String text) {
    if (parse(text) instanceof JsonObject object) {
      return object;
    }
    throw new JsonParseException("not an object");
  }

  /**
   * Parses one JSON value, by the letter of RFC 8259.
   *
   * @param text the text
   * @return the value
   * @throws JsonParseException when it is not JSON or something follows it
   */
  static JsonElement parse(String text) {
    try (var reader = new JsonReader(new StringReader(text))) {
      reader.setStrictness(Strictness.STRICT);
      var value = JsonParser.parseReader(reader);
      if (reader.peek() != JsonToken.END_DOCUMENT) {
        throw new JsonParseException("something follows the value");
      }
      return value;
    } catch (IOException e) {
      throw new JsonParseException(e);
    }
  }

  static String text(JsonObject object, String name, String otherwise) {
    var isText = object.get(name) instanceof JsonPrimitive value && value.isString();
    return isText ? object.get(name).getAsString() : otherwise;
  }

  static boolean flag(JsonObject object, String name, boolean otherwise) {
    var isFlag = object.get(name) instanceof JsonPrimitive value && value.isBoolean();
    return isFlag ? object.get(name).getAsBoolean() : otherwise;
  }

  static int number(JsonObject object, String name, int otherwise) {
    if (object.get(name) instanceof JsonPrimitive value && value.isNumber()) {
      var number = value.getAsDouble();
      return Double.isFinite(number) ? (int) number : otherwise;
    }
    return otherwise;
  }

  static JsonObject child(JsonObject object, String name) {
    return object.get(name) instanceof JsonObject child ? child : new JsonObject();
  }

  static JsonArray texts(Iterable<String> texts) {
    var array = new JsonArray();
    texts.forEach(array::add);
    return array;
  }

  /** A reply's content that begins with a status. */
  static JsonObject status(String status) {
    var content = new JsonObject();
    content.addProperty("status", status);
    return content;
  }

  static JsonObject with(String name, JsonElement value) {
    var object = new JsonObject();
    object.add(name, value);
    return object;
  }
}
