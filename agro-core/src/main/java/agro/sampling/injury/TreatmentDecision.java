package agro.sampling.injury;

import agro.report.InputProblem;
import agro.source.SamplingBibliography;
import agro.units.Numbers;
import agro.working.Caution;
import agro.working.Presentable;
import agro.working.Presentation;
import java.util.List;
import java.util.Objects;

/**
 * Whether treating pays, as a chance.
 *
 * @param level the injury level with its uncertainty
 * @param density density with the error of its sample
 * @param chanceOfPaying chance that treating saves more than it costs
 * @param gainPerHectare mean over all draws of what treating gains where it gains, 0 or more: what
 *     leaving would lose by mistake
 * @param lossPerHectare mean over all draws of what treating loses where it loses, 0 or more: what
 *     treating would lose by mistake
 * @param leaveBelow chance below which the field is left
 * @param treatAbove chance above which it is treated
 */
public record TreatmentDecision(
    InjuryLevelDistribution level,
    UncertainNumber density,
    double chanceOfPaying,
    double gainPerHectare,
    double lossPerHectare,
    double leaveBelow,
    double treatAbove)
    implements Presentable {

  /**
   * Checks the chances.
   *
   * @throws InputProblem when the bounds of the verdict are not in order
   */
  public TreatmentDecision {
    Objects.requireNonNull(level, "level");
    Objects.requireNonNull(density, "density");
    if (!(leaveBelow > 0 && leaveBelow <= treatAbove && treatAbove < 1)) {
      throw InputProblem.of("leaving below " + leaveBelow + " and treating above " + treatAbove)
          .expected("two chances in order, above 0 and below 1")
          .because("between them the field is looked at again")
          .mend("take for example 0.1 and 0.9, or 0.5 and 0.5 to follow the mean alone");
    }
  }

  /**
   * The decision with other bounds of its verdict.
   *
   * @param leave chance below which the field is left
   * @param treat chance above which it is treated
   * @return a new decision
   * @throws InputProblem when the bounds are not in order
   */
  public TreatmentDecision withBounds(double leave, double treat) {
    return new TreatmentDecision(
        level, density, chanceOfPaying, gainPerHectare, lossPerHectare, leave, treat);
  }

  /**
   * What the chance speaks for.
   *
   * @return leave, look on or treat
   */
  public TreatmentVerdict verdict() {
    if (chanceOfPaying < leaveBelow) {
      return TreatmentVerdict.LEAVE;
    }
    return chanceOfPaying > treatAbove ? TreatmentVerdict.TREAT : TreatmentVerdict.LOOK_ON;
  }

  /**
   * What treating gains in the mean, its cost taken off.
   *
   * @return money for each hectare, below zero when treating loses in the mean
   */
  public double meanGainPerHectare() {
    return gainPerHectare - lossPerHectare;
  }

  /**
   * Standard error of the chance from the number of draws, at most: the slices of the draws make it
   * smaller.
   *
   * @return a share
   */
  public double chanceError() {
    return Math.sqrt(chanceOfPaying * (1 - chanceOfPaying) / level.terms().draws());
  }

  /**
   * Density up to which a field would be left if the density were known exactly.
   *
   * @return pests or pest-days
   */
  public double leaveUpTo() {
    return level.quantile(leaveBelow);
  }

  /**
   * Density from which a field would be treated if the density were known exactly.
   *
   * @return pests or pest-days
   */
  public double treatFrom() {
    return level.quantile(treatAbove);
  }

  @Override
  public Presentation presentation() {
    var currency = " " + level.terms().best().cost().currency().getCurrencyCode() + "/ha";
    return Presentation.titled("Does it pay to treat?")
        .fact("Verdict", verdict().words())
        .fact("Chance that treating pays", Numbers.fixed(100 * chanceOfPaying, 0) + " %")
        .fact("Density", density.words() + " " + level.measure().words())
        .fact("Mean gain of treating", Numbers.fixed(meanGainPerHectare(), 2) + currency)
        .fact("Lost in the mean by treating in vain", Numbers.fixed(lossPerHectare, 2) + currency)
        .fact("Lost in the mean by leaving", Numbers.fixed(gainPerHectare, 2) + currency)
        .fact(
            "If the density were known",
            "leave up to "
                + Numbers.significant(leaveUpTo(), 3)
                + ", treat from "
                + Numbers.significant(treatFrom(), 3)
                + " "
                + level.measure().words())
        .part(level.presentation())
        .cautions(Caution.all())
        .sources(List.of(SamplingBibliography.PEDIGO_1986))
        .build();
  }
}
