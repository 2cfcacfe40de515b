package agro.reading;

import agro.report.InputProblem;
import agro.report.SourceLocation;
import de.siegmar.fastcsv.reader.CommentStrategy;
import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.reader.FieldMismatchStrategy;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** Splits delimited text into records of trimmed cells. */
final class RecordSplitter {

  /** Where the parser names the line in its message; it offers no accessor for it. */
  private static final Pattern PARSER_LINE = Pattern.compile("[Rr]ecord starting at line ([0-9]+)");

  private RecordSplitter() {}

  /**
   * Splits a text. Comments and records without content are left out.
   *
   * @param name name of the text in messages
   * @param text the text
   * @param separator character between cells
   * @return the records in order, the heading first
   * @throws InputProblem when quotation marks are out of order or a line is endless
   */
  static List<Fields> split(String name, String text, char separator) {
    var records = new ArrayList<Fields>();
    var reader =
        CsvReader.builder()
            .fieldSeparator(separator)
            .commentStrategy(CommentStrategy.SKIP)
            .commentCharacter('#')
            .skipEmptyLines(true)
            .extraFieldStrategy(FieldMismatchStrategy.IGNORE)
            .missingFieldStrategy(FieldMismatchStrategy.IGNORE)
            .allowUnclosedQuote(false)
            .trimWhitespacesAroundQuotes(true);
    try (var csv = reader.ofCsvRecord(text)) {
      for (CsvRecord each : csv) {
        var fields = new Fields(each.getStartingLineNumber(), trimmed(each.getFields()));
        if (!fields.allEmpty()) {
          records.add(fields);
        }
      }
    } catch (CsvParseException e) {
      throw unsplit(name, String.valueOf(e.getMessage()));
    } catch (IOException e) {
      throw new UncheckedIOException(name + " could not be read", e);
    }
    return records;
  }

  private static List<String> trimmed(List<String> written) {
    var cells = new ArrayList<String>(written.size());
    for (var cell : written) {
      cells.add(Fields.trimmed(cell));
    }
    return cells;
  }

  private static InputProblem unsplit(String name, String message) {
    var at = PARSER_LINE.matcher(message);
    var place =
        at.find()
            ? SourceLocation.line(name, Long.parseLong(at.group(1)))
            : SourceLocation.file(name);
    if (message.contains("Unclosed")) {
      return quotesOutOfOrder(place, "a cell opens with a double quote that is never closed")
          .mend("close the quote, or remove it");
    }
    if (message.contains("closing quote")) {
      return quotesOutOfOrder(place, "text follows the closing double quote of a cell")
          .mend("remove the text or the quotes, or double the quotes inside the cell");
    }
    return InputProblem.at(place, "a line or a cell is longer than can be read")
        .expected("at most 16384 cells in a line and 16 million characters in a cell")
        .because("the end of the cell or of the line is not found: " + message)
        .mend("close a forgotten double quote, or check that this is the file that was meant");
  }

  private static InputProblem.Reasoned quotesOutOfOrder(SourceLocation place, String read) {
    return InputProblem.at(place, read)
        .expected("quotes around whole cells, and a quote inside a cell written twice")
        .because("the end of the cell is unknown, so that lines could be swallowed");
  }
}
