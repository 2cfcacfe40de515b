package agro.sampling.injury;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.offset;

import agro.ReferenceTable;
import agro.report.InputProblem;
import agro.sampling.CountSample;
import agro.sampling.SamplingUnit;
import agro.units.MassPerArea;
import agro.units.MassPerAreaUnit;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class TreatmentDecisionTest {

  private static final SamplingUnit PLANT = SamplingUnit.of(SamplingUnit.Kind.PLANT);
  private static final InjuryLevel BEST =
      InjuryLevel.of(
          MoneyPerArea.perHectare(45, "EUR"),
          CropLoss.produce(
              MassPerArea.of(0.035, MassPerAreaUnit.TONNE_PER_HECTARE),
              MoneyPerMass.perTonne(180, "EUR")),
          0.92,
          PestMeasure.pestsPer(PLANT));
  private static final UncertainInjuryLevel UNCERTAIN =
      UncertainInjuryLevel.of(BEST)
          .withCostPerHectare(UncertainNumber.triangular(38, 45, 60))
          .withPricePerTonne(UncertainNumber.between(140, 220))
          .withLossPerPest(new UncertainNumber.LogNormal(0.035, 1.3))
          .withSharePrevented(UncertainNumber.triangular(0.7, 0.92, 0.98));

  /** By quadrature with SciPy: paying.csv, paying.py. */
  @Test
  void chancesAgreeWithQuadrature() {
    var levels = UNCERTAIN.distribution();
    for (var row : ReferenceTable.read(TreatmentDecisionTest.class, "paying.csv")) {
      double density = ReferenceTable.number(row, "density");
      assertThat(levels.chanceOfPaying(density))
          .isCloseTo(ReferenceTable.number(row, "chance"), offset(0.01));
      assertThat(levels.decide(UncertainNumber.exactly(density)).chanceOfPaying())
          .isCloseTo(levels.chanceOfPaying(density), offset(1e-12));
      assertThat(levels.decide(new UncertainNumber.Gamma(density, density / 4)).chanceOfPaying())
          .isCloseTo(ReferenceTable.number(row, "chance_uncertain"), offset(0.01));
    }
  }

  @Test
  void sameSeedSameAnswer() {
    assertThat(UNCERTAIN.distribution().quantile(0.3))
        .isEqualTo(UNCERTAIN.distribution().quantile(0.3))
        .isNotEqualTo(UNCERTAIN.withDraws(4_000, 9).distribution().quantile(0.3));
  }

  @Test
  void exactTermsGiveAStep() {
    var levels = UncertainInjuryLevel.of(BEST).distribution();
    assertThat(levels.quantile(0.05)).isCloseTo(BEST.level(), offset(1e-9));
    assertThat(levels.chanceOfPaying(7.7)).isZero();
    assertThat(levels.chanceOfPaying(7.8)).isEqualTo(1);
    var halved = UncertainInjuryLevel.of(BEST).withThresholdRatio(UncertainNumber.exactly(0.5));
    assertThat(halved.distribution().quantile(0.5)).isCloseTo(BEST.level() / 2, offset(1e-9));
  }

  @Test
  void verdictFollowsTheChance() {
    var levels = UNCERTAIN.distribution();
    assertThat(levels.decide(UncertainNumber.exactly(4)).verdict())
        .isEqualTo(TreatmentVerdict.LEAVE);
    assertThat(levels.decide(UncertainNumber.exactly(9)).verdict())
        .isEqualTo(TreatmentVerdict.LOOK_ON);
    var treat = levels.decide(UncertainNumber.exactly(20));
    assertThat(treat.verdict()).isEqualTo(TreatmentVerdict.TREAT);
    assertThat(treat.withBounds(0.1, 0.999).verdict()).isEqualTo(TreatmentVerdict.LOOK_ON);
    assertThat(treat.leaveUpTo()).isLessThan(treat.treatFrom());
    assertThat(treat.meanGainPerHectare()).isPositive();
    assertThat(treat.presentation().toText())
        .contains("treat: treating would most likely pay", "EUR/ha", "product label");
  }

  @Test
  void aSampleBringsItsOwnError() {
    var few = CountSample.of("few", PLANT, 4, 29, 8, 0);
    var levels = UNCERTAIN.distribution();
    var known = levels.decide(UncertainNumber.exactly(few.mean()));
    var sampled = levels.decide(few);
    assertThat(Math.abs(sampled.chanceOfPaying() - 0.5))
        .isLessThan(Math.abs(known.chanceOfPaying() - 0.5));
    var none = UncertainNumber.densityOf(CountSample.of("none", PLANT, 0, 0, 0, 0));
    assertThat(none.chanceUpTo(-Math.log(0.05) / 4)).isCloseTo(0.95, offset(1e-9));
  }

  @Property(seed = "8")
  void quantileAndChanceAreInverse(@ForAll @DoubleRange(min = 0.01, max = 0.99) double share) {
    for (UncertainNumber number :
        List.of(
            UncertainNumber.between(-1, 3),
            UncertainNumber.triangular(1, 1, 4),
            UncertainNumber.triangular(1, 3, 4),
            new UncertainNumber.Normal(2, 0.7),
            new UncertainNumber.LogNormal(2, 1.4),
            new UncertainNumber.StudentT(2, 0.3, 5),
            new UncertainNumber.Gamma(2, 3))) {
      assertThat(number.chanceUpTo(number.quantile(share))).isCloseTo(share, offset(1e-6));
      assertThat(number.words()).isNotBlank();
    }
  }

  @Test
  void aSlopeFromPlotsIsStudents() {
    var loss =
        YieldLoss.fit(new double[] {0, 5, 10, 20}, new double[] {5, 4.8, 4.7, 4.2}, BEST.measure());
    var number = UncertainNumber.lossOf(loss);
    assertThat(number.quantile(0.5)).isCloseTo(loss.tonnesLostPerPest(), offset(1e-9));
    assertThat(number.quantile(0.975)).isCloseTo(loss.lossLimits(0.95).high(), offset(1e-9));
  }

  @Test
  void badInputIsRefused() {
    refused(() -> UncertainNumber.triangular(3, 2, 4), "a triangle over 3.0, 2.0, 4.0");
    refused(() -> UncertainNumber.between(2, 2), "exactly(x) for a number without spread");
    refused(
        () -> UNCERTAIN.withSharePrevented(new UncertainNumber.Normal(0.95, 0.1)),
        "share of the loss prevented");
    refused(
        () -> UNCERTAIN.withLossPerPest(new UncertainNumber.StudentT(0.01, 0.02, 4)),
        "data that tell more");
    refused(
        () -> UNCERTAIN.withCropValuePerHectare(UncertainNumber.exactly(900)),
        "a value in the terms of the level");
    refused(() -> UNCERTAIN.withDraws(10, 8), "at least 100");
    refused(
        () ->
            UNCERTAIN
                .distribution()
                .decide(CountSample.of("x", SamplingUnit.of(SamplingUnit.Kind.LEAF), 1, 2)),
        "counts for each plant and for each leaf");
    refused(
        () -> UNCERTAIN.distribution().decide(UncertainNumber.exactly(1)).withBounds(0.9, 0.1),
        "two chances in order");
  }

  private static void refused(
      org.assertj.core.api.ThrowableAssert.ThrowingCallable call, String words) {
    assertThatThrownBy(call).isInstanceOf(InputProblem.class).hasMessageContaining(words);
  }
}
