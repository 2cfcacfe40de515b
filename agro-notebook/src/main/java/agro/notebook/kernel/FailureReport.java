package agro.notebook.kernel;

import agro.notebook.kernel.CellFailure.Kind;
import agro.notebook.kernel.CellFailure.Place;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import jdk.jshell.DeclarationSnippet;
import jdk.jshell.Diag;
import jdk.jshell.JShell;
import jdk.jshell.UnresolvedReferenceException;

/** Says what went wrong in a cell so that the reader finds the place. */
final class FailureReport {

  private static final int FRAMES = 12;
  private static final int CAUSES = 5;

  private final CellSource cell;
  private final SnippetPlaces places;

  FailureReport(CellSource cell, SnippetPlaces places) {
    this.cell = cell;
    this.places = places;
  }

  /**
   * Code that the compiler refused.
   *
   * @param offset where the refused code begins in the cell
   * @param problems what the compiler said; positions count from the offset
   * @return the failure, placed at the first problem
   */
  CellFailure refused(int offset, List<Diag> problems) {
    var trace = new ArrayList<String>();
    var first =
        problems.stream().filter(Diag::isError).findFirst().or(() -> problems.stream().findFirst());
    var message = first.map(FailureReport::message).orElse("this is not Java");
    var line = 0;
    for (var problem : problems) {
      var start = offset + (int) Math.max(0, problem.getPosition());
      var end = offset + (int) problem.getEndPosition();
      line = line == 0 ? JavaText.lineOf(cell.code(), start) : line;
      trace.add(place(JavaText.lineOf(cell.code(), start)) + ": " + message(problem));
      trace.addAll(underlined(start, end));
    }
    if (line == 0) {
      line = JavaText.lineOf(cell.code(), offset);
      trace.add(place(line) + ": " + message);
    }
    return new CellFailure(
        Kind.COMPILATION, "Not compiled", message, place(line), trace, Optional.empty());
  }

  private Place place(int line) {
    return new Place(cell.name(), line);
  }

  /** What the compiler says, without the name of the wrapper that the reader never wrote. */
  private static String message(Diag problem) {
    var lines =
        problem
            .getMessage(Locale.ROOT)
            .lines()
            .filter(line -> !line.strip().equals("location: class"))
            .map(line -> line.replaceAll("\\s+", " ").strip())
            .toList();
    return lines.isEmpty()
        ? ""
        : lines.get(0)
            + (lines.size() > 1
                ? " (" + String.join(", ", lines.subList(1, lines.size())) + ")"
                : "");
  }

  private List<String> underlined(int start, int end) {
    var code = cell.code();
    var from = Math.min(start, code.length());
    var lineStart = code.lastIndexOf('\n', from - 1) + 1;
    var lineEnd = code.indexOf('\n', from);
    var line = code.substring(lineStart, lineEnd < 0 ? code.length() : lineEnd);
    var marks = Math.max(1, Math.min(end - from, line.length() - (from - lineStart)));
    var indent = line.substring(0, from - lineStart).replaceAll("[^\t]", " ");
    return List.of("    " + line, "    " + indent + "^".repeat(marks));
  }

  /**
   * Code that threw an exception.
   *
   * @param thrown the live exception
   * @param frames its calls, those in cells named by snippet
   * @return the failure, placed at the topmost call in this cell
   */
  CellFailure thrown(Throwable thrown, StackTraceElement[] frames) {
    var name = asWritten(thrown.getClass().getName());
    var message = messageOf(thrown);
    var place = placeIn(frames);
    var trace = new ArrayList<String>();
    trace.add(name + (message.isEmpty() ? "" : ": " + message));
    place.knownLine().ifPresent(line -> trace.addAll(marked(place)));
    trace.addAll(calls(frames));
    trace.addAll(causes(thrown));
    return new CellFailure(Kind.EXCEPTION, name, message, place, trace, Optional.of(thrown));
  }

  private static List<String> causes(Throwable thrown) {
    var lines = new ArrayList<String>();
    var cause = thrown.getCause();
    for (var depth = 0; cause != null && depth < CAUSES; depth++) {
      lines.add("because of " + asWritten(cause.getClass().getName()) + ": " + messageOf(cause));
      cause = cause.getCause();
    }
    return lines;
  }

  /** A text without the names of the classes that the shell wraps round the reader's code. */
  private static String asWritten(String text) {
    return text.replaceAll("REPL\\.\\$JShell\\$\\w+[.$]", "");
  }

