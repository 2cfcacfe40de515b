package agro.notebook.insight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import agro.notebook.display.MimeBundle;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CodeInsightTest {

  private static InsightSession session;

  @BeforeAll
  static void open() {
    session = InsightSession.open();
  }

  @AfterAll
  static void close() {
    session.close();
  }

  private static final List<String> STRANGE =
      List.of(
          "int x = \"\ud83d\udc1b\".len; // \ud83d\udc1b",
          "@Foo(class X { ( [ \u0000 \"\"\" ' \\u00zz",
          "\ud83d words.stream().map(((((x -> { switch (x) { case 1 -> ",
          "%%bash\nls",
          "import static ..*;;}}}{{",
          "new new new . :: <>< @ @interface record enum",
          "((((((((((".repeat(200));

  @Test
  void strangeCodeIsNoTrouble() {
    for (var code : STRANGE) {
      checkAt(code, Math.min(code.length() + 1, 40));
    }
  }

  @Test
  @Tag("slow")
  void nothingIsThrownWhereverTheCursorStands() {
    for (var code : STRANGE) {
      for (var cursor = -1; cursor <= Math.min(code.length() + 1, 80); cursor++) {
        checkAt(code, cursor);
      }
    }
  }

  private static void checkAt(String code, int cursor) {
    var found = session.insight().completions(code, cursor);
    assertThat(found.from()).isBetween(0, found.to());
    assertThat(found.to()).isBetween(found.from(), code.length());
    assertThat(session.insight().inspection(code, cursor, true)).isNotNull();
    assertThat(session.insight().completeness(code)).isNotNull();
  }

  @Test
  void aCursorWithinALetterOfTwoUnitsStandsBeforeIt() {
    var code = "\ud83d\udc1b";
    assertThat(session.insight().completions(code, 1).from()).isZero();
  }

  @Test
  void theWholeWordIsReplaced() {
    var code = "var rounded = Math.ro(mean);";
    var found = session.insight().completions(code, code.indexOf("o("));
    assertThat(code.substring(found.from(), found.to())).isEqualTo("ro");
    assertThat(found.candidates()).extracting(Completions.Candidate::text).contains("round");
  }

  @Test
  void candidatesAreDistinctAndBounded() {
    var found = session.insight().completions("", 0).candidates();
    assertThat(found).hasSizeLessThanOrEqualTo(300);
    assertThat(found).extracting(Completions.Candidate::text).doesNotHaveDuplicates();
  }

  @Test
  void theMembersOfATypeStandBeforeThoseOfEveryObject() {
    var texts =
        session.insight().completions("base.", 5).candidates().stream()
            .map(Completions.Candidate::text)
            .toList();
    assertThat(texts.indexOf("plus")).isLessThan(texts.indexOf("getClass"));
    assertThat(texts).contains("celsius", "minus", "wait");
  }

  @Test
  void instructionsAreCompletedAtTheBeginningOfALine() {
    var known = List.of("%time", "%timeit", "%maven");
    var code = "int x = 1;\n%ti";
    var found = session.insight().completions(code, code.length(), known);
    assertThat(found.from()).isEqualTo(code.indexOf('%'));
    assertThat(found.candidates())
        .extracting(Completions.Candidate::text, Completions.Candidate::type)
        .containsExactly(tuple("%time", "magic"), tuple("%timeit", "magic"));
    assertThat(session.insight().completions(code, code.length()).candidates()).isEmpty();
  }

  @Test
  void codeBehindAnInstructionIsJava() {
    var code = "%time base.pl";
    var found = session.insight().completions(code, code.length(), List.of("%time"));
    assertThat(found.candidates()).extracting(Completions.Candidate::text).containsExactly("plus");
  }

  @Test
  void privatePartsOfOtherCellsAreNotOffered() {
    session.evaluate("class Vault { private int secret; int open() { return secret; } }");
    session.evaluate("var vault = new Vault();");
    var found = session.insight().completions("vault.", 6).candidates();
    assertThat(found)
        .extracting(Completions.Candidate::text)
        .contains("open")
        .doesNotContain("secret");
  }

  @Test
  void detailsTellParametersAndResult() {
    var code = "Temperature.of(3, TemperatureUnit.KELVIN)";
    var bundle = session.insight().inspection(code, 13, true).orElseThrow();
    assertThat(bundle.plainText())
        .contains("Parameters:\n- value: number in that unit\n- unit: the unit")
        .contains("Returns:\n- the temperature");
    assertThat(bundle.get(MimeBundle.HTML).orElseThrow())
        .startsWith("<div>")
        .contains("<li><code>value</code>: number in that unit</li>");
  }

  @Test
  void theJdkIsExplainedFromItsSources(@TempDir Path folder) throws IOException {
    var archive = folder.resolve("src.zip");
    try (var zip = new ZipOutputStream(Files.newOutputStream(archive))) {
      zip.putNextEntry(new ZipEntry("java.base/java/lang/Math.java"));
      var source =
          """
          package java.lang;
          /** Sums. */
          public final class Math {
            /** The larger of {@code a} &lt;=&gt; {@link #min b}. More.
             * @param a one
             * @param b other */
            public static int max(int a, int b) { return a; }
          }
          """;
      zip.write(source.getBytes(StandardCharsets.UTF_8));
    }
    try (var informed = InsightSession.withJdkSources(archive)) {
      var bundle = informed.insight().inspection("Math.max(1, 2)", 6, false).orElseThrow();
      assertThat(bundle.plainText())
          .startsWith("static int max(int a, int b)\nin java.lang.Math\nThe larger of a <=> b.\n");
      assertThat(bundle.get(MimeBundle.HTML).orElseThrow())
          .contains("The larger of <code>a</code> &lt;=&gt; b.");
    }
  }

  @Test
  void ourOwnSourcesAreAttached() {
    var archive = new SourceArchive(Path.of("none"), List.of());
    assertThat(archive.source("", "agro.units.Temperature")).isPresent();
    assertThat(archive.source("", "agro.notebook.display.MimeBundle")).isPresent();
    assertThat(archive.source("", "agro.units.Nothing")).isEmpty();
  }

  @Test
  void sourcesBesideALibraryAreFound(@TempDir Path folder) throws IOException {
    try (var zip =
        new ZipOutputStream(Files.newOutputStream(folder.resolve("field-1.0-sources.jar")))) {
      zip.putNextEntry(new ZipEntry("vale/Field.java"));
      zip.write("package vale; class Field {}".getBytes(StandardCharsets.UTF_8));
    }
    var archive = new SourceArchive(Path.of("none"), List.of(folder.resolve("field-1.0.jar")));
    assertThat(archive.source("", "vale.Field")).contains("package vale; class Field {}");
  }
}
