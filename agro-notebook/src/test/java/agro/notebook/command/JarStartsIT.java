package agro.notebook.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;

/** The runnable jar starts and names its commands. */
class JarStartsIT {

  @Test
  void helpNamesTheCommands() throws IOException, InterruptedException {
    var java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
    var process =
        new ProcessBuilder(java, "-jar", "target/agro-notebook.jar", "--help")
            .redirectErrorStream(true)
            .start();
    var said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertThat(process.waitFor(1, TimeUnit.MINUTES)).isTrue();
    assertThat(process.exitValue()).isZero();
    assertThat(said).contains("run ", "forecast ", "template ");
  }
}
