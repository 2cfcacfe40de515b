package agro.notebook.insight;

import agro.notebook.insight.CompilerSlip.Conversion;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/** Hints to values of a type that does not fit. */
final class TypeSlips {

  private static final Set<String> NUMBERS =
      Set.of("byte", "short", "int", "long", "float", "double", "char");
  private static final Map<String, String> BOXES =
      Map.of(
          "int",
          "Integer",
          "double",
          "Double",
          "long",
          "Long",
          "boolean",
          "Boolean",
          "char",
          "Character",
          "float",
          "Float",
          "short",
          "Short",
          "byte",
          "Byte");
  private static final String STRING = "java.lang.String";
  private static final Pattern NUMBER_IN_QUOTES =
      Pattern.compile("\"\\s*([-+]?\\d+(?:\\.\\d+)?)\\s*\"");
  private static final Pattern LOSSY = Pattern.compile("lossy conversion from (\\w+) to (\\w+)");

  private TypeSlips() {}

  static Optional<String> hint(CompilerSlip slip) {
    var lossy = LOSSY.matcher(slip.message());
    if (lossy.find()) {
      return Optional.of(lossy(lossy.group(1), lossy.group(2)));
    }
    if (slip.is("type.found.req")) {
      var box = BOXES.get(slip.detail("found"));
      return box == null
          ? Optional.empty()
          : Optional.of("Between < and > only classes can stand: write " + box + ".");
    }
    if (slip.code().startsWith("compiler.err.operator.cant.be.applied")) {
      return operator(slip);
    }
    if (slip.is("cant.deref")) {
      return Optional.of(
          "A plain number or boolean has no methods and fields; what can be done with it are operators"
              + " and the methods of Math.");
    }
    if (slip.code().startsWith("compiler.err.prob.found.req") || slip.is("incomparable.types")) {
      return mismatch(slip);
    }
    return declared(slip);
  }

  private static String lossy(String found, String required) {
    if (required.equals("float")) {
      return "A number with decimals is a double: put an f behind it (1.5f) or declare the variable as"
          + " double.";
    }
    var round = found.equals("double") || found.equals("float");
    return "A "
        + found
        + " does not fit into "
        + required
        + " without loss. Declare the variable as "
        + found
        + (round
            ? ", round with Math.round, or cut the decimals off with (" + required + ")."
            : ", or convert on purpose with (" + required + ").");
  }

  private static Optional<String> mismatch(CompilerSlip slip) {
    if (slip.message().contains("unexpected return value")) {
      return Optional.of(
          "A method that gives a value back names the value's type where it says void.");
    }
    if (slip.message().contains("missing return value")) {
      return Optional.of("The return of this method needs a value.");
    }
    if (slip.message().contains("is not a functional interface")) {
      return Optional.of(
          "A lambda needs a type that says what it is, for example: Function<Double, Double> f = x -> 2"
              + " * x;");
    }
    return slip.conversion().flatMap(types -> conversion(slip, types));
  }

  /**
   * A value of one type where another is wanted.
   *
   * @param slip what was refused
   * @param types the two types
   * @return what to do about it
   */
  static Optional<String> conversion(CompilerSlip slip, Conversion types) {
    var found = types.found();
    var required = types.required();
    if (required.equals("boolean")) {
      return Optional.of(
          Pattern.compile("[^=!<>]=[^=]").matcher(slip.line()).find()
                  && !slip.line().contains("boolean ")
              ? "One = assigns; to compare, write ==."
              : "A condition is true or false: compare the value with something, for example == 0.");
    }
    if (found.equals("<null>") || found.equals("<nulltype>")) {
      return Optional.of("A plain " + required + " always has a value and cannot be null.");
    }
    if (found.equals(STRING) && NUMBERS.contains(required)) {
      return Optional.of(textForNumber(slip, required));
    }
    if (required.equals(STRING)) {
      return Optional.of(
          "To make text of a value, write String.valueOf(...) or put \"\" + before it.");
    }
    if (NUMBERS.contains(required) && found.equals("boolean")) {
      return Optional.of(
          "true and false are no numbers; write the condition ? 1 : 0 if you want one.");
    }
    return NUMBERS.contains(found) && BOXES.containsValue(Signatures.shortened(required))
        ? Optional.of(
            "Write the number as a "
                + Signatures.shortened(required)
                + ": "
                + literalFor(required)
                + ".")
        : Optional.empty();
  }

  private static String literalFor(String box) {
    return switch (Signatures.shortened(box)) {
      case "Long" -> "5L, with an L";
      case "Float" -> "5f, with an f";
      default -> "5.0, with a point";
    };
  }

  private static String textForNumber(CompilerSlip slip, String required) {
    if (required.equals("char")) {
      return "One letter stands in single quotes: 'a'.";
    }
    var literal = NUMBER_IN_QUOTES.matcher(slip.refused());
    var parse =
        required.equals("int")
            ? "Integer.parseInt"
            : required.equals("long") ? "Long.parseLong" : "Double.parseDouble";
    return literal.find()
        ? "In quotes it is text: write " + literal.group(1) + " without them."
        : "Text is no number; if it holds one, write " + parse + "(...).";
  }

  private static Optional<String> operator(CompilerSlip slip) {
    var first = slip.detail("first type");
    var second = slip.detail("second type");
    if (first.equals(STRING) || second.equals(STRING)) {
      var literal = NUMBER_IN_QUOTES.matcher(slip.refused());
      if (literal.find() && !slip.message().contains("'=='")) {
        return Optional.of("In quotes it is text: write " + literal.group(1) + " without them.");
      }
      var compares = slip.message().contains("'=='") || slip.message().contains("'!='");
      return Optional.of(
          compares
              ? "Text and a number are never equal: compare text with text, by equals(...)."
              : slip.message().contains("'<'") || slip.message().contains("'>'")
                  ? "Text is put in order by a.compareTo(b) < 0."
                  : "Text can be joined with +, but there is no other arithmetic with it; if it holds a"
                      + " number, write Double.parseDouble(...).");
    }
    if (first.equals("boolean") || second.equals("boolean")) {
      return Optional.of(
          "Conditions are joined with && (and) and || (or); a < b < c is written a < b && b < c.");
    }
    if (slip.message().contains("unary operator '!'")) {
      return Optional.of(
          "Only true and false can be negated with !; compare a number, for example == 0.");
    }
    return Optional.of(
        "Operators work on plain numbers; objects have methods instead, such as plus, minus, times or"
            + " compareTo.");
  }

  private static Optional<String> declared(CompilerSlip slip) {
    if (slip.is("cant.infer.local.var.type")) {
      return Optional.of(
          "'var' takes its type from a value: give it one that has a type, or write the type instead of"
              + " var.");
    }
    if (slip.is("abstract.cant.be.instantiated")) {
      return Optional.of(
          slip.message().contains("java.util.List")
              ? "List is an interface: write new ArrayList<>() or List.of(...)."
              : slip.message().contains("java.util.Map ")
                  ? "Map is an interface: write new HashMap<>() or Map.of(...)."
                  : "An abstract type has no objects of its own: use a class that implements it, or a"
                      + " method that makes one.");
    }
    return Optional.empty();
  }
}
