package agro.sampling.injury;

import agro.report.InputProblem;
import agro.source.SamplingBibliography;
import agro.units.Numbers;
import agro.working.Caution;
import agro.working.Presentable;
import agro.working.Presentation;
import agro.working.Working;
import java.util.Objects;

/**
 * The pests at which to act, so that the injury level is not reached before the treatment works.
 *
 * @param injuryLevel the injury level, above zero
 * @param measure what level and threshold are stated in
 * @param rule how the threshold follows from the level
 */
public record EconomicThreshold(double injuryLevel, PestMeasure measure, Rule rule)
    implements Presentable {

  /** How a threshold follows from an injury level. */
  public sealed interface Rule {

    /**
     * The threshold over the injury level.
     *
     * @return above 0
     */
    double ratio();

    /**
     * A fixed share of the level.
     *
     * @param share above 0 and at most 1
     */
    record FixedRatio(double share) implements Rule {
      /** Checks the share. */
      public FixedRatio {
        requireShare(share, "share of the injury level");
      }

      @Override
      public double ratio() {
        return share;
      }
    }

    /**
     * Growth of the pest until the treatment works: e^(−r t).
     *
     * @param ratePerDay r, growth of the logarithm of the numbers each day; below zero when the
     *     pest declines
     * @param leadTime t, from the count to the day on which the treatment works
     */
    record Growth(double ratePerDay, ThresholdLeadTime leadTime) implements Rule {
      /** Checks the rate. */
      public Growth {
        if (!Double.isFinite(ratePerDay)) {
          throw InputProblem.of("a growth rate of " + ratePerDay + " each day")
              .expected("a finite number, such as 0.12")
              .because("the numbers on the day of the treatment follow from it")
              .mend("take it from counts on two days: EconomicThreshold.growthRate");
        }
      }

      @Override
      public double ratio() {
        return Math.exp(-ratePerDay * leadTime.days());
      }
    }

    /**
     * A young stage that does harm only when it is older: the part that survives until then.
     *
     * @param survival share of the counted animals that reach the damaging stage, above 0
     * @param untilStage from the count to the day on which harm begins
     * @param toAct from the count to the day on which the treatment works
     */
    record BeforeStage(double survival, ThresholdLeadTime untilStage, ThresholdLeadTime toAct)
        implements Rule {
      /** Checks the survival. */
      public BeforeStage {
        requireShare(survival, "survival to the damaging stage");
      }

      @Override
      public double ratio() {
        return 1 / survival;
      }

      /**
       * Days that may still pass before the treatment has to be ordered.
       *
       * @return below zero when harm begins before the treatment works
       */
      public double daysLeft() {
        return untilStage.days() - toAct.days();
      }
    }
  }

  /**
   * Checks the level.
   *
   * @throws InputProblem when it is not above zero and finite
   */
  public EconomicThreshold {
    Objects.requireNonNull(measure, "measure");
    Objects.requireNonNull(rule, "rule");
    if (!(injuryLevel >= 0 && Double.isFinite(injuryLevel))) {
      throw InputProblem.of("an injury level of " + injuryLevel + " " + measure.words())
          .expected("a finite number of 0 or more")
          .because("the threshold follows from it")
          .mend("work out the injury level first");
    }
  }

  /**
   * A fixed share of the injury level.
   *
   * @param level the injury level
   * @param share above 0 and at most 1, often 0.75
   * @return the threshold
   * @throws InputProblem when the share is out of range
   */
  public static EconomicThreshold byRatio(InjuryLevel level, double share) {
    return new EconomicThreshold(level.level(), level.measure(), new Rule.FixedRatio(share));
  }

  /**
   * The injury level brought back by the growth of the pest until the treatment works.
   *
   * @param level the injury level
   * @param ratePerDay growth of the logarithm of the numbers each day
   * @param leadTime from the count to the day on which the treatment works
   * @return the threshold
   * @throws InputProblem when the rate is not finite, or the level is one of pest-days
   */
  public static EconomicThreshold byGrowth(
      InjuryLevel level, double ratePerDay, ThresholdLeadTime leadTime) {
    if (level.measure().kind() == PestMeasure.Kind.PEST_DAYS) {
      throw InputProblem.of("growth over a lead time for a level in " + level.measure().words())
          .expected("a level in pests")
          .because("pest-days add up with time and do not grow by a rate")
          .mend("turn the level into pests by the days that they feed, or take a fixed share");
    }
    return new EconomicThreshold(
        level.level(), level.measure(), new Rule.Growth(ratePerDay, leadTime));
  }

  /**
   * A threshold for a young stage, before the degree-days until the damaging stage have passed.
   *
   * @param level the injury level, in animals of the damaging stage
   * @param survival share of the counted animals that reach the damaging stage
   * @param untilStage from the count to the day on which harm begins
   * @param toAct from the count to the day on which the treatment works
   * @return the threshold, in animals of the young stage
   * @throws InputProblem when the survival is out of range
   */
  public static EconomicThreshold beforeStage(
      InjuryLevel level, double survival, ThresholdLeadTime untilStage, ThresholdLeadTime toAct) {
    return new EconomicThreshold(
        level.level(), level.measure(), new Rule.BeforeStage(survival, untilStage, toAct));
  }

  /**
   * Growth rate from counts on two days, r = ln(later / earlier) / days.
   *
   * @param earlier mean count on the first day, above 0
   * @param later mean count on the second, above 0
   * @param days days between them, above 0
   * @return growth of the logarithm of the numbers each day
   * @throws InputProblem when a number is not above zero
   */
  public static double growthRate(double earlier, double later, double days) {
    if (!(earlier > 0 && later > 0 && days > 0)) {
      throw InputProblem.of("growth from " + earlier + " to " + later + " in " + days + " days")
          .expected("three numbers above 0")
          .because("numbers that begin or end at none have no rate")
          .mend("take two days on which the pest was there");
    }
    return Math.log(later / earlier) / days;
  }

  /**
   * Days in which the numbers double, ln 2 / r.
   *
   * @param ratePerDay growth rate, above 0
   * @return days
   * @throws InputProblem when the rate is not above zero
   */
  public static double doublingDays(double ratePerDay) {
    if (!(ratePerDay > 0)) {
      throw InputProblem.of("a growth rate of " + ratePerDay + " each day")
          .expected("a number above 0")
          .because("numbers that do not grow never double")
          .mend("give the rate of a growing pest");
    }
    return Math.log(2) / ratePerDay;
  }

  /**
   * Growth rate of numbers that double in so many days.
   *
   * @param days above 0
   * @return growth of the logarithm of the numbers each day
   * @throws InputProblem when the number is not above zero
   */
  public static double rateOfDoubling(double days) {
    return growthRate(1, 2, days);
  }

  /**
   * The threshold.
   *
   * @return pests or pest-days for each sampling unit
   */
  public double threshold() {
    return injuryLevel * rule.ratio();
  }

  /**
   * The steps, as on a blackboard.
   *
   * @return level, rule and threshold
   */
  public Working working() {
    var working = Working.of("Economic threshold");
    var level = Numbers.significant(injuryLevel, 6);
    var result = Numbers.significant(threshold(), 6) + " " + measure.words();
    if (rule instanceof Rule.FixedRatio fixed) {
      return working.step(
          "a fixed share of the injury level",
          "ET = share · EIL",
          Numbers.plain(fixed.share()) + " · " + level,
          result,
          SamplingBibliography.FIXED_RATIO_THRESHOLD);
    }
    if (rule instanceof Rule.Growth growth) {
      return working
          .step("lead time", "t", growth.leadTime().basis(), days(growth.leadTime()))
          .step(
              "the injury level brought back by the growth of the pest",
              "ET = EIL · e^(−r t)",
              level
                  + " · e^(−"
                  + Numbers.plain(growth.ratePerDay())
                  + " · "
                  + Numbers.significant(growth.leadTime().days(), 4)
                  + ")",
              result,
              SamplingBibliography.PEDIGO_1996);
    }
    var before = (Rule.BeforeStage) rule;
    return working
        .step("days until harm begins", "", before.untilStage().basis(), days(before.untilStage()))
        .step(
            "days that are left to decide",
            "until harm begins less those to act",
            days(before.untilStage()) + " − " + days(before.toAct()),
            Numbers.fixed(before.daysLeft(), 1)
                + " d"
                + (before.daysLeft() < 0 ? ": too late to forestall the first harm" : ""))
        .step(
            "young animals that leave as many of the damaging stage",
            "ET = EIL / survival",
            level + " / " + Numbers.plain(before.survival()),
            result);
  }

  private static String days(ThresholdLeadTime time) {
    return Numbers.fixed(time.days(), 1) + " d";
  }

  @Override
  public Presentation presentation() {
    return Presentation.titled("Economic threshold")
        .fact("Act at", Numbers.significant(threshold(), 4) + " " + measure.words())
        .fact("Injury level", Numbers.significant(injuryLevel, 4) + " " + measure.words())
        .working(working())
        .cautions(Caution.all())
        .build();
  }

  private static void requireShare(double share, String what) {
    if (!(share > 0 && share <= 1)) {
      throw InputProblem.of("a " + what + " of " + share)
          .expected("a share above 0 and at most 1")
          .because("the threshold follows from it")
          .mend("divide per cent by 100");
    }
  }
}
