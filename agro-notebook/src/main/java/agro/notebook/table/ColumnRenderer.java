package agro.notebook.table;

import agro.notebook.display.MimeBundle;
import agro.notebook.display.RichRenderer;
import java.util.List;
import tech.tablesaw.columns.Column;

/** Shows a single Tablesaw column as a table of one column. */
@SuppressWarnings("rawtypes")
public final class ColumnRenderer implements RichRenderer<Column> {

  /** Called by the service loader. */
  public ColumnRenderer() {}

  @Override
  public Class<Column> type() {
    return Column.class;
  }

  @Override
  public MimeBundle render(Column column) {
    return TableView.of(column.name(), List.<Column<?>>of(column)).bundle();
  }
}
