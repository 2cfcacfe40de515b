package agro.notebook.insight;

import agro.notebook.insight.CellParts.Part;
import agro.notebook.insight.CellParts.PartKind;
import java.util.List;
import jdk.jshell.ImportSnippet;
import jdk.jshell.JShell;
import jdk.jshell.MethodSnippet;
import jdk.jshell.Snippet;
import jdk.jshell.Snippet.Status;
import jdk.jshell.TypeDeclSnippet;
import jdk.jshell.VarSnippet;

/**
 * One source file that says what a compiler has to know about the code at hand: what earlier cells
 * declared, what stands before it in its cell, and the code itself.
 *
 * @param text the source file
 * @param shift what has to be added to a position in the cell to find it in the text
 */
record SessionText(String text, int shift) {

  /** The class that stands for the session. */
  static final String CLASS = "Session$";

  /** The method that stands for the cell. */
  static final String METHOD = "cell$";

  /**
   * The source file for a part of a cell.
   *
   * @param shell what earlier cells declared
   * @param code the code of the cell, without lines for the notebook
   * @param parts the parts of the cell
   * @param current which of them is looked at
   * @param instead what stands in place of the end of that part; an empty text leaves it as it is
   * @param from where that end begins in the cell
   * @return the source file
   */
  static SessionText of(
      JShell shell, String code, List<Part> parts, Part current, String instead, int from) {
    var head = new StringBuilder();
    var members = new StringBuilder("\nclass " + CLASS + " {\n");
    var body = new StringBuilder("Object " + METHOD + "() throws Throwable {\n");
    shell
        .snippets()
        .filter(snippet -> isActive(shell.status(snippet)))
        .forEach(snippet -> declare(snippet, head, members));
    for (var part : parts) {
      if (!part.equals(current)) {
        var text = code.substring(part.start(), part.end());
        switch (part.kind()) {
          case IMPORT -> head.append(ended(text));
          case TYPE, METHOD -> members.append(text).append('\n');
          case STATEMENT -> body.append(part.start() < current.start() ? ended(text) : "");
        }
      }
    }
    var own = code.substring(current.start(), from) + instead;
    var tail = Brackets.in(own).closers(own);
    if (current.kind() == PartKind.IMPORT) {
      return new SessionText(head + own + tail + members + "}\n", head.length() - current.start());
    }
    if (current.kind() != PartKind.STATEMENT) {
      body.append("class Here$ {\n");
      tail = tail + "\n}";
    }
    var before = head.append(members).append(body);
    return new SessionText(before + own + tail + "\n}\n}\n", before.length() - current.start());
  }

  private static boolean isActive(Status status) {
    return status == Status.VALID
        || status == Status.RECOVERABLE_DEFINED
        || status == Status.RECOVERABLE_NOT_DEFINED;
  }

  private static void declare(Snippet snippet, StringBuilder head, StringBuilder members) {
    if (snippet instanceof ImportSnippet) {
      head.append(ended(snippet.source()));
    } else if (snippet instanceof VarSnippet variable) {
      members.append(typeOf(variable)).append(' ').append(variable.name()).append(";\n");
    } else if (snippet instanceof MethodSnippet) {
      members.append(withoutBody(snippet.source())).append('\n');
    } else if (snippet instanceof TypeDeclSnippet) {
      members.append(snippet.source()).append('\n');
    }
  }

  private static String typeOf(VarSnippet variable) {
    var type = variable.typeName();
    var isName = type != null && type.matches("[\\p{L}\\p{N}_$.<>?,&\\s\\[\\]]+");
    return isName ? type : "Object";
  }

  /** A method's body says nothing about its use, and takes long to look through. */
  private static String withoutBody(String source) {
    var depth = 0;
    for (var token : JavaTokens.codeIn(source)) {
      if (token.is(source, "(")) {
        depth++;
      } else if (token.is(source, ")")) {
        depth--;
      } else if (token.is(source, "{") && depth == 0) {
        return source.substring(0, token.start()) + "{ throw null; }";
      }
    }
    return source;
  }

  /** A statement with a semicolon, which its reader may have left out, on lines of its own. */
  private static String ended(String statement) {
    var text = JavaTokens.masked(statement).stripTrailing();
    var end = text.isEmpty() || text.endsWith(";") || text.endsWith("}") ? "\n" : "\n;\n";
    return statement + end;
  }
}
