package agro.notebook.command;

import static agro.notebook.command.Said.say;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a user is told who gives a season folder with a fault in it. */
class BadInputCommandTest {

  private static final Path BELLBIRD_FLAT =
      Path.of("..", "agro-core", "src", "test", "resources", "agro", "season", "bellbird-flat");

  /** A line of visits.csv: trap A on 2023-09-19. */
  private static final int VISIT = 7;

  /** A line of tunnel.tsv: 2023-10-06, from 48 to 70 °F. */
  private static final int DAY = 39;

  @TempDir private Path folder;

  @BeforeEach
  void copyTheFolder() throws IOException {
    try (var files = Files.list(BELLBIRD_FLAT)) {
      for (var file : files.toList()) {
        Files.copy(file, folder.resolve(file.getFileName()));
      }
    }
  }

  private Said forecast() {
    return say("forecast", folder.toString());
  }

  private void spoil(String file, UnaryOperator<String> change) throws IOException {
    var path = folder.resolve(file);
    var text = Files.readString(path, StandardCharsets.UTF_8);
    var changed = change.apply(text);
    assertThat(changed).isNotEqualTo(text);
    Files.writeString(path, changed, StandardCharsets.UTF_8);
  }

  /** Swaps or replaces one line, counted from 1. */
  private void spoilLine(String file, int number, UnaryOperator<String> change) throws IOException {
    spoil(
        file,
        text -> {
          var lines = text.split("\n", -1);
          lines[number - 1] = change.apply(lines[number - 1]);
          return String.join("\n", lines);
        });
  }

  private static void assertRefused(Said said, String... words) {
    assertThat(said.status()).isEqualTo(1);
    assertThat(said.err()).contains(words).contains("Expected: ", "Why: ", "Mend: ");
    assertThat(said.err()).doesNotContain("\tat ", "Exception", "agro.");
    assertThat(said.out()).isEmpty();
  }

  @Test
  void theFolderAsItIs() {
    var said = forecast();
    assertThat(said.status()).isZero();
    assertThat(said.out()).contains("Flights to come: tomato leafminer, Bellbird Flat");
  }

  /** 48 to 70 °F read as °C; the mast, in kelvin, gives the tunnel away. */
  @Test
  void aLogInTheWrongUnit() throws IOException {
    spoil("logs.csv", text -> text.replace("[degF]", "K"));
    assertRefused(forecast(), "tunnel.tsv");
  }

  /** A mast that is read some 13 °C too cold is no neighbour. */
  @Test
  void aNeighbourThatDiffersTooMuch() throws IOException {
    spoil(
        "mast.txt",
        text ->
            text.replaceAll("(?m)^(\\d{8});26", "$1;24")
                .replaceAll("(?m)^(\\d{8});27", "$1;25")
                .replaceAll("(?m)^(\\d{8});28", "$1;26"));
    assertRefused(forecast(), "Bellbird Flat and Town mast differ by", "at most 10 °C");
  }

  @Test
  void noFolder() {
    assertRefused(say("forecast", folder.resolve("elsewhere").toString()), "elsewhere");
  }

  @Test
  void emptyFile() throws IOException {
    spoil("visits.csv", text -> "");
    assertRefused(forecast(), "visits.csv");
  }

  @Test
  void headerOnly() throws IOException {
    spoil("visits.csv", text -> "date,trap,state,count,nights_open\n");
    assertRefused(forecast(), "visits.csv");
  }

  @Test
  void textInANumberColumn() throws IOException {
    spoilLine("visits.csv", VISIT, line -> line.replaceFirst("working,[0-9]+", "working,many"));
    assertRefused(forecast(), "visits.csv, line " + VISIT, "\"count\"", "many");
  }

  @Test
  void negativeCount() throws IOException {
    spoilLine("visits.csv", VISIT, line -> line.replaceFirst("working,[0-9]+", "working,-3"));
    assertRefused(forecast(), "visits.csv, line " + VISIT, "-3");
  }

  @Test
  void twoCatchesOfOneTrapOnOneDay() throws IOException {
    spoilLine("visits.csv", VISIT, line -> line + "\n" + line);
    assertRefused(forecast(), "visits.csv, line " + (VISIT + 1), "2023-09-19");
  }

  @Test
  void textInALog() throws IOException {
    spoilLine("tunnel.tsv", DAY, line -> line.replace("\t48\t", "\twarm\t"));
    assertRefused(forecast(), "tunnel.tsv, line " + DAY, "\"Cold\"", "warm");
  }

  @Test
  void minimumAboveMaximum() throws IOException {
    spoilLine("tunnel.tsv", DAY, line -> line.replace("\t48\t70", "\t70\t48"));
    assertRefused(forecast(), "tunnel.tsv, line " + DAY, "70", "48");
  }

  @Test
  void daysOutOfOrder() throws IOException {
    spoil("tunnel.tsv", text -> swapped(text, DAY, DAY + 1));
    assertRefused(forecast(), "tunnel.tsv, line " + (DAY + 1), "2023-10-06 after 2023-10-07");
  }

  private static String swapped(String text, int first, int second) {
    var lines = text.split("\n", -1);
    var line = lines[first - 1];
    lines[first - 1] = lines[second - 1];
    lines[second - 1] = line;
    return String.join("\n", lines);
  }

  @Test
  void aDayTwiceWithOtherValues() throws IOException {
    spoilLine("tunnel.tsv", DAY, line -> line + "\n" + line.replace("\t48\t", "\t50\t"));
    assertRefused(forecast(), "tunnel.tsv, line " + (DAY + 1), "2023-10-06");
  }

