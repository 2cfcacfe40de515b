package agro.notebook.install;

import agro.report.InputProblem;
import agro.report.Progress;
import agro.report.SourceLocation;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Installs the kernel. Everything is made and tried first; the kernel spec is written last, so that
 * a failure leaves an earlier installation as it was. Other kernels are never touched.
 *
 * @param at system and environment
 * @param rehearsal cells whose classes the class-data archive is to hold
 * @param progress is told what is being done
 */
public record KernelInstaller(Surroundings at, List<String> rehearsal, Progress progress) {

  private static final Duration PATIENCE = Duration.ofMinutes(1);

  /** Copies the cells. */
  public KernelInstaller {
    rehearsal = List.copyOf(rehearsal);
  }

  /**
   * Installs the kernel, in the place of an earlier installation if there is one.
   *
   * @param request what, where and how
   * @return what was done
   * @throws InputProblem when the request cannot be carried out, or the kernel does not run
   * @throws UncheckedIOException when files cannot be written
   */
  public Installed install(InstallRequest request) {
    requireJar(request.jar());
    var java = runningJava();
    var folder = folder(request.destination(), request.name());
    folder.requireOurs();
    var before = folder.programFiles();
    var replaced = Files.exists(folder.spec());
    var created = !Files.exists(folder.path());
    try {
      Files.createDirectories(folder.path());
      var remarks = new ArrayList<String>();
      var line = place(request, folder);
      progress.tell("starting the kernel once", 0, 0);
      tryOut(line);
      line = withArchive(line, request, folder, java, remarks);
      var origin = new KernelSpec.Origin(request.version(), java.version());
      folder.write(new KernelSpec(request.displayName(), line.arguments(), Optional.of(origin)));
      var kept = new HashSet<Path>();
      kept.add(Path.of(line.jar()));
      line.archive().map(Path::of).ifPresent(kept::add);
      folder.deleteAllProgramFilesBut(kept);
      return new Installed(folder.path(), request.name(), replaced, remarks);
    } catch (IOException e) {
      undo(folder, before, created);
      throw new UncheckedIOException("the kernel could not be written to " + folder.path(), e);
    } catch (RuntimeException e) {
      undo(folder, before, created);
      throw e;
    }
  }

  /**
   * Removes an installation.
   *
   * @param destination for whom it was installed
   * @param name the name of the kernel
   * @return what was found there and removed, as sentences
   * @throws InputProblem when the kernel of that name is not ours or there is none
   */
  public List<String> remove(Destination destination, String name) {
    var folder = folder(destination, name);
    if (!Files.exists(folder.spec())) {
      throw InputProblem.at(SourceLocation.file(folder.path().toString()), "no kernel is here")
          .expected("the folder of a kernel that this program installed")
          .because("there is nothing to remove")
          .mend("name the place with --user, --sys-prefix or --prefix, as at the installation");
    }
    return folder.remove()
        ? List.of("removed " + folder.path())
        : List.of(
            "removed the kernel from " + folder.path(),
            "files that the installation did not write stay there: "
                + String.join(", ", folder.otherFiles()));
  }

  private KernelFolder folder(Destination destination, String name) {
    var data = Path.of(destination.dataFolder(at)).toAbsolutePath().normalize();
    return KernelFolder.of(data, name);
  }

  private static void requireJar(Path jar) {
    if (!Files.isRegularFile(jar)) {
      throw InputProblem.at(SourceLocation.file(jar.toString()), "this is no jar")
          .expected("the program agro-notebook.jar")
          .because("Jupyter starts the kernel from that one file")
          .mend("build the jar with mvn -q -B -DskipTests package, and install with java -jar");
    }
  }

  private static JavaProgram runningJava() {
    var program = JavaProgram.running();
    var java =
        JavaProgram.ask(program.toString())
            .orElseThrow(() -> unsuitable(program, "does not list its modules"));
    if (!java.lacking().isEmpty()) {
      throw unsuitable(
          program, "is a JRE: it lacks the modules " + String.join(", ", java.lacking()));
    }
    return java;
  }

  private static InputProblem unsuitable(Path program, String what) {
    return InputProblem.at(SourceLocation.file(program.toString()), "this Java " + what)
        .expected("a JDK, version " + JavaProgram.OLDEST + " or newer")
        .because("the kernel compiles cells, with the compiler of the JDK that runs it")
        .mend("run the installation with the java program of a JDK");
  }

  private LaunchLine place(InstallRequest request, KernelFolder folder) throws IOException {
    var source = request.jar().toAbsolutePath().normalize();
    var jar = source;
    if (request.jarUse() == InstallRequest.JarUse.COPIED) {
      jar = folder.jarFile(Fingerprint.of(source));
      if (!Files.exists(jar)) {
        progress.tell("copying the program", 0, 0);
        var draft = KernelFolder.draftOf(jar);
        Files.copy(source, draft, StandardCopyOption.REPLACE_EXISTING);
        Files.move(draft, jar, StandardCopyOption.REPLACE_EXISTING);
      }
    }
    var java = JavaProgram.running().toString();
    return new LaunchLine(java, request.options(), Optional.empty(), jar.toString());
  }

  private static void tryOut(LaunchLine line) {
    try (var talk = KernelConversation.start(line.arguments(), PATIENCE)) {
      var answer = talk.evaluate("1 + 1");
      if (!answer.fine() || !answer.result().equals("2")) {
        throw unusable("1 + 1 gave \"" + answer.result() + answer.error() + "\"");
      }
      talk.sayGoodbye();
    } catch (KernelTrouble e) {
      throw unusable(e.inFull());
    }
  }

  private static InputProblem unusable(String what) {
    return InputProblem.of("the kernel was started for a trial: " + what)
        .expected("a kernel that evaluates 1 + 1 and ends when asked to")
        .because("Jupyter would meet the same; nothing was installed")
        .mend(
            "look at what the kernel wrote; options given with --jvm-option are the first thing to"
                + " leave out");
  }

  private LaunchLine withArchive(
      LaunchLine line,
      InstallRequest request,
      KernelFolder folder,
      JavaProgram java,
      List<String> remarks)
      throws IOException {
    if (request.archiveUse() == InstallRequest.ArchiveUse.NONE) {
      return line;
    }
    progress.tell("making the class-data archive for a quick start", 0, 0);
    var file = folder.archiveFile(archiveName(line, java));
    try {
      ClassArchive.make(line, file, rehearsal);
      return line.withArchive(Optional.of(file.toString()));
    } catch (KernelTrouble e) {
      remarks.add(
          "The kernel works, but starts more slowly than it could: no class-data archive could be"
              + " made. "
              + e.inFull());
      return line;
    }
  }

  /** Every archive gets a name of its own, since a running kernel may hold an earlier one. */
  private static String archiveName(LaunchLine line, JavaProgram java) {
    var made = new ArrayList<>(line.arguments());
    made.add(java.version());
    made.add(System.getProperty("java.vm.version", ""));
    made.add(Long.toString(System.currentTimeMillis()));
    return Fingerprint.of(made);
  }

  private static void undo(KernelFolder folder, Set<Path> before, boolean created) {
    folder.deleteAllProgramFilesBut(before);
    if (created) {
      try {
        Files.deleteIfExists(folder.path());
      } catch (IOException notEmpty) {
        // Somebody else has put a file there meanwhile.
      }
    }
  }
}
