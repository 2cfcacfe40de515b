package agro.course.marking;

import agro.course.CourseWords;
import agro.units.QuantityKind;
import java.util.Optional;

/** Why an answer of one kind is no answer of another. */
final class KindReason {

  private KindReason() {}

  static String of(CourseWords words, AnswerKind found, AnswerKind wanted) {
    var refused =
        words.say("kind.refused", "found", found.words(words), "wanted", wanted.words(words));
    return refused + " " + words.say("reason." + key(found, wanted));
  }

  private static String key(AnswerKind found, AnswerKind wanted) {
    if (found.equals(AnswerKind.PER_THING)) {
      return "thing";
    }
    if (found.quantity().isPresent() && wanted.quantity().isPresent()) {
      return ofQuantities(found.quantity().get(), wanted.quantity().get());
    }
    if (found.equals(AnswerKind.DAY)) {
      return "day.found";
    }
    return switch (wanted.name()) {
      case "THERMAL_TIME" -> ofThermalTime(found);
      case "TEMPERATURE" ->
          found.equals(AnswerKind.THERMAL_TIME) ? "thermal.for.temperature" : "temperature";
      case "NUMBER" -> found.equals(AnswerKind.PERCENT) ? "percent.for.number" : "number";
      case "PERCENT" -> "percent";
      case "DAY" -> found.is(QuantityKind.WORK_TIME) ? "span" : "day";
      default -> ofMeasured(found);
    };
  }

  private static String ofThermalTime(AnswerKind found) {
    if (found.equals(AnswerKind.TEMPERATURE)) {
      return "temperature.for.thermal";
    }
    return found.is(QuantityKind.WORK_TIME) ? "days.for.thermal" : "thermal";
  }

  private static String ofMeasured(AnswerKind found) {
    return switch (found.name()) {
      case "PERCENT" -> "percent.for.measure";
      case "THERMAL_TIME" -> "thermal.for.measure";
      case "TEMPERATURE" -> "temperature.for.measure";
      default -> "other";
    };
  }

  private static String ofQuantities(QuantityKind found, QuantityKind wanted) {
    if (found == wanted) {
      return "counted";
    }
    if (differByDensity(found, wanted)) {
      return "density";
    }
    if (holds(wanted.numerator(), found) || holds(wanted.numerator(), above(found))) {
      return found.denominator().isEmpty() ? "per.missing" : "per.other";
    }
    if (holds(found.numerator(), wanted)) {
      return "per.extra";
    }
    if (found.denominator().isPresent()
        && found.denominator().equals(wanted.numerator())
        && wanted.denominator().equals(found.numerator())) {
      return "inverted";
    }
    if (found == QuantityKind.LENGTH && wanted == QuantityKind.AREA) {
      return "length.for.area";
    }
    if (found == QuantityKind.AREA && wanted == QuantityKind.LENGTH) {
      return "area.for.length";
    }
    if (wanted.denominator().isPresent() && found.denominator().isEmpty()) {
      return "per.missing";
    }
    return wanted.denominator().isEmpty() && found.denominator().isPresent()
        ? "per.extra"
        : "other";
  }

  private static boolean holds(Optional<QuantityKind> part, QuantityKind kind) {
    return part.isPresent() && part.get() == kind;
  }

  private static QuantityKind above(QuantityKind kind) {
    return kind.numerator().orElse(kind);
  }

  /** Whether one is a mass and the other a volume, both for the same or both per the same. */
  static boolean differByDensity(QuantityKind one, QuantityKind other) {
    if (one == QuantityKind.DENSITY || other == QuantityKind.DENSITY) {
      return false;
    }
    boolean masses = above(one) == QuantityKind.MASS && above(other) == QuantityKind.VOLUME;
    boolean volumes = above(one) == QuantityKind.VOLUME && above(other) == QuantityKind.MASS;
    return (masses || volumes) && one.denominator().equals(other.denominator());
  }
}
