package agro.trial;

import agro.working.SpreadsheetText;

/** Text in files that a spreadsheet may have opened. */
final class TableText {

  private TableText() {}

  /** Takes away the apostrophe that was put before a text that looks like a formula. */
  static String asWritten(String cell) {
    var rest = cell.isEmpty() ? "" : cell.substring(1);
    return cell.startsWith("'") && SpreadsheetText.harmless(rest).equals(cell) ? rest : cell;
  }
}
