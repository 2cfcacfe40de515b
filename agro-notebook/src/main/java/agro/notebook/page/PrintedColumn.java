package agro.notebook.page;

import agro.working.Cell;
import agro.working.ResultTable;
import java.util.List;
import java.util.function.Function;
import java.util.regex.Pattern;

/**
 * A column of a printed table. Numbers stand with their decimal signs below one another, whether
 * they came as numbers or already written in a language.
 *
 * @param heading heading with the unit
 * @param cells text of the cells
 * @param isNumeric whether they are numbers; codes with zeros in front are not
 */
record PrintedColumn(String heading, List<String> cells, boolean isNumeric) {

  private static final Pattern NUMBER = Pattern.compile("[−-]?(?:0|[1-9]\\d*)(?:[.,]\\d+)?");
  private static final String MISSING = "–";

  PrintedColumn {
    cells = List.copyOf(cells);
  }

  static PrintedColumn of(ResultTable table, int at, Function<Cell, String> printed) {
    var cells = table.rows().stream().map(row -> printed.apply(row.get(at))).toList();
    boolean isNumeric =
        table.isNumeric(at)
            || (cells.stream().anyMatch(cell -> !cell.equals(MISSING))
                && cells.stream()
                    .allMatch(cell -> cell.equals(MISSING) || NUMBER.matcher(cell).matches()));
    return new PrintedColumn(table.columns().get(at).heading(), cells, isNumeric);
  }

  String head() {
    return "<th scope=\"col\"" + side() + ">" + PrintedText.html(heading) + "</th>";
  }

  String cell(int row) {
    var text = cells.get(row);
    return "<td" + side() + ">" + PrintedText.html(text) + padding(text) + "</td>";
  }

  private String side() {
    return isNumeric ? " class=\"number\"" : "";
  }

  /** What the longest number has behind its decimal sign and this one has not, unseen. */
  private String padding(String text) {
    int own = decimals(text);
    int most = cells.stream().mapToInt(PrintedColumn::decimals).max().orElse(0);
    return !isNumeric || own == most
        ? ""
        : (own == 0 ? "\u2008" : "") + "\u2007".repeat(most - own);
  }

  private static int decimals(String text) {
    int sign = Math.max(text.lastIndexOf('.'), text.lastIndexOf(','));
    return sign < 0 ? 0 : text.length() - sign - 1;
  }
}
