package agro.sampling.size;

import agro.report.InputProblem;
import agro.source.SamplingBibliography;
import agro.units.Numbers;
import agro.working.Presentable;
import agro.working.Presentation;
import agro.working.Working;

/**
 * Sampling at two levels, such as leaves on plants: how many leaves of each plant, and how many
 * plants. The least cost for a precision takes √((s_s² / s_p²)(c_p / c_s)) sub-units of each unit.
 *
 * @param varianceAmong s_p², variance among units, above 0
 * @param varianceWithin s_s², variance of sub-units within a unit, above 0
 * @param costOfUnit c_p, cost of going to one more unit, above 0, in minutes or money
 * @param costOfSubUnit c_s, cost of one more sub-unit, in the same measure
 */
public record TwoLevels(
    double varianceAmong, double varianceWithin, double costOfUnit, double costOfSubUnit)
    implements Presentable {

  /**
   * Checks the figures.
   *
   * @throws InputProblem when one is not above zero
   */
  public TwoLevels {
    for (double value : new double[] {varianceAmong, varianceWithin, costOfUnit, costOfSubUnit}) {
      if (!(value > 0 && Double.isFinite(value))) {
        throw InputProblem.of("a variance or a cost of " + value)
            .expected("finite numbers above 0")
            .because("without variance at a level nothing is to be sampled there")
            .mend("take variances from a pilot sample with sub-units, and costs in minutes");
      }
    }
  }

  /**
   * Best number of sub-units of each unit, before rounding.
   *
   * @return √((s_s² / s_p²)(c_p / c_s))
   */
  public double subUnitsPerUnit() {
    return Math.sqrt(varianceWithin / varianceAmong * costOfUnit / costOfSubUnit);
  }

  /**
   * Number of units for a variance of the mean, with a whole number of sub-units of each.
   *
   * @param subUnits sub-units of each unit, 1 or more
   * @param varianceOfMean greatest variance of the mean, above 0
   * @return units, rounded up
   */
  public int units(int subUnits, double varianceOfMean) {
    if (subUnits < 1 || !(varianceOfMean > 0)) {
      throw InputProblem.of(subUnits + " sub-units and a variance of " + varianceOfMean)
          .expected("1 or more sub-units, and a variance above 0")
          .because("no number of units follows")
          .mend("round the best number of sub-units, and square the standard error you want");
    }
    return (int) Math.ceil((varianceAmong + varianceWithin / subUnits) / varianceOfMean - 1e-9);
  }

  /**
   * Cost of a sample.
   *
   * @param units units
   * @param subUnits sub-units of each
   * @return the cost, in the measure of the costs given
   */
  public double cost(int units, int subUnits) {
    return units * (costOfUnit + subUnits * costOfSubUnit);
  }

  @Override
  public Presentation presentation() {
    var working =
        Working.of("Sub-units of each unit")
            .step(
                "best number",
                "√((s_s² / s_p²)(c_p / c_s))",
                "√(("
                    + Numbers.plain(varianceWithin)
                    + " / "
                    + Numbers.plain(varianceAmong)
                    + ") × ("
                    + Numbers.plain(costOfUnit)
                    + " / "
                    + Numbers.plain(costOfSubUnit)
                    + "))",
                Numbers.fixed(subUnitsPerUnit(), 2),
                SamplingBibliography.SOUTHWOOD_1978);
    return Presentation.titled("Two levels of sampling")
        .fact("Best number of sub-units", Numbers.fixed(subUnitsPerUnit(), 2))
        .working(working)
        .build();
  }
}
