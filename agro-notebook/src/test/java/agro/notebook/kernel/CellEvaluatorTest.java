package agro.notebook.kernel;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

class CellEvaluatorTest {

  private static CellEvaluator evaluator;

  @BeforeAll
  static void open() {
    evaluator = CellEvaluator.open();
  }

  @AfterAll
  static void close() {
    evaluator.close();
  }

  private final OutputRecorder recorder = OutputRecorder.first();

  private CellResult evaluate(String code) {
    return evaluator.evaluate(new CellSource("cell 7", code), recorder);
  }

  @Test
  void theLiveObjectIsHandedOver() {
    var result = evaluate("new StringBuilder(\"live\")");
    assertThat(result.value().object()).isInstanceOf(StringBuilder.class);
    assertThat(result.value().shown().plainText()).isEqualTo("live");
    assertThat(evaluate("null").value().present()).isTrue();
    assertThat(evaluate("int quiet = 3;").value().present()).isFalse();
  }

  @Test
  void declaredVariablesAreTold() {
    var result = evaluate("var words = List.of(\"a\");\ndouble mean = 2;");
    assertThat(result.declared())
        .containsExactly(
            new DeclaredVariable("words", "List<String>"), new DeclaredVariable("mean", "double"));
    assertThat(evaluator.variables()).containsAll(result.declared());
  }

  @Test
  void displayedThingsKeepTheirOrderAmongPrintedOnes() {
    evaluate("System.out.print(\"a\");\ndisplay(1);\nSystem.out.print(\"b\");\ndisplay(2)");
    assertThat(recorder.outputs())
        .extracting(CellOutput::plainText)
        .containsExactly("a", "1", "b", "2");
  }

  @Test
  void theNameThatDisplayGivesIsNotShown() {
    assertThat(evaluate("display(1)").value().present()).isFalse();
  }

  @Test
  void anExceptionIsTheReadersOwn() {
    var failure =
        evaluate(
                "class Own extends Exception {\n  Own(String m) { super(m, new Error(\"deep\")); }\n}\n"
                    + "void fail() throws Own { throw new Own(\"sorry\"); }\nfail();")
            .failure()
            .orElseThrow();
    assertThat(failure.name()).isEqualTo("Own");
    assertThat(failure.message()).isEqualTo("sorry");
    assertThat(failure.place()).hasToString("cell 7, line 4");
    assertThat(failure.thrown().orElseThrow()).hasMessage("sorry");
    assertThat(failure.trace())
        .contains("  >   4  void fail() throws Own { throw new Own(\"sorry\"); }")
        .contains("  in fail, cell 7, line 4", "  in cell 7, line 5")
        .contains("because of java.lang.Error: deep")
        .noneMatch(line -> line.contains("jdk.jshell") || line.contains("REPL"));
  }

  @Test
  void anExceptionFromAnEarlierCellNamesBoth() {
    evaluator.evaluate(
        new CellSource("cell 3", "int inverse(int n) {\n  return 1 / n;\n}"), recorder);
    var failure = evaluate("int zero = 0;\ninverse(zero)").failure().orElseThrow();
    assertThat(failure.place()).hasToString("cell 7, line 2");
    assertThat(failure.trace()).contains("  in inverse, cell 3, line 2", "  in cell 7, line 2");
  }

  @Test
  void aMistakeIsUnderlined() {
    var failure = evaluate("int good = 1;\nint bad = good + \"x\";").failure().orElseThrow();
    assertThat(failure.kind()).isEqualTo(CellFailure.Kind.COMPILATION);
    assertThat(failure.trace())
        .containsExactly(
            "cell 7, line 2: incompatible types: java.lang.String cannot be converted to int",
            "    int bad = good + \"x\";",
            "                   ^^^^^",
            "Hint: Text is no number; if it holds one, write Integer.parseInt(...).");
  }

  @Test
  void aSleepingCellCanBeInterrupted() throws Exception {
    var running =
        CompletableFuture.supplyAsync(() -> evaluate("display(\"on\");\nThread.sleep(60_000);"));
    while (recorder.outputs().isEmpty()) {
      Thread.sleep(5);
    }
    evaluator.interrupt();
    var failure = running.get(10, TimeUnit.SECONDS).failure().orElseThrow();
    assertThat(failure.kind()).isEqualTo(CellFailure.Kind.INTERRUPTED);
    assertThat(evaluate("1 + 1").value().object()).isEqualTo(2);
  }

  @Test
  void twoEvaluatorsShareNothing() {
    try (var other = CellEvaluator.open()) {
      evaluate("int mine = 1;");
      var result = other.evaluate(new CellSource("cell 1", "mine"), OutputRecorder.first());
      assertThat(result.failure()).isPresent();
      other.evaluate(new CellSource("cell 2", "System.out.print(\"x\");"), recorder);
      evaluate("System.out.print(\"y\");");
      assertThat(recorder.outputs()).extracting(CellOutput::plainText).isEqualTo(List.of("xy"));
    }
  }

  @Test
  void aLotOfOutputIsKeptWhole() {
    evaluate("for (int i = 0; i < 20_000; i++) System.out.println(\"line \" + i);");
    assertThat(recorder.outputs()).hasSize(1);
    assertThat(recorder.outputs().get(0).plainText().lines()).hasSize(20_000);
  }
}
