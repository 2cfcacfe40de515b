package agro.course.marking;

import agro.course.AnswerTolerance;
import agro.course.AnswerValue;
import agro.course.ExpectedAnswer;
import agro.course.MeasuredAnswer;
import agro.course.NumberAnswer;
import agro.course.PercentAnswer;
import agro.course.TemperatureAnswer;
import agro.course.ThermalTimeAnswer;
import agro.units.Temperature;
import agro.units.ThermalTime;
import java.util.Optional;
import java.util.OptionalDouble;

/** Answers as numbers in their own unit, and back. */
final class AnswerNumbers {

  /** Half a unit of the fifth digit, to which amounts are printed. */
  private static final double PRINTED = 0.5e-4;

  private AnswerNumbers() {}

  /** The number in the unit of the answer; nothing for days, choices and codes. */
  static OptionalDouble number(ExpectedAnswer answer) {
    if (answer instanceof MeasuredAnswer<?> measured) {
      return OptionalDouble.of(measured.number());
    }
    if (answer instanceof ThermalTimeAnswer sum) {
      return OptionalDouble.of(sum.number());
    }
    if (answer instanceof TemperatureAnswer temperature) {
      return OptionalDouble.of(temperature.number());
    }
    if (answer instanceof NumberAnswer number) {
      return OptionalDouble.of(number.number());
    }
    return answer instanceof PercentAnswer percent
        ? OptionalDouble.of(percent.percent())
        : OptionalDouble.empty();
  }

  /** The number of a value in the unit of an answer; NaN for another kind. */
  static double number(ExpectedAnswer like, AnswerValue value) {
    if (like instanceof MeasuredAnswer<?> measured
        && value instanceof AnswerValue.OfQuantity amount) {
      return measured.unit().fromBase(amount.quantity().inBaseUnit());
    }
    if (like instanceof ThermalTimeAnswer thermal
        && value instanceof AnswerValue.OfThermalTime sum) {
      return sum.sum().in(thermal.unit());
    }
    if (like instanceof TemperatureAnswer answer
        && value instanceof AnswerValue.OfTemperature temperature) {
      return temperature.temperature().in(answer.unit());
    }
    return value instanceof AnswerValue.OfNumber number ? number.number() : Double.NaN;
  }

  /** An answer of the same kind from a number in the unit of the answer. */
  static Optional<AnswerValue> value(ExpectedAnswer like, double number) {
    if (!Double.isFinite(number)) {
      return Optional.empty();
    }
    try {
      if (like instanceof MeasuredAnswer<?> measured) {
        double base = measured.unit().toBase(number);
        return Optional.of(new AnswerValue.OfQuantity(measured.quantity().withBaseValue(base)));
      }
      if (like instanceof ThermalTimeAnswer sum) {
        return Optional.of(new AnswerValue.OfThermalTime(ThermalTime.of(number, sum.unit())));
      }
      if (like instanceof TemperatureAnswer temperature) {
        return Optional.of(
            new AnswerValue.OfTemperature(Temperature.of(number, temperature.unit())));
      }
      return like instanceof NumberAnswer || like instanceof PercentAnswer
          ? Optional.of(new AnswerValue.OfNumber(number))
          : Optional.empty();
    } catch (IllegalArgumentException absurd) {
      // No volume is below zero, no temperature below absolute zero: a number, but no amount.
      return Optional.empty();
    }
  }

  /** The tolerance in the unit of the answer; nothing for days, choices and codes. */
  static Optional<AnswerTolerance> tolerance(ExpectedAnswer answer) {
    if (answer instanceof MeasuredAnswer<?> measured) {
      return Optional.of(measured.tolerance());
    }
    if (answer instanceof ThermalTimeAnswer sum) {
      return Optional.of(sum.tolerance());
    }
    if (answer instanceof TemperatureAnswer temperature) {
      return Optional.of(temperature.tolerance());
    }
    if (answer instanceof NumberAnswer number) {
      return Optional.of(number.tolerance());
    }
    return answer instanceof PercentAnswer percent
        ? Optional.of(percent.tolerance())
        : Optional.empty();
  }

  /** The unit in print; empty for a number without unit. */
  static String symbol(ExpectedAnswer answer) {
    if (answer instanceof MeasuredAnswer<?> measured) {
      return measured.unit().symbol();
    }
    if (answer instanceof ThermalTimeAnswer sum) {
      return sum.unit().symbol();
    }
    if (answer instanceof TemperatureAnswer temperature) {
      return temperature.unit().symbol();
    }
    return answer instanceof PercentAnswer ? "%" : "";
  }

  /** Whether a number in the unit of the answer is right, the answer as printed included. */
  static boolean accepts(ExpectedAnswer answer, double number) {
    var right = number(answer);
    if (right.isEmpty() || Double.isNaN(number)) {
      return false;
    }
    return tolerance(answer).orElseThrow().accepts(number, right.getAsDouble())
        || isPrinted(answer, number, right.getAsDouble())
        || (isPrintedToFiveDigits(answer)
            && Math.abs(number - right.getAsDouble()) <= PRINTED * Math.abs(right.getAsDouble()));
  }

  /** Whether a reading is right. */
  static boolean accepts(ExpectedAnswer answer, ReadAnswer.ReadValue read) {
    if (read.value().isEmpty()) {
      return false;
    }
    return answer.accepts(read.value().get()) || accepts(answer, read.number());
  }

  /** Whether a number is the answer as it is printed with its decimals. */
  private static boolean isPrinted(ExpectedAnswer answer, double number, double right) {
    boolean exact = tolerance(answer).orElseThrow().reason() == AnswerTolerance.Reason.EXACT;
    if (exact || isPrintedToFiveDigits(answer)) {
      return false;
    }
    int decimals =
        answer instanceof NumberAnswer one ? one.decimals() : ((PercentAnswer) answer).decimals();
    return AnswerTolerance.decimals(decimals).accepts(number, right);
  }

  private static boolean isPrintedToFiveDigits(ExpectedAnswer answer) {
    return !(answer instanceof NumberAnswer || answer instanceof PercentAnswer);
  }
}
