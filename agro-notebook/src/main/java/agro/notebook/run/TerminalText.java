package agro.notebook.run;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** Printed text as a terminal would have left it: overwritten lines show their last state alone. */
final class TerminalText {

  /** Escape sequences: with parameters, of the operating system, and short ones. */
  static final Pattern ESCAPE =
      Pattern.compile(
          "\u001b\\[([0-?]*)[ -/]*([@-~])|\u001b\\][^\u0007\u001b]*(?:\u0007|\u001b\\\\)?|\u001b[ -/]*[0-~]");

  private final StringBuilder settled = new StringBuilder();

  /** Each place of the line: a character, with the colours that were set before it. */
  private final List<String> line = new ArrayList<>();

  private final StringBuilder colours = new StringBuilder();
  private int column;

  private TerminalText() {}

  /**
   * Applies carriage returns, backspaces and the erasing of lines. Colours stay.
   *
   * @param text printed text
   * @return the text without what was overwritten
   */
  static String settled(String text) {
    var touched = text.indexOf('\r') >= 0 || text.indexOf('\b') >= 0 || text.contains("\u001b[");
    return touched ? new TerminalText().whole(text.replace("\r\n", "\n")) : text;
  }

  private String whole(String text) {
    var escape = ESCAPE.matcher(text);
    for (var at = 0; at < text.length(); ) {
      if (text.charAt(at) == '\u001b' && escape.region(at, text.length()).lookingAt()) {
        escape(escape.group(), escape.group(1), escape.group(2));
        at = escape.end();
      } else {
        var character = text.codePointAt(at);
        put(character);
        at += Character.charCount(character);
      }
    }
    endLine();
    return settled.toString();
  }

  private void put(int character) {
    switch (character) {
      case '\n' -> {
        endLine();
        settled.append('\n');
      }
      case '\r' -> column = 0;
      case '\b' -> column = Math.max(0, column - 1);
      default -> write(colours + Character.toString(character));
    }
  }

  private void write(String place) {
    colours.setLength(0);
    while (line.size() < column) {
      line.add(" ");
    }
    if (column < line.size()) {
      line.set(column, place);
    } else {
      line.add(place);
    }
    column++;
  }

  private void escape(String whole, String numbers, String kind) {
    if (kind == null) {
      return;
    }
    switch (kind) {
      case "m" -> colours.append(whole);
      case "K" -> erase(numbers);
      case "C" -> column += Math.min(number(numbers), 1000);
      case "D" -> column = Math.max(0, column - number(numbers));
      case "G" -> column = Math.min(Math.max(0, number(numbers) - 1), 1000);
      default -> {
        // Movements between lines would need the height of a screen that is not there.
      }
    }
  }

  private static int number(String digits) {
    return digits.matches("\\d{1,6}") ? Integer.parseInt(digits) : 1;
  }

  private void erase(String how) {
    switch (how) {
      case "", "0" -> line.subList(Math.min(column, line.size()), line.size()).clear();
      case "1" -> {
        for (var at = 0; at < Math.min(column + 1, line.size()); at++) {
          line.set(at, " ");
        }
      }
      default -> line.clear();
    }
  }

  private void endLine() {
    line.forEach(settled::append);
    settled.append(colours);
    colours.setLength(0);
    line.clear();
    column = 0;
  }
}
