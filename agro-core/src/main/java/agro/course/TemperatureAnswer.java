package agro.course;

import agro.units.Temperature;
import agro.units.TemperatureUnit;
import java.util.Objects;

/**
 * The answer is a temperature.
 *
 * @param temperature the value, not rounded
 * @param unit unit in which it is asked for
 * @param tolerance in that unit
 */
public record TemperatureAnswer(
    Temperature temperature, TemperatureUnit unit, AnswerTolerance tolerance)
    implements ExpectedAnswer {

  /** Refuses what is missing. */
  public TemperatureAnswer {
    Objects.requireNonNull(temperature, "temperature");
    Objects.requireNonNull(unit, "unit");
    Objects.requireNonNull(tolerance, "tolerance");
  }

  /**
   * The number in the unit of the answer.
   *
   * @return the number, not rounded
   */
  public double number() {
    return temperature.in(unit);
  }

  @Override
  public AnswerValue value() {
    return new AnswerValue.OfTemperature(temperature);
  }

  @Override
  public boolean accepts(AnswerValue other) {
    return other instanceof AnswerValue.OfTemperature typed
        && tolerance.accepts(typed.temperature().in(unit), number());
  }

  @Override
  public boolean meets(ExpectedAnswer other) {
    return other instanceof TemperatureAnswer typed
        && typed.unit == unit
        && tolerance.meets(number(), typed.tolerance, typed.number());
  }

  @Override
  public String print(CourseWords words) {
    return words.asked(number(), tolerance) + " " + unit.symbol();
  }
}
