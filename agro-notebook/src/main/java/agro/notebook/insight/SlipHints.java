package agro.notebook.insight;

import agro.notebook.display.Slip;
import agro.notebook.display.SlipHint;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.ServiceConfigurationError;
import java.util.ServiceLoader;

/** Finds the hint for a slip: first libraries about their own types, then what Java has to say. */
final class SlipHints {

  private final NameSlips names;
  private final CallSlips calls;
  private List<SlipHint> libraries;

  SlipHints(Surroundings surroundings) {
    this.names = new NameSlips(surroundings);
    this.calls = new CallSlips(surroundings);
  }

  /**
   * The hint for code that the compiler refused.
   *
   * @param slip what it said
   * @return one or two sentences; empty when nothing helps beyond the message
   */
  Optional<String> hint(CompilerSlip slip) {
    return fromLibraries(described(slip))
        .or(() -> SyntaxSlips.hint(slip))
        .or(() -> names.hint(slip))
        .or(() -> TypeSlips.hint(slip))
        .or(() -> calls.hint(slip))
        .or(() -> slip.conversion().flatMap(types -> TypeSlips.conversion(slip, types)));
  }

  /**
   * The hint for an exception.
   *
   * @param thrown the exception
   * @param message its message
   * @param line the line of the cell, possibly empty
   * @return one or two sentences; empty when nothing helps beyond the message
   */
  Optional<String> hint(Throwable thrown, String message, String line) {
    return fromLibraries(new Slip(message, "", "", "", line, Optional.of(thrown)))
        .or(() -> ThrownSlips.hint(thrown, message, line));
  }

  /**
   * The hint for something that a declaration waits for.
   *
   * @param declaration what is missing, as the shell names it
   * @return a sentence; empty when nothing helps beyond the message
   */
  Optional<String> missing(String declaration) {
    var name = declaration.replaceFirst("^\\w+ ", "").replaceFirst("\\(.*", "").strip();
    var message = "cannot find symbol\n  symbol: " + declaration;
    return names.hint(
        new CompilerSlip("compiler.err.cant.resolve", message, name, 0, 0, name.length()));
  }

  private static Slip described(CompilerSlip slip) {
    var conversion = slip.conversion();
    var found =
        conversion.isPresent()
            ? conversion.get().found()
            : slip.detail("first type") + slip.detail("found");
    var required =
        conversion.isPresent()
            ? conversion.get().required()
            : slip.detail("second type") + slip.detail("required");
    var operator = slip.message().replaceAll("(?s).*binary operator '([^']+)'.*", "$1");
    var called =
        slip.code().contains("operator") ? operator : CallSlips.calledName(slip) + slip.symbol();
    return new Slip(slip.message(), found, required, called, slip.line(), Optional.empty());
  }

  private Optional<String> fromLibraries(Slip slip) {
    for (var library : libraries()) {
      try {
        var hint = library.hint(slip);
        if (hint.isPresent()) {
          return hint;
        }
      } catch (RuntimeException | LinkageError ofLibrary) {
        // A library that fails has nothing to say; the next one may have.
      }
    }
    return Optional.empty();
  }

  private List<SlipHint> libraries() {
    if (libraries == null) {
      libraries = new ArrayList<>();
      var services =
          ServiceLoader.load(SlipHint.class, SlipHints.class.getClassLoader()).iterator();
      while (true) {
        try {
          if (!services.hasNext()) {
            break;
          }
          libraries.add(services.next());
        } catch (ServiceConfigurationError broken) {
          // Named in a jar but not there: the next one may be.
        }
      }
    }
    return libraries;
  }
}
