package agro.reading;

import agro.report.InputProblem;
import agro.report.SourceLocation;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * One line of a {@link DelimitedText}. Cells are fetched by column name, without regard to case.
 *
 * <p>The methods named {@code optional...} answer empty when the column is missing or the cell is
 * blank; the others refuse both. Whatever is written must be of the asked type in either case.
 * Every refusal is an {@link InputProblem} that names file, line, column, value, expectation and
 * cure.
 */
public final class DelimitedLine {

  private final Headings headings;
  private final char decimalMark;
  private final long lineNumber;
  private final List<String> cells;

  DelimitedLine(Headings headings, char decimalMark, Fields fields) {
    this.headings = headings;
    this.decimalMark = decimalMark;
    this.lineNumber = fields.line();
    this.cells = headings.fitted(fields);
  }

  /**
   * The line of the file on which this record starts.
   *
   * @return number counted from 1, comments and blank lines included
   */
  public long lineNumber() {
    return lineNumber;
  }

  /**
   * This line as a place in messages.
   *
   * @return a location without column
   */
  public SourceLocation location() {
    return SourceLocation.line(headings.file(), lineNumber);
  }

  /**
   * A cell of this line as a place in messages.
   *
   * @param column name of the column
   * @return the location
   */
  public SourceLocation location(String column) {
    return location().column(column);
  }

  /**
   * Text that must be there.
   *
   * @param column name of the column
   * @return the text without surrounding white space, not empty
   * @throws InputProblem when the column is missing or the cell is blank
   */
  public String text(String column) {
    var cell = cells.get(headings.requiredIndex(column));
    if (cell.isEmpty()) {
      throw InputProblem.at(location(column), "the cell is empty")
          .expected("a value")
          .because("this column has to be filled in every line")
          .mend("fill in the cell, or remove the line");
    }
    return cell;
  }

  /**
   * Text that may be missing.
   *
   * @param column name of the column
   * @return the text without surrounding white space
   */
  public Optional<String> optionalText(String column) {
    return headings.indexOf(column).map(cells::get).filter(cell -> !cell.isEmpty());
  }

  /**
   * A number in the declared decimal mark.
   *
   * @param column name of the column
   * @return a finite number
   * @throws InputProblem when the cell holds no such number
   */
  public double number(String column) {
    return NumberText.number(text(column), decimalMark, location(column));
  }

  /**
   * A number that may be missing.
   *
   * @param column name of the column
   * @return a finite number, or empty
   * @throws InputProblem when the cell holds something else
   */
  public OptionalDouble optionalNumber(String column) {
    return optionalText(column).isPresent()
        ? OptionalDouble.of(number(column))
        : OptionalDouble.empty();
  }

  /**
   * A whole number; {@code 3.0} is refused.
   *
   * @param column name of the column
   * @return the number, with its sign
   * @throws InputProblem when the cell holds no such number
   */
  public int wholeNumber(String column) {
    return NumberText.wholeNumber(text(column), location(column));
  }

  /**
   * A whole number that may be missing.
   *
   * @param column name of the column
   * @return the number, or empty
   * @throws InputProblem when the cell holds something else
   */
  public OptionalInt optionalWholeNumber(String column) {
    return optionalText(column).isPresent()
        ? OptionalInt.of(wholeNumber(column))
        : OptionalInt.empty();
  }

  /**
   * A count: a whole number of at least 0.
   *
   * @param column name of the column
   * @return the count
   * @throws InputProblem when the cell holds no whole number or a negative one
   */
  public int count(String column) {
    int count = wholeNumber(column);
    if (count < 0) {
      throw InputProblem.at(location(column), "the count is " + count)
          .expected("0 or more")
          .because("nothing can be counted fewer than no times")
          .mend("remove the sign; if the count is not known, leave the cell empty where it may be");
    }
    return count;
  }

  /**
   * A count that may be missing.
   *
   * @param column name of the column
   * @return the count, or empty
   * @throws InputProblem when the cell holds no whole number or a negative one
   */
  public OptionalInt optionalCount(String column) {
    return optionalText(column).isPresent() ? OptionalInt.of(count(column)) : OptionalInt.empty();
  }

  /**
   * A date in ISO form, year-month-day.
   *
   * @param column name of the column
   * @return the day
   * @throws InputProblem when the cell holds another shape or no day of the calendar
   */
  public LocalDate date(String column) {
    return DateText.date(text(column), location(column));
  }

  /**
   * A date in ISO form that may be missing.
   *
   * @param column name of the column
   * @return the day, or empty
   * @throws InputProblem when the cell holds something else
   */
  public Optional<LocalDate> optionalDate(String column) {
    return optionalText(column).map(text -> DateText.date(text, location(column)));
  }

  /**
   * One of the constants of an enum, written in words: {@code SHELTER_AIR} as {@code shelter air}
   * or {@code shelter-air}, without regard to case.
   *
   * @param <E> the enum
   * @param column name of the column
   * @param type the enum
   * @return the constant
   * @throws InputProblem when the cell holds another word; the message lists the words
   */
  public <E extends Enum<E>> E choice(String column, Class<E> type) {
    return ChoiceText.choice(text(column), type, location(column));
  }

  /**
   * One of the constants of an enum that may be missing.
   *
   * @param <E> the enum
   * @param column name of the column
   * @param type the enum
   * @return the constant, or empty
   * @throws InputProblem when the cell holds another word
   */
  public <E extends Enum<E>> Optional<E> optionalChoice(String column, Class<E> type) {
    return optionalText(column).map(text -> ChoiceText.choice(text, type, location(column)));
  }

  /**
   * The word yes or no.
   *
   * @param column name of the column
   * @return true for yes
   * @throws InputProblem when the cell holds another word
   */
  public boolean yesOrNo(String column) {
    return ChoiceText.yesOrNo(text(column), location(column));
  }

  /**
   * The word yes or no, which may be missing.
   *
   * @param column name of the column
   * @return true for yes, or empty
   * @throws InputProblem when the cell holds another word
   */
  public Optional<Boolean> optionalYesOrNo(String column) {
    return optionalText(column).map(text -> ChoiceText.yesOrNo(text, location(column)));
  }

  @Override
  public String toString() {
    return location() + ": " + cells;
  }
}
