package agro.notebook.kernel;

import agro.notebook.display.Display;
import agro.notebook.kernel.CellFailure.Kind;
import agro.notebook.kernel.CellStatements.Statement;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import jdk.jshell.DeclarationSnippet;
import jdk.jshell.EvalException;
import jdk.jshell.Snippet;
import jdk.jshell.Snippet.Status;
import jdk.jshell.Snippet.SubKind;
import jdk.jshell.SnippetEvent;
import jdk.jshell.UnresolvedReferenceException;
import jdk.jshell.VarSnippet;

/** The evaluation of one cell, statement by statement. */
final class CellRun implements CellMagicRun.Host {

  private static final Set<SubKind> WITH_VALUE =
      EnumSet.of(
          SubKind.TEMP_VAR_EXPRESSION_SUBKIND,
          SubKind.VAR_VALUE_SUBKIND,
          SubKind.ASSIGNMENT_SUBKIND,
          SubKind.OTHER_EXPRESSION_SUBKIND);

  private static final Set<Status> WAITING =
      EnumSet.of(Status.RECOVERABLE_DEFINED, Status.RECOVERABLE_NOT_DEFINED);

  private final EvaluatorState state;
  private final RunningCell running;
  private final CellSource cell;
  private final String code;
  private final CellStatements statements;
  private final CellMagicLines magicLines;
  private final FailureReport report;
  private final List<String> remarks;
  private final Map<String, DeclaredVariable> declared = new LinkedHashMap<>();
  private final Map<String, DeclarationSnippet> waiting = new LinkedHashMap<>();
  private CellResult.Value value = CellResult.Value.NONE;
  private CellFailure failure;
  private int oneByOne;

  /**
   * A cell to be evaluated.
   *
   * @param state what it shares with the other cells
   * @param running the cell
   * @param remarks what was remarked already; possibly nothing
   */
  CellRun(EvaluatorState state, RunningCell running, List<String> remarks) {
    this(state, running, running.source(), remarks);
  }

  private CellRun(
      EvaluatorState state, RunningCell running, CellSource source, List<String> remarks) {
    this(
        state,
        running,
        source,
        RecordConstructors.madePublic(SealedTypes.withPermits(source.code())),
        Optional.empty(),
        remarks);
  }

  private CellRun(
      EvaluatorState state,
      RunningCell running,
      CellSource source,
      String code,
      Optional<FailureReport> report,
      List<String> remarks) {
    this.state = state;
    this.running = running;
    this.cell = source;
    this.code = code;
    this.statements = new CellStatements(code, state.shell().sourceCodeAnalysis());
    this.magicLines = new CellMagicLines(state, code);
    this.report =
        report.orElseGet(
            () ->
                new FailureReport(
                    new CellSource(source.name(), code), state.places(), state::insight));
    this.remarks = new ArrayList<>(remarks);
  }

  /** The result of a cell that failed before anything else could be said of it. */
  static CellResult failed(CellFailure failure) {
    return new CellResult(CellResult.Value.NONE, Optional.of(failure), List.of(), List.of());
  }

  CellResult run() {
    var result = statements();
    state.unnamed().cellEnded();
    return result;
  }

  private CellResult statements() {
    state.reserve().restore();
    var at = JavaText.skipBlank(code, 0);
    while (at < code.length() && failure == null && !running.isStopped()) {
      at = JavaText.skipBlank(code, statement(at));
      // A statement may just have given up what an earlier cell had filled the memory with.
      state.reserve().restore();
    }
    if (running.isStopped() && (failure == null || failure.kind() != Kind.INTERRUPTED)) {
      failure = report.interrupted(null);
    }
    if (failure != null) {
      value = CellResult.Value.NONE;
    }
    waiting.values().forEach(this::settle);
    return new CellResult(
        value, Optional.ofNullable(failure), remarks, List.copyOf(declared.values()));
  }

  @Override
  public CellResult evaluated(CellSource source) {
    return new CellRun(state, running, source, List.of()).statements();
  }

  @Override
  public CellResult evaluatedPart(String part) {
    return new CellRun(state, running, cell, part, Optional.of(report), List.of()).statements();
  }

  @Override
  public <T> T onThread(Callable<T> work) throws Throwable {
    return state.thread().call(running, work::call);
  }

  @Override
  public boolean isStopped() {
    return running.isStopped();
  }

  private int magic(CellMagicRun magic) {
    var result = magic.run();
    failure = result.failure().orElse(null);
    value = result.value();
    remarks.addAll(result.remarks());
    result.declared().forEach(variable -> declared.put(variable.name(), variable));
    return magic.end();
  }

