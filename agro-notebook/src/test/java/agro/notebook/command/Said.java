package agro.notebook.command;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.List;

/**
 * What the program said to a command line.
 *
 * @param status exit status
 * @param out standard output
 * @param err standard error
 */
record Said(int status, String out, String err) {

  /** Runs the program within this process. */
  static Said say(String... arguments) {
    var out = new ByteArrayOutputStream();
    var err = new ByteArrayOutputStream();
    var status =
        Main.run(
            List.of(arguments),
            new PrintStream(out, true, StandardCharsets.UTF_8),
            new PrintStream(err, true, StandardCharsets.UTF_8));
    return new Said(
        status, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
  }
}
