package agro.sampling.sequential;

import agro.report.InputProblem;
import agro.source.SamplingBibliography;
import agro.units.Numbers;
import agro.working.Working;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * A plan that asks of each unit only whether it has more animals than a tally. The means of the
 * test become shares of units by a relation, the lines are Wald's for shares, and the properties
 * are shown by the mean of the field again.
 *
 * @param relation how the share follows from the mean
 * @param lowMean mean at which the field should be called low
 * @param highMean mean at which it should be called high, above the low one
 * @param alpha chance of calling a field at the low mean high
 * @param beta chance of calling a field at the high mean low
 */
public record TallyPlan(
    TallyRelation relation, double lowMean, double highMean, double alpha, double beta) {

  /**
   * Checks the means.
   *
   * @throws InputProblem when the means are not in order
   */
  public TallyPlan {
    Objects.requireNonNull(relation, "relation");
    if (!(lowMean > 0 && highMean > lowMean && Double.isFinite(highMean))) {
      throw InputProblem.of("a low mean of " + lowMean + " and a high mean of " + highMean)
          .expected("two means above 0, the low one first")
          .because("the plan decides between the two")
          .mend("put them on both sides of the threshold, for example at 0.75 and 1.25 times it");
    }
  }

  /**
   * A plan on the share of units above a tally.
   *
   * @param relation how the share follows from the mean
   * @param lowMean mean at which the field should be called low
   * @param highMean mean at which it should be called high
   * @param alpha chance of calling a field at the low mean high
   * @param beta chance of calling a field at the high mean low
   * @return the plan
   * @throws InputProblem when the means are not in order
   */
  public static TallyPlan of(
      TallyRelation relation, double lowMean, double highMean, double alpha, double beta) {
    return new TallyPlan(relation, lowMean, highMean, alpha, beta);
  }

  /**
   * Wald's lines for the number of units above the tally.
   *
   * @return the lines
   * @throws InputProblem when the shares at the two means cannot be told apart, or the chances are
   *     out of range
   */
  public WaldLines lines() {
    return WaldLines.of(
        new CountFamily.Presence(),
        relation.shareAbove(lowMean),
        relation.shareAbove(highMean),
        alpha,
        beta);
  }

  /**
   * The plan with an end, fed with 1 for a unit above the tally and 0 for any other.
   *
   * @param mostUnits greatest number of units
   * @param endRule what is said at the end
   * @return the plan
   */
  public SequentialPlan upTo(int mostUnits, EndRule endRule) {
    return SequentialPlan.truncated(lines(), mostUnits, endRule);
  }

  /**
   * What to feed the plan with.
   *
   * @param animals animals on a unit, 0 or more
   * @return 1 for more than the tally, else 0
   */
  public int mark(int animals) {
    if (animals < 0) {
      throw InputProblem.of("a count of " + animals)
          .expected("0 or more")
          .because("nobody can count fewer than none")
          .mend("look for a minus sign");
    }
    return animals > relation.tally() ? 1 : 0;
  }

  /**
   * The exact properties by the mean of the field.
   *
   * @param plan a plan on these shares, ended or not
   * @param fields relation in the fields; another one than that of the plan shows what a wrong k
   *     does
   * @param means mean counts for each unit
   * @return properties at each mean, with the mean count and not the share as their mean
   * @throws InputProblem when a mean gives a share of 0 or 1
   */
  public PlanCurve curve(SequentialPlan plan, TallyRelation fields, List<Double> means) {
    if (fields.tally() != relation.tally()) {
      throw InputProblem.of("fields by a tally of " + fields.tally())
          .expected("the tally of the plan, " + relation.tally())
          .because("the same unit would be marked in one and not in the other")
          .mend("change the k alone");
    }
    var shares = means.stream().map(fields::shareAbove).toList();
    var curve = PlanCurve.exact(plan, new CountFamily.Presence(), shares);
    var points = new ArrayList<PlanCharacteristics>();
    for (int i = 0; i < means.size(); i++) {
      points.add(curve.points().get(i).at(means.get(i)));
    }
    return new PlanCurve(plan, curve.family(), points);
  }

  /**
   * The steps, as on a blackboard.
   *
   * @return shares at both means and the lines
   */
  public Working working() {
    return Working.of("Plan on units with more than " + relation.tally() + " animals")
        .step(
            "share of units above the tally at the low mean",
            "P(x > T) by " + relation.words(),
            "m = " + Numbers.plain(lowMean),
            Numbers.fixed(relation.shareAbove(lowMean), 4),
            SamplingBibliography.BINNS_2000)
        .step(
            "share of units above the tally at the high mean",
            "",
            "m = " + Numbers.plain(highMean),
            Numbers.fixed(relation.shareAbove(highMean), 4))
        .followedBy(lines().working());
  }
}
