package agro.notebook.command;

import static agro.notebook.command.Said.say;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Forecasts that are kept, and how good they were. */
class HindcastCommandTest {

  private static final Path BELLBIRD_FLAT =
      Path.of("..", "agro-core", "src", "test", "resources", "agro", "season", "bellbird-flat");

  @TempDir private Path folder;

  @BeforeEach
  void copyTheFolder() throws IOException {
    try (var files = Files.list(BELLBIRD_FLAT)) {
      for (var file : files.toList()) {
        Files.copy(file, folder.resolve(file.getFileName()));
      }
    }
  }

  @Test
  void aForecastIsKeptOnce() throws IOException {
    var first = say("forecast", folder.toString(), "--keep", "--note", "sent out, by post");
    assertThat(first.err()).doesNotContain("Expected");
    assertThat(first.status()).isZero();
    assertThat(first.out()).contains("added to forecasts.csv.");
    var ledger = Files.readString(folder.resolve("forecasts.csv"), StandardCharsets.UTF_8);
    assertThat(ledger).contains("issued,place,pest").contains(",\"sent out, by post\"\n");
    var again = say("forecast", folder.toString(), "--keep");
    assertThat(again.out()).contains("0 dates added to forecasts.csv; ");
    assertThat(folder.resolve("forecasts.csv"))
        .usingCharset(StandardCharsets.UTF_8)
        .hasContent(ledger);
  }

  @Test
  void aBrokenLedgerIsToldBeforeTheWork() throws IOException {
    Files.writeString(folder.resolve("forecasts.csv"), "issued,place\n2026-01-01,here\n");
    for (var command : new String[] {"forecast", "hindcast"}) {
      var said =
          command.equals("forecast")
              ? say(command, folder.toString(), "--keep")
              : say(command, folder.toString());
      assertThat(said.status()).isEqualTo(1);
      assertThat(said.err()).contains("forecasts.csv").contains("Expected: ");
      assertThat(said.out()).isEmpty();
    }
  }

  @Test
  void noSeasonIsOver() {
    var said = say("hindcast", folder.toString());
    assertThat(said.status()).isEqualTo(1);
    assertThat(said.err())
        .contains("no season of tomato leafminer at Bellbird Flat is over")
        .contains("Why: forecasts of past seasons are judged by what came");
  }

  @Test
  @Tag("slow")
  void hindcastOfAFolder() {
    var rows = folder.resolve("rows.csv");
    var said =
        say(
            "hindcast",
            Path.of("..", "demo-data", "osmere-vale").toString(),
            "--as-of",
            "2024-01-10",
            "--lead",
            "28",
            "--scheme",
            "leave_one_out",
            "--rows",
            rows.toString());
    assertThat(said.err()).doesNotContain("Expected");
    assertThat(said.status()).isZero();
    assertThat(said.out())
        .contains("How good the forecasts would have been")
        .contains("a demonstration, never proof")
        .contains("too few to judge")
        .doesNotContain("Only earlier seasons");
    assertThat(rows).content(StandardCharsets.UTF_8).startsWith("Learnt from,Season,Event");
  }

  @Test
  void aLeadOfNoDays() {
    var said = say("hindcast", folder.toString(), "--lead", "0");
    assertThat(said.status()).isEqualTo(2);
    assertThat(said.err()).contains("--lead takes days of 1 and more, not 0");
  }
}
