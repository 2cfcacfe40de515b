package agro.notebook.magic;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import agro.notebook.kernel.CellMagic;
import agro.notebook.kernel.CellMagic.Form;
import agro.notebook.kernel.CellMagicCall;
import agro.notebook.kernel.CellMagicContext;
import agro.notebook.kernel.CellMagicProblem;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.net.ServerSocket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Libraries from a repository that the test makes: no network is used. */
class MavenMagicsTest {

  private static final String NOWHERE = "http://localhost:9/maven";

  @TempDir private Path folder;
  private SampleRepository repository;
  private List<CellMagic> magics;
  private String said = "";

  @BeforeEach
  void fill() throws IOException {
    repository = new SampleRepository(folder.resolve("repository"));
    repository.library("leaf", "1.0", "");
    repository.library("leaf", "2.0", "");
    repository.library(
        "tree",
        "1.0",
        SampleRepository.dependency("leaf", "1.0", "")
            + SampleRepository.dependency("root", "1.0", "runtime")
            + SampleRepository.dependency("never", "1.0", "test"));
    repository.library("root", "1.0", "");
    settings(mirror(repository.address()));
  }

  private static String mirror(String url) {
    return "<mirrors><mirror><id>vale</id><mirrorOf>*</mirrorOf><url>"
        + url
        + "</url></mirror></mirrors>";
  }

  /** Nothing in these tests may reach a network. */
  private String withoutCentral() {
    return mirror(folder.resolve("empty").toUri().toString()).replace(">*<", ">central<");
  }

  private void settings(String parts) throws IOException {
    var file = folder.resolve("settings.xml");
    Files.writeString(file, "<settings>" + parts + "</settings>", StandardCharsets.UTF_8);
    magics =
        new MavenMagics(new MavenPlace(Optional.of(file), Optional.of(folder.resolve("local"))))
            .magics();
  }

  private List<String> call(String line) throws Exception {
    return call(line, "");
  }

  private List<String> call(String line, String body) throws Exception {
    var form = line.startsWith("%%") ? Form.CELL : Form.LINE;
    var parts = line.substring(form.mark().length()).split(" ", 2);
    var magic =
        magics.stream()
            .filter(each -> each.name().equals(parts[0]) || each.aliases().contains(parts[0]))
            .findFirst()
            .orElseThrow();
    var call = new CellMagicCall(form, parts[0], parts.length > 1 ? parts[1] : "", body);
    var before = System.out;
    var printed = new ByteArrayOutputStream();
    System.setOut(new PrintStream(printed, true, StandardCharsets.UTF_8));
    try {
      var answer = magic.run(call, new CellMagicContext(magics, List.of(), List.of()));
      return answer.classPath().stream().map(path -> path.getFileName().toString()).toList();
    } finally {
      System.setOut(before);
      said = printed.toString(StandardCharsets.UTF_8);
    }
  }

  @Test
  void aLibraryComesWithWhatItNeedsAtRunTime() throws Exception {
    assertThat(call("%maven vale:tree:1.0"))
        .containsExactly("tree-1.0.jar", "leaf-1.0.jar", "root-1.0.jar");
    assertThat(said)
        .startsWith("Added to the class path:\n  vale:tree:1.0 (downloaded from vale, ");
    assertThat(call("%addMavenDependency vale:tree:1.0")).isEmpty();
    assertThat(said).isEqualTo("Everything of it is on the class path already.\n");
  }

  @Test
  void whatWasFetchedBeforeIsNotDownloadedAgain() throws Exception {
    call("%maven vale:leaf:1.0");
    settings("<offline>true</offline>" + mirror(repository.address()));
    assertThat(call("%maven vale:leaf:1.0")).containsExactly("leaf-1.0.jar");
    assertThat(said).doesNotContain("downloaded");
  }

  @Test
  void severalAreFetchedTogether() throws Exception {
    assertThat(call("%addMavenDependencies vale:leaf:2.0  vale:tree:jar:1.0"))
        .containsExactlyInAnyOrder("leaf-2.0.jar", "tree-1.0.jar", "root-1.0.jar");
  }

  @Test
  void theVersionThatStandsStays() throws Exception {
    call("%maven vale:leaf:2.0");
    assertThat(call("%maven vale:tree:1.0")).containsExactly("tree-1.0.jar", "root-1.0.jar");
    assertThat(said)
        .contains("Not added:\n  vale:leaf:1.0 (version 2.0 was added before and stays");
  }

