package agro.notebook.page;

import agro.course.CourseWords;
import agro.working.Block;
import agro.working.Cell;
import agro.working.ResultTable;
import agro.working.Working;
import java.util.List;
import java.util.stream.IntStream;

/** Blocks of exercises as a page or a notebook of one language shows them. */
final class CourseBlocks {

  private CourseBlocks() {}

  static String html(Block block, CourseWords words) {
    return block instanceof Block.TableBlock table
        ? table(table.table(), words)
        : block.toHtml() + "\n";
  }

  static String markdown(Block block, CourseWords words) {
    return block instanceof Block.TableBlock table
        ? inWords(table.table(), words).toMarkdown()
        : block.toMarkdown();
  }

  /** Numbers and days as the language writes them. */
  private static ResultTable inWords(ResultTable table, CourseWords words) {
    var rows =
        table.rows().stream()
            .map(row -> row.stream().map(cell -> Cell.text(printed(cell, words))).toList())
            .toList();
    return new ResultTable(table.title(), table.columns(), rows, table.notes());
  }

  private static String printed(Cell cell, CourseWords words) {
    if (cell instanceof Cell.Figure figure) {
      return words.number(figure.value(), figure.decimals());
    }
    if (cell instanceof Cell.Day day) {
      return words.day(day.value());
    }
    return cell instanceof Cell.NotKnown ? "–" : cell.printed();
  }

  static String table(ResultTable table, CourseWords words) {
    var columns =
        IntStream.range(0, table.columns().size())
            .mapToObj(at -> PrintedColumn.of(table, at, cell -> printed(cell, words)))
            .toList();
    // A caption of the table's own is no wider than the table and breaks over narrow ones.
    var html = new StringBuilder("<figure>\n<figcaption>");
    html.append(PrintedText.html(table.title())).append("</figcaption>\n");
    html.append("<table class=\"data\">\n<thead>\n<tr>");
    columns.forEach(column -> html.append(column.head()));
    html.append("</tr>\n</thead>\n<tbody>\n");
    for (int row = 0; row < table.rows().size(); row++) {
      html.append("<tr>");
      for (var column : columns) {
        html.append(column.cell(row));
      }
      html.append("</tr>\n");
    }
    html.append("</tbody>\n</table>\n</figure>\n");
    table.notes().forEach(note -> html.append(paragraph("note", note)));
    return html.toString();
  }

  static String paragraph(String name, String text) {
    return "<p class=\"" + name + "\">" + PrintedText.html(text) + "</p>\n";
  }

  static String paragraph(String text) {
    return "<p>" + PrintedText.html(text) + "</p>\n";
  }

  /** The steps of a solution, without the title, which repeats that of the exercise. */
  static String steps(Working working) {
    var html = new StringBuilder("<ol class=\"steps\">\n");
    for (var step : working.steps()) {
      html.append("<li><span class=\"step\">").append(PrintedText.html(step.name()));
      html.append("</span>");
      for (var line : step.lines()) {
        html.append("<span class=\"line\">").append(PrintedText.html(line)).append("</span>");
      }
      html.append("</li>\n");
    }
    return html.append("</ol>\n").toString();
  }

  static String stepsMarkdown(Working working) {
    var lines = new StringBuilder();
    int number = 1;
    for (var step : working.steps()) {
      lines.append(number++).append(". ").append(escaped(step.name()));
      for (var line : step.lines()) {
        lines.append("  \n   ").append(escaped(line));
      }
      lines.append('\n');
    }
    return lines.toString();
  }

  static String escaped(String text) {
    return new Block.Paragraph(text).toMarkdown();
  }

  static String joined(List<String> paragraphs) {
    return String.join("\n\n", paragraphs);
  }
}
