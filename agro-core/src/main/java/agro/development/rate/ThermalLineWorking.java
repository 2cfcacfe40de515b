package agro.development.rate;

import agro.stats.LinearFit;
import agro.stats.ReducedMajorAxis;
import agro.units.Numbers;
import agro.working.Working;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Threshold and thermal constant as a teacher would write them on a blackboard. */
final class ThermalLineWorking {

  private static final int DIGITS = 5;

  private final ThermalLine line;
  private final double[] celsius;
  private final double[] days;

  private ThermalLineWorking(ThermalLine line) {
    this.line = line;
    celsius = line.celsius().stream().mapToDouble(Double::doubleValue).toArray();
    days = line.days().stream().mapToDouble(Double::doubleValue).toArray();
  }

  static Working of(ThermalLine line) {
    var steps = new ThermalLineWorking(line);
    var working =
        Working.of(
            "Lower threshold and thermal constant of "
                + line.subject()
                + ", by "
                + line.method().words());
    return line.method() == LineMethod.LEAST_SQUARES
        ? steps.leastSquares(working)
        : steps.majorAxis(working);
  }

  private Working leastSquares(Working working) {
    double[] rates = new double[days.length];
    for (int i = 0; i < days.length; i++) {
      rates[i] = 1 / days[i];
    }
    var fit = LinearFit.of(celsius, rates);
    double xy = fit.slope() * fit.squaresX();
    var slope =
        working
            .step(
                "rate at each temperature",
                "r = 1/D",
                "",
                each(rates, " /d"),
                LineMethod.LEAST_SQUARES.source())
            .step(
                "means",
                "T̄ = ΣT/N, r̄ = Σr/N",
                "",
                number(fit.meanX()) + " °C, " + number(fit.meanY()) + " /d")
            .step(
                "slope",
                "b = Σ(T − T̄)(r − r̄) / Σ(T − T̄)²",
                number(xy) + " / " + number(fit.squaresX()),
                number(fit.slope()) + " /(d °C)")
            .step(
                "intercept",
                "a = r̄ − b T̄",
                number(fit.meanY()) + " − " + number(fit.slope()) + " × " + number(fit.meanX()),
                number(fit.intercept()) + " /d")
            .step(
                "lower threshold, where the line crosses zero",
                "LT = −a/b",
                number(-fit.intercept()) + " / " + number(fit.slope()),
                Numbers.fixed(-fit.intercept() / fit.slope(), 3) + " °C")
            .step(
                "thermal constant",
                "K = 1/b",
                "1 / " + number(fit.slope()),
                Numbers.fixed(1 / fit.slope(), 2) + " °C·d");
    return fit.points() > 2 ? errors(slope, fit) : twoPoints(slope);
  }

  private Working errors(Working working, LinearFit fit) {
    double s = fit.residualDeviation();
    double error = fit.slopeStandardError();
    return working
        .step(
            "standard deviation of the residuals",
            "s = √(Σ(r − a − bT)² / (N − 2))",
            "√(" + number(fit.residualSquares()) + " / " + fit.degreesOfFreedom() + ")",
            number(s) + " /d")
        .step(
            "standard error of the slope",
            "SE(b) = s / √Σ(T − T̄)²",
            number(s) + " / √" + number(fit.squaresX()),
            number(error) + " /(d °C)")
        .step(
            "standard error of the thermal constant",
            "SE(K) = SE(b) / b²",
            number(error) + " / " + number(fit.slope()) + "²",
            Numbers.fixed(error / (fit.slope() * fit.slope()), 2) + " °C·d",
            RateSources.CAMPBELL_1974)
        .step(
            "standard error of the lower threshold",
            "SE(LT) = (r̄/b) √(s²/(N r̄²) + (SE(b)/b)²)",
            "",
            Numbers.fixed(line.lowerStandardError(), 2) + " °C",
            RateSources.CAMPBELL_1974);
  }

  private static Working twoPoints(Working working) {
    return working.step(
        "standard errors", "", "", "none: a line through two points leaves no residuals");
  }

  private Working majorAxis(Working working) {
    double[] products = new double[days.length];
    for (int i = 0; i < days.length; i++) {
      products[i] = days[i] * celsius[i];
    }
    var fit = LinearFit.of(days, products);
    var axis = ReducedMajorAxis.of(days, products);
    double n = Math.max(1, days.length - 1);
    double deviationX = Math.sqrt(fit.squaresX() / n);
    double deviationY = Math.sqrt(fit.squaresY() / n);
    return working
        .step(
            "duration times temperature",
            "D T",
            "",
            each(products, " °C·d"),
            LineMethod.REDUCED_MAJOR_AXIS.source())
        .step(
            "standard deviations",
            "sd(D), sd(DT)",
            "",
            number(deviationX) + " d, " + number(deviationY) + " °C·d")
        .step(
            "lower threshold, the slope",
            "LT = sign(corr) sd(DT) / sd(D)",
            number(deviationY) + " / " + number(deviationX),
            Numbers.fixed(axis.slope(), 3) + " °C")
        .step(
            "thermal constant, the intercept",
            "K = mean(DT) − LT mean(D)",
            number(fit.meanY()) + " − " + number(axis.slope()) + " × " + number(fit.meanX()),
            Numbers.fixed(axis.intercept(), 2) + " °C·d");
  }

  private String each(double[] values, String unit) {
    return IntStream.range(0, values.length)
        .mapToObj(i -> Numbers.plain(celsius[i]) + " °C: " + number(values[i]) + unit)
        .collect(Collectors.joining("; "));
  }

  private static String number(double value) {
    return Numbers.significant(value, DIGITS);
  }
}
