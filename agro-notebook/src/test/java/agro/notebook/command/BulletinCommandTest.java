package agro.notebook.command;

import static agro.notebook.command.Said.say;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** One command makes the pages of a whole folder. */
class BulletinCommandTest {

  private static final Path BELLBIRD_FLAT =
      Path.of("..", "agro-core", "src", "test", "resources", "agro", "season", "bellbird-flat");

  @TempDir private Path temporary;
  private Path folder;

  @BeforeEach
  void copyTheFolder() throws IOException {
    folder = temporary.resolve("flat");
    Files.createDirectories(folder);
    try (var files = Files.list(BELLBIRD_FLAT)) {
      for (var file : files.toList()) {
        Files.copy(file, folder.resolve(file.getFileName()));
      }
    }
  }

  private void write(String name, String text) throws IOException {
    Files.writeString(folder.resolve(name), text, StandardCharsets.UTF_8);
  }

  private void addTheFarm() throws IOException {
    write(
        "fields.csv",
        """
        field,zone,area,place
        Tunnel 1,Australia/Melbourne,0.2 ha,Bellbird Flat
        """);
    write(
        "plantings.csv",
        """
        field,crop,planted,first_picking
        Tunnel 1,tomato,2023-10-01,2024-03-01
        """);
    write(
        "labels.csv",
        """
        product,crop,pests,active,group,dose,max_applications,min_interval,pre_harvest,re_entry,\
        buffer_water,buffer_people,rain_free,bees,max_dose,min_dose
        <script>x</script>,tomato,tomato leafminer,active one,28,0.2 L/ha,2,7,3,12 h,none,none,\
        none,none,0.3 L/ha,none
        Product B,tomato,tomato leafminer,active two,5,0.3 L/ha,,,3,12 h,,,,,,
        """);
    write(
        "sprayers.csv",
        """
        sprayer,kind,tank,spray_volume
        knapsack,knapsack,15 L,400 L/ha
        """);
    write(
        "thresholds.csv",
        """
        pest,unit,treat_from,source
        tomato leafminer,leaf,1,made up
        """);
    write(
        "scouting.csv",
        """
        field,date,unit,pest,count
        Tunnel 1,2024-02-09,leaf,tomato leafminer,4
        Tunnel 1,2024-02-09,leaf,tomato leafminer,5
        Tunnel 1,2024-02-09,leaf,tomato leafminer,6
        Tunnel 1,2024-02-09,leaf,tomato leafminer,4
        Tunnel 1,2024-02-20,leaf,tomato leafminer,0
        Tunnel 1,2024-02-20,leaf,tomato leafminer,0
        """);
    write(
        "stages.csv",
        """
        pest,stage,after_flight_c_d,lower_c,upper_c,source
        tomato leafminer,eggs hatch,60,8.0,37.3,made up
        """);
  }

  private Map<String, String> pages(Path out) throws IOException {
    var pages = new TreeMap<String, String>();
    try (var files = Files.list(out)) {
      for (var file : files.toList()) {
        pages.put(file.getFileName().toString(), Files.readString(file, StandardCharsets.UTF_8));
      }
    }
    return pages;
  }

  @Test
  void aFolderWithoutAFarmHasAPageForThePlaceAndSaysWhatIsMissing() throws IOException {
    var said = say("bulletin", folder.toString());
    assertThat(said.status()).isZero();
    assertThat(said.out()).contains("4 files written").contains("tomato leafminer, Bellbird Flat");
    var pages = pages(folder.resolve("bulletins"));
    assertThat(pages.keySet())
        .containsExactly(
            "bellbird-flat-adviser.en.html",
            "bellbird-flat-board.en.html",
            "bellbird-flat-message.en.txt",
            "index.html");
    assertThat(pages.get("bellbird-flat-board.en.html"))
        .contains("No label records are in the folder")
        .contains("count in the field before you decide")
        .contains("As of Saturday, 10 Feb 2024");
  }

  @Test
  void theFarmStandsOnThePageAndEveryTextIsEscaped() throws IOException {
    addTheFarm();
    var out = temporary.resolve("out");
    var said =
        say("bulletin", folder.toString(), "--out", out.toString(), "--language", "german,english");
    assertThat(said.status()).as(said.err()).isZero();
    var pages = pages(out);
    for (var page : pages.values()) {
      assertThat(page).doesNotContain("<script").doesNotContain("http://www.w3.org/1999/xlink");
    }
    var adviser = pages.get("tunnel-1-adviser.en.html");
    assertThat(adviser)
        .contains("&lt;script&gt;x&lt;/script&gt;")
        .contains("treating most likely pays")
        .contains("Do not use Product B before you have read its label")
        .contains("eggs hatch after flight")
        .contains("Windows of one generation each, from the forecast")
        .contains("knapsack, tank 15 L")
        .contains("not recorded")
        .contains("none, says the label");
    // A count of a later day is not known yet.
    assertThat(adviser).doesNotContain("20 Feb</td>");
    assertThat(pages.get("tunnel-1-board.de.html"))
        .contains("Behandeln lohnt sich sehr wahrscheinlich")
        .contains("knapsack");
    for (var message : pages.get("tunnel-1-message.en.txt").lines().toList()) {
      assertThat(message)
          .hasSizeLessThanOrEqualTo(160)
          .startsWith("tomato leafminer, Tunnel 1, 10 Feb:")
          .contains("8 in 10:");
    }
  }

  @Test
  void aSecondRunWritesTheSameBytesAndALaterPageTellsWhatChanged() throws IOException {
    addTheFarm();
    var early = temporary.resolve("early");
    var first =
        say(
            "bulletin",
            folder.toString(),
            "--out",
            early.toString(),
            "--as-of",
            "2024-01-20",
            "--keep");
    assertThat(first.status()).as(first.err()).isZero();
    assertThat(first.out()).contains("added to forecasts.csv");
    var one = temporary.resolve("one");
    var two = temporary.resolve("two");
    say("bulletin", folder.toString(), "--out", one.toString());
    say("bulletin", folder.toString(), "--out", two.toString());
    assertThat(pages(one)).isEqualTo(pages(two));
    assertThat(pages(one).get("tunnel-1-adviser.en.html"))
        .contains("on 20 Jan the page gave")
        .doesNotContain("No earlier page");
    assertThat(pages(early).get("tunnel-1-adviser.en.html")).contains("No earlier page");
  }

  @Test
  void aFolderThatIsNoneIsRefused() {
    var said = say("bulletin", temporary.resolve("nowhere").toString());
    assertThat(said.status()).isEqualTo(1);
    assertThat(said.err()).contains("there is no such folder");
  }
}
