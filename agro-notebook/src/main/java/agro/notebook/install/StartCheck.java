package agro.notebook.install;

import java.io.IOException;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;

/** Starts a kernel from the command line of its spec, has it evaluate cells, and ends it. */
final class StartCheck {

  private static final Duration PATIENCE = Duration.ofMinutes(1);

  /** Measures a letter, which needs a font, as every figure does. */
  private static final String FONT_CELL =
      """
      new java.awt.Font("SansSerif", java.awt.Font.PLAIN, 12).getStringBounds("m",
          new java.awt.font.FontRenderContext(null, true, true)).getWidth() > 0
      """;

  private StartCheck() {}

  static List<Finding> findings(List<String> arguments) {
    try {
      ConnectionFile.onFreePorts();
    } catch (IOException e) {
      return List.of(
          Finding.problem(
              "No port can be opened on the loopback interface "
                  + ConnectionFile.LOOPBACK
                  + ": "
                  + e.getMessage(),
              "Switch the interface on, or allow programs to listen on it: Jupyter talks to its"
                  + " kernels there."));
    }
    var findings = new ArrayList<Finding>();
    try (var talk = KernelConversation.start(arguments, PATIENCE)) {
      findings.add(firstCell(talk));
      font(talk, findings);
      talk.sayGoodbye();
    } catch (KernelTrouble e) {
      findings.add(
          Finding.problem(
              "The kernel was started for a trial: " + e.inFull(),
              "Mend what it complains of; options of the virtual machine in the kernel spec are the"
                  + " first thing to look at. Then install the kernel again."));
    }
    return findings;
  }

  private static Finding firstCell(KernelConversation talk) throws KernelTrouble {
    var answer = talk.evaluate("1 + 1");
    return answer.fine() && answer.result().equals("2")
        ? Finding.good("The kernel starts, evaluates 1 + 1, and ends when asked to")
        : Finding.problem(
            "The kernel starts, but its first cell fails: 1 + 1 gave "
                + (answer.fine() ? "\"" + answer.result() + "\"" : answer.error()),
            SpecCheck.AGAIN);
  }

  private static void font(KernelConversation talk, List<Finding> findings) throws KernelTrouble {
    var answer = talk.evaluate(FONT_CELL);
    if (!answer.fine() || !answer.result().equals("true")) {
      findings.add(
          Finding.note(
              "No font was found, so figures are shown as tables of their numbers",
              "Install any font, on Debian the packages fontconfig and fonts-dejavu-core."));
    }
  }
}
