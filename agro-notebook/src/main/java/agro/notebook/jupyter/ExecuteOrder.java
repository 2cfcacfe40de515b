package agro.notebook.jupyter;

import com.google.gson.JsonObject;
import com.google.gson.JsonPrimitive;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * What an {@code execute_request} asks for, with the protocol's defaults for what it leaves out.
 *
 * @param code the cell
 * @param silent whether nothing is published and nothing counted
 * @param keepsHistory whether the cell is counted and remembered
 * @param expressions what to evaluate afterwards, by name
 * @param allowsInput whether the front end can be asked for input
 * @param stopsOnError whether waiting cells are given up when this one fails
 */
record ExecuteOrder(
    String code,
    boolean silent,
    boolean keepsHistory,
    Map<String, String> expressions,
    boolean allowsInput,
    boolean stopsOnError) {

  static ExecuteOrder of(JsonObject content) {
    if (!(content.get("code") instanceof JsonPrimitive code) || !code.isString()) {
      throw new IllegalArgumentException("an execute_request without \"code\"");
    }
    var silent = Json.flag(content, "silent", false);
    var expressions = new LinkedHashMap<String, String>();
    Json.child(content, "user_expressions")
        .entrySet()
        .forEach(entry -> expressions.put(entry.getKey(), expression(entry.getValue())));
    return new ExecuteOrder(
        code.getAsString(),
        silent,
        !silent && Json.flag(content, "store_history", true),
        expressions,
        Json.flag(content, "allow_stdin", true),
        Json.flag(content, "stop_on_error", true));
  }

  private static String expression(Object value) {
    return value instanceof JsonPrimitive text ? text.getAsString() : String.valueOf(value);
  }
}
