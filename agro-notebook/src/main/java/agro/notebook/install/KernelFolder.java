package agro.notebook.install;

import agro.reading.SafeFile;
import agro.report.InputProblem;
import agro.report.SourceLocation;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryNotEmptyException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The folder of one kernel spec. Files with a changing content have a name made from it, so that a
 * new installation never writes over a file that a running kernel has open; {@code kernel.json} is
 * written last and makes the switch.
 *
 * @param path the folder
 */
record KernelFolder(Path path) {

  private static final String SPEC = "kernel.json";
  private static final String PROGRAM = "agro-notebook-";
  private static final String PART = ".part";

  static KernelFolder of(Path dataFolder, String name) {
    requireName(name);
    return new KernelFolder(dataFolder.resolve("kernels").resolve(name));
  }

  /** Jupyter ignores folders with any other name. */
  private static void requireName(String name) {
    if (!name.matches("[a-z0-9._-]+") || name.matches("\\.+")) {
      throw InputProblem.of("\"" + name + "\" as the name of a kernel")
          .expected("lower-case letters a to z, digits, dots, hyphens and underscores")
          .because("Jupyter overlooks a kernel with any other name")
          .mend("choose a name such as agro-java");
    }
  }

  Path spec() {
    return path.resolve(SPEC);
  }

  /** The spec in the folder; empty when there is none or it cannot be understood. */
  Optional<KernelSpec> read() {
    try {
      return KernelSpec.parse(Files.readString(spec(), StandardCharsets.UTF_8));
    } catch (IOException none) {
      return Optional.empty();
    }
  }

  /** Refuses a folder with a kernel of somebody else. */
  void requireOurs() {
    if (Files.exists(spec()) && read().flatMap(KernelSpec::origin).isEmpty()) {
      throw InputProblem.at(SourceLocation.file(spec().toString()), "the kernel of another program")
          .expected("no kernel of this name, or one that this program installed")
          .because("other kernels are never touched")
          .mend("choose another name with --name, or remove that kernel yourself first");
    }
  }

  /** A file for the jar, named after what is in it. */
  Path jarFile(String fingerprint) {
    return path.resolve(PROGRAM + fingerprint + ".jar");
  }

  /** A file for the class-data archive, named after what it was made from. */
  Path archiveFile(String fingerprint) {
    return path.resolve(PROGRAM + fingerprint + ".jsa");
  }

  /** The name under which a file is written before it is whole. */
  static Path draftOf(Path file) {
    return file.resolveSibling(file.getFileName() + PART);
  }

  void write(KernelSpec spec) {
    KernelIcon.SIZES.forEach(
        size ->
            SafeFile.writeBytes(
                path.resolve("logo-" + size + "x" + size + ".png"), KernelIcon.png(size)));
    SafeFile.writeText(spec(), spec.toJson());
  }

  /** Deletes files of earlier installations, as far as no running program holds them. */
  void deleteAllProgramFilesBut(Set<Path> kept) {
    for (var file : programFiles()) {
      if (!kept.contains(file)) {
        try {
          Files.deleteIfExists(file);
        } catch (IOException heldByARunningKernel) {
          // The next installation tries again.
        }
      }
    }
  }

  Set<Path> programFiles() {
    try (var files = Files.list(path)) {
      return new HashSet<>(
          files
              .filter(
                  file ->
                      file.getFileName()
                          .toString()
                          .matches("agro-notebook-[0-9a-f]+\\.(jar|jsa)(\\.part)?"))
              .toList());
    } catch (IOException none) {
      return Set.of();
    }
  }

  /**
   * Deletes what the installation wrote, and the folder when nothing else is in it.
   *
   * @return whether the folder is gone
   */
  boolean remove() {
    requireOurs();
    try {
      Files.deleteIfExists(spec());
      for (var size : KernelIcon.SIZES) {
        Files.deleteIfExists(path.resolve("logo-" + size + "x" + size + ".png"));
      }
      for (var file : programFiles()) {
        Files.deleteIfExists(file);
      }
      Files.deleteIfExists(path);
      return true;
    } catch (DirectoryNotEmptyException othersAreIn) {
      return false;
    } catch (IOException e) {
      throw new UncheckedIOException(path + " could not be removed whole", e);
    }
  }

  List<String> otherFiles() {
    try (var files = Files.list(path)) {
      return files.map(file -> file.getFileName().toString()).sorted().toList();
    } catch (IOException none) {
      return List.of();
    }
  }
}
