package agro.trial.load;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.offset;
import static org.assertj.core.api.Assertions.withinPercentage;

import agro.ReferenceTable;
import agro.sampling.SamplingUnit;
import agro.sampling.injury.InjuryLevel;
import agro.sampling.injury.MoneyPerArea;
import agro.sampling.injury.MoneyPerMass;
import agro.units.MassPerArea;
import agro.units.MassPerAreaUnit;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

class LoadYieldLineTest {

  private static final SamplingUnit PLANT = SamplingUnit.of(SamplingUnit.Kind.PLANT);
  private static final LocalDate FIRST = LocalDate.of(2026, 6, 1);
  private static final double[] LOAD = {
    20, 85, 150, 210, 60, 40, 100, 170, 260, 95, 15, 70, 120, 190, 30, 55, 130, 220, 300, 105
  };
  private static final double[] YIELD = {
    51.2, 48.9, 46.1, 43.0, 50.4, 49.0, 47.7, 43.9, 40.2, 46.8, 54.0, 50.6, 49.9, 46.5, 53.1, 47.2,
    44.6, 40.1, 37.5, 45.9
  };

  /** Plots whose area over ten days is the load. */
  private static TrialLoad loads() {
    var plots = new ArrayList<PlotVisits>();
    for (int i = 0; i < LOAD.length; i++) {
      var visits = new TreeMap<LocalDate, Double>();
      visits.put(FIRST, LOAD[i] / 10);
      visits.put(FIRST.plusDays(10), LOAD[i] / 10);
      plots.add(new PlotVisits("" + i, "" + i / 5, "T" + i % 5, visits));
    }
    return PestLoad.withDefaults(PLANT).evaluate(plots);
  }

  private static Map<String, MassPerArea> yields() {
    var yields = new HashMap<String, MassPerArea>();
    for (int i = 0; i < YIELD.length; i++) {
      yields.put("" + i, MassPerArea.of(YIELD[i], MassPerAreaUnit.TONNE_PER_HECTARE));
    }
    return yields;
  }

  /** By base R; yield-line.csv, yield-line.R. */
  @Test
  void agreesWithR() {
    var within = LoadYieldLine.of(loads(), yields(), BlockRule.WITHIN_BLOCKS);
    var plain = LoadYieldLine.of(loads(), yields(), BlockRule.ACROSS_PLOTS).line();
    var line = within.line();
    double half = line.slopeHalfWidth(0.95);
    double t = line.slope() / line.slopeStandardError();
    var ours =
        Map.ofEntries(
            Map.entry("slope", line.slope()),
            Map.entry("slope_error", line.slopeStandardError()),
            Map.entry("freedom", (double) line.degreesOfFreedom()),
            Map.entry("residual_deviation", line.residualDeviation()),
            Map.entry("f", t * t),
            Map.entry("intercept", line.intercept()),
            Map.entry("intercept_error", line.interceptStandardError()),
            Map.entry("slope_low", line.slope() - half),
            Map.entry("slope_high", line.slope() + half),
            Map.entry("plain_slope", plain.slope()),
            Map.entry("plain_error", plain.slopeStandardError()),
            Map.entry("plain_freedom", (double) plain.degreesOfFreedom()));
    for (var row : ReferenceTable.read(LoadYieldLineTest.class, "yield-line.csv")) {
      assertThat(ours.get(row.getField("quantity")))
          .as(row.getField("quantity"))
          .isCloseTo(ReferenceTable.number(row, "value"), withinPercentage(1e-7));
    }
    assertThat(within.blocks()).isEqualTo(4);
    assertThat(within.statement()).startsWith("F = ").endsWith("; df = 1, 15; P < 0.001");
    assertThat(within.presentation().toText())
        .contains("blocks as a factor", "Plots:")
        .doesNotContain("NaN");
  }

  @Test
  void theLineFeedsTheInjuryLevel() {
    var line = LoadYieldLine.of(loads(), yields(), BlockRule.WITHIN_BLOCKS);
    var loss = line.yieldLoss();
    var level =
        InjuryLevel.of(
            MoneyPerArea.perHectare(84, "EUR"),
            loss.at(MoneyPerMass.perTonne(400, "EUR")),
            0.8,
            loss.measure());
    assertThat(level.level())
        .isCloseTo(84 / (400 * -line.line().slope() * 0.8), withinPercentage(1e-9));
    assertThat(loss.presentation().toText()).containsPattern("Residual degrees of freedom: +15");
    var relative = PestLoad.withDefaults(PLANT).withRelativeTo(100);
    var visits = loads().plots().stream().map(LoadYieldLineTest::visits).toList();
    var shares = LoadYieldLine.of(relative.evaluate(visits), yields(), BlockRule.WITHIN_BLOCKS);
    assertThatThrownBy(shares::yieldLoss).hasMessageContaining("numbers of pests");
  }

  private static PlotVisits visits(PlotLoad load) {
    var means = new TreeMap<LocalDate, Double>();
    load.insectDays()
        .curve()
        .points()
        .forEach(p -> means.put(FIRST.plusDays(Math.round(p.day())), p.value()));
    return new PlotVisits(load.plot(), load.block(), load.treatment(), means);
  }

  @Test
  void tooFewOrEqualPlotsAreRefused() {
    var few = new HashMap<String, MassPerArea>();
    for (int i = 0; i < 3; i++) {
      few.put("" + 5 * i, MassPerArea.of(50, MassPerAreaUnit.TONNE_PER_HECTARE));
    }
    assertThatThrownBy(() -> LoadYieldLine.of(loads(), few, BlockRule.WITHIN_BLOCKS))
        .hasMessageContaining("3 plots in 3 blocks");
    assertThatThrownBy(() -> LoadYieldLine.of(loads(), Map.of(), BlockRule.ACROSS_PLOTS))
        .hasMessageContaining("0 plots");
    assertThat(LoadYieldLine.of(loads(), few, BlockRule.ACROSS_PLOTS).points()).hasSize(3);
    assertThat(List.of(BlockRule.values())).hasSize(2);
  }

  @Test
  void scalingTheYieldScalesTheSlope() {
    var twice = new HashMap<String, MassPerArea>();
    yields()
        .forEach(
            (plot, yield) ->
                twice.put(
                    plot,
                    MassPerArea.of(
                        2 * yield.in(MassPerAreaUnit.TONNE_PER_HECTARE),
                        MassPerAreaUnit.TONNE_PER_HECTARE)));
    double once = LoadYieldLine.of(loads(), yields(), BlockRule.WITHIN_BLOCKS).line().slope();
    assertThat(LoadYieldLine.of(loads(), twice, BlockRule.WITHIN_BLOCKS).line().slope())
        .isCloseTo(2 * once, offset(1e-12));
  }
}
