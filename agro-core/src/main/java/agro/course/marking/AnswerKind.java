package agro.course.marking;

import agro.course.ChoiceAnswer;
import agro.course.CodesAnswer;
import agro.course.CourseWords;
import agro.course.DayAnswer;
import agro.course.ExpectedAnswer;
import agro.course.MeasuredAnswer;
import agro.course.NumberAnswer;
import agro.course.PercentAnswer;
import agro.course.TemperatureAnswer;
import agro.course.ThermalTimeAnswer;
import agro.units.QuantityKind;
import java.util.Optional;

/**
 * What kind of thing an answer is.
 *
 * @param name name of the kind in the bundle
 * @param quantity kind of quantity, if it is one
 */
record AnswerKind(String name, Optional<QuantityKind> quantity) {

  static final AnswerKind NUMBER = plain("NUMBER");
  static final AnswerKind PERCENT = plain("PERCENT");
  static final AnswerKind THERMAL_TIME = plain("THERMAL_TIME");
  static final AnswerKind TEMPERATURE = plain("TEMPERATURE");
  static final AnswerKind DAY = plain("DAY");
  static final AnswerKind CHOICE = plain("CHOICE");
  static final AnswerKind CODES = plain("CODES");

  /** An amount per plant, per load or per another thing that no unit measures. */
  static final AnswerKind PER_THING = plain("PER_THING");

  private static AnswerKind plain(String name) {
    return new AnswerKind(name, Optional.empty());
  }

  static AnswerKind of(QuantityKind kind) {
    return new AnswerKind(kind.name(), Optional.of(kind));
  }

  static AnswerKind of(ExpectedAnswer answer) {
    if (answer instanceof MeasuredAnswer<?> measured) {
      return of(measured.unit().kind());
    }
    if (answer instanceof ThermalTimeAnswer) {
      return THERMAL_TIME;
    }
    if (answer instanceof TemperatureAnswer) {
      return TEMPERATURE;
    }
    if (answer instanceof NumberAnswer) {
      return NUMBER;
    }
    if (answer instanceof PercentAnswer) {
      return PERCENT;
    }
    if (answer instanceof DayAnswer) {
      return DAY;
    }
    return answer instanceof ChoiceAnswer ? CHOICE : codes(answer);
  }

  private static AnswerKind codes(ExpectedAnswer answer) {
    if (answer instanceof CodesAnswer) {
      return CODES;
    }
    throw new IllegalArgumentException("no kind of answer is known for " + answer);
  }

  /** The kind in words, in the nominative and with its article. */
  String words(CourseWords words) {
    return words.say("kind." + name);
  }

  boolean is(QuantityKind kind) {
    return quantity.isPresent() && quantity.get() == kind;
  }
}
