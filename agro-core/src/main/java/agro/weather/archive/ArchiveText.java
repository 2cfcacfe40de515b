package agro.weather.archive;

import agro.reading.TextFile;
import agro.report.InputProblem;
import agro.report.SourceLocation;
import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.zip.GZIPInputStream;

/** The lines of an archive's file, plain or compressed with gzip, which are plain ASCII. */
final class ArchiveText {

  private ArchiveText() {}

  static List<String> lines(Path file, String name) {
    return text(file, name).lines().toList();
  }

  private static String text(Path file, String name) {
    if (!isCompressed(file)) {
      return TextFile.read(file, name, StandardCharsets.UTF_8);
    }
    try (var in = new GZIPInputStream(Files.newInputStream(file))) {
      return new String(in.readAllBytes(), StandardCharsets.US_ASCII);
    } catch (IOException e) {
      throw InputProblem.at(
              SourceLocation.file(name), "the compressed file ends early or is damaged")
          .expected("a whole file compressed with gzip")
          .because("what is missing cannot be told from what was never measured")
          .mend("fetch the file again from the archive");
    }
  }

  private static boolean isCompressed(Path file) {
    if (!Files.isRegularFile(file)) {
      return false;
    }
    try (var in = new BufferedInputStream(Files.newInputStream(file))) {
      return in.read() == 0x1F && in.read() == 0x8B;
    } catch (IOException e) {
      throw new UncheckedIOException(file + " could not be read", e);
    }
  }
}
