package agro.notebook.insight;

import static org.assertj.core.api.Assertions.assertThat;

import agro.notebook.insight.Completions.Candidate;
import agro.notebook.insight.ExampleTable.Example;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class CompletionTableTest {

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
    return ExampleTable.read(CompletionTableTest.class, "completions.txt");
  }

  @ParameterizedTest
  @MethodSource("examples")
  void theBestCandidatesComeFirst(Example example) {
    var found = session.insight().completions(example.code(), example.cursor());
    var shown =
        new ArrayList<>(found.candidates().stream().map(CompletionTableTest::shown).toList());
    shown.add("nothing");
    assertThat(String.join("; ", shown)).startsWith(example.expected());
  }

  private static String shown(Candidate one) {
    return (one.text() + " [" + one.type() + "] " + one.signature()).strip();
  }
}
