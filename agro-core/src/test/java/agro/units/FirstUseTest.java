package agro.units;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Reading, converting and printing a first quantity links no code at run time. The pause itself is
 * measured by {@link UnitsBenchmark}; here it is what would make it long.
 */
class FirstUseTest {

  private static final List<String> SLOW_TO_START =
      List.of(
          "java.util.regex.Pattern",
          "java.util.Formatter",
          "java.lang.invoke.StringConcatFactory",
          "java.lang.runtime.ObjectMethods",
          "java.lang.invoke.InnerClassLambdaMetafactory",
          "java.util.stream.ReferencePipeline");

  @Test
  void linksNothingAtRunTime(@TempDir Path folder) throws Exception {
    var idle = loaded(folder);
    var used = loaded(folder, "250 ml/acre");
    assertThat(used).anyMatch(line -> line.contains("agro.units.QuantityStyle "));
    for (var name : SLOW_TO_START) {
      assertThat(count(used, name)).as(name).isEqualTo(count(idle, name));
    }
    assertThat(count(used, "Lambda/")).isEqualTo(count(idle, "Lambda/"));
    assertThat(count(used, "LambdaForm$")).isEqualTo(count(idle, "LambdaForm$"));
  }

  private static long count(List<String> lines, String name) {
    return lines.stream().filter(line -> line.contains(name)).count();
  }

  private static List<String> loaded(Path folder, String... arguments)
      throws IOException, InterruptedException {
    var log = folder.resolve("classes" + arguments.length + ".txt");
    var command =
        new java.util.ArrayList<>(
            List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Xlog:class+load:file=" + log,
                "-cp",
                System.getProperty("java.class.path"),
                FirstUse.class.getName()));
    command.addAll(List.of(arguments));
    var process =
        new ProcessBuilder(command)
            .redirectErrorStream(true)
            .redirectOutput(folder.resolve("output.txt").toFile())
            .start();
    assertThat(process.waitFor(60, TimeUnit.SECONDS)).isTrue();
    assertThat(process.exitValue())
        .as(Files.readString(folder.resolve("output.txt"), StandardCharsets.UTF_8))
        .isZero();
    return Files.readAllLines(log, StandardCharsets.UTF_8);
  }
}
