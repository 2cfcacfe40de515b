package agro.notebook.insight;

import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/** Hints to calls that do not fit and to methods that are not whole. */
final class CallSlips {

  private static final int MOST = 4;
  private static final Pattern QUOTED = Pattern.compile("(?:method|variable) (\\w+)");

  private final Surroundings surroundings;

  CallSlips(Surroundings surroundings) {
    this.surroundings = surroundings;
  }

  Optional<String> hint(CompilerSlip slip) {
    if (slip.code().startsWith("compiler.err.cant.apply")) {
      return notApplicable(slip);
    }
    if (slip.is("non-static.cant.be.ref")) {
      var name = QUOTED.matcher(slip.message());
      var what = name.find() ? name.group(1) : "it";
      return Optional.of(
          what
              + " belongs to one object, not to the class: call it on a variable that holds an object.");
    }
    if (slip.is("report.access")) {
      return hidden(slip);
    }
    return method(slip);
  }

  private Optional<String> notApplicable(CompilerSlip slip) {
    var comma = SyntaxSlips.decimalComma(slip);
    var name = calledName(slip);
    var at = slip.text().indexOf(name, Math.min(slip.position(), slip.text().length()));
    var signatures = at < 0 ? List.<String>of() : surroundings.signaturesAt(slip.text(), at, name);
    if (signatures.isEmpty()) {
      return comma;
    }
    var shown = String.join(" or ", signatures.stream().limit(MOST).toList());
    var more = signatures.size() > MOST ? " and " + (signatures.size() - MOST) + " more" : "";
    var fits = "It can be called as " + shown + more + ".";
    return Optional.of(comma.map(hint -> fits + " If one number was meant: " + hint).orElse(fits));
  }

  /** The name of the method or type whose call was refused. */
  static String calledName(CompilerSlip slip) {
    var found =
        Pattern.compile("(?:(?:method|constructor) found for|^(?:method|constructor)) (\\w+)")
            .matcher(slip.message());
    return found.find() ? found.group(1) : "";
  }

  private Optional<String> hidden(CompilerSlip slip) {
    var name = slip.message().split(" ", 2)[0].replaceAll("\\(.*", "");
    var at = slip.text().indexOf(name, slip.position());
    var names = at < 0 ? List.<String>of() : surroundings.namesAt(slip.text(), at);
    return Optional.of(
        names.contains(name)
            ? name + " is kept private; call the method " + name + "() instead."
            : name + " is kept private by its class and cannot be used from outside.");
  }

  private static Optional<String> method(CompilerSlip slip) {
    if (slip.is("missing.ret.stmt")) {
      return Optional.of(
          "The method promises a value, but can reach its end without a return: add one, also for the"
              + " case that no if applies.");
    }
    if (slip.is("var.might.not.have.been.initialized")) {
      return Optional.of(
          "The variable has no value yet on every way there: give it one where it is declared.");
    }
    if (slip.is("unreported.exception.need.to.catch.or.throw")) {
      var name = Pattern.compile("exception ([\\w.]+);").matcher(slip.message());
      var type = name.find() ? Signatures.shortened(name.group(1)) : "the exception";
      return Optional.of(
          "Write throws "
              + type
              + " behind the parameters of the method, or put the call into try { ... }"
              + " catch ("
              + type
              + " e) { ... }.");
    }
    if (slip.is("cant.assign.val.to.var", "cant.assign.val.to.final.var")) {
      return Optional.of(
          "It was declared final and keeps its value: leave out final, or use another variable.");
    }
    if (slip.is("already.defined")) {
      return Optional.of(
          "The name is taken: leave out the type to assign a new value, or choose another name.");
    }
    if (slip.code().startsWith("compiler.err.cant.ref.non.effectively.final.var")) {
      return Optional.of(
          "Inside a lambda only variables that never change can be used: copy it into a new one.");
    }
    if (slip.is("unreachable.stmt")) {
      return Optional.of("Nothing gets here, because what stands before it never goes on.");
    }
    return slip.code().startsWith("compiler.err.not.exhaustive")
        ? Optional.of("Add the cases that are missing, or a default.")
        : Optional.empty();
  }
}
