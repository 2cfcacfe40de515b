package agro.notebook.run;

import agro.notebook.kernel.DeclaredVariable;
import agro.report.InputProblem;
import agro.report.SourceLocation;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * Values given to a notebook from outside. They are declared again, each with the type it has in
 * the cell tagged {@code parameters}, in a cell of their own right behind it.
 */
final class InjectedParameters {

  /** The tag of the cell whose variables may be set. */
  static final String DECLARING = "parameters";

  /** The tag of the cell that sets them. */
  static final String INJECTED = "injected-parameters";

  private static final String TYPES =
      "String, boolean, int, long, double, LocalDate (2026-05-01) or Path";

  private final String notebook;
  private final Map<String, String> values;

  InjectedParameters(String notebook, Map<String, String> values) {
    this.notebook = notebook;
    this.values = values;
  }

  /** Whether there is nothing to set. */
  boolean isEmpty() {
    return values.isEmpty();
  }

  static boolean isDeclaredIn(NotebookCell cell) {
    return cell.content() == NotebookCell.Content.CODE && cell.tags().contains(DECLARING);
  }

  /**
   * Checks names and values without running anything. What {@code var} stands for is not known yet.
   *
   * @param declared what the cell tagged {@code parameters} declares
   * @throws InputProblem when a name is not declared or a value does not fit its type
   */
  void check(List<DeclaredVariable> declared) {
    var settled = declared.stream().filter(each -> !each.type().equals("var")).toList();
    for (var value : values.entrySet()) {
      settled.stream()
          .filter(each -> each.name().equals(value.getKey()))
          .forEach(each -> expression(each.name(), value.getValue(), each.type()));
    }
  }

  /**
   * The cell that sets the parameters.
   *
   * @param declared what the cell tagged {@code parameters} declared
   * @return a cell of code
   * @throws InputProblem when a name is not declared or a value does not fit its type
   */
  NotebookCell cell(List<DeclaredVariable> declared) {
    var types =
        declared.stream()
            .collect(Collectors.toMap(DeclaredVariable::name, DeclaredVariable::type, (a, b) -> b));
    var code =
        values.entrySet().stream()
            .map(value -> declaration(value.getKey(), value.getValue(), types, declared))
            .collect(Collectors.joining("\n"));
    return NotebookCell.code(INJECTED, INJECTED, code);
  }

  private String declaration(
      String name, String value, Map<String, String> types, List<DeclaredVariable> declared) {
    var type = types.get(name);
    if (type == null) {
      throw unknown(name, declared);
    }
    return type + " " + name + " = " + expression(name, value, type) + ";";
  }

  private InputProblem unknown(String name, List<DeclaredVariable> declared) {
    var names =
        declared.stream()
            .map(each -> each.name() + " (" + each.type() + ")")
            .collect(Collectors.joining(", "));
    return problem("this notebook has no parameter \"" + name + "\"")
        .expected(names.isEmpty() ? "no parameter at all" : "one of: " + names)
        .because("a misspelt parameter would change nothing, unnoticed")
        .mend(names.isEmpty() ? "leave it out" : "use one of these names");
  }

  /**
   * What stops a run when values are given and no cell declares parameters.
   *
   * @return the problem
   */
  InputProblem noneDeclared() {
    return unknown(String.join(", ", values.keySet()), List.of());
  }

  private String expression(String name, String value, String type) {
    var simple = type.substring(type.lastIndexOf('.') + 1);
    try {
      return switch (simple) {
        case "String" -> quoted(value);
        case "Path" -> "java.nio.file.Path.of(" + quoted(value) + ")";
        case "LocalDate" -> "java.time.LocalDate.parse(" + quoted(LocalDate.parse(value)) + ")";
        case "int", "Integer" -> String.valueOf(Integer.parseInt(value));
        case "long", "Long" -> Long.parseLong(value) + "L";
        case "double", "Double" -> number(value);
        case "boolean", "Boolean" -> truth(value);
        default -> throw notSettable(name, type);
      };
    } catch (NumberFormatException | DateTimeParseException unfit) {
      throw problem("the value \"" + value + "\" of " + name + " is no " + simple)
          .expected("a " + simple + ", numbers with a decimal point, dates as 2026-05-01")
          .because("the notebook declares " + name + " as " + simple)
          .mend("write " + name + "= followed by such a value");
    }
  }

  private InputProblem notSettable(String name, String type) {
    return problem("the parameter " + name + " is of type " + type)
        .expected("a parameter of type " + TYPES)
        .because("values of other types cannot be written as text")
        .mend("declare it as one of these in the notebook and convert it in a later cell");
  }

  private static String number(String value) {
    if (!value.matches("[+-]?(\\d+\\.?\\d*|\\.\\d+)([eE][+-]?\\d+)?")) {
      throw new NumberFormatException(value);
    }
    return String.valueOf(Double.parseDouble(value));
  }

  private static String truth(String value) {
    if (!value.equals("true") && !value.equals("false")) {
      throw new NumberFormatException(value);
    }
    return value;
  }

  private static String quoted(Object value) {
    var text = new StringBuilder("\"");
    for (var c : value.toString().toCharArray()) {
      switch (c) {
        case '"', '\\' -> text.append('\\').append(c);
        case '\n' -> text.append("\\n");
        case '\r' -> text.append("\\r");
        case '\t' -> text.append("\\t");
        default -> text.append(c);
      }
    }
    return text.append('"').toString();
  }

  private InputProblem.Found problem(String read) {
    return InputProblem.at(SourceLocation.file(notebook), read);
  }
}
