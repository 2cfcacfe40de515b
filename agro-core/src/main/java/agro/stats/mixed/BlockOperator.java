package agro.stats.mixed;

import java.util.ArrayList;
import java.util.List;

/**
 * A symmetric matrix that is zero but for blocks on its diagonal, observations of one block lying
 * anywhere. Blocks without values consist of ones.
 */
final class BlockOperator {

  private final List<int[]> groups;
  private final List<double[][]> values;

  private BlockOperator(List<int[]> groups, List<double[][]> values) {
    this.groups = groups;
    this.values = values;
  }

  /** Ones where two observations have the same level. */
  static BlockOperator sameLevel(int[] codes, int levels) {
    return new BlockOperator(groups(codes, levels), List.of());
  }

  static BlockOperator identity(int n) {
    int[] own = new int[n];
    for (int i = 0; i < n; i++) {
      own[i] = i;
    }
    return sameLevel(own, n);
  }

  static BlockOperator of(List<int[]> groups, List<double[][]> values) {
    return new BlockOperator(groups, values);
  }

  static List<int[]> groups(int[] codes, int levels) {
    var lists = new ArrayList<List<Integer>>();
    for (int level = 0; level < levels; level++) {
      lists.add(new ArrayList<>());
    }
    for (int i = 0; i < codes.length; i++) {
      lists.get(codes[i]).add(i);
    }
    return lists.stream().map(list -> list.stream().mapToInt(Integer::intValue).toArray()).toList();
  }

  private boolean ofOnes() {
    return values.isEmpty();
  }

  /** Adds a multiple of this matrix to another one. */
  void addTo(double[][] target, double scale) {
    for (int g = 0; g < groups.size(); g++) {
      int[] group = groups.get(g);
      for (int i = 0; i < group.length; i++) {
        for (int j = 0; j < group.length; j++) {
          target[group[i]][group[j]] += scale * (ofOnes() ? 1 : values.get(g)[i][j]);
        }
      }
    }
  }

  /** The product of a row vector with this matrix. */
  double[] times(double[] vector) {
    double[] product = new double[vector.length];
    for (int g = 0; g < groups.size(); g++) {
      int[] group = groups.get(g);
      if (ofOnes()) {
        double sum = 0;
        for (int i : group) {
          sum += vector[i];
        }
        for (int i : group) {
          product[i] = sum;
        }
      } else {
        double[][] block = values.get(g);
        for (int j = 0; j < group.length; j++) {
          double sum = 0;
          for (int i = 0; i < group.length; i++) {
            sum += vector[group[i]] * block[i][j];
          }
          product[group[j]] = sum;
        }
      }
    }
    return product;
  }

  /** The product of a matrix with this one, row by row. */
  double[][] leftTimes(double[][] matrix) {
    double[][] product = new double[matrix.length][];
    for (int i = 0; i < matrix.length; i++) {
      product[i] = times(matrix[i]);
    }
    return product;
  }
}
