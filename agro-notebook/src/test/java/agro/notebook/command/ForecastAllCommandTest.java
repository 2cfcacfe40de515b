package agro.notebook.command;

import static agro.notebook.command.Said.say;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Forecasts for every pest and place of one folder or several. */
class ForecastAllCommandTest {

  private static final Path BELLBIRD_FLAT =
      Path.of("..", "agro-core", "src", "test", "resources", "agro", "season", "bellbird-flat");

  @TempDir private Path temporary;
  private Path folder;

  @BeforeEach
  void copyTheFolder() throws IOException {
    folder = temporary.resolve("flat");
    Files.createDirectories(folder);
    try (var files = Files.list(BELLBIRD_FLAT)) {
      for (var file : files.toList()) {
        Files.copy(file, folder.resolve(file.getFileName()));
      }
    }
  }

  @Test
  void oneTableForAllAndTheFolderThatIsNone() throws IOException {
    var nowhere = temporary.resolve("nowhere").toString();
    var said = say("forecast", "--all", "--keep", folder.toString(), nowhere);
    assertThat(said.status()).isZero();
    assertThat(said.out().replaceAll("\\s+", " "))
        .contains("With a forecast: 1")
        .contains("Places without a forecast")
        .contains("there is no such folder")
        .contains("added to forecasts.csv.");
    var ledger = Files.readString(folder.resolve("forecasts.csv"), StandardCharsets.UTF_8);
    assertThat(ledger).contains("tomato leafminer");
    assertThat(temporary.resolve("nowhere")).doesNotExist();
  }

  @Test
  void noForecastAtAllIsAFailure() {
    var said = say("forecast", "--all", temporary.resolve("nowhere").toString());
    assertThat(said.status()).isEqualTo(1);
    assertThat(said.out().replaceAll("\\s+", " ")).contains("there is no such folder");
  }

  @Test
  void severalFoldersNeedTheWordAll() {
    var said = say("forecast", folder.toString(), folder.toString());
    assertThat(said.status()).isNotZero();
    assertThat(said.err()).contains("add --all to forecast them all");
  }
}
