package agro.notebook;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.source.util.JavacTask;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.tools.DiagnosticCollector;
import javax.tools.JavaCompiler;
import javax.tools.JavaFileObject;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The README promises two commands that work, snippets that compile and files that exist. */
class ReadmeTest {

  private static final Path TOP = Path.of("..");
  private static final Path CORE_SOURCES = TOP.resolve("agro-core/src/main/java");
  private static final Pattern BLOCK = Pattern.compile("(?ms)^```(\\w+)\\n(.*?)^```$");
  private static final Pattern LINK = Pattern.compile("]\\(([^):#]+)\\)");

  @TempDir Path folder;

  @Test
  void twoCommandsAreTwo() throws IOException {
    String readme = readme();
    String section = readme.split("(?m)^## Two commands$", -1)[1].split("(?m)^## ", -1)[0];
    assertThat(blocks(section, "sh")).hasSize(2);
    assertThat(blocks(readme, "sh")).as("blocks in the whole page").hasSize(2);
    assertThat(blocks(section, "sh").get(0)).contains(" run notebooks/");
  }

  @Test
  void snippetsCompile() throws IOException {
    List<String> snippets = blocks(readme(), "java");
    assertThat(snippets).isNotEmpty();
    for (int i = 0; i < snippets.size(); i++) {
      Path file = folder.resolve("Snippet" + i + ".java");
      Files.writeString(file, asClass("Snippet" + i, snippets.get(i)), StandardCharsets.UTF_8);
      assertThat(errorsIn(file)).as(snippets.get(i)).isEmpty();
    }
  }

  @Test
  void linkedFilesExist() throws IOException {
    List<String> links = LINK.matcher(readme()).results().map(found -> found.group(1)).toList();
    assertThat(links).isNotEmpty().allSatisfy(link -> assertThat(TOP.resolve(link)).exists());
  }

  private static String readme() throws IOException {
    return Files.readString(TOP.resolve("README.md"), StandardCharsets.UTF_8);
  }

  private static List<String> blocks(String text, String language) {
    List<String> found = new ArrayList<>();
    Matcher block = BLOCK.matcher(text);
    while (block.find()) {
      if (block.group(1).equals(language)) {
        found.add(block.group(2));
      }
    }
    return found;
  }

  private static List<String> errorsIn(Path file) throws IOException {
    JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
    DiagnosticCollector<JavaFileObject> found = new DiagnosticCollector<>();
    try (StandardJavaFileManager manager =
        compiler.getStandardFileManager(found, Locale.ROOT, StandardCharsets.UTF_8)) {
      List<String> options =
          List.of("-proc:none", "-classpath", System.getProperty("java.class.path"));
      ((JavacTask)
              compiler.getTask(
                  null, manager, found, options, null, manager.getJavaFileObjects(file)))
          .analyze();
    }
    return found.getDiagnostics().stream().map(Object::toString).toList();
  }

  private static String asClass(String name, String snippet) throws IOException {
    StringBuilder source = new StringBuilder("import java.time.*;\nimport java.nio.file.*;\n");
    try (Stream<Path> packages = Files.list(CORE_SOURCES.resolve("agro"))) {
      packages
          .sorted()
          .forEach(at -> source.append("import agro.").append(at.getFileName()).append(".*;\n"));
    }
    return source
        .append("class ")
        .append(name)
        .append(" {\n  void run() throws Exception {\n")
        .append(snippet)
        .append("  }\n}\n")
        .toString();
  }
}
