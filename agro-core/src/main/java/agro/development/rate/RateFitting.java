package agro.development.rate;

import agro.report.InputProblem;
import agro.units.Numbers;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;

/**
 * How a rate model is fitted to a rearing. A value object.
 *
 * <p>By default it makes the sum of squared differences of observed and fitted rates least, with
 * equal weights; {@link #byDurations} takes the likelihood of single durations instead.
 */
public final class RateFitting {

  private static final long SEED = 1;

  private final RateModel model;
  private final ArrheniusConstants constants;
  private final Map<Integer, Double> fixed;
  private final RateWeights weights;
  private final DurationDistribution distribution;
  private final double lowCelsius;
  private final double highCelsius;
  private final long seed;
  private final boolean asWritten;

  private RateFitting(
      RateModel model,
      ArrheniusConstants constants,
      Map<Integer, Double> fixed,
      RateWeights weights,
      DurationDistribution distribution,
      double lowCelsius,
      double highCelsius,
      long seed,
      boolean asWritten) {
    this.model = Objects.requireNonNull(model, "model");
    this.constants = Objects.requireNonNull(constants, "constants");
    this.fixed = fixed;
    this.weights = Objects.requireNonNull(weights, "weights");
    this.distribution = distribution;
    this.lowCelsius = lowCelsius;
    this.highCelsius = highCelsius;
    this.seed = seed;
    this.asWritten = asWritten;
  }

  /**
   * Least squares on rates with equal weights and all parameters free.
   *
   * @param model the model
   * @return the fitting
   */
  public static RateFitting of(RateModel model) {
    return new RateFitting(
        model,
        ArrheniusConstants.AT_25_CELSIUS,
        new TreeMap<>(),
        RateWeights.EQUAL,
        null,
        Double.NEGATIVE_INFINITY,
        Double.POSITIVE_INFINITY,
        SEED,
        false);
  }

  /**
   * This fitting with a parameter held at a value.
   *
   * @param symbol symbol of the parameter in the formula
   * @param value its value
   * @return a new fitting
   * @throws InputProblem if the model has no such parameter
   */
  public RateFitting withFixed(String symbol, double value) {
    var more = new TreeMap<>(fixed);
    more.put(model.place(symbol), value);
    return new RateFitting(
        model, constants, more, weights, distribution, lowCelsius, highCelsius, seed, asWritten);
  }

  /**
   * This fitting with another reference temperature or gas constant.
   *
   * @param other the constants
   * @return a new fitting
   */
  public RateFitting withConstants(ArrheniusConstants other) {
    return new RateFitting(
        model, other, fixed, weights, distribution, lowCelsius, highCelsius, seed, asWritten);
  }

  /**
   * This fitting with other weights of the rates.
   *
   * @param other the weights
   * @return a new fitting
   */
  public RateFitting withWeights(RateWeights other) {
    return new RateFitting(
        model, constants, fixed, other, distribution, lowCelsius, highCelsius, seed, asWritten);
  }

  /**
   * This fitting by the likelihood of single durations, with development between two looks and with
   * animals that did not develop.
   *
   * @param other how single durations scatter about one over the rate
   * @return a new fitting
   */
  public RateFitting byDurations(DurationDistribution other) {
    return new RateFitting(
        model,
        constants,
        fixed,
        weights,
        Objects.requireNonNull(other, "distribution"),
        lowCelsius,
        highCelsius,
        seed,
        asWritten);
  }

  /**
   * This fitting with a part of the temperatures alone, as for a line that holds in the middle.
   *
   * @param low lowest temperature that is used, °C
   * @param high highest temperature that is used, °C
   * @return a new fitting
   */
  public RateFitting betweenCelsius(double low, double high) {
    return new RateFitting(
        model, constants, fixed, weights, distribution, low, high, seed, asWritten);
  }

  /**
   * This fitting with another seed of its starts and bootstraps.
   *
   * @param other the seed
   * @return a new fitting
   */
  public RateFitting withSeed(long other) {
    return new RateFitting(
        model, constants, fixed, weights, distribution, lowCelsius, highCelsius, other, asWritten);
  }

  /**
   * This fitting with the formula of the model also where it is negative. The usual fit takes a
   * rate of zero there, as the curve does; many published fits leave the formula alone, so that a
   * temperature without development pulls the threshold towards it from either side.
   *
   * @return a new fitting
   */
  public RateFitting withFormulaBelowZero() {
    return new RateFitting(
        model, constants, fixed, weights, distribution, lowCelsius, highCelsius, seed, true);
  }

