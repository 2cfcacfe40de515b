package agro.notebook.jupyter;

import agro.notebook.jupyter.ConnectionFile.Ports;
import agro.notebook.jupyter.ConnectionFile.Signature;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.Optional;

/** A kernel in the process of the tests. */
final class KernelInProcess implements AutoCloseable {

  private static final Signature SIGNATURE = new Signature("hmac-sha256", "a key for tests");

  private final StringWriter complaints = new StringWriter();
  private final RunningKernel kernel;

  KernelInProcess() {
    this(Optional.empty(), OutputQueue.USUAL_LIMIT);
  }

  KernelInProcess(Optional<Path> historyFolder, long waitingBytes) {
    var settings = new RunningKernel.Settings(historyFolder, waitingBytes);
    var connection = new ConnectionFile("127.0.0.1", new Ports(0, 0, 0, 0, 0), SIGNATURE);
    kernel = RunningKernel.open(connection, settings, new PrintWriter(complaints));
  }

  /** Where it listens. */
  ConnectionFile connection() {
    return new ConnectionFile("127.0.0.1", kernel.ports(), SIGNATURE);
  }

  KernelClient connect() {
    return KernelClient.connect(connection());
  }

  /** What it complained about. */
  String complaints() {
    return complaints.toString();
  }

  @Override
  public void close() {
    kernel.close();
  }
}
