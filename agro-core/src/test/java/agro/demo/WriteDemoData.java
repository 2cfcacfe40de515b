package agro.demo;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/**
 * Writes the committed demonstration data anew. It is no part of the test run; call it from the top
 * of the repository with {@code mvn -q -B -pl agro-core test -Dtest=WriteDemoData}.
 */
class WriteDemoData {

  @Test
  void writeOsmereVale() throws IOException {
    for (var file : DemoFiles.of(OsmereVale.of(OsmereVale.SEED)).entrySet()) {
      var target = folder().resolve(file.getKey());
      Files.createDirectories(target.getParent());
      Files.writeString(target, file.getValue(), StandardCharsets.UTF_8);
    }
  }

  /** Where the committed folder lies, seen from the module that is being tested. */
  static Path folder() {
    return Path.of(System.getProperty("basedir", ".")).resolve("../demo-data/osmere-vale");
  }
}
