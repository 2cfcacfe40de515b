package agro.notebook.kernel;

import static org.assertj.core.api.Assertions.assertThat;

import agro.notebook.insight.ExampleTable;
import agro.notebook.insight.ExampleTable.Example;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class SlipTableTest {

  private static CellEvaluator evaluator;

  @BeforeAll
  static void open() {
    evaluator = CellEvaluator.open();
    var before =
        "import agro.units.*;\nvar base = Temperature.ofCelsius(10);\nint count = 3;\ndouble mean = 2.5;"
            + "\nvar words = List.of(\"a\");\nint f(int n) { return n; }\nboolean open = true;";
    assertThat(evaluate(before).failure()).isEmpty();
  }

  @AfterAll
  static void close() {
    evaluator.close();
  }

  private static CellResult evaluate(String code) {
    return evaluator.evaluate(new CellSource("cell 7", code), OutputRecorder.first());
  }

  static List<Example> slips() {
    return ExampleTable.read(SlipTableTest.class, "slips.txt");
  }

  @ParameterizedTest
  @MethodSource("slips")
  void aSlipHasItsHint(Example slip) {
    var failure = evaluate(slip.code()).failure().orElseThrow();
    assertThat(failure.hint().orElse("no hint")).isEqualTo(slip.expected());
    var last = failure.trace().get(failure.trace().size() - 1);
    assertThat(last.equals("Hint: " + slip.expected())).isEqualTo(failure.hint().isPresent());
  }
}
