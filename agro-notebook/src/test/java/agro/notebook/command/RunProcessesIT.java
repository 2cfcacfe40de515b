package agro.notebook.command;

import static org.assertj.core.api.Assertions.assertThat;

import agro.notebook.run.SampleNotebook;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Several notebooks with the jar: its processes use the same jar, its agent, and end with it. */
@Tag("slow")
@Timeout(value = 4, unit = TimeUnit.MINUTES)
class RunProcessesIT {

  private static final Path JAR = Path.of("target", "agro-notebook.jar");

  /** How the program that waits for the notebooks is ended. */
  enum End {
    ASKED,
    FORCED
  }

  @TempDir private Path folder;
  private Process program;

  private void write(String name, SampleNotebook notebook) throws IOException {
    Files.writeString(folder.resolve(name), notebook.json(), StandardCharsets.UTF_8);
  }

  private void start(String... arguments) throws IOException {
    var command = new ArrayList<String>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(List.of("-Xmx300m", "-Dplace=here", "-Dfile.encoding=US-ASCII"));
    command.addAll(List.of("-jar", JAR.toAbsolutePath().toString(), "run"));
    command.addAll(List.of(arguments));
    program =
        new ProcessBuilder(command)
            .directory(folder.toFile())
            .redirectOutput(folder.resolve("out.txt").toFile())
            .redirectError(folder.resolve("err.txt").toFile())
            .start();
  }

  private String said(String file) throws IOException {
    return Files.readString(folder.resolve(file), StandardCharsets.UTF_8);
  }

  @AfterEach
  void endProgram() {
    program.descendants().forEach(ProcessHandle::destroyForcibly);
    program.destroyForcibly();
  }

  @Test
  void optionsAndTheAgentReachEveryProcess() throws Exception {
    write(
        "a.ipynb",
        SampleNotebook.empty()
            .code("int f() { return 1; }", "var v = f();")
            .code("int f() { return 2; }")
            .tagged(
                "summary",
                "var most = Runtime.getRuntime().maxMemory() >> 20;",
                "\"v \" + v + \" \" + System.getProperty(\"place\") + \" °C \" + (most <= 300)"));
    write("b.ipynb", SampleNotebook.empty().tagged("summary", "ProcessHandle.current().pid()"));
    start("a.ipynb", "b.ipynb");
    assertThat(program.waitFor(2, TimeUnit.MINUTES)).isTrue();
    assertThat(said("err.txt")).contains("2 of 2");
    assertThat(program.exitValue()).isZero();
    assertThat(said("out.txt")).startsWith("a.ipynb\nv 1 here °C true\n").contains("b.ipynb\n");
    assertThat(said("out.txt")).doesNotContain("\n" + program.pid() + "\n");
    assertThat(folder.resolve("target/pages/b.html")).isRegularFile();
  }

  @ParameterizedTest
  @EnumSource(End.class)
  void processesEndWithTheProgram(End end) throws Exception {
    for (var name : new String[] {"a", "b"}) {
      write(
          name + ".ipynb",
          SampleNotebook.empty()
              .code("Files.writeString(Path.of(\"" + name + ".started\"), \"\");")
              .code("Thread.sleep(600_000);"));
    }
    start("a.ipynb", "b.ipynb", "--parallel", "2");
    while (!Files.exists(folder.resolve("a.started"))
        || !Files.exists(folder.resolve("b.started"))) {
      assertThat(program.isAlive()).isTrue();
      Thread.sleep(50);
    }
    var children = program.descendants().toList();
    assertThat(children).hasSize(2);
    if (end == End.FORCED) {
      program.destroyForcibly();
    } else {
      program.destroy();
    }
    assertThat(program.waitFor(1, TimeUnit.MINUTES)).isTrue();
    for (var child : children) {
      child.onExit().get(1, TimeUnit.MINUTES);
      assertThat(child.isAlive()).isFalse();
    }
    assertThat(folder.resolve("target")).doesNotExist();
  }
}