  @Test
  void whatTheKernelBringsIsNotAddedTwice() throws Exception {
    var gson = folder.resolve("repository/com/google/code/gson/gson/2.8.9");
    Files.createDirectories(gson);
    Files.writeString(
        gson.resolve("gson-2.8.9.pom"),
        "<project><modelVersion>4.0.0</modelVersion><groupId>com.google.code.gson</groupId>"
            + "<artifactId>gson</artifactId><version>2.8.9</version></project>");
    assertThat(call("%maven com.google.code.gson:gson:2.8.9")).isEmpty();
    assertThat(said)
        .matches(
            "Not added:\n  com.google.code.gson:gson:2.8.9 \\(the kernel brings version"
                + " \\d[\\d.]+, which cells use\\)\n");
  }

  @Test
  void classesThatTheKernelHoldsAreNotMixed() throws Exception {
    SampleJar.with("agro.notebook.kernel.CellSource", "")
        .writeTo(repository.file("copied", "1.0", ".jar"));
    repository.pom("copied", "1.0", "");
    assertThat(call("%maven vale:copied:1.0")).isEmpty();
    assertThat(said).contains("vale:copied:1.0 (the kernel brings these classes");
  }

  @Test
  void versionsMayBeRangesAndFilesMayHaveClassifiers() throws Exception {
    Files.writeString(
        folder.resolve("repository/vale/leaf/maven-metadata.xml"),
        "<metadata><groupId>vale</groupId><artifactId>leaf</artifactId><versioning><versions>"
            + "<version>1.0</version><version>2.0</version></versions></versioning></metadata>");
    SampleJar.with("vale.Extra", "").writeTo(repository.file("leaf", "2.0", "-extra.jar"));
    assertThat(call("%maven vale:leaf:[1,)")).containsExactly("leaf-2.0.jar");
    assertThat(call("%maven vale:leaf:jar:extra:2.0")).containsExactly("leaf-2.0-extra.jar");
  }

  @Test
  void repositoriesAreAdded() throws Exception {
    settings(withoutCentral());
    var address = call("%mavenRepo vale " + repository.address());
    assertThat(address).isEmpty();
    assertThat(said).isEqualTo("Searching vale (" + repository.address() + ") too.\n");
    assertThat(call("%maven vale:leaf:1.0")).containsExactly("leaf-1.0.jar");
    call("%addMavenRepo folder " + repository.folder());
    assertThat(said).startsWith("Searching folder (file:");
    assertThatThrownBy(() -> call("%mavenRepo open http://repository.example.org/maven"))
        .hasMessageContaining("not encrypted");
    settings(mirror(repository.address()));
    call("%mavenRepo open http://repository.example.org/maven");
    assertThat(said).contains("the mirror of open in your settings");
  }

  @ParameterizedTest
  @CsvSource({
    "%maven, needs at least one library",
    "%maven vale:leaf, the version is missing",
    "%maven leaf, it has 1 parts",
    "%maven vale::1.0, '\"\" is no name'",
    "%maven vale:leaf:1 0, '\"0\" does not name a library'",
    "%mavenRepo vale, 'needs a name and an address, but there are 1 words'",
    "%mavenRepo vale nowhere, '\"nowhere\" is neither the address of a repository'",
    "%loadFromPOM, needs a file",
    "%loadFromPOM nowhere.xml, 'there is no project file \"nowhere.xml\"; looked for'",
    "%maven vale:leaf:3.0, 'vale:leaf:3.0 was not found in vale (file:'",
    "%maven vale:lief:1.0, 'vale:lief:1.0 was not found in vale (file:'"
  })
  void mistakesAreExplained(String line, String message) {
    assertThatThrownBy(() -> call(line))
        .isInstanceOf(CellMagicProblem.class)
        .hasMessageContaining(message);
  }

  @Test
  void aMissingFileOfADependencyIsNamed() throws Exception {
    repository.pom("bush", "1.0", SampleRepository.dependency("gone", "7", ""));
    SampleJar.with("vale.Bush", "").writeTo(repository.file("bush", "1.0", ".jar"));
    assertThatThrownBy(() -> call("%maven vale:bush:1.0"))
        .hasMessageContaining("vale:gone:7 was not found")
        .hasMessageContaining("spelling");
    repository.library("gone", "7", "");
    assertThat(call("%maven vale:bush:1.0")).containsExactly("bush-1.0.jar", "gone-7.jar");
  }

