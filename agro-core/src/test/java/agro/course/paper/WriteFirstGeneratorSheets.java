package agro.course.paper;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import org.junit.jupiter.api.Test;

/**
 * Writes the sheets of types that are new. It is no part of the test run; call it from the top of
 * the repository with {@code mvn -q -B -pl agro-core test -Dtest=WriteFirstGeneratorSheets}. Sheets
 * that are there already stay as they are: a paper that has been set can be set again.
 */
class WriteFirstGeneratorSheets {

  @Test
  void writeNewTypes() throws IOException {
    Files.createDirectories(FirstGeneratorSheets.folder());
    for (var type : FirstGeneratorSheets.types()) {
      var file = FirstGeneratorSheets.folder().resolve(type.code() + ".txt");
      if (!Files.exists(file)) {
        Files.writeString(file, FirstGeneratorSheets.text(type), StandardCharsets.UTF_8);
      }
    }
  }
}
