package agro.notebook.install;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import agro.report.InputProblem;
import com.google.gson.JsonElement;
import com.google.gson.JsonParser;
import java.util.List;
import java.util.Optional;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The spec against the documentation of jupyter_client, section "Kernel specs". */
class KernelSpecTest {

  private static final LaunchLine WINDOWS =
      new LaunchLine(
          "C:\\Program Files\\Java \"17\"\\bin\\java.exe",
          List.of("-Xmx2g", "-Dname=Düne & <Moor>"),
          Optional.of("C:\\Users\\Ada Byron\\a.jsa"),
          "C:\\Users\\Ada Byron\\agro.jar");

  @Test
  void theCommandLineIsTheAgreedOne() {
    var line = new LaunchLine("/jdk/bin/java", List.of(), Optional.of("/k/a.jsa"), "/k/agro.jar");
    assertThat(line.arguments())
        .containsExactly(
            "/jdk/bin/java",
            "-XX:+UseSerialGC",
            "-XX:SharedArchiveFile=/k/a.jsa",
            "-Xshare:auto",
            "-XX:Tier4InvocationThreshold=20000",
            "-XX:Tier4MinInvocationThreshold=2400",
            "-XX:Tier4CompileThreshold=60000",
            "-Djava.awt.headless=true",
            "-jar",
            "/k/agro.jar",
            "kernel",
            "{connection_file}");
    assertThat(line.withArchive(Optional.empty()).arguments())
        .doesNotContain("-Xshare:auto")
        .noneMatch(argument -> argument.contains("Archive"));
  }

  @Test
  void anotherCollectorTakesThePlaceOfTheSerialOne() {
    var line =
        new LaunchLine("/java", List.of("-XX:+UseParallelGC"), Optional.empty(), "/agro.jar");
    assertThat(line.arguments()).contains("-XX:+UseParallelGC").doesNotContain("-XX:+UseSerialGC");
  }

  @Test
  void backslashesQuotesAndSpacesSurviveTheJson() {
    var spec =
        new KernelSpec(
            "Java (\"agro\")",
            WINDOWS.arguments(),
            Optional.of(new KernelSpec.Origin("0.1.0", "17.0.15")));
    var json = JsonParser.parseString(spec.toJson()).getAsJsonObject();
    var argv =
        StreamSupport.stream(json.getAsJsonArray("argv").spliterator(), false)
            .map(JsonElement::getAsString)
            .toList();
    assertThat(argv)
        .startsWith("C:\\Program Files\\Java \"17\"\\bin\\java.exe")
        .contains("-Dname=Düne & <Moor>", "C:\\Users\\Ada Byron\\agro.jar")
        .endsWith("kernel", "{connection_file}");
    assertThat(json.get("language").getAsString()).isEqualTo("java");
    assertThat(json.get("interrupt_mode").getAsString()).isEqualTo("message");
    assertThat(json.get("display_name").getAsString()).isEqualTo("Java (\"agro\")");
    assertThat(KernelSpec.parse(spec.toJson())).contains(spec);
  }

  @Test
  void aLineIsReadAsItWasWritten() {
    assertThat(LaunchLine.parse(WINDOWS.arguments())).contains(WINDOWS);
    assertThat(LaunchLine.parse(List.of("python", "-m", "ipykernel", "-f", "{connection_file}")))
        .isEmpty();
    assertThat(LaunchLine.parse(List.of("java", "-jar"))).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "nothing",
        "[]",
        "{}",
        "{\"argv\": 1}",
        "{\"argv\": [[\"java\"]], \"metadata\": 1}",
        "{\"argv\": [\"java\"], \"metadata\": []}",
        "{\"argv\": [\"java\"], \"metadata\": {\"agro-notebook\": {}}}"
      })
  void whatIsNoSpecIsNone(String text) {
    assertThat(KernelSpec.parse(text)).isEmpty();
  }

  @Test
  void theSpecOfAnotherProgramIsNotOurs() {
    var other = "{\"argv\": [\"java\", \"-jar\", \"k.jar\", \"{connection_file}\"]}";
    assertThat(KernelSpec.parse(other).orElseThrow().origin()).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"Xmx2g", "", " -Xmx2g", "-jar", "-cp", "--module=a/b"})
  void whatIsNoOptionIsRefused(String option) {
    assertThatThrownBy(() -> new LaunchLine("java", List.of(option), Optional.empty(), "a.jar"))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("--jvm-option=");
  }
}