  /**
   * Fits the model.
   *
   * @param data the rearing
   * @return the fit
   * @throws InputProblem if there are fewer temperatures than free parameters, too few for a line,
   *     or no development at all; if a cabinet has animals but no duration, or records of animals
   *     or their spread are missing where they are needed
   */
  public RateFit fit(RearingData data) {
    return distribution == null ? LeastSquaresFit.of(this, data) : LikelihoodFit.of(this, data);
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
   * Reference temperature and gas constant of the enzyme models.
   *
   * @return the constants
   */
  public ArrheniusConstants constants() {
    return constants;
  }

  /**
   * Weights of the rates.
   *
   * @return the weights
   */
  public RateWeights weights() {
    return weights;
  }

  /**
   * How single durations scatter, if the fit is by their likelihood.
   *
   * @return empty for least squares
   */
  public Optional<DurationDistribution> distribution() {
    return Optional.ofNullable(distribution);
  }

  /**
   * Start of all chance.
   *
   * @return the seed
   */
  public long seed() {
    return seed;
  }

  /** Values of fixed parameters by their places. */
  Map<Integer, Double> fixed() {
    return Collections.unmodifiableMap(fixed);
  }

  /** The equation in the coordinates that this fitting searches. */
  RateEquation equation() {
    var equation = asWritten ? model.equation().asWritten() : model.equation();
    for (int place : fixed.keySet()) {
      if (!equation.isDirect(place)) {
        return new OwnCoordinates(equation);
      }
    }
    return equation;
  }

  int freeParameters() {
    return model.parameters().size() - fixed.size();
  }

  /** This fitting without one fixed parameter. */
  RateFitting released(int place) {
    var fewer = new TreeMap<>(fixed);
    fewer.remove(place);
    return new RateFitting(
        model, constants, fewer, weights, distribution, lowCelsius, highCelsius, seed, asWritten);
  }

  /** Whether a temperature is used. A line cannot follow a rate of zero. */
  boolean uses(double celsius, double rate) {
    boolean line = model == RateModel.LINEAR && rate == 0;
    return celsius >= lowCelsius && celsius <= highCelsius && !line;
  }

  List<RatePoint> points(RearingData data) {
    var used = data.means().stream().filter(one -> uses(one.celsius(), one.rate())).toList();
    double least = Double.POSITIVE_INFINITY;
    double worst = 0;
    for (var mean : used) {
      least = mean.rate() > 0 ? Math.min(least, mean.rate()) : least;
      double error = mean.rateStandardError();
      worst = error > worst ? error : worst;
    }
    if (weights == RateWeights.STANDARD_ERRORS && worst == 0) {
      throw InputProblem.of("no mean of the rearing has a number of animals and a spread")
          .expected("both at one temperature at least")
          .because("a weight by the standard error is made of them")
          .mend("give n and the standard deviation of the days, or choose other weights");
    }
    var points = new ArrayList<RatePoint>();
    for (var mean : used) {
      double error = mean.rateStandardError();
      double scale =
          switch (weights) {
            case EQUAL -> 1;
            case CONSTANT_VARIATION -> mean.rate() > 0 ? mean.rate() : least;
            case STANDARD_ERRORS -> Double.isNaN(error) ? worst : error;
          };
      points.add(
          new RatePoint(mean.cabinet(), mean.celsius(), mean.rate(), error, 1 / (scale * scale)));
    }
    return points;
  }

  /** Refuses data that cannot carry the model. */
  void require(RearingData data, List<RatePoint> points) {
    long temperatures = points.stream().mapToDouble(RatePoint::celsius).distinct().count();
    if (points.stream().noneMatch(point -> point.rate() > 0)) {
      throw InputProblem.of("no animal developed at any temperature of \"" + data.subject() + "\"")
          .expected("development at several temperatures")
          .because("a rate of zero everywhere fits every threshold")
          .mend("add temperatures at which animals develop");
    }
    if (temperatures < 2) {
      throw InputProblem.of(
              "all "
                  + points.size()
                  + " rates of \""
                  + data.subject()
                  + "\" belong to "
                  + Numbers.plain(points.get(0).celsius())
                  + " °C")
          .expected("two or more different temperatures")
          .because("one temperature tells nothing about the effect of another")
          .mend("add rearings at other temperatures");
    }
    if (temperatures < freeParameters()) {
      throw InputProblem.of(
              "the model "
                  + model.words()
                  + " has "
                  + freeParameters()
                  + " free parameters, the rearing \""
                  + data.subject()
                  + "\" has "
                  + temperatures
                  + " temperatures")
          .expected("at least as many temperatures as free parameters")
          .because("with fewer, endless many curves go through all points")
          .mend("choose a model with fewer parameters, fix one, or add temperatures");
    }
  }

  @Override
  public String toString() {
    return model.words()
        + ", "
        + (distribution == null
            ? "least squares on rates, "
                + weights.words()
                + (asWritten ? ", the formula followed below zero" : "")
            : "likelihood of durations, " + distribution.words());
  }
}
