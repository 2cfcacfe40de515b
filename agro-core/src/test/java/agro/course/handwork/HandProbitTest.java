package agro.course.handwork;

import static agro.ReferenceTable.number;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import agro.ReferenceTable;
import agro.course.sheet.ProbitLine;
import agro.report.InputProblem;
import agro.trial.bioassay.DoseGroup;
import agro.trial.bioassay.HeterogeneityRule;
import agro.trial.bioassay.LimitShape;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The classical calculation against cycles computed in R and against maximum likelihood. */
class HandProbitTest {

  private static final double DIGITS = 1e-7;

  static List<NamedCsvRecord> cycles() {
    return ReferenceTable.read(HandProbitTest.class, "cycles.csv");
  }

  private static HandProbit question(NamedCsvRecord line) {
    return HandProbit.of(HandAssays.named(line.getField("set")))
        .with(ControlWeights.valueOf(line.getField("weights")))
        .with(HeterogeneityRule.never());
  }

  @ParameterizedTest
  @MethodSource("cycles")
  void everyCycleIsThatOfIndependentRegression(NamedCsvRecord line) {
    var fit = question(line).cycles(ReferenceTable.whole(line, "cycle"));
    var sums = fit.last().sums();
    same(fit.provisional().intercept(), line, "start_a");
    same(fit.provisional().slope(), line, "start_b");
    same(fit.line().intercept(), line, "a");
    same(fit.line().slope(), line, "b");
    same(sums.w(), line, "w");
    same(sums.wx(), line, "wx");
    same(sums.wy(), line, "wy");
    same(sums.wxx(), line, "wxx");
    same(sums.wxy(), line, "wxy");
    same(sums.wyy(), line, "wyy");
    same(sums.sxx(), line, "sxx");
    same(fit.chiSquared(), line, "chi");
  }

  @ParameterizedTest
  @MethodSource("cycles")
  void medianAndFiducialLimitsFollowFromTheSums(NamedCsvRecord line) {
    var median = question(line).cycles(ReferenceTable.whole(line, "cycle")).lethalDose(50);
    same(median.logDose(), line, "m");
    same(median.variance(), line, "variance");
    same(median.g(), line, "g");
    same(median.logLimits().low(), line, "low");
    same(median.logLimits().high(), line, "high");
    assertThat(median.limits().high())
        .isCloseTo(Math.pow(10, number(line, "high")), withinPercentage(DIGITS));
  }

  /** The table has twelve digits; chi-squared is a small difference of large sums. */
  private static void same(double value, NamedCsvRecord line, String column) {
    double tolerance = column.equals("chi") ? 1e-6 : DIGITS;
    assertThat(value).as(column).isCloseTo(number(line, column), withinPercentage(tolerance));
  }

  @ParameterizedTest
  @ValueSource(strings = {"rotenone", "deguelin", "bugres", "ends"})
  void enoughCyclesAreMaximumLikelihood(String set) {
    for (var weights : ControlWeights.values()) {
      for (var start :
          List.of(
              ProvisionalLine.unweighted(),
              ProvisionalLine.weighted(),
              ProvisionalLine.byEye(3.2, 2))) {
        var fit = HandProbit.of(HandAssays.named(set)).with(weights).with(start).untilStill();
        var both = fit.comparison();
        assertThat(both.hand().intercept()).isCloseTo(both.likelihood().intercept(), within(1e-8));
        assertThat(both.slopeDifference()).isCloseTo(0, within(1e-8));
        assertThat(both.logDoseDifference()).isCloseTo(0, within(1e-8));
        assertThat(both.dosePercent()).isCloseTo(0, within(1e-6));
      }
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"rotenone", "deguelin", "ends"})
  void limitsAtRestAreThoseOfTheMaximumLikelihoodFit(String set) {
    for (var rule :
        List.of(
            HeterogeneityRule.never(), HeterogeneityRule.always(), HeterogeneityRule.below(0.05))) {
      var fit = HandProbit.of(HandAssays.named(set)).with(rule).withConfidence(0.9).untilStill();
      for (double percent : new double[] {10, 50, 90}) {
        var hand = fit.lethalDose(percent);
        var other = fit.likelihoodFit().lethalDose(percent);
        assertThat(hand.dose()).isCloseTo(other.dose(), withinPercentage(1e-6));
        assertThat(hand.standardError())
            .isCloseTo(other.placeStandardError(), withinPercentage(1e-5));
        assertThat(hand.g()).isCloseTo(other.g(), withinPercentage(1e-5));
        assertThat(hand.limits().low()).isCloseTo(other.limits().low(), withinPercentage(1e-5));
        assertThat(hand.limits().high()).isCloseTo(other.limits().high(), withinPercentage(1e-5));
      }
      assertThat(fit.chiSquared())
          .isCloseTo(fit.likelihoodFit().pearsonChiSquared(), withinPercentage(1e-5));
      assertThat(fit.heterogeneityP())
          .isCloseTo(fit.likelihoodFit().goodnessOfFitP(), withinPercentage(1e-4));
      assertThat(fit.isHeterogeneous()).isEqualTo(fit.likelihoodFit().isHeterogeneityApplied());
    }
  }

