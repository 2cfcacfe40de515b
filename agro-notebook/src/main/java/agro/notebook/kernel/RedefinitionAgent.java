package agro.notebook.kernel;

import java.lang.instrument.Instrumentation;
import java.util.Optional;

/**
 * Receives the right to redefine classes when the process starts: named as {@code
 * Launcher-Agent-Class} in the manifest of the runnable jar, or given with {@code -javaagent}.
 */
public final class RedefinitionAgent {

  private static volatile Instrumentation instrumentation;

  private RedefinitionAgent() {}

  /**
   * Called by the launcher of a runnable jar, before its main method.
   *
   * @param arguments not used
   * @param granted the right to redefine classes
   */
  public static void agentmain(String arguments, Instrumentation granted) {
    instrumentation = granted;
  }

  /**
   * Called when the agent is given on the command line.
   *
   * @param arguments not used
   * @param granted the right to redefine classes
   */
  public static void premain(String arguments, Instrumentation granted) {
    instrumentation = granted;
  }

  /**
   * The right to redefine classes.
   *
   * @return empty when the process was started without the agent
   */
  static Optional<Instrumentation> instrumentation() {
    return Optional.ofNullable(instrumentation).filter(Instrumentation::isRedefineClassesSupported);
  }
}
