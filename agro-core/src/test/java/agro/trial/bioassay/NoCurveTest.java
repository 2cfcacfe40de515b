package agro.trial.bioassay;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import agro.report.InputProblem;
import agro.stats.glm.LinkFunction;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Data that have no curve, or only half of one. */
class NoCurveTest {

  private static final DoseResponse DEFAULTS = DoseResponse.withDefaults();

  private static WithoutCurve without(DoseResponse choices, double[]... groups) {
    var data = Assays.of(groups);
    var finding = choices.withoutCurve(data).orElseThrow();
    assertThatThrownBy(() -> choices.fit(data))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining(finding.found())
        .hasMessageContaining(finding.stillKnown())
        .hasMessageNotContaining("NaN");
    assertThat(finding.presentation().toText()).contains(finding.found()).doesNotContain("NaN");
    return finding;
  }

  @Test
  void allDead() {
    var found = without(DEFAULTS, g(2, 20, 20), g(4, 20, 20), g(8, 20, 20));
    assertThat(found.reason()).isEqualTo(NoCurveReason.ALL_RESPONDED);
    assertThat(found.medianDose()).isEqualTo(new DoseLimits(LimitShape.NO_LOWER_LIMIT, 0, 2));
    // Clopper-Pearson: 0.025^(1/20) = 0.8315665
    assertThat(found.stillKnown())
        .contains("2 mg/L")
        .contains("83.2 to 100.0 %")
        .contains("the dose for one half lies below");
  }

  @Test
  void allDeadAmongFew() {
    assertThat(without(DEFAULTS, g(2, 4, 4), g(4, 4, 4)).stillKnown())
        .contains("39.8 to 100.0 %")
        .contains("not refuted");
  }

  @Test
  void noneDead() {
    var found = without(DEFAULTS, g(2, 20, 0), g(4, 20, 0));
    assertThat(found.reason()).isEqualTo(NoCurveReason.NONE_RESPONDED);
    assertThat(found.medianDose().shape()).isEqualTo(LimitShape.NO_UPPER_LIMIT);
    assertThat(found.medianDose().low()).isEqualTo(4);
    assertThat(found.stillKnown()).contains("0.0 to 16.8 %");
  }

  @Test
  void oneDose() {
    assertThat(without(DEFAULTS, g(3, 20, 9), g(3, 20, 12)).reason())
        .isEqualTo(NoCurveReason.ONE_DOSE);
    assertThat(without(DEFAULTS, g(0, 20, 0), g(0, 20, 1)).found())
        .contains("controls and no dose");
  }

  @Test
  void noPartialKill() {
    var found = without(DEFAULTS, g(1, 20, 0), g(2, 20, 0), g(4, 20, 20), g(8, 20, 20));
    assertThat(found.reason()).isEqualTo(NoCurveReason.SEPARATED);
    assertThat(found.medianDose().low()).isCloseTo(2, within(1e-12));
    assertThat(found.medianDose().high()).isCloseTo(4, within(1e-12));
  }

  @Test
  void onePartialKill() {
    var found = without(DEFAULTS, g(1, 20, 0), g(2, 20, 7), g(4, 20, 20));
    assertThat(found.reason()).isEqualTo(NoCurveReason.SEPARATED);
    assertThat(found.found()).contains("only one dose, 2 mg/L");
    assertThat(found.medianDose()).isEqualTo(new DoseLimits(LimitShape.BOUNDED, 1, 4));
  }

  @Test
  void aStepAboveNaturalMortalityIsNoLine() {
    var found =
        without(
            DEFAULTS.with(NaturalMortality.inModel()),
            g(0, 50, 5),
            g(1, 50, 5),
            g(2, 50, 6),
            g(4, 50, 50),
            g(8, 50, 50));
    assertThat(found.reason()).isEqualTo(NoCurveReason.NOT_SETTLED);
  }

  @Test
  void fallingResponse() {
    assertThat(without(DEFAULTS, g(1, 20, 15), g(2, 20, 9), g(4, 20, 3)).reason())
        .isEqualTo(NoCurveReason.NOT_RISING);
    assertThat(without(DEFAULTS, g(1, 20, 20), g(4, 20, 0)).reason())
        .isEqualTo(NoCurveReason.NOT_RISING);
    assertThat(without(DEFAULTS, g(1, 20, 10), g(2, 20, 10), g(4, 20, 10)).reason())
        .isEqualTo(NoCurveReason.NOT_RISING);
  }

  @Test
  void impossibleCounts() {
    assertThatThrownBy(() -> DoseGroup.of(1, 20, 21)).hasMessageContaining("21 responding of 20");
    assertThatThrownBy(() -> DoseGroup.of(1, 0, 0)).hasMessageContaining("0 animals");
    assertThatThrownBy(() -> DoseGroup.of(Double.NaN, 10, 0)).hasMessageContaining("a dose of NaN");
    assertThatThrownBy(() -> DEFAULTS.fit(Assays.of(g(-1, 9, 3), g(1, 9, 5))))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("-1 on a log scale");
  }

