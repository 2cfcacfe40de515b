package agro.notebook.insight;

import agro.notebook.insight.CellParts.Part;
import agro.notebook.insight.CellParts.PartKind;
import agro.notebook.insight.Completeness.State;
import agro.notebook.insight.JavaTokens.Kind;
import java.util.List;
import javax.tools.Diagnostic;
import javax.tools.JavaFileObject;

/** Tells whether a cell can be evaluated, goes on, or can never become Java. */
final class CompletenessCheck {

  private static final Completeness COMPLETE = new Completeness(State.COMPLETE, "");
  private static final Completeness INVALID = new Completeness(State.INVALID, "");
  private static final int STEP = 2;

  private final SourceCompiler compiler;

  CompletenessCheck(SourceCompiler compiler) {
    this.compiler = compiler;
  }

  /**
   * Looks at a cell.
   *
   * @param code Java, without lines for the notebook
   * @return the verdict
   */
  Completeness of(String code) {
    var tokens = JavaTokens.of(code);
    for (var token : tokens) {
      if (!token.closed()) {
        var goesOn = token.kind() == Kind.TEXT_BLOCK || token.kind() == Kind.BLOCK_COMMENT;
        return goesOn ? new Completeness(State.INCOMPLETE, "") : INVALID;
      }
    }
    if (Brackets.in(code).stray().isPresent()) {
      return INVALID;
    }
    var parts = CellParts.of(code);
    for (var index = 0; index < parts.size(); index++) {
      var part = parts.get(index);
      var text = code.substring(part.start(), part.end());
      if (JavaTokens.codeIn(text).isEmpty()) {
        continue;
      }
      var isLast = index >= lastWithCode(code, parts);
      switch (verdict(part, text, isLast)) {
        case INVALID -> {
          return INVALID;
        }
        case INCOMPLETE -> {
          return new Completeness(State.INCOMPLETE, indent(code));
        }
        default -> {
          continue;
        }
      }
    }
    return COMPLETE;
  }

  private static int lastWithCode(String code, List<Part> parts) {
    var last = 0;
    for (var index = 0; index < parts.size(); index++) {
      var text = code.substring(parts.get(index).start(), parts.get(index).end());
      last = JavaTokens.codeIn(text).isEmpty() ? last : index;
    }
    return last;
  }

  /** A statement, type, method or import on its own, between what Java wants around it. */
  private State verdict(Part part, String text, boolean isLast) {
    var open = !Brackets.in(text).open().isEmpty();
    var plain = isLast && !open ? State.INCOMPLETE : State.INVALID;
    var tail = open ? Brackets.in(text).closers(text) : "";
    var first = check(part.kind(), text, tail);
    if (first == State.COMPLETE) {
      return open ? State.INCOMPLETE : State.COMPLETE;
    }
    if (first == State.INVALID && !open) {
      return State.INVALID;
    }
    if (open) {
      return first;
    }
    var ended = check(part.kind(), text, "\n;");
    return ended == State.COMPLETE && isLast && maybeWithoutSemicolon(part, text)
        ? State.COMPLETE
        : plain;
  }

  /** The shell adds a missing semicolon at the very end, except where a body should follow. */
  private static boolean maybeWithoutSemicolon(Part part, String text) {
    var tokens = JavaTokens.codeIn(text);
    var last = tokens.get(tokens.size() - 1);
    if (part.kind() == PartKind.METHOD || part.kind() == PartKind.TYPE) {
      return false;
    }
    var first = tokens.get(0).in(text);
    var wantsBody =
        first.matches("if|for|while|do|try|switch|synchronized|else") && !last.is(text, "}");
    return !wantsBody || hasBody(text);
  }

  /** Whether something stands behind the parentheses of a condition or a loop. */
  private static boolean hasBody(String text) {
    var depth = 0;
    var tokens = JavaTokens.codeIn(text);
    for (var index = 0; index < tokens.size(); index++) {
      depth += tokens.get(index).is(text, "(") ? 1 : tokens.get(index).is(text, ")") ? -1 : 0;
      if (depth == 0 && tokens.get(index).is(text, ")")) {
        return index < tokens.size() - 1 && !tokens.get(tokens.size() - 1).is(text, "else");
      }
    }
    return false;
  }

  /** Parses a part; an error at its very end means that something is still to come. */
  private State check(PartKind kind, String text, String tail) {
    var before =
        switch (kind) {
          case IMPORT, TYPE -> "";
          case METHOD -> "class X {";
          case STATEMENT -> "class X { Object x() {";
        };
    var after =
        switch (kind) {
          case IMPORT, TYPE -> "";
          case METHOD -> "\n}";
          case STATEMENT -> "\n}}";
        };
    var end = before.length() + JavaTokens.masked(text).stripTrailing().length();
    var state = State.COMPLETE;
    for (var problem : compiler.parsed(before + text + tail + after).problems()) {
      if (problem.getKind() == Diagnostic.Kind.ERROR && !isShellsOwn(problem)) {
        if (problem.getPosition() < end && !mayBeMended(problem)) {
          return State.INVALID;
        }
        state = State.INCOMPLETE;
      }
    }
    return state;
  }

  /** Whether what is missing may stand on the next line. */
  private static boolean mayBeMended(Diagnostic<? extends JavaFileObject> problem) {
    return problem.getCode().endsWith("premature.eof")
        || problem.getCode().contains("try.without.catch");
  }

  /** An expression is no statement in a file, but one in a cell. */
  private static boolean isShellsOwn(Diagnostic<? extends JavaFileObject> problem) {
    return problem.getCode().endsWith("not.stmt");
  }

  private static String indent(String code) {
    var depth = Brackets.in(code).open().size();
    var lineStart = code.stripTrailing().lastIndexOf('\n') + 1;
    var line = code.substring(lineStart);
    var own = line.length() - line.stripLeading().length();
    return " ".repeat(depth > 0 ? depth * STEP : own + STEP);
  }
}
