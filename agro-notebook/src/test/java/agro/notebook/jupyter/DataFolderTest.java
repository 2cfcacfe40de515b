package agro.notebook.jupyter;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;

class DataFolderTest {

  private static final String HOME = "/home/osmere";

  @Test
  void followsTheCustomOfEachSystem() {
    assertThat(DataFolder.of("Linux", Map.of(), HOME))
        .contains(Path.of(HOME, ".local", "share", "agro"));
    assertThat(DataFolder.of("Linux", Map.of("XDG_DATA_HOME", "/data"), HOME))
        .contains(Path.of("/data", "agro"));
    assertThat(DataFolder.of("Mac OS X", Map.of(), HOME))
        .contains(Path.of(HOME, "Library", "Application Support", "agro"));
    assertThat(DataFolder.of("Windows 11", Map.of("LOCALAPPDATA", "/local"), HOME))
        .contains(Path.of("/local", "agro"));
    assertThat(DataFolder.of("Windows 11", Map.of(), HOME))
        .contains(Path.of(HOME, "AppData", "Local", "agro"));
  }

  @Test
  void ignoresWhatTheCustomIgnores() {
    // By the XDG base directory specification a relative path is to be ignored.
    assertThat(DataFolder.of("Linux", Map.of("XDG_DATA_HOME", "data"), HOME))
        .contains(Path.of(HOME, ".local", "share", "agro"));
    assertThat(DataFolder.of("Linux", Map.of("XDG_DATA_HOME", " "), null)).isEmpty();
  }
}
