package agro.trial.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import agro.ReferenceTable;
import agro.report.InputProblem;
import agro.stats.power.TestSides;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/** Replicates that a plan needs, and the degrees of freedom that it leaves. */
class ReplicatesNeededTest {

  private static final TreatmentFactor SIX =
      TreatmentFactor.treatments("untreated", "soap", "oil", "kaolin", "neem", "spinosad");

  private static final TreatmentFactor FOUR =
      TreatmentFactor.treatments("untreated", "soap", "oil", "kaolin");

  /** The first number of blocks whose power, in the committed table, reaches what is asked. */
  @Test
  void powersAreThoseOfTheComputedTable() {
    var lines = ReferenceTable.read(ReplicatesNeededTest.class, "power-of-blocks.csv");
    assertThat(lines).hasSize(64);
    for (var line : lines) {
      double power = ReferenceTable.number(line, "power");
      int replicates = ReferenceTable.whole(line, "replicates");
      var factor = ReferenceTable.whole(line, "treatments") == 4 ? FOUR : SIX;
      var plan =
          line.getField("design").equals("blocks")
              ? TrialPlan.completeBlocks("t", 2, factor)
              : TrialPlan.completelyRandomised("t", 2, factor);
      var wanted =
          WantedDifference.of(
                  ReferenceTable.number(line, "difference"), ReferenceTable.number(line, "cv"))
              .withSides(line.getField("sides").equals("1") ? TestSides.ONE : TestSides.TWO)
              .withPower(power - 1e-9);

      var needed = plan.replicatesFor(wanted);

      assertThat(needed.replicates()).as(line.toString()).isEqualTo(replicates);
      assertThat(needed.comparisons().get(0).needed().power()).isCloseTo(power, within(1e-9));
    }
  }

  /**
   * A difference of 30 % with a coefficient of variation of 25 %: 0.7881 with 11 blocks, 0.8232.
   */
  @Test
  void theAnswerNamesBlocksPowerAndDegreesOfFreedom() {
    var needed =
        TrialPlan.completeBlocks("Osmere Vale", 4, SIX).replicatesFor(WantedDifference.of(30, 25));

    assertThat(needed.replicates()).isEqualTo(12);
    assertThat(needed.sentence())
        .contains("12 blocks", "power 0.823", "55 residual degrees of freedom", "30 % of the mean");
    assertThat(needed.degreesNote()).contains("at least the 12", "from memory");
    assertThat(needed.presentation().toText())
        .contains("Power for 30 %", "14 blocks", "EPPO", "0.788");
  }

  @Test
  void tooFewDegreesOfFreedomAreSaidWithTheNumberThatWouldDo() {
    var needed = TrialPlan.completeBlocks("t", 4, FOUR).replicatesFor(WantedDifference.of(80, 20));

    assertThat(needed.replicates()).isLessThan(5);
    assertThat(needed.replicatesWithEnoughDegrees()).isEqualTo(5);
    assertThat(needed.degreesNote()).contains("fewer than the 12", "5 blocks do");
  }

  /**
   * 5 treatments in 5 blocks leave 16, 4 in 4 blocks 9, Latin squares of 4 and 5 leave 6 and 12.
   */
  @Test
  void residualDegreesOfFreedomAreThoseOfTheTextbooks() {
    var five = TreatmentFactor.treatments("a", "b", "c", "d", "e");

    assertThat(TrialPlan.completeBlocks("t", 5, five).degreesOfFreedom().residual()).isEqualTo(16);
    assertThat(TrialPlan.completeBlocks("t", 4, FOUR).degreesOfFreedom().residual()).isEqualTo(9);
    assertThat(TrialPlan.latinSquare("t", FOUR).degreesOfFreedom().residual()).isEqualTo(6);
    assertThat(TrialPlan.latinSquare("t", five).degreesOfFreedom().isEnough()).isTrue();
    assertThat(TrialPlan.latinSquare("t", FOUR).degreesOfFreedom().note())
        .contains("6 degrees of freedom", "fewer than the 12");
    assertThat(
            TrialPlan.completeBlocks("t", 4, FOUR)
                .withExtraPlots("untreated", 1)
                .degreesOfFreedom()
                .residual())
        .isEqualTo(13);
  }

  /** Oats of Yates (1935): 3 varieties on main plots, 4 manures, 6 blocks leave 10 and 45. */
  @Test
  void splitPlotsHaveTwoResiduals() {
    var plan =
        TrialPlan.splitPlot(
            "oats",
            6,
            TreatmentFactor.of("variety", "a", "b", "c"),
            TreatmentFactor.of("manure", "0", "1", "2", "3"));

    assertThat(
            plan.degreesOfFreedom().sources().stream()
                .filter(PlannedDegrees.Source::error)
                .map(PlannedDegrees.Source::degrees))
        .containsExactly(10, 45);
    assertThat(plan.replicatesFor(WantedDifference.of(30, 25)).comparisons()).hasSize(2);
  }

  @Property(seed = "8", tries = 60)
  void moreVariationNeverNeedsFewerBlocks(
      @ForAll @IntRange(min = 10, max = 60) int difference,
      @ForAll @IntRange(min = 5, max = 40) int variation) {
    var plan = TrialPlan.completeBlocks("t", 4, SIX);

    int needed = plan.replicatesFor(WantedDifference.of(difference, variation)).replicates();
    int more = plan.replicatesFor(WantedDifference.of(difference, variation + 5)).replicates();
    int scaled =
        plan.replicatesFor(WantedDifference.of(2 * difference, 2 * variation)).replicates();

    assertThat(more).isGreaterThanOrEqualTo(needed);
    assertThat(scaled).isEqualTo(needed);
  }

  @Test
  void numbersThatCannotBeAreRefused() {
    assertThatThrownBy(() -> WantedDifference.of(30, 0))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("never 0");
    assertThatThrownBy(() -> WantedDifference.of(30, 25).withPower(80))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("80 % as 0.8");
    assertThatThrownBy(() -> TrialPlan.completeBlocks("t", 1, SIX))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("no error to compare with");
    assertThatThrownBy(() -> TrialPlan.latinSquare("t", TreatmentFactor.treatments("a", "b")))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("3 or more");
    assertThatThrownBy(() -> TrialPlan.latinSquare("t", FOUR).withExtraPlots("soap", 1))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("complete blocks");
  }
}
