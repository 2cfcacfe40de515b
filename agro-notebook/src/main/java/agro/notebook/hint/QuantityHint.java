package agro.notebook.hint;

import agro.notebook.display.Slip;
import agro.notebook.display.SlipHint;
import agro.report.InputProblem;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** Hints to slips with quantities and their units. */
public final class QuantityHint implements SlipHint {

  private static final Set<String> NUMBERS =
      Set.of(
          "byte",
          "short",
          "int",
          "long",
          "float",
          "double",
          "java.lang.Integer",
          "java.lang.Double",
          "java.lang.Long",
          "java.lang.Float");
  private static final String TEXT = "java.lang.String";

  /** A hint that knows our quantities. */
  public QuantityHint() {}

  @Override
  public Optional<String> hint(Slip slip) {
    return slip.thrown().isPresent()
        ? thrown(slip.thrown().get(), slip)
        : missingMethod(slip)
            .or(() -> operator(slip))
            .or(() -> inArguments(slip))
            .or(() -> mismatch(slip.found(), slip.required()));
  }

  /** One type where another is wanted. */
  private static Optional<String> mismatch(String foundType, String requiredType) {
    var found = Quantity.of(foundType);
    var required = Quantity.of(requiredType);
    if (found.isPresent() && required.isPresent()) {
      return Optional.of(confused(found.get(), required.get()));
    }
    if (required.isPresent()) {
      var wanted = required.get();
      if (NUMBERS.contains(foundType)) {
        return Optional.of(
            "A number alone has no unit; what is wanted is "
                + wanted.meaning()
                + ": write "
                + wanted.made()
                + ".");
      }
      return foundType.equals(TEXT)
          ? Optional.of("Text is no quantity: write " + wanted.made() + ".")
          : Optional.empty();
    }
    return found
        .filter(one -> NUMBERS.contains(requiredType))
        .map(
            one ->
                capital(one.meaning())
                    + " is no plain number: say in which unit it is wanted, with "
                    + one.asNumber()
                    + ".");
  }

  private static String confused(Quantity found, Quantity required) {
    var cure =
        Confusion.cure(found, required)
            .orElse("What is wanted is made with " + required.made() + ".");
    return capital(found.meaning()) + " is not " + required.meaning() + ". " + cure;
  }

  private static String capital(String text) {
    return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
  }

  /** A call with several arguments of which one is wrong or the unit is missing. */
  private static Optional<String> inArguments(Slip slip) {
    var found = types(slip.found());
    var required = types(slip.required());
    if (slip.called().isEmpty() || required.isEmpty() || required.equals(found)) {
      return Optional.empty();
    }
    var last = required.get(required.size() - 1);
    var unit = Quantity.of(last).filter(one -> one.name().endsWith("_UNIT"));
    if (unit.isPresent() && found.size() == required.size() - 1) {
      return Optional.of(
          "The unit is missing: put "
              + unit.get().made()
              + " behind the number, or another "
              + unit.get().simpleName()
              + ".");
    }
    for (var index = 0; index < Math.min(found.size(), required.size()); index++) {
      var hint = mismatch(found.get(index), required.get(index));
      if (found.size() == required.size() && hint.isPresent()) {
        return hint;
      }
    }
    return Optional.empty();
  }

  private static List<String> types(String list) {
    return list.isBlank() || list.equals("no arguments")
        ? List.of()
        : Arrays.stream(list.split(",")).map(String::strip).toList();
  }

  private static Optional<String> operator(Slip slip) {
    if (!slip.message().contains(" operator ")) {
      return Optional.empty();
    }
    var first = Quantity.of(slip.found());
    var second = Quantity.of(slip.required());
    return first
        .or(() -> second)
        .map(
            one ->
                "Operators do not know units; "
                    + one.meaning()
                    + " has the methods "
                    + one.methods()
                    + ", and its plain number is "
                    + one.asNumber()
                    + ".");
  }

  /** A method that a reader expects by the name of a unit. */
  private static Optional<String> missingMethod(Slip slip) {
    var name = slip.called().toLowerCase(Locale.ROOT);
    var named =
        List.of("fahrenheit", "kelvin", "tocelsius", "getcelsius").stream()
            .anyMatch(name::contains);
    return Arrays.stream(Quantity.values())
        .filter(one -> named && slip.message().contains("cannot find symbol"))
        .filter(
            one -> slip.message().lines().anyMatch(line -> line.strip().endsWith(one.typeName())))
        .findFirst()
        .map(one -> "The number in a unit is given by " + one.asNumber() + ".");
  }

  private static Optional<String> thrown(Throwable thrown, Slip slip) {
    if (thrown instanceof InputProblem || !(thrown instanceof IllegalArgumentException)) {
      return Optional.empty();
    }
    var message = slip.message();
    if (message.contains("absolute zero") || message.contains("at least -273.15")) {
      return Optional.of(
          message.contains("NaN")
              ? "NaN stands for a missing value: leave it out before a temperature is made of it."
              : "Look at the unit: temperatures in kelvin or °F are made with Temperature.of(number,"
                  + " unit).");
    }
    return message.contains("thermal time is finite") || message.contains("difference is finite")
        ? Optional.of(
            "NaN or infinity came in: look for a missing value or a division by 0 before.")
        : Optional.empty();
  }
}
