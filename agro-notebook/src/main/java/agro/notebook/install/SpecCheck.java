package agro.notebook.install;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;

/**
 * Checks one kernel spec: its file, the Java, the jar and the archive that it names, and the kernel
 * itself by starting it.
 *
 * @param folder the folder of the spec
 * @param program the running program
 */
record SpecCheck(KernelFolder folder, ProgramVersion program) {

  static final String AGAIN = "Install the kernel again: java -jar agro-notebook.jar install.";

  List<Finding> findings() {
    var spec = folder.read();
    if (spec.isEmpty()) {
      return List.of(unreadableSpec());
    }
    var arguments = spec.get().arguments();
    var line = LaunchLine.parse(arguments);
    if (line.isEmpty()
        || arguments.stream().noneMatch(it -> it.contains(LaunchLine.CONNECTION_FILE))) {
      return List.of(
          Finding.problem(
              "The command line in " + folder.spec() + " does not start this kernel", AGAIN));
    }
    var findings = new ArrayList<Finding>();
    findings.add(Finding.good("The kernel spec is " + folder.spec()));
    var java = java(line.get().java());
    findings.add(java);
    findings.add(jar(line.get().jar()));
    // A kernel that cannot run has nothing to say about its archive.
    if (java.rank() == Finding.Rank.GOOD && new File(line.get().jar()).isFile()) {
      findings.add(archive(line.get(), spec.get()));
      findings.addAll(StartCheck.findings(arguments));
    }
    return findings;
  }

  private Finding unreadableSpec() {
    return Files.isReadable(folder.spec())
        ? Finding.problem(
            "The file " + folder.spec() + " is no kernel spec", "Remove it and install again.")
        : Finding.problem(
            "The file " + folder.spec() + " cannot be read",
            "Give yourself the right to read it and its folder.");
  }

  private static Finding java(String java) {
    if (isGone(java)) {
      return Finding.problem(
          "The Java that the kernel spec names is gone: " + java,
          "Install the kernel again with a JDK that is there: java -jar agro-notebook.jar"
              + " install.");
    }
    var answer = JavaProgram.ask(java);
    if (answer.isEmpty()) {
      return Finding.problem(
          "The Java that the kernel spec names does not answer: " + java,
          "Install the kernel again with a JDK "
              + JavaProgram.OLDEST
              + " or newer: java -jar agro-notebook.jar install.");
    }
    var found = answer.get();
    if (found.isTooOld()) {
      return Finding.problem(
          "The Java of the kernel is too old: version " + found.version() + ", " + java,
          "Install the kernel again with a JDK " + JavaProgram.OLDEST + " or newer.");
    }
    if (!found.lacking().isEmpty()) {
      return Finding.problem(
          "The Java of the kernel is a JRE, "
              + java
              + ": it lacks the modules "
              + String.join(", ", found.lacking()),
          "Install a JDK, and the kernel again with it: cells need its compiler.");
    }
    return Finding.good("It runs on the JDK " + found.version() + ", " + java);
  }

  /** A name without a folder is left to the system, which looks for it on the PATH. */
  private static boolean isGone(String program) {
    var file = new File(program);
    return file.isAbsolute() && !(file.isFile() && file.canExecute());
  }

  private Finding jar(String jar) {
    if (!new File(jar).isFile()) {
      return Finding.problem("The program that the kernel spec names is gone: " + jar, AGAIN);
    }
    var found = ProgramVersion.of(new File(jar).toPath());
    if (found.isEmpty()) {
      return Finding.problem("The program cannot be read: " + jar, AGAIN);
    }
    var installed = found.get();
    if (program.equals(ProgramVersion.UNKNOWN) || installed.equals(program)) {
      return Finding.good("The program is " + jar + ", version " + installed.version());
    }
    if (installed.version().equals(program.version())) {
      return Finding.note(
          "The installed program is another build of version "
              + installed.version()
              + " than this one: "
              + jar,
          "Install the kernel again if Jupyter is to use this build.");
    }
    return Finding.problem(
        "The installed program has version "
            + installed.version()
            + ", this one version "
            + program.version()
            + ": "
            + jar,
        "Install the kernel again with the newer one of the two.");
  }

  private static Finding archive(LaunchLine line, KernelSpec spec) {
    if (line.archive().isEmpty()) {
      return Finding.note(
          "There is no class-data archive, so the kernel starts more slowly than it could",
          "Install the kernel again without --no-archive.");
    }
    var file = line.archive().get();
    if (!new File(file).isFile()) {
      return Finding.problem(
          "The class-data archive is gone, so the kernel starts slowly: " + file, AGAIN);
    }
    try {
      return ClassArchive.refusal(line)
          .map(
              said ->
                  Finding.problem(
                      "The class-data archive does not fit, so the kernel starts slowly: it was"
                          + " made with Java "
                          + spec.origin().map(KernelSpec.Origin::javaVersion).orElse("unknown")
                          + ", and Java or the program has changed since. The virtual machine said:"
                          + " "
                          + said.replace("\n", "\n    "),
                      AGAIN))
          .orElseGet(() -> Finding.good("The class-data archive is used"));
    } catch (IOException e) {
      return Finding.note("The class-data archive could not be tried: " + e.getMessage(), AGAIN);
    }
  }
}
