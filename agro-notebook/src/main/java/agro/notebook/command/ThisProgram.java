package agro.notebook.command;

import java.io.File;
import java.lang.management.ManagementFactory;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** How this program is started once more: the same Java, the same options, the same jar. */
final class ThisProgram {

  /** Options that belong to one process alone: a port or a file that only one can have. */
  private static final List<String> OF_ONE_PROCESS =
      List.of(
          "-agentlib:jdwp",
          "-Xrunjdwp",
          "-Xdebug",
          "-XX:ArchiveClassesAtExit",
          "-XX:StartFlightRecording",
          "-Dcom.sun.management.jmxremote");

  private static final List<String> OPTIONS_FROM_OUTSIDE =
      List.of("JDK_JAVA_OPTIONS", "JAVA_TOOL_OPTIONS", "_JAVA_OPTIONS");

  private ThisProgram() {}

  /**
   * The command that starts this program in another process.
   *
   * @param arguments the arguments of the program
   * @return the command, to be started in the same working directory
   */
  static List<String> command(List<String> arguments) {
    var command = new ArrayList<String>();
    command.add(java().toString());
    command.addAll(
        options(ManagementFactory.getRuntimeMXBean().getInputArguments(), fromOutside()));
    var classes = classes();
    if (Files.isRegularFile(classes) && isWholeClassPath(classes)) {
      command.add("-jar");
      command.add(classes.toString());
    } else {
      command.add("-cp");
      command.add(System.getProperty("java.class.path"));
      command.add(Main.class.getName());
    }
    command.addAll(arguments);
    return command;
  }

  private static Path java() {
    var bin = Path.of(System.getProperty("java.home"), "bin");
    var windows = bin.resolve("java.exe");
    return Files.exists(windows) ? windows : bin.resolve("java");
  }

  /** The JVM's options without those of one process alone and those that come by themselves. */
  static List<String> options(List<String> given, Set<String> byThemselves) {
    return given.stream()
        .filter(option -> OF_ONE_PROCESS.stream().noneMatch(option::startsWith))
        .filter(option -> !byThemselves.contains(option))
        .toList();
  }

  /** Options from the environment reach every Java process; twice would start agents twice. */
  private static Set<String> fromOutside() {
    var options = new HashSet<String>();
    OPTIONS_FROM_OUTSIDE.stream()
        .map(System::getenv)
        .flatMap(value -> value == null ? Stream.empty() : Arrays.stream(value.split("\\s+", -1)))
        .forEach(options::add);
    return options;
  }

  private static Path classes() {
    try {
      return Path.of(Main.class.getProtectionDomain().getCodeSource().getLocation().toURI());
    } catch (URISyntaxException impossible) {
      throw new IllegalStateException("the program does not know where it lies", impossible);
    }
  }

  private static boolean isWholeClassPath(Path jar) {
    var all = System.getProperty("java.class.path");
    return !all.contains(File.pathSeparator)
        && Path.of(all).toAbsolutePath().normalize().equals(jar.toAbsolutePath().normalize());
  }
}