  /** A lost day, a lost month, a lost year of the station and a visit beyond the logs, at once. */
  @Test
  void whatIsMendedIsTold() throws IOException {
    spoil("tunnel.tsv", text -> text.replace("6/10/2023\t48\t70\n", ""));
    spoil("tunnel.tsv", text -> text.replaceAll("(?m)^\\d+/12/2023\t.*\\R", ""));
    spoil("mast.txt", text -> text.replaceAll("(?m)^2022.*\\R", ""));
    spoil("visits.csv", text -> text + "2024-03-15,A,working,3,\n");
    var said = forecast();
    assertThat(said.status()).isZero();
    assertThat(said.err()).doesNotContain("Exception");
    assertThat(said.out())
        .contains(
            "2023-10-06: not in the log, left as missing",
            "filled: Bellbird Flat, 2023-10-06: extremes on a straight line",
            "2023-12-01 to 2023-12-31 (31 days): not in the log",
            "filled: Bellbird Flat, 2023-12-01 to 2023-12-31: from Town mast",
            "no day at all of 2022",
            "visit to trap A on 2024-03-15: temperatures are known only to");
  }

  @Test
  void aDayOfIssueOutsideTheSeason() {
    assertRefused(
        say("forecast", folder.toString(), "--as-of", "2024-06-01"),
        "no season of tomato leafminer is under way on 2024-06-01");
  }

  @Test
  void aPlaceThatTheFolderDoesNotKnow() {
    assertRefused(
        say("forecast", folder.toString(), "--place", "Belbird Flat", "--pest", "tomato leafminer"),
        "Belbird Flat",
        "Bellbird Flat");
  }

  @Test
  void aPestThatTheFolderDoesNotKnow() {
    assertRefused(
        say("forecast", folder.toString(), "--pest", "tomato leafmine"),
        "\"tomato leafmine\"",
        "ask for \"tomato leafminer\" if that is meant");
  }

  @Test
  void aDayOfIssueBeforeAnythingWasKnown() {
    assertRefused(
        say("forecast", folder.toString(), "--as-of", "2023-07-15"),
        "the day of issue 2023-07-15",
        "2024-02-10");
  }

  @Test
  void withoutAStationThereAreNoPastYears() throws IOException {
    spoil("logs.csv", text -> text.replaceAll("(?m)^Town mast.*\\R", ""));
    assertRefused(forecast(), "0 past years", "a longer log of the place, or of a station");
  }

  @Test
  void valuesThatTheCommandLineRefuses() {
    var day = say("forecast", folder.toString(), "--as-of", "16 June");
    assertThat(day.status()).isEqualTo(2);
    assertThat(day.err())
        .contains("'--as-of'", "\"16 June\" is no day of the calendar, such as 2026-06-16")
        .doesNotContain("Exception", "LocalDate");
    var seed = say("forecast", folder.toString(), "--seed", "luck");
    assertThat(seed.status()).isEqualTo(2);
    assertThat(seed.err())
        .contains("'--seed'", "\"luck\" is no whole number")
        .doesNotContain("Exception", "(long)");
  }

  private Said runNotebook(String... more) {
    return runNotebookOn(folder, more);
  }

  private Said runNotebookOn(Path season, String... more) {
    var line = new ArrayList<>(List.of("run", "../notebooks/01-the-next-generation.ipynb"));
    line.addAll(List.of("--set", "folder=" + season, "--out", folder.resolve("pages").toString()));
    line.addAll(List.of(more));
    return say(line.toArray(String[]::new));
  }

  /** The four parts, the cell and its line, and no file that looks like a success. */
  private void assertNoPage(Said said, String... words) {
    assertRefused(said, words);
    // What a failing cell left behind says so in its name.
    assertThat(Objects.requireNonNullElse(folder.resolve("pages").toFile().list(), new String[0]))
        .allMatch(name -> name.contains(".failed."));
  }

  @Test
  void aRunWritesNothingWhenItsInputIsRefused() throws IOException {
    spoilLine("visits.csv", VISIT, line -> line.replaceFirst("working,[0-9]+", "working,-3"));
    assertNoPage(
        runNotebook(),
        "01-the-next-generation.ipynb, cell ",
        "visits.csv, line " + VISIT,
        "-3",
        "SeasonFolder.find(folder)");
  }

  @Test
  void aRunOfAnEmptyLog() throws IOException {
    spoil("tunnel.tsv", text -> "");
    assertNoPage(runNotebook(), "tunnel.tsv: the file is empty");
  }

  @Test
  void aRunWithParametersThatCannotBe() {
    assertNoPage(runNotebook("--set", "asOf=16 June"), "\"16 June\"", "2024-02-10");
    assertNoPage(runNotebook("--set", "place=Belbird Flat"), "\"Bellbird Flat\"");
    assertNoPage(runNotebook("--set", "foldr=x"), "\"foldr\"", "folder (String)");
  }

  @Test
  void aNotebookThatIsNotThere() {
    assertRefused(say("run", "../notebooks/00-nothing.ipynb"), "00-nothing.ipynb: there is no");
  }

  @Test
  void aTemplateIsNotYetASeason() {
    var fresh = folder.resolve("fresh");
    assertThat(say("template", fresh.toString()).status()).isZero();
    assertRefused(
        say("forecast", fresh.toString()),
        "places.csv",
        "no lines below",
        "add the data below the heading on line ");
    assertNoPage(runNotebookOn(fresh), "cell ", "places.csv", "no lines below");
    assertRefused(say("template", fresh.toString()), "README.md");
  }
}
