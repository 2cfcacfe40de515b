package agro.sampling.injury;

import agro.report.InputProblem;
import agro.sampling.SamplingUnit;
import agro.units.Numbers;
import java.util.Objects;

/**
 * How many of one sampling unit make one of another, as somebody stated or counted it: leaves on a
 * plant, plants on a square metre. Nothing here knows such a number by itself.
 *
 * @param from the smaller unit
 * @param to the larger unit
 * @param number units of the first in one of the second, above 0
 * @param statedBy who says so: a count, a stand, a source
 */
public record UnitConversion(SamplingUnit from, SamplingUnit to, double number, String statedBy) {

  /**
   * Checks the number.
   *
   * @throws InputProblem when it is not above zero, or nobody is named who states it
   */
  public UnitConversion {
    Objects.requireNonNull(from, "from");
    Objects.requireNonNull(to, "to");
    if (!(number > 0 && Double.isFinite(number)) || statedBy.isBlank()) {
      throw InputProblem.of(number + " × " + from.words() + " for each " + to.words())
          .expected("a number above 0 and who states it, such as \"counted on 20 plants\"")
          .because("a density changes its meaning by this number")
          .mend("count it in the field and say so");
    }
  }

  /**
   * The same statement read the other way.
   *
   * @return from the larger unit to the smaller
   */
  public UnitConversion reversed() {
    return new UnitConversion(to, from, 1 / number, statedBy);
  }

  @Override
  public String toString() {
    return Numbers.plain(number) + " × " + from.words() + " per " + to.words() + ": " + statedBy;
  }
}
