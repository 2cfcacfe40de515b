package agro.weather.log;

import java.util.ArrayList;
import java.util.List;

/** Joins lines near the beginning of a file where a heading in quotes goes over a line's end. */
final class QuotedLines {

  private static final int LAST_LINE = 60;
  private static final int MOST_JOINED = 3;

  private QuotedLines() {}

  static List<TextLine> joined(List<TextLine> lines) {
    var joined = new ArrayList<TextLine>(lines.size());
    int i = 0;
    while (i < lines.size()) {
      var line = lines.get(i);
      int end = i;
      if (i < LAST_LINE && isOpen(line.text())) {
        end = end(lines, i);
      }
      var text = new StringBuilder(line.text());
      for (int k = i + 1; k <= end; k++) {
        text.append(' ').append(lines.get(k).text());
      }
      joined.add(end == i ? line : new TextLine(line.number(), text.toString()));
      i = end + 1;
    }
    return joined;
  }

  private static int end(List<TextLine> lines, int from) {
    for (int k = from + 1; k <= from + MOST_JOINED && k < lines.size(); k++) {
      if (isOpen(lines.get(k).text())) {
        return k;
      }
    }
    return from;
  }

  private static boolean isOpen(String line) {
    return line.chars().filter(c -> c == '"').count() % 2 == 1;
  }
}
