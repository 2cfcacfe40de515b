package agro.course.paper;

import agro.reading.DelimitedFormat;
import agro.working.SpreadsheetText;
import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;

/** Rows of a file that a spreadsheet opens; no text in it is taken for a formula. */
final class CsvRows {

  private final DelimitedFormat format;
  private final List<List<String>> rows = new ArrayList<>();

  CsvRows(DelimitedFormat format) {
    this.format = format;
  }

  void add(List<String> cells) {
    rows.add(cells.stream().map(SpreadsheetText::harmless).toList());
  }

  /** A number with at most three decimals, as the format writes it. */
  String number(double value) {
    var rounded = BigDecimal.valueOf(value).setScale(3, RoundingMode.HALF_UP);
    var plain = rounded.stripTrailingZeros().toPlainString();
    return format.decimalMark() == ',' ? plain.replace('.', ',') : plain;
  }

  String text() {
    var text = new StringWriter();
    try (var csv =
        CsvWriter.builder()
            .fieldSeparator(format.separator())
            .lineDelimiter(LineDelimiter.CRLF)
            .build(text)) {
      rows.forEach(csv::writeRecord);
    } catch (IOException e) {
      throw new UncheckedIOException("writing to memory failed", e);
    }
    return text.toString();
  }
}
