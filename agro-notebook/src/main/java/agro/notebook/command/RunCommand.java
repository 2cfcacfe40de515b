package agro.notebook.command;

import agro.notebook.run.CodeView;
import agro.notebook.run.NotebookSelection;
import agro.notebook.run.ParallelRuns.OtherNotebooks;
import agro.notebook.run.ParameterCheck;
import agro.notebook.run.RunTask;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Runs notebooks and writes their executed copies and their pages. */
@Command(
    name = "run",
    mixinStandardHelpOptions = true,
    usageHelpAutoWidth = true,
    subcommands = RunWorkerCommand.class,
    synopsisSubcommandLabel = "",
    description = {
      "Run notebooks; write each with its outputs, and a page that needs nothing else.",
      "",
      "When a cell fails, the notebook ends there. What it did until then is written under names"
          + " with .failed in them; files of an earlier run that went well stay as they are."
    },
    exitCodeListHeading = "%nExit status:%n",
    exitCodeList = {
      "0:All notebooks ran to their end.",
      "1:A notebook failed or could not be read.",
      "2:The command line was not understood."
    })
final class RunCommand implements Callable<Integer> {

  private static final int MOST_AT_ONCE = 4;

  @Spec private CommandSpec spec;

  @Parameters(
      arity = "0..*",
      paramLabel = "NOTEBOOK",
      description = {
        "Files that end in .ipynb, and folders: these stand for all notebooks in and below them."
      })
  private List<Path> notebooks = new ArrayList<>();

  @Option(
      names = "--set",
      paramLabel = "NAME=VALUE",
      description = {
        "Set a parameter, one that the cell tagged \"parameters\" declares. May be given several"
            + " times. With several notebooks each takes the parameters that it declares."
      })
  private Map<String, String> parameters = new LinkedHashMap<>();

  @Option(
      names = "--set-from",
      paramLabel = "FILE",
      description = {
        "Set parameters from a text file with a line NAME=VALUE for each; lines that begin with #"
            + " are remarks. --set goes before."
      })
  private Path parametersFile;

  @Option(
      names = "--out",
      paramLabel = "FOLDER",
      defaultValue = "target/pages",
      description = "Where the files go; made if need be. Default: ${DEFAULT-VALUE}")
  private Path folder;

  @Option(
      names = "--in-place",
      description = "Write the outputs into the notebook itself; the page goes to --out.")
  private boolean inPlace;

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

  @Option(
      names = "--parallel",
      paramLabel = "N",
      description = {
        "How many notebooks run at the same time, each in a process of its own. Default: as many"
            + " as there are processors, at most 4. A single notebook runs in this process."
      })
  private Integer atOnce;

  @Option(
      names = "--fail-fast",
      description = "Stop the other notebooks as soon as one fails. Without it all are run.")
  private boolean failFast;

  @Option(
      names = "--allow-errors",
      description = {
        "Go on after a cell that fails. The files get their ordinary names and show the errors,"
            + " the terminal lists them, and they do not change the exit status."
      })
  private boolean allowErrors;

  @Option(
      names = "--cell-timeout",
      paramLabel = "TIME",
      converter = TimeSpan.class,
      description = {
        "Interrupt a cell that takes longer, such as 90s, 5m or PT1H30M; it has failed then."
      })
  private Duration cellTimeout = Duration.ZERO;

  @Option(
      names = "--timings",
      description = {
        "Print the whole time and the slowest cells, and write the time of each cell into the"
            + " executed notebook, which without this option is the same in every run."
      })
  private boolean timings;

  @Option(
      names = {"-q", "--quiet"},
      description = "Do not say how far the runs are.")
  private boolean quiet;

  @Override
  public Integer call() {
    var values = parametersFile == null ? parameters : ParametersFile.read(parametersFile);
    values.putAll(parameters);
    var tasks = ParameterCheck.shared(tasks(), values);
    var terminal = new RunTerminal(spec.commandLine().getOut(), spec.commandLine().getErr());
    terminal.show(quiet ? RunTerminal.Detail.RESULTS : RunTerminal.Detail.PROGRESS);
    terminal.show(timings ? RunTerminal.Detail.TIMINGS : RunTerminal.Detail.RESULTS);
    terminal.show(traced() ? RunTerminal.Detail.TRACES : RunTerminal.Detail.RESULTS);
    if (tasks.size() == 1) {
      return terminal.runHere(tasks.get(0));
    }
    var others = failFast ? OtherNotebooks.STOP : OtherNotebooks.GO_ON;
    return terminal.runApart(tasks, atOnce(), others);
  }

  private boolean traced() {
    var option = spec.root().findOption("--trace");
    return option != null && Boolean.TRUE.equals(option.getValue());
  }

  private int atOnce() {
    return atOnce != null
        ? atOnce
        : Math.min(MOST_AT_ONCE, Runtime.getRuntime().availableProcessors());
  }

  private List<RunTask> tasks() {
    if (notebooks.isEmpty()) {
      throw wrong("no notebook is named; name files that end in .ipynb, or folders");
    }
    if (atOnce != null && atOnce < 1) {
      throw wrong("--parallel " + atOnce + " would run nothing; give 1 or more");
    }
    var options =
        new RunTask.Options(
            code,
            pictures == null ? "" : pictures.toString(),
            cellTimeout.toMillis(),
            allowErrors,
            timings,
            inPlace);
    var tasks =
        NotebookSelection.of(notebooks, folder).stream()
            .map(
                one ->
                    new RunTask(
                        one.file().toString(),
                        folder.resolve(one.stem()).toString(),
                        Map.of(),
                        options))
            .toList();
    WrittenFiles.check(tasks).ifPresent(trouble -> refuse(trouble));
    return tasks;
  }

  private void refuse(String trouble) {
    throw wrong(trouble);
  }

  private ParameterException wrong(String message) {
    return new ParameterException(spec.commandLine(), message);
  }
}
