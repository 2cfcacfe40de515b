package agro.notebook.jupyter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import agro.report.InputProblem;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ConnectionFileReaderTest {

  private static final String GOOD =
      """
      {"shell_port": 5001, "iopub_port": 5002, "stdin_port": 5003, "control_port": 5004,
       "hb_port": 5005, "ip": "127.0.0.1", "key": "k-1", "transport": "tcp",
       "signature_scheme": "hmac-sha256", "kernel_name": "agro-java"}
      """;

  @TempDir private Path folder;

  private ConnectionFile read(String text, String bind) throws IOException {
    return ConnectionFileReader.read(Files.writeString(folder.resolve("c.json"), text), bind);
  }

  private void refuses(String text, String bind, String... saying) {
    assertThatThrownBy(() -> read(text, bind))
        .isInstanceOf(InputProblem.class)
        .hasMessageContainingAll(saying)
        .hasMessageContainingAll("Expected:", "Why:", "Mend:");
  }

  @Test
  void readsAConnectionFile() throws IOException {
    var connection = read(GOOD, null);

    assertThat(connection.ports())
        .isEqualTo(new ConnectionFile.Ports(5001, 5004, 5003, 5002, 5005));
    assertThat(connection.endpoint(5001)).isEqualTo("tcp://127.0.0.1:5001");
    assertThat(connection.signature().scheme()).isEqualTo("hmac-sha256");
    assertThat(connection.signature().key()).isEqualTo("k-1");
    assertThat(connection.toString()).doesNotContain("k-1");
  }

  @Test
  void writesAnAddressOfVersionSixInBrackets() throws IOException {
    var connection = read(GOOD.replace("127.0.0.1", "::1"), null);
    assertThat(connection.endpoint(5001)).isEqualTo("tcp://[::1]:5001");
  }

  @Test
  void refusesWhatIsMissingOrBroken() {
    var nowhere = folder.resolve("nowhere.json");
    assertThatThrownBy(() -> ConnectionFileReader.read(nowhere, null))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("nowhere.json");
    refuses("{\"shell_port\": ", null, "not a JSON object");
    refuses("[1, 2]", null, "not a JSON object");
    refuses("", null, "not a JSON object");
    refuses(GOOD.replace("5003", "\"5003\""), null, "stdin_port");
    refuses(GOOD.replace("5003", "65536"), null, "stdin_port", "65536");
    refuses(GOOD.replace("5003", "50.5"), null, "stdin_port");
    refuses(GOOD.replace("hb_port", "heart"), null, "hb_port");
    refuses(GOOD.replace("\"tcp\"", "\"ipc\""), null, "ipc");
    refuses(GOOD.replace("\"k-1\"", "7"), null, "key");
  }

  @Test
  void listensToThisMachineAlone() throws IOException {
    for (var address : new String[] {"0.0.0.0", "192.0.2.7", "*", "::"}) {
      refuses(GOOD.replace("127.0.0.1", address), null, address, "AGRO_KERNEL_BIND");
    }
    var open = GOOD.replace("127.0.0.1", "0.0.0.0");
    assertThat(read(open, "any").ip()).isEqualTo("0.0.0.0");
    refuses(open.replace("k-1", ""), "any", "without a key");
    assertThat(read(GOOD.replace("k-1", ""), null).signature().key()).isEmpty();
  }
}
