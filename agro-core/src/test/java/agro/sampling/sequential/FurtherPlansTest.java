package agro.sampling.sequential;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.offset;
import static org.assertj.core.api.Assertions.within;

import agro.ReferenceTable;
import agro.report.InputProblem;
import agro.report.Progress;
import agro.sampling.CountSample;
import agro.sampling.SamplingUnit;
import agro.sampling.VarianceModel;
import agro.sampling.presence.PresenceRelation;
import agro.sampling.sequential.TimeSequentialPlan.DayCount;
import agro.sampling.sequential.TimeSequentialPlan.ExpectedDay;
import agro.sampling.size.PrecisionStopLine;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class FurtherPlansTest {

  private static final SamplingUnit PLANT = SamplingUnit.of(SamplingUnit.Kind.PLANT);
  private static final CountFamily CLUMPED = new CountFamily.Clumped(0.9);
  private static final SequentialPlan PLAN =
      SequentialPlan.truncated(WaldLines.of(CLUMPED, 2, 4, 0.1, 0.1), 50, EndRule.LEAVE_UNDECIDED)
          .atLeast(5);

  /** Sources and tolerance: time-sequential.csv. */
  @Test
  void timeSequentialTestAgreesWithTheReference() {
    var rows = ReferenceTable.read(FurtherPlansTest.class, "time-sequential.csv");
    var days = new ArrayList<ExpectedDay>();
    var counts = new ArrayList<DayCount>();
    for (var row : rows) {
      days.add(
          new ExpectedDay(
              "day " + (days.size() + 1),
              ReferenceTable.number(row, "low"),
              ReferenceTable.number(row, "high")));
      counts.add(new DayCount(20, ReferenceTable.whole(row, "total")));
    }
    var plan = new TimeSequentialPlan(new CountFamily.Clumped(1.5), days, 0.1, 0.1);
    var course = plan.follow(counts);
    assertThat(plan.highBound()).isCloseTo(2.1972245773, offset(1e-9));
    assertThat(plan.lowBound()).isCloseTo(-2.1972245773, offset(1e-9));
    for (int i = 0; i < rows.size(); i++) {
      var standing = course.days().get(i);
      assertThat(standing.weight())
          .isCloseTo(ReferenceTable.number(rows.get(i), "weight"), offset(1e-9));
      assertThat(standing.allowance())
          .isCloseTo(ReferenceTable.number(rows.get(i), "allowance"), offset(1e-9));
      assertThat(standing.logRatio())
          .isCloseTo(ReferenceTable.number(rows.get(i), "sum"), offset(1e-9));
    }
    assertThat(course.days().get(0).decision()).isEqualTo(FieldClass.HIGH);
    assertThat(course.days().get(2).decision()).isEqualTo(FieldClass.GO_ON);
    assertThat(course.decision()).isEqualTo(FieldClass.HIGH);
    assertThat(course.presentation().toText()).contains("high: above the threshold");
    var four = new ArrayList<>(counts);
    four.add(new DayCount(20, 3));
    refused(() -> plan.follow(four), "4 counts for 3 days");
    refused(() -> new DayCount(0, 3), "3 animals on 0 units");
  }

  static List<NamedCsvRecord> tallyPlans() {
    return ReferenceTable.read(FurtherPlansTest.class, "tally-plans.csv");
  }

  /** Sources and tolerance: tally-plans.csv. */
  @ParameterizedTest
  @MethodSource("tallyPlans")
  void tallyPlansAgreeWithTheReference(NamedCsvRecord row) {
    int tally = ReferenceTable.whole(row, "tally");
    var relation = new TallyRelation.MoreThan(tally, ReferenceTable.number(row, "k"));
    var fields = new TallyRelation.MoreThan(tally, ReferenceTable.number(row, "fields_k"));
    var plan = TallyPlan.of(relation, 2, 4, 0.1, 0.1);
    assertThat(plan.lines().lowMean())
        .isCloseTo(ReferenceTable.number(row, "share_low"), offset(1e-9));
    assertThat(plan.lines().highMean())
        .isCloseTo(ReferenceTable.number(row, "share_high"), offset(1e-9));
    double mean = ReferenceTable.number(row, "mean");
    var point =
        plan.curve(plan.upTo(60, EndRule.BY_THE_MIDDLE), fields, List.of(mean)).points().get(0);
    assertThat(point.mean()).isEqualTo(mean);
    assertThat(point.chanceLow()).isCloseTo(ReferenceTable.number(row, "chance_low"), offset(1e-9));
    assertThat(point.meanUnits()).isCloseTo(ReferenceTable.number(row, "units"), offset(1e-8));
  }

  @Test
  void presenceRelationsMakeTallyPlans() {
    var zero = new TallyRelation.AnyAnimal(new PresenceRelation.ZeroTerm(0.9));
    var tally = new TallyRelation.MoreThan(0, 0.9);
    assertThat(zero.shareAbove(3)).isCloseTo(tally.shareAbove(3), offset(1e-12));
    var plan = TallyPlan.of(tally, 2, 4, 0.1, 0.1);
    assertThat(plan.mark(0)).isZero();
    assertThat(plan.mark(7)).isEqualTo(1);
    assertThat(plan.working().toText()).contains("0.6511", "0.7824");
    refused(
        () ->
            plan.curve(
                plan.upTo(60, EndRule.CALL_HIGH), new TallyRelation.MoreThan(1, 0.9), List.of(1.0)),
        "the tally of the plan, 0");
    refused(() -> TallyPlan.of(tally, 4, 2, 0.1, 0.1), "the low one first");
  }

  @Test
  void walksAgreeWithTheRecursion() {
    var means = List.of(1.0, 2.0, 3.0, 4.0, 6.0);
    var walked = PlanValidation.simulate(PLAN, CLUMPED, means, 40_000, 8);
    var exact = PlanCurve.exact(PLAN, CLUMPED, means);
    for (int i = 0; i < means.size(); i++) {
      agree(exact.points().get(i), walked.points().get(i));
    }
    assertThat(walked.presentation().toText()).contains("40000 times", "counts in clumps");
  }

  @Property(seed = "8", tries = 15)
  void walksOfAnyPlanAgreeWithTheRecursion(
      @ForAll @DoubleRange(min = 0.3, max = 4) double k,
      @ForAll @DoubleRange(min = 0.5, max = 4) double low,
      @ForAll @DoubleRange(min = 1.3, max = 3) double ratio,
      @ForAll @DoubleRange(min = 0.5, max = 6) double mean,
      @ForAll @IntRange(min = 1, max = 60) int most,
      @ForAll EndRule rule) {
    var family = new CountFamily.Clumped(k);
    var plan =
        SequentialPlan.truncated(WaldLines.of(family, low, low * ratio, 0.1, 0.05), most, rule);
    var walked = PlanValidation.simulate(plan, family, List.of(mean), 4_000, most);
    var exact = PlanCurve.exactAt(plan, family, mean);
    var point = walked.points().get(0);
    double spreadOfChance = Math.sqrt(exact.chanceLow() * (1 - exact.chanceLow()));
    assertThat(point.chanceLow())
        .isCloseTo(exact.chanceLow(), within(largestDifference(spreadOfChance, 1, 4_000)));
    assertThat(point.meanUnits())
        .isCloseTo(
            exact.meanUnits(), within(largestDifference(exact.deviationOfUnits(), most, 4_000)));
  }

  /**
   * Bernstein's bound: how far the mean of independent draws between zero and {@code most} may lie
   * from its expectation, with a chance of 2 exp(-12.5) = 7e-6 to lie further. A multiple of the
   * standard error does not bound it where a draw other than the usual one is rare.
   */
  private static double largestDifference(double deviation, double most, int draws) {
    double exponent = 12.5;
    double linear = exponent * most / (3.0 * draws);
    return linear + Math.sqrt(linear * linear + 2 * exponent * deviation * deviation / draws);
  }

  private static void agree(PlanCharacteristics exact, PlanValidation.WalkedPoint walked) {
    double error = Math.sqrt(exact.chanceLow() * (1 - exact.chanceLow()) / 40_000);
    assertThat(walked.chanceLow()).isCloseTo(exact.chanceLow(), within(4 * error + 1e-4));
    assertThat(walked.meanUnits())
        .isCloseTo(exact.meanUnits(), within(4 * exact.deviationOfUnits() / 200));
    assertThat(walked.chanceLow() + walked.chanceHigh() + walked.chanceUndecided())
        .isCloseTo(1, offset(1e-12));
  }

  @Test
  void walksDoNotDependOnThreads() {
    var counts = CountSample.of("plot", PLANT, 0, 0, 1, 4, 9, 0, 2, 3, 0, 1);
    assertThat(PlanValidation.resample(PLAN, counts, 5_000, 3, 1))
        .isEqualTo(PlanValidation.resample(PLAN, counts, 5_000, 3, 4));
    assertThat(PlanValidation.resample(PLAN, counts, 150, 3).walks()).isEqualTo(200);
  }

  @Test
  void walksCanBeCancelled() {
    Progress.listenOnThread(() -> (what, done, total) -> false);
    try {
      assertThatThrownBy(() -> PlanValidation.simulate(PLAN, CLUMPED, List.of(3.0), 50_000, 1))
          .isInstanceOf(CancellationException.class);
    } finally {
      Progress.listenOnThread(null);
    }
  }

  @Test
  void stopLinesAchieveAboutTheirPrecision() {
    var frequencies = new int[] {70, 38, 17, 10, 9, 3, 2, 1};
    var mites = CountSample.ofFrequencies("mites", PLANT, frequencies);
    double k = mites.mean() * mites.mean() / (mites.variance() - mites.mean());
    var line = new PrecisionStopLine(new VarianceModel.NegativeBinomial(k), 0.25);
    var result = PrecisionValidation.resample(line, mites, 5, 400, 4_000, 8);
    assertThat(result.achievedError()).isBetween(0.22, 0.28);
    assertThat(result.shareEnded()).isLessThan(0.01);
    assertThat(result.meanUnits()).isBetween(25.0, 40.0);
    assertThat(result.presentation().toText()).contains("25 % of the mean");
  }

  @Test
  void aWrongExponentShowsInTheTable() {
    var tried = PlanRobustness.ofExponents(PLAN, List.of(0.45, 0.9, 1.8), List.of(2.0, 4.0));
    var atLow = tried.curves().stream().map(curve -> curve.points().get(0).chanceLow()).toList();
    assertThat(atLow.get(0)).isLessThan(atLow.get(1));
    assertThat(atLow.get(1)).isLessThan(atLow.get(2));
    assertThat(tried.curves().get(1).points().get(1))
        .isEqualTo(PlanCurve.exactAt(PLAN, CLUMPED, 4));
    assertThat(tried.presentation().toText()).contains("k = 0.45", "Mean number of units");
    refused(() -> PlanRobustness.ofExponents(PLAN, List.of(), List.of(2.0)), "at least one");
  }

  @Test
  void badInputIsRefused() {
    refused(() -> PlanValidation.simulate(PLAN, CLUMPED, List.of(0.0), 100, 1), "a mean of 0.0");
    refused(() -> PlanValidation.simulate(PLAN, CLUMPED, List.of(1.0), 0, 1), "0 walks");
    refused(
        () -> PlanValidation.simulate(PLAN, new CountFamily.Normal(1), List.of(1.0), 100, 1),
        "a plan for counts or for presence and absence");
    var none = CountSample.of("none", PLANT, 0, 0, 0);
    var line = new PrecisionStopLine(new VarianceModel.Random(), 0.25);
    refused(
        () -> PrecisionValidation.resample(line, none, 5, 100, 100, 1), "all 3 counts are zero");
  }

  private static void refused(
      org.assertj.core.api.ThrowableAssert.ThrowingCallable call, String words) {
    assertThatThrownBy(call).isInstanceOf(InputProblem.class).hasMessageContaining(words);
  }
}
