package agro.notebook.kernel;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** The last lines of what is printed; a long line is cut, so that they take little memory. */
final class LastLines {

  private static final int LINES = 20;
  private static final int LONGEST = 500;

  /** A line of one stream. */
  record Line(StandardStream stream, String text) {}

  private final ArrayDeque<Line> lines = new ArrayDeque<>();
  private final Map<StandardStream, StringBuilder> open = new EnumMap<>(StandardStream.class);

  void add(StandardStream stream, String text) {
    var line = open.computeIfAbsent(stream, other -> new StringBuilder());
    var start = 0;
    for (var end = text.indexOf('\n'); end >= 0; end = text.indexOf('\n', start)) {
      append(line, text, start, end);
      keep(new Line(stream, line.toString()));
      line.setLength(0);
      start = end + 1;
    }
    append(line, text, start, text.length());
  }

  private static void append(StringBuilder line, String text, int start, int end) {
    var room = LONGEST - line.length();
    if (room > 0) {
      line.append(text, start, Math.min(end, start + room));
    }
    if (end - start > room && room >= 0) {
      line.append('…');
    }
  }

  private void keep(Line line) {
    lines.add(line);
    if (lines.size() > LINES) {
      lines.remove();
    }
  }

  /** The lines in order, those not ended yet at the end. */
  List<Line> all() {
    var all = new ArrayList<>(lines);
    open.forEach(
        (stream, line) -> {
          if (!line.isEmpty()) {
            all.add(new Line(stream, line.toString()));
          }
        });
    return List.copyOf(all.subList(Math.max(0, all.size() - LINES), all.size()));
  }

  void clear() {
    lines.clear();
    open.clear();
  }
}
