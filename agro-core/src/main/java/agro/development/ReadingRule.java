package agro.development;

import agro.weather.curve.TriangleCurve;

/** What is taken for the time between two readings. */
public enum ReadingRule {
  /**
   * The temperature runs on a straight line between readings; crossings of thresholds are exact.
   */
  STRAIGHT_LINES("the temperature runs on a straight line between readings"),
  /** Each reading stands for the time until the next one: the plain sum of hourly readings. */
  HELD("each reading stands for the time until the next one"),
  /** The rate between two readings is the mean of the rates at both: the trapezoid rule. */
  MEAN_OF_RATES("the rate runs on a straight line between the rates at two readings");

  private final String words;

  ReadingRule(String words) {
    this.words = words;
  }

  /**
   * The rule in words.
   *
   * @return a clause without a full stop
   */
  public String words() {
    return words;
  }

  /**
   * Mean rate over a part of the time between two readings.
   *
   * @param before temperature of the reading before, in °C
   * @param after temperature of the reading after, in °C
   * @param from share of the time at which the part begins, 0 to 1
   * @param to share of the time at which it ends, not below {@code from}
   */
  double meanRate(DegreeDayModel model, double before, double after, double from, double to) {
    return switch (this) {
      case HELD -> rate(model, before);
      case MEAN_OF_RATES -> {
        double first = rate(model, before);
        double second = rate(model, after);
        yield first + 0.5 * (from + to) * (second - first);
      }
      case STRAIGHT_LINES ->
          onLine(model, before + from * (after - before), before + to * (after - before));
    };
  }

  private static double onLine(DegreeDayModel model, double begin, double end) {
    if (begin == end) {
      return rate(model, begin);
    }
    double low = Math.min(begin, end);
    double high = Math.max(begin, end);
    double lower = model.thresholds().lower().celsius();
    double area = TriangleCurve.areaAbove(low, high, lower);
    if (model.cutoff() == UpperCutoff.NONE) {
      return area;
    }
    double upper = upper(model);
    double above = TriangleCurve.areaAbove(low, high, upper);
    return switch (model.cutoff()) {
      case NONE -> area;
      case HORIZONTAL -> area - above;
      case INTERMEDIATE -> area - 2 * above;
      case VERTICAL -> area - above - (upper - lower) * TriangleCurve.shareAbove(low, high, upper);
    };
  }

  private static double rate(DegreeDayModel model, double celsius) {
    return model.cutoff().rate(celsius, model.thresholds().lower().celsius(), upper(model));
  }

  private static double upper(DegreeDayModel model) {
    return model.cutoff().needsUpperThreshold()
        ? model.thresholds().upper().orElseThrow().celsius()
        : Double.POSITIVE_INFINITY;
  }
}
