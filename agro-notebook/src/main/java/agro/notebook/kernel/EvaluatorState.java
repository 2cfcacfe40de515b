package agro.notebook.kernel;

import agro.notebook.display.Display;
import jdk.jshell.JShell;

/** What the cells of one evaluator share. */
final class EvaluatorState implements AutoCloseable {

  private final OutputSession session = new OutputSession();
  private final CellThread thread = new CellThread(session::adoptThread);
  private final SnippetLoader loader = new SnippetLoader(EvaluatorState.class.getClassLoader());
  private final SnippetControl control = new SnippetControl(loader, thread);
  private final SnippetPlaces places = new SnippetPlaces();
  private final JShell shell;
  private final VariableGuard guard;

  EvaluatorState() {
    shell = JShell.builder().executionEngine(new SnippetEngine(control), null).build();
    guard = new VariableGuard(shell, control);
    thread.useLoader(loader);
  }

  JShell shell() {
    return shell;
  }

  OutputSession session() {
    return session;
  }

  SnippetControl control() {
    return control;
  }

  SnippetPlaces places() {
    return places;
  }

  VariableGuard guard() {
    return guard;
  }

  CellThread thread() {
    return thread;
  }

  /** Renders a value on the thread of the cells, because rendering may call their code. */
  CellResult.Value shown(Object object) {
    try {
      return thread.call(
          () ->
              Display.isLastName(object)
                  ? CellResult.Value.NONE
                  : new CellResult.Value(true, object, Display.render(object)));
    } catch (Throwable unexpected) {
      throw new IllegalStateException("the value could not be shown", unexpected);
    }
  }

  @Override
  public void close() {
    shell.close();
    thread.close();
    session.close();
  }
}
