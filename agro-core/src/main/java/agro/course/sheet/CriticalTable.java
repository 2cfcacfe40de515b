package agro.course.sheet;

import agro.report.InputProblem;
import agro.working.Wording;
import java.util.ArrayList;
import java.util.List;

/** Values that are exceeded by chance at each level, in rows of degrees of freedom. */
final class CriticalTable {

  /** A value for a chance and degrees of freedom. */
  @FunctionalInterface
  interface Quantile {
    double at(double chance, double df);
  }

  private final List<Integer> rows;
  private final int decimals;
  private final Quantile quantile;

  CriticalTable(List<Integer> rows, int decimals, Quantile quantile) {
    this.rows = List.copyOf(rows);
    this.decimals = decimals;
    this.quantile = quantile;
  }

  /** 1 to 30, then so many. */
  static List<Integer> rows(int... further) {
    var rows = new ArrayList<Integer>();
    for (int df = 1; df <= 30; df++) {
      rows.add(df);
    }
    for (int df : further) {
      rows.add(df);
    }
    return rows;
  }

  private double entry(int df, TableLevel level) {
    return HandNumbers.rounded(quantile.at(level.chance(), df), decimals);
  }

  /** The entry, or that of the next row above when there is none for so many degrees of freedom. */
  double lookUp(int df, TableLevel level) {
    return entry(row(df), level);
  }

  int row(int df) {
    if (df < 1) {
      throw InputProblem.of(df + " degrees of freedom")
          .expected("at least 1")
          .because("without degrees of freedom nothing can be tested")
          .mend("take more doses or plots than the model has parameters");
    }
    return rows.stream().filter(row -> row <= df).reduce((one, other) -> other).orElseThrow();
  }

  TableDrawing drawing(Wording words, List<List<String>> last) {
    var heads = new ArrayList<String>();
    heads.add(words.say("critical.df"));
    for (var level : TableLevel.values()) {
      heads.add(words.quantity(level.words()));
    }
    var lines = new ArrayList<List<String>>();
    for (int df : rows) {
      var line = new ArrayList<String>();
      line.add(Integer.toString(df));
      for (var level : TableLevel.values()) {
        line.add(TableDrawing.number(words, entry(df, level), decimals));
      }
      lines.add(line);
    }
    lines.addAll(last);
    return new TableDrawing(heads, lines);
  }
}
