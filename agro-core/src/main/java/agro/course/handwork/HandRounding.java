package agro.course.handwork;

import agro.course.sheet.HandNumbers;

/**
 * To how many decimals a calculation by hand is carried. A hand result differs from the computed
 * one by these roundings too, not by too few cycles alone.
 */
public enum HandRounding {
  /** Nothing is rounded, as with a calculator whose memory is used throughout. */
  EXACT(Column.UNROUNDED),
  /** Four decimals throughout, expected probits interpolated in the tables. */
  FOUR_DECIMALS(new Column(4, 2, 4, 4, 4, 4, 4, 4, 4)),
  /**
   * As in textbooks with short tables: logarithms and probits with two decimals, whole per cent,
   * expected probits with one decimal, so that weights are read without interpolation.
   */
  TEXTBOOK(new Column(2, 0, 2, 1, 4, 3, 1, 2, 4));

  /** Decimals of each kind of number; 15 where nothing is rounded. */
  private record Column(
      int logDose,
      int percent,
      int probit,
      int expected,
      int table,
      int weight,
      int total,
      int working,
      int result) {
    static final Column UNROUNDED = new Column(15, 15, 15, 15, 15, 15, 15, 15, 15);
  }

  private static final int UNROUNDED = 15;

  private final Column column;

  HandRounding(Column column) {
    this.column = column;
  }

  double logDose(double value) {
    return round(value, column.logDose);
  }

  double probit(double value) {
    return round(value, column.probit);
  }

  double expected(double value) {
    return round(value, column.expected);
  }

  double table(double value) {
    return round(value, column.table);
  }

  double weight(double value) {
    return round(value, column.weight);
  }

  double total(double value) {
    return round(value, column.total);
  }

  double working(double value) {
    return round(value, column.working);
  }

  double result(double value) {
    return round(value, column.result);
  }

  /**
   * Per cent as written down. Where rounding would make none or all of a part, as many decimals are
   * kept as it takes.
   */
  double percent(double value) {
    double rounded = round(value, column.percent);
    int decimals = column.percent;
    while (value > 0 && value < 100 && (rounded <= 0 || rounded >= 100) && decimals < UNROUNDED) {
      decimals++;
      rounded = round(value, decimals);
    }
    return rounded;
  }

  /**
   * Decimals in print, for a column that is rounded to so many or to none.
   *
   * @param kept decimals kept in the calculation
   * @param shown decimals shown where nothing is rounded
   */
  private static int print(int kept, int shown) {
    return kept == UNROUNDED ? shown : kept;
  }

  int logDosePrint() {
    return print(column.logDose, 4);
  }

  int percentPrint() {
    return print(column.percent, 2);
  }

  int probitPrint() {
    return print(column.probit, 4);
  }

  int expectedPrint() {
    return print(column.expected, 4);
  }

  int tablePrint() {
    return print(column.table, 4);
  }

  int weightPrint() {
    return print(column.weight, 4);
  }

  int totalPrint() {
    return print(column.total, 3);
  }

  int workingPrint() {
    return print(column.working, 4);
  }

  int resultPrint() {
    return print(column.result, 4);
  }

  private static double round(double value, int decimals) {
    return decimals == UNROUNDED ? value : HandNumbers.rounded(value, decimals);
  }
}
