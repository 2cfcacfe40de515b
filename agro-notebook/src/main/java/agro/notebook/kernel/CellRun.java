package agro.notebook.kernel;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import jdk.jshell.DeclarationSnippet;
import jdk.jshell.EvalException;
import jdk.jshell.Snippet;
import jdk.jshell.Snippet.Status;
import jdk.jshell.Snippet.SubKind;
import jdk.jshell.SnippetEvent;
import jdk.jshell.UnresolvedReferenceException;
import jdk.jshell.VarSnippet;

/** The evaluation of one cell, statement by statement. */
final class CellRun {

  private static final Set<SubKind> WITH_VALUE =
      EnumSet.of(
          SubKind.TEMP_VAR_EXPRESSION_SUBKIND,
          SubKind.VAR_VALUE_SUBKIND,
          SubKind.ASSIGNMENT_SUBKIND,
          SubKind.OTHER_EXPRESSION_SUBKIND);

  private static final Set<Status> WAITING =
      EnumSet.of(Status.RECOVERABLE_DEFINED, Status.RECOVERABLE_NOT_DEFINED);

  private final EvaluatorState state;
  private final CellSource cell;
  private final String code;
  private final FailureReport report;
  private final List<String> remarks = new ArrayList<>();
  private final Map<String, DeclaredVariable> declared = new LinkedHashMap<>();
  private final Map<String, DeclarationSnippet> waiting = new LinkedHashMap<>();
  private CellResult.Value value = CellResult.Value.NONE;
  private CellFailure failure;

  CellRun(EvaluatorState state, CellSource cell) {
    this.state = state;
    this.cell = cell;
    this.code = RecordConstructors.madePublic(SealedTypes.withPermits(cell.code()));
    this.report = new FailureReport(new CellSource(cell.name(), code), state.places());
  }

  CellResult run() {
    var at = JavaText.skipBlank(code, 0);
    while (at < code.length() && failure == null) {
      at = JavaText.skipBlank(code, statement(at));
      if (failure == null && state.thread().wasInterrupted()) {
        failure = report.interrupted(null);
      }
    }
    waiting.values().forEach(this::remarkIfWaiting);
    return new CellResult(
        value, Optional.ofNullable(failure), remarks, List.copyOf(declared.values()));
  }

  /** Evaluates the statement that begins at a position; gives the position behind it. */
  private int statement(int at) {
    var rest = code.substring(at);
    try {
      var completion = state.shell().sourceCodeAnalysis().analyzeCompletion(rest);
      var whole = completion.source() == null || !completion.completeness().isComplete();
      var source = whole ? rest : completion.source();
      var end = whole ? code.length() : code.length() - completion.remaining().length();
      var events = state.shell().eval(source);
      events.forEach(event -> rememberPlace(event, at));
      events.forEach(event -> hear(event, at));
      keepValue(events, code.substring(at, end));
      return end;
    } catch (RuntimeException | Error trouble) {
      failure = report.evaluator(trouble, at);
      return code.length();
    }
  }

  private void rememberPlace(SnippetEvent event, int at) {
    if (event.causeSnippet() == null) {
      state.places().remember(event.snippet().id(), cell, JavaText.lineOf(code, at));
    }
  }

  private void hear(SnippetEvent event, int at) {
    if (event.exception() != null) {
      failure = failureOf(event.exception());
    } else if (event.causeSnippet() != null) {
      hearOfDependent(event);
    } else if (event.status() == Status.REJECTED) {
      failure = report.refused(at, state.shell().diagnostics(event.snippet()).toList());
    } else {
      hearOfOwn(event.snippet(), event.status());
    }
  }

  private void hearOfOwn(Snippet snippet, Status status) {
    if (snippet instanceof DeclarationSnippet declaration && WAITING.contains(status)) {
      waiting.put(declaration.id(), declaration);
    }
    if (snippet instanceof VarSnippet variable && status == Status.VALID) {
      state.guard().declared(variable);
      if (variable.subKind() != SubKind.TEMP_VAR_EXPRESSION_SUBKIND) {
        declared.put(variable.name(), new DeclaredVariable(variable.name(), variable.typeName()));
      }
    }
  }

  /** A declaration of an earlier statement that changes because this one did. */
  private void hearOfDependent(SnippetEvent event) {
    if (!(event.snippet() instanceof DeclarationSnippet dependent)) {
      return;
    }
    var lost = WAITING.contains(event.status()) && event.previousStatus() == Status.VALID;
    var missing = state.shell().unresolvedDependencies(dependent).findAny().isPresent();
    if (dependent instanceof VarSnippet variable && lost && !missing) {
      remark(reset(variable, event, " and is gone"));
    } else if (lost) {
      remark(
          FailureReport.waiting(dependent, state.shell())
              + (from(dependent).isEmpty() ? "" : "; it stands" + from(dependent)));
    } else if (dependent instanceof VarSnippet variable
        && event.status() == Status.VALID
        && !state.guard().carriedOver(variable)) {
      remark(reset(variable, event, ""));
    }
  }

  private String reset(VarSnippet variable, SnippetEvent event, String how) {
    return variable.name()
        + from(variable)
        + " was reset"
        + how
        + ", because "
        + name(event.causeSnippet())
        + " changed its shape; run that cell again";
  }

  private static String name(Snippet snippet) {
    return snippet instanceof DeclarationSnippet declaration ? declaration.name() : "it";
  }

  private String from(Snippet snippet) {
    return state
        .places()
        .cell(snippet.id())
        .filter(other -> !other.name().equals(cell.name()))
        .map(other -> " (from " + other.name() + ")")
        .orElse("");
  }

  private void remarkIfWaiting(DeclarationSnippet declaration) {
    if (WAITING.contains(state.shell().status(declaration))) {
      remark(FailureReport.waiting(declaration, state.shell()));
    }
  }

  private void remark(String sentence) {
    remarks.add(sentence);
    state.session().remark("Note: " + sentence + ".");
  }

  private CellFailure failureOf(Exception trouble) {
    var thrown = state.control().takeThrown();
    if (state.thread().wasInterrupted()) {
      return report.interrupted(thrown);
    }
    if (trouble instanceof UnresolvedReferenceException unresolved) {
      return report.unresolved(unresolved, state.shell());
    }
    if (trouble instanceof EvalException && thrown != null) {
      return report.thrown(thrown, trouble.getStackTrace());
    }
    return report.evaluator(trouble, 0);
  }

  private void keepValue(List<SnippetEvent> events, String written) {
    var object = state.control().takeResult();
    value = CellResult.Value.NONE;
    var closed = JavaText.withoutBlankEnd(written).endsWith(";");
    if (failure == null && !closed && events.stream().anyMatch(CellRun::hasValue)) {
      value = state.shown(object);
    }
  }

  private static boolean hasValue(SnippetEvent event) {
    return event.causeSnippet() == null && WITH_VALUE.contains(event.snippet().subKind());
  }
}
