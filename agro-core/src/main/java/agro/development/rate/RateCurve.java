package agro.development.rate;

import agro.report.InputProblem;
import agro.units.Temperature;
import agro.working.Presentable;
import agro.working.Presentation;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;

/** A rate model with its parameters: rate of development at any constant temperature. */
public final class RateCurve implements Presentable {

  private static final int MOST_DIGITS = 15;
  private static final double SAME_CURVE = 1e-4;

  private final RateModel model;
  private final ArrheniusConstants constants;
  private final double[] parameters;

  private RateCurve(RateModel model, ArrheniusConstants constants, double[] parameters) {
    this.model = model;
    this.constants = constants;
    this.parameters = parameters;
  }

  /**
   * A curve with given constants.
   *
   * @param model the model
   * @param constants reference temperature and gas constant; of no effect on other than the enzyme
   *     models
   * @param parameters a value for each parameter, in order
   * @return the curve
   * @throws InputProblem if there are too few or too many, or one is not finite
   */
  public static RateCurve of(RateModel model, ArrheniusConstants constants, double... parameters) {
    int wanted = model.parameters().size();
    if (parameters.length != wanted || !DoubleStream.of(parameters).allMatch(Double::isFinite)) {
      throw InputProblem.of(
              "the model "
                  + model.words()
                  + " was given the parameters "
                  + Arrays.toString(parameters))
          .expected(
              wanted
                  + " finite numbers: "
                  + String.join("; ", model.parameters().stream().map(Object::toString).toList()))
          .because("the formula " + model.formula() + " needs each of them")
          .mend("give one value for each symbol, in this order");
    }
    return new RateCurve(model, constants, parameters.clone());
  }

  /**
   * A line by lower threshold and thermal constant.
   *
   * @param lowerCelsius lower threshold
   * @param degreeDaysC thermal constant in °C·d, positive
   * @return the curve of the linear model
   * @throws InputProblem if the constant is not positive
   */
  public static RateCurve linear(double lowerCelsius, double degreeDaysC) {
    if (!(degreeDaysC > 0)) {
      throw InputProblem.of("a thermal constant of " + degreeDaysC + " °C·d")
          .expected("a number above 0")
          .because("development takes time")
          .mend("give the constant in °C·d");
    }
    return RateModel.LINEAR.curve(-lowerCelsius / degreeDaysC, 1 / degreeDaysC);
  }

  /**
   * The model.
   *
   * @return the model
   */
  public RateModel model() {
    return model;
  }

  /**
   * Reference temperature and gas constant.
   *
   * @return the constants
   */
  public ArrheniusConstants constants() {
    return constants;
  }

  /**
   * The parameters in the order of the model.
   *
   * @return unrounded values
   */
  public List<Double> parameters() {
    return DoubleStream.of(parameters).boxed().toList();
  }

  /**
   * A parameter by its symbol.
   *
   * @param symbol the symbol in the formula
   * @return the value
   * @throws InputProblem if the model has no such parameter
   */
  public double parameter(String symbol) {
    return parameters[model.place(symbol)];
  }

  double[] values() {
    return parameters.clone();
  }

  /**
   * Rate of development.
   *
   * @param celsius constant temperature; NaN gives NaN
   * @return rate in 1/d; 0 at and beyond the thresholds
   */
  public double rate(double celsius) {
    return Double.isNaN(celsius)
        ? Double.NaN
        : model.equation().rate(celsius, parameters, constants);
  }

  /**
   * Rate of development.
   *
   * @param temperature constant temperature
   * @return rate in 1/d; 0 at and beyond the thresholds
   */
  public double rate(Temperature temperature) {
    return rate(temperature.celsius());
  }

  /**
   * Days that development takes at a constant temperature.
   *
   * @param celsius constant temperature
   * @return days; infinite where there is no development
   */
  public double days(double celsius) {
    return 1 / rate(celsius);
  }

  /**
   * A point that follows from the curve.
   *
   * @param point which one
   * @return its value, or empty where the model has none
   */
  public OptionalDouble derived(DerivedPoint point) {
    double value = new CurvePoints(model.equation(), parameters, constants).value(point, model);
    return Double.isNaN(value) ? OptionalDouble.empty() : OptionalDouble.of(value);
  }

  /**
   * The fewest significant digits of the parameters that give the curve again: within one part in
   * ten thousand of its greatest rate. Some models need many, because their parameters nearly
   * cancel each other.
   *
   * @param lowCelsius one end of the range of temperatures that matters
   * @param highCelsius its other end
   * @return 3 to 15 digits
   */
  public int digitsNeeded(double lowCelsius, double highCelsius) {
    int digits = MOST_DIGITS;
    while (digits > 3 && isSame(rounded(digits - 1), lowCelsius, highCelsius)) {
      digits--;
    }
    return digits;
  }

  private boolean isSame(double[] other, double low, double high) {
    double greatest = 0;
    double apart = 0;
    for (int i = 0; i <= 100; i++) {
      double celsius = low + i * (high - low) / 100;
      double rate = rate(celsius);
      greatest = Math.max(greatest, rate);
      apart = Math.max(apart, Math.abs(rate - model.equation().rate(celsius, other, constants)));
    }
    return apart <= SAME_CURVE * greatest;
  }

  /** The parameters with so many significant digits. */
  double[] rounded(int digits) {
    double[] rounded = parameters.clone();
    for (int j = 0; j < rounded.length; j++) {
      rounded[j] = Double.parseDouble(RatePages.significant(parameters[j], digits));
    }
    return rounded;
  }

  @Override
  public Presentation presentation() {
    return RatePages.curve(this);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof RateCurve curve
        && model == curve.model
        && constants.equals(curve.constants)
        && Arrays.equals(parameters, curve.parameters);
  }

  @Override
  public int hashCode() {
    return 31 * model.hashCode() + Arrays.hashCode(parameters);
  }

  @Override
  public String toString() {
    var words = new StringBuilder(model.words());
    for (int j = 0; j < parameters.length; j++) {
      words
          .append(j == 0 ? ": " : ", ")
          .append(model.parameters().get(j).symbol())
          .append(" = ")
          .append(parameters[j]);
    }
    return words.toString();
  }
}
