package agro.notebook.command;

import agro.notebook.run.CellOutcome;
import agro.notebook.run.CodeView;
import agro.notebook.run.NotebookRun;
import agro.notebook.run.NotebookRunner;
import agro.notebook.run.RunListener;
import agro.reading.SafeFile;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Runs a notebook and writes its executed copy and its page. */
@Command(
    name = "run",
    mixinStandardHelpOptions = true,
    usageHelpAutoWidth = true,
    description = "Run a notebook; write it with its outputs, and a page that needs nothing else.")
final class RunCommand implements Callable<Integer> {

  @Spec private CommandSpec spec;

  @Parameters(paramLabel = "NOTEBOOK", description = "The notebook, a file that ends in .ipynb.")
  private Path notebook;

  @Option(
      names = "--set",
      paramLabel = "NAME=VALUE",
      description = {
        "Set a parameter of the notebook, one that its cell tagged \"parameters\" declares.",
        "May be given several times."
      })
  private Map<String, String> parameters = new LinkedHashMap<>();

  @Option(
      names = "--out",
      paramLabel = "FOLDER",
      defaultValue = "target/pages",
      description = "Where the two files go; made if need be. Default: ${DEFAULT-VALUE}")
  private Path folder;

  @Option(
      names = "--code",
      paramLabel = "VIEW",
      defaultValue = "folded",
      description = "How the page shows the code: shown or folded. Default: ${DEFAULT-VALUE}")
  private CodeView code;

  @Option(
      names = "--pictures",
      paramLabel = "FOLDER",
      description = "Also write the figure of each cell tagged \"picture:NAME\" as NAME.png.")
  private Path pictures;

  @Override
  public Integer call() {
    var run = runner().run(notebook);
    run.failed()
        .ifPresent(
            outcome -> {
              throw NotebookFailure.of(run, outcome);
            });
    write(run);
    return 0;
  }

  private NotebookRunner runner() {
    var runner = NotebookRunner.standard().withListener(new TerminalProgress(err()));
    for (var parameter : parameters.entrySet()) {
      runner = runner.withParameter(parameter.getKey(), parameter.getValue());
    }
    return runner;
  }

  private void write(NotebookRun run) {
    var name = notebook.getFileName().toString().replaceFirst("\\.ipynb$", "");
    var page = run.toPage(code);
    var executed = folder.resolve(name + ".ipynb");
    var html = folder.resolve(name + ".html");
    SafeFile.writeText(executed, run.toNotebook());
    SafeFile.writeText(html, page);
    var out = spec.commandLine().getOut();
    if (!run.summary().isEmpty()) {
      out.println(run.summary());
    }
    out.println(executed);
    if (pictures != null) {
      run.pictures()
          .forEach(
              (pictureName, png) -> {
                var file = pictures.resolve(pictureName + ".png");
                SafeFile.writeBytes(file, png);
                out.println(file);
              });
    }
    out.println(html);
    out.flush();
  }

  private PrintWriter err() {
    return spec.commandLine().getErr();
  }

  /**
   * Says on the terminal how far the run is.
   *
   * @param err the terminal
   */
  private record TerminalProgress(PrintWriter err) implements RunListener {
    @Override
    public void cellStarts(int number, int total) {
      err.print("cell " + number + " of " + total);
      err.flush();
    }

    @Override
    public void cellEnded(CellOutcome outcome) {
      var seconds = outcome.time().toMillis() / 1000.0;
      err.println(String.format(Locale.ROOT, "  %.1f s", seconds));
    }
  }
}
