package agro.sampling.field;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import agro.report.InputProblem;
import agro.sampling.CountSample;
import agro.sampling.SamplingUnit;
import agro.sampling.sequential.CountFamily;
import agro.sampling.sequential.EndRule;
import agro.sampling.sequential.FieldClass;
import agro.sampling.sequential.SequentialPlan;
import agro.sampling.sequential.TallyPlan;
import agro.sampling.sequential.TallyRelation;
import agro.sampling.sequential.WaldLines;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

class PlanWalkTest {

  private static final SamplingUnit PLANT = SamplingUnit.of(SamplingUnit.Kind.PLANT);

  /** Lines −3.17 + 1.443 n and 3.17 + 1.443 n: low first after 3 units, from Wald's formulas. */
  private static final SequentialPlan PLAN =
      SequentialPlan.truncated(
          WaldLines.of(new CountFamily.AtRandom(), 1, 2, 0.1, 0.1), 12, EndRule.LEAVE_UNDECIDED);

  @Test
  void saysWhatToDoAfterEachCount() {
    var walk = PlanWalk.start(PLAN, PLANT);
    assertThat(walk.next())
        .isEqualTo("Go on: at most 12 more; 3 more without animals would make it low.");
    walk = walk.count(1);
    assertThat(walk.reason())
        .isEqualTo("1 animal on 1 × plant: too few units for low, high at or above 5; go on.");
    assertThat(walk.mostMore()).hasValue(11);
    assertThat(walk.emptyUnitsToLow()).hasValue(2);
    walk = walk.count(0).count(0);
    assertThat(walk.says()).isEqualTo(FieldClass.LOW);
    assertThat(walk.reason())
        .isEqualTo("1 animal on 3 × plant: at or below 1, where the field is low.");
    assertThat(walk.next()).isEqualTo("Stop: low: below the threshold.");
    assertThat(walk.mostMore()).hasValue(0);
    var stopped = walk;
    refused(() -> stopped.count(0), "a count after the plan had stopped at plant 3");
    assertThat(walk.presentation().toText())
        .contains("On the way through the field", "Low at or below");
  }

  @Test
  void stopsHighAtTheLine() {
    var walk = PlanWalk.start(PLAN, PLANT).count(3).count(4);
    assertThat(walk.says()).isEqualTo(FieldClass.HIGH);
    assertThat(walk.reason()).contains("at or above 7, where the field is high");
  }

  @Test
  void endsUndecidedBetweenTheLines() {
    var walk = PlanWalk.start(PLAN, PLANT);
    for (int i = 0; i < 12; i++) {
      walk = walk.count(i % 2 + 1);
    }
    assertThat(walk.says()).isEqualTo(FieldClass.UNDECIDED);
    assertThat(walk.reason()).contains("the end of the plan between its lines");
  }

  @Test
  void followsASampleOfItsOwnUnitAlone() {
    var walk = PlanWalk.start(PLAN, PLANT);
    assertThat(walk.follow(CountSample.of("a", PLANT, 0, 0, 0, 9, 9)).counts())
        .containsExactly(0, 0, 0);
    refused(
        () -> walk.follow(CountSample.of("a", SamplingUnit.of(SamplingUnit.Kind.LEAF), 1, 2)),
        "counts for each plant and for each leaf");
    refused(() -> walk.count(-1), "a count of -1 as number 1");
  }

  @Test
  void tallyPlansMarkUnits() {
    var tallies = TallyPlan.of(new TallyRelation.MoreThan(2, 0.9), 2, 4, 0.1, 0.1);
    var plan = tallies.upTo(30, EndRule.CALL_HIGH);
    var walk = PlanWalk.start(tallies, plan, PLANT).count(2).count(3).count(40);
    assertThat(walk.total()).isEqualTo(2);
    assertThat(walk.reason()).contains("2 marked units on 3");
    refused(() -> PlanWalk.start(plan, PLANT).count(3), "1 for a unit with animals");
  }

  @Test
  void anOpenPlanSetsNoGreatestNumber() {
    var open = SequentialPlan.of(WaldLines.of(new CountFamily.AtRandom(), 1, 2, 0.1, 0.1));
    var walk = PlanWalk.start(open, PLANT).count(3);
    assertThat(walk.mostMore()).isEmpty();
    assertThat(walk.next()).contains("no greatest number is set");
    assertThat(walk.emptyUnitsToLow()).hasValue(4);
  }

  /** Whatever is counted, a walk stops in time and says the same as the plan. */
  @Property(seed = "8", tries = 200)
  void aWalkStopsInTime(@ForAll @Size(12) List<@IntRange(min = 0, max = 4) Integer> counts) {
    var walk = PlanWalk.start(PLAN, PLANT).follow(new CountSample("any", PLANT, counts));
    assertThat(walk.isStopped()).isTrue();
    assertThat(walk.says()).isEqualTo(PLAN.decide(walk.units(), walk.total()));
    for (int n = 1; n < walk.units(); n++) {
      var earlier = new PlanWalk(PLAN, PLANT, walk.tally(), counts.subList(0, n));
      assertThat(earlier.isStopped()).isFalse();
      assertThat(earlier.mostMore().orElseThrow()).isGreaterThanOrEqualTo(walk.units() - n);
    }
  }

  private static void refused(
      org.assertj.core.api.ThrowableAssert.ThrowingCallable call, String words) {
    assertThatThrownBy(call).isInstanceOf(InputProblem.class).hasMessageContaining(words);
  }
}
