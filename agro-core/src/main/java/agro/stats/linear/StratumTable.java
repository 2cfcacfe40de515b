package agro.stats.linear;

import java.util.List;

/**
 * The analysis of variance of one stratum.
 *
 * @param name units of the stratum; "within" for the single observations
 * @param rows treatments that are tested here
 * @param residual the error of the stratum; without degrees of freedom where treatments take all
 */
public record StratumTable(String name, List<VarianceRow> rows, VarianceRow residual) {

  /** Copies the rows. */
  public StratumTable {
    rows = List.copyOf(rows);
  }

  @Override
  public String toString() {
    var text = new StringBuilder("Stratum " + name);
    rows.forEach(row -> text.append("\n  ").append(row));
    return text.append("\n  ").append(residual).toString();
  }
}
