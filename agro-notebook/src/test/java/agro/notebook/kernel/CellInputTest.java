package agro.notebook.kernel;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.LinkedBlockingQueue;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

class CellInputTest {

  private final CellTrial trial = new CellTrial();
  private final LinkedBlockingQueue<String> lines = new LinkedBlockingQueue<>();
  private final List<String> asked = new ArrayList<>();

  @AfterEach
  void close() {
    trial.close();
  }

  private String answer(String prompt, boolean hidden) throws InterruptedException {
    asked.add(prompt + (hidden ? " (hidden)" : ""));
    System.out.print("?");
    return lines.take();
  }

  private Object value(String code) {
    var result = trial.run(code, this::answer);
    assertThat(result.failure()).isEmpty();
    return result.value().object();
  }

  @Test
  void severalCellsReadALineEach() {
    lines.addAll(List.of("one", "two words", "x"));
    assertThat(value("new Scanner(System.in).nextLine()")).isEqualTo("one");
    assertThat(value("var s = new Scanner(System.in); var l = s.nextLine(); s.close(); l"))
        .isEqualTo("two words");
    assertThat(value("System.in.read()")).isEqualTo((int) 'x');
    lines.add("last");
    assertThat(value("new BufferedReader(new InputStreamReader(System.in)).readLine()"))
        .isEqualTo("last");
    assertThat(asked).containsExactly("", "", "", "");
  }

  @Test
  void oneScannerReadsSeveralLines() {
    lines.addAll(List.of("3 4", "5"));
    assertThat(value("var s = new Scanner(System.in); s.nextInt() + s.nextInt() + s.nextInt()"))
        .isEqualTo(12);
  }

  @Test
  void questionsHaveAPrompt() {
    lines.addAll(List.of("Osmere", "secret"));
    assertThat(value("readLine(\"Place? \")")).isEqualTo("Osmere");
    assertThat(value("readPassword(\"Word? \")")).isEqualTo("secret");
    assertThat(asked).containsExactly("Place? ", "Word?  (hidden)");
  }

  @Test
  void aWaitingQuestionIsInterruptedAndTheNextOneWorks() throws Exception {
    var running =
        java.util.concurrent.CompletableFuture.supplyAsync(
            () -> trial.run("new Scanner(System.in).nextLine()", this::answer));
    trial.awaitOutput();
    var failure = trial.interrupted(running).failure().orElseThrow();
    assertThat(failure.kind()).isEqualTo(CellFailure.Kind.INTERRUPTED);
    lines.add("again");
    assertThat(value("new Scanner(System.in).nextLine()")).isEqualTo("again");
  }

  @Test
  void whereNobodyAnswersTheReasonIsTold() {
    assertThat(trial.run("readLine(\"x\")").failure().orElseThrow().message())
        .contains("nobody is there");
    assertThat(trial.run("new Scanner(System.in).nextLine()").failure()).isPresent();
    assertThat(trial.printed()).contains("nobody is there");
  }
}
