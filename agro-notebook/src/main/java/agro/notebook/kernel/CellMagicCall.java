package agro.notebook.kernel;

import agro.notebook.kernel.CellMagic.Form;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * A call of a magic as it stands in a cell.
 *
 * @param form the form it was called in
 * @param name the name it was called by
 * @param arguments the rest of its line, without spaces at both ends
 * @param body the lines of the cell behind it; empty in the form for a line
 */
public record CellMagicCall(Form form, String name, String arguments, String body) {

  /** Refuses nulls. */
  public CellMagicCall {
    Objects.requireNonNull(form, "form");
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(arguments, "arguments");
    Objects.requireNonNull(body, "body");
  }

  /**
   * The call as it was written, for messages.
   *
   * @return mark and name
   */
  public String written() {
    return form.mark() + name;
  }

  /**
   * The arguments one by one. Spaces part them, except between quotation marks, single or double.
   *
   * @return the words without their quotation marks, possibly none
   * @throws CellMagicProblem when a quotation mark is not closed
   */
  public List<String> words() throws CellMagicProblem {
    var words = new ArrayList<String>();
    var word = new StringBuilder();
    var quote = 0;
    var open = false;
    for (var letter : arguments.codePoints().toArray()) {
      if (quote == 0 && Character.isWhitespace(letter)) {
        closeWord(words, word, open);
        open = false;
      } else if (quote == 0 && (letter == '"' || letter == '\'')) {
        quote = letter;
        open = true;
      } else if (letter == quote) {
        quote = 0;
      } else {
        word.appendCodePoint(letter);
        open = true;
      }
    }
    if (quote != 0) {
      throw new CellMagicProblem(
          "in \"" + written() + " " + arguments + "\" a quotation mark is not closed");
    }
    closeWord(words, word, open);
    return words;
  }

  private static void closeWord(List<String> words, StringBuilder word, boolean open) {
    if (open) {
      words.add(word.toString());
      word.setLength(0);
    }
  }
}
