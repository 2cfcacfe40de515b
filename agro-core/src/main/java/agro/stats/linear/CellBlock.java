package agro.stats.linear;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Columns of a term by the cells that were observed: of a nested factor, coded within each outer
 * cell, or of an interaction none of whose margins is in the model, coded over all its cells.
 */
final class CellBlock implements TermBlock {

  private final List<Factor> factors;
  private final int[] cellOf;
  private final List<int[]> cells;
  private final double[][] codes;
  private final int[] groupOf;
  private final int groups;
  private final List<String> names;

  CellBlock(ModelTerm term, ContrastCoding coding) {
    this.factors = term.allFactors();
    int outer = term.within().size();
    var places = new TreeMap<int[], Integer>(Arrays::compare);
    int n = term.size();
    for (int i = 0; i < n; i++) {
      places.putIfAbsent(levels(i), 0);
    }
    this.cells = new ArrayList<>(places.keySet());
    for (int c = 0; c < cells.size(); c++) {
      places.put(cells.get(c), c);
    }
    this.cellOf = new int[n];
    for (int i = 0; i < n; i++) {
      cellOf[i] = places.get(levels(i));
    }
    this.groupOf = new int[cells.size()];
    int group = 0;
    for (int c = 1; c < cells.size(); c++) {
      boolean same = Arrays.equals(cells.get(c), 0, outer, cells.get(c - 1), 0, outer);
      group += same ? 0 : 1;
      groupOf[c] = group;
    }
    this.groups = group + 1;
    int width = cells.size() - groups;
    this.codes = new double[cells.size()][width];
    this.names = code(coding);
  }

  private List<String> code(ContrastCoding coding) {
    var labels = new ArrayList<String>();
    int start = 0;
    int column = 0;
    for (int g = 0; g < groups; g++) {
      int end = start;
      while (end < cells.size() && groupOf[end] == g) {
        end++;
      }
      double[][] code = coding.codes(end - start);
      for (int c = start; c < end; c++) {
        System.arraycopy(code[c - start], 0, codes[c], column, end - start - 1);
      }
      for (int k = 0; k < end - start - 1; k++) {
        labels.add(label(start + coding.labelledBy(k)));
      }
      column += end - start - 1;
      start = end;
    }
    return List.copyOf(labels);
  }

  private String label(int cell) {
    var text = new StringBuilder();
    for (int f = 0; f < factors.size(); f++) {
      text.append(f == 0 ? "" : ":")
          .append(factors.get(f).name())
          .append('[')
          .append(factors.get(f).levels().get(cells.get(cell)[f]))
          .append(']');
    }
    return text.toString();
  }

  private int[] levels(int observation) {
    int[] levels = new int[factors.size()];
    for (int f = 0; f < levels.length; f++) {
      levels[f] = factors.get(f).code(observation);
    }
    return levels;
  }

  @Override
  public List<String> names() {
    return names;
  }

  @Override
  public int cells() {
    return cells.size();
  }

  @Override
  public double[] row(int observation) {
    return codes[cellOf[observation]];
  }

  @Override
  public double[] meanRow(Map<Factor, Integer> held, MeanWeights weights) {
    double[] weight = new double[cells.size()];
    if (weights == MeanWeights.EQUAL) {
      weighEqually(held, weight);
    } else {
      for (int cell : cellOf) {
        weight[cell] += matches(cell, held) ? 1 : 0;
      }
    }
    double total = Arrays.stream(weight).sum();
    double[] mean = new double[names.size()];
    for (int c = 0; c < weight.length; c++) {
      for (int k = 0; k < mean.length; k++) {
        mean[k] += weight[c] * codes[c][k];
      }
    }
    for (int k = 0; k < mean.length; k++) {
      double exact = Math.abs(mean[k]) < 1e-13 * total ? 0 : mean[k];
      mean[k] = total > 0 ? exact / total : Double.NaN;
    }
    return mean;
  }

  private void weighEqually(Map<Factor, Integer> held, double[] weight) {
    int[] matching = new int[groups];
    for (int c = 0; c < weight.length; c++) {
      matching[groupOf[c]] += matches(c, held) ? 1 : 0;
    }
    for (int c = 0; c < weight.length; c++) {
      weight[c] = matches(c, held) ? 1.0 / matching[groupOf[c]] : 0;
    }
  }

  private boolean matches(int cell, Map<Factor, Integer> held) {
    for (int f = 0; f < factors.size(); f++) {
      Integer level = held.get(factors.get(f));
      if (level != null && level != cells.get(cell)[f]) {
        return false;
      }
    }
    return true;
  }
}
