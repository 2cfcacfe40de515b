package agro.notebook.insight;

import agro.notebook.kernel.CellEvaluator;
import java.nio.file.Path;
import java.util.List;
import jdk.jshell.JShell;
import jdk.jshell.Snippet;

/** A few cells that have run, for questions about the code that comes next. */
final class InsightSession implements AutoCloseable {

  private static final List<String> CELLS =
      List.of(
          "import agro.units.*;\nimport agro.weather.*;",
          "var base = Temperature.ofCelsius(10);\nint count = 3;\ndouble mean = 2.5;",
          "var words = List.of(\"a\");\nint[] numbers = {1, 2};\nString name = \"A\";",
          """
          record Trap(String name, int caught) {
            double rate(int nights) { return caught / (double) nights; }
          }
          var trap = new Trap("A", 3);""",
          "enum Mood { GOOD, BAD }\nvar mood = Mood.GOOD;",
          "double twice(double x) { return 2 * x; }\nint half(int n) { return n / 2; }");

  private final JShell shell = JShell.builder().executionEngine("local").build();
  private final CodeInsight insight;

  private InsightSession(Path jdkSources) {
    insight = new CodeInsight(shell, jdkSources);
    for (var name : CellEvaluator.IMPORTS) {
      evaluate("import " + name + ";");
    }
    CELLS.forEach(this::evaluate);
  }

  /** A session that knows no sources of the JDK, on whichever JDK the tests run. */
  static InsightSession open() {
    return new InsightSession(Path.of("there-is-no-such-archive.zip"));
  }

  static InsightSession withJdkSources(Path archive) {
    return new InsightSession(archive);
  }

  CodeInsight insight() {
    return insight;
  }

  void evaluate(String cell) {
    var analysis = shell.sourceCodeAnalysis();
    for (var rest = cell; !rest.isBlank(); ) {
      var next = analysis.analyzeCompletion(rest);
      for (var event : shell.eval(next.source())) {
        if (event.status() != Snippet.Status.VALID || event.exception() != null) {
          throw new AssertionError(next.source() + ": " + event);
        }
      }
      rest = next.remaining();
    }
  }

  @Override
  public void close() {
    shell.close();
  }
}
