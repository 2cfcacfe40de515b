package agro.reading;

import agro.report.InputProblem;
import agro.report.SourceLocation;

/** Cells as they are quoted in messages. */
final class CellText {

  /** Characters of a cell that a message shows; a forgotten quote can make a cell very long. */
  private static final int MOST_SHOWN = 60;

  private CellText() {}

  /**
   * Starts a problem with what a cell holds.
   *
   * @param text the cell
   * @param place where the cell stands
   * @return the next step, which asks for what was expected
   */
  static InputProblem.Found reads(String text, SourceLocation place) {
    return InputProblem.at(place, "the cell reads \"" + shown(text) + "\"");
  }

  private static String shown(String text) {
    // Line breaks and control characters would tear the message apart or steer a terminal.
    var line = text.replaceAll("\\s+", " ").replaceAll("\\p{Cntrl}", "\uFFFD");
    int most =
        line.offsetByCodePoints(0, Math.min(MOST_SHOWN, line.codePointCount(0, line.length())));
    return most < line.length() ? line.substring(0, most) + "..." : line;
  }
}
