package agro.sampling.sequential;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import agro.ReferenceTable;
import agro.report.InputProblem;
import agro.sampling.VarianceModel;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.util.List;
import java.util.OptionalInt;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.simple.RandomSource;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class SequentialPlanTest {

  private static final WaldLines CLUMPED =
      WaldLines.of(new CountFamily.Clumped(1.5), 2, 4, 0.1, 0.1);

  static List<NamedCsvRecord> plans() {
    return ReferenceTable.read(SequentialPlanTest.class, "plans.csv");
  }

  static List<NamedCsvRecord> band() {
    return ReferenceTable.read(SequentialPlanTest.class, "iwao-band.csv");
  }

  private static WaldLines lines(NamedCsvRecord row) {
    CountFamily family =
        switch (row.getField("family")) {
          case "POISSON" -> new CountFamily.AtRandom();
          case "BINOMIAL" -> new CountFamily.Presence();
          default -> new CountFamily.Clumped(ReferenceTable.number(row, "k"));
        };
    return WaldLines.of(
        family,
        ReferenceTable.number(row, "low"),
        ReferenceTable.number(row, "high"),
        ReferenceTable.number(row, "alpha"),
        ReferenceTable.number(row, "beta"));
  }

  /** Sources and tolerance: plans.csv. */
  @ParameterizedTest
  @MethodSource("plans")
  void agreesWithTheReference(NamedCsvRecord row) {
    var lines = lines(row);
    var wald = lines.approximation(ReferenceTable.number(row, "h"));
    double mean = ReferenceTable.number(row, "mean");
    var exact = PlanCurve.exactAt(SequentialPlan.of(lines), lines.family(), mean);
    var ended =
        PlanCurve.exactAt(
            SequentialPlan.truncated(lines, 12, EndRule.BY_THE_MIDDLE), lines.family(), mean);
    var open =
        PlanCurve.exactAt(
            SequentialPlan.truncated(lines, 12, EndRule.LEAVE_UNDECIDED), lines.family(), mean);

    close(lines.weight(), row, "d");
    close(lines.slope(), row, "slope");
    close(lines.lowIntercept(), row, "low_intercept");
    close(lines.highIntercept(), row, "high_intercept");
    close(wald.mean(), row, "mean");
    close(wald.chanceLow(), row, "wald_low");
    close(wald.meanUnits(), row, "wald_units");
    close(exact.chanceLow(), row, "exact_low");
    close(exact.meanUnits(), row, "exact_units");
    close(ended.chanceLow(), row, "ended_low");
    close(ended.meanUnits(), row, "ended_units");
    close(open.chanceUndecided(), row, "ended_undecided");
    assertThat(lines.approximationAt(mean).chanceLow()).isCloseTo(wald.chanceLow(), within(1e-6));
  }

  private static void close(double ours, NamedCsvRecord row, String column) {
    double value = ReferenceTable.number(row, column);
    assertThat(ours).as(column).isCloseTo(value, within(1e-9 * Math.max(1, Math.abs(value))));
  }

  /** Sources and tolerance: iwao-band.csv. */
  @ParameterizedTest
  @MethodSource("band")
  void theBandAgreesWithTheReference(NamedCsvRecord row) {
    var model =
        row.getField("model").equals("power")
            ? new VarianceModel.Power(2.5, 1.4)
            : new VarianceModel.Crowding(0.8, 1.3);
    var band = new ConfidenceBand(model, 5, ReferenceTable.number(row, "level"));
    int units = ReferenceTable.whole(row, "units");

    close(band.low(units), row, "low");
    close(band.high(units), row, "high");
  }

  /** Iwao 1975 (from memory), z = 1.96 and a half width of 1. */
  @Test
  void theBandEndsWhereTheMeanIsKnown() {
    var crowding = new ConfidenceBand(new VarianceModel.Crowding(0.8, 1.3), 5, 0.95);
    var power = new ConfidenceBand(new VarianceModel.Power(2.5, 1.4), 5, 0.95);
    assertThat(crowding.mostUnits(1)).isCloseTo(63.3840705415, within(1e-8));
    assertThat(power.mostUnits(1)).isCloseTo(91.4101026804, within(1e-8));
  }

  @Property(seed = "8", tries = 60)
  void exactChancesAddUpAndFallWithTheMean(
      @ForAll @DoubleRange(min = 0.2, max = 4) double low,
      @ForAll @DoubleRange(min = 1.3, max = 3) double ratio,
      @ForAll @DoubleRange(min = 0.3, max = 5) double k,
      @ForAll @DoubleRange(min = 0.02, max = 0.2) double error,
      @ForAll @IntRange(min = 5, max = 80) int most) {
    var family = new CountFamily.Clumped(k);
    var plan =
        SequentialPlan.truncated(
            WaldLines.of(family, low, low * ratio, error, error), most, EndRule.BY_THE_MIDDLE);
    var curve =
        PlanCurve.exact(plan, family, List.of(0.3 * low, low, low * ratio, 2 * low * ratio));
    double before = 1;
    for (var point : curve.points()) {
      assertThat(point.chanceLow() + point.chanceHigh() + point.chanceUndecided())
          .isCloseTo(1, within(1e-10));
      assertThat(point.meanUnits()).isBetween(1.0, most + 1e-9);
      assertThat(point.chanceLow()).isLessThanOrEqualTo(before + 1e-9);
      before = point.chanceLow();
    }
  }

  /** 200,000 walks, seed 3: the exact chance lies within four standard errors. */
  @Test
  void simulatedWalksAgree() {
    var plan = SequentialPlan.truncated(CLUMPED, 30, EndRule.BY_THE_MIDDLE);
    double mean = 2.6;
    var exact = PlanCurve.exactAt(plan, CLUMPED.family(), mean);
    var random = RandomSource.XO_SHI_RO_256_PP.create(3);
    int walks = 200_000;
    int low = 0;
    double units = 0;
    for (int walk = 0; walk < walks; walk++) {
      long total = 0;
      int n = 0;
      FieldClass verdict;
      do {
        n++;
        total += draw(random, mean, 1.5);
        verdict = plan.decide(n, total);
      } while (verdict == FieldClass.GO_ON);
      low += verdict == FieldClass.LOW ? 1 : 0;
      units += n;
    }
    double p = exact.chanceLow();
    assertThat((double) low / walks).isCloseTo(p, within(4 * Math.sqrt(p * (1 - p) / walks)));
    assertThat(units / walks)
        .isCloseTo(exact.meanUnits(), within(4 * exact.deviationOfUnits() / Math.sqrt(walks)));
  }

  /** A count by inversion of the distribution. */
  private static int draw(UniformRandomProvider random, double mean, double k) {
    double u = random.nextDouble();
    var family = new CountFamily.Clumped(k);
    int x = 0;
    double probability = family.probability(mean, 0);
    while (u > probability && x < 10_000) {
      u -= probability;
      // P(x + 1) / P(x) of the negative binomial.
      probability *= (k + x) / (x + 1) * mean / (mean + k);
      x++;
    }
    return x;
  }

  /** k 0.3, means 5 and 6, chances of error 5 %, at most 2,000 units: chances stay below it. */
  @Test
  void aHardPlanIsExactToo() {
    var family = new CountFamily.Clumped(0.3);
    var plan =
        SequentialPlan.truncated(
            WaldLines.of(family, 5, 6, 0.05, 0.05), 2_000, EndRule.LEAVE_UNDECIDED);
    var curve = PlanCurve.exact(plan, family, List.of(5.0, 6.0));
    assertThat(curve.points().get(0).chanceHigh()).isBetween(0.02, 0.05);
    assertThat(curve.points().get(1).chanceLow()).isBetween(0.02, 0.05);
    assertThat(curve.points().get(0).chanceUndecided()).isBetween(0.0, 0.2);
  }

  @Test
  void aPlanDecides() {
    var plan = SequentialPlan.truncated(CLUMPED, 30, EndRule.CALL_HIGH).atLeast(5);

    assertThat(plan.decide(4, 0)).isEqualTo(FieldClass.GO_ON);
    assertThat(plan.decide(5, 4)).isEqualTo(FieldClass.LOW);
    assertThat(plan.decide(10, 19)).isEqualTo(FieldClass.LOW);
    assertThat(plan.decide(10, 20)).isEqualTo(FieldClass.GO_ON);
    assertThat(plan.decide(10, 38)).isEqualTo(FieldClass.HIGH);
    assertThat(plan.decide(30, 85)).isEqualTo(FieldClass.HIGH);
    assertThat(SequentialPlan.truncated(CLUMPED, 30, EndRule.BY_THE_MIDDLE).decide(30, 84))
        .isEqualTo(FieldClass.LOW);
    assertThat(SequentialPlan.truncated(CLUMPED, 30, EndRule.LEAVE_UNDECIDED).decide(30, 84))
        .isEqualTo(FieldClass.UNDECIDED);
    assertThat(PlanCurve.exact(plan, CLUMPED.family(), List.of(2.0, 4.0)).presentation().toText())
        .contains("after 30 units, high", "Wald", "Exact");
    assertThat(CLUMPED.working().toText()).contains("0.241162", "2.811295");
  }

  @Test
  void badInputIsRefused() {
    var poisson = new CountFamily.AtRandom();
    refuses(() -> WaldLines.of(poisson, 2, 2, 0.1, 0.1), "a low mean below the high mean");
    refuses(() -> WaldLines.of(poisson, 0, 2, 0.1, 0.1), "a low mean of 0.0");
    refuses(() -> WaldLines.of(new CountFamily.Presence(), 0.2, 1, 0.1, 0.1), "high mean of 1.0");
    refuses(() -> WaldLines.of(poisson, 1, 2, 0.5, 0.5), "whose sum is below 1");
    refuses(() -> WaldLines.of(poisson, 1, 2, 0, 0.1), "chances of error of 0.0");
    refuses(() -> new CountFamily.Clumped(0), "exponent k of 0.0");
    refuses(() -> new ConfidenceBand(new VarianceModel.Random(), 5, 1), "at level 1.0");
    refuses(
        () ->
            new SequentialPlan(
                new ConfidenceBand(new VarianceModel.Random(), 5, 0.9),
                1,
                OptionalInt.empty(),
                EndRule.CALL_LOW),
        "greatest number of units");
    refuses(() -> SequentialPlan.truncated(CLUMPED, 0, EndRule.CALL_LOW), "a plan from 1 to");
    var plan = SequentialPlan.truncated(CLUMPED, 10, EndRule.CALL_LOW);
    refuses(() -> plan.decide(11, 3), "3 animals on 11 units");
    refuses(() -> plan.decide(1, -3), "-3 animals");
    refuses(() -> PlanCurve.exactAt(plan, CLUMPED.family(), 0), "a mean of 0.0");
    refuses(() -> CLUMPED.approximationAt(-1), "a mean of -1.0");
    refuses(
        () ->
            PlanCurve.exactAt(
                SequentialPlan.of(WaldLines.of(new CountFamily.Normal(1), 1, 2, 0.1, 0.1)),
                new CountFamily.Normal(1),
                1),
        "normal measurements");
  }

  private static void refuses(Runnable call, String part) {
    assertThatThrownBy(call::run).isInstanceOf(InputProblem.class).hasMessageContaining(part);
  }
}
