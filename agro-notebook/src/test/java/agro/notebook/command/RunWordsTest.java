package agro.notebook.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.time.Duration;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import picocli.CommandLine.TypeConversionException;

/** Small parts of the command: spans of time, the line of progress, options of other processes. */
class RunWordsTest {

  @ParameterizedTest
  @CsvSource({
    "90s, PT1M30S",
    "90, PT1M30S",
    "500ms, PT0.5S",
    "1.5m, PT1M30S",
    "2H, PT2H",
    "10 s, PT10S",
    "PT1H30M, PT1H30M",
    "pt5s, PT5S"
  })
  void spansOfTime(String text, String span) {
    assertThat(new TimeSpan().convert(text)).isEqualTo(Duration.parse(span));
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "0", "0s", "-5s", "5 days", "1,5s", "PT-5S", "P", "999999999999999s"})
  void whatIsNone(String text) {
    assertThatThrownBy(() -> new TimeSpan().convert(text))
        .isInstanceOf(TypeConversionException.class)
        .hasMessageContaining("no span of time");
  }

  @Test
  void theLineOfATerminalIsRewrittenAndWipedOut() {
    var terminal = new StringWriter();
    var line = StatusLine.onTerminal(new PrintWriter(terminal));
    line.now("cell 10 of 12");
    line.now("cell 11");
    line.stays("result");
    assertThat(terminal.toString().replace(System.lineSeparator(), "\n"))
        .isEqualTo("\rcell 10 of 12\rcell 11      \r       \rresult\n");
    line.now("x".repeat(500));
    assertThat(terminal.toString().substring(terminal.toString().lastIndexOf('\r')))
        .hasSize(80)
        .endsWith("…");
  }

  @Test
  void aLogHearsOnlyWhatStays() {
    var log = new StringWriter();
    var line = StatusLine.on(new PrintWriter(log));
    line.now("cell 1");
    line.stays("cell 1 done");
    line.wipe();
    assertThat(log.toString()).isEqualTo("cell 1 done" + System.lineSeparator());
    StatusLine.silent().stays("nobody hears this");
  }

  @Test
  void optionsOfOneProcessAloneAreNotPassedOn() {
    var given =
        List.of(
            "-Xmx300m",
            "-agentlib:jdwp=transport=dt_socket,server=y,address=5005",
            "-javaagent:a.jar",
            "-XX:ArchiveClassesAtExit=k.jsa",
            "-Dcom.sun.management.jmxremote.port=9",
            "-Duser.language=tr",
            "-javaagent:everywhere.jar");
    assertThat(ThisProgram.options(given, Set.of("-javaagent:everywhere.jar")))
        .containsExactly("-Xmx300m", "-javaagent:a.jar", "-Duser.language=tr");
    assertThat(ThisProgram.command(List.of("run", "x")))
        .contains("-cp", "agro.notebook.command.Main")
        .endsWith("run", "x");
  }
}
