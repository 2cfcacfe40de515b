package agro.notebook.insight;

import static org.assertj.core.api.Assertions.assertThat;

import agro.notebook.display.MimeBundle;
import agro.notebook.insight.ExampleTable.Example;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class InspectionTableTest {

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
    return ExampleTable.read(InspectionTableTest.class, "inspections.txt");
  }

  @ParameterizedTest
  @MethodSource("examples")
  void theNameAtTheCursorIsExplained(Example example) {
    var found = session.insight().inspection(example.code(), example.cursor(), false);
    var lines =
        found
            .map(MimeBundle::plainText)
            .orElse("nothing")
            .lines()
            .collect(Collectors.joining(" / "));
    assertThat(lines).startsWith(example.expected());
  }
}
