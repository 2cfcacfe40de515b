package agro.notebook.install;

import agro.report.InputProblem;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The command line that starts the kernel.
 *
 * @param java the Java launcher
 * @param options further options of the virtual machine, after those that the kernel always has
 * @param archive the class-data archive
 * @param jar the jar of the program
 */
public record LaunchLine(String java, List<String> options, Optional<String> archive, String jar) {

  /** What Jupyter replaces by the path of the connection file. */
  public static final String CONNECTION_FILE = "{connection_file}";

  private static final String SERIAL = "-XX:+UseSerialGC";
  private static final String ARCHIVE = "-XX:SharedArchiveFile=";
  private static final String SHARE = "-Xshare:auto";
  private static final String HEADLESS = "-Djava.awt.headless=true";

  /**
   * The optimising compiler waits for four times as many calls as usual before it takes a method.
   * The compiler of cells is itself Java: optimising it while the first cells wait costs a quarter
   * of their time. Loops are optimised as early as ever.
   */
  private static final List<String> LATE_OPTIMISING =
      List.of(
          "-XX:Tier4InvocationThreshold=20000",
          "-XX:Tier4MinInvocationThreshold=2400",
          "-XX:Tier4CompileThreshold=60000");

  private static final String COLLECTOR = "-XX:\\+Use\\w+GC";

  /**
   * Checks the options.
   *
   * @throws InputProblem when one of them would not be an option of the virtual machine
   */
  public LaunchLine {
    options = List.copyOf(options);
    options.forEach(LaunchLine::requireOption);
  }

  private static void requireOption(String option) {
    if (!option.startsWith("-") || option.matches("-jar|-m|--module(=.*)?|-cp|-classpath")) {
      throw InputProblem.of("\"" + option + "\" as an option of the virtual machine")
          .expected("one option that starts with a minus sign, such as -Xmx2g")
          .because("it stands before -jar in the command line that starts the kernel")
          .mend("give each option as --jvm-option=OPTION, without blanks around it");
    }
  }

  /**
   * The command line. A collector among the options takes the place of the serial one, since the
   * virtual machine refuses two.
   *
   * @return the arguments, the launcher first
   */
  public List<String> arguments() {
    var line = new ArrayList<String>();
    line.add(java);
    if (options.stream().noneMatch(option -> option.matches(COLLECTOR))) {
      line.add(SERIAL);
    }
    archive.ifPresent(
        file -> {
          line.add(ARCHIVE + file);
          line.add(SHARE);
        });
    line.addAll(LATE_OPTIMISING);
    line.add(HEADLESS);
    line.addAll(options);
    line.addAll(List.of("-jar", jar, "kernel", CONNECTION_FILE));
    return line;
  }

  /**
   * The same line with another archive.
   *
   * @param file the archive, or nothing
   * @return the changed line
   */
  LaunchLine withArchive(Optional<String> file) {
    return new LaunchLine(java, options, file, jar);
  }

  /**
   * The same line with more options.
   *
   * @param more the options, after the present ones
   * @return the changed line
   */
  LaunchLine withOptions(List<String> more) {
    var all = new ArrayList<>(options);
    all.addAll(more);
    return new LaunchLine(java, all, archive, jar);
  }

  /**
   * Reads a command line.
   *
   * @param arguments the arguments, the launcher first
   * @return the line, or nothing when it does not start a jar with Java
   */
  public static Optional<LaunchLine> parse(List<String> arguments) {
    var at = arguments.indexOf("-jar");
    if (at < 1 || at + 1 >= arguments.size()) {
      return Optional.empty();
    }
    var options = new ArrayList<String>();
    Optional<String> archive = Optional.empty();
    for (var option : arguments.subList(1, at)) {
      if (option.startsWith(ARCHIVE)) {
        archive = Optional.of(option.substring(ARCHIVE.length()));
      } else if (!List.of(SERIAL, SHARE, HEADLESS).contains(option)
          && !LATE_OPTIMISING.contains(option)) {
        options.add(option);
      }
    }
    return Optional.of(new LaunchLine(arguments.get(0), options, archive, arguments.get(at + 1)));
  }
}
