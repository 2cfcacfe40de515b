package agro.notebook.kernel;

import agro.notebook.insight.CompilerMessage;
import agro.notebook.kernel.CellFailure.Place;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** The calls that led to an exception, as far as they concern the reader of the cell. */
final class CallTrace {

  private static final int MOST = 12;
  private static final int LAST = 3;
  private static final int MOST_OF_A_LIBRARY = 3;
  private static final Pattern MACHINERY =
      Pattern.compile(
          "(?:jdk\\.jshell|jdk\\.internal|sun\\.reflect|java\\.lang\\.reflect|java\\.lang\\.invoke"
              + "|agro\\.notebook\\.(?:kernel|bytecode|jupyter|run|command))\\..*");

  private record Call(StackTraceElement frame, Optional<Place> place) {}

  private final List<Call> calls = new ArrayList<>();

  /**
   * The calls of a stack.
   *
   * @param frames the stack, those frames that stand in cells with the snippet as their file
   * @param places where snippets stand
   */
  CallTrace(StackTraceElement[] frames, SnippetPlaces places) {
    for (var frame : frames) {
      if (frame != null) {
        var place = placeOf(frame, places);
        if (place.isPresent() || !MACHINERY.matcher(frame.getClassName()).matches()) {
          calls.add(new Call(frame, place));
        }
      }
    }
    cutBelowCells();
  }

  private static Optional<Place> placeOf(StackTraceElement frame, SnippetPlaces places) {
    var file = frame.getFileName();
    return file != null && file.startsWith("#")
        ? places.place(file.substring(1), frame.getLineNumber())
        : Optional.empty();
  }

  /** What called the cell is none of its reader's business. */
  private void cutBelowCells() {
    var last = calls.size() - 1;
    while (last >= 0 && calls.get(last).place().isEmpty()) {
      last--;
    }
    if (last >= 0) {
      calls.subList(last + 1, calls.size()).clear();
    }
  }

  /** The places in cells, the one nearest to the exception first. */
  Stream<Place> places() {
    return calls.stream().flatMap(call -> call.place().stream());
  }

  /**
   * The calls line by line.
   *
   * @return at most about a dozen lines, those of libraries shortened
   */
  List<String> lines() {
    var lines = new ArrayList<String>();
    for (var at = 0; at < calls.size(); ) {
      var end = at;
      while (end < calls.size() && calls.get(end).place().isEmpty()) {
        end++;
      }
      if (end == at) {
        lines.add(text(calls.get(at)));
        at++;
      } else {
        addLibrary(lines, calls.subList(at, end));
        at = end;
      }
    }
    return shortened(lines);
  }

  private static void addLibrary(List<String> lines, List<Call> run) {
    var all = run.size() <= MOST_OF_A_LIBRARY;
    run.stream()
        .limit(all ? run.size() : MOST_OF_A_LIBRARY - 1)
        .forEach(one -> lines.add(text(one)));
    if (!all) {
      lines.add("  ... " + (run.size() - MOST_OF_A_LIBRARY + 1) + " more calls in libraries");
    }
  }

  private static List<String> shortened(List<String> lines) {
    if (lines.size() <= MOST) {
      return lines;
    }
    var few = new ArrayList<>(lines.subList(0, MOST - LAST));
    few.add("  ... " + (lines.size() - MOST) + " more calls");
    few.addAll(lines.subList(lines.size() - LAST, lines.size()));
    return few;
  }

  private static String text(Call call) {
    var method = CompilerMessage.asWritten(call.frame().getMethodName());
    if (call.place().isPresent()) {
      var name = method.startsWith("lambda$") ? "a lambda" : method;
      return "  in " + (name.isEmpty() ? "" : name + ", ") + call.place().get();
    }
    var type = CompilerMessage.asWritten(call.frame().getClassName());
    var file = call.frame().getFileName();
    var line = call.frame().getLineNumber();
    var where = file == null ? "" : " (" + file + (line > 0 ? ":" + line : "") + ")";
    return "  in " + type + "." + method + where;
  }
}
