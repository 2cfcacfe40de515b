package agro.trial.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Latin squares drawn at random from all squares of their order. Up to order 6 each square has
 * exactly the same chance: a reduced square is drawn from the list of all of them, then columns and
 * lower rows are shuffled. From order 7 on the chain of Jacobson and Matthews (1996) runs for
 * order³ proper squares, whose limit gives each square the same chance, before rows, columns and
 * symbols are shuffled.
 */
final class RandomLatinSquare {

  private static final int LISTED = 6;

  private RandomLatinSquare() {}

  /** Rows of symbols from 0 to below the order. */
  static List<List<Integer>> draw(int order, SeededDraws draws) {
    if (order <= LISTED) {
      var all = reduced(order);
      var square = all.get(draws.below(all.size()));
      var columns = draws.shuffled(numbers(order));
      var rows = new ArrayList<Integer>();
      rows.add(0);
      rows.addAll(draws.shuffled(numbers(order).subList(1, order)));
      return permuted(square, rows, columns, numbers(order));
    }
    var square = new LatinSquareChain(order, draws).walk(order * order * order);
    return permuted(
        square,
        draws.shuffled(numbers(order)),
        draws.shuffled(numbers(order)),
        draws.shuffled(numbers(order)));
  }

  /** All squares whose first row and first column are in order. */
  static List<int[][]> reduced(int order) {
    var all = new ArrayList<int[][]>();
    var square = new int[order][order];
    for (int i = 0; i < order; i++) {
      square[0][i] = i;
      square[i][0] = i;
    }
    complete(square, order, all);
    return all;
  }

  private static void complete(int[][] square, int cell, List<int[][]> all) {
    int order = square.length;
    int row = cell / order;
    int column = cell % order;
    if (row == order) {
      all.add(copy(square));
    } else if (row == 0 || column == 0) {
      complete(square, cell + 1, all);
    } else {
      for (int symbol = 0; symbol < order; symbol++) {
        if (fits(square, row, column, symbol)) {
          square[row][column] = symbol;
          complete(square, cell + 1, all);
        }
      }
    }
  }

  private static boolean fits(int[][] square, int row, int column, int symbol) {
    for (int i = 0; i < column; i++) {
      if (square[row][i] == symbol) {
        return false;
      }
    }
    for (int i = 0; i < row; i++) {
      if (square[i][column] == symbol) {
        return false;
      }
    }
    return true;
  }

  private static int[][] copy(int[][] square) {
    var copy = new int[square.length][];
    for (int i = 0; i < square.length; i++) {
      copy[i] = square[i].clone();
    }
    return copy;
  }

  private static List<List<Integer>> permuted(
      int[][] square, List<Integer> rows, List<Integer> columns, List<Integer> symbols) {
    return rows.stream()
        .map(row -> columns.stream().map(column -> symbols.get(square[row][column])).toList())
        .toList();
  }

  private static List<Integer> numbers(int order) {
    return IntStream.range(0, order).boxed().toList();
  }
}
