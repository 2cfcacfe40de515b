package agro.notebook.kernel;

import agro.notebook.display.MimeBundle;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Objects;

/**
 * Keeps a cell that prints without end from choking its reader. Text up to a limit passes
 * unchanged. Beyond it all the text of the cell, from its beginning, goes to a file in UTF-8; the
 * reader sees the first part, and when the cell ends its last lines, its size and where the file
 * lies. What is shown through displays beyond eight times the limit is left out with a remark.
 * Memory stays bounded, and trouble with the disk becomes a remark.
 *
 * <p>One object serves one cell. Its limit is 10 MB and its folder the one for temporary files,
 * unless {@link OutputLimit} is told otherwise.
 */
public final class LongOutput implements OutputSink {

  private static final int DISPLAYS = 8;

  private final OutputSink sink;
  private final long limitBytes;
  private final OutputFile file;
  private final LastLines last = new LastLines();
  private long printed;
  private long visible;
  private long shown;
  private boolean withholding;
  private boolean kept;
  private boolean displayWithheld;
  private boolean announced;
  private boolean finished;

  /**
   * A limit on what a cell prints.
   *
   * @param sink where the text goes
   * @param cellName the name of the cell, which the file is named after
   * @param limitBytes bytes of text in UTF-8 that are passed on, at least 1
   * @param folder where the file goes; made when it is not there
   */
  public LongOutput(OutputSink sink, String cellName, long limitBytes, Path folder) {
    if (limitBytes < 1) {
      throw new IllegalArgumentException("a limit is at least 1 byte, not " + limitBytes);
    }
    this.sink = Objects.requireNonNull(sink, "sink");
    this.limitBytes = limitBytes;
    this.file = new OutputFile(Objects.requireNonNull(folder, "folder"), fileName(cellName));
  }

  /**
   * A limit as the {@link OutputLimit} of this process says.
   *
   * @param sink where the text goes
   * @param cellName the name of the cell, which the file is named after
   * @return a new sink for one cell
   */
  public static LongOutput of(OutputSink sink, String cellName) {
    var limit = OutputLimit.configured();
    return new LongOutput(sink, cellName, limit.bytes(), limit.folder());
  }

  private static String fileName(String cellName) {
    var words = cellName.replaceAll("[^\\p{Alnum}]+", "-").replaceAll("^-|-$", "");
    var name = words.isEmpty() ? "cell" : words;
    return "output-of-" + name.substring(0, Math.min(40, name.length()));
  }

  @Override
  public synchronized void text(StandardStream stream, String text) {
    var bytes = text.getBytes(StandardCharsets.UTF_8);
    printed += bytes.length;
    file.write(bytes);
    if (!withholding && visible + bytes.length <= limitBytes) {
      visible += bytes.length;
      sink.text(stream, text);
    } else {
      withhold(stream, text);
    }
    if (finished && kept) {
      file.keep();
    }
  }

  private void withhold(StandardStream stream, String text) {
    var pass = withholding ? 0 : fitting(text, limitBytes - visible);
    withholding = true;
    kept = true;
    if (pass > 0) {
      sink.text(stream, text.substring(0, pass));
    }
    last.add(stream, text.substring(pass));
    announce();
  }

  private void announce() {
    if (!announced) {
      announced = true;
      remark(
          "This cell has printed "
              + inWords(limitBytes)
              + "; what follows goes to a file, and its last lines are shown when the cell ends");
    }
  }

  /** How many characters fit into some bytes, up to the end of a line where there is one. */
  private static int fitting(String text, long bytes) {
    var end = 0;
    long size = 0;
    while (end < text.length()) {
      var point = text.codePointAt(end);
      size += point < 0x80 ? 1 : point < 0x800 ? 2 : point < 0x10000 ? 3 : 4;
      if (size > bytes) {
        break;
      }
      end += Character.charCount(point);
    }
    var line = text.lastIndexOf('\n', end - 1);
    return line >= 0 ? line + 1 : end;
  }

  @Override
  public synchronized void show(String id, MimeBundle bundle) {
    shown += bundle.data().values().stream().mapToLong(String::length).sum();
    if (shown <= DISPLAYS * limitBytes) {
      sink.show(id, bundle);
    } else if (!displayWithheld) {
      displayWithheld = true;
      remark(
          "This cell has shown more than "
              + inWords(DISPLAYS * limitBytes)
              + " of tables and pictures; further ones are left out");
    }
  }

  @Override
  public synchronized void update(String id, MimeBundle bundle) {
    sink.update(id, bundle);
  }

  /** What is cleared counts no longer. */
  @Override
  public synchronized void clear(boolean wait) {
    shown = 0;
    displayWithheld = false;
    visible = 0;
    withholding = false;
    last.clear();
    if (!kept) {
      printed = 0;
      file.discard();
    }
    announced = false;
    sink.clear(wait);
  }

  /**
   * Ends the cell: what was withheld is summed up. Text of threads that go on afterwards goes the
   * same way as before.
   */
  public synchronized void finish() {
    if (finished) {
      return;
    }
    finished = true;
    if (!kept) {
      file.discard();
      return;
    }
    file.keep();
    var lines = last.all();
    if (!lines.isEmpty()) {
      sink.text(StandardStream.OUTPUT, "...\n");
      lines.forEach(line -> sink.text(line.stream(), line.text() + "\n"));
    }
    remark(
        "This cell printed "
            + inWords(printed)
            + "; "
            + file.path()
                .map(path -> "all of it is in " + path.toAbsolutePath())
                .orElse(file.trouble().orElse("")));
  }

  private void remark(String sentence) {
    sink.text(StandardStream.ERROR, "\nNote: " + sentence + ".\n");
  }

  private static String inWords(long bytes) {
    return bytes < 100_000
        ? bytes + " bytes"
        : String.format(Locale.ROOT, "%.1f MB", bytes / 1_000_000.0);
  }
}
