package agro.weather.log;

import agro.report.InputProblem;
import agro.report.SourceLocation;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.zip.GZIPInputStream;

/** The bytes of a log file, unpacked where they are packed with gzip. */
final class FileBytes {

  /** A log of a century of minutes is smaller; a file that unpacks to more is no log. */
  private static final int MOST_BYTES = 1 << 30;

  private static final String[][] OTHER_FILES = {
    {"504b0304", "a workbook of a spreadsheet, or a zip archive"},
    {"d0cf11e0", "a workbook of a spreadsheet in its old form"},
    {"25504446", "a PDF document"},
    {"53514c69", "a database"},
  };

  private final byte[] bytes;
  private final boolean packed;

  private FileBytes(byte[] bytes, boolean packed) {
    this.bytes = bytes;
    this.packed = packed;
  }

  byte[] bytes() {
    return bytes;
  }

  boolean packed() {
    return packed;
  }

  /** Reads a file and refuses what is no text. */
  static FileBytes read(Path file, String name) {
    refuseUnreadable(file, name);
    try {
      return of(Files.readAllBytes(file), name);
    } catch (IOException e) {
      throw new UncheckedIOException(name + " could not be read", e);
    }
  }

  static FileBytes of(byte[] bytes, String name) {
    boolean packed = bytes.length > 2 && bytes[0] == 0x1F && (bytes[1] & 0xFF) == 0x8B;
    var content = packed ? unpacked(bytes, name) : bytes;
    refuseOtherFiles(content, name);
    if (content.length == 0) {
      throw InputProblem.at(SourceLocation.file(name), "the file is empty")
          .expected("lines of times and temperatures")
          .because("there is nothing to compute from")
          .mend("look whether the export of the log was broken off, and export it again");
    }
    return new FileBytes(content, packed);
  }

  private static byte[] unpacked(byte[] bytes, String name) {
    try (var in = new GZIPInputStream(new ByteArrayInputStream(bytes))) {
      var content = in.readNBytes(MOST_BYTES);
      if (in.read() < 0) {
        return content;
      }
      throw new IOException("more than a gigabyte when unpacked");
    } catch (IOException e) {
      throw InputProblem.at(
              SourceLocation.file(name), "a gzip file that cannot be unpacked: " + e.getMessage())
          .expected("a whole gzip file with a log inside")
          .because("a part of the log would be missing, or wrong")
          .mend("download or copy the file again, or unpack it first");
    }
  }

  private static void refuseOtherFiles(byte[] bytes, String name) {
    for (var kind : OTHER_FILES) {
      if (startsWith(bytes, kind[0])) {
        throw InputProblem.at(SourceLocation.file(name), "this is " + kind[1])
            .expected("plain text, packed with gzip or not")
            .because("its cells cannot be read as text")
            .mend("open it in the program that made it and export the table as CSV");
      }
    }
  }

  private static boolean startsWith(byte[] bytes, String hex) {
    int length = hex.length() / 2;
    for (int i = 0; i < length; i++) {
      int wanted = Integer.parseInt(hex, 2 * i, 2 * i + 2, 16);
      if (i >= bytes.length || (bytes[i] & 0xFF) != wanted) {
        return false;
      }
    }
    return true;
  }

  private static void refuseUnreadable(Path file, String name) {
    var place = SourceLocation.file(name);
    if (Files.isDirectory(file)) {
      throw InputProblem.at(place, "this is a folder")
          .expected("a log file")
          .because("only a file can be read")
          .mend("name the file inside the folder");
    }
    if (!Files.exists(file)) {
      throw InputProblem.at(place, "there is no such file")
          .expected("a log file of this name")
          .because("nothing can be read from it")
          .mend("check the spelling and the folder: looked for " + file.toAbsolutePath());
    }
    if (!Files.isReadable(file)) {
      throw InputProblem.at(place, "the file may not be read")
          .expected("a log file that this user may open")
          .because("the system refuses access to it")
          .mend("change the permissions of the file");
    }
  }
}
