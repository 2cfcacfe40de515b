package agro.notebook.kernel;

import agro.notebook.insight.CompilerMessage;
import agro.notebook.insight.CompilerSlip;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import jdk.jshell.Diag;

/**
 * Code that the compiler refused, with everything it complained about.
 *
 * @param cell the cell
 * @param offset where the refused code begins in it
 * @param problems what the compiler said, errors only if there are any
 */
record RefusedCode(CellSource cell, int offset, List<Diag> problems) {

  private static final int MOST = 5;

  /** Keeps the errors, if there are any among the warnings. */
  RefusedCode {
    var errors = problems.stream().filter(Diag::isError).toList();
    problems = errors.isEmpty() ? List.copyOf(problems) : errors;
  }

  /**
   * What the compiler says about one problem.
   *
   * @param problem the problem
   * @return one line without the names of the shell's wrappers
   */
  static String message(Diag problem) {
    return CompilerMessage.onOneLine(problem.getMessage(Locale.ROOT));
  }

  /** The first message. */
  String message() {
    return problems.isEmpty() ? "this is not Java" : message(problems.get(0));
  }

  /** The line of the first problem, counted from 1. */
  int line() {
    return JavaText.lineOf(cell.code(), problems.isEmpty() ? offset : at(problems.get(0)));
  }

  private int at(Diag problem) {
    var inCode = offset + Math.max(0, problem.getPosition());
    return (int) Math.min(inCode, cell.code().length());
  }

  /** The first problem for those who look for a hint. */
  Optional<CompilerSlip> slip() {
    return problems.stream()
        .findFirst()
        .map(
            first ->
                new CompilerSlip(
                    String.valueOf(first.getCode()),
                    CompilerMessage.asWritten(first.getMessage(Locale.ROOT)),
                    cell.code(),
                    (int) (offset + Math.max(0, first.getStartPosition())),
                    at(first),
                    (int) (offset + Math.max(0, first.getEndPosition()))));
  }

  /**
   * Every problem with its line and a mark under the place.
   *
   * @return the lines; many problems are cut to the first few
   */
  List<String> lines() {
    var lines = new ArrayList<String>();
    for (var problem : problems.stream().limit(MOST).toList()) {
      var start = at(problem);
      var end = (int) (offset + problem.getEndPosition());
      var place = new CellFailure.Place(cell.name(), JavaText.lineOf(cell.code(), start));
      lines.add(place + ": " + message(problem));
      lines.addAll(underlined(start, end));
    }
    if (problems.size() > MOST) {
      lines.add("... and " + (problems.size() - MOST) + " more problems");
    }
    if (lines.isEmpty()) {
      lines.add(new CellFailure.Place(cell.name(), line()) + ": " + message());
    }
    return lines;
  }

  private List<String> underlined(int start, int end) {
    var code = cell.code();
    var from =
        start < code.length() && code.charAt(start) == '.' && end > start + 1 ? start + 1 : start;
    var lineStart = code.lastIndexOf('\n', from - 1) + 1;
    var lineEnd = code.indexOf('\n', from);
    var line = code.substring(lineStart, lineEnd < 0 ? code.length() : lineEnd);
    var rest = line.length() - (from - lineStart);
    var marks = Math.max(1, Math.min(end - from, rest));
    var indent = line.substring(0, from - lineStart).replaceAll("[^\t]", " ");
    return List.of("    " + line, "    " + indent + "^".repeat(marks));
  }
}
