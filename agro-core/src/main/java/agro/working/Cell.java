package agro.working;

import agro.units.Numbers;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Objects;

/** One cell of a {@link ResultTable}. It keeps the value as computed; rounding happens in print. */
public sealed interface Cell permits Cell.Text, Cell.Figure, Cell.Day, Cell.NotKnown {

  /** The word for a value that is missing. */
  String NOT_KNOWN = "not known";

  /**
   * The cell as a person reads it.
   *
   * @return the printed value, on one line
   */
  String printed();

  /**
   * The cell for a comma-separated file: numbers unrounded, dates in ISO form, missing values
   * empty, text made harmless for spreadsheets; not yet quoted.
   *
   * @return the value
   */
  String forFile();

  /**
   * Whether the cell holds a number.
   *
   * @return true for {@link Figure}, which is aligned on the right
   */
  default boolean isNumber() {
    return false;
  }

  /**
   * A cell of text.
   *
   * @param value any text
   * @return the cell
   */
  static Cell text(String value) {
    return new Text(value);
  }

  /**
   * A cell with a number, in the unit of its column.
   *
   * @param value the unrounded number; NaN prints as {@link #NOT_KNOWN}
   * @param decimals decimals in print, 0 to 15
   * @return the cell
   */
  static Cell number(double value, int decimals) {
    return new Figure(value, decimals);
  }

  /**
   * A cell with a date.
   *
   * @param value the day
   * @return the cell
   */
  static Cell day(LocalDate value) {
    return new Day(value);
  }

  /**
   * A cell whose value is missing.
   *
   * @return the cell, printed as {@link #NOT_KNOWN}
   */
  static Cell notKnown() {
    return new NotKnown();
  }

  /**
   * Text.
   *
   * @param value any text; printed on one line
   */
  record Text(String value) implements Cell {
    /** Refuses null. */
    public Text {
      Objects.requireNonNull(value, "value");
    }

    @Override
    public String printed() {
      return PlainText.oneLine(value);
    }

    @Override
    public String forFile() {
      return SpreadsheetText.harmless(value);
    }
  }

  /**
   * A number in the unit of its column.
   *
   * @param value the unrounded number; NaN when missing, infinite when unbounded
   * @param decimals decimals in print, 0 to 15
   */
  record Figure(double value, int decimals) implements Cell {
    private static final int MOST_DECIMALS = 15;

    /** Refuses decimals that a double cannot fill. */
    public Figure {
      if (decimals < 0 || decimals > MOST_DECIMALS) {
        throw new IllegalArgumentException(
            "a number is printed with 0 to 15 decimals, but got " + decimals);
      }
    }

    @Override
    public String printed() {
      return Numbers.fixed(value, decimals);
    }

    @Override
    public String forFile() {
      if (Double.isNaN(value)) {
        return "";
      }
      if (Double.isInfinite(value)) {
        return printed();
      }
      var exact = BigDecimal.valueOf(value);
      return exact.signum() == 0 ? "0" : exact.stripTrailingZeros().toPlainString();
    }

    @Override
    public boolean isNumber() {
      return true;
    }
  }

  /**
   * A day of the calendar.
   *
   * @param value the day, printed as year-month-day
   */
  record Day(LocalDate value) implements Cell {
    /** Refuses null. */
    public Day {
      Objects.requireNonNull(value, "value");
    }

    @Override
    public String printed() {
      return value.toString();
    }

    @Override
    public String forFile() {
      return value.toString();
    }
  }

  /** A value that is missing; in a file the cell is empty. */
  record NotKnown() implements Cell {
    @Override
    public String printed() {
      return NOT_KNOWN;
    }

    @Override
    public String forFile() {
      return "";
    }
  }
}
