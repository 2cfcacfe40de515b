package agro.trial.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import agro.report.InputProblem;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

/** Arrangements come up equally often, and the generator is the published one. */
class RandomisationTest {

  /** First numbers of SplitMix64 from the seed 1234567, as published with its test programs. */
  @Test
  void numbersArePublishedOnes() {
    var draws = new SeededDraws(1234567);

    assertThat(IntStream.range(0, 5).mapToObj(i -> Long.toUnsignedString(draws.next())))
        .containsExactly(
            "6457827717110365317",
            "3203168211198807973",
            "9817491932198370423",
            "4593380528125082431",
            "16408922859458223821");
  }

  /** The library's splittable generator is SplitMix64 too. */
  @Property(seed = "8", tries = 200)
  void numbersAgreeWithTheSplittableGeneratorOfTheLibrary(@ForAll long seed) {
    var draws = new SeededDraws(seed);
    var library = new SplittableRandom(seed);

    for (int i = 0; i < 5; i++) {
      assertThat(draws.next()).isEqualTo(library.nextLong());
    }
  }

  /** There are 1, 1, 4, 56 and 9408 reduced squares of the orders 2 to 6 (Euler; Tarry 1900). */
  @Test
  void reducedLatinSquaresAreAllListed() {
    assertThat(IntStream.rangeClosed(2, 6).mapToObj(n -> RandomLatinSquare.reduced(n).size()))
        .containsExactly(1, 1, 4, 56, 9408);
  }

  /** 576 squares of order 4: the 0.999 quantile of chi-square with 575 degrees is 685.5. */
  @Test
  void eachLatinSquareOfOrderFourIsAsLikely() {
    var draws = new SeededDraws(20260101);
    Map<List<List<Integer>>, Integer> times = new HashMap<>();
    int drawn = 40 * 576;
    for (int i = 0; i < drawn; i++) {
      times.merge(RandomLatinSquare.draw(4, draws), 1, Integer::sum);
    }

    assertThat(times).hasSize(576);
    assertThat(chiSquare(times, drawn)).isBetween(475.8, 685.5);
  }

  /**
   * The chain for large orders, tried on order 4 where all squares are known. Its squares before
   * rows, columns and symbols are shuffled are correlated only through the walk.
   */
  @Test
  void theChainVisitsEachLatinSquareOfOrderFourAsOften() {
    Map<String, Integer> times = new HashMap<>();
    int drawn = 40 * 576;
    var draws = new SeededDraws(20260102);
    for (int i = 0; i < drawn; i++) {
      var square = new LatinSquareChain(4, draws).walk(64);
      times.merge(Arrays.deepToString(square), 1, Integer::sum);
    }

    assertThat(times).hasSize(576);
    assertThat(chiSquare(times, drawn)).isBetween(475.8, 685.5);
  }

  /** 24 orders in each of two blocks: 0.999 quantile of chi-square with 575 degrees. */
  @Test
  void eachArrangementOfTwoBlocksIsAsLikely() {
    var plan = TrialPlan.completeBlocks("t", 2, TreatmentFactor.treatments("a", "b", "c", "d"));
    Map<Map<String, String>, Integer> times = new HashMap<>();
    int drawn = 20 * 576;
    for (int seed = 0; seed < drawn; seed++) {
      times.merge(plan.draw(seed).treatmentsByPlot(), 1, Integer::sum);
    }

    assertThat(times).hasSize(576);
    assertThat(chiSquare(times, drawn)).isBetween(475.8, 685.5);
  }

  /** With different neighbours two blocks of three have 6 × 2 arrangements; 11 degrees: 31.3. */
  @Test
  void theConditionOnNeighboursFavoursNoArrangement() {
    var plan =
        TrialPlan.completeBlocks("t", 2, TreatmentFactor.treatments("a", "b", "c"))
            .withDifferentNeighbours();
    Map<Map<String, String>, Integer> times = new HashMap<>();
    int drawn = 2400;
    for (int seed = 0; seed < drawn; seed++) {
      times.merge(plan.draw(seed).treatmentsByPlot(), 1, Integer::sum);
    }

    assertThat(times).hasSize(12);
    assertThat(chiSquare(times, drawn)).isLessThan(31.3);
  }

  @Test
  void aConditionThatNoLayoutCanKeepIsRefused() {
    var plan =
        TrialPlan.completeBlocks("t", 3, TreatmentFactor.treatments("a", "b"))
            .withExtraPlots("a", 4)
            .withDifferentNeighbours();

    assertThatThrownBy(() -> plan.draw(1))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("neighbours")
        .hasMessageContaining("leave the condition out");
  }

  private static double chiSquare(Map<?, Integer> times, int drawn) {
    double expected = (double) drawn / times.size();
    return times.values().stream()
        .mapToDouble(count -> (count - expected) * (count - expected) / expected)
        .sum();
  }
}
