package agro.course.paper;

import agro.reading.DelimitedFormat;
import agro.reading.TextFile;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

/** Answers that lie in several files of a folder. */
final class AnswerFolder {

  /** Heading of the files that notebooks write, which never follow the habits of a country. */
  static final String HEADING = "student,part,answer";

  private AnswerFolder() {}

  static List<Path> files(Path place) {
    if (!Files.isDirectory(place)) {
      return List.of(place);
    }
    try (var files = Files.list(place)) {
      return files
          .filter(file -> file.toString().toLowerCase(Locale.ROOT).endsWith(".csv"))
          .sorted()
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException("the folder " + place + " could not be read", e);
    }
  }

  static DelimitedFormat format(Path file, DelimitedFormat otherwise) {
    if (!Files.isRegularFile(file)) {
      return otherwise;
    }
    var text = TextFile.read(file, file.toString(), otherwise.charset());
    return text.startsWith(HEADING) ? DelimitedFormat.COMMA : otherwise;
  }
}
