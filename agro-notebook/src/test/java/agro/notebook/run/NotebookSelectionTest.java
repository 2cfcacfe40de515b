package agro.notebook.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import agro.report.InputProblem;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class NotebookSelectionTest {

  @TempDir private Path folder;

  private Path file(String name) throws IOException {
    var file = folder.resolve(name);
    Files.createDirectories(file.getParent());
    return Files.createFile(file);
  }

  private List<String> stems(Path... given) {
    return NotebookSelection.of(List.of(given), folder.resolve("target/pages")).stream()
        .map(one -> one.stem().toString().replace('\\', '/'))
        .toList();
  }

  @Test
  void aFolderStandsForItsNotebooksInTheOrderOfTheirNames() throws IOException {
    for (var name :
        List.of(
            "b.ipynb",
            "a.ipynb",
            "sub/c.ipynb",
            "a/z.ipynb",
            "notes.txt",
            "a.failed.ipynb",
            ".hidden.ipynb",
            ".ipynb_checkpoints/a-checkpoint.ipynb",
            "sub/.ipynb_checkpoints/c-checkpoint.ipynb",
            "target/pages/a.ipynb")) {
      file(name);
    }
    assertThat(stems(folder)).containsExactly("a", "a/z", "b", "sub/c");
  }

  @Test
  void aNotebookNamedTwiceIsRunOnce() throws IOException {
    var one = file("x/a.ipynb");
    file("x/b.ipynb");
    assertThat(stems(one, folder.resolve("x"), folder.resolve("x/../x/b.ipynb")))
        .containsExactly("a", "b");
  }

  @Test
  void aFileThatIsNotThereIsNamedLater() {
    assertThat(stems(folder.resolve("none.ipynb"))).containsExactly("none");
  }

  @Test
  void aFolderWithoutNotebooksIsRefused() {
    assertThatThrownBy(() -> stems(folder))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("holds no notebook");
  }
}
