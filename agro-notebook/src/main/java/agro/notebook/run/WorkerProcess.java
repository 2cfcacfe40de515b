package agro.notebook.run;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;

/**
 * The side of a run that does the work in a process of its own: reads one task, reports how far it
 * is and how it ended. It ends when nobody is left who would read that.
 */
public final class WorkerProcess {

  private static final int ABANDONED = 143;

  private WorkerProcess() {}

  /**
   * Does the work.
   *
   * @param in where the task comes from; its end means that the program that gave it is gone
   * @param out where reports go
   * @return the exit status: 0 when the notebook ran to its end, 1 otherwise
   * @throws IOException when no task comes
   */
  public static int work(InputStream in, PrintStream out) throws IOException {
    var lines = new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8));
    var first = lines.readLine();
    var task =
        RunWire.task(first == null ? "" : first)
            .orElseThrow(() -> new IOException("this command is started by run alone"));
    endWith(lines);
    var report = TaskRun.perform(task, new Teller(out));
    out.println(RunWire.report(report));
    out.flush();
    return report.succeeded() ? 0 : 1;
  }

  private static void endWith(BufferedReader lines) {
    var watch =
        new Thread(
            () -> {
              try {
                while (lines.readLine() != null) {
                  // Nothing else is said; only the end matters.
                }
              } catch (IOException gone) {
                // The same as the end.
              }
              WholeWrites.endProcess(ABANDONED);
            },
            "end of the program that gave the task");
    watch.setDaemon(true);
    watch.start();
  }

  private record Teller(PrintStream out) implements RunListener {
    @Override
    public void cellStarts(int number, int total) {
      out.println(RunWire.cell(new RunWire.CellStart(number, total)));
      out.flush();
    }

    @Override
    public void cellEnded(CellOutcome outcome) {}
  }
}
