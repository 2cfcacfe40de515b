package agro.notebook.jupyter;

import agro.report.InputProblem;
import java.io.PrintWriter;
import java.lang.reflect.Proxy;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.concurrent.locks.LockSupport;

/** A process that is a Jupyter kernel. */
public final class JupyterKernel {

  private static final String PARENT_VARIABLE = "JPY_PARENT_PID";
  private static final long END_NANOS = 900_000_000L;
  private static final long END_WITH_ARCHIVE_NANOS = 60_000_000_000L;

  private final RunningKernel kernel;

  private JupyterKernel(RunningKernel kernel) {
    this.kernel = kernel;
  }

  /**
   * Runs a kernel until its front end shuts it down, the process is asked to end, or the process
   * that started it is gone. The caller then ends the process; should that take longer than a
   * second, because code of a cell holds it up, it is ended all the same.
   *
   * @param connectionFile the path of the connection file
   * @param err where troubles are told
   * @return the exit status of the process: 0, or 1 when the kernel could not start
   */
  public static int run(String connectionFile, PrintWriter err) {
    try (var kernel = open(connectionFile, err)) {
      var process = new JupyterKernel(kernel);
      var watch = new Thread(process::watch, "jupyter-watch");
      watch.setDaemon(true);
      watch.start();
      kernel.awaitEnd();
      process.endInASecond();
      return 0;
    } catch (InputProblem problem) {
      err.println(problem.getMessage());
      err.flush();
      return 1;
    } catch (InterruptedException e) {
      return 0;
    }
  }

  private static RunningKernel open(String connectionFile, PrintWriter err) {
    try {
      var bind = System.getenv(ConnectionFileReader.BIND_VARIABLE);
      var connection = ConnectionFileReader.read(Path.of(connectionFile), bind);
      return RunningKernel.open(connection, RunningKernel.Settings.usual(), err);
    } catch (InvalidPathException e) {
      throw InputProblem.of("\"" + connectionFile + "\" is no path of a file")
          .expected("the connection file of a Jupyter front end")
          .because("the kernel listens at the ports this file names")
          .mend("start the kernel from Jupyter, which names the file");
    }
  }

  /** What is not needed for the first answer, and so comes after it. */
  private void watch() {
    onSignal("INT", kernel::interrupt);
    onSignal("TERM", kernel::end);
    watchParent(System.getenv(PARENT_VARIABLE));
  }

  /**
   * Does something on a signal. The class for that is outside the Java standard and a compiler
   * warns of it, so it is asked for by name; without it signals do what they always do.
   */
  private void onSignal(String name, Runnable action) {
    try {
      var signal = Class.forName("sun.misc.Signal");
      var handler = Class.forName("sun.misc.SignalHandler");
      var listener =
          Proxy.newProxyInstance(
              handler.getClassLoader(),
              new Class<?>[] {handler},
              (proxy, method, arguments) -> {
                if (method.getName().equals("handle")) {
                  action.run();
                  return null;
                }
                return method.getName().equals("hashCode") ? 1 : null;
              });
      signal
          .getMethod("handle", signal, handler)
          .invoke(null, signal.getConstructor(String.class).newInstance(name), listener);
    } catch (ReflectiveOperationException | RuntimeException e) {
      kernel.complaints().about("signal " + name, e);
    }
  }

  /** Under Windows the variable holds a handle and no process number, and then nothing is found. */
  private void watchParent(String number) {
    if (number == null || !number.matches("[0-9]{1,18}") || number.equals("1")) {
      return;
    }
    if (System.getProperty("os.name", "").startsWith("Windows")) {
      return;
    }
    // A process that cannot be seen from here, as out of a container, is nobody to wait for.
    ProcessHandle.of(Long.parseLong(number))
        .ifPresent(
            parent -> {
              parent.onExit().join();
              kernel.end();
            });
  }

  /** Ends the process within a second, whatever the code of cells does against it. */
  private void endInASecond() {
    var halt =
        new Thread(
            () -> {
              LockSupport.parkNanos(writesArchive() ? END_WITH_ARCHIVE_NANOS : END_NANOS);
              Runtime.getRuntime().halt(0);
            },
            "jupyter-halt");
    halt.setDaemon(true);
    halt.start();
  }

  /** A process that writes a class-data archive at its end needs more than a second for it. */
  private static boolean writesArchive() {
    return ProcessHandle.current()
        .info()
        .arguments()
        .map(arguments -> String.join(" ", arguments).contains("-XX:ArchiveClassesAtExit"))
        .orElse(false);
  }
}
