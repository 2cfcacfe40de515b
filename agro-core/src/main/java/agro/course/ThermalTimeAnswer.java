package agro.course;

import agro.units.ThermalTime;
import agro.units.ThermalTimeUnit;
import java.util.Objects;

/**
 * The answer is a sum of degree-days.
 *
 * @param sum the value, not rounded
 * @param unit unit in which it is asked for
 * @param tolerance in that unit
 */
public record ThermalTimeAnswer(ThermalTime sum, ThermalTimeUnit unit, AnswerTolerance tolerance)
    implements ExpectedAnswer {

  /** Refuses what is missing. */
  public ThermalTimeAnswer {
    Objects.requireNonNull(sum, "sum");
    Objects.requireNonNull(unit, "unit");
    Objects.requireNonNull(tolerance, "tolerance");
  }

  /**
   * The number in the unit of the answer.
   *
   * @return the number, not rounded
   */
  public double number() {
    return sum.in(unit);
  }

  @Override
  public AnswerValue value() {
    return new AnswerValue.OfThermalTime(sum);
  }

  @Override
  public boolean accepts(AnswerValue other) {
    return other instanceof AnswerValue.OfThermalTime typed
        && tolerance.accepts(typed.sum().in(unit), number());
  }

  @Override
  public boolean meets(ExpectedAnswer other) {
    return other instanceof ThermalTimeAnswer typed
        && typed.unit == unit
        && tolerance.meets(number(), typed.tolerance, typed.number());
  }

  @Override
  public String print(CourseWords words) {
    return words.asked(number(), tolerance) + " " + unit.symbol();
  }
}
