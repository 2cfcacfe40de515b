package agro.notebook.insight;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/** Hints to names that nobody has declared. */
final class NameSlips {

  private static final Map<String, String> TYPES_OF_OTHERS =
      Map.of(
          "string", "String", "str", "String", "bool", "boolean", "Int", "int", "integer", "int",
          "number", "double", "Float64", "double", "real", "double", "Char", "char", "decimal",
          "double");
  private static final Map<String, String> METHODS_OF_OTHERS =
      Map.of(
          "print",
          "System.out.println",
          "println",
          "System.out.println",
          "printf",
          "System.out.printf",
          "len",
          "length() or size() of the object",
          "sqrt",
          "Math.sqrt",
          "abs",
          "Math.abs",
          "max",
          "Math.max",
          "min",
          "Math.min",
          "round",
          "Math.round",
          "exp",
          "Math.exp");
  private static final Pattern PACKAGE = Pattern.compile("package (\\S+) does not exist");
  private static final int MOST_IMPORTS = 3;

  private final Surroundings surroundings;

  NameSlips(Surroundings surroundings) {
    this.surroundings = surroundings;
  }

  Optional<String> hint(CompilerSlip slip) {
    if (slip.is("doesnt.exist")) {
      var name = PACKAGE.matcher(slip.message());
      return name.find() ? missingPackage(slip, name.group(1)) : Optional.empty();
    }
    if (!slip.code().startsWith("compiler.err.cant.resolve") || slip.symbol().isEmpty()) {
      return Optional.empty();
    }
    return switch (slip.symbolKind()) {
      case "class" -> missingType(slip);
      case "method" -> missingMethod(slip);
      default -> missingVariable(slip);
    };
  }

  private Optional<String> missingType(CompilerSlip slip) {
    var name = slip.symbol();
    if (TYPES_OF_OTHERS.containsKey(name)) {
      return Optional.of("The type is called " + TYPES_OF_OTHERS.get(name) + " in Java.");
    }
    var inPackage = slip.detail("location").startsWith("package ");
    var imports = surroundings.index().typesNamed(name);
    if (!imports.isEmpty() && !inPackage) {
      return Optional.of(importing(imports));
    }
    var near =
        Spelling.nearest(
            name,
            surroundings.namesAt(slip.text(), slip.symbolStart()).stream()
                .filter(NameSlips::isTypeName)
                .toList());
    if (!near.isEmpty()) {
      return Optional.of("Did you mean " + either(near) + "?");
    }
    if (!imports.isEmpty()) {
      return Optional.of(importing(imports));
    }
    var elsewhere = Spelling.nearest(name, surroundings.index().simpleNames());
    return Optional.of(
        elsewhere.isEmpty()
            ? "No type "
                + name
                + " is known. If another cell declares it, run that cell first;"
                + " if a library brings it, the library has to be added."
            : "Did you mean "
                + elsewhere.get(0)
                + "? "
                + importing(surroundings.index().typesNamed(elsewhere.get(0))));
  }

  private static boolean isTypeName(String name) {
    return Character.isUpperCase(name.codePointAt(0));
  }

  private static String importing(List<String> fullNames) {
    var lines = fullNames.stream().limit(MOST_IMPORTS).map(name -> "import " + name + ";").toList();
    return "Put " + either(lines) + " before it.";
  }

  private static String either(List<String> choices) {
    return String.join(" or ", choices);
  }

  private Optional<String> missingMethod(CompilerSlip slip) {
    var name = slip.symbol();
    var at = slip.symbolStart();
    var names = surroundings.namesAt(slip.text(), at);
    var afterDot = slip.before(at) == '.';
    if (names.contains(name) || (name.equals("length") && slip.detail("location").endsWith("[]"))) {
      return Optional.of(name + " is no method here: write it without parentheses.");
    }
    var near = Spelling.nearest(name, names);
    if (!near.isEmpty()) {
      return Optional.of("Did you mean " + either(near) + "?");
    }
    if (!afterDot && METHODS_OF_OTHERS.containsKey(name)) {
      return Optional.of("In Java it is " + METHODS_OF_OTHERS.get(name) + ".");
    }
    if (slip.detail("location").endsWith("of type java.lang.Object")) {
      return Optional.of(
          "The variable is declared as Object: declare it with the type that has " + name + ".");
    }
    var known = known(names);
    return Optional.of(
        afterDot
            ? "There is no method "
                + name
                + " here"
                + (known.isEmpty() ? "." : ", only " + known + ".")
            : "No method "
                + name
                + " is declared. If another cell declares it, run that cell first.");
  }

