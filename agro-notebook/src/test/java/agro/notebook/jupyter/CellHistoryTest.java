package agro.notebook.jupyter;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.spencerpark.jupyter.kernel.history.HistoryEntry;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.Executors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CellHistoryTest {

  @TempDir private Path folder;

  private final StringWriter complaints = new StringWriter();

  private CellHistory history() {
    return new CellHistory(
        Optional.of(folder.resolve("data")), new Complaints(new PrintWriter(complaints)));
  }

  private Path file() {
    return folder.resolve("data").resolve("history.jsonl");
  }

  private static List<String> inputs(CellHistory history) {
    return history.all().stream().map(HistoryEntry::getInput).toList();
  }

  @Test
  void outlivesTheKernel() {
    var first = history();
    first.add(1, "int n = 3;", "");
    first.add(2, "\"two\nlines\"", "two\nlines");
    var second = history();
    second.add(1, "n", "3");

    assertThat(second.session()).isEqualTo(first.session() + 1);
    assertThat(inputs(history())).containsExactly("int n = 3;", "\"two\nlines\"", "n");
    var read = history().all();
    assertThat(read.get(0).hasOutput()).isFalse();
    assertThat(read.get(1).getOutput()).isEqualTo("two\nlines");
    assertThat(read.get(2).getCellNumber()).isEqualTo(1);
    assertThat(complaints.toString()).isEmpty();
  }

  @Test
  void kernelsAtTheSameTimeDoNotDisturbOneAnother() throws Exception {
    var pool = Executors.newFixedThreadPool(4);
    try {
      var kernels =
          IntStream.range(0, 4)
              .<Callable<Integer>>mapToObj(
                  kernel ->
                      () -> {
                        var own = history();
                        for (var cell = 1; cell <= 25; cell++) {
                          own.add(cell, kernel + "/" + cell, "");
                        }
                        return own.session();
                      })
              .toList();
      var sessions = new HashSet<Integer>();
      for (var done : pool.invokeAll(kernels)) {
        sessions.add(done.get());
      }
      assertThat(sessions).hasSize(4);
    } finally {
      pool.shutdownNow();
    }
    assertThat(inputs(history())).hasSize(100).doesNotHaveDuplicates();
    assertThat(complaints.toString()).isEmpty();
  }

  @Test
  void aDamagedLineCostsItselfAlone() throws IOException {
    history().add(1, "before", "");
    Files.writeString(file(), Files.readString(file()) + "[1,2,\"cut of");
    history().add(1, "after", "");

    assertThat(inputs(history())).containsExactly("before", "after");
  }

  @Test
  void theFileIsBounded() throws IOException {
    var history = history();
    var long1 = "x".repeat(90_000);
    for (var cell = 1; cell <= 60; cell++) {
      history.add(cell, cell + long1, "");
    }

    assertThat(Files.size(file())).isLessThan(4_200_000);
    assertThat(inputs(history())).last().isEqualTo("60" + long1);
    assertThat(inputs(history)).hasSize(60);
  }

  @Test
  void whatCannotBeWrittenIsKeptInMemory() throws IOException {
    Files.writeString(folder.resolve("data"), "a file where a folder should be");
    var history = history();
    history.add(1, "1 + 1", "2");

    assertThat(inputs(history)).containsExactly("1 + 1");
    assertThat(complaints.toString()).contains("history");
  }

  @Test
  void withoutAFolderNothingIsWritten() {
    var history = new CellHistory(Optional.empty(), new Complaints(new PrintWriter(complaints)));
    history.add(1, "1 + 1", "2");

    assertThat(inputs(history)).containsExactly("1 + 1");
    assertThat(history.session()).isEqualTo(1);
    assertThat(folder).isEmptyDirectory();
  }
}
