package agro.notebook.table;

import agro.notebook.display.MimeBundle;
import agro.notebook.display.RichRenderer;
import tech.tablesaw.api.Table;

/**
 * Shows Tablesaw tables: units and types in the heading, first and last rows of a long one, first
 * and last columns of a wide one, missing values as such.
 */
public final class TablesawRenderer implements RichRenderer<Table> {

  /** Called by the service loader. */
  public TablesawRenderer() {}

  @Override
  public Class<Table> type() {
    return Table.class;
  }

  @Override
  public MimeBundle render(Table table) {
    return table.columnCount() == 0
        ? MimeBundle.text("a table without columns")
        : TableView.of(table.name(), table.columns()).bundle();
  }
}
