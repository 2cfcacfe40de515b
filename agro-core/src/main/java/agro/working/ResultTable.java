package agro.working;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * A table of results with units in its heading, printable in four forms. A value object: rows are
 * kept as given, unrounded.
 *
 * @param title what the table shows; the caption
 * @param columns at least one column
 * @param rows rows of one cell for each column, possibly none
 * @param notes sentences below the table, possibly none
 */
public record ResultTable(
    String title, List<Column> columns, List<List<Cell>> rows, List<String> notes)
    implements Presentable {

  /**
   * The heading of a column.
   *
   * @param name what the column holds
   * @param unit unit of its numbers as printed, or empty
   */
  public record Column(String name, String unit) {
    /** Refuses a column without a name. */
    public Column {
      Objects.requireNonNull(unit, "unit");
      if (name.isBlank()) {
        throw new IllegalArgumentException("a column needs a name");
      }
    }

    /**
     * A column without a unit.
     *
     * @param name what the column holds
     * @return the column
     */
    public static Column of(String name) {
      return new Column(name, "");
    }

    /**
     * A column of numbers in one unit.
     *
     * @param name what the column holds
     * @param unit unit as printed, for example {@code "°C·d"}
     * @return the column
     */
    public static Column of(String name, String unit) {
      return new Column(name, unit);
    }

    /**
     * The heading in print.
     *
     * @return the name, with the unit in brackets if there is one
     */
    public String heading() {
      return unit.isBlank() ? name : name + " (" + unit + ")";
    }
  }

  /** Copies all lists and refuses rows that do not fit the columns. */
  public ResultTable {
    columns = List.copyOf(columns);
    rows = rows.stream().map(List::copyOf).toList();
    notes = List.copyOf(notes);
    if (title.isBlank() || columns.isEmpty()) {
      throw new IllegalArgumentException("a table needs a title and at least one column");
    }
    for (var row : rows) {
      if (row.size() != columns.size()) {
        throw new IllegalArgumentException(
            "a row of \""
                + title
                + "\" needs "
                + columns.size()
                + " cells, but has "
                + row.size()
                + ": "
                + row);
      }
    }
  }

  /**
   * A table without notes.
   *
   * @param title what the table shows
   * @param columns at least one column
   * @param rows rows of one cell for each column
   * @return the table
   */
  public static ResultTable of(String title, List<Column> columns, List<List<Cell>> rows) {
    return new ResultTable(title, columns, rows, List.of());
  }

  /**
   * This table with one more sentence below it.
   *
   * @param note the sentence
   * @return a new table
   */
  public ResultTable withNote(String note) {
    var more = new ArrayList<>(notes);
    more.add(note);
    return new ResultTable(title, columns, rows, more);
  }

  /**
   * Whether a column is one of numbers: it holds at least one number and otherwise only missing
   * values.
   *
   * @param index place of the column, counted from 0
   * @return true when the column is aligned on the right
   */
  public boolean isNumeric(int index) {
    boolean any = false;
    for (var row : rows) {
      var cell = row.get(index);
      any |= cell.isNumber();
      if (!cell.isNumber() && !(cell instanceof Cell.NotKnown)) {
        return false;
      }
    }
    return any;
  }

  /**
   * The table as plain text with aligned columns, at most 100 columns wide where its words allow.
   *
   * @return lines without a line break at the end
   */
  public String toText() {
    return TableForms.text(this);
  }

  /**
   * The table as a Markdown pipe table.
   *
   * @return lines without a line break at the end
   */
  public String toMarkdown() {
    return TableForms.markdown(this);
  }

  /**
   * The table as HTML with caption, column and row headings.
   *
   * @return a div element with the table and its notes; all text is escaped
   */
  public String toHtml() {
    return TableForms.html(this);
  }

  /**
   * The table as LaTeX, a floating table with its caption and notes, for a document that loads no
   * package beyond {@code textcomp}.
   *
   * @return the LaTeX source
   */
  public String toLatex() {
    return TableForms.latex(this);
  }

  /**
   * The table as a comma-separated file after RFC 4180, numbers unrounded with a decimal point,
   * missing values empty, without title and notes. Text that a spreadsheet would take for a formula
   * gets a leading apostrophe; numbers never.
   *
   * @return records that each end with CR LF, the headings first
   */
  public String toCsv() {
    return TableForms.csv(this);
  }

  @Override
  public Presentation presentation() {
    return Presentation.untitled(new Block.TableBlock(this));
  }
}
