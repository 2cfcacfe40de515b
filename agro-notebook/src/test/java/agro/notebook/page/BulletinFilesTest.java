package agro.notebook.page;

import static org.assertj.core.api.Assertions.assertThat;

import agro.programme.bulletin.FieldBulletin;
import agro.programme.bulletin.MissingPart;
import agro.programme.bulletin.PestBulletin;
import agro.programme.bulletin.ReadingLevel;
import agro.working.TextLanguage;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Pages of fields without a forecast: names, escapes and what is missing. */
class BulletinFilesTest {

  private static FieldBulletin bulletin(String field, String pest) {
    return new FieldBulletin(
        field,
        "",
        LocalDate.of(2026, 6, 16),
        Optional.empty(),
        List.of(
            new PestBulletin(
                pest,
                Optional.empty(),
                "<b>bold</b>",
                List.of(),
                List.of(),
                List.of(),
                Optional.empty())),
        List.of(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        List.of(MissingPart.LABELS, MissingPart.SCOUTING),
        List.of("\"><img src=x onerror=alert(1)>"),
        List.of());
  }

  private static BulletinFiles files(FieldBulletin... bulletins) {
    return BulletinFiles.of(
        List.of(bulletins), List.of(TextLanguage.values()), List.of(ReadingLevel.values()));
  }

  @Test
  void textFromDataStaysText() {
    var files = files(bulletin("<script>alert(1)</script>", "\" onload=\"x"));
    files
        .texts()
        .forEach(
            (name, text) -> {
              // A message is plain text, in which nothing is markup.
              if (name.endsWith(".html")) {
                assertThat(text)
                    .doesNotContain("<script")
                    .doesNotContain("<img")
                    .doesNotContain("<b>");
              }
            });
    var page = files.texts().get("script-alert-1-script-adviser.en.html");
    assertThat(page)
        .contains("&lt;script&gt;alert(1)&lt;/script&gt;")
        .contains("&lt;b&gt;bold&lt;/b&gt;")
        .contains("&quot; onload=&quot;x")
        .contains("default-src 'none'");
  }

  @Test
  void namesOfFilesAreSafeAndUnique() {
    var files =
        files(bulletin("Čista njiva/1", "a"), bulletin("cista njiva 1", "a"), bulletin("!!", "a"));
    assertThat(files.texts().keySet())
        .contains(
            "cista-njiva-1-board.en.html",
            "cista-njiva-1-2-board.en.html",
            "field-board.de.html",
            "field-message.de.txt",
            BulletinFiles.INDEX)
        .allMatch(name -> name.matches("[a-z0-9.-]+"));
    assertThat(files.texts().get(BulletinFiles.INDEX)).contains("href=\"field-board.de.html\"");
  }

  @Test
  void whatIsMissingIsSaidInBothLanguages() {
    var files = files(bulletin("Field", "moth"));
    assertThat(files.texts().get("field-board.en.html"))
        .contains("No label records are in the folder")
        .contains("Nobody has counted in the field")
        .contains("Before you use these figures")
        .contains("As of Tuesday, 16 Jun 2026");
    assertThat(files.texts().get("field-board.de.html"))
        .contains("<html lang=\"de\">")
        .contains("Im Ordner sind keine Etiketten erfasst")
        .contains("Bevor Sie diese Zahlen verwenden")
        .contains("Dienstag, 16. Juni 2026");
  }

  @Test
  void theShortTextNeverCutsAWord() {
    var name = "moth ".repeat(60).strip();
    var tooLong = files(bulletin("Field", name));
    assertThat(tooLong.texts().get("field-message.en.txt")).isEmpty();
    assertThat(tooLong.texts().get("field-board.en.html"))
        .contains("give the pest or the field a shorter name");
    var fits = files(bulletin("Field", "moth ".repeat(20).strip()));
    assertThat(fits.texts().get("field-message.en.txt").strip())
        .hasSizeLessThanOrEqualTo(160)
        .contains("Field, 16 Jun: no forecast.");
  }
}
