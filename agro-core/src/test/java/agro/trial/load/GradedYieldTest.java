package agro.trial.load;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.offset;
import static org.assertj.core.api.Assertions.withinPercentage;

import agro.ReferenceTable;
import agro.report.InputProblem;
import agro.sampling.injury.MoneyPerArea;
import agro.trial.FieldTrial;
import agro.trial.PlotColumns;
import agro.trial.TrialResponse;
import agro.units.Area;
import agro.units.AreaUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class GradedYieldTest {

  private static final double[] CONTROL = {11900, 12400, 11100, 12950, 12050};
  private static final double[] TREATED = {13100, 13350, 12600, 13500, 13400};
  private static final Area TEN = Area.of(10, AreaUnit.SQUARE_METRE);
  private static final List<GradePrice> PRICES =
      List.of(
          GradePrice.perKilogram("first", 0.5, "EUR"), GradePrice.perPiece("second", 0.2, "EUR"));

  /** Plots of ten square metres whose value for a hectare is as given. */
  private static List<GradedPlot> plots(boolean blocks) {
    var plots = new ArrayList<GradedPlot>();
    for (int i = 0; i < CONTROL.length; i++) {
      var block = blocks ? "" + i : "";
      plots.add(new GradedPlot("c" + i, block, "none", TEN, amounts(CONTROL[i])));
      plots.add(new GradedPlot("t" + i, block, "spray", TEN, amounts(TREATED[i])));
    }
    return plots;
  }

  private static Map<String, Double> amounts(double perHectare) {
    return Map.of("first", (perHectare / 1000 - 1) / 0.5, "second", 5.0);
  }

  /** By base R; gains.csv, gains.R. */
  @Test
  void gainsAgreeWithR() {
    var settings =
        GradedYield.of("none", PRICES).withCost("spray", MoneyPerArea.perHectare(160, "EUR"));
    for (var row : ReferenceTable.read(GradedYieldTest.class, "gains.csv")) {
      var value = settings.evaluate(plots(row.getField("case").equals("blocks")));
      var spray = value.treatment("spray");
      var limits = spray.netLimits().orElseThrow();
      assertThat(spray.netGain())
          .isCloseTo(ReferenceTable.number(row, "net"), withinPercentage(1e-7));
      assertThat(limits.low()).isCloseTo(ReferenceTable.number(row, "low"), withinPercentage(1e-7));
      assertThat(limits.high())
          .isCloseTo(ReferenceTable.number(row, "high"), withinPercentage(1e-7));
      assertThat(spray.breakEvenCost()).isCloseTo(1110, offset(1e-6));
      assertThat(spray.breakEvenPrice().orElseThrow()).isCloseTo(160 / 1110.0, offset(1e-9));
      assertThat(value.presentation().toText()).contains("EUR/ha", "0.5 EUR/kg");
    }
  }

  @Test
  void aLossStaysALoss() {
    var settings =
        GradedYield.of("spray", PRICES).withCost("none", MoneyPerArea.perHectare(10, "EUR"));
    var none = settings.evaluate(plots(true)).treatment("none");
    assertThat(none.netGain()).isCloseTo(-1120, offset(1e-6));
    assertThat(none.breakEvenPrice()).isEmpty();
    assertThat(none.breakEvenCost()).isNegative();
  }

  @Test
  void oneBlockHasNoLimits() {
    var value = GradedYield.of("none", PRICES).evaluate(plots(true).subList(0, 2));
    assertThat(value.treatment("spray").netLimits()).isEmpty();
    assertThat(value.table().toText()).contains("no scatter").doesNotContain("NaN");
  }

  @Test
  void badInputIsRefused() {
    var settings = GradedYield.of("none", PRICES);
    assertThatThrownBy(() -> settings.evaluate(plots(true).subList(0, 1)))
        .hasMessageContaining("at least one treatment");
    assertThatThrownBy(
            () ->
                settings.withCost("spary", MoneyPerArea.perHectare(1, "EUR")).evaluate(plots(true)))
        .hasMessageContaining("spary");
    assertThatThrownBy(() -> settings.withCost("spray", MoneyPerArea.perHectare(1, "USD")))
        .hasMessageContaining("one currency");
    var third = new GradedPlot("x", "0", "spray", TEN, Map.of("third", 1.0));
    var more = new ArrayList<>(plots(true));
    more.add(third);
    assertThatThrownBy(() -> settings.evaluate(more)).hasMessageContaining("without a price");
    assertThatThrownBy(() -> GradePrice.perPiece("x", -1, "EUR")).isInstanceOf(InputProblem.class);
    assertThatThrownBy(() -> GradePrice.perPiece("x", 1, "euro")).isInstanceOf(InputProblem.class);
    assertThatThrownBy(() -> GradedYield.of("none", List.of())).isInstanceOf(InputProblem.class);
  }

  @Test
  void aTrialGivesItsGrades() {
    var columns =
        PlotColumns.withDefaults()
            .withResponse(TrialResponse.measure("first_kg", "kg"))
            .withResponse(TrialResponse.count("second_heads"));
    var text =
        """
        plot,block,treatment,area,first_kg,second_heads
        1,1,none,10,20,5
        2,1,spray,20,60,4
        """;
    var grades = Map.of("first", "first_kg", "second", "second_heads");
    var plots = GradedPlot.of(FieldTrial.parse("harvest", text, columns), grades);
    var value = GradedYield.of("none", PRICES).evaluate(plots);
    assertThat(value.treatment("none").gross()).isCloseTo(11000, offset(1e-6));
    assertThat(value.treatment("spray").gross()).isCloseTo(15400, offset(1e-6));
    var lacking = FieldTrial.parse("harvest", text.replace("60,4", "60,"), columns);
    assertThatThrownBy(() -> GradedPlot.of(lacking, grades)).hasMessageContaining("alone");
  }
}
