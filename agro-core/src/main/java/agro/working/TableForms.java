package agro.working;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** The printed forms of a {@link ResultTable}. */
final class TableForms {

  private static final String GAP = "  ";

  private TableForms() {}

  static String text(ResultTable table) {
    int[] widths = fittedWidths(table);
    var lines = new ArrayList<String>(PlainText.wrap(table.title(), PlainText.LINE_WIDTH));
    lines.add("");
    lines.addAll(textLines(table, headings(table), widths));
    lines.add(IntStream.of(widths).mapToObj("-"::repeat).collect(Collectors.joining(GAP)));
    for (var row : table.rows()) {
      lines.addAll(textLines(table, row.stream().map(Cell::printed).toList(), widths));
    }
    if (table.rows().isEmpty()) {
      lines.add("(no rows)");
    }
    table.notes().forEach(note -> lines.add(PlainText.hanging("Note: ", note)));
    return String.join("\n", lines);
  }

  private static List<String> headings(ResultTable table) {
    return table.columns().stream().map(ResultTable.Column::heading).toList();
  }

  /** Natural widths, narrowed from the widest column down until the table fits or words forbid. */
  private static int[] fittedWidths(ResultTable table) {
    int columns = table.columns().size();
    int[] widths = new int[columns];
    int[] least = new int[columns];
    for (int i = 0; i < columns; i++) {
      var heading = table.columns().get(i).heading();
      widths[i] = PlainText.width(heading);
      least[i] = PlainText.widestWord(heading);
      for (var row : table.rows()) {
        var cell = row.get(i);
        var printed = cell.printed();
        widths[i] = Math.max(widths[i], PlainText.width(printed));
        int unbreakable =
            cell.isNumber() ? PlainText.width(printed) : PlainText.widestWord(printed);
        least[i] = Math.max(least[i], unbreakable);
      }
    }
    int room = PlainText.LINE_WIDTH - GAP.length() * (columns - 1);
    while (IntStream.of(widths).sum() > room) {
      int widest = widestThatYields(widths, least);
      if (widest < 0) {
        break;
      }
      widths[widest]--;
    }
    return widths;
  }

  private static int widestThatYields(int[] widths, int[] least) {
    int widest = -1;
    for (int i = 0; i < widths.length; i++) {
      if (widths[i] > least[i] && (widest < 0 || widths[i] > widths[widest])) {
        widest = i;
      }
    }
    return widest;
  }

  private static List<String> textLines(ResultTable table, List<String> values, int[] widths) {
    var wrapped =
        IntStream.range(0, widths.length)
            .mapToObj(i -> PlainText.wrap(values.get(i), widths[i]))
            .toList();
    int height = wrapped.stream().mapToInt(List::size).max().orElse(1);
    var lines = new ArrayList<String>();
    for (int h = 0; h < height; h++) {
      var line = new ArrayList<String>();
      for (int i = 0; i < widths.length; i++) {
        var part = h < wrapped.get(i).size() ? wrapped.get(i).get(h) : "";
        line.add(
            table.isNumeric(i)
                ? PlainText.padLeft(part, widths[i])
                : PlainText.padRight(part, widths[i]));
      }
      lines.add(String.join(GAP, line).stripTrailing());
    }
    return lines;
  }

  static String markdown(ResultTable table) {
    var lines = new ArrayList<String>();
    lines.add("**" + MarkdownText.escape(table.title()) + "**");
    lines.add("");
    lines.add(pipes(headings(table)));
    lines.add(
        IntStream.range(0, table.columns().size())
            .mapToObj(i -> table.isNumeric(i) ? "---:" : ":---")
            .collect(Collectors.joining(" | ", "| ", " |")));
    for (var row : table.rows()) {
      lines.add(pipes(row.stream().map(Cell::printed).toList()));
    }
    for (var note : table.notes()) {
      lines.add("");
      lines.add(MarkdownText.escape(note));
    }
    return String.join("\n", lines);
  }

  private static String pipes(List<String> values) {
    return values.stream().map(MarkdownText::escape).collect(Collectors.joining(" | ", "| ", " |"));
  }

  static String html(ResultTable table) {
    var html = new StringBuilder("<div class=\"agro-table\">\n<table>\n");
    html.append(HtmlText.element("caption", table.title())).append("\n<thead>\n<tr>");
    for (int i = 0; i < table.columns().size(); i++) {
      html.append("<th scope=\"col\"")
          .append(numberClass(table.isNumeric(i)))
          .append('>')
          .append(HtmlText.escape(table.columns().get(i).heading()))
          .append("</th>");
    }
    html.append("</tr>\n</thead>\n<tbody>\n");
    boolean named = !table.isNumeric(0);
    for (var row : table.rows()) {
      html.append("<tr>");
      for (int i = 0; i < row.size(); i++) {
        appendCell(html, row.get(i), named && i == 0);
      }
      html.append("</tr>\n");
    }
    html.append("</tbody>\n</table>\n");
    table.notes().forEach(n -> html.append(HtmlText.element("p", "agro-note", n)).append('\n'));
    return html.append("</div>").toString();
  }

  private static void appendCell(StringBuilder html, Cell cell, boolean rowHeading) {
    html.append(rowHeading ? "<th scope=\"row\"" : "<td")
        .append(numberClass(cell.isNumber()))
        .append('>')
        .append(HtmlText.escape(cell.printed()))
        .append(rowHeading ? "</th>" : "</td>");
  }

  private static String numberClass(boolean number) {
    return number ? " class=\"agro-number\"" : "";
  }

  static String latex(ResultTable table) {
    var lines = new ArrayList<String>();
    lines.add("\\begin{table}");
    lines.add("\\caption{" + LatexText.escape(table.title()) + "}");
    lines.add("\\centering");
    lines.add(
        IntStream.range(0, table.columns().size())
            .mapToObj(i -> table.isNumeric(i) ? "r" : "l")
            .collect(Collectors.joining("", "\\begin{tabular}{", "}")));
    lines.add("\\hline");
    lines.add(ampersands(headings(table)));
    lines.add("\\hline");
    for (var row : table.rows()) {
      lines.add(ampersands(row.stream().map(Cell::printed).toList()));
    }
    lines.add("\\hline");
    lines.add("\\end{tabular}");
    table.notes().forEach(note -> lines.add("\\par " + LatexText.escape(note)));
    lines.add("\\end{table}");
    return String.join("\n", lines);
  }

  /** An empty group first, so that a bracket in the first cell is no option of the line before. */
  private static String ampersands(List<String> values) {
    return values.stream().map(LatexText::escape).collect(Collectors.joining(" & ", "{}", " \\\\"));
  }

  static String csv(ResultTable table) {
    var text = new StringWriter();
    try (var csv = CsvWriter.builder().lineDelimiter(LineDelimiter.CRLF).build(text)) {
      csv.writeRecord(headings(table).stream().map(SpreadsheetText::harmless).toList());
      for (var row : table.rows()) {
        csv.writeRecord(row.stream().map(Cell::forFile).toList());
      }
    } catch (IOException e) {
      throw new UncheckedIOException("writing to memory failed", e);
    }
    return text.toString();
  }
}
