package agro.generation.skill;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.stream.DoubleStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.hipparchus.distribution.continuous.NormalDistribution;

/** What must hold of scores whatever the numbers. */
class ScorePropertiesTest {

  private static final int DRAWS = 400;

  /** Mean score of a normal forecast when the dates come from another normal. */
  private static double meanScore(double mean, double sd, NormalDistribution truth) {
    var sum = 0.0;
    for (var i = 0; i < DRAWS; i++) {
      var date = truth.inverseCumulativeProbability((i + 0.5) / DRAWS);
      sum += RankedProbability.ofNormal(mean, sd, date);
    }
    return sum / DRAWS;
  }

  @Property(seed = "8", tries = 200)
  void theTrueDistributionIsBeatenByNone(
      @ForAll @DoubleRange(min = 0.5, max = 30) double sd,
      @ForAll @DoubleRange(min = -20, max = 20) double shift,
      @ForAll @DoubleRange(min = 0.2, max = 5) double stretch) {
    var truth = new NormalDistribution(150, sd);
    assertThat(meanScore(150, sd, truth))
        .isLessThanOrEqualTo(meanScore(150 + shift, sd * stretch, truth) + 0.002 * sd);
  }

  /** Days 1 to 5 and the chance of no day: on average no other mixture beats the true one. */
  @Property(seed = "8", tries = 300)
  void theCutScoreIsProperToo(
      @ForAll @Size(6) List<@IntRange(min = 1, max = 9) Integer> truth,
      @ForAll @Size(6) List<@IntRange(min = 1, max = 9) Integer> other) {
    assertThat(expected(truth, truth)).isLessThanOrEqualTo(expected(other, truth) + 1e-12);
  }

  private static double expected(List<Integer> forecast, List<Integer> truth) {
    var outcomes = outcomes(forecast);
    return Arrays.stream(outcomes(truth))
        .map(date -> RankedProbability.upTo(outcomes, date, 5.5))
        .average()
        .orElseThrow();
  }

  /** So many equally likely outcomes of each day as its weight; the last is "not reached". */
  private static double[] outcomes(List<Integer> weights) {
    var outcomes = DoubleStream.builder();
    for (var day = 0; day < weights.size(); day++) {
      for (var i = 0; i < weights.get(day); i++) {
        outcomes.add(day == weights.size() - 1 ? Double.POSITIVE_INFINITY : day + 1);
      }
    }
    return outcomes.build().toArray();
  }

  @Property(seed = "8")
  void aPointCostsItsDistance(
      @ForAll @DoubleRange(min = 0, max = 245) double point,
      @ForAll @DoubleRange(min = 0, max = 245) double date) {
    var distance = Math.abs(point - date);
    assertThat(RankedProbability.ofEnsemble(new double[] {point}, date)).isEqualTo(distance);
    assertThat(RankedProbability.ofEnsembleFair(new double[] {point}, date)).isEqualTo(distance);
    assertThat(RankedProbability.ofNormal(point, 0, date)).isEqualTo(distance);
    assertThat(RankedProbability.upTo(new double[] {point, point}, date, 245))
        .isEqualTo(distance, within(1e-9));
    assertThat(
            RankedProbability.ofQuantiles(new double[] {0.5}, new double[] {point}, 0, date, 245))
        .isEqualTo(distance, within(1e-9));
  }

  @Property(seed = "8")
  void orderOfMembersAndShiftsOfTheCalendarDoNotMatter(
      @ForAll @Size(min = 1, max = 12) List<@DoubleRange(min = 0, max = 245) Double> members,
      @ForAll @DoubleRange(min = 0, max = 245) double date,
      @ForAll @DoubleRange(min = -100, max = 100) double shift) {
    var all = members.stream().mapToDouble(x -> x).toArray();
    var backwards = all.clone();
    for (var i = 0; i < all.length; i++) {
      backwards[i] = all[all.length - 1 - i] + shift;
    }
    var score = RankedProbability.ofEnsemble(all, date);
    assertThat(score).isBetween(-1e-9, 245.0);
    assertThat(RankedProbability.ofEnsemble(backwards, date + shift))
        .isEqualTo(score, within(1e-9));
    assertThat(RankedProbability.upTo(all, date, 1e6)).isEqualTo(score, within(1e-9));
  }

  @Property(seed = "8")
  void aDenseEnsembleScoresAsItsDistribution(
      @ForAll @DoubleRange(min = 0.5, max = 20) double sd,
      @ForAll @DoubleRange(min = 100, max = 200) double date) {
    var normal = new NormalDistribution(150, sd);
    var members = new double[2001];
    for (var i = 0; i < members.length; i++) {
      members[i] = normal.inverseCumulativeProbability((i + 0.5) / members.length);
    }
    assertThat(RankedProbability.ofEnsemble(members, date))
        .isEqualTo(RankedProbability.ofNormal(150, sd, date), within(0.001 * sd));
  }

  @Property(seed = "8")
  void theTrueIntervalIsBeatenByNone(
      @ForAll @DoubleRange(min = -2.5, max = 0) double low,
      @ForAll @DoubleRange(min = 0, max = 2.5) double high) {
    var truth = new NormalDistribution();
    var z = truth.inverseCumulativeProbability(0.9);
    assertThat(meanIntervalScore(-z, z, truth))
        .isLessThanOrEqualTo(meanIntervalScore(low, high, truth) + 0.002);
  }

  private static double meanIntervalScore(double low, double high, NormalDistribution truth) {
    var sum = 0.0;
    for (var i = 0; i < DRAWS; i++) {
      var date = truth.inverseCumulativeProbability((i + 0.5) / DRAWS);
      sum += IntervalScore.of(low, high, date, 0.8);
    }
    return sum / DRAWS;
  }

  @Property(seed = "8")
  void theBinomialIntervalHoldsTheShare(
      @ForAll @IntRange(min = 1, max = 400) int forecasts,
      @ForAll @DoubleRange(min = 0, max = 1) double share) {
    var coverage = new IntervalCoverage((int) (share * forecasts), forecasts, 0.9);
    assertThat(coverage.low(0.95)).isLessThanOrEqualTo(coverage.share());
    assertThat(coverage.high(0.95)).isGreaterThanOrEqualTo(coverage.share());
    assertThat(coverage.low(0.99)).isLessThanOrEqualTo(coverage.low(0.95));
    assertThat(coverage.high(0.99)).isGreaterThanOrEqualTo(coverage.high(0.95));
  }
}
