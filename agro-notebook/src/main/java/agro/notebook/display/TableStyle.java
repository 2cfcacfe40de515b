package agro.notebook.display;

/**
 * The few rules that tables need wherever they are shown. They name no colour, so that text and
 * lines are those of the page around them, light or dark.
 */
final class TableStyle {

  /** The rules as an element that stands before a table. */
  static final String ELEMENT =
      "<style>div.agro-table{overflow-x:auto}div.agro-table table{margin-left:0}"
          + "div.agro-table caption{caption-side:top;text-align:left;font-weight:bold;color:inherit}"
          + "div.agro-table th,div.agro-table td{text-align:left;vertical-align:top}"
          + "div.agro-table thead th{vertical-align:bottom}"
          + "div.agro-table th.agro-number,div.agro-table td.agro-number"
          + "{text-align:right;font-variant-numeric:tabular-nums}"
          + "div.agro-table td.agro-number{white-space:nowrap}"
          + "div.agro-table .agro-kind{font-weight:normal;opacity:.75}"
          + "div.agro-table .agro-missing{font-style:italic;opacity:.75}</style>\n";

  private TableStyle() {}
}
