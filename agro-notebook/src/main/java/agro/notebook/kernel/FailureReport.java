package agro.notebook.kernel;

import agro.notebook.insight.CodeInsight;
import agro.notebook.kernel.CellFailure.Kind;
import agro.notebook.kernel.CellFailure.Place;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;
import jdk.jshell.DeclarationSnippet;
import jdk.jshell.Diag;
import jdk.jshell.JShell;
import jdk.jshell.UnresolvedReferenceException;

/** Says what went wrong in a cell so that the reader finds the place. Never throws. */
final class FailureReport {

  private final CellSource cell;
  private final SnippetPlaces places;
  private final Supplier<CodeInsight> insight;

  /**
   * A report on one cell.
   *
   * @param cell the cell
   * @param places where the snippets of all cells stand
   * @param insight who knows hints
   */
  FailureReport(CellSource cell, SnippetPlaces places, Supplier<CodeInsight> insight) {
    this.cell = cell;
    this.places = places;
    this.insight = insight;
  }

  /**
   * Code that the compiler refused.
   *
   * @param offset where the refused code begins in the cell
   * @param problems what the compiler said; positions count from the offset
   * @return the failure, placed at the first problem
   */
  CellFailure refused(int offset, List<Diag> problems) {
    var refused = new RefusedCode(cell, offset, problems);
    var failure =
        new CellFailure(
            Kind.COMPILATION,
            "Not compiled",
            refused.message(),
            place(refused.line()),
            refused.lines(),
            Optional.empty());
    return failure.hinted(refused.slip().flatMap(slip -> insight.get().hint(slip)));
  }

  private Place place(int line) {
    return new Place(cell.name(), line);
  }

  /**
   * Code that threw an exception.
   *
   * @param thrown the live exception
   * @param frames its calls, those in cells named by snippet
   * @return the failure, placed at the topmost call in this cell
   */
  CellFailure thrown(Throwable thrown, StackTraceElement[] frames) {
    var name = ThrownText.name(thrown);
    var message = ThrownText.message(thrown);
    var calls = new CallTrace(frames, places);
    var place = placeIn(calls);
    var trace = new ArrayList<String>();
    trace.add(name + (message.isEmpty() ? "" : ": " + message));
    trace.addAll(marked(place));
    trace.addAll(calls.lines());
    trace.addAll(ThrownText.causes(thrown));
    return new CellFailure(Kind.EXCEPTION, name, message, place, trace, Optional.of(thrown))
        .hinted(insight.get().hint(thrown, message, lineAt(place)));
  }

  private Place placeIn(CallTrace calls) {
    return calls
        .places()
        .filter(one -> one.cell().equals(cell.name()))
        .findFirst()
        .orElse(place(0));
  }

  private String lineAt(Place place) {
    return cell.code().lines().skip(Math.max(0, place.line() - 1)).findFirst().orElse("");
  }

  /** The lines around a place, the line itself marked. */
  private List<String> marked(Place place) {
    var marked = new ArrayList<String>();
    if (place.knownLine().isEmpty()) {
      return marked;
    }
    var lines = cell.code().lines().toList();
    var from = Math.max(1, place.line() - 1);
    for (var line = from; line <= Math.min(lines.size(), place.line() + 1); line++) {
      var mark = line == place.line() ? "  > " : "    ";
      marked.add(mark + String.format(Locale.ROOT, "%3d  ", line) + lines.get(line - 1));
    }
    return marked;
  }

  /**
   * Code that used a declaration which still waits for others.
   *
   * @param unresolved what the shell threw
   * @param shell the shell, which knows what is missing
   * @return the failure
   */
  CellFailure unresolved(UnresolvedReferenceException unresolved, JShell shell) {
    var message = waiting(unresolved.getSnippet(), shell);
    var place = placeIn(new CallTrace(unresolved.getStackTrace(), places));
    var trace = new ArrayList<>(List.of(message));
    trace.addAll(marked(place));
    return new CellFailure(
            Kind.UNRESOLVED, "Not yet declared", message, place, trace, Optional.empty())
        .hinted(
            shell
                .unresolvedDependencies(unresolved.getSnippet())
                .flatMap(missing -> insight.get().missing(missing).stream())
                .findFirst());
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
    var problems = shell.diagnostics(snippet).map(RefusedCode::message).toList();
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
   * Code that threw an exception which cannot even be described.
   *
   * @param thrown the live exception
   * @param trouble what happened when it was asked
   * @return the failure
   */
  CellFailure untold(Throwable thrown, Throwable trouble) {
    var name = ThrownText.name(thrown);
    var message = "(cannot be described: " + ThrownText.name(trouble) + ")";
    return new CellFailure(
        Kind.EXCEPTION,
        name,
        message,
        place(0),
        List.of(name + ": " + message),
        Optional.of(thrown));
  }

  /**
   * Code on which the evaluator itself failed.
   *
   * @param trouble what it threw
   * @param offset where the code begins in the cell
   * @return the failure
   */
  CellFailure evaluator(Throwable trouble, int offset) {
    var said = ThrownText.message(trouble);
    var message =
        "this code could not be evaluated ("
            + ThrownText.name(trouble)
            + (said.isEmpty() ? "" : ": " + said)
            + ")";
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
