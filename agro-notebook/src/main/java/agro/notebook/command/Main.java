package agro.notebook.command;

import agro.notebook.jupyter.JupyterKernel;
import java.io.OutputStream;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** The program: one command line with a command for each job. */
@Command(
    name = "agro",
    mixinStandardHelpOptions = true,
    versionProvider = Main.Version.class,
    synopsisSubcommandLabel = "COMMAND",
    usageHelpAutoWidth = true,
    description = "The arithmetic of pest management, from the command line.")
public final class Main implements Runnable {

  /** Every command of the program; a new one is added here. */
  private static List<Object> commands() {
    return List.of(
        new RunCommand(),
        new ForecastCommand(),
        new HindcastCommand(),
        new BulletinCommand(),
        new ClassPapersCommand(),
        new TemplateCommand(),
        new InstallCommand(),
        new CheckCommand(),
        new KernelCommand());
  }

  @Spec private CommandSpec spec;

  @Option(
      names = "--trace",
      scope = CommandLine.ScopeType.INHERIT,
      description = "Print the technical details of an error.")
  private boolean trace;

  private Main() {}

  /**
   * Runs the program and ends the process with its exit status: 0 when all went well, 1 when
   * something could not be done, 2 when the command line could not be understood.
   *
   * @param arguments the command line
   */
  public static void main(String[] arguments) {
    System.setProperty("java.awt.headless", "true");
    var out = utf8(System.out);
    var err = utf8(System.err);
    System.setOut(out);
    System.setErr(err);
    var status =
        isKernel(arguments)
            ? JupyterKernel.run(arguments[1], new PrintWriter(err, true, StandardCharsets.UTF_8))
            : run(List.of(arguments), out, err);
    out.flush();
    err.flush();
    System.exit(status);
  }

  /** A kernel is to answer soon, so it begins without the parser of command lines. */
  private static boolean isKernel(String[] arguments) {
    return arguments.length == 2 && arguments[0].equals("kernel") && !arguments[1].startsWith("-");
  }

  private static PrintStream utf8(OutputStream stream) {
    return new PrintStream(stream, true, StandardCharsets.UTF_8);
  }

  /**
   * Runs the program within this process.
   *
   * @param arguments the command line
   * @param out where results go, as UTF-8
   * @param err where progress and errors go, as UTF-8
   * @return the exit status
   */
  public static int run(List<String> arguments, PrintStream out, PrintStream err) {
    var main = new Main();
    var line = new CommandLine(main);
    commands().forEach(line::addSubcommand);
    line.setCaseInsensitiveEnumValuesAllowed(true);
    line.registerConverter(LocalDate.class, Main::day);
    line.registerConverter(long.class, Main::wholeNumber);
    line.setOut(new PrintWriter(out, true, StandardCharsets.UTF_8));
    line.setErr(new PrintWriter(err, true, StandardCharsets.UTF_8));
    line.setExecutionExceptionHandler(
        (trouble, at, parsed) -> {
          ErrorText.print(trouble, main.trace, at.getErr());
          return CommandLine.ExitCode.SOFTWARE;
        });
    return line.execute(arguments.toArray(String[]::new));
  }

  private static LocalDate day(String text) {
    try {
      return LocalDate.parse(text);
    } catch (DateTimeParseException e) {
      throw new CommandLine.TypeConversionException(
          "\"" + text + "\" is no day of the calendar, such as 2026-06-16");
    }
  }

  private static long wholeNumber(String text) {
    try {
      return Long.parseLong(text);
    } catch (NumberFormatException e) {
      throw new CommandLine.TypeConversionException(
          "\"" + text + "\" is no whole number, such as 1");
    }
  }

  /** The version that the build wrote into the jar. */
  static final class Version implements CommandLine.IVersionProvider {
    @Override
    public String[] getVersion() {
      var version = Main.class.getPackage().getImplementationVersion();
      return new String[] {"agro " + (version == null ? "(not from its jar)" : version)};
    }
  }

  /** Without a command the help is printed. */
  @Override
  public void run() {
    spec.commandLine().usage(spec.commandLine().getOut());
  }
}
