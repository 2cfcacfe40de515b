package agro.notebook.jupyter;

import java.util.Objects;

/**
 * The addresses at which a kernel listens and the key with which messages are signed, as the front
 * end wrote them into the connection file.
 *
 * @param ip the address to bind to
 * @param ports one port for each socket
 * @param signature how messages are signed
 */
record ConnectionFile(String ip, Ports ports, Signature signature) {

  ConnectionFile {
    Objects.requireNonNull(ip, "ip");
    Objects.requireNonNull(ports, "ports");
    Objects.requireNonNull(signature, "signature");
  }

  /**
   * The ports of the five sockets; 0 lets the system choose.
   *
   * @param shell requests
   * @param control urgent requests
   * @param stdin questions to the reader
   * @param iopub outputs
   * @param heartbeat the echo
   */
  record Ports(int shell, int control, int stdin, int iopub, int heartbeat) {}

  /**
   * How messages are signed.
   *
   * @param scheme the name of the signature, such as {@code hmac-sha256}
   * @param key the secret; empty when messages are not signed
   */
  record Signature(String scheme, String key) {
    @Override
    public String toString() {
      return scheme + " with a key of " + key.length() + " characters";
    }
  }

  /** The address of a port in the notation of ZeroMQ. */
  String endpoint(int port) {
    var host = ip.contains(":") && !ip.startsWith("[") ? "[" + ip + "]" : ip;
    return "tcp://" + host + ":" + (port == 0 ? "*" : Integer.toString(port));
  }
}