  /**
   * Finney 1947, 1971 calculates the rotenone trial by hand and gives the log LD50 as 0.687, the
   * LD50 as 4.86 mg/L (from memory). He carries two decimals of log dose, whole per cent and
   * expected probits with one decimal from a line drawn by eye; the exact maximum-likelihood value
   * is 0.6853, 4.85 mg/L (read in Lei & Sun 2018). The roundings make up the difference.
   */
  @Test
  void textbookRoundingsGiveThePublishedRotenoneResult() {
    var rotenone = HandProbit.of(HandAssays.named("rotenone"));
    var hand = rotenone.with(HandRounding.TEXTBOOK).cycles(1);
    var exact = rotenone.untilStill();
    assertThat(hand.lethalDose(50).logDose()).isCloseTo(0.687, within(0.001));
    assertThat(hand.lethalDose(50).dose()).isCloseTo(4.86, within(0.011));
    assertThat(exact.lethalDose(50).dose()).isCloseTo(4.8455, within(0.0005));
    assertThat(exact.line().intercept() - 5).isCloseTo(-2.887, within(0.0005));
    assertThat(exact.line().slope()).isCloseTo(4.213, within(0.0005));
    assertThat(Math.sqrt(exact.slopeVariance())).isCloseTo(0.481, within(0.0005));
  }

  @Test
  void textbookColumnsHaveTheirDecimals() {
    var fit = HandProbit.of(HandAssays.named("rotenone")).with(HandRounding.TEXTBOOK).cycles(2);
    var groups = fit.question().groups();
    assertThat(groups)
        .extracting(ProbitGroup::logDose)
        .containsExactly(1.01, 0.89, 0.71, 0.58, 0.41);
    assertThat(groups)
        .extracting(ProbitGroup::percent)
        .containsExactly(88.0, 86.0, 52.0, 33.0, 12.0);
    assertThat(groups)
        .extracting(group -> group.empirical().getAsDouble())
        .containsExactly(6.17, 6.08, 5.05, 4.56, 3.83);
    for (var row : fit.last().rows()) {
      assertThat(10 * row.expected()).isCloseTo(Math.rint(10 * row.expected()), within(1e-9));
      assertThat(100 * row.working()).isCloseTo(Math.rint(100 * row.working()), within(1e-9));
      assertThat(row.weight())
          .isCloseTo(row.group().exposed() * row.coefficient(), within(0.05 + 1e-9));
    }
    assertThat(fit.comparison().dosePercent()).isBetween(-1.0, 1.0);
  }

  @Test
  void fourDecimalsComeNearerThanTextbookTables() {
    for (var set : List.of("rotenone", "deguelin", "bugres", "ends")) {
      var question = HandProbit.of(HandAssays.named(set));
      var four = question.with(HandRounding.FOUR_DECIMALS).cycles(8).comparison();
      assertThat(Math.abs(four.logDoseDifference())).as(set).isLessThan(2e-3);
    }
  }

  @Test
  void noneAndAllHaveNoEmpiricalProbitButAWorkingProbit() {
    var fit = HandProbit.of(HandAssays.named("ends")).cycles(1);
    var rows = fit.last().rows();
    assertThat(rows.get(0).group().empirical()).isEmpty();
    assertThat(rows.get(0).working()).isCloseTo(rows.get(0).least(), within(1e-9));
    assertThat(rows.get(4).group().empirical()).isEmpty();
    assertThat(rows.get(4).working()).isCloseTo(rows.get(4).most(), within(1e-9));
    assertThat(rows.get(0).working()).isLessThan(rows.get(0).expected());
    assertThat(rows.get(4).working()).isGreaterThan(rows.get(4).expected());
  }

  @Test
  void aPartIsNeverRoundedToNoneOrAll() {
    var data =
        HandAssays.of(
            "many", DoseGroup.of(1, 400, 1), DoseGroup.of(3, 400, 200), DoseGroup.of(9, 400, 399));
    var groups = HandProbit.of(data).with(HandRounding.TEXTBOOK).groups();
    assertThat(groups).extracting(ProbitGroup::percent).containsExactly(0.3, 50.0, 99.8);
  }

