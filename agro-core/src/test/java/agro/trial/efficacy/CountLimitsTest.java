package agro.trial.efficacy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import agro.ReferenceTable;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class CountLimitsTest {

  static List<NamedCsvRecord> computed() {
    return ReferenceTable.read(CountLimitsTest.class, "limits.csv");
  }

  /** By SciPy and statsmodels; limits.csv, limits.py. */
  @ParameterizedTest
  @MethodSource("computed")
  void agreesWithStatsmodels(NamedCsvRecord row) {
    double x = ReferenceTable.number(row, "x");
    double m = ReferenceTable.number(row, "m");
    double y = ReferenceTable.number(row, "y");
    double n = ReferenceTable.number(row, "n");
    var kind = row.getField("kind");
    var limits =
        switch (kind) {
          case "shares" -> CountLimits.shares(x, m, y, n, 0.95);
          case "counts" -> CountLimits.poisson(x, m, y, n, 0.95);
          default -> CountLimits.poisson(m, x, n, y, 1, 0.95);
        };
    double tolerance = kind.equals("shares") ? 1e-6 : 1e-9;
    double low = ReferenceTable.number(row, "low");
    double high = ReferenceTable.number(row, "high");
    assertThat(limits.low()).isCloseTo(low, offset(tolerance * (low + 1e-3)));
    assertThat(limits.high()).isCloseTo(high, offset(tolerance * high));
    if (kind.equals("shares")) {
      assertThat(CountLimits.binomialError(x, m, y, n))
          .isCloseTo(ReferenceTable.number(row, "error"), offset(1e-9));
    }
  }

  @Test
  void nothingLeftOfTheControlIsUnbounded() {
    assertThat(CountLimits.shares(3, 20, 0, 20, 0.95).high()).isEqualTo(Double.POSITIVE_INFINITY);
    assertThat(CountLimits.poisson(3, 1, 0, 1, 0.95).high()).isEqualTo(Double.POSITIVE_INFINITY);
  }

  @Property(seed = "8")
  void sharesHoldTheirEstimate(
      @ForAll @IntRange(min = 0, max = 20) int x, @ForAll @IntRange(min = 1, max = 25) int y) {
    var limits = CountLimits.shares(x, 20, y, 25, 0.95);
    double estimate = x / 20.0 / (y / 25.0);
    assertThat(limits.low()).isBetween(0.0, estimate);
    assertThat(limits.high()).isFinite().isGreaterThanOrEqualTo(estimate).isPositive();
  }
}
