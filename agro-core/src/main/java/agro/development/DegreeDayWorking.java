package agro.development;

import agro.units.Numbers;
import agro.weather.DailyExtremes;
import agro.working.Working;

/** The degree-days of one day as a teacher would write them on a blackboard. */
final class DegreeDayWorking {

  private static final int DECIMALS = 4;

  private final DegreeDayModel model;
  private final double min;
  private final double max;
  private final double lower;

  private DegreeDayWorking(DegreeDayModel model, DailyExtremes day) {
    this.model = model;
    this.min = day.minCelsius();
    this.max = day.maxCelsius();
    this.lower = model.thresholds().lower().celsius();
  }

  static Working of(DegreeDayModel model, DailyExtremes day) {
    var steps = new DegreeDayWorking(model, day);
    var working = Working.of("Degree-days of " + day.date() + " by the " + model.method().words());
    return steps.total(steps.areas(steps.shape(working)));
  }

  private Working shape(Working working) {
    return working
        .step(
            "mean of the day",
            "M = (Tmax + Tmin) / 2",
            "(" + celsius(max) + " + " + celsius(min) + ") / 2",
            celsius(0.5 * (max + min)),
            model.method().source())
        .step(
            "amplitude of the day",
            "W = (Tmax − Tmin) / 2",
            "(" + celsius(max) + " − " + celsius(min) + ") / 2",
            celsius(0.5 * (max - min)))
        .step("where the thresholds lie", "", "", position());
  }

  private String position() {
    var thresholds = model.thresholds();
    if (max <= lower) {
      return "the whole day is at or below the lower threshold, " + thresholds.lower();
    }
    boolean crossesLower = min < lower;
    if (model.cutoff() == UpperCutoff.NONE) {
      return crossesLower
          ? "the curve crosses the lower threshold, " + thresholds.lower()
          : "the whole day is above the lower threshold, " + thresholds.lower();
    }
    double upper = thresholds.upper().orElseThrow().celsius();
    if (min >= upper) {
      return "the whole day is at or above the upper threshold, " + celsius(upper);
    }
    if (max <= upper) {
      return crossesLower
          ? "the curve crosses the lower threshold alone, " + thresholds.lower()
          : "the whole day is between the thresholds";
    }
    return crossesLower
        ? "the curve crosses both thresholds"
        : "the curve crosses the upper threshold alone, " + celsius(upper);
  }

  private Working areas(Working working) {
    var withLower = area(working, "LT", lower);
    if (model.cutoff() == UpperCutoff.NONE) {
      return withLower;
    }
    double upper = model.thresholds().upper().orElseThrow().celsius();
    var withUpper = area(withLower, "UT", upper);
    return model.cutoff() == UpperCutoff.VERTICAL
        ? withUpper.step(
            "share of the day above UT",
            "F(UT) = 1/2 − θ/π, or 0 or 1 when the curve does not cross",
            "",
            Numbers.fixed(model.method().shareAbove(min, max, upper), DECIMALS))
        : withUpper;
  }

  private Working area(Working working, String symbol, double threshold) {
    var name = "area above " + symbol + " = " + celsius(threshold);
    var result = degreeDays(model.method().areaAbove(min, max, threshold));
    double mean = 0.5 * (min + max);
    double amplitude = 0.5 * (max - min);
    if (threshold >= max) {
      return working.step(name, "A(" + symbol + ") = 0, for the curve stays below", "", result);
    }
    if (threshold <= min) {
      return working.step(
          name,
          "A(" + symbol + ") = M − " + symbol + ", for the curve stays above",
          celsius(mean) + " − " + celsius(threshold),
          result);
    }
    double sine = (threshold - mean) / amplitude;
    double angle = Math.asin(Math.max(-1, Math.min(1, sine)));
    return working
        .step(
            "angle at which the curve crosses " + symbol,
            "θ = asin((" + symbol + " − M) / W)",
            "asin(" + Numbers.fixed(sine, DECIMALS) + ")",
            Numbers.fixed(angle, DECIMALS) + " rad")
        .step(
            name,
            "A(" + symbol + ") = [(M − " + symbol + ")(π/2 − θ) + W cos θ] / π",
            "["
                + Numbers.plain(mean - threshold)
                + " × "
                + Numbers.fixed(0.5 * Math.PI - angle, DECIMALS)
                + " + "
                + Numbers.plain(amplitude)
                + " × "
                + Numbers.fixed(Math.cos(angle), DECIMALS)
                + "] / π",
            result);
  }

  private Working total(Working working) {
    var floor = model.cutoff() == UpperCutoff.INTERMEDIATE ? "; " + floorReason() : "";
    return working.step(
        "degree-days of the day (" + model.cutoff().meaning() + ")",
        formula(),
        "",
        degreeDays(model.degreeDaysC(min, max)) + floor,
        model.cutoff().source());
  }

  private static String floorReason() {
    return "never below 0, for development does not run backwards";
  }

  private String formula() {
    return switch (model.cutoff()) {
      case NONE -> "DD = A(LT)";
      case HORIZONTAL -> "DD = A(LT) − A(UT)";
      case INTERMEDIATE -> "DD = max(0, A(LT) − 2 A(UT))";
      case VERTICAL -> "DD = A(LT) − A(UT) − (UT − LT) F(UT)";
    };
  }

  private static String celsius(double value) {
    return Numbers.plain(value) + " °C";
  }

  private static String degreeDays(double value) {
    return Numbers.fixed(value, DECIMALS) + " °C·d";
  }
}
