package agro.course.marking;

import agro.course.AnswerValue;
import agro.course.DayAnswer;
import agro.course.ExpectedAnswer;
import agro.course.NumberAnswer;
import agro.course.PercentAnswer;
import agro.course.marking.ReadAnswer.ReadValue;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;

/** Which of the mistakes that can happen anywhere explains a wrong answer. */
final class GeneralMistakes {

  /** A number that is further off than this was not rounded, but wrong. */
  private static final double COARSEST = 0.06;

  private static final double ROUNDING = 1e-9;
  private static final List<Double> POINT = List.of(10.0, 0.1, 100.0, 0.01);
  private static final List<Double> PREFIX = List.of(1e3, 1e-3, 1e6, 1e-6);

  private GeneralMistakes() {}

  /** Whether the right number was rounded to the digits typed, which are too few. */
  static boolean isRounded(ExpectedAnswer answer, ReadValue value) {
    var right = AnswerNumbers.number(answer);
    boolean whole = answer instanceof NumberAnswer number && number.tolerance().amount() == 0;
    if (right.isEmpty() || Double.isNaN(value.number()) || whole) {
      return false;
    }
    double off = Math.abs(value.number() - right.getAsDouble());
    return off <= value.halfDigit() * (1 + ROUNDING)
        && off <= COARSEST * Math.abs(right.getAsDouble());
  }

  /** The mistake; nothing if none explains the answer. */
  static Optional<GeneralMistake> of(ExpectedAnswer answer, ReadValue value) {
    if (answer instanceof DayAnswer day) {
      return ofDay(day, value);
    }
    var right = AnswerNumbers.number(answer);
    double typed = value.number();
    if (right.isEmpty() || Double.isNaN(typed) || right.getAsDouble() == 0 || typed == 0) {
      return Optional.empty();
    }
    if (!value.unitMissing()
        && isMeasured(answer)
        && AnswerNumbers.accepts(answer, value.typedNumber())) {
      return Optional.of(GeneralMistake.WRONG_UNIT);
    }
    if (AnswerNumbers.accepts(answer, -typed)) {
      return Optional.of(GeneralMistake.WRONG_SIGN);
    }
    if (POINT.stream().anyMatch(factor -> isTimes(answer, typed, factor))) {
      return Optional.of(GeneralMistake.DECIMAL_POINT);
    }
    if (PREFIX.stream().anyMatch(factor -> isTimes(answer, typed, factor))) {
      return Optional.of(GeneralMistake.WRONG_PREFIX);
    }
    return isTimes(answer, 1 / typed, 1)
        ? Optional.of(GeneralMistake.UPSIDE_DOWN)
        : Optional.empty();
  }

  /**
   * Whether the answer is so many times the right one. The share that may be missing is that of the
   * right answer, so a tolerance in decimals does not swallow small numbers.
   */
  private static boolean isTimes(ExpectedAnswer answer, double typed, double factor) {
    double right = AnswerNumbers.number(answer).orElseThrow();
    return AnswerNumbers.accepts(answer, typed / factor)
        && Math.abs(typed / factor - right) < COARSEST * Math.abs(right);
  }

  private static boolean isMeasured(ExpectedAnswer answer) {
    return !(answer instanceof NumberAnswer || answer instanceof PercentAnswer);
  }

  private static Optional<GeneralMistake> ofDay(DayAnswer day, ReadValue value) {
    boolean next =
        value.value().isPresent()
            && value.value().get() instanceof AnswerValue.OfDay typed
            && Math.abs(ChronoUnit.DAYS.between(day.day(), typed.day())) == day.days() + 1L;
    return next ? Optional.of(GeneralMistake.OFF_BY_ONE_DAY) : Optional.empty();
  }
}
