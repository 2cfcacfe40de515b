package agro.development;

import agro.units.Numbers;
import agro.weather.curve.CurveDay;
import agro.working.Working;
import java.time.LocalDate;

/** The degree-days of one day as a teacher would write them on a blackboard. */
final class DegreeDayWorking {

  static final int DECIMALS = 4;

  private final DegreeDayModel model;
  private final CurveDay day;
  private final double lower;

  private DegreeDayWorking(DegreeDayModel model, CurveDay day) {
    this.model = model;
    this.day = day;
    this.lower = model.thresholds().lower().celsius();
  }

  static Working of(DegreeDayModel model, LocalDate date, CurveDay day) {
    var steps = new DegreeDayWorking(model, day);
    var working = Working.of("Degree-days of " + date + " by the " + model.method().words());
    return steps.total(steps.areas(steps.shape(working)));
  }

  private Working shape(Working working) {
    double min = day.minCelsius();
    double max = day.maxCelsius();
    var withMean =
        working.step(
            "mean of the day",
            "M = (Tmax + Tmin) / 2",
            "(" + celsius(max) + " + " + celsius(min) + ") / 2",
            celsius(0.5 * (max + min)),
            model.method().source());
    var withShape = AreaWorking.shape(withMean, model.method(), day);
    return withShape.step("where the thresholds lie", "", "", position());
  }

  private String position() {
    var thresholds = model.thresholds();
    double max = day.maxCelsius();
    double min =
        model.method().needsNextMinimum()
            ? Math.min(day.minCelsius(), day.endCelsius())
            : day.minCelsius();
    if (max <= lower) {
      return "the whole day is at or below the lower threshold, " + thresholds.lower();
    }
    boolean crossesLower = min < lower;
    if (model.cutoff() == UpperCutoff.NONE) {
      return crossesLower
          ? subject() + " crosses the lower threshold, " + thresholds.lower()
          : "the whole day is above the lower threshold, " + thresholds.lower();
    }
    double upper = thresholds.upper().orElseThrow().celsius();
    if (min >= upper) {
      return "the whole day is at or above the upper threshold, " + celsius(upper);
    }
    if (max <= upper) {
      return crossesLower
          ? subject() + " crosses the lower threshold alone, " + thresholds.lower()
          : "the whole day is between the thresholds";
    }
    return crossesLower
        ? subject() + " crosses both thresholds"
        : subject() + " crosses the upper threshold alone, " + celsius(upper);
  }

  private String subject() {
    return model.method().curve().isPresent() ? "the curve" : "the span of the extremes";
  }

  private Working areas(Working working) {
    var withLower = AreaWorking.area(working, model.method(), day, "LT", lower);
    if (model.cutoff() == UpperCutoff.NONE) {
      return withLower;
    }
    double upper = model.thresholds().upper().orElseThrow().celsius();
    var withUpper = AreaWorking.area(withLower, model.method(), day, "UT", upper);
    return model.cutoff() == UpperCutoff.VERTICAL
        ? withUpper.step(
            "share of the day above UT",
            AreaWorking.shareFormula(model.method()),
            "",
            Numbers.fixed(model.method().shareAbove(day, upper), DECIMALS))
        : withUpper;
  }

  private Working total(Working working) {
    var floor =
        model.cutoff() == UpperCutoff.INTERMEDIATE
            ? "; never below 0, for development does not run backwards"
            : "";
    return working.step(
        "degree-days of the day (" + model.cutoff().meaning() + ")",
        formula(),
        "",
        degreeDays(model.degreeDaysC(day)) + floor,
        model.cutoff().source());
  }

  private String formula() {
    return switch (model.cutoff()) {
      case NONE -> "DD = A(LT)";
      case HORIZONTAL -> "DD = A(LT) − A(UT)";
      case INTERMEDIATE -> "DD = max(0, A(LT) − 2 A(UT))";
      case VERTICAL -> "DD = A(LT) − A(UT) − (UT − LT) F(UT)";
    };
  }

  static String celsius(double value) {
    return Numbers.plain(value) + " °C";
  }

  static String degreeDays(double value) {
    return Numbers.fixed(value, DECIMALS) + " °C·d";
  }
}
