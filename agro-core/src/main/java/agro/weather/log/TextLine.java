package agro.weather.log;

import java.util.ArrayList;
import java.util.List;

/**
 * One line of a text file.
 *
 * @param number counted from 1
 * @param text the line without its end
 */
record TextLine(int number, String text) {

  /** The lines of a text; CR LF, LF and CR each end one. */
  static List<TextLine> of(String text) {
    var lines = new ArrayList<TextLine>();
    int from = 0;
    int number = 1;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c != '\n' && c != '\r') {
        continue;
      }
      lines.add(new TextLine(number++, text.substring(from, i)));
      if (c == '\r' && i + 1 < text.length() && text.charAt(i + 1) == '\n') {
        i++;
      }
      from = i + 1;
    }
    if (from < text.length()) {
      lines.add(new TextLine(number, text.substring(from)));
    }
    return lines;
  }

  boolean isBlank() {
    return text.isBlank();
  }

  /** Whether the line begins as comments in data files do. */
  boolean isComment() {
    var start = text.stripLeading();
    return start.startsWith("#") || start.startsWith("//") || start.startsWith("!");
  }
}
