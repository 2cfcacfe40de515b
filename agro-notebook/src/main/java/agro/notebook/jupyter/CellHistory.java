package agro.notebook.jupyter;

import io.github.spencerpark.jupyter.kernel.history.HistoryEntry;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The cells of this kernel, and, from a file, those before it. Safe for use by several threads. */
final class CellHistory {

  /** Set to {@code off} to keep no history in a file. */
  static final String VARIABLE = "AGRO_HISTORY";

  private static final int LONGEST_OUTPUT = 4_000;
  private static final int LONGEST_INPUT = 100_000;
  private static final int MOST = 20_000;

  private final Optional<HistoryFile> file;
  private final Complaints complaints;
  private final List<HistoryEntry> own = new ArrayList<>();
  private int session;

  /**
   * A history.
   *
   * @param folder where the file is, or empty to keep none
   * @param complaints told when the file cannot be used; the kernel goes on without it
   */
  CellHistory(Optional<Path> folder, Complaints complaints) {
    this.file = folder.map(HistoryFile::new);
    this.complaints = complaints;
  }

  /** The folder that this process keeps its history in; empty when the user wants none. */
  static Optional<Path> usualFolder() {
    return "off".equalsIgnoreCase(System.getenv(VARIABLE))
        ? Optional.empty()
        : DataFolder.of(
            System.getProperty("os.name", ""), System.getenv(), System.getProperty("user.home"));
  }

  /** The number of this run of the kernel among all. */
  synchronized int session() {
    if (session == 0) {
      session = fromFile();
    }
    return session;
  }

  private int fromFile() {
    try {
      return file.isPresent() ? file.get().beginSession() : 1;
    } catch (IOException | RuntimeException e) {
      complaints.about("history", e);
      return 1;
    }
  }

  /** Remembers a cell and what it showed. */
  synchronized void add(int number, String input, String output) {
    var shown = output.isEmpty() ? null : cut(output, LONGEST_OUTPUT);
    var entry = new HistoryEntry(session(), number, input, shown);
    own.add(entry);
    if (own.size() > MOST) {
      own.subList(0, own.size() / 2).clear();
    }
    if (input.length() <= LONGEST_INPUT) {
      write(entry);
    }
  }

  private void write(HistoryEntry entry) {
    if (file.isPresent()) {
      try {
        file.get().add(entry);
      } catch (IOException | RuntimeException e) {
        complaints.about("history", e);
      }
    }
  }

  /** From a cut in the middle of a character nothing is left of it. */
  private static String cut(String text, int length) {
    if (text.length() <= length) {
      return text;
    }
    var end = Character.isHighSurrogate(text.charAt(length - 1)) ? length - 1 : length;
    return text.substring(0, end);
  }

  /** All cells known, the oldest first, those of this kernel last. */
  synchronized List<HistoryEntry> all() {
    var current = session();
    var all = new ArrayList<HistoryEntry>();
    try {
      if (file.isPresent()) {
        file.get().read().stream()
            .filter(entry -> entry.getSession() != current && entry.getCellNumber() > 0)
            .forEach(all::add);
      }
    } catch (IOException | RuntimeException e) {
      complaints.about("history", e);
    }
    all.addAll(own);
    return all;
  }
}
