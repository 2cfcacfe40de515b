package agro.notebook;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.LineMap;
import com.sun.source.tree.MethodTree;
import com.sun.source.util.JavacTask;
import com.sun.source.util.SourcePositions;
import com.sun.source.util.TreePathScanner;
import com.sun.source.util.Trees;
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
import javax.tools.Diagnostic;
import javax.tools.DiagnosticCollector;
import javax.tools.JavaCompiler;
import javax.tools.JavaFileObject;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.Test;

/** What the compiler cannot be told to refuse: missing Javadoc, long files, long methods. */
class SourcesTest {

  private static final int MOST_LINES_OF_A_FILE = 500;
  private static final int MOST_LINES_OF_A_METHOD = 60;
  private static final List<Path> MAIN =
      List.of(Path.of("../agro-core/src/main/java"), Path.of("src/main/java"));
  private static final List<Path> TEST =
      List.of(Path.of("../agro-core/src/test/java"), Path.of("src/test/java"));

  private static final Pattern PROPERTY =
      Pattern.compile("^\\s+@Property\\b(?:\\(([^()]*)\\))?", Pattern.MULTILINE);

  private final JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
  private final DiagnosticCollector<JavaFileObject> diagnostics = new DiagnosticCollector<>();

  /**
   * The build leaves doclint's group "missing" to this test, because the compiler of JDK 17 asks
   * for the components of a record once more on its compact constructor, which later ones do not.
   */
  @Test
  void everythingPublicIsDocumented() throws IOException {
    List<Path> files = javaFiles(MAIN);
    List<String> options =
        List.of(
            "-proc:none",
            "-Xdoclint:all/protected",
            "-Xdoclint/package:agro.*",
            "-Xmaxwarns",
            "10000",
            "-classpath",
            System.getProperty("java.class.path"));
    try (StandardJavaFileManager manager = fileManager()) {
      task(manager, options, files).analyze();
    }
    List<String> lacking = new ArrayList<>();
    for (Diagnostic<? extends JavaFileObject> found : diagnostics.getDiagnostics()) {
      if (found.getKind() != Diagnostic.Kind.NOTE && !isCompactConstructor(found)) {
        lacking.add(found.toString());
      }
    }
    assertThat(files).isNotEmpty();
    assertThat(lacking).isEmpty();
  }

  @Test
  void filesAndMethodsAreShort() throws IOException {
    List<Path> files = javaFiles(Stream.concat(MAIN.stream(), TEST.stream()).toList());
    List<String> tooLong = new ArrayList<>();
    for (Path file : files) {
      int lines = Files.readAllLines(file, StandardCharsets.UTF_8).size();
      if (lines > MOST_LINES_OF_A_FILE) {
        tooLong.add(file + ": " + lines + " lines");
      }
    }
    try (StandardJavaFileManager manager = fileManager()) {
      JavacTask task = task(manager, List.of("-proc:none"), files);
      SourcePositions positions = Trees.instance(task).getSourcePositions();
      for (CompilationUnitTree unit : task.parse()) {
        new MethodLengths(positions).scan(unit, tooLong);
      }
    }
    assertThat(files).isNotEmpty();
    assertThat(tooLong).isEmpty();
  }

  /** A build that draws anew each time fails by chance, and the same source then passes again. */
  @Test
  void randomPropertiesHaveASeed() throws IOException {
    List<String> unseeded = new ArrayList<>();
    int found = 0;
    for (Path file : javaFiles(TEST)) {
      Matcher property = PROPERTY.matcher(Files.readString(file, StandardCharsets.UTF_8));
      while (property.find()) {
        found++;
        if (property.group(1) == null || !property.group(1).contains("seed")) {
          unseeded.add(file + ": " + property.group());
        }
      }
    }
    assertThat(found).isGreaterThan(100);
    assertThat(unseeded).isEmpty();
  }

  private StandardJavaFileManager fileManager() {
    return compiler.getStandardFileManager(diagnostics, Locale.ROOT, StandardCharsets.UTF_8);
  }

  private JavacTask task(StandardJavaFileManager manager, List<String> options, List<Path> files) {
    return (JavacTask)
        compiler.getTask(
            null, manager, diagnostics, options, null, manager.getJavaFileObjectsFromPaths(files));
  }

  private static boolean isCompactConstructor(Diagnostic<? extends JavaFileObject> found)
      throws IOException {
    if (!found.getMessage(Locale.ROOT).contains("no @param")) {
      return false;
    }
    String line =
        found
            .getSource()
            .getCharContent(true)
            .toString()
            .lines()
            .skip(found.getLineNumber() - 1)
            .findFirst()
            .orElse("");
    return line.matches("\\s*((public|protected) )?\\w+ \\{");
  }

  private static List<Path> javaFiles(List<Path> folders) throws IOException {
    List<Path> files = new ArrayList<>();
    for (Path folder : folders) {
      if (Files.isDirectory(folder)) {
        try (Stream<Path> all = Files.walk(folder)) {
          all.filter(file -> file.toString().endsWith(".java")).sorted().forEach(files::add);
        }
      }
    }
    return files;
  }

  private static final class MethodLengths extends TreePathScanner<Void, List<String>> {

    private final SourcePositions positions;

    MethodLengths(SourcePositions positions) {
      this.positions = positions;
    }

    @Override
    public Void visitMethod(MethodTree method, List<String> tooLong) {
      CompilationUnitTree unit = getCurrentPath().getCompilationUnit();
      LineMap map = unit.getLineMap();
      long end = positions.getEndPosition(unit, method);
      if (end != Diagnostic.NOPOS) {
        long lines =
            map.getLineNumber(end)
                - map.getLineNumber(positions.getStartPosition(unit, method))
                + 1;
        if (lines > MOST_LINES_OF_A_METHOD) {
          tooLong.add(
              unit.getSourceFile().getName() + ": " + method.getName() + ", " + lines + " lines");
        }
      }
      return super.visitMethod(method, tooLong);
    }
  }
}
