package agro.weather.log;

import agro.reading.DelimitedLine;
import agro.reading.DelimitedText;
import agro.report.Progress;
import java.util.function.Consumer;

/** Goes through the lines of a log and tells how far it has come. */
final class LogLines {

  private static final int STEP = 2_000;

  private LogLines() {}

  static void read(DelimitedText text, Consumer<DelimitedLine> reader, Progress progress) {
    var work = "reading " + text.name();
    var lines = text.lines();
    for (int i = 0; i < lines.size(); i++) {
      if (i % STEP == 0) {
        progress.step(work, i, lines.size());
      }
      reader.accept(lines.get(i));
    }
    progress.step(work, lines.size(), lines.size());
  }
}
