package agro.notebook.table;

import agro.notebook.display.MimeBundle;
import agro.notebook.display.RichRenderer;
import tech.tablesaw.api.Table;

/** Shows Tablesaw tables like our own: units in the heading, first and last rows of a long one. */
public final class TablesawRenderer implements RichRenderer<Table> {

  /** Called by the service loader. */
  public TablesawRenderer() {}

  @Override
  public Class<Table> type() {
    return Table.class;
  }

  @Override
  public MimeBundle render(Table table) {
    if (table.columnCount() == 0) {
      return MimeBundle.text("a table without columns");
    }
    var result = ColumnTables.toResult(table);
    return MimeBundle.of(MimeBundle.HTML, result.toHtml())
        .with(MimeBundle.MARKDOWN, result.toMarkdown())
        .with(MimeBundle.TEXT, result.toText());
  }
}