  static String messageOf(Throwable thrown) {
    try {
      var message = thrown.getLocalizedMessage();
      return message == null ? "" : asWritten(message);
    } catch (Throwable ownTrouble) {
      return "(its message could not be read: " + ownTrouble.getClass().getName() + ")";
    }
  }

  private Place placeIn(StackTraceElement[] frames) {
    return Stream.of(frames)
        .flatMap(frame -> placeOf(frame).stream())
        .filter(place -> place.cell().equals(cell.name()))
        .findFirst()
        .orElse(place(0));
  }

  private Optional<Place> placeOf(StackTraceElement frame) {
    var file = frame.getFileName();
    return file != null && file.startsWith("#")
        ? places.place(file.substring(1), frame.getLineNumber())
        : Optional.empty();
  }

  /** The lines around a place, the line itself marked. */
  private List<String> marked(Place place) {
    var lines = cell.code().lines().toList();
    var marked = new ArrayList<String>();
    var from = Math.max(1, place.line() - 1);
    for (var line = from; line <= Math.min(lines.size(), place.line() + 1); line++) {
      var mark = line == place.line() ? "  > " : "    ";
      marked.add(mark + String.format(Locale.ROOT, "%3d  ", line) + lines.get(line - 1));
    }
    return marked;
  }

  private List<String> calls(StackTraceElement[] frames) {
    var lines = new ArrayList<String>();
    for (var frame : frames) {
      if (lines.size() == FRAMES) {
        lines.add("  ... " + (frames.length - FRAMES) + " more calls");
        break;
      }
      lines.add(call(frame));
    }
    return lines;
  }

  private String call(StackTraceElement frame) {
    var at = placeOf(frame);
    var method = frame.getMethodName();
    if (at.isPresent()) {
      return "  in " + (method.isEmpty() ? "" : method + ", ") + at.get();
    }
    return "  in "
        + frame.getClassName()
        + "."
        + method
        + " ("
        + frame.getFileName()
        + ":"
        + frame.getLineNumber()
        + ")";
  }

  /**
   * Code that used a declaration which still waits for others.
   *
   * @param unresolved what the shell threw
   * @param shell the shell, which knows what is missing
   * @return the failure
   */
  CellFailure unresolved(UnresolvedReferenceException unresolved, JShell shell) {
    var snippet = unresolved.getSnippet();
    var message = waiting(snippet, shell);
    var place = placeIn(unresolved.getStackTrace());
    var trace = new ArrayList<>(List.of(message));
    place.knownLine().ifPresent(line -> trace.addAll(marked(place)));
    return new CellFailure(
        Kind.UNRESOLVED, "Not yet declared", message, place, trace, Optional.empty());
  }

  /**
   * Why a declaration cannot be used yet.
   *
   * @param snippet the declaration
   * @param shell the shell, which knows what is missing
   * @return a sentence without a full stop
   */
  static String waiting(DeclarationSnippet snippet, JShell shell) {
    var missing = String.join(" and ", shell.unresolvedDependencies(snippet).toList());
    var problems = shell.diagnostics(snippet).map(FailureReport::message).toList();
    return snippet.name()
        + " cannot be used until "
        + (missing.isEmpty() ? "its code compiles" : missing + " is declared")
        + (problems.isEmpty() ? "" : ": " + String.join("; ", problems));
  }

  /**
   * A cell that its reader stopped.
   *
   * @param thrown what the code threw when it was stopped, if anything
   * @return the failure
   */
  CellFailure interrupted(Throwable thrown) {
    var message = "the cell was interrupted";
    return new CellFailure(
        Kind.INTERRUPTED,
        "Interrupted",
        message,
        place(0),
        List.of(cell.name() + " was interrupted"),
        Optional.ofNullable(thrown));
  }

  /**
   * Code on which the evaluator itself failed.
   *
   * @param trouble what it threw
   * @param offset where the code begins in the cell
   * @return the failure
   */
  CellFailure evaluator(Throwable trouble, int offset) {
    var message = "this code could not be evaluated (" + trouble + ")";
    var place = place(JavaText.lineOf(cell.code(), offset));
    return new CellFailure(
        Kind.EVALUATOR,
        "Not evaluated",
        message,
        place,
        List.of(place + ": " + message),
        Optional.of(trouble));
  }
}
