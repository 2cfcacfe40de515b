package agro.notebook.install;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is found wrong before a kernel is started; the rest is tried with the runnable jar. */
class InstallationCheckTest {

  private static final String NAME = "agro-java";
  private static final String JDK_MODULES =
      "java.base@17.0.1 java.instrument@17.0.1 jdk.compiler@17.0.1 jdk.jshell@17.0.1";

  @TempDir private Path folder;
  private Path own;
  private Path shared;
  private InstallationCheck check;

  @BeforeEach
  void foldersOfJupyter() {
    own = folder.resolve("own");
    shared = folder.resolve("shared");
    var jupyter =
        new JupyterProgram(Path.of("/bin/jupyter"), List.of(own.toString(), shared.toString()));
    var at =
        new Surroundings(
            SystemKind.LINUX, Map.of("JUPYTER_DATA_DIR", own.toString()), folder.toString());
    check = new InstallationCheck(at, Optional.of(jupyter), new ProgramVersion("0.1.0", "abc"));
  }

  private static Path spec(Path data, String text) throws IOException {
    var file = data.resolve("kernels").resolve(NAME).resolve("kernel.json");
    Files.createDirectories(file.getParent());
    return Files.writeString(file, text, StandardCharsets.UTF_8);
  }

  private static String ours(String java, String jar) {
    var line = new LaunchLine(java, List.of(), Optional.empty(), jar);
    return new KernelSpec(
            "Java", line.arguments(), Optional.of(new KernelSpec.Origin("0.1.0", "17.0.1")))
        .toJson();
  }

  private String javaThatPrints(String text) throws IOException {
    var program = folder.resolve("java");
    Files.writeString(program, "#!/bin/sh\necho " + text + "\n", StandardCharsets.UTF_8);
    assertThat(program.toFile().setExecutable(true)).isTrue();
    return program.toString();
  }

  private static List<String> problems(List<Finding> findings) {
    assertThat(findings)
        .filteredOn(found -> found.rank() != Finding.Rank.GOOD)
        .allSatisfy(found -> assertThat(found.cure()).isNotEmpty());
    return findings.stream()
        .filter(found -> found.rank() == Finding.Rank.PROBLEM)
        .map(Finding::what)
        .toList();
  }

  @Test
  void nothingInstalledSaysWhereItLooked() {
    assertThat(problems(check.check(NAME)))
        .singleElement()
        .asString()
        .contains("no kernel named agro-java", own.toString(), shared.toString());
  }

  @Test
  void aDamagedSpecIsNamed() throws IOException {
    var file = spec(own, "{\"argv\": [");
    assertThat(problems(check.check(NAME)))
        .singleElement()
        .asString()
        .contains(file.toString(), "no kernel spec");
    spec(own, ours("java", "a.jar").replace("{connection_file}", "file"));
    assertThat(problems(check.check(NAME)))
        .singleElement()
        .asString()
        .contains("does not start this kernel");
  }

  @Test
  void aJavaThatIsGone() throws IOException {
    spec(own, ours(folder.resolve("no/java").toString(), folder.resolve("no.jar").toString()));
    assertThat(problems(check.check(NAME)))
        .hasSize(2)
        .anySatisfy(what -> assertThat(what).contains("Java", "is gone", "no/java"))
        .anySatisfy(what -> assertThat(what).contains("program", "is gone", "no.jar"));
  }

  @Test
  void aJavaThatIsTooOldOrAJre() throws IOException {
    spec(own, ours(javaThatPrints("java.base@11.0.2 jdk.compiler@11.0.2"), "/no.jar"));
    assertThat(problems(check.check(NAME)))
        .anySatisfy(what -> assertThat(what).contains("too old: version 11.0.2"));
    javaThatPrints("java.base@17.0.1 java.instrument@17.0.1");
    assertThat(problems(check.check(NAME)))
        .anySatisfy(what -> assertThat(what).contains("is a JRE", "jdk.compiler, jdk.jshell"));
    javaThatPrints("hello");
    assertThat(problems(check.check(NAME)))
        .anySatisfy(what -> assertThat(what).contains("does not answer"));
    javaThatPrints(JDK_MODULES);
    assertThat(problems(check.check(NAME))).noneMatch(what -> what.contains("Java"));
  }

  @Test
  void aKernelThatEndsAtOnceIsQuoted() throws IOException {
    var jar = Files.writeString(folder.resolve("a.jar"), "no jar", StandardCharsets.UTF_8);
    spec(own, ours(javaThatPrints(JDK_MODULES), jar.toString()));
    assertThat(problems(check.check(NAME)))
        .anySatisfy(what -> assertThat(what).contains("cannot be read", "a.jar"))
        .anySatisfy(
            what -> assertThat(what).contains("ended by itself", "It wrote:", "jdk.compiler"));
  }

  @Test
  void anotherKernelOfThatNameInFrontOfOurs() throws IOException {
    spec(own, "{\"argv\": [\"other\", \"{connection_file}\"], \"display_name\": \"Other\"}");
    spec(shared, ours("/no/java", "/no.jar"));
    assertThat(problems(check.check(NAME)))
        .anySatisfy(what -> assertThat(what).contains("starts another kernel", own.toString()))
        .anySatisfy(what -> assertThat(what).contains("/no/java"));
    var place = new Destination.Prefix(folder.resolve("prefix").toString());
    spec(folder.resolve("prefix/share/jupyter"), ours("/there/java", "/no.jar"));
    assertThat(check.check(NAME, place))
        .anySatisfy(
            found -> {
              assertThat(found.rank()).isEqualTo(Finding.Rank.NOTE);
              assertThat(found.what()).contains("does not look for kernels in");
            })
        .anySatisfy(found -> assertThat(found.what()).contains("/there/java"));
  }

  @Test
  void aSecondInstallationIsToldOf() throws IOException {
    spec(own, ours("/own/java", "/no.jar"));
    spec(shared, ours("/shared/java", "/no.jar"));
    assertThat(check.check(NAME))
        .anySatisfy(found -> assertThat(found.what()).contains("a second time", shared.toString()))
        .noneMatch(found -> found.what().contains("/shared/java"));
  }

  @Test
  void withoutJupyterTheUsualFoldersAreLookedAt() throws IOException {
    spec(own, ours("/own/java", "/no.jar"));
    var alone = new InstallationCheck(check.at(), Optional.empty(), check.program());
    assertThat(alone.check(NAME))
        .anySatisfy(
            found -> {
              assertThat(found.rank()).isEqualTo(Finding.Rank.NOTE);
              assertThat(found.what()).contains("not on the PATH");
            })
        .anySatisfy(found -> assertThat(found.what()).contains("/own/java"));
  }
}
