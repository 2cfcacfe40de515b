package agro.notebook.kernel;

import java.lang.reflect.Field;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import jdk.jshell.JShell;
import jdk.jshell.VarSnippet;

/**
 * Keeps the values of variables when their holder class has to be made anew, which happens to every
 * variable that depends on a declaration whose shape changed. Only a value whose own class was
 * replaced cannot be kept.
 */
final class VariableGuard {

  private final JShell shell;
  private final SnippetControl control;
  private final Map<String, Field> fields = new HashMap<>();

  VariableGuard(JShell shell, SnippetControl control) {
    this.shell = shell;
    this.control = control;
  }

  /**
   * Remembers where a variable that was just declared is held.
   *
   * @param variable a valid variable
   */
  void declared(VarSnippet variable) {
    find(variable).ifPresent(field -> fields.put(variable.name(), field));
  }

  /**
   * Carries the value of a variable over to its new holder, if it has one.
   *
   * @param variable a valid variable that depends on a change
   * @return false when the variable had a value that could not be carried over
   */
  boolean carriedOver(VarSnippet variable) {
    var before = fields.get(variable.name());
    var now = find(variable).orElse(null);
    if (now == null) {
      return true;
    }
    fields.put(variable.name(), now);
    return before == null || before.equals(now) || copied(before, now);
  }

  /**
   * Forgets a variable and sets it to null, so that its value does not outlive it.
   *
   * @param variable a variable that was declared
   */
  void clear(VarSnippet variable) {
    var field = fields.remove(variable.name());
    try {
      if (field != null && !field.getType().isPrimitive()) {
        field.set(null, null);
      }
    } catch (IllegalAccessException | LinkageError gone) {
      return;
    }
  }

  /**
   * Where the variables are held.
   *
   * @return the fields by name of the variable
   */
  Map<String, Field> fields() {
    return Map.copyOf(fields);
  }

  private static boolean copied(Field from, Field to) {
    try {
      var value = from.get(null);
      if (value == null) {
        return true;
      }
      if (to.getType().isPrimitive()
          ? from.getType() != to.getType()
          : !to.getType().isInstance(value)) {
        return false;
      }
      to.set(null, value);
      return true;
    } catch (IllegalAccessException | LinkageError inaccessible) {
      return false;
    }
  }

  private Optional<Field> find(VarSnippet variable) {
    try {
      shell.varValue(variable);
    } catch (IllegalArgumentException | IllegalStateException notValid) {
      return Optional.empty();
    }
    return Optional.ofNullable(control.takeField());
  }
}
