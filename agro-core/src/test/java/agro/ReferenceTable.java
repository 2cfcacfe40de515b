package agro;

import de.siegmar.fastcsv.reader.CommentStrategy;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;

/** Tables of reference values beside the tests; their header lines name source and tolerance. */
public final class ReferenceTable {

  private ReferenceTable() {}

  /** All lines of a table that lies in the resource folder of a test's package. */
  public static List<NamedCsvRecord> read(Class<?> test, String name) {
    var stream = Objects.requireNonNull(test.getResourceAsStream(name), name);
    var reader = new InputStreamReader(stream, StandardCharsets.UTF_8);
    try (var csv =
        CsvReader.builder().commentStrategy(CommentStrategy.SKIP).ofNamedCsvRecord(reader)) {
      return csv.stream().toList();
    } catch (IOException problem) {
      throw new UncheckedIOException(problem);
    }
  }

  /** A number of a line. */
  public static double number(NamedCsvRecord line, String column) {
    return Double.parseDouble(line.getField(column));
  }

  /** A whole number of a line. */
  public static int whole(NamedCsvRecord line, String column) {
    return Integer.parseInt(line.getField(column));
  }
}
