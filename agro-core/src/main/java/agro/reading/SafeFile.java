package agro.reading;

import agro.report.InputProblem;
import agro.report.SourceLocation;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;

/**
 * Files that are written whole or not at all: to a new file beside the target, which then takes the
 * target's place. A failure leaves an older file as it was and no new one behind.
 */
public final class SafeFile {

  private static final int MOST_NAMES_TRIED = 1000;

  private SafeFile() {}

  /**
   * Writes text in UTF-8. Folders above the file are created.
   *
   * @param file the file, which may exist
   * @param text the whole content
   * @throws InputProblem when the target is a folder
   * @throws UncheckedIOException when writing fails
   */
  public static void writeText(Path file, String text) {
    writeBytes(file, text.getBytes(StandardCharsets.UTF_8));
  }

  /**
   * Writes bytes. Folders above the file are created.
   *
   * @param file the file, which may exist
   * @param content the whole content
   * @throws InputProblem when the target is a folder
   * @throws UncheckedIOException when writing fails
   */
  public static void writeBytes(Path file, byte[] content) {
    if (Files.isDirectory(file)) {
      throw InputProblem.at(SourceLocation.file(file.toString()), "this is a folder")
          .expected("the name of a file to be written")
          .because("a folder is not replaced by a file")
          .mend("add a file name");
    }
    try {
      // A link keeps pointing at its file, which gets the new content.
      var target = Files.exists(file) ? file.toRealPath() : file.toAbsolutePath();
      Files.createDirectories(target.getParent());
      replace(target, content);
    } catch (IOException e) {
      throw new UncheckedIOException(file + " could not be written", e);
    }
  }

  private static void replace(Path target, byte[] content) throws IOException {
    var draft = newFileBeside(target);
    try {
      Files.write(draft, content);
      move(draft, target);
    } catch (IOException | RuntimeException e) {
      Files.deleteIfExists(draft);
      throw e;
    }
  }

  /** A new file with the permissions that the system gives to new files, unlike a temporary one. */
  private static Path newFileBeside(Path target) throws IOException {
    for (int i = 0; i < MOST_NAMES_TRIED; i++) {
      var draft = target.resolveSibling("." + target.getFileName() + "." + i + ".part");
      try {
        Files.newOutputStream(draft, StandardOpenOption.CREATE_NEW).close();
        return draft;
      } catch (FileAlreadyExistsException taken) {
        // Another write is under way or was killed: its file is not ours, so try the next name.
      }
    }
    throw new IOException("too many unfinished files beside " + target);
  }

  private static void move(Path draft, Path target) throws IOException {
    try {
      Files.move(draft, target, StandardCopyOption.ATOMIC_MOVE);
    } catch (AtomicMoveNotSupportedException e) {
      Files.move(draft, target, StandardCopyOption.REPLACE_EXISTING);
    }
  }
}
