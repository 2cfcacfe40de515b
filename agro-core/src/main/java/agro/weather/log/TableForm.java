package agro.weather.log;

import agro.report.InputProblem;
import java.nio.charset.Charset;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * How the text of a log makes a table. What is empty is detected.
 *
 * @param charset character set of the file
 * @param separator what stands between cells
 * @param decimalMark mark between whole numbers and decimals
 * @param fieldStarts for fixed widths, where each field begins, counted from 0, ascending; empty
 *     otherwise
 * @param headingLine line of the headings counted from 1, or 0 for a log without headings
 * @param firstLine line of the first data counted from 1
 * @param strict whether the heading is the first line, every line has as many cells as it, lines
 *     are in order, and everything else is refused
 */
public record TableForm(
    Optional<Charset> charset,
    Optional<CellSeparator> separator,
    Optional<DecimalMark> decimalMark,
    List<Integer> fieldStarts,
    OptionalInt headingLine,
    OptionalInt firstLine,
    boolean strict) {

  /** Everything is detected. */
  public static final TableForm OPEN =
      new TableForm(
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          List.of(),
          OptionalInt.empty(),
          OptionalInt.empty(),
          false);

  /**
   * Checks the fields.
   *
   * @throws InputProblem when line numbers or starts of fields make no sense
   */
  public TableForm {
    Objects.requireNonNull(charset, "charset");
    Objects.requireNonNull(separator, "separator");
    Objects.requireNonNull(decimalMark, "decimalMark");
    fieldStarts = List.copyOf(fieldStarts);
    boolean ascending = true;
    for (int i = 0; i < fieldStarts.size(); i++) {
      ascending &= fieldStarts.get(i) > (i == 0 ? -1 : fieldStarts.get(i - 1));
    }
    if (!ascending || headingLine.orElse(0) < 0 || firstLine.orElse(1) < 1) {
      throw InputProblem.of(
              "fields that begin at "
                  + fieldStarts
                  + ", headings on line "
                  + headingLine.orElse(0)
                  + " and data from line "
                  + firstLine.orElse(1))
          .expected("starts of fields from 0 in ascending order, and lines counted from 1")
          .because("cells are cut out at these places")
          .mend("give the starts in order; line 0 of headings stands for a log without them");
    }
  }

  /** With a character set. */
  TableForm withCharset(Charset newCharset) {
    return new TableForm(
        Optional.of(newCharset),
        separator,
        decimalMark,
        fieldStarts,
        headingLine,
        firstLine,
        strict);
  }

  /** With a separator. */
  TableForm withSeparator(CellSeparator newSeparator) {
    return new TableForm(
        charset,
        Optional.of(newSeparator),
        decimalMark,
        fieldStarts,
        headingLine,
        firstLine,
        strict);
  }

  /** With a decimal mark. */
  TableForm withDecimalMark(DecimalMark newDecimalMark) {
    return new TableForm(
        charset,
        separator,
        Optional.of(newDecimalMark),
        fieldStarts,
        headingLine,
        firstLine,
        strict);
  }

  /** With starts of fields of fixed width. */
  TableForm withFieldStarts(List<Integer> newFieldStarts) {
    return new TableForm(
        charset, separator, decimalMark, newFieldStarts, headingLine, firstLine, strict);
  }

  /** With the line of the headings. */
  TableForm withHeadingLine(int newHeadingLine) {
    return new TableForm(
        charset,
        separator,
        decimalMark,
        fieldStarts,
        OptionalInt.of(newHeadingLine),
        firstLine,
        strict);
  }

  /** With the line of the first data. */
  TableForm withFirstLine(int newFirstLine) {
    return new TableForm(
        charset,
        separator,
        decimalMark,
        fieldStarts,
        headingLine,
        OptionalInt.of(newFirstLine),
        strict);
  }

  /** Strict or not. */
  TableForm withStrict(boolean newStrict) {
    return new TableForm(
        charset, separator, decimalMark, fieldStarts, headingLine, firstLine, newStrict);
  }
}
