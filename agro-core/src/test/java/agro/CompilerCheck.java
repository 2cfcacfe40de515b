package agro;

import com.sun.source.util.JavacTask;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javax.tools.Diagnostic;
import javax.tools.DiagnosticCollector;
import javax.tools.JavaCompiler;
import javax.tools.JavaFileObject;
import javax.tools.SimpleJavaFileObject;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;

/**
 * Asks the compiler whether statements compile, for tests of types that must not mix. Nothing is
 * written to disk.
 *
 * @param imports what the statements import, for example {@code "agro.units.*"}
 */
public record CompilerCheck(List<String> imports) {

  /**
   * Errors of the compiler, statement by statement and in one run of the compiler.
   *
   * @param statements each stands in a method of its own
   * @return for each statement its errors, as code and message; none if it compiles
   */
  public List<List<String>> errors(List<String> statements) {
    JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
    var diagnostics = new DiagnosticCollector<JavaFileObject>();
    var sources = new ArrayList<Text>();
    for (int i = 0; i < statements.size(); i++) {
      sources.add(new Text(i, source(i, statements.get(i))));
    }
    var options =
        List.of("-proc:none", "-Xdiags:verbose", "-cp", System.getProperty("java.class.path"));
    try (StandardJavaFileManager files =
        compiler.getStandardFileManager(diagnostics, Locale.ROOT, StandardCharsets.UTF_8)) {
      ((JavacTask) compiler.getTask(null, files, diagnostics, options, null, sources)).analyze();
    } catch (IOException problem) {
      throw new UncheckedIOException(problem);
    }
    var errors = new ArrayList<List<String>>();
    for (var source : sources) {
      var found = new ArrayList<String>();
      for (var one : diagnostics.getDiagnostics()) {
        if (one.getKind() == Diagnostic.Kind.ERROR && source.equals(one.getSource())) {
          found.add(one.getCode() + ": " + one.getMessage(Locale.ROOT));
        }
      }
      errors.add(found);
    }
    return errors;
  }

  private String source(int index, String statement) {
    var source = new StringBuilder();
    for (var name : imports) {
      source.append("import ").append(name).append(";\n");
    }
    return source
        .append("class Sample")
        .append(index)
        .append(" { void run() { ")
        .append(statement)
        .append(" } }\n")
        .toString();
  }

  private static final class Text extends SimpleJavaFileObject {

    private final String text;

    Text(int index, String text) {
      super(URI.create("string:///Sample" + index + ".java"), Kind.SOURCE);
      this.text = text;
    }

    @Override
    public CharSequence getCharContent(boolean ignoreEncodingErrors) {
      return text;
    }
  }
}
