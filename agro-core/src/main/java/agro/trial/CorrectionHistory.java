package agro.trial;

import agro.reading.DelimitedFormat;
import agro.reading.DelimitedLine;
import agro.reading.DelimitedText;
import agro.reading.SafeFile;
import agro.report.InputProblem;
import agro.working.Cell;
import agro.working.Presentable;
import agro.working.Presentation;
import agro.working.ResultTable;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The corrections of a trial in the order in which they were applied. Written to a file and read
 * again it gives the same history.
 *
 * @param corrections the corrections
 */
public record CorrectionHistory(List<Correction> corrections) implements Presentable {

  private static final List<String> COLUMNS =
      List.of(
          "site",
          "year",
          "plot",
          "date",
          "sub-sample",
          "variable",
          "old value",
          "new value",
          "reason",
          "who",
          "when");

  /** Makes the list immutable. */
  public CorrectionHistory {
    corrections = List.copyOf(corrections);
  }

  /**
   * A history without corrections.
   *
   * @return the empty history
   */
  public static CorrectionHistory none() {
    return new CorrectionHistory(List.of());
  }

  /**
   * Reads a history that {@link #toCsv} wrote.
   *
   * @param file the file
   * @return the history
   * @throws InputProblem when a column is missing or a cell cannot be read
   */
  public static CorrectionHistory read(Path file) {
    return of(DelimitedText.read(file, DelimitedFormat.COMMA, COLUMNS));
  }

  /**
   * Reads a history that is in memory.
   *
   * @param name name of the text in messages
   * @param text the text
   * @return the history
   * @throws InputProblem when a column is missing or a cell cannot be read
   */
  public static CorrectionHistory parse(String name, String text) {
    return of(DelimitedText.parse(name, text, DelimitedFormat.COMMA, COLUMNS));
  }

  private static CorrectionHistory of(DelimitedText text) {
    return new CorrectionHistory(text.lines().stream().map(CorrectionHistory::correction).toList());
  }

  private static Correction correction(DelimitedLine line) {
    if (line.optionalNumber("old value").equals(line.optionalNumber("new value"))) {
      throw InputProblem.at(line.location("new value"), "old and new value are the same")
          .expected("a new value, or none to set the old one to missing")
          .because("a correction changes a value")
          .mend("write the new value, or remove the line");
    }
    return new Correction(
        text(line, "site"),
        line.optionalWholeNumber("year"),
        text(line, "plot"),
        line.optionalDate("date"),
        text(line, "sub-sample"),
        required(line, "variable"),
        line.optionalNumber("old value"),
        line.optionalNumber("new value"),
        required(line, "reason"),
        required(line, "who"),
        text(line, "when"));
  }

  private static String required(DelimitedLine line, String column) {
    line.text(column);
    return text(line, column);
  }

  /** Takes away the apostrophe that keeps a spreadsheet from computing the cell. */
  private static String text(DelimitedLine line, String column) {
    var text = line.optionalText(column).orElse("");
    return TableText.asWritten(text);
  }

  /**
   * This history with one more correction at its end.
   *
   * @param correction the correction
   * @return a new history
   */
  public CorrectionHistory and(Correction correction) {
    var more = new ArrayList<>(corrections);
    more.add(correction);
    return new CorrectionHistory(more);
  }

  /**
   * The history as a comma-separated file with missing values empty.
   *
   * @return records that each end with CR LF, the headings first
   */
  public String toCsv() {
    return table().toCsv();
  }

  /**
   * Writes the history to a file, whole or not at all.
   *
   * @param file the file
   */
  public void write(Path file) {
    SafeFile.writeText(file, toCsv());
  }

  private ResultTable table() {
    var rows = new ArrayList<List<Cell>>();
    for (var correction : corrections) {
      rows.add(
          List.of(
              Cell.text(correction.site()),
              correction.year().isPresent()
                  ? Cell.text(Integer.toString(correction.year().getAsInt()))
                  : Cell.notKnown(),
              Cell.text(correction.plot()),
              day(correction.date()),
              Cell.text(correction.subSample()),
              Cell.text(correction.variable()),
              number(correction.oldValue()),
              number(correction.newValue()),
              Cell.text(correction.reason()),
              Cell.text(correction.who()),
              Cell.text(correction.when())));
    }
    var columns = COLUMNS.stream().map(ResultTable.Column::of).toList();
    return ResultTable.of("Corrections", columns, rows);
  }

  private static Cell day(Optional<LocalDate> date) {
    return date.isPresent() ? Cell.day(date.get()) : Cell.notKnown();
  }

  private static Cell number(OptionalDouble value) {
    if (value.isEmpty()) {
      return Cell.notKnown();
    }
    double number = value.getAsDouble();
    return Cell.number(number, number == Math.rint(number) ? 0 : 4);
  }

  @Override
  public Presentation presentation() {
    if (corrections.isEmpty()) {
      return Presentation.titled("Corrections").paragraph("No value was corrected.").build();
    }
    return Presentation.titled("Corrections").table(table()).build();
  }

  @Override
  public String toString() {
    return corrections.isEmpty()
        ? "no corrections"
        : String.join("\n", corrections.stream().map(Correction::toString).toList());
  }
}
