package agro.notebook.jupyter;

import agro.notebook.jupyter.ConnectionFile.Ports;
import agro.notebook.jupyter.ConnectionFile.Signature;
import agro.report.InputProblem;
import com.google.gson.JsonObject;
import com.google.gson.JsonParseException;
import com.google.gson.JsonPrimitive;
import java.io.IOException;
import java.net.InetAddress;
import java.net.UnknownHostException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;

/** Reads a connection file and refuses one that this kernel cannot or should not listen at. */
final class ConnectionFileReader {

  /** Set to {@code any} to listen at addresses that other machines can reach. */
  static final String BIND_VARIABLE = "AGRO_KERNEL_BIND";

  private static final String WHO_WRITES =
      "start the kernel from Jupyter, which writes this file anew for every kernel";

  private final Path file;

  private ConnectionFileReader(Path file) {
    this.file = file;
  }

  /**
   * Reads a connection file.
   *
   * @param file the file
   * @param bind what the variable {@link #BIND_VARIABLE} says, or null
   * @return its content
   * @throws InputProblem when it is missing, broken, or leads out of this machine
   */
  static ConnectionFile read(Path file, String bind) {
    return new ConnectionFileReader(file).read(bind);
  }

  private ConnectionFile read(String bind) {
    var json = json();
    var transport = text(json, "transport", "tcp");
    if (!transport.equals("tcp")) {
      throw problem("the transport is \"" + transport + "\"", "\"tcp\"")
          .mend("set the front end's transport to tcp");
    }
    var ports =
        new Ports(
            port(json, "shell_port"),
            port(json, "control_port"),
            port(json, "stdin_port"),
            port(json, "iopub_port"),
            port(json, "hb_port"));
    var signature =
        new Signature(text(json, "signature_scheme", "hmac-sha256"), text(json, "key", ""));
    var connection = new ConnectionFile(text(json, "ip", "127.0.0.1"), ports, signature);
    checkAddress(connection, bind);
    return connection;
  }

  private JsonObject json() {
    try {
      return Json.object(Files.readString(file));
    } catch (NoSuchFileException e) {
      throw problem("there is no file " + file, "the connection file of a Jupyter front end")
          .mend(WHO_WRITES);
    } catch (IOException e) {
      throw problem(file + " could not be read: " + e.getMessage(), "a readable file in UTF-8")
          .mend(WHO_WRITES);
    } catch (JsonParseException e) {
      throw problem(file + " is not a JSON object: " + e.getMessage(), "a connection file in JSON")
          .mend(WHO_WRITES);
    }
  }

  private void checkAddress(ConnectionFile connection, String bind) {
    if (isOfThisMachine(connection.ip())) {
      return;
    }
    var read = file + " asks to listen at " + connection.ip();
    var expected = "an address of this machine alone, such as 127.0.0.1";
    var why = "whoever reaches these ports and knows the key can run any program here";
    if (!"any".equals(bind)) {
      throw InputProblem.of(read)
          .expected(expected)
          .because(why)
          .mend("start Jupyter without --ip for kernels, or set " + BIND_VARIABLE + "=any");
    }
    if (connection.signature().key().isEmpty()) {
      throw InputProblem.of(read + " without a key")
          .expected("a key, with which messages are signed")
          .because(why)
          .mend("let the front end sign its messages");
    }
  }

  private static boolean isOfThisMachine(String ip) {
    try {
      return InetAddress.getByName(ip).isLoopbackAddress();
    } catch (UnknownHostException e) {
      return false;
    }
  }

  private int port(JsonObject json, String name) {
    if (json.get(name) instanceof JsonPrimitive value && value.isNumber()) {
      var number = value.getAsDouble();
      if (number == Math.rint(number) && number >= 0 && number <= 65_535) {
        return (int) number;
      }
    }
    var read = file + " says " + name + " = " + json.get(name);
    throw problem(read, "a whole number from 0 to 65535").mend(WHO_WRITES);
  }

  private String text(JsonObject json, String name, String otherwise) {
    var value = json.get(name);
    if (value == null) {
      return otherwise;
    }
    if (value instanceof JsonPrimitive primitive && primitive.isString()) {
      return primitive.getAsString();
    }
    throw problem(file + " says " + name + " = " + value, "a text").mend(WHO_WRITES);
  }

  private static InputProblem.Reasoned problem(String read, String expected) {
    return InputProblem.of(read)
        .expected(expected)
        .because("the kernel listens at the ports this file names");
  }
}
