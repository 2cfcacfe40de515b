package agro.notebook.kernel;

import java.io.IOException;

/** Where a cell gets what its reader types: {@code System.in} and the questions of the library. */
public interface CellInput {

  /**
   * Asks the reader for a line and waits for it. Called from any thread of the cell.
   *
   * @param prompt what to ask; possibly empty
   * @param hidden whether the answer must not be shown, as for a password
   * @return the line without its line break
   * @throws IOException when nobody can answer; the message says why
   * @throws InterruptedException when the cell is interrupted while it waits
   */
  String readLine(String prompt, boolean hidden) throws IOException, InterruptedException;

  /**
   * Input of a cell that nobody sits in front of.
   *
   * @return an input that refuses every question
   */
  static CellInput none() {
    return (prompt, hidden) -> {
      throw new IOException("nobody is there to answer: this notebook runs by itself");
    };
  }
}
