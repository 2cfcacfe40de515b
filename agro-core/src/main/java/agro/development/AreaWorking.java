package agro.development;

import static agro.development.DegreeDayWorking.DECIMALS;
import static agro.development.DegreeDayWorking.celsius;
import static agro.development.DegreeDayWorking.degreeDays;

import agro.units.Numbers;
import agro.weather.curve.CurveDay;
import agro.weather.curve.SineAndDecayCurve;
import agro.weather.curve.SineCurve;
import agro.weather.curve.TriangleCurve;
import agro.working.Working;

/** The steps to the area of a day above a threshold, by each method. */
final class AreaWorking {

  private AreaWorking() {}

  /** What a method needs of the day beside its mean. */
  static Working shape(Working working, DegreeDayMethod method, CurveDay day) {
    return switch (method) {
      case AVERAGE_MEAN_LIMITED, AVERAGE_EXTREMES_LIMITED, SUM_OVER_READINGS -> working;
      case SINGLE_SINE, SINGLE_TRIANGLE -> amplitude(working, day);
      case DOUBLE_SINE, DOUBLE_TRIANGLE -> tomorrow(working, day);
      case SINE_AND_DECAY -> night(tomorrow(working, day), day);
    };
  }

  private static Working amplitude(Working working, CurveDay day) {
    return working.step(
        "amplitude of the day",
        "W = (Tmax − Tmin) / 2",
        "(" + celsius(day.maxCelsius()) + " − " + celsius(day.minCelsius()) + ") / 2",
        celsius(0.5 * (day.maxCelsius() - day.minCelsius())));
  }

  private static Working tomorrow(Working working, CurveDay day) {
    return working.step(
        "tomorrow's minimum, where the curve ends",
        "",
        "",
        day.nextMinimumIsAboveMaximum()
            ? celsius(day.nextMinCelsius()) + ", held at today's " + celsius(day.maxCelsius())
            : celsius(day.nextMinCelsius()));
  }

  private static Working night(Working working, CurveDay day) {
    var hours = Numbers.fixed(day.dayLengthHours(), DECIMALS);
    var withLength = working.step("hours from sunrise to sunset", "", "", "D = " + hours + " h");
    return withLength.step(
        "temperature at sunset",
        "Ts = Tmin + (Tmax − Tmin) sin[π D / (D + 4)]",
        celsius(day.minCelsius())
            + " + "
            + celsius(day.maxCelsius() - day.minCelsius())
            + " × sin[π × "
            + hours
            + " h / ("
            + hours
            + " h + 4 h)]",
        Numbers.fixed(SineAndDecayCurve.celsiusAt(day, day.dayLengthHours()), DECIMALS) + " °C");
  }

  static String shareFormula(DegreeDayMethod method) {
    return switch (method) {
      case SINGLE_SINE -> "F(UT) = 1/2 − θ/π, or 0 or 1 when the curve does not cross";
      case SINGLE_TRIANGLE -> "F(UT) = (Tmax − UT) / (Tmax − Tmin), held between 0 and 1";
      case DOUBLE_SINE, DOUBLE_TRIANGLE ->
          "F(UT) = the mean of the shares of the rising and the falling half";
      default -> "F(UT) = hours above UT / 24 h";
    };
  }

  static Working area(
      Working working, DegreeDayMethod method, CurveDay day, String symbol, double threshold) {
    var name = "area above " + symbol + " = " + celsius(threshold);
    double min = day.minCelsius();
    double max = day.maxCelsius();
    return switch (method) {
      case AVERAGE_MEAN_LIMITED ->
          working.step(
              name,
              "A(" + symbol + ") = max(0, M − " + symbol + ")",
              "max(0, " + celsius(0.5 * (min + max)) + " − " + celsius(threshold) + ")",
              degreeDays(method.areaAbove(day, threshold)));
      case AVERAGE_EXTREMES_LIMITED ->
          working.step(
              name,
              "A("
                  + symbol
                  + ") = [max(Tmax, "
                  + symbol
                  + ") + max(Tmin, "
                  + symbol
                  + ")] / 2 − "
                  + symbol,
              "["
                  + celsius(Math.max(max, threshold))
                  + " + "
                  + celsius(Math.max(min, threshold))
                  + "] / 2 − "
                  + celsius(threshold),
              degreeDays(method.areaAbove(day, threshold)));
      case SINGLE_SINE -> sine(working, name, symbol, "Tmin", min, max, threshold);
      case SINGLE_TRIANGLE -> triangle(working, name, symbol, "Tmin", min, max, threshold);
      case DOUBLE_SINE, DOUBLE_TRIANGLE -> halves(working, method, day, symbol, threshold);
      case SINE_AND_DECAY -> dayAndNight(working, name, day, symbol, threshold);
      case SUM_OVER_READINGS -> working;
    };
  }

