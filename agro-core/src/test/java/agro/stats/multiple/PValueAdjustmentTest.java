package agro.stats.multiple;

import static agro.ReferenceTable.number;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import agro.ReferenceTable;
import agro.report.InputProblem;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Collectors;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

/** Adjusted p-values against base R and their rules. */
class PValueAdjustmentTest {

  private static final Map<PValueAdjustment, String> COLUMNS =
      Map.of(
          PValueAdjustment.BONFERRONI, "bonferroni",
          PValueAdjustment.HOLM, "holm",
          PValueAdjustment.HOCHBERG, "hochberg",
          PValueAdjustment.BENJAMINI_HOCHBERG, "benjaminiHochberg");

  @Test
  void familiesAdjustedByBaseR() {
    Map<String, List<NamedCsvRecord>> families =
        ReferenceTable.read(PValueAdjustmentTest.class, "p-adjust.csv").stream()
            .collect(Collectors.groupingBy(line -> line.getField("family")));
    assertThat(families).hasSize(5);
    for (var family : families.values()) {
      double[] p = family.stream().mapToDouble(line -> number(line, "p")).toArray();
      COLUMNS.forEach(
          (adjustment, column) -> {
            double[] adjusted = adjustment.adjust(p);
            for (int each = 0; each < p.length; each++) {
              double expected = number(family.get(each), column);
              assertThat(adjusted[each]).isCloseTo(expected, within(1e-14 * expected));
            }
          });
    }
  }

  @Property(seed = "8", tries = 100)
  void orderIsKeptAndDoesNotMatter(
      @ForAll @Size(min = 1, max = 12) List<@DoubleRange(min = 0, max = 1) Double> values,
      @ForAll PValueAdjustment adjustment,
      @ForAll long seed) {
    var order = new ArrayList<Integer>();
    for (int each = 0; each < values.size(); each++) {
      order.add(each);
    }
    Collections.shuffle(order, new Random(seed));
    double[] p = values.stream().mapToDouble(Double::doubleValue).toArray();
    double[] shuffled = order.stream().mapToDouble(values::get).toArray();
    double[] adjusted = adjustment.adjust(p);
    double[] other = adjustment.adjust(shuffled);
    for (int each = 0; each < p.length; each++) {
      assertThat(other[each]).isEqualTo(adjusted[order.get(each)]);
      assertThat(adjusted[each]).isBetween(p[each] * (1 - 1e-14), 1.0);
      for (int next = 0; next < p.length; next++) {
        if (p[each] <= p[next]) {
          assertThat(adjusted[each]).isLessThanOrEqualTo(adjusted[next]);
        }
      }
    }
  }

  @Test
  void sidakKeepsSmallValues() {
    assertThat(PValueAdjustment.SIDAK.adjust(0.05, 0.3)[0]).isCloseTo(0.0975, within(1e-15));
    assertThat(PValueAdjustment.SIDAK.adjust(1e-20, 1)[0]).isCloseTo(2e-20, within(1e-32));
    assertThat(PValueAdjustment.SIDAK.adjust(1e-20, 1)[1]).isEqualTo(1);
  }

  @Test
  void noTestsNoValues() {
    for (var adjustment : PValueAdjustment.values()) {
      assertThat(adjustment.adjust()).isEmpty();
    }
  }

  @Test
  void badValuesAreRefused() {
    assertThatThrownBy(() -> PValueAdjustment.HOLM.adjust(0.2, Double.NaN))
        .isInstanceOf(InputProblem.class);
    assertThatThrownBy(() -> PValueAdjustment.HOLM.adjust(1.5)).hasMessageContaining("1.5");
  }
}
