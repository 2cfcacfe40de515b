package agro.notebook.insight;

import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.util.JavacTask;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javax.tools.Diagnostic;
import javax.tools.DiagnosticCollector;
import javax.tools.JavaCompiler;
import javax.tools.JavaFileObject;
import javax.tools.SimpleJavaFileObject;
import javax.tools.StandardJavaFileManager;
import javax.tools.StandardLocation;
import javax.tools.ToolProvider;

/** The JDK's compiler, asked what it understands; nothing is compiled to classes. */
final class SourceCompiler {

  private static final List<String> PATIENT =
      List.of("-proc:none", "-Xlint:none", "-implicit:none", "--should-stop=ifError=FLOW");

  private final List<Path> added = new ArrayList<>();
  private StandardJavaFileManager manager;

  /** Loaded when it is needed first, so that nobody waits for it at the start. */
  private static final class Loaded {
    static final JavaCompiler COMPILER = ToolProvider.getSystemJavaCompiler();
  }

  /**
   * What the compiler made of a source file.
   *
   * @param task gives types and elements
   * @param unit the tree of the file
   * @param problems what it complained about
   */
  record Understood(
      JavacTask task,
      CompilationUnitTree unit,
      List<Diagnostic<? extends JavaFileObject>> problems) {

    /** Makes the list immutable. */
    Understood {
      problems = List.copyOf(problems);
    }
  }

  /**
   * Reads a source file without looking at the meaning of its names.
   *
   * @param text the file
   * @return its tree and the errors of its syntax
   */
  Understood parsed(String text) {
    return understood(text, false);
  }

  /**
   * Reads a source file and finds out what its names mean, as far as that can be told.
   *
   * @param text the file
   * @return its tree with types
   */
  Understood analyzed(String text) {
    return understood(text, true);
  }

  private Understood understood(String text, boolean meaning) {
    var problems = new DiagnosticCollector<JavaFileObject>();
    var task =
        (JavacTask)
            Loaded.COMPILER.getTask(
                Writer.nullWriter(),
                manager(),
                problems,
                PATIENT,
                null,
                List.of(new TextSource(text)));
    try {
      var unit = task.parse().iterator().next();
      if (meaning) {
        task.analyze();
      }
      return new Understood(task, unit, problems.getDiagnostics());
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  /**
   * Adds a library or a folder of classes.
   *
   * @param path a jar or a folder
   */
  void addToClassPath(Path path) {
    added.add(path);
    if (manager != null) {
      setClassPath();
    }
  }

  private StandardJavaFileManager manager() {
    if (manager == null) {
      manager = Loaded.COMPILER.getStandardFileManager(null, Locale.ROOT, StandardCharsets.UTF_8);
      setClassPath();
    }
    return manager;
  }

  private void setClassPath() {
    var paths = new ArrayList<>(TypeIndex.ownClassPath());
    paths.addAll(added);
    try {
      manager.setLocationFromPaths(StandardLocation.CLASS_PATH, paths);
      manager.setLocationFromPaths(StandardLocation.SOURCE_PATH, List.of());
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  /** A source file in memory. */
  private static final class TextSource extends SimpleJavaFileObject {

    private final String text;

    TextSource(String text) {
      super(URI.create("text:///" + SessionText.CLASS + ".java"), Kind.SOURCE);
      this.text = text;
    }

    @Override
    public CharSequence getCharContent(boolean ignoreEncodingErrors) {
      return text;
    }

    /** A file of documentation has a public class of any name. */
    @Override
    public boolean isNameCompatible(String simpleName, Kind kind) {
      return true;
    }
  }
}
