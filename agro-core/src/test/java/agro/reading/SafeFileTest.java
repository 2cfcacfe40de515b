package agro.reading;

import static agro.report.SourceLocation.file;
import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Files are written whole or not at all. */
class SafeFileTest {

  @TempDir Path folder;

  private List<String> namesInFolder() throws IOException {
    try (var files = Files.list(folder)) {
      return files.map(path -> path.getFileName().toString()).sorted().toList();
    }
  }

  @Test
  void writesUtf8AndNothingElse() throws IOException {
    var page = folder.resolve("page.txt");
    SafeFile.writeText(page, "10 °C");
    assertThat(page).hasBinaryContent("10 °C".getBytes(UTF_8));
    assertThat(namesInFolder()).containsExactly("page.txt");
  }

  @Test
  void replacesAnOlderFile() throws IOException {
    var page = Files.writeString(folder.resolve("page.txt"), "a longer text from last week");
    SafeFile.writeBytes(page, new byte[] {1, 2});
    assertThat(page).hasBinaryContent(new byte[] {1, 2});
    assertThat(namesInFolder()).containsExactly("page.txt");
  }

  @Test
  void createsTheFoldersAbove() {
    var page = folder.resolve("2024").resolve("may").resolve("page.txt");
    SafeFile.writeText(page, "x");
    assertThat(page).hasContent("x");
  }

  @Test
  void linkKeepsPointingAtItsFile() throws IOException {
    var page = Files.writeString(folder.resolve("page.txt"), "old");
    var link = Files.createSymbolicLink(folder.resolve("link.txt"), page);
    SafeFile.writeText(link, "new");
    assertThat(link).isSymbolicLink();
    assertThat(page).hasContent("new");
  }

  /** A draft that another writer left, or still writes, is neither used nor removed. */
  @Test
  void leavesTheDraftsOfOthersAlone() throws IOException {
    var draft = Files.writeString(folder.resolve(".page.txt.0.part"), "of another");
    SafeFile.writeText(folder.resolve("page.txt"), "mine");
    assertThat(draft).hasContent("of another");
    assertThat(namesInFolder()).containsExactly(".page.txt.0.part", "page.txt");
  }

  @Test
  void folderInTheWayOfTheFolderAbove() throws IOException {
    var file = Files.writeString(folder.resolve("2024"), "a file, no folder");
    assertThatThrownBy(() -> SafeFile.writeText(file.resolve("page.txt"), "x"))
        .isInstanceOf(UncheckedIOException.class)
        .hasMessageContaining("page.txt could not be written");
    assertThat(file).hasContent("a file, no folder");
    assertThat(namesInFolder()).containsExactly("2024");
  }

  @Test
  void failureLeavesTheOlderFileAndNoDraft() throws IOException {
    var page = Files.writeString(folder.resolve("page.txt"), "old");
    for (int i = 0; i < 1000; i++) {
      Files.createFile(folder.resolve(".page.txt." + i + ".part"));
    }
    assertThatThrownBy(() -> SafeFile.writeText(page, "new"))
        .isInstanceOf(UncheckedIOException.class)
        .hasRootCauseMessage("too many unfinished files beside " + page.toRealPath());
    assertThat(page).hasContent("old");
    assertThat(namesInFolder()).hasSize(1001);
  }

  @Test
  void folderAsTarget() {
    Refusal.of(() -> SafeFile.writeText(folder, "x"))
        .at(file(folder.toString()))
        .read("this is a folder")
        .expected("the name of a file to be written")
        .because("a folder is not replaced by a file")
        .mend("add a file name");
  }
}
