package agro.trial.layout;

/**
 * The Markov chain of Jacobson and Matthews (1996) on Latin squares, seen as cubes of zeros and
 * ones with a single one on each line; on the way a cube may have one cell of minus one.
 */
final class LatinSquareChain {

  private final int order;
  private final SeededDraws draws;
  private final int[][][] cube;

  LatinSquareChain(int order, SeededDraws draws) {
    this.order = order;
    this.draws = draws;
    this.cube = new int[order][order][order];
    for (int row = 0; row < order; row++) {
      for (int column = 0; column < order; column++) {
        cube[row][column][(row + column) % order] = 1;
      }
    }
  }

  /** The square after a number of proper squares. */
  int[][] walk(int properSquares) {
    for (int i = 0; i < properSquares; i++) {
      toNextProper();
    }
    var square = new int[order][order];
    for (int row = 0; row < order; row++) {
      for (int column = 0; column < order; column++) {
        square[row][column] = oneAlongSymbols(row, column);
      }
    }
    return square;
  }

  private void toNextProper() {
    int row;
    int column;
    int symbol;
    do {
      row = draws.below(order);
      column = draws.below(order);
      symbol = draws.below(order);
    } while (cube[row][column][symbol] != 0);
    while (true) {
      int otherRow = oneAlongRows(column, symbol);
      int otherColumn = oneAlongColumns(row, symbol);
      int otherSymbol = oneAlongSymbols(row, column);
      cube[row][column][symbol]++;
      cube[row][otherColumn][otherSymbol]++;
      cube[otherRow][column][otherSymbol]++;
      cube[otherRow][otherColumn][symbol]++;
      cube[otherRow][column][symbol]--;
      cube[row][otherColumn][symbol]--;
      cube[row][column][otherSymbol]--;
      cube[otherRow][otherColumn][otherSymbol]--;
      if (cube[otherRow][otherColumn][otherSymbol] == 0) {
        return;
      }
      row = otherRow;
      column = otherColumn;
      symbol = otherSymbol;
    }
  }

  private int oneAlongRows(int column, int symbol) {
    int found = -1;
    int seen = 0;
    for (int row = 0; row < order; row++) {
      if (cube[row][column][symbol] == 1 && draws.below(++seen) == 0) {
        found = row;
      }
    }
    return found;
  }

  private int oneAlongColumns(int row, int symbol) {
    int found = -1;
    int seen = 0;
    for (int column = 0; column < order; column++) {
      if (cube[row][column][symbol] == 1 && draws.below(++seen) == 0) {
        found = column;
      }
    }
    return found;
  }

  private int oneAlongSymbols(int row, int column) {
    int found = -1;
    int seen = 0;
    for (int symbol = 0; symbol < order; symbol++) {
      if (cube[row][column][symbol] == 1 && draws.below(++seen) == 0) {
        found = symbol;
      }
    }
    return found;
  }
}
