package agro.notebook.kernel;

import static org.assertj.core.api.Assertions.assertThat;

import agro.notebook.kernel.CellFailure.Kind;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

class FailureReportTest {

  private static CellEvaluator evaluator;

  @BeforeAll
  static void open() {
    evaluator = CellEvaluator.open();
  }

  @AfterAll
  static void close() {
    evaluator.close();
  }

  private static CellFailure failure(String code) {
    return evaluator
        .evaluate(new CellSource("cell 7", code), OutputRecorder.first())
        .failure()
        .orElseThrow();
  }

  @Test
  void aCircleOfCausesEnds() {
    var failure =
        failure(
            "var inner = new Exception(\"inner\");\nvar outer = new Exception(\"outer\", inner);\n"
                + "inner.initCause(outer);\nthrow outer;");
    assertThat(failure.trace()).containsOnlyOnce("because of java.lang.Exception: inner");
    assertThat(failure.trace()).hasSizeLessThan(12);
  }

  @Test
  void aLongChainOfCausesIsCut() {
    var failure =
        failure(
            "Exception e = new Exception(\"0\");\n"
                + "for (int i = 1; i < 50; i++) e = new Exception(\"\" + i, e);\nthrow e;");
    assertThat(failure.trace().stream().filter(line -> line.startsWith("because of"))).hasSize(9);
    assertThat(failure.trace()).contains("because of further exceptions");
  }

  @Test
  void whatWasSuppressedIsTold() {
    var failure =
        failure(
            """
            record Door(String name) implements AutoCloseable {
              public void close() { throw new IllegalStateException(name + " jams"); }
            }
            try (var door = new Door("front")) { throw new RuntimeException("fire"); }""");
    assertThat(failure.message()).isEqualTo("fire");
    assertThat(failure.trace())
        .contains("after that also java.lang.IllegalStateException: front jams");
  }

  @Test
  void anExceptionThatCannotSpeakIsToldAllTheSame() {
    var failure =
        failure(
            """
            class Mute extends RuntimeException {
              public String getMessage() { throw new IllegalStateException(); }
              public StackTraceElement[] getStackTrace() { throw new IllegalStateException(); }
              public synchronized Throwable getCause() { throw new IllegalStateException(); }
            }
            throw new Mute();""");
    assertThat(failure.kind()).isIn(Kind.EXCEPTION, Kind.EVALUATOR);
    assertThat(failure.trace()).isNotEmpty().noneMatch(line -> line.contains("REPL"));
  }

  @Test
  void anEndlessMessageIsCut() {
    var failure = failure("throw new RuntimeException(\"x\".repeat(1_000_000));");
    assertThat(failure.message()).hasSizeLessThan(5_000).endsWith("(1000000 letters)");
  }

  @Test
  void manyProblemsAreCutToTheFirst() {
    var code = new StringBuilder("void all() {\n");
    for (var line = 0; line < 20; line++) {
      code.append("  int a").append(line).append(" = \"text\";\n");
    }
    var failure = failure(code + "}");
    assertThat(failure.trace()).contains("... and 15 more problems");
    assertThat(failure.place()).hasToString("cell 7, line 2");
    assertThat(failure.trace().stream().filter(line -> line.startsWith("cell 7"))).hasSize(5);
  }

  @Test
  void callsInLibrariesAreShortened() {
    var failure = failure("List.of(\"a\").stream()\n  .map(w -> w.substring(5))\n  .toList()");
    assertThat(failure.trace()).contains("  > " + "  2    .map(w -> w.substring(5))");
    assertThat(failure.trace())
        .anyMatch(line -> line.matches("  \\.\\.\\. \\d+ more calls in libraries"))
        .contains("  in a lambda, cell 7, line 2")
        .noneMatch(line -> line.contains("jdk.internal") || line.contains("agro.notebook"));
  }

  @Test
  void aDeepRecursionShowsBothEnds() {
    var failure = failure("int deep(int n) {\n  return deep(n + 1);\n}\ndeep(0)");
    assertThat(failure.name()).isEqualTo("java.lang.StackOverflowError");
    assertThat(failure.trace()).anyMatch(line -> line.matches("  \\.\\.\\. \\d+ more calls"));
    assertThat(failure.trace()).hasSizeLessThan(25);
  }

  @Test
  void aMethodThatWaitsNamesWhatIsMissing() {
    var failure = failure("double edge() { return sidee * 2; }\nedge()");
    assertThat(failure.kind()).isEqualTo(Kind.UNRESOLVED);
    assertThat(failure.trace().get(0))
        .isEqualTo("edge cannot be used until variable sidee is declared");
    assertThat(failure.hint()).isPresent();
  }

  @Test
  void theCaretStandsUnderTheName() {
    var failure = failure("\tString word = \"a\";\n\tword.lenght()");
    assertThat(failure.trace())
        .containsSequence(List.of("    \tword.lenght()", "    \t     ^^^^^^"))
        .endsWith("Hint: Did you mean length?");
  }

  @Test
  void overloadsThatDoNotFitAreNotRecited() {
    var failure = failure("Math.max(1)");
    assertThat(failure.message()).isEqualTo("no suitable method found for max(int)");
  }
}