  @Test
  void offlineAndUnreachableAreDifferent() throws Exception {
    settings("<offline>true</offline>");
    assertThatThrownBy(() -> call("%maven vale:leaf:1.0"))
        .hasMessageContaining("vale:leaf:1.0 is not in the local repository")
        .hasMessageContaining("offline");
    settings(mirror(NOWHERE));
    assertThatThrownBy(() -> call("%maven vale:leaf:1.0"))
        .hasMessageContaining("vale:leaf:1.0 could not be fetched from vale (" + NOWHERE + ")")
        .hasMessageContaining("online");
  }

  @Test
  void brokenSettingsAreSaid() throws Exception {
    settings("<mirrors><mirror></mirrors>");
    assertThatThrownBy(() -> call("%maven vale:leaf:1.0"))
        .isInstanceOf(CellMagicProblem.class)
        .hasMessageContaining("settings");
  }

  @Test
  void aServerThatNeverAnswersCanBeInterrupted() throws Exception {
    try (var silent = new ServerSocket(0)) {
      settings(mirror("http://localhost:" + silent.getLocalPort() + "/maven"));
      var ended = new CompletableFuture<Throwable>();
      var caller =
          new Thread(
              () -> {
                try {
                  call("%maven vale:leaf:1.0");
                  ended.complete(null);
                } catch (Exception expected) {
                  ended.complete(expected);
                }
              });
      caller.start();
      silent.accept().getInputStream().read();
      caller.interrupt();
      assertThat(ended.get(30, TimeUnit.SECONDS)).isInstanceOf(InterruptedException.class);
    }
  }

  @Test
  void projectFilesAreRead() throws Exception {
    var parent =
        "<project><modelVersion>4.0.0</modelVersion><groupId>vale</groupId>"
            + "<artifactId>parent</artifactId><version>1</version><packaging>pom</packaging>"
            + "<properties><leaf>2.0</leaf></properties><dependencyManagement><dependencies>"
            + SampleRepository.dependency("leaf", "${leaf}", "")
            + "</dependencies></dependencyManagement></project>";
    Files.createDirectories(folder.resolve("project/child"));
    Files.writeString(folder.resolve("project/pom.xml"), parent);
    var child = folder.resolve("project/child/pom.xml");
    Files.writeString(
        child,
        "<project><modelVersion>4.0.0</modelVersion><parent><groupId>vale</groupId>"
            + "<artifactId>parent</artifactId><version>1</version></parent>"
            + "<artifactId>child</artifactId><dependencies>"
            + SampleRepository.dependency("leaf", "", "")
            + SampleRepository.dependency("root", "1.0", "test")
            + "</dependencies></project>");
    assertThat(call("%loadFromPOM \"" + child + "\"")).containsExactly("leaf-2.0.jar");
    assertThat(call("%loadFromPOM " + child.getParent() + " test")).containsExactly("root-1.0.jar");
    assertThatThrownBy(() -> call("%loadFromPOM " + child + " tests"))
        .hasMessageContaining("\"tests\" is no scope");
  }

  @Test
  void dependenciesStandInTheCell() throws Exception {
    assertThat(call("%%loadFromPOM", SampleRepository.dependency("leaf", "1.0", "")))
        .containsExactly("leaf-1.0.jar");
    assertThat(said).startsWith("Added to the class path:\n  vale:leaf:1.0");
    settings(withoutCentral());
    var whole =
        "<!-- <project> --><repositories><repository><id>own</id><url>"
            + repository.address()
            + "</url></repository></repositories>\n<dependencies>"
            + SampleRepository.dependency("root", "1.0", "")
            + "</dependencies>";
    assertThat(call("%%loadFromPOM", whole)).containsExactly("root-1.0.jar");
  }

  @Test
  void mistakesInXmlAreNotSilent() {
    var list = new ArrayList<List<String>>();
    list.add(List.of("", "needs dependencies"));
    list.add(List.of("<dependencies/>", "names no dependency of scope compile or runtime"));
    list.add(List.of("<dependency>\n<groupId>vale</groupId>\n</artifactId>", "line 3"));
    list.add(List.of("<dependencies>\n<dependancy/></dependencies>", "dependancy"));
    list.add(
        List.of(
            "<dependency><groupId>vale</groupId><artifactId>leaf</artifactId></dependency>",
            "version"));
    for (var pair : list) {
      assertThatThrownBy(() -> call("%%loadFromPOM", pair.get(0)))
          .isInstanceOf(CellMagicProblem.class)
          .hasMessageContaining(pair.get(1));
    }
  }
}
