package agro.sampling.sequential;

import agro.report.InputProblem;
import java.util.Objects;
import java.util.OptionalInt;

/**
 * A plan for one field: stop lines, the units that are looked at in any case, and where it ends.
 *
 * @param bounds the lines
 * @param leastUnits units looked at before a line counts, 1 or more
 * @param mostUnits units after which it ends; nothing for a plan that goes on until a line is met
 * @param endRule what is said when it ends between the lines
 */
public record SequentialPlan(
    StopBounds bounds, int leastUnits, OptionalInt mostUnits, EndRule endRule) {

  /** A total that lies so close to a line is on it, in spite of rounding. */
  private static final double ON_THE_LINE = 1e-9;

  /**
   * Checks the numbers of units.
   *
   * @throws InputProblem when the least is below 1 or above the most, or a band has no end
   */
  public SequentialPlan {
    Objects.requireNonNull(bounds, "bounds");
    Objects.requireNonNull(endRule, "endRule");
    if (leastUnits < 1 || (mostUnits.isPresent() && mostUnits.getAsInt() < leastUnits)) {
      throw InputProblem.of("a plan from " + leastUnits + " to " + mostUnits + " units")
          .expected("1 or more units, and a greatest number not below the least")
          .because("the plan would end before it begins")
          .mend("look for two numbers that are swapped");
    }
    if (mostUnits.isEmpty() && bounds instanceof ConfidenceBand) {
      throw InputProblem.of("a band about a mean without a greatest number of units")
          .expected("a greatest number of units")
          .because("a field at the critical mean would be sampled without end")
          .mend("end the plan with upTo, for example at ConfidenceBand.mostUnits");
    }
  }

  /**
   * A plan that goes on until a line is met.
   *
   * @param lines Wald's lines
   * @return the plan
   */
  public static SequentialPlan of(WaldLines lines) {
    return new SequentialPlan(lines, 1, OptionalInt.empty(), EndRule.LEAVE_UNDECIDED);
  }

  /**
   * A plan that ends after so many units.
   *
   * @param bounds the lines
   * @param mostUnits greatest number of units, 1 or more
   * @param endRule what is said when it ends between the lines
   * @return the plan
   * @throws InputProblem when the number is below 1
   */
  public static SequentialPlan truncated(StopBounds bounds, int mostUnits, EndRule endRule) {
    return new SequentialPlan(bounds, 1, OptionalInt.of(mostUnits), endRule);
  }

  /**
   * Looks at so many units in any case.
   *
   * @param units 1 or more
   * @return a new plan
   * @throws InputProblem when the number is below 1 or above the greatest
   */
  public SequentialPlan atLeast(int units) {
    return new SequentialPlan(bounds, units, mostUnits, endRule);
  }

  /**
   * What the plan says after so many units.
   *
   * @param units units looked at, 1 or more
   * @param animals animals counted on them, 0 or more
   * @return low, high, go on, or undecided at the end
   * @throws InputProblem when units or animals are out of range
   */
  public FieldClass decide(int units, long animals) {
    if (units < 1 || animals < 0 || (mostUnits.isPresent() && units > mostUnits.getAsInt())) {
      throw InputProblem.of(animals + " animals on " + units + " units")
          .expected(
              "0 or more animals on 1 "
                  + (mostUnits.isPresent() ? "to " + mostUnits.getAsInt() : "or more")
                  + " units")
          .because("the plan says nothing of other totals")
          .mend("correct the count, or take a plan with more units");
    }
    if (units >= leastUnits) {
      if (animals <= lastLow(units)) {
        return FieldClass.LOW;
      }
      if (animals >= firstHigh(units)) {
        return FieldClass.HIGH;
      }
    }
    return mostUnits.isPresent() && units == mostUnits.getAsInt()
        ? endRule.decide((double) animals / units, bounds.middle())
        : FieldClass.GO_ON;
  }

  /**
   * Largest total at which the field is called low.
   *
   * @param units units looked at
   * @return animals; −1 when the field cannot be called low yet
   */
  public long lastLow(int units) {
    return units < leastUnits
        ? -1
        : (long) Math.max(-1, Math.floor(bounds.low(units) + ON_THE_LINE));
  }

  /**
   * Smallest total at which the field is called high.
   *
   * @param units units looked at
   * @return animals; the greatest number when the field cannot be called high yet
   */
  public long firstHigh(int units) {
    return units < leastUnits
        ? Long.MAX_VALUE
        : (long) Math.max(0, Math.ceil(bounds.high(units) - ON_THE_LINE));
  }
}
