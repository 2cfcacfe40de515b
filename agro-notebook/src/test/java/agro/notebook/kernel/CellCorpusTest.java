package agro.notebook.kernel;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** The cells of {@code cells.txt} give what stands below them. */
class CellCorpusTest {

  private record Expectation(String mark, String text) {}

  private record Example(String code, List<Expectation> expected) {}

  private record Session(String title, List<Example> cells) {}

  private static List<Session> sessions;

  @BeforeAll
  static void read() throws IOException {
    try (var file = CellCorpusTest.class.getResourceAsStream("cells.txt")) {
      sessions = parsed(new String(file.readAllBytes(), StandardCharsets.UTF_8).lines().toList());
    }
  }

  @Test
  void theCorpusIsWhole() {
    assertThat(sessions).hasSizeGreaterThan(120);
    assertThat(sessions.stream().mapToInt(session -> session.cells.size()).sum())
        .isGreaterThan(240);
    assertThat(CellEvaluator.redefinesClasses()).as("the agent is there").isTrue();
  }

  @TestFactory
  Stream<DynamicTest> cells() {
    return sessions.stream()
        .map(session -> DynamicTest.dynamicTest(session.title, () -> check(session)));
  }

  private static void check(Session session) {
    try (var evaluator = CellEvaluator.open()) {
      var number = 0;
      for (var cell : session.cells) {
        var recorder = OutputRecorder.first();
        var source = new CellSource("cell " + ++number, cell.code);
        var result = evaluator.evaluate(source, recorder);
        assertThat(told(result, recorder, cell.expected))
            .as(cell.code)
            .containsExactlyElementsOf(cell.expected);
      }
    }
  }

  /** What the cell told, in the words of the corpus; parts of messages as long as expected. */
  private static List<Expectation> told(
      CellResult result, OutputRecorder recorder, List<Expectation> expected) {
    var told = new ArrayList<Expectation>();
    for (var remark : result.remarks()) {
      told.add(new Expectation("~~", partOf(remark, "~~", expected)));
    }
    var printed =
        recorder.outputs().stream()
            .filter(output -> output instanceof CellOutput.Printed text && text.isOrdinary())
            .map(CellOutput::plainText)
            .collect(Collectors.joining());
    if (!printed.isEmpty()) {
      told.add(new Expectation("->", printed));
    }
    if (result.value().present()) {
      told.add(new Expectation("=>", result.value().shown().plainText()));
    }
    result
        .failure()
        .ifPresent(
            failure -> {
              var found = failure.kind() + ", " + failure.place().line() + ", " + failure.message();
              told.add(new Expectation("!!", partOf(found, "!!", expected)));
            });
    return told.isEmpty() ? List.of(new Expectation("=.", "")) : told;
  }

  private static String partOf(String found, String mark, List<Expectation> expected) {
    return expected.stream()
        .filter(each -> each.mark.equals(mark) && found.startsWith(each.text))
        .map(Expectation::text)
        .findFirst()
        .orElse(found);
  }

  private static List<Session> parsed(List<String> lines) {
    var sessions = new ArrayList<Session>();
    var code = new ArrayList<String>();
    for (var line : lines) {
      if (line.startsWith("== ")) {
        sessions.add(new Session(line.substring(3), new ArrayList<>()));
        code.clear();
      } else if (line.matches("(=>|=\\.|->|~~|!!)( .*)?")) {
        var text = line.length() > 3 ? line.substring(3).replace("\\n", "\n") : "";
        addExpectation(sessions.get(sessions.size() - 1), code, line.substring(0, 2), text);
      } else if (!sessions.isEmpty()) {
        code.add(line);
      }
    }
    return sessions;
  }

  private static void addExpectation(Session session, List<String> code, String mark, String text) {
    var cells = session.cells;
    if (!code.isEmpty()) {
      cells.add(new Example(String.join("\n", code), new ArrayList<>()));
      code.clear();
    }
    cells.get(cells.size() - 1).expected.add(new Expectation(mark, text));
  }
}