  @Test
  void aLineByEyeIsTakenAsItIs() {
    var line = ProbitLine.through(2.6, 12, 10.2, 88);
    var fit =
        HandProbit.of(HandAssays.named("rotenone")).with(ProvisionalLine.byEye(line)).cycles(1);
    assertThat(fit.provisional()).isEqualTo(line);
    assertThat(fit.last().from()).isEqualTo(line);
    assertThat(line.at(Math.log10(2.6))).isCloseTo(ProbitLine.probit(12), within(1e-12));
    assertThat(line.logDoseFor(88)).isCloseTo(Math.log10(10.2), within(1e-12));
  }

  @Test
  void twoDosesLeaveNothingToTest() {
    var data = HandAssays.of("two", DoseGroup.of(1, 50, 10), DoseGroup.of(10, 50, 40));
    var fit = HandProbit.of(data).untilStill();
    assertThat(fit.degreesOfFreedom()).isZero();
    assertThat(fit.heterogeneityP()).isEqualTo(1);
    assertThat(fit.line().at(0)).isCloseTo(ProbitLine.probit(20), within(1e-9));
    assertThat(fit.line().at(1)).isCloseTo(ProbitLine.probit(80), within(1e-9));
  }

  @Test
  void anUncertainSlopeHasNoFiniteLimits() {
    var data =
        HandAssays.of(
            "flat", DoseGroup.of(1, 10, 4), DoseGroup.of(2, 10, 5), DoseGroup.of(4, 10, 6));
    var fit = HandProbit.of(data).untilStill();
    var median = fit.lethalDose(50);
    assertThat(fit.g()).isGreaterThan(1);
    var other = fit.likelihoodFit().lethalDose(50).limits();
    assertThat(median.limits().shape()).isEqualTo(other.shape()).isNotEqualTo(LimitShape.BOUNDED);
    var far = fit.lethalDose(99.9);
    var farOther = fit.likelihoodFit().lethalDose(99.9).limits();
    assertThat(far.limits().shape()).isEqualTo(farOther.shape()).isEqualTo(LimitShape.OUTSIDE);
    assertThat(far.logLimits().low()).isCloseTo(Math.log10(farOther.low()), within(1e-6));
    assertThat(far.logLimits().high()).isCloseTo(Math.log10(farOther.high()), within(1e-6));
  }

  @Test
  void whatCannotBeCalculatedIsRefusedWithItsCure() {
    var same = HandAssays.of("same", DoseGroup.of(2, 10, 4), DoseGroup.of(2, 10, 5));
    assertThatThrownBy(() -> HandProbit.of(same))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("two different doses");
    var allOrNone = HandAssays.of("steep", DoseGroup.of(1, 10, 0), DoseGroup.of(2, 10, 10));
    assertThatThrownBy(() -> HandProbit.of(allOrNone).cycles(1))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("ProvisionalLine.byEye");
    var byEye = HandProbit.of(allOrNone).with(ProvisionalLine.byEye(4.5, 3));
    assertThat(byEye.cycles(3).line().slope()).isGreaterThan(3);
    assertThatThrownBy(byEye::untilStill).isInstanceOf(InputProblem.class);
    var falling = HandAssays.of("falling", DoseGroup.of(1, 50, 40), DoseGroup.of(10, 50, 10));
    assertThatThrownBy(() -> HandProbit.of(falling).untilStill().lethalDose(50))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("rises");
    var rotenone = HandProbit.of(HandAssays.named("rotenone"));
    assertThatThrownBy(() -> rotenone.cycles(0)).isInstanceOf(InputProblem.class);
    assertThatThrownBy(() -> rotenone.withConfidence(95)).isInstanceOf(InputProblem.class);
    var dead =
        HandAssays.of(
            "dead", DoseGroup.of(0, 5, 5), DoseGroup.of(1, 10, 4), DoseGroup.of(2, 10, 5));
    assertThatThrownBy(() -> HandProbit.of(dead)).isInstanceOf(InputProblem.class);
    var negative = HandAssays.of("negative", DoseGroup.of(-1, 10, 4), DoseGroup.of(2, 10, 5));
    assertThatThrownBy(() -> HandProbit.of(negative)).isInstanceOf(InputProblem.class);
  }

  @Test
  void anAssayOfSeveralSeriesIsRefused() {
    var data =
        HandAssays.of(
            "both",
            DoseGroup.of(1, 10, 4).inSeries("north"),
            DoseGroup.of(2, 10, 5).inSeries("north"),
            DoseGroup.of(1, 10, 3).inSeries("south"),
            DoseGroup.of(2, 10, 7).inSeries("south"));
    assertThatThrownBy(() -> HandProbit.of(data)).hasMessageContaining("ofSeries");
    assertThat(HandProbit.of(data.ofSeries("south")).groups()).hasSize(2);
  }
}
