package agro.notebook.run;

import static org.assertj.core.api.Assertions.assertThat;

import agro.notebook.run.RunReport.CellTime;
import agro.notebook.run.RunReport.Ending;
import java.util.LinkedHashMap;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class RunWireTest {

  @Test
  void whatIsSentArrives() {
    var parameters = new LinkedHashMap<String, String>();
    parameters.put("z", "a \"quoted\"\nline °C");
    parameters.put("a", "");
    var task =
        new RunTask(
            "n.ipynb",
            "out/n",
            parameters,
            new RunTask.Options(CodeView.SHOWN, "p", 1500, true, false, true));
    var arrived = RunWire.task(RunWire.task(task)).orElseThrow();
    assertThat(arrived).isEqualTo(task);
    assertThat(arrived.parameters().keySet()).containsExactly("z", "a");
    assertThat(RunWire.task(task)).doesNotContain("\n");
    var report =
        new RunReport(
            "n.ipynb",
            Ending.FAILED,
            "",
            List.of(new FailedCell("cell 1", "bad\nworse", List.of("  > 1  x"), "all")),
            "summary\n",
            List.of("out/n.html"),
            List.of(new CellTime(1, 0.25, "x")),
            1.5);
    assertThat(RunWire.report(RunWire.report(report))).contains(report);
    var start = new RunWire.CellStart(2, 9);
    assertThat(RunWire.cell(RunWire.cell(start))).contains(start);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "a warning of the machine",
        "{",
        "{}",
        "[1]",
        "{\"report\": 3}",
        "{\"report\": {\"ending\": \"DONE\"}}",
        "{\"report\": null}"
      })
  void anythingElseIsNoReport(String line) {
    assertThat(RunWire.report(line)).isEmpty();
    assertThat(RunWire.cell(line)).isEmpty();
    assertThat(RunWire.task(line)).isEmpty();
  }
}
