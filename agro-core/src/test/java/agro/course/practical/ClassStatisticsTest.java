package agro.course.practical;

import static agro.ReferenceTable.number;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.offset;
import static org.assertj.core.api.Assertions.withinPercentage;

import agro.ReferenceTable;
import agro.report.InputProblem;
import agro.units.VolumePerArea;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

class ClassStatisticsTest {

  private static final double TOLERANCE_PERCENT = 1e-7;

  @Test
  void agreesWithBaseR() {
    var lines = ReferenceTable.read(ClassStatisticsTest.class, "pooled-statistics.csv");
    assertThat(lines).hasSize(6);
    for (var line : lines) {
      var found = statistics(values(line.getField("values")));
      var what = line.getField("set");
      assertThat(found.mean().litresPerHectare())
          .as(what)
          .isCloseTo(number(line, "mean"), withinPercentage(TOLERANCE_PERCENT));
      assertThat(found.standardDeviation().orElseThrow().litresPerHectare())
          .as(what)
          .isCloseTo(number(line, "sd"), withinPercentage(TOLERANCE_PERCENT));
      var interval = found.interval().orElseThrow();
      assertThat(interval.low().litresPerHectare())
          .as(what)
          .isCloseTo(number(line, "low"), offset(1e-8));
      assertThat(interval.high().litresPerHectare())
          .as(what)
          .isCloseTo(number(line, "high"), withinPercentage(TOLERANCE_PERCENT));
      assertThat(found.median().litresPerHectare()).isEqualTo(number(line, "median"));
      assertThat(found.medianDeviation().litresPerHectare())
          .as(what)
          .isCloseTo(number(line, "mad"), offset(1e-9));
    }
  }

  @Test
  void scoresAgreeWithBaseRWhereTheRuleIsUsed() {
    int compared = 0;
    for (var line : ReferenceTable.read(ClassStatisticsTest.class, "pooled-statistics.csv")) {
      var volumes = values(line.getField("values"));
      var found = statistics(volumes);
      var scores = values(line.getField("scores"));
      for (int i = 0; i < volumes.length; i++) {
        var score = found.modifiedScore(new VolumePerArea(volumes[i]));
        boolean used = volumes.length >= ClassStatistics.LEAST_FOR_OUTLIERS && scores.length > 0;
        assertThat(score.isPresent()).as(line.getField("set")).isEqualTo(used);
        if (used) {
          assertThat(score.getAsDouble()).isCloseTo(scores[i], offset(1e-9));
          compared++;
        }
      }
    }
    assertThat(compared).isEqualTo(6 + 7 + 13);
  }

  @Test
  void oneGroupHasNoSpread() {
    var one = statistics(300);
    assertThat(one.standardDeviation()).isEmpty();
    assertThat(one.interval()).isEmpty();
    assertThat(one.coefficientOfVariation()).isEmpty();
    assertThat(one.median().litresPerHectare()).isEqualTo(300);
  }

  @Test
  void noGroupIsRefused() {
    assertThatThrownBy(() -> ClassStatistics.of(List.of(), 0.95))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("no group")
        .hasMessageContaining("fill in");
  }

  private static ClassStatistics statistics(double... litresPerHectare) {
    return ClassStatistics.of(
        Arrays.stream(litresPerHectare).mapToObj(VolumePerArea::new).toList(), 0.95);
  }

  private static double[] values(String cell) {
    return cell.isEmpty()
        ? new double[0]
        : Arrays.stream(cell.split(";", -1)).mapToDouble(Double::parseDouble).toArray();
  }
}
