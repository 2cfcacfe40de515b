package agro.programme.bulletin;

import agro.sampling.CountSample;
import agro.sampling.SamplingUnit;
import agro.sampling.injury.CropLoss;
import agro.sampling.injury.InjuryLevel;
import agro.sampling.injury.MoneyPerArea;
import agro.sampling.injury.PestMeasure;
import agro.sampling.injury.TreatmentVerdict;
import agro.sampling.injury.UncertainInjuryLevel;
import agro.sampling.injury.UncertainNumber;
import java.util.Objects;
import java.util.Optional;

/**
 * The user's threshold of a pest: animals for each unit from which treating is thought to pay.
 *
 * @param pest the pest
 * @param crop the crop for which it holds; nothing for every crop
 * @param unit sampling unit of the counts that are held against it
 * @param level animals for each unit, above zero
 * @param injury the injury level that the number comes from; nothing where the user stated it
 * @param source where it comes from, in the words of the user
 */
public record PestThreshold(
    String pest,
    Optional<String> crop,
    SamplingUnit unit,
    double level,
    Optional<InjuryLevel> injury,
    String source) {

  /** Below this chance the field is left alone, above the other it is treated. */
  private static final double LEAVE_BELOW = 0.1;

  private static final double TREAT_ABOVE = 0.9;

  /** Refuses nulls and a level that is not above zero. */
  public PestThreshold {
    Objects.requireNonNull(pest, "pest");
    Objects.requireNonNull(crop, "crop");
    Objects.requireNonNull(unit, "unit");
    Objects.requireNonNull(injury, "injury");
    Objects.requireNonNull(source, "source");
    if (!(level > 0)) {
      throw new IllegalArgumentException("a threshold lies above zero, but got " + level);
    }
  }

  /**
   * A threshold from what treating costs and what a pest costs when nothing is done.
   *
   * @param pest the pest
   * @param crop the crop; nothing for every crop
   * @param unit sampling unit
   * @param cost cost of a treatment with bringing it out
   * @param cropValue value of the crop
   * @param shareLostPerPest share of the crop that one pest for each unit takes
   * @param sharePrevented share of the loss that the treatment prevents
   * @param source where the terms come from
   * @return the threshold at the injury level
   */
  static PestThreshold economic(
      String pest,
      Optional<String> crop,
      SamplingUnit unit,
      MoneyPerArea cost,
      MoneyPerArea cropValue,
      double shareLostPerPest,
      double sharePrevented,
      String source) {
    var level =
        InjuryLevel.of(
            cost,
            new CropLoss.OfCropValue(1, shareLostPerPest, cropValue),
            sharePrevented,
            PestMeasure.pestsPer(unit));
    return new PestThreshold(pest, crop, unit, level.level(), Optional.of(level), source);
  }

  /**
   * Chance that treating pays, or that the mean of the field lies above the threshold.
   *
   * @param counts counts in the unit of the threshold
   * @return 0 to 1, from the error of the sample
   */
  double chanceAbove(CountSample counts) {
    return injury
        .map(each -> UncertainInjuryLevel.of(each).distribution().decide(counts).chanceOfPaying())
        .orElseGet(() -> 1 - UncertainNumber.densityOf(counts).chanceUpTo(level));
  }

  /** What that chance speaks for. */
  TreatmentVerdict verdict(CountSample counts) {
    if (injury.isPresent()) {
      return UncertainInjuryLevel.of(injury.get()).distribution().decide(counts).verdict();
    }
    double chance = chanceAbove(counts);
    if (chance < LEAVE_BELOW) {
      return TreatmentVerdict.LEAVE;
    }
    return chance > TREAT_ABOVE ? TreatmentVerdict.TREAT : TreatmentVerdict.LOOK_ON;
  }
}
