package agro.notebook.magic;

import static org.assertj.core.api.Assertions.assertThat;

import agro.notebook.kernel.CellEvaluator;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FilesInMagicsTest {

  @TempDir private Path folder;
  private CellEvaluator evaluator;

  @BeforeEach
  void open() {
    evaluator = CellEvaluator.open();
  }

  @AfterEach
  void close() {
    evaluator.close();
  }

  private Evaluated evaluate(String... lines) {
    return Evaluated.by(evaluator, lines);
  }

  private Path write(String name, String... lines) throws IOException {
    var file = folder.resolve(name);
    Files.createDirectories(file.getParent());
    return Files.writeString(file, String.join("\n", lines), StandardCharsets.UTF_8);
  }

  @Test
  void jarsAreSeenByCompilerAndCells() throws IOException {
    SampleJar.with("moth.Wing", "public static int spots() { return 7; }")
        .resource("moth/note.txt", "grey wing")
        .writeTo(folder.resolve("lib/wing.jar"));
    assertThat(evaluate("%jars " + folder + "/lib/*.jar", "moth.Wing.spots()").value())
        .isEqualTo(7);
    assertThat(
            evaluate(
                    "new String(Thread.currentThread().getContextClassLoader()",
                    "  .getResourceAsStream(\"moth/note.txt\").readAllBytes())")
                .value())
        .isEqualTo("grey wing");
    assertThat(evaluate("%classpath " + folder + "/lib/wing.jar").output())
        .contains("on the class path already");
  }

  @Test
  void servicesOfAddedJarsAreFound() throws IOException {
    SampleJar.with("moth.Spotted", "public String toString() { return \"plain\"; }")
        .and(
            "moth.SpottedRenderer",
            "implements agro.notebook.display.RichRenderer<Spotted>",
            "public Class<Spotted> type() { return Spotted.class; }"
                + "public agro.notebook.display.MimeBundle render(Spotted value) {"
                + "return agro.notebook.display.MimeBundle.text(\"rendered\"); }")
        .and("moth.Count", "implements Runnable", "public void run() {}")
        .resource("META-INF/services/agro.notebook.display.RichRenderer", "moth.SpottedRenderer\n")
        .resource("META-INF/services/java.lang.Runnable", "moth.Count\nmoth.Missing\n")
        .writeTo(folder.resolve("spotted.jar"));
    var shown = evaluate("%classpath " + folder.resolve("spotted.jar"), "new moth.Spotted()");
    assertThat(shown.result().value().shown().plainText()).isEqualTo("rendered");
    var first = evaluate("ServiceLoader.load(Runnable.class).iterator().next()").value();
    assertThat(first.getClass().getName()).isEqualTo("moth.Count");
  }

  @Test
  void aBrokenServiceBreaksNothing() throws IOException {
    SampleJar.with("moth.Plain", "")
        .resource("META-INF/services/agro.notebook.display.RichRenderer", "moth.Nowhere\n")
        .writeTo(folder.resolve("broken.jar"));
    var result = evaluate("%classpath " + folder.resolve("broken.jar"), "new moth.Plain() != null");
    assertThat(result.value()).isEqualTo(true);
    assertThat(result.output()).contains("A renderer could not be loaded", "moth.Nowhere");
  }

  @Test
  void foldersBringClassesAndJars() throws IOException {
    SampleJar.with("moth.Wing", "public static int spots() { return 7; }")
        .writeTo(folder.resolve("lib/wing.jar"));
    SampleJar.with("moth.Leg", "public static int legs() { return 6; }")
        .writeClassesTo(folder.resolve("classes"));
    assertThat(
            evaluate(
                    "%classpath " + folder.resolve("lib") + " \"" + folder.resolve("classes") + '"',
                    "moth.Wing.spots() + moth.Leg.legs()")
                .value())
        .isEqualTo(13);
  }

  @Test
  void aWholeClassPathIsTaken() throws IOException {
    var wing =
        SampleJar.with("moth.Wing", "public static int spots() { return 7; }")
            .writeTo(folder.resolve("lib/wing.jar"));
    var leg =
        SampleJar.with("moth.Leg", "public static int legs() { return 6; }")
            .writeTo(folder.resolve("lib/leg.jar"));
    var both = wing + java.io.File.pathSeparator + leg;
    assertThat(evaluate("%classpath " + both, "moth.Wing.spots() + moth.Leg.legs()").value())
        .isEqualTo(13);
    assertThat(evaluate("%classpath " + wing + " " + write("lib/a.txt") + "*").failure().message())
        .contains("no jar and no folder");
  }

  @Test
  void patternsReachDeep() throws IOException {
    SampleJar.with("moth.Wing", "public static int spots() { return 7; }")
        .writeTo(folder.resolve("a/b/c/wing.jar"));
    write("a/readme.txt", "nothing");
    assertThat(evaluate("%jars " + folder + "/a/**", "moth.Wing.spots()").value()).isEqualTo(7);
    assertThat(evaluate("%jars " + folder + "/{a,b}/b/?/w*.jar").output())
        .contains("on the class path already");
  }

  @Test
  void theUsersOwnFolderIsWrittenShort() throws Exception {
    var home = Path.of(System.getProperty("user.home"));
    assertThat(FilePattern.of("~/lib/a.jar").path()).isEqualTo(home.resolve("lib/a.jar"));
    assertThat(FilePattern.of("~").path()).isEqualTo(home);
    assertThat(FilePattern.of("~other/a.jar").path()).isEqualTo(Path.of("~other/a.jar"));
  }

  @Test
  void whatIsNotThereIsSaid() throws IOException {
    write("notes.txt", "x");
    write("bad.jar", "this is no jar");
    assertThat(evaluate("%jars " + folder + "/none.jar").failure().message())
        .contains("there is no", "none.jar");
    assertThat(evaluate("%jars " + folder + "/*.jarr").failure().message())
        .contains("no file matches", "looked in " + folder);
    assertThat(evaluate("%classpath " + folder + "/nowhere/*.jar").failure().message())
        .contains("which is not a folder");
    assertThat(evaluate("%classpath " + folder.resolve("notes.txt")).failure().message())
        .contains("neither a jar nor a folder");
    assertThat(evaluate("%classpath " + folder + "/*.txt").failure().message())
        .contains("no jar and no folder");
    assertThat(evaluate("%classpath " + folder.resolve("bad.jar")).failure().message())
        .contains("could not be opened as a jar");
    assertThat(evaluate("%classpath").failure().message()).contains("at least one jar");
  }

  @Test
  void codeFilesAreEvaluated() throws IOException {
    var code =
        write(
            "traps.java",
            "// counts",
            "package vale.traps;",
            "import java.util.stream.IntStream;",
            "public class Traps { public static int sum() { return IntStream.of(1, 2).sum(); } }",
            "int total = Traps.sum();",
            "total * 10");
    var loaded = evaluate("%load " + code, "total + 1");
    assertThat(loaded.value()).isEqualTo(4);
    assertThat(loaded.result().declared()).extracting("name").containsExactly("total");
    assertThat(evaluate("%load " + folder.resolve("traps")).value()).isEqualTo(30);
    var script = write("start.jsh", "#!/usr/bin/env jshell", "int started = 5;", "%time started");
    assertThat(evaluate("%load " + script).value()).isEqualTo(5);
  }

  @Test
  void notebooksAreEvaluatedCellByCell() throws IOException {
    var notebook =
        write(
            "counts.ipynb",
            "{\"nbformat\":4,\"nbformat_minor\":5,\"metadata\":{\"kernelspec\":{\"language\":\"java\"}},",
            "\"cells\":[{\"cell_type\":\"markdown\",\"source\":\"# Counts\"},",
            "{\"cell_type\":\"code\",\"source\":[\"int first = 3;\\n\",\"int second = 4;\"]},",
            "{\"cell_type\":\"code\",\"source\":\"first *\\nsecond\"},",
            "{\"cell_type\":\"code\",\"source\":\"\\nfirst / 0\"}]}");
    var failure = evaluate("int before = 1;", "%load " + notebook).failure();
    assertThat(failure.place()).hasToString(notebook + ", cell 3, line 2");
    assertThat(failure.name()).endsWith("ArithmeticException");
    assertThat(failure.message()).contains("by zero");
    assertThat(evaluate("first * second").value()).isEqualTo(12);
  }

  @Test
  void troubleIsPlacedInTheFile() throws IOException {
    var refused = write("refused.java", "int a = 1;", "", "int b = \"two\";");
    assertThat(evaluate("%load " + refused).failure().place()).hasToString(refused + ", line 3");
    var throwing =
        write("throwing.jshell", "int zero = 0;", "int boom() {", "  return 1 / zero;", "}");
    assertThat(evaluate("%load " + throwing, "1").value()).isEqualTo(1);
    assertThat(String.join("\n", evaluate("boom()").failure().trace()))
        .contains("in boom, " + throwing + ", line 3");
  }

  @Test
  void whatCannotBeLoadedIsSaid() throws IOException {
    var other =
        write(
            "other.ipynb",
            "{\"metadata\":{\"kernelspec\":{\"language\":\"python\"}},\"cells\":[]}");
    var self = write("self.java", "%load " + folder.resolve("self.java"));
    var latin = folder.resolve("latin.java");
    Files.write(latin, new byte[] {'/', '/', (byte) 0xe9});
    for (var line :
        List.of(
            "%load|needs a file",
            "%load nowhere.java|there is no \"nowhere.java\"; looked for ",
            "%load " + folder + "|is a folder",
            "%load " + write("a.txt", "x") + "|is not a file of Java code",
            "%load " + write("b.ipynb", "[") + "|is not a notebook",
            "%load " + other + "|is a notebook in python",
            "%load " + latin + "|is not text in UTF-8",
            "%load " + self + "|does a file load itself?")) {
      var parts = line.split("\\|", -1);
      assertThat(evaluate(parts[0]).failure().message()).contains(parts[1]);
    }
    assertThat(evaluate("1 + 1").value()).isEqualTo(2);
  }
}
