package agro.notebook.install;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class JupyterProgramTest {

  @TempDir private Path folder;

  @Test
  void theAnswerOfTheCommandIsRead() {
    assertThat(
            JupyterProgram.parse(
                "{\"runtime\": [\"/r\"], \"config\": [\"/c\"], \"data\": [\"/a\", \"C:\\\\b\"]}"))
        .containsExactly("/a", "C:\\b");
    assertThat(JupyterProgram.parse("data:\n    /a")).isEmpty();
    assertThat(JupyterProgram.parse("{\"data\": [[]]}")).isEmpty();
    assertThat(JupyterProgram.parse("{}")).isEmpty();
    assertThat(JupyterProgram.parse("")).isEmpty();
  }

  @Test
  void withoutThePathThereIsNone() {
    var system = SystemKind.of(System.getProperty("os.name"));
    assertThat(JupyterProgram.find(new Surroundings(system, Map.of(), "/"))).isEmpty();
    var emptyFolder = Map.of("PATH", folder.toString());
    assertThat(JupyterProgram.find(new Surroundings(system, emptyFolder, "/"))).isEmpty();
  }
}
