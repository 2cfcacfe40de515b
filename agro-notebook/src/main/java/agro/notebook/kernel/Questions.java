package agro.notebook.kernel;

import java.io.IOException;

/** What cells call to ask their reader for something. */
public final class Questions {

  private Questions() {}

  /**
   * Asks the reader of the running cell for a line.
   *
   * @param prompt what to ask; possibly empty
   * @return the line without its line break
   * @throws IOException when nobody can answer; the message says why
   */
  public static String readLine(String prompt) throws IOException {
    return ask(prompt, false);
  }

  /**
   * Asks the reader of the running cell for something that must not be seen, such as a password.
   *
   * @param prompt what to ask; possibly empty
   * @return the answer
   * @throws IOException when nobody can answer; the message says why
   */
  public static String readPassword(String prompt) throws IOException {
    return ask(prompt, true);
  }

  private static String ask(String prompt, boolean hidden) throws IOException {
    var cell = RunningCell.ofThisThread();
    if (cell == null || cell.session().isClosed()) {
      throw new IOException(
          "only a cell can ask its reader, and this thread belongs to none: \"" + prompt + "\"");
    }
    return cell.receiver().typed().ask(prompt, hidden);
  }
}
