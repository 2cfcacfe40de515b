package agro.sampling.injury;

import agro.report.InputProblem;
import agro.sampling.NegativeBinomialCounts;
import agro.sampling.SamplingUnit;
import agro.source.SamplingBibliography;
import agro.units.Numbers;
import agro.working.Presentable;
import agro.working.Presentation;
import agro.working.Working;
import java.util.List;
import java.util.Objects;

/**
 * Whether scouting can see an injury level at all. Where nearly every animal is one too many, as on
 * crops sold by their looks or with carriers of a virus, the level lies below what a bearable
 * sample would find. The chance of finding no animal on n units at a density m is e^(−n m), or (1 +
 * m / k)^(−k n) when animals stand in clumps.
 *
 * @param unit what is looked at
 * @param threshold density to be seen, above 0, in animals for each unit
 * @param mostUnits units that can be looked at, 1 or more
 * @param missChance chance of finding none at the threshold that is borne, such as 0.05
 * @param exponent k of the counts; infinite for animals at random
 * @param shareSeen share of the animals present that an observer sees, above 0 and at most 1
 */
public record ScoutingReach(
    SamplingUnit unit,
    double threshold,
    int mostUnits,
    double missChance,
    double exponent,
    double shareSeen)
    implements Presentable {

  private static final double USUAL_MISS = 0.05;

  /**
   * Checks the numbers.
   *
   * @throws InputProblem when one is out of range
   */
  public ScoutingReach {
    Objects.requireNonNull(unit, "unit");
    if (!(threshold > 0 && Double.isFinite(threshold) && mostUnits >= 1)) {
      throw InputProblem.of("a density of " + threshold + " sought on " + mostUnits + " units")
          .expected("a density above 0 and at least one unit")
          .because("no sample, however large, shows that there is no animal at all")
          .mend("state the lowest density that matters, such as 0.01 for each plant");
    }
    if (!(missChance > 0 && missChance < 1)
        || !(exponent > 0)
        || !(shareSeen > 0 && shareSeen <= 1)) {
      throw InputProblem.of(
              "a chance of missing of "
                  + missChance
                  + ", k "
                  + exponent
                  + " and a seen share of "
                  + shareSeen)
          .expected("a chance between 0 and 1, k above 0, a share above 0 and at most 1")
          .because("the sample that it takes follows from them")
          .mend("take for example 0.05, the k of the pest, and 1 when nothing is overlooked");
    }
  }

  /**
   * Animals at random, none overlooked, missed with a chance of 5 % at most.
   *
   * @param unit what is looked at
   * @param threshold density to be seen
   * @param mostUnits units that can be looked at
   * @return the reach
   * @throws InputProblem when a number is out of range
   */
  public static ScoutingReach of(SamplingUnit unit, double threshold, int mostUnits) {
    return new ScoutingReach(unit, threshold, mostUnits, USUAL_MISS, Double.POSITIVE_INFINITY, 1);
  }

  /**
   * Another chance of missing.
   *
   * @param chance chance of finding none at the threshold, between 0 and 1
   * @return a new reach
   */
  public ScoutingReach withMissChance(double chance) {
    return new ScoutingReach(unit, threshold, mostUnits, chance, exponent, shareSeen);
  }

  /**
   * Animals in clumps.
   *
   * @param k exponent of the negative binomial, above 0
   * @return a new reach
   */
  public ScoutingReach withExponent(double k) {
    return new ScoutingReach(unit, threshold, mostUnits, missChance, k, shareSeen);
  }

  /**
   * Animals of which some are overlooked.
   *
   * @param share share that an observer sees, above 0 and at most 1
   * @return a new reach
   */
  public ScoutingReach withShareSeen(double share) {
    return new ScoutingReach(unit, threshold, mostUnits, missChance, exponent, share);
  }

  /** Logarithm of the chance of no animal on one unit, its sign turned. */
  private double perUnit() {
    return -new NegativeBinomialCounts(threshold * shareSeen, exponent).logProbability(0);
  }

  /**
   * Chance of finding no animal at the threshold.
   *
   * @param units units looked at, 1 or more
   * @return 0 to 1
   */
  public double chanceOfMissing(int units) {
    return Math.exp(-units * perUnit());
  }

  /**
   * Units that it takes before finding none says something.
   *
   * @return ln(1 / chance) / m for animals at random, ln(1 / chance) / (k ln(1 + m / k)) in clumps,
   *     rounded up
   */
  public long unitsNeeded() {
    return (long) Math.max(1, Math.ceil(exactUnits() - 1e-9));
  }

  private double exactUnits() {
    return -Math.log(missChance) / perUnit();
  }

  /**
   * Whether scouting can decide.
   *
   * @return true when the units needed can be looked at
   */
  public boolean canDecide() {
    return unitsNeeded() <= mostUnits;
  }

  /**
   * Density that cannot be excluded when no animal is found on all units that can be looked at.
   *
   * @return upper limit at the chance of missing, in animals for each unit
   */
  public double densityNotExcluded() {
    double each = -Math.log(missChance) / mostUnits;
    double seen = Double.isInfinite(exponent) ? each : exponent * Math.expm1(each / exponent);
    return seen / shareSeen;
  }

  /**
   * The answer in a sentence.
   *
   * @return whether scouting can decide, and the sample that it takes
   */
  public String answer() {
    var missed = Numbers.plain(100 * missChance) + " %";
    if (canDecide()) {
      return "Scouting can decide it: at the threshold, "
          + unitsNeeded()
          + " units without any animal come in "
          + missed
          + " of cases or fewer.";
    }
    return "Scouting cannot decide it: the level lies below what "
        + mostUnits
        + " units show. It would take "
        + unitsNeeded()
        + " units to miss it in no more than "
        + missed
        + " of cases. Decide by the risk of the place and the season instead.";
  }

  /**
   * The steps, as on a blackboard.
   *
   * @return chance for one unit, units needed, density that is not excluded
   */
  public Working working() {
    boolean random = Double.isInfinite(exponent);
    return Working.of("What scouting can see")
        .step(
            "chance of no animal on one unit at the threshold",
            random ? "e^(−m)" : "(1 + m / k)^(−k)",
            "m = "
                + Numbers.plain(threshold * shareSeen)
                + (random ? "" : ", k = " + Numbers.plain(exponent)),
            Numbers.fixed(chanceOfMissing(1), 6),
            SamplingBibliography.PRESENCE_AT_RANDOM)
        .step(
            "units until none is found with the stated chance only",
            "n = ln(1 / chance) / −ln(chance of none on one unit)",
            "ln(1 / " + Numbers.plain(missChance) + ") / " + Numbers.significant(perUnit(), 5),
            Numbers.fixed(exactUnits(), 2) + ", that is " + unitsNeeded() + " units")
        .step(
            "density that is not excluded by none on " + mostUnits + " units",
            "",
            "",
            Numbers.significant(densityNotExcluded(), 3) + " per " + unit.words());
  }

  @Override
  public Presentation presentation() {
    return Presentation.titled("Can scouting decide it?")
        .paragraph(answer())
        .fact("Level", Numbers.plain(threshold) + " per " + unit.words())
        .fact("Units that can be looked at", Integer.toString(mostUnits))
        .fact("Units that it takes", Long.toString(unitsNeeded()))
        .working(working())
        .sources(List.of())
        .build();
  }
}
