package agro.sampling.injury;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.offset;
import static org.assertj.core.api.Assertions.withinPercentage;

import agro.ReferenceTable;
import agro.report.InputProblem;
import agro.sampling.SamplingUnit;
import agro.units.AreaUnit;
import agro.units.MassPerArea;
import agro.units.MassPerAreaUnit;
import agro.units.MassUnit;
import agro.units.ThermalTime;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class InjuryLevelTest {

  private static final PestMeasure PER_PLANT =
      PestMeasure.pestsPer(SamplingUnit.of(SamplingUnit.Kind.PLANT));
  private static final double EXACT = 1e-7;

  static List<NamedCsvRecord> levels() {
    return ReferenceTable.read(InjuryLevelTest.class, "injury-levels.csv");
  }

  static List<NamedCsvRecord> thresholds() {
    return ReferenceTable.read(InjuryLevelTest.class, "thresholds.csv");
  }

  private static InjuryLevel level(double cost, double price, double slope, double prevented) {
    return InjuryLevel.of(
        MoneyPerArea.perHectare(cost, "EUR"),
        CropLoss.produce(
            MassPerArea.of(slope, MassPerAreaUnit.TONNE_PER_HECTARE),
            MoneyPerMass.perTonne(price, "EUR")),
        prevented,
        PER_PLANT);
  }

  /** Sources and tolerance: injury-levels.csv. */
  @ParameterizedTest
  @MethodSource("levels")
  void agreesWithTheReference(NamedCsvRecord row) {
    var area = row.getField("area").equals("acre") ? AreaUnit.ACRE : AreaUnit.HECTARE;
    double injury = ReferenceTable.number(row, "injury");
    double loss = ReferenceTable.number(row, "loss");
    double value = ReferenceTable.number(row, "value");
    CropLoss crop =
        row.getField("kind").equals("share")
            ? new CropLoss.OfCropValue(injury, loss, MoneyPerArea.of(value, "USD", area))
            : new CropLoss.OfProduce(
                injury,
                MassPerArea.of(loss, MassPerAreaUnit.TONNE_PER_HECTARE),
                MoneyPerMass.perTonne(value, "USD"));
    var level =
        InjuryLevel.of(
                MoneyPerArea.of(ReferenceTable.number(row, "cost"), "USD", area),
                crop,
                ReferenceTable.number(row, "prevented"),
                PER_PLANT)
            .withEnvironmentalCost(
                MoneyPerArea.of(ReferenceTable.number(row, "environment"), "USD", area));
    assertThat(level.level())
        .isCloseTo(ReferenceTable.number(row, "level"), withinPercentage(EXACT));
    assertThat(level.gainPerHectare(level.level())).isCloseTo(0, offset(1e-9));
  }

  /** Sources and tolerance: thresholds.csv. */
  @ParameterizedTest
  @MethodSource("thresholds")
  void thresholdsFollow(NamedCsvRecord row) {
    double number = ReferenceTable.number(row, "rate_or_share");
    var time = ThresholdLeadTime.ofDays(ReferenceTable.number(row, "days"));
    var rule =
        switch (row.getField("rule")) {
          case "GROWTH" -> new EconomicThreshold.Rule.Growth(number, time);
          case "DOUBLING" ->
              new EconomicThreshold.Rule.Growth(EconomicThreshold.rateOfDoubling(number), time);
          default -> new EconomicThreshold.Rule.FixedRatio(number);
        };
    var threshold = new EconomicThreshold(ReferenceTable.number(row, "level"), PER_PLANT, rule);
    assertThat(threshold.threshold())
        .isCloseTo(ReferenceTable.number(row, "threshold"), withinPercentage(EXACT));
    assertThat(threshold.working().steps()).isNotEmpty();
  }

  /**
   * Soybean aphid: McCarville et al. 2011, J. Econ. Entomol. 104:845-852 (abstract, read): 6.97 d
   * from 250 aphids to the injury level, here taken as 674 (Ragsdale et al. 2007, from memory).
   */
  @Test
  void growthFromTwoCounts() {
    double rate = EconomicThreshold.growthRate(250, 674, 6.97);
    assertThat(rate).isCloseTo(0.1422911324, withinPercentage(1e-7));
    assertThat(EconomicThreshold.doublingDays(rate))
        .isCloseTo(4.8713308322, withinPercentage(1e-7));
  }

  /**
   * Gain of treating by the borer sheet of Iowa State University, IC-476(21), 1996, p. 147, without
   * its rounding: 0.3 egg masses of 4.5 borers each, 7.68 $/acre. The sheet rounds the lost share
   * to 0.05 and prints 6.00.
   */
  @Test
  void gainOfTheBorerSheet() {
    var level =
        InjuryLevel.of(
            MoneyPerArea.of(15, "USD", AreaUnit.ACRE),
            CropLoss.share(0.04, MoneyPerArea.of(150 * 3.5, "USD", AreaUnit.ACRE)),
            0.8,
            PER_PLANT);
    var perAcre = 10_000 / AreaUnit.ACRE.toBase(1);
    assertThat(level.gainPerHectare(0.3 * 4.5) / perAcre).isCloseTo(7.68, offset(1e-9));
    assertThat(level.level() / 4.5).isCloseTo(0.1984126984, withinPercentage(1e-7));
    assertThat(level.gainThresholdShare().orElseThrow()).isCloseTo(15 / 525.0, offset(1e-12));
    assertThat(level.isBeyondTheCrop()).isFalse();
  }

  @Test
  void gainThresholdOfProduce() {
    var level = level(45, 180, 0.035, 0.92);
    var gain = level.gainThreshold().orElseThrow();
    assertThat(gain.in(MassPerAreaUnit.TONNE_PER_HECTARE)).isCloseTo(0.25, offset(1e-12));
    assertThat(level.presentation().toText())
        .contains("7.764 pests per plant", "0.25 t/ha", "45 EUR/ha / (6.3 EUR/ha · 0.92)")
        .contains("The product label and local law come first");
  }

  @Test
  void nothingSpentIsPaidByNothing() {
    assertThat(level(0, 180, 0.035, 0.92).level()).isZero();
  }

  @Test
  void moneyConvertsWithItsArea() {
    assertThat(MoneyPerArea.of(1, "EUR", AreaUnit.ACRE).in(AreaUnit.ACRE))
        .isCloseTo(1, offset(1e-12));
    assertThat(MoneyPerArea.of(1, "EUR", AreaUnit.ACRE).perHectare())
        .isCloseTo(2.471053815, offset(1e-8));
    assertThat(MoneyPerMass.of(0.25, "EUR", MassUnit.KILOGRAM).perTonne())
        .isCloseTo(250, offset(1e-9));
  }

  @Property(seed = "8")
  void levelGoesWithCostAndAgainstValueLossAndControl(
      @ForAll @DoubleRange(min = 1, max = 500) double cost,
      @ForAll @DoubleRange(min = 10, max = 2000) double price,
      @ForAll @DoubleRange(min = 0.01, max = 2) double slope,
      @ForAll @DoubleRange(min = 0.05, max = 0.5) double prevented) {
    double one = level(cost, price, slope, prevented).level();
    assertThat(level(2 * cost, price, slope, prevented).level())
        .isCloseTo(2 * one, withinPercentage(1e-9));
    assertThat(level(cost, 2 * price, slope, prevented).level())
        .isCloseTo(one / 2, withinPercentage(1e-9));
    assertThat(level(cost, price, 2 * slope, prevented).level())
        .isCloseTo(one / 2, withinPercentage(1e-9));
    assertThat(level(cost, price, slope, 2 * prevented).level())
        .isCloseTo(one / 2, withinPercentage(1e-9));
  }

  @Test
  void daysUntilAStageFromDegreeDays() {
    var days = List.of(10.0, 0.0, 12.0, 15.0);
    var ahead = days.stream().map(ThermalTime::ofDegreeDaysC).toList();
    assertThat(ThresholdLeadTime.untilStage(ThermalTime.ofDegreeDaysC(28), ahead).days())
        .isCloseTo(3.4, offset(1e-12));
    assertThat(ThresholdLeadTime.untilStage(ThermalTime.ZERO, ahead).days()).isZero();
    assertThat(
            ThresholdLeadTime.untilStage(
                    ThermalTime.ofDegreeDaysC(60), ThermalTime.ofDegreeDaysC(12))
                .days())
        .isCloseTo(5, offset(1e-12));
    assertThatThrownBy(() -> ThresholdLeadTime.untilStage(ThermalTime.ofDegreeDaysC(40), ahead))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("37.0 °C·d in the 4 days ahead");
  }

  @Test
  void youngStagesMaySpareSome() {
    var rule =
        new EconomicThreshold.Rule.BeforeStage(
            0.5, ThresholdLeadTime.ofDays(6), ThresholdLeadTime.ofDays(8));
    var threshold = new EconomicThreshold(3, PER_PLANT, rule);
    assertThat(threshold.threshold()).isEqualTo(6);
    assertThat(rule.daysLeft()).isEqualTo(-2);
    assertThat(threshold.presentation().toText()).contains("too late to forestall");
  }

  @Test
  void badInputIsRefused() {
    refused(() -> level(45, 180, 0.035, 0), "prevents nothing never pays");
    refused(() -> level(45, 180, 0.035, 1.2), "a share above 0 and at most 1");
    refused(() -> level(45, 0, 0.035, 0.9), "value of produce V per tonne of 0.0");
    refused(() -> level(45, 180, 0, 0.9), "loss per injury D in kg/ha of 0.0");
    refused(() -> level(-1, 180, 0.035, 0.9), "money per hectare of -1.0 EUR");
    refused(() -> MoneyPerArea.perHectare(1, "EURO"), "the currency \"EURO\"");
    refused(() -> MoneyPerArea.perHectare(1, "eur"), "three capital letters after ISO 4217");
    refused(
        () -> level(45, 180, 0.035, 0.9).withEnvironmentalCost(MoneyPerArea.perHectare(5, "KES")),
        "amounts in EUR and in KES");
    refused(() -> CropLoss.share(4, MoneyPerArea.perHectare(900, "EUR")), "divide per cent by 100");
    refused(
        () ->
            EconomicThreshold.byGrowth(
                InjuryLevel.of(
                    MoneyPerArea.perHectare(45, "EUR"),
                    CropLoss.share(0.01, MoneyPerArea.perHectare(900, "EUR")),
                    0.9,
                    PestMeasure.pestDaysPer(PER_PLANT.unit())),
                0.1,
                ThresholdLeadTime.ofDays(3)),
        "a level in pests");
    refused(() -> ThresholdLeadTime.ofDays(-1), "a lead time of -1.0 days");
    refused(() -> EconomicThreshold.growthRate(0, 10, 3), "growth from 0.0 to 10.0");
  }

  private static void refused(
      org.assertj.core.api.ThrowableAssert.ThrowingCallable call, String words) {
    assertThatThrownBy(call).isInstanceOf(InputProblem.class).hasMessageContaining(words);
  }
}