  @Test
  void controlsDecide() {
    var bad = Assays.of(g(0, 20, 5), g(1, 20, 8), g(2, 20, 12), g(4, 20, 18));
    assertThatThrownBy(() -> DEFAULTS.fit(bad))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("5 of 20 (25.0 %)")
        .hasMessageContaining("common practice, no source");
    var fit = DEFAULTS.withControlCeiling(0.3).fit(bad);
    assertThat(fit.naturalMortality()).isPositive();
    assertThat(fit.remarks()).anyMatch(each -> each.contains("more than 5 %"));
    assertThatThrownBy(
            () -> DEFAULTS.withControlCeiling(0.99).fit(Assays.of(g(0, 9, 9), g(1, 9, 9))))
        .hasMessageContaining("cannot show an effect");
  }

  @Test
  void aZeroControlLeavesNaturalMortalityAtZero() {
    var fit =
        DEFAULTS
            .with(NaturalMortality.inModel())
            .fit(Assays.of(g(0, 50, 0), g(1, 50, 1), g(2, 50, 10), g(4, 50, 30), g(8, 50, 49)));
    var plain =
        DEFAULTS
            .with(NaturalMortality.none())
            .fit(Assays.of(g(1, 50, 1), g(2, 50, 10), g(4, 50, 30), g(8, 50, 49)));
    assertThat(fit.isNaturalMortalityAtZero()).isTrue();
    assertThat(fit.slope()).isCloseTo(plain.slope(), within(1e-9));
    assertThat(fit.lethalDose(90).limits().high())
        .isCloseTo(plain.lethalDose(90).limits().high(), within(1e-8));
    assertThat(fit.remarks()).anyMatch(each -> each.contains("came out at 0"));
    assertThat(fit.presentation().toText()).doesNotContain("NaN");
  }

  /** Fisher's steps towards a share of 0 get shorter and shorter; the search has to arrive. */
  @ParameterizedTest
  @CsvSource({"6 10 14 22 49 55 58", "6 10 11 23 43 50 59", "7 9 18 18 43 56 57"})
  void aShareThatFallsToZeroIsReached(String responded) {
    double[] doses = {0.2, 0.5, 1, 2, 5, 10, 20};
    var groups = new ArrayList<DoseGroup>();
    groups.add(DoseGroup.of(0, 60, 0));
    for (var each : responded.split(" ", -1)) {
      groups.add(DoseGroup.of(doses[groups.size() - 1], 60, Integer.parseInt(each)));
    }
    var data = Assays.of(groups);
    var fit = DEFAULTS.with(NaturalMortality.inModel()).fit(data);
    var plain = DEFAULTS.with(NaturalMortality.none()).fit(data);
    assertThat(fit.isNaturalMortalityAtZero()).isTrue();
    assertThat(fit.intercept()).isCloseTo(plain.intercept(), within(1e-9));
    assertThat(fit.slope()).isCloseTo(plain.slope(), within(1e-9));
  }

  @Test
  void aFlatLineHasUnboundedLimits() {
    var data = Assays.of(g(1, 20, 8), g(2, 20, 9), g(4, 20, 11), g(8, 20, 11));
    var dose = DEFAULTS.fit(data).lethalDose(50);
    assertThat(dose.g()).isGreaterThan(1);
    assertThat(dose.limits().isBounded()).isFalse();
    assertThat(dose.limits().covers(dose.dose())).isTrue();
    assertThat(dose.limits().words(Assays.AXIS::print)).contains("unbounded");
    assertThat(DEFAULTS.fit(data).presentation().toText())
        .contains("unbounded")
        .doesNotContain("NaN");
    var profile = DEFAULTS.with(LimitMethod.PROFILE).fit(data).lethalDose(50).limits();
    assertThat(profile.isBounded()).isFalse();
  }

  @Test
  void aFallOnTheWayIsTold() {
    var fit = DEFAULTS.fit(Assays.of(g(1, 20, 2), g(2, 20, 9), g(4, 20, 7), g(8, 20, 19)));
    assertThat(fit.remarks()).anyMatch(each -> each.contains("from 2 mg/L to 4 mg/L"));
  }

  @Test
  void openQuestionsAreRefused() {
    assertThatThrownBy(() -> new ConditionCounts(3, 2, 5).responded(null))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("DEAD_OR_MORIBUND");
    assertThatThrownBy(() -> BioassayData.of("", Assays.AXIS, null, List.of(DoseGroup.of(1, 1, 1))))
        .hasMessageContaining("no end point");
    assertThatThrownBy(() -> DEFAULTS.with(LinkFunction.LOG)).hasMessageContaining("PROBIT");
    assertThatThrownBy(() -> DEFAULTS.fit(Assays.published("rotenone")).lethalDose(100))
        .hasMessageContaining("neither 0 nor 100 %");
    assertThatThrownBy(
            () -> DEFAULTS.with(NaturalMortality.abbott()).fit(Assays.published("rotenone")))
        .hasMessageContaining("without a control");
  }

  @Test
  void noDoseAboveTheControls() {
    var found =
        without(DEFAULTS.with(NaturalMortality.abbott()), g(0, 50, 5), g(1, 50, 3), g(2, 50, 4));
    assertThat(found.found()).isEqualTo("no dose killed a larger share than the controls");
    assertThat(found.stillKnown()).contains("3 of 50");
  }

  private static double[] g(double dose, double exposed, double responded) {
    return new double[] {dose, exposed, responded};
  }
}
