package agro.notebook.install;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import agro.report.InputProblem;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class KernelFolderTest {

  private static final KernelSpec OURS =
      new KernelSpec(
          "Java",
          List.of("java", "-jar", "a.jar", "kernel", "{connection_file}"),
          Optional.of(new KernelSpec.Origin("0.1.0", "17")));

  @TempDir private Path data;

  private void write(Path file, String text) throws IOException {
    Files.createDirectories(file.getParent());
    Files.writeString(file, text, StandardCharsets.UTF_8);
  }

  @ParameterizedTest
  @ValueSource(strings = {"", ".", "..", "a/b", "a\\b", "Java", "ä", "a b", "../x"})
  void namesThatJupyterOverlooksAreRefused(String name) {
    assertThatThrownBy(() -> KernelFolder.of(data, name))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("agro-java");
  }

  @Test
  void theSpecIsWrittenWithItsPictures() {
    var folder = KernelFolder.of(data, "agro-java.2");
    folder.write(OURS);
    assertThat(folder.read()).contains(OURS);
    assertThat(folder.path()).isEqualTo(data.resolve("kernels/agro-java.2"));
    assertThat(folder.otherFiles())
        .containsExactly("kernel.json", "logo-32x32.png", "logo-64x64.png");
    folder.requireOurs();
  }

  @Test
  void theKernelOfAnotherProgramIsLeftAlone() throws IOException {
    var folder = KernelFolder.of(data, "python3");
    for (var text : List.of("{\"argv\": [\"python\", \"{connection_file}\"]}", "broken")) {
      write(folder.spec(), text);
      assertThatThrownBy(folder::requireOurs).isInstanceOf(InputProblem.class);
      assertThatThrownBy(folder::remove).isInstanceOf(InputProblem.class);
      assertThat(folder.spec()).hasContent(text);
    }
  }

  @Test
  void leftoversOfEarlierInstallationsGo() throws IOException {
    var folder = KernelFolder.of(data, "agro-java");
    folder.write(OURS);
    var kept = folder.jarFile("aa");
    write(kept, "new");
    write(folder.jarFile("bb"), "old");
    write(folder.archiveFile("cc"), "old");
    write(KernelFolder.draftOf(folder.archiveFile("dd")), "killed half-way");
    write(folder.path().resolve("notes.txt"), "mine");
    folder.deleteAllProgramFilesBut(Set.of(kept));
    assertThat(folder.otherFiles())
        .containsExactly(
            "agro-notebook-aa.jar", "kernel.json", "logo-32x32.png", "logo-64x64.png", "notes.txt");
  }

  @Test
  void removingTakesWhatWasInstalledAndNothingElse() throws IOException {
    var folder = KernelFolder.of(data, "agro-java");
    folder.write(OURS);
    write(folder.jarFile("aa"), "jar");
    write(folder.path().resolve("notes.txt"), "mine");
    assertThat(folder.remove()).isFalse();
    assertThat(folder.otherFiles()).containsExactly("notes.txt");
    Files.delete(folder.path().resolve("notes.txt"));
    folder.write(OURS);
    assertThat(folder.remove()).isTrue();
    assertThat(folder.path()).doesNotExist();
  }
}
