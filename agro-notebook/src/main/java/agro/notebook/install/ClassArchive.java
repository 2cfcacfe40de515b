package agro.notebook.install;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;

/**
 * The class-data archive: classes as the virtual machine holds them, which spares it their reading
 * and checking at the next start. It fits one build of one JDK, one jar at one place and one
 * collector; where it does not fit, the virtual machine passes it over without a word. Of a jar
 * whose path has a blank in it JDK 17 keeps no classes, but still those of the JDK, which are most.
 */
final class ClassArchive {

  private static final Duration PATIENCE = Duration.ofMinutes(2);
  private static final List<String> QUIET =
      List.of("-Xlog:disable", "-Xlog:all=error:stderr", "-Xlog:cds=off", "-Xlog:cds+dynamic=off");

  private ClassArchive() {}

  /**
   * Lets a kernel work through cells and keeps the classes it used.
   *
   * @param line how the kernel is started, without an archive
   * @param file where the archive goes; an older one is replaced once the new one is whole
   * @param cells what the kernel evaluates; one that fails is passed over
   * @throws KernelTrouble when the kernel fails or the archive cannot be used
   * @throws IOException when files cannot be written
   */
  static void make(LaunchLine line, Path file, List<String> cells)
      throws KernelTrouble, IOException {
    var draft = KernelFolder.draftOf(file);
    Files.deleteIfExists(draft);
    try {
      var options = new ArrayList<>(QUIET);
      options.add("-XX:ArchiveClassesAtExit=" + draft);
      var rehearsal = line.withOptions(options);
      try (var talk = KernelConversation.start(rehearsal.arguments(), PATIENCE)) {
        for (var cell : cells) {
          talk.evaluate(cell);
        }
        talk.sayGoodbye();
      }
      if (!Files.isRegularFile(draft)) {
        throw new KernelTrouble("the virtual machine wrote no archive", "");
      }
      var refusal = refusal(line.withArchive(Optional.of(draft.toString())));
      if (refusal.isPresent()) {
        throw new KernelTrouble("the virtual machine does not take its archive", refusal.get());
      }
      Files.move(draft, file, StandardCopyOption.REPLACE_EXISTING);
    } finally {
      Files.deleteIfExists(draft);
    }
  }

  /**
   * Asks the virtual machine whether it uses an archive.
   *
   * @param line a command line with an archive
   * @return what it says when it does not; nothing when it does
   */
  static Optional<String> refusal(LaunchLine line) throws IOException {
    var command = new ArrayList<String>();
    for (var argument : line.arguments()) {
      command.add(argument.equals("-Xshare:auto") ? "-Xshare:on" : argument);
    }
    // The same jar and options, but a command that ends at once.
    var program = command.subList(0, command.indexOf("-jar") + 2);
    program.add("--version");
    var said = Files.createTempFile("agro-archive-", ".txt");
    try {
      var process =
          new ProcessBuilder(program)
              .redirectErrorStream(true)
              .redirectOutput(said.toFile())
              .start();
      if (!process.waitFor(PATIENCE.toSeconds(), TimeUnit.SECONDS)) {
        process.destroyForcibly();
        return Optional.of("no answer");
      }
      return process.exitValue() == 0
          ? Optional.empty()
          : Optional.of(Files.readString(said, StandardCharsets.UTF_8).strip());
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return Optional.of("interrupted");
    } finally {
      Files.deleteIfExists(said);
    }
  }
}