  /** Evaluates the statement that begins at a position; gives the position behind it. */
  private int statement(int at) {
    if (CellMagicRun.beginsAt(code, at)) {
      return magic(new CellMagicRun(state, this, cell, code, at));
    }
    try {
      var run = at < oneByOne ? Optional.<Statement>empty() : statements.longRun(at);
      if (run.isEmpty()) {
        var one = statements.from(at, magicLines.limit(at));
        return evaluated(at, one, state.shell().eval(one.source()));
      }
      var events = state.shell().eval(run.get().source());
      if (events.stream().anyMatch(event -> event.status() == Status.REJECTED)) {
        oneByOne = run.get().end();
        return at;
      }
      return evaluated(at, run.get(), events);
    } catch (RuntimeException | Error trouble) {
      if (trouble instanceof OutOfMemoryError) {
        state.reserve().release();
        remark(LargeVariables.advice(state.guard().fields()));
      }
      failure = running.isStopped() ? report.interrupted(trouble) : report.evaluator(trouble, at);
      return code.length();
    }
  }

  private int evaluated(int at, Statement statement, List<SnippetEvent> events) {
    events.forEach(event -> rememberPlace(event, at));
    events.forEach(event -> hear(event, at));
    keepValue(events, code.substring(at, statement.end()));
    return statement.end();
  }

  private void rememberPlace(SnippetEvent event, int at) {
    if (event.causeSnippet() == null) {
      state.places().remember(event.snippet().id(), cell, statements.lineOf(at));
    }
  }

  private void hear(SnippetEvent event, int at) {
    if (event.exception() != null) {
      failure = failureOf(event.exception());
    } else if (event.causeSnippet() != null) {
      hearOfDependent(event);
    } else if (event.status() == Status.REJECTED) {
      failure =
          explained(
              report.refused(at, state.shell().diagnostics(event.snippet()).toList()),
              event.snippet().source());
    } else {
      hearOfOwn(event.snippet(), event.status());
    }
  }

  /** A refusal, said better where a result without a name is missing. */
  private CellFailure explained(CellFailure refused, String source) {
    var reason = state.unnamed().explained(source);
    if (reason.isEmpty()) {
      return refused;
    }
    var trace = new ArrayList<>(refused.trace());
    trace.add(reason.get());
    return new CellFailure(
        refused.kind(), refused.name(), reason.get(), refused.place(), trace, refused.thrown());
  }

  private void hearOfOwn(Snippet snippet, Status status) {
    if (status.isActive()) {
      state.unnamed().heard(snippet);
    }
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

  /**
   * Says of a declaration what it waits for. One that waits for nothing was refused only when its
   * bytecode was made, for example because it is too large; it would spoil every later cell.
   */
  private void settle(DeclarationSnippet declaration) {
    if (!WAITING.contains(state.shell().status(declaration))) {
      return;
    }
    if (state.shell().unresolvedDependencies(declaration).findAny().isPresent()) {
      remark(FailureReport.waiting(declaration, state.shell()));
    } else if (failure == null) {
      failure = report.refused(0, state.shell().diagnostics(declaration).toList());
      state.shell().drop(declaration);
    }
  }

  private void remark(String sentence) {
    remarks.add(sentence);
    state.session().remark("Note: " + sentence + ".");
  }

  private CellFailure failureOf(Exception trouble) {
    var thrown = state.control().takeThrown();
    if (running.isStopped()) {
      return report.interrupted(thrown);
    }
    if (trouble instanceof UnresolvedReferenceException unresolved) {
      return report.unresolved(unresolved, state.shell());
    }
    if (trouble instanceof EvalException && thrown != null) {
      return story(thrown, trouble.getStackTrace());
    }
    return report.evaluator(trouble, 0);
  }

  /** Lets an exception tell its story where the code of cells runs, for it may be such code. */
  private CellFailure story(Throwable thrown, StackTraceElement[] calls) {
    if (thrown instanceof OutOfMemoryError) {
      remark(LargeVariables.advice(state.guard().fields()));
    }
    try {
      return state.thread().call(running, () -> report.thrown(thrown, calls));
    } catch (Throwable ownTrouble) {
      return running.isStopped() ? report.interrupted(thrown) : report.untold(thrown, ownTrouble);
    }
  }

  private void keepValue(List<SnippetEvent> events, String written) {
    var object = state.control().takeResult();
    value = CellResult.Value.NONE;
    var closed = JavaText.withoutBlankEnd(written).endsWith(";");
    if (failure == null && !closed && events.stream().anyMatch(CellRun::hasValue)) {
      value = shown(object);
    }
  }

  /** Renders a value on the thread of the cells, because rendering may call their code. */
  private CellResult.Value shown(Object object) {
    try {
      return state
          .thread()
          .call(
              running,
              () ->
                  Display.isLastName(object)
                      ? CellResult.Value.NONE
                      : new CellResult.Value(true, object, Display.render(object)));
    } catch (Throwable unexpected) {
      failure =
          running.isStopped() ? report.interrupted(null) : report.untold(unexpected, unexpected);
      return CellResult.Value.NONE;
    }
  }

  private static boolean hasValue(SnippetEvent event) {
    return event.causeSnippet() == null && WITH_VALUE.contains(event.snippet().subKind());
  }
}
