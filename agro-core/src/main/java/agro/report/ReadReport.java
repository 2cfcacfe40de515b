package agro.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;

/**
 * Everything that a reader did to the data beyond reading it: what it assumed, mended, dropped or
 * filled, each with its place. An empty report means that the data are as they stand in the input.
 *
 * @param source name of the input
 * @param rowsRead rows that were read as data, dropped ones included
 * @param entries what was done, in the order of the input
 */
public record ReadReport(String source, long rowsRead, List<Entry> entries) {

  /** What was done to a value or a row. */
  public enum Deed {
    /** A choice was made that the input does not state. */
    ASSUMED,
    /** A value was mended in a way that loses nothing. */
    REPAIRED,
    /** A row or a value was left out. */
    DROPPED,
    /** A missing value was filled in. */
    FILLED,
    /** Nothing was changed, but the reader of the figures should know. */
    NOTED;

    /**
     * The deed in words.
     *
     * @return the name in lower case
     */
    public String words() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  /**
   * One deed.
   *
   * @param deed what kind of deed
   * @param location where it was done
   * @param text what was done and why, as a sentence without a full stop
   */
  public record Entry(Deed deed, SourceLocation location, String text) {
    /** Refuses nulls. */
    public Entry {
      Objects.requireNonNull(deed, "deed");
      Objects.requireNonNull(location, "location");
      Objects.requireNonNull(text, "text");
    }

    @Override
    public String toString() {
      var where = location.toString();
      return deed.words() + (where.isEmpty() ? "" : " (" + where + ")") + ": " + text;
    }
  }

  /** Makes the report immutable. */
  public ReadReport {
    Objects.requireNonNull(source, "source");
    entries = List.copyOf(entries);
    if (rowsRead < 0) {
      throw new IllegalArgumentException("rows read cannot be negative, but got " + rowsRead);
    }
  }

  /**
   * The entries of one kind.
   *
   * @param deed the kind
   * @return the entries in order, possibly none
   */
  public List<Entry> entries(Deed deed) {
    return entries.stream().filter(entry -> entry.deed() == deed).toList();
  }

  /**
   * This report followed by another one.
   *
   * @param other report of what was done later or to another input
   * @return both, under this report's source and with the rows added up
   */
  public ReadReport and(ReadReport other) {
    var all = new ArrayList<>(entries);
    all.addAll(other.entries);
    return new ReadReport(source, rowsRead + other.rowsRead, all);
  }

  @Override
  public String toString() {
    var lines = new StringBuilder(source).append(": ").append(rowsRead);
    lines.append(rowsRead == 1 ? " row read" : " rows read");
    if (entries.isEmpty()) {
      lines.append(", nothing assumed, mended, dropped or filled");
    }
    entries.forEach(entry -> lines.append("\n  ").append(entry));
    return lines.toString();
  }

  /** Collects deeds while reading; not thread-safe. */
  public static final class Collector {
    private final String source;
    private final List<Entry> entries = new ArrayList<>();
    private long rows;

    /**
     * An empty collector.
     *
     * @param source name of the input
     */
    public Collector(String source) {
      this.source = Objects.requireNonNull(source);
    }

    /** Counts one row of data. */
    public void countRow() {
      rows++;
    }

    /**
     * Records a deed.
     *
     * @param deed what kind of deed
     * @param location where it was done
     * @param text what was done and why, without a full stop
     */
    public void add(Deed deed, SourceLocation location, String text) {
      entries.add(new Entry(deed, location, text));
    }

    /**
     * Takes over all entries and rows of a finished report.
     *
     * @param report report of a part of the input
     */
    public void addAll(ReadReport report) {
      entries.addAll(report.entries);
      rows += report.rowsRead;
    }

    /**
     * The report so far.
     *
     * @return an immutable report
     */
    public ReadReport report() {
      return new ReadReport(source, rows, entries);
    }
  }
}
