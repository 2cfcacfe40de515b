package agro.notebook.display;

import agro.working.Cell;
import agro.working.HtmlText;
import agro.working.ResultTable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * Rows and columns of values that say nothing about their own layout. As HTML it has a caption,
 * headings with their scope, the kind of each column below its name, and numbers on the right.
 *
 * @param caption what the table shows
 * @param columns at least one column
 * @param rows rows of one cell for each column, possibly none
 * @param named whether the first column names the rows
 * @param notes sentences below the table, possibly none
 */
public record DataTable(
    String caption,
    List<Heading> columns,
    List<List<Cell>> rows,
    boolean named,
    List<String> notes) {

  /**
   * The heading of a column.
   *
   * @param name what the column holds, with its unit if it has one
   * @param kind the kind of its values, such as "whole number", or empty
   * @param numeric whether its values are numbers, which stand on the right
   */
  public record Heading(String name, String kind, boolean numeric) {
    /** Gives a column without a name a dash. */
    public Heading {
      Objects.requireNonNull(kind, "kind");
      name = name == null || name.isBlank() ? "–" : name;
    }
  }

  /** Copies the lists and refuses rows that do not fit the columns. */
  public DataTable {
    caption = caption == null || caption.isBlank() ? "Table" : caption;
    columns = List.copyOf(columns);
    rows = rows.stream().map(List::copyOf).toList();
    notes = List.copyOf(notes);
    var width = columns.size();
    if (width == 0 || rows.stream().anyMatch(row -> row.size() != width)) {
      throw new IllegalArgumentException(
          "a table needs columns, and each row a cell for each of its " + width + " columns");
    }
  }

  /**
   * A table without notes whose columns say nothing about their kind; a column is one of numbers
   * when it holds numbers and nothing else.
   *
   * @param caption what the table shows
   * @param names names of the columns
   * @param rows rows of one cell for each column
   * @return the table
   */
  static DataTable of(String caption, List<String> names, List<List<Cell>> rows) {
    var columns =
        IntStream.range(0, names.size())
            .mapToObj(at -> new Heading(names.get(at), "", holdsNumbers(rows, at)))
            .toList();
    return new DataTable(caption, columns, PlainCells.evenDecimals(rows), false, List.of());
  }

  private static boolean holdsNumbers(List<List<Cell>> rows, int column) {
    var cells = rows.stream().map(row -> row.get(column)).filter(cell -> !isBlank(cell)).toList();
    return !cells.isEmpty() && cells.stream().allMatch(PlainCells::isNumber);
  }

  private static boolean isBlank(Cell cell) {
    return cell instanceof Cell.NotKnown || cell.printed().isEmpty();
  }

  /** This table with its first column naming the rows. */
  DataTable withNamedRows() {
    return new DataTable(caption, columns, rows, true, notes);
  }

  /**
   * This table with one more sentence below it.
   *
   * @param note the sentence
   * @return a new table
   */
  public DataTable withNote(String note) {
    var more = new ArrayList<>(notes);
    more.add(note);
    return new DataTable(caption, columns, rows, named, more);
  }

  /**
   * The table in all its formats.
   *
   * @return HTML, Markdown and plain text
   */
  public MimeBundle bundle() {
    var plain = plain();
    return bundle(plain.toText()).with(MimeBundle.MARKDOWN, plain.toMarkdown());
  }

  /** HTML beside a text of its own. */
  MimeBundle bundle(String text) {
    return MimeBundle.of(MimeBundle.HTML, toHtml()).with(MimeBundle.TEXT, text);
  }

  private ResultTable plain() {
    var headings = columns.stream().map(column -> ResultTable.Column.of(column.name())).toList();
    var kinds =
        columns.stream()
            .filter(column -> !column.kind().isEmpty())
            .map(column -> column.name() + ": " + column.kind())
            .collect(Collectors.joining("; "));
    var table = new ResultTable(caption, headings, rows, notes);
    return kinds.isEmpty() ? table : table.withNote("Columns: " + kinds);
  }

  /**
   * The table as HTML without script and colours.
   *
   * @return a style element and a div element; all text is escaped
   */
  public String toHtml() {
    var html = new StringBuilder(TableStyle.ELEMENT);
    html.append("<div class=\"agro-table\">\n<table>\n<caption>")
        .append(HtmlText.escape(caption))
        .append("</caption>\n<thead>\n<tr>");
    columns.forEach(column -> appendHeading(html, column));
    html.append("</tr>\n</thead>\n<tbody>\n");
    for (var row : rows) {
      html.append("<tr>");
      for (var at = 0; at < row.size(); at++) {
        appendCell(html, row.get(at), columns.get(at), named && at == 0);
      }
      html.append("</tr>\n");
    }
    html.append("</tbody>\n</table>\n");
    notes.forEach(
        note ->
            html.append("<p class=\"agro-note\">").append(HtmlText.escape(note)).append("</p>\n"));
    return html.append("</div>").toString();
  }

  private static void appendHeading(StringBuilder html, Heading column) {
    html.append("<th scope=\"col\"")
        .append(column.numeric() ? " class=\"agro-number\"" : "")
        .append('>')
        .append(HtmlText.escape(column.name()));
    if (!column.kind().isEmpty()) {
      html.append("<br><small class=\"agro-kind\">")
          .append(HtmlText.escape(column.kind()))
          .append("</small>");
    }
    html.append("</th>");
  }

  private static void appendCell(StringBuilder html, Cell cell, Heading column, boolean name) {
    var missing = cell instanceof Cell.NotKnown;
    var classes =
        (column.numeric() ? "agro-number" : "")
            + (column.numeric() && missing ? " " : "")
            + (missing ? "agro-missing" : "");
    html.append(name ? "<th scope=\"row\"" : "<td")
        .append(classes.isEmpty() ? "" : " class=\"" + classes + "\"")
        .append('>')
        .append(HtmlText.escape(cell.printed()))
        .append(name ? "</th>" : "</td>");
  }
}
