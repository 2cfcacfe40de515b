package agro.notebook.kernel;

import java.util.Map;
import jdk.jshell.spi.ExecutionControl;
import jdk.jshell.spi.ExecutionControlProvider;
import jdk.jshell.spi.ExecutionEnv;

/** Hands our engine to the JDK's shell. */
record SnippetEngine(SnippetControl control) implements ExecutionControlProvider {

  @Override
  public String name() {
    return "in-process";
  }

  @Override
  public ExecutionControl generate(ExecutionEnv shell, Map<String, String> parameters) {
    return control;
  }
}
