package agro.generation.skill;

import java.util.List;
import java.util.TreeMap;

/**
 * What some forecasts of past seasons were worth.
 *
 * @param forecasts number of forecasts
 * @param seasons number of seasons that they forecast
 * @param biasDays mean error of the median, positive when late
 * @param meanAbsoluteErrorDays mean absolute error of the median
 * @param rootMeanSquaredErrorDays root of the mean squared error of the median
 * @param rankedProbabilityDays mean ranked probability score up to the season's end
 * @param intervalScoreDays mean interval score of the 80 % interval
 * @param widthDays mean width of the 80 % interval
 * @param brierScore mean Brier score of the chance that the event comes at all this season
 * @param observedErrorDays mean standard error of the observed dates; NaN when none came
 * @param coverage coverage of the 50, 80 and 90 % intervals
 * @param skills skill in ranked probability against each reference, in the order of the enum
 */
public record HindcastScores(
    int forecasts,
    int seasons,
    double biasDays,
    double meanAbsoluteErrorDays,
    double rootMeanSquaredErrorDays,
    double rankedProbabilityDays,
    double intervalScoreDays,
    double widthDays,
    double brierScore,
    double observedErrorDays,
    List<IntervalCoverage> coverage,
    List<SkillEstimate> skills) {

  /** Chances of the intervals whose coverage is counted. */
  static final List<Double> CLAIMED = List.of(0.5, 0.8, 0.9);

  private static final double SCORED = 0.8;

  /** Copies the lists. */
  public HindcastScores {
    coverage = List.copyOf(coverage);
    skills = List.copyOf(skills);
  }

  /**
   * Scores forecasts.
   *
   * @param forecasts the forecasts, possibly none
   * @return their scores; means of nothing are NaN
   */
  public static HindcastScores of(List<HindcastForecast> forecasts) {
    var medians = forecasts.stream().mapToDouble(HindcastForecast::medianDays).toArray();
    var observed = forecasts.stream().mapToDouble(HindcastForecast::observedDays).toArray();
    return new HindcastScores(
        forecasts.size(),
        (int) forecasts.stream().mapToInt(HindcastForecast::year).distinct().count(),
        PointScores.bias(medians, observed),
        PointScores.meanAbsoluteError(medians, observed),
        PointScores.rootMeanSquaredError(medians, observed),
        mean(forecasts.stream().mapToDouble(HindcastForecast::rankedProbabilityDays).toArray()),
        mean(forecasts.stream().mapToDouble(each -> each.intervalScoreDays(SCORED)).toArray()),
        mean(forecasts.stream().mapToDouble(each -> each.widthDays(SCORED)).toArray()),
        mean(forecasts.stream().mapToDouble(HindcastForecast::brierScore).toArray()),
        mean(
            forecasts.stream()
                .filter(each -> each.observed().came())
                .mapToDouble(each -> each.observed().errorDays())
                .toArray()),
        CLAIMED.stream().map(claimed -> coverage(forecasts, claimed)).toList(),
        List.of(SkillReference.values()).stream().map(each -> skill(forecasts, each)).toList());
  }

  private static double mean(double[] values) {
    var sum = 0.0;
    for (var value : values) {
      sum += value;
    }
    return sum / values.length;
  }

  private static IntervalCoverage coverage(List<HindcastForecast> forecasts, double claimed) {
    var inside = (int) forecasts.stream().filter(each -> each.inside(claimed)).count();
    return new IntervalCoverage(inside, forecasts.size(), claimed);
  }

  /** Sums by season of the scores of forecasts that have the reference. */
  private static SkillEstimate skill(List<HindcastForecast> forecasts, SkillReference reference) {
    var bySeason = new TreeMap<Integer, double[]>();
    for (var each : forecasts) {
      var beaten = each.rankedProbabilityDays(reference);
      if (beaten.isPresent()) {
        var sums = bySeason.computeIfAbsent(each.year(), year -> new double[3]);
        sums[0] += each.rankedProbabilityDays();
        sums[1] += beaten.get();
        sums[2]++;
      }
    }
    return SkillEstimate.of(reference, List.copyOf(bySeason.values()));
  }

  /**
   * Skill against one reference.
   *
   * @param reference the reference
   * @return the skill
   */
  public SkillEstimate skill(SkillReference reference) {
    return skills.stream().filter(each -> each.reference() == reference).findFirst().orElseThrow();
  }
}
