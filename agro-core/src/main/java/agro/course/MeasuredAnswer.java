package agro.course;

import agro.units.Mass;
import agro.units.Quantity;
import agro.units.Unit;
import agro.units.Volume;
import java.util.Objects;

/**
 * An amount with a unit.
 *
 * @param <Q> its kind
 * @param quantity the amount, not rounded
 * @param unit unit in which it is asked for
 * @param tolerance in that unit
 */
public record MeasuredAnswer<Q extends Quantity<Q>>(
    Q quantity, Unit<Q> unit, AnswerTolerance tolerance) implements ExpectedAnswer {

  /** Refuses what is missing. */
  public MeasuredAnswer {
    Objects.requireNonNull(quantity, "quantity");
    Objects.requireNonNull(unit, "unit");
    Objects.requireNonNull(tolerance, "tolerance");
  }

  /**
   * An amount with half a per cent of tolerance.
   *
   * @param <Q> its kind
   * @param quantity the amount
   * @param unit unit in which it is asked for
   * @return the answer
   */
  public static <Q extends Quantity<Q>> MeasuredAnswer<Q> of(Q quantity, Unit<Q> unit) {
    return new MeasuredAnswer<>(quantity, unit, AnswerTolerance.usual(quantity.in(unit)));
  }

  /**
   * A liquid that is measured in a vessel.
   *
   * @param volume the volume
   * @param unit unit in which it is asked for
   * @return the answer, with half a mark of the vessel that suits as tolerance
   */
  public static MeasuredAnswer<Volume> poured(Volume volume, Unit<Volume> unit) {
    return new MeasuredAnswer<>(volume, unit, AnswerTolerance.vessel(volume, unit));
  }

  /**
   * A solid that is weighed.
   *
   * @param mass the mass
   * @param unit unit in which it is asked for
   * @return the answer, with half a step of the scale that suits as tolerance
   */
  public static MeasuredAnswer<Mass> weighed(Mass mass, Unit<Mass> unit) {
    return new MeasuredAnswer<>(mass, unit, AnswerTolerance.scale(mass, unit));
  }

  /**
   * The number in the unit of the answer.
   *
   * @return the number, not rounded
   */
  public double number() {
    return quantity.in(unit);
  }

  @Override
  public AnswerValue value() {
    return new AnswerValue.OfQuantity(quantity);
  }

  @Override
  public boolean accepts(AnswerValue other) {
    return other instanceof AnswerValue.OfQuantity typed
        && typed.quantity().baseUnit().equals(quantity.baseUnit())
        && tolerance.accepts(unit.fromBase(typed.quantity().inBaseUnit()), number());
  }

  @Override
  public boolean meets(ExpectedAnswer other) {
    if (!(other instanceof MeasuredAnswer<?> measured)
        || !measured.quantity.baseUnit().equals(quantity.baseUnit())) {
      return false;
    }
    double perUnit = measured.unit.toBase(1) / unit.toBase(1);
    var there =
        new AnswerTolerance(measured.tolerance.amount() * perUnit, AnswerTolerance.Reason.SHARE);
    return tolerance.meets(number(), there, unit.fromBase(measured.quantity.inBaseUnit()));
  }

  @Override
  public String print(CourseWords words) {
    return words.answer(number(), tolerance) + " " + words.symbol(unit);
  }
}