  /** A few of the methods that a type has of its own. */
  private static String known(List<String> names) {
    var own = new ArrayList<>(names);
    own.removeAll(
        List.of("equals", "hashCode", "toString", "getClass", "notify", "notifyAll", "wait"));
    return own.isEmpty() || own.size() > 15 ? "" : String.join(", ", own);
  }

  private Optional<String> missingVariable(CompilerSlip slip) {
    var name = slip.symbol();
    var at = slip.symbolStart();
    var names = surroundings.namesAt(slip.text(), at);
    if (names.contains(name)) {
      return Optional.of(name + " is a method: write " + name + "() with parentheses.");
    }
    if (name.equals("length") && names.contains("size")) {
      return Optional.of("The number of elements is size().");
    }
    var near = Spelling.nearest(name, names);
    if (!near.isEmpty()) {
      return Optional.of("Did you mean " + either(near) + "?");
    }
    if (slip.before(at) == '.') {
      var known = known(names);
      return Optional.of(
          "There is no " + name + " here" + (known.isEmpty() ? "." : ", only " + known + "."));
    }
    if (slip.text()
        .substring(Math.min(at + name.length(), slip.text().length()))
        .matches("(?s)\\s*=[^=].*")) {
      return Optional.of(
          "A variable is declared with a type where it gets its first value: var "
              + name
              + " = ...;");
    }
    var python =
        Map.of("True", "true", "False", "false", "None", "null", "nil", "null", "self", "this");
    if (python.containsKey(name)) {
      return Optional.of("In Java it is " + python.get(name) + ".");
    }
    if (isTypeName(name)) {
      var imports = surroundings.index().typesNamed(name);
      var similar = Spelling.nearest(name, surroundings.index().simpleNames());
      if (!imports.isEmpty()) {
        return Optional.of(importing(imports));
      }
      if (!similar.isEmpty()) {
        return Optional.of("Did you mean " + similar.get(0) + "?");
      }
    }
    return Optional.of(
        "No variable "
            + name
            + " is declared. If another cell declares it, run that cell first; text"
            + " stands in double quotes.");
  }

  private Optional<String> missingPackage(CompilerSlip slip, String name) {
    var written = slip.text().substring(slip.start());
    var simple = Pattern.compile(Pattern.quote(name) + "\\.([\\p{Lu}]\\w*)").matcher(slip.text());
    var isImport =
        written.stripLeading().startsWith("import") || slip.line().strip().startsWith("import");
    var near = Spelling.nearest(name, surroundings.index().packages());
    if (isImport && simple.find()) {
      var imports = meant(surroundings.index().typesNamed(simple.group(1)), near);
      if (!imports.isEmpty()) {
        return Optional.of("It is " + either(imports) + ".");
      }
    }
    if (isImport) {
      return Optional.of(
          near.isEmpty()
              ? "No library on the class path has a package "
                  + name
                  + "; the library has to be added."
              : "Did you mean the package " + either(near) + "?");
    }
    var first = name.split("\\.", 2)[0];
    var names =
        surroundings.namesAt(slip.text(), Math.max(0, slip.text().indexOf(first, slip.start())));
    var alike = Spelling.nearest(first.toLowerCase(Locale.ROOT), names);
    var sameLetters = names.stream().filter(first::equalsIgnoreCase).toList();
    var meant = sameLetters.isEmpty() ? alike : sameLetters;
    return Optional.of(
        meant.isEmpty()
            ? "Neither a variable nor a type nor a package is called " + first + "."
            : "Did you mean " + either(meant) + "? Upper and lower case count.");
  }

  /** Imports of a type, from the packages that are spelt nearly so if it is in one of them. */
  private static List<String> meant(List<String> fullNames, List<String> packages) {
    var near =
        fullNames.stream()
            .filter(full -> packages.contains(full.substring(0, full.lastIndexOf('.'))))
            .toList();
    return (near.isEmpty() ? fullNames : near)
        .stream().limit(MOST_IMPORTS).map(full -> "import " + full + ";").toList();
  }
}
