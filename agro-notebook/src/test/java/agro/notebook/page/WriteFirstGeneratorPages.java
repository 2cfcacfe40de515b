package agro.notebook.page;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import org.junit.jupiter.api.Test;

/**
 * Writes the pages of the first generator that are missing. It is no part of the test run; call it
 * from the top of the repository with {@code mvn -q -B -pl agro-notebook -am test
 * -Dtest=WriteFirstGeneratorPages -Dsurefire.failIfNoSpecifiedTests=false}. Pages that are there
 * already stay as they are.
 */
class WriteFirstGeneratorPages {

  @Test
  void writeMissingPages() throws IOException {
    Files.createDirectories(FirstGeneratorPages.folder());
    for (var text : FirstGeneratorPages.texts().entrySet()) {
      var file = FirstGeneratorPages.folder().resolve(text.getKey());
      if (!Files.exists(file)) {
        Files.writeString(file, text.getValue(), StandardCharsets.UTF_8);
      }
    }
  }
}