  private static Working halves(
      Working working, DegreeDayMethod method, CurveDay day, String symbol, double threshold) {
    double max = day.maxCelsius();
    boolean sine = method == DegreeDayMethod.DOUBLE_SINE;
    var rising = "rising half, area above " + symbol + " = " + celsius(threshold);
    var falling = "falling half, area above " + symbol + " = " + celsius(threshold);
    var both =
        sine
            ? sine(
                sine(working, rising, symbol, "Tmin", day.minCelsius(), max, threshold),
                falling,
                symbol,
                "Tnext",
                day.endCelsius(),
                max,
                threshold)
            : triangle(
                triangle(working, rising, symbol, "Tmin", day.minCelsius(), max, threshold),
                falling,
                symbol,
                "Tnext",
                day.endCelsius(),
                max,
                threshold);
    return both.step(
        "area above " + symbol,
        "A(" + symbol + ") = ½ A rising + ½ A falling",
        "",
        degreeDays(method.areaAbove(day, threshold)));
  }

  private static Working sine(
      Working working,
      String name,
      String symbol,
      String lowest,
      double min,
      double max,
      double threshold) {
    var result = degreeDays(SineCurve.areaAbove(min, max, threshold));
    if (threshold >= max || threshold <= min) {
      return whole(working, name, symbol, lowest, min, max, threshold, result);
    }
    double mean = 0.5 * (min + max);
    double amplitude = 0.5 * (max - min);
    double sine = (threshold - mean) / amplitude;
    double angle = Math.asin(Math.max(-1, Math.min(1, sine)));
    var own = lowest.equals("Tmin") ? "" : ", with M and W of Tmax and " + lowest;
    return working
        .step(
            "angle at which the curve crosses " + symbol + own,
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

  private static Working triangle(
      Working working,
      String name,
      String symbol,
      String lowest,
      double min,
      double max,
      double threshold) {
    var result = degreeDays(TriangleCurve.areaAbove(min, max, threshold));
    if (threshold >= max || threshold <= min) {
      return whole(working, name, symbol, lowest, min, max, threshold, result);
    }
    return working.step(
        name,
        "A(" + symbol + ") = (Tmax − " + symbol + ")² / [2 (Tmax − " + lowest + ")]",
        "("
            + celsius(max)
            + " − "
            + celsius(threshold)
            + ")² / [2 ("
            + celsius(max)
            + " − "
            + celsius(min)
            + ")]",
        result);
  }

  private static Working whole(
      Working working,
      String name,
      String symbol,
      String lowest,
      double min,
      double max,
      double threshold,
      String result) {
    if (threshold >= max) {
      return working.step(name, "A(" + symbol + ") = 0, for the curve stays below", "", result);
    }
    var mean = lowest.equals("Tmin") ? "M" : "(Tmax + " + lowest + ") / 2";
    return working.step(
        name,
        "A(" + symbol + ") = " + mean + " − " + symbol + ", for the curve stays above",
        celsius(0.5 * (min + max)) + " − " + celsius(threshold),
        result);
  }

  private static Working dayAndNight(
      Working working, String name, CurveDay day, String symbol, double threshold) {
    return working
        .step(
            "by day, " + name,
            "area under Tmin + (Tmax − Tmin) sin[π t / (D + 4)] while above " + symbol,
            "",
            degreeDays(SineAndDecayCurve.areaByDay(day, threshold)))
        .step(
            "by night, " + name,
            "area under Ts − (Ts − Tnext) ln h / ln(24 − D) while above "
                + symbol
                + ", the first hour flat at Ts",
            "",
            degreeDays(SineAndDecayCurve.areaByNight(day, threshold)))
        .step(
            name,
            "A(" + symbol + ") = area by day + area by night",
            "",
            degreeDays(SineAndDecayCurve.areaAbove(day, threshold)));
  }
}
