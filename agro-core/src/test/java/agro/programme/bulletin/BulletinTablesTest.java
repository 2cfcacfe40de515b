package agro.programme.bulletin;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import agro.report.InputProblem;
import agro.sampling.CountSample;
import agro.sampling.SamplingUnit;
import agro.sampling.injury.TreatmentVerdict;
import java.time.LocalDate;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Thresholds, sprayers and names of parts. */
class BulletinTablesTest {

  private static final SamplingUnit PLANT = SamplingUnit.of(SamplingUnit.Kind.PLANT);

  @Test
  void aThresholdIsStatedOrWorkedOut() {
    var book =
        ThresholdBook.parse(
            "t.csv",
            """
            pest,crop,unit,treat_from,cost_per_ha,crop_value_per_ha,currency,share_lost_per_pest,\
            share_prevented,source
            moth,,plant,3,,,,,,mine
            moth,cabbage,plant,,80,10000,EUR,0.01,0.8,worked out
            """);
    assertThat(book.find("moth", Optional.of("leek")).orElseThrow().level()).isEqualTo(3);
    // C / (V D K) = 80 / (10000 * 0.01 * 0.8)
    assertThat(book.find("moth", Optional.of("cabbage")).orElseThrow().level())
        .isCloseTo(1, within(1e-12));
    assertThat(book.find("fly", Optional.empty())).isEmpty();
  }

  @Test
  void countsFarFromTheThresholdDecideAndNearOnesDoNot() {
    var threshold = new PestThreshold("moth", Optional.empty(), PLANT, 2, Optional.empty(), "");
    assertThat(verdict(threshold, 0, 0, 1, 0, 0, 0, 1, 0)).contains(TreatmentVerdict.LEAVE);
    assertThat(verdict(threshold, 1, 3, 2, 1, 3, 2, 2, 2)).contains(TreatmentVerdict.LOOK_ON);
    assertThat(verdict(threshold, 7, 8, 9, 6, 8, 7, 9, 8)).contains(TreatmentVerdict.TREAT);
  }

  private static Optional<TreatmentVerdict> verdict(PestThreshold threshold, int... counts) {
    var sample = CountSample.of("x", PLANT, counts);
    return CountVerdict.of("x", LocalDate.EPOCH, sample, Optional.of(threshold)).verdict();
  }

  @Test
  void aThresholdForLeavesSaysNothingOfPlants() {
    var leaf = SamplingUnit.of(SamplingUnit.Kind.LEAF);
    var threshold = new PestThreshold("moth", Optional.empty(), leaf, 2, Optional.empty(), "");
    assertThat(verdict(threshold, 9, 9, 9, 8)).isEmpty();
  }

  @Test
  void aLineWithoutAThresholdIsRefused() {
    assertThatThrownBy(() -> ThresholdBook.parse("t.csv", "pest,unit,source\nmoth,plant,x\n"))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("treat_from");
    assertThatThrownBy(
            () -> ThresholdBook.parse("t.csv", "pest,unit,treat_from,source\nmoth,plant,0,x\n"))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("above zero");
  }

  @Test
  void theSprayerOfAFieldGoesBeforeThatOfAll() {
    var sprayers =
        FieldSprayer.parse(
            "s.csv",
            """
            sprayer,kind,tank,dead_volume,spray_volume,field
            big,mounted,200 L,4 L,300 L/ha,
            small,knapsack,15 L,,400 L/ha,Croft
            """);
    assertThat(FieldSprayer.of(sprayers, "Croft").orElseThrow().name()).isEqualTo("small");
    assertThat(FieldSprayer.of(sprayers, "Other").orElseThrow().name()).isEqualTo("big");
    assertThat(sprayers.get(0).tank().usable().litres()).isCloseTo(196, within(1e-9));
    assertThatThrownBy(
            () ->
                FieldSprayer.parse(
                    "s.csv", "sprayer,kind,tank,spray_volume\nx,knapsack,15,4 L/ha\n"))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("15");
  }

  @Test
  void aPartBelongsToTheLongestNameThatItBeginsWith() {
    var fields = Set.of("Mill", "Mill Field", "Sand Lane");
    assertThat(NamePrefix.longest("Mill Field plot 1", fields)).contains("Mill Field");
    assertThat(NamePrefix.longest("Mill Fields", fields)).contains("Mill");
    assertThat(NamePrefix.longest("Millstone", fields)).isEmpty();
  }
}
