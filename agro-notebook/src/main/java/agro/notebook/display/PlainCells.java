package agro.notebook.display;

import agro.working.Cell;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.regex.Pattern;

/**
 * Cells for values that say nothing about their own layout: numbers are printed with five
 * significant digits and at most six decimals, days as days, nothing as "not known", everything
 * else in its own words.
 */
public final class PlainCells {

  private static final MathContext DIGITS = new MathContext(5, RoundingMode.HALF_EVEN);
  private static final int DECIMALS = 6;
  private static final int CHARACTERS = 500;
  private static final long EXACT = 1L << 53;
  private static final Pattern DIGITS_ALONE = Pattern.compile("-?\\d+(\\.\\d+)?(E[-+]?\\d+)?");

  private PlainCells() {}

  /**
   * The cell of a value.
   *
   * @param value any value, also null
   * @return the cell; never throws, whatever the value's toString does
   */
  public static Cell of(Object value) {
    if (value == null) {
      return Cell.notKnown();
    }
    if (value instanceof Optional<?> optional) {
      return optional.map(PlainCells::of).orElse(Cell.notKnown());
    }
    if (value instanceof Double || value instanceof Float) {
      var number = ((Number) value).doubleValue();
      return Cell.number(number, decimals(number));
    }
    if (value instanceof Long || value instanceof Integer || isSmall(value)) {
      return whole(((Number) value).longValue());
    }
    if (value instanceof OptionalDouble number) {
      return number.isPresent() ? of(number.getAsDouble()) : Cell.notKnown();
    }
    if (value instanceof OptionalInt number) {
      return number.isPresent() ? of(number.getAsInt()) : Cell.notKnown();
    }
    if (value instanceof OptionalLong number) {
      return number.isPresent() ? of(number.getAsLong()) : Cell.notKnown();
    }
    return value instanceof LocalDate day
        ? Cell.day(day)
        : Cell.text(PlainText.brief(value, CHARACTERS));
  }

  private static boolean isSmall(Object value) {
    return value instanceof Short || value instanceof Byte;
  }

  /** A whole number that a double cannot hold keeps all its digits as text. */
  private static Cell whole(long number) {
    return -EXACT <= number && number <= EXACT
        ? Cell.number((double) number, 0)
        : Cell.text(Long.toString(number));
  }

  /** Whether a cell holds a number, also one that only text holds exactly. */
  static boolean isNumber(Cell cell) {
    return cell.isNumber()
        || (cell instanceof Cell.Text text && DIGITS_ALONE.matcher(text.value()).matches());
  }

  private static int decimals(double number) {
    if (!Double.isFinite(number)) {
      return 0;
    }
    var rounded =
        BigDecimal.valueOf(number)
            .round(DIGITS)
            .setScale(DECIMALS, RoundingMode.HALF_EVEN)
            .stripTrailingZeros();
    return Math.max(0, rounded.scale());
  }

  /**
   * Gives all numbers of a column the decimals of its longest one.
   *
   * @param rows rows of equal length, possibly none
   * @return new rows
   */
  public static List<List<Cell>> evenDecimals(List<List<Cell>> rows) {
    var most = new int[rows.isEmpty() ? 0 : rows.get(0).size()];
    for (var row : rows) {
      for (var index = 0; index < most.length; index++) {
        if (row.get(index) instanceof Cell.Figure figure) {
          most[index] = Math.max(most[index], figure.decimals());
        }
      }
    }
    var even = new ArrayList<List<Cell>>();
    for (var row : rows) {
      var cells = new ArrayList<Cell>();
      for (var index = 0; index < most.length; index++) {
        var cell = row.get(index);
        cells.add(
            cell instanceof Cell.Figure figure ? Cell.number(figure.value(), most[index]) : cell);
      }
      even.add(cells);
    }
    return even;
  }
}
