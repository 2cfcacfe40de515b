package agro.notebook.kernel;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import agro.notebook.display.MimeBundle;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A cell that prints too much is cut for its reader and whole in a file. */
class LongOutputTest {

  private static final String LINES =
      IntStream.range(0, 1_000).mapToObj(n -> "Zeile ü " + n + "\n").collect(Collectors.joining());

  @TempDir private Path folder;
  private final OutputRecorder recorder = OutputRecorder.first();

  private LongOutput limited(long bytes) {
    return new LongOutput(recorder, "cell 7", bytes, folder);
  }

  private String printed() {
    return recorder.outputs().stream().map(CellOutput::plainText).collect(Collectors.joining());
  }

  private List<Path> files() throws IOException {
    try (var all = Files.list(folder)) {
      return all.toList();
    }
  }

  @Test
  void belowTheLimitEverythingPassesUnchangedAndNoFileStays() throws IOException {
    var output = limited(1_000_000);
    output.text(StandardStream.OUTPUT, LINES);
    output.text(StandardStream.ERROR, "oh");
    output.finish();
    assertThat(recorder.outputs())
        .containsExactly(
            new CellOutput.Printed(StandardStream.OUTPUT, LINES),
            new CellOutput.Printed(StandardStream.ERROR, "oh"));
    assertThat(files()).isEmpty();
  }

  @Test
  void beyondTheLimitTheFileHasAllAndTheCellItsEnds() throws IOException {
    var output = limited(5_000);
    for (var n = 0; n < 1_000; n++) {
      output.text(n % 2 == 0 ? StandardStream.OUTPUT : StandardStream.ERROR, "Zeile ü " + n + "\n");
    }
    output.finish();
    assertThat(files()).hasSize(1);
    var file = files().get(0);
    assertThat(file).usingCharset(UTF_8).hasContent(LINES);
    assertThat(file.getFileName().toString()).contains("cell-7");
    assertThat(printed())
        .startsWith("Zeile ü 0\n")
        .contains("Zeile ü 999\n", "Zeile ü 980\n", file.toString())
        .contains(Files.size(file) + " bytes")
        .doesNotContain("Zeile ü 700\n");
  }

  @Test
  void oneHugePieceIsCutAtALine() throws IOException {
    var output = limited(100);
    output.text(StandardStream.OUTPUT, LINES);
    output.finish();
    assertThat(files()).hasSize(1);
    assertThat(files().get(0)).usingCharset(UTF_8).hasContent(LINES);
    assertThat(printed()).startsWith("Zeile ü 0\n").contains("Zeile ü 8\n\nNote: ");
  }

  @Test
  void aLineWithoutEndIsCutInTheLastLines() {
    var output = limited(1_000);
    for (var n = 0; n < 100; n++) {
      output.text(StandardStream.OUTPUT, "x".repeat(100_000));
    }
    output.finish();
    assertThat(printed().length()).isBetween(1_500, 3_000);
    assertThat(printed()).contains("x…").contains("10.0 MB");
  }

  @Test
  void anUnwritableFolderIsARemark() throws IOException {
    var notAFolder = Files.writeString(folder.resolve("taken"), "x");
    var output = new LongOutput(recorder, "cell 7", 3_000_000, notAFolder);
    for (var n = 0; n < 400; n++) {
      output.text(StandardStream.OUTPUT, LINES);
    }
    output.finish();
    assertThat(printed()).contains("could not be written").contains("Zeile ü 999");
    assertThat(Files.readString(notAFolder)).isEqualTo("x");
  }

  @Test
  void whatIsClearedCountsNoLonger() throws IOException {
    var output = limited(200);
    for (var round = 0; round < 50; round++) {
      output.clear(true);
      output.text(StandardStream.OUTPUT, "round " + round + " " + "x".repeat(150) + "\n");
    }
    output.finish();
    assertThat(printed()).startsWith("round 49").doesNotContain("Note");
    assertThat(files()).isEmpty();
  }

  @Test
  void displaysKeepTheirPlaceAndAreLimitedToo() {
    var output = limited(1_000);
    output.text(StandardStream.OUTPUT, "before\n");
    output.show("a", MimeBundle.text("between"));
    output.text(StandardStream.OUTPUT, "after\n");
    for (var n = 0; n < 100; n++) {
      output.show("n" + n, MimeBundle.text(n + "y".repeat(900)));
    }
    output.finish();
    assertThat(printed())
        .startsWith("before\nbetweenafter\n")
        .contains("7yyy", "further ones are left out")
        .doesNotContain("9yyy");
  }

  @Test
  void threadsAfterTheCellStillReachTheFile() throws IOException {
    var output = limited(10);
    output.text(StandardStream.OUTPUT, "0123456789abc\n");
    output.finish();
    output.text(StandardStream.OUTPUT, "late\n");
    assertThat(files().get(0)).usingCharset(UTF_8).hasContent("0123456789abc\nlate\n");
    assertThat(printed()).doesNotContain("late");
  }

  @Test
  void theLimitIsReadFromPropertiesThenFromTheEnvironment() {
    assertThat(OutputLimit.of(name -> null, name -> null).bytes()).isEqualTo(10_000_000);
    assertThat(
            OutputLimit.of(
                name -> name.equals("agro.output.limit") ? "2 MB" : null,
                name -> name.equals("AGRO_OUTPUT_FOLDER") ? "/big" : "7"))
        .isEqualTo(new OutputLimit(2_000_000, Path.of("/big")));
    assertThat(OutputLimit.of(name -> null, name -> "500").bytes()).isEqualTo(500);
    assertThat(OutputLimit.of(name -> "much", name -> null).bytes()).isEqualTo(10_000_000);
  }

  @Test
  void severalThreadsMayPrintAtOnce() throws Exception {
    var output = limited(20_000);
    var threads =
        IntStream.range(0, 4)
            .mapToObj(n -> new Thread(() -> LINES.lines().forEach(line -> printLine(output, line))))
            .toList();
    threads.forEach(Thread::start);
    for (var thread : threads) {
      thread.join();
    }
    output.finish();
    assertThat(Files.readAllLines(files().get(0)))
        .hasSize(4_000)
        .allMatch(line -> line.matches("Zeile ü \\d+"));
  }

  private static void printLine(LongOutput output, String line) {
    output.text(StandardStream.OUTPUT, line + "\n");
  }
}
