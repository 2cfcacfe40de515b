package agro.generation.skill;

import java.util.List;
import java.util.Objects;
import org.hipparchus.util.FastMath;

/**
 * Skill in ranked probability against a reference, over the forecasts for which both could be made:
 * one less the ratio of the mean scores.
 *
 * @param reference the reference
 * @param skill 1 at best, 0 when no better than the reference; NaN when nothing could be compared
 * @param standardError error of the skill, seasons left out one by one (jackknife), for forecasts
 *     of one season stand and fall together; NaN for one season
 * @param forecasts number of forecasts compared
 */
public record SkillEstimate(
    SkillReference reference, double skill, double standardError, int forecasts) {

  /** Refuses null. */
  public SkillEstimate {
    Objects.requireNonNull(reference, "reference");
  }

  /** From sums by season: score of the forecasts, score of the reference, number. */
  static SkillEstimate of(SkillReference reference, List<double[]> bySeason) {
    var score = 0.0;
    var beaten = 0.0;
    var number = 0;
    for (var sums : bySeason) {
      score += sums[0];
      beaten += sums[1];
      number += (int) sums[2];
    }
    var n = bySeason.size();
    var without = new double[n];
    var mean = 0.0;
    for (var i = 0; i < n; i++) {
      without[i] = PointScores.skill(score - bySeason.get(i)[0], beaten - bySeason.get(i)[1]);
      mean += without[i] / n;
    }
    var squares = 0.0;
    for (var each : without) {
      squares += (each - mean) * (each - mean);
    }
    return new SkillEstimate(
        reference,
        number == 0 ? Double.NaN : PointScores.skill(score, beaten),
        n < 2 ? Double.NaN : FastMath.sqrt(squares * (n - 1) / n),
        number);
  }
}
