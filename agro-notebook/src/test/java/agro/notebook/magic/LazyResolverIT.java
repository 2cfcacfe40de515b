package agro.notebook.magic;

import static org.assertj.core.api.Assertions.assertThat;

import agro.notebook.run.SampleNotebook;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import java.util.jar.JarFile;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Magics in the runnable jar, in notebooks that nobody sits in front of. */
@Tag("slow")
class LazyResolverIT {

  private static final Path JAR = Path.of("target", "agro-notebook.jar");

  @TempDir private Path folder;

  private String run(SampleNotebook notebook) throws IOException, InterruptedException {
    Files.writeString(folder.resolve("sample.ipynb"), notebook.json(), StandardCharsets.UTF_8);
    var output = folder.resolve("output.txt");
    var process =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Duser.home=" + folder,
                "-Xlog:class+load:file=classes.txt",
                "-jar",
                JAR.toAbsolutePath().toString(),
                "run",
                "sample.ipynb")
            .directory(folder.toFile())
            .redirectErrorStream(true)
            .redirectOutput(output.toFile())
            .start();
    assertThat(process.waitFor(2, TimeUnit.MINUTES)).isTrue();
    var said = Files.readString(output, StandardCharsets.UTF_8);
    assertThat(process.exitValue()).as(said).isZero();
    return said;
  }

  private String loaded() throws IOException {
    return Files.readString(folder.resolve("classes.txt"), StandardCharsets.UTF_8);
  }

  @Test
  void licencesOfTheResolverAreKept() throws IOException {
    try (var jar = new JarFile(JAR.toFile())) {
      assertThat(jar.getEntry("META-INF/licenses/EPL-2.0.md")).isNotNull();
      var notice = jar.getInputStream(jar.getEntry("META-INF/NOTICE")).readAllBytes();
      assertThat(new String(notice, StandardCharsets.UTF_8))
          .contains("Eclipse Public License 2.0", "Maven Artifact Resolver API");
    }
  }

  @Test
  void nothingOfTheResolverIsLoadedBeforeItIsNeeded() throws IOException, InterruptedException {
    var said =
        run(SampleNotebook.empty().code("%magics").tagged("summary", "%time 6 * 7", "6 * 7"));
    assertThat(said).contains("42");
    assertThat(loaded())
        .contains("agro.notebook.magic.MavenMagics")
        .doesNotContain("org.eclipse.aether", "eu.maveniverse", "org.apache.maven");
  }

  @Test
  void noMagicIsLoadedBeforeOneIsCalled() throws IOException, InterruptedException {
    run(SampleNotebook.empty().code("17", " % 5"));
    assertThat(loaded()).doesNotContain("agro.notebook.magic");
  }

  @Test
  void aLibraryIsFetchedThroughTheSettingsOfTheUser() throws IOException, InterruptedException {
    var repository = new SampleRepository(folder.resolve("repository"));
    repository.library("leaf", "1.0", "");
    Files.createDirectories(folder.resolve(".m2"));
    Files.writeString(
        folder.resolve(".m2/settings.xml"),
        "<settings><mirrors><mirror><id>vale</id><mirrorOf>*</mirrorOf><url>"
            + repository.address()
            + "</url></mirror></mirrors></settings>");
    var said =
        run(
            SampleNotebook.empty()
                .code("%maven vale:leaf:1.0")
                .tagged("summary", "vale.Leaf.version()"));
    assertThat(said).contains("1.0");
    assertThat(folder.resolve(".m2/repository/vale/leaf/1.0/leaf-1.0.jar")).isRegularFile();
  }
}
