package agro.notebook.kernel;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** An evaluator in a process with little memory. */
@Tag("slow")
class SmallMemoryTest {

  @TempDir private Path folder;

  @Test
  void cellsNeitherFillTheMemoryNorDieOfIt() throws IOException, InterruptedException {
    var out = folder.resolve("out.txt");
    var process =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Xmx128m",
                "-XX:+UseSerialGC",
                "-javaagent:target/redefinition-agent.jar",
                "-cp",
                System.getProperty("java.class.path"),
                SmallMemoryProgram.class.getName())
            .redirectErrorStream(true)
            .redirectOutput(out.toFile())
            .start();
    var ended = process.waitFor(5, TimeUnit.MINUTES);
    process.destroyForcibly();
    assertThat(ended).isTrue();
    assertThat(Files.readString(out, StandardCharsets.UTF_8).lines())
        .contains("unnamed results that failed: 0")
        .contains("failure: java.lang.OutOfMemoryError", "kept: true", "freed: null")
        .contains("next: 10000000", "small pieces: false", "at last: 42")
        .anyMatch(
            line ->
                line.startsWith("remark: the memory of this process")
                    && line.contains("hoard")
                    && line.contains("-Xmx"));
  }
}
