package agro.notebook.insight;

import static org.assertj.core.api.Assertions.assertThat;

import agro.notebook.insight.ExampleTable.Example;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class CompletenessTableTest {

  private static InsightSession session;

  @BeforeAll
  static void open() {
    session = InsightSession.open();
  }

  @AfterAll
  static void close() {
    session.close();
  }

  static List<Example> examples() {
    return ExampleTable.read(CompletenessTableTest.class, "completeness.txt");
  }

  @ParameterizedTest
  @MethodSource("examples")
  void aCellIsCompleteOrNot(Example example) {
    var verdict = session.insight().completeness(example.code());
    var indent = verdict.indent().isEmpty() ? "" : " " + verdict.indent().length();
    assertThat(verdict.state().name().toLowerCase(Locale.ROOT) + indent)
        .isEqualTo(example.expected());
  }
}
