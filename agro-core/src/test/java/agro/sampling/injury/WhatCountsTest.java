package agro.sampling.injury;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.offset;

import agro.report.InputProblem;
import agro.sampling.CountSample;
import agro.sampling.SamplingUnit;
import agro.sampling.injury.CropStageThresholds.StageRange;
import agro.sampling.injury.StageCounts.Stage;
import agro.sampling.injury.StratifiedMean.Stratum;
import agro.source.Reference;
import java.util.List;
import java.util.Map;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class WhatCountsTest {

  private static final SamplingUnit PLANT = SamplingUnit.of(SamplingUnit.Kind.PLANT);
  private static final SamplingUnit LEAF = SamplingUnit.of(SamplingUnit.Kind.LEAF);
  private static final CountSample EDGE = CountSample.of("edge", PLANT, 8, 3, 5, 0, 9, 11);
  private static final CountSample MIDDLE = CountSample.of("middle", PLANT, 1, 0, 2, 0, 0, 3, 1, 1);

  /** Cochran 1977, chapter 5 (from memory); values by base R 4.2.2 in yield-loss.R. */
  @Test
  void partsWeighBySize() {
    var field =
        StratifiedMean.of(
            Stratum.ofUnits("edge", 120, EDGE), Stratum.ofUnits("middle", 680, MIDDLE));
    assertThat(field.density().mean()).isCloseTo(1.75, offset(1e-12));
    assertThat(field.density().standardError()).isCloseTo(0.402305853798, offset(1e-11));
    assertThat(field.bestAllocation(20).get(0)).isCloseTo(8.0710852622, offset(1e-9));
    assertThat(field.presentation().toText())
        .contains("The plain mean of all counts would be 3.143");
    var shares =
        StratifiedMean.of(
            Stratum.ofSize("edge", 0.15, EDGE), Stratum.ofSize("middle", 0.85, MIDDLE));
    assertThat(shares.density().standardError()).isCloseTo(0.407693862738, offset(1e-11));
  }

  /** Ratio estimate with its error, values by base R 4.2.2 in yield-loss.R. */
  @Test
  void parasitisedAnimalsDoNotCount() {
    var pests =
        new LivePests(
            CountSample.of("plot", PLANT, 4, 0, 7, 2, 9, 3),
            CountSample.of("plot", PLANT, 1, 0, 3, 0, 2, 1));
    assertThat(pests.live().counts()).containsExactly(3, 0, 4, 2, 7, 2);
    assertThat(pests.shareTaken()).isCloseTo(0.28, offset(1e-12));
    assertThat(pests.shareStandardError()).isCloseTo(0.0572254488842, offset(1e-11));
    assertThat(pests.presentation().toText()).contains("28.0 %");
    refused(
        () -> new LivePests(CountSample.of("a", PLANT, 1, 2), CountSample.of("a", PLANT, 0, 3)),
        "unit 2 with 3 parasitised of 2 animals");
    refused(
        () -> new LivePests(CountSample.of("a", PLANT, 1, 2), CountSample.of("a", LEAF, 0, 1)),
        "for each plant and for each leaf");
  }

  @Test
  void stagesThatDoHarmCount() {
    var counts =
        StageCounts.of(
            new Stage("eggs", CountSample.of("plot", PLANT, 9, 4, 0)),
            new Stage("young larvae", CountSample.of("plot", PLANT, 3, 0, 2)),
            new Stage("old larvae", CountSample.of("plot", PLANT, 1, 2, 0)));
    assertThat(counts.only(Set.of("young larvae", "old larvae")).counts()).containsExactly(4, 2, 2);
    var weighted = counts.weighted(Map.of("young larvae", 0.25, "old larvae", 1.0));
    // Sums 1.75, 2 and 0.5: mean 4.25/3, variance 0.6458333 by hand.
    assertThat(weighted.mean()).isCloseTo(4.25 / 3, offset(1e-12));
    assertThat(weighted.standardError()).isCloseTo(Math.sqrt(0.6458333333 / 3), offset(1e-9));
    refused(() -> counts.only(Set.of("pupae")), "a stage that was not counted cannot count");
  }

  @Test
  void thresholdsOfCropStages() {
    var source = Reference.invented("thresholds of a test");
    var thresholds =
        new CropStageThresholds(
            PestMeasure.pestsPer(PLANT),
            List.of(new StageRange(12, 19, 0.5, source), new StageRange(41, 49, 2, source)));
    assertThat(thresholds.at(19).threshold()).isEqualTo(0.5);
    assertThat(thresholds.at(41).threshold()).isEqualTo(2);
    refused(() -> thresholds.at(30), "one of the stages 12 to 19, 41 to 49");
    refused(
        () ->
            new CropStageThresholds(
                PestMeasure.pestsPer(PLANT),
                List.of(new StageRange(12, 19, 1, source), new StageRange(19, 30, 2, source))),
        "ranges in order that do not overlap");
    refused(() -> new StageRange(12, 119, 1, source), "stages 0 to 99");
  }

  @Test
  void unitsConvertByAStatedNumberAlone() {
    var leaves = new UnitConversion(LEAF, PLANT, 14, "counted on 20 plants");
    var plant = new MeanDensity(LEAF, 0.5, 0.1).in(leaves);
    assertThat(plant.mean()).isEqualTo(7);
    assertThat(plant.standardError()).isCloseTo(1.4, offset(1e-12));
    assertThat(plant.in(leaves.reversed()).mean()).isCloseTo(0.5, offset(1e-12));
    refused(() -> plant.in(leaves), "one sampling unit for a mean and its conversion");
    refused(() -> new UnitConversion(LEAF, PLANT, 14, " "), "who states it");
  }

  /**
   * Zero term of the Poisson: ln(20) / 0.01 = 299.57; of the negative binomial with k = 0.5: ln(20)
   * / (0.5 ln 1.02) = 302.56, by hand.
   */
  @Test
  void scoutingCannotDecideWhatItCannotSee() {
    var reach = ScoutingReach.of(PLANT, 0.01, 100);
    assertThat(reach.canDecide()).isFalse();
    assertThat(reach.unitsNeeded()).isEqualTo(300);
    assertThat(reach.answer())
        .startsWith("Scouting cannot decide it")
        .contains("It would take 300 units");
    assertThat(reach.withExponent(0.5).unitsNeeded()).isEqualTo(303);
    assertThat(reach.withShareSeen(0.5).unitsNeeded()).isEqualTo(600);
    assertThat(reach.densityNotExcluded()).isCloseTo(-Math.log(0.05) / 100, offset(1e-12));
    assertThat(ScoutingReach.of(PLANT, 0.5, 100).answer()).startsWith("Scouting can decide it");
    refused(() -> ScoutingReach.of(PLANT, 0, 100), "shows that there is no animal at all");
  }

  @Property(seed = "8")
  void unitsNeededAreJustEnough(
      @ForAll @DoubleRange(min = 0.01, max = 2) double threshold,
      @ForAll @DoubleRange(min = 0.1, max = 5) double k,
      @ForAll @DoubleRange(min = 0.01, max = 0.5) double chance) {
    var reach = ScoutingReach.of(PLANT, threshold, 50).withExponent(k).withMissChance(chance);
    int needed = (int) reach.unitsNeeded();
    assertThat(reach.chanceOfMissing(needed)).isLessThanOrEqualTo(chance * (1 + 1e-9));
    assertThat(needed == 1 || reach.chanceOfMissing(needed - 1) > chance * (1 - 1e-9)).isTrue();
    var limit = ScoutingReach.of(PLANT, reach.densityNotExcluded(), 50).withExponent(k);
    assertThat(limit.chanceOfMissing(50)).isCloseTo(chance, offset(1e-9));
  }

  private static void refused(
      org.assertj.core.api.ThrowableAssert.ThrowingCallable call, String words) {
    assertThatThrownBy(call).isInstanceOf(InputProblem.class).hasMessageContaining(words);
  }
}
