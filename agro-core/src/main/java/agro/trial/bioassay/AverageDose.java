package agro.trial.bioassay;

import agro.units.Numbers;
import agro.working.Caution;
import agro.working.Presentable;
import agro.working.Presentation;
import java.util.List;
import java.util.Objects;

/**
 * A lethal dose over several days or batches.
 *
 * @param axis what the doses measure
 * @param percent level in percent
 * @param overTheseDays dose on the line of the mean intercept with a common slope: days as fixed
 *     blocks, limits for these very days
 * @param overAllDays dose in the mean of days like these, days as a random sample
 * @param overAllDaysLimits its limits with Student's t on days less 1
 * @param variance variance between days on the scale of the line
 * @param chiSquared scatter of the days' doses over their own errors
 * @param degreesOfFreedom days less 1
 */
public record AverageDose(
    DoseAxis axis,
    double percent,
    LethalDose overTheseDays,
    double overAllDays,
    DoseLimits overAllDaysLimits,
    double variance,
    double chiSquared,
    int degreesOfFreedom)
    implements Presentable {

  /** Refuses nulls. */
  public AverageDose {
    Objects.requireNonNull(axis, "axis");
    Objects.requireNonNull(overTheseDays, "overTheseDays");
    Objects.requireNonNull(overAllDaysLimits, "overAllDaysLimits");
  }

  /** Moments after DerSimonian and Laird 1986. */
  static AverageDose of(ParallelDoses doses, DoseResponse choices, double percent) {
    int days = doses.count();
    var place = new double[days];
    var weight = new double[days];
    for (int j = 0; j < days; j++) {
      var dose = doses.lethalDose(j, percent);
      place[j] = dose.place();
      weight[j] = 1 / (dose.placeStandardError() * dose.placeStandardError());
    }
    double sum = 0;
    double squares = 0;
    for (double each : weight) {
      sum += each;
      squares += each * each;
    }
    double mean = mean(place, weight);
    double scatter = 0;
    for (int j = 0; j < days; j++) {
      scatter += weight[j] * (place[j] - mean) * (place[j] - mean);
    }
    double between = Math.max(0, (scatter - (days - 1)) / (sum - squares / sum));
    double total = 0;
    for (int j = 0; j < days; j++) {
      weight[j] = 1 / (1 / weight[j] + between);
      total += weight[j];
    }
    double over = mean(place, weight);
    double half = Deviates.student(choices.confidence(), days - 1) / Math.sqrt(total);
    var scale = choices.scale();
    return new AverageDose(
        doses.axis(),
        percent,
        doses.meanDose(percent),
        scale.dose(over),
        DoseLimits.between(scale.dose(over - half), scale.dose(over + half)),
        between,
        scatter,
        days - 1);
  }

  private static double mean(double[] values, double[] weights) {
    double sum = 0;
    double total = 0;
    for (int i = 0; i < values.length; i++) {
      sum += weights[i] * values[i];
      total += weights[i];
    }
    return sum / total;
  }

  /**
   * Chance of as much scatter between days when all have one dose.
   *
   * @return 0 to 1
   */
  public double chanceOfLarger() {
    return Deviates.chiSquaredTail(chiSquared, degreesOfFreedom);
  }

  /**
   * Scatter between days in words.
   *
   * @return χ², degrees of freedom and P
   */
  public String words() {
    return "χ² = "
        + Numbers.fixed(chiSquared, 2)
        + "; df = "
        + degreesOfFreedom
        + "; "
        + Deviates.words(chanceOfLarger());
  }

  @Override
  public Presentation presentation() {
    var level = Numbers.plain(percent);
    return Presentation.titled("LD" + level + " over " + (degreesOfFreedom + 1) + " days")
        .fact("Days as fixed blocks, common slope", axis.print(overTheseDays.dose()))
        .fact("Limits for these days", axis.limits(overTheseDays.limits()))
        .fact("Days as a random sample", axis.print(overAllDays))
        .fact("Limits for days like these", axis.limits(overAllDaysLimits))
        .fact("Scatter between days", words())
        .fact("Variance between days on the scale of the line", Numbers.significant(variance, 4))
        .paragraph(
            "Whoever repeats the assay on another day should look at the second limits; with few"
                + " days the variance between them is hardly known.")
        .paragraph(FitPrint.LABORATORY)
        .cautions(Caution.all())
        .sources(List.of(BioassaySources.DERSIMONIAN_LAIRD_1986, BioassaySources.FIELLER_1954))
        .build();
  }
}
