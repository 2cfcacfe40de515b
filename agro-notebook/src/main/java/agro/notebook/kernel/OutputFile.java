package agro.notebook.kernel;

import java.io.BufferedOutputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Optional;

/**
 * Keeps all text that a cell prints: a little in memory, more in a file. Trouble with the disk is
 * remembered, never thrown.
 */
final class OutputFile {

  private static final int IN_MEMORY = 1 << 20;

  private final Path folder;
  private final String name;
  private final ByteArrayOutputStream memory = new ByteArrayOutputStream();
  private Path path;
  private OutputStream file;
  private String trouble;

  /**
   * Prepares a file; it is made when it is needed.
   *
   * @param folder where it is to be
   * @param name the beginning of its name
   */
  OutputFile(Path folder, String name) {
    this.folder = folder;
    this.name = name;
  }

  void write(byte[] bytes) {
    if (trouble != null) {
      return;
    }
    if (path == null && memory.size() + bytes.length <= IN_MEMORY) {
      memory.writeBytes(bytes);
      return;
    }
    try {
      open();
      file.write(bytes);
    } catch (IOException | RuntimeException full) {
      fail(full);
    }
  }

  private void open() throws IOException {
    if (path == null) {
      Files.createDirectories(folder);
      path = Files.createTempFile(folder, name + "-", ".txt");
    }
    if (file == null) {
      file = new BufferedOutputStream(Files.newOutputStream(path, StandardOpenOption.APPEND));
      memory.writeTo(file);
      memory.reset();
    }
  }

  /** Puts everything on disk, also what was still in memory. */
  void keep() {
    if (trouble == null) {
      try {
        open();
        file.close();
      } catch (IOException | RuntimeException full) {
        fail(full);
      }
      file = null;
    }
  }

  /** Forgets everything. */
  void discard() {
    memory.reset();
    try {
      if (file != null) {
        file.close();
      }
      if (path != null) {
        Files.deleteIfExists(path);
      }
    } catch (IOException | RuntimeException staysBehind) {
      memory.reset(); // an empty or useless file in the folder for temporary files does no harm
    }
    file = null;
    path = null;
  }

  private void fail(Exception why) {
    discard();
    trouble =
        "the file for it in " + folder + " could not be written (" + why + "), so the rest is lost";
  }

  /** Where the text lies; empty while it is in memory or when it could not be written. */
  Optional<Path> path() {
    return trouble == null ? Optional.ofNullable(path) : Optional.empty();
  }

  /** Why the text could not be kept, if it could not. */
  Optional<String> trouble() {
    return Optional.ofNullable(trouble);
  }
}
