package agro.development.rate;

import agro.report.InputProblem;
import agro.stats.BootstrapSample;
import agro.stats.ConfidenceLimits;
import agro.stats.RefitOutcome;
import agro.units.Numbers;
import agro.working.Presentable;
import agro.working.Presentation;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Intervals of the parameters and derived points of a fit, and how they were made. */
public final class RateIntervals implements Presentable {

  /** Share of refits that may lack a value before its limits are withheld. */
  private static final double MOST_MISSING = 0.1;

  /** Reads the limits of one value. */
  private interface Reading {
    ConfidenceLimits limits(int column, double estimate);
  }

  private final RateFit fit;
  private final double level;
  private final String method;
  private final Reading reading;
  private final BootstrapSample sample;
  private final List<String> notes;

  private RateIntervals(
      RateFit fit,
      double level,
      String method,
      Reading reading,
      BootstrapSample sample,
      List<String> notes) {
    this.fit = fit;
    this.level = level;
    this.method = method;
    this.reading = reading;
    this.sample = sample;
    this.notes = List.copyOf(notes);
  }

  static RateIntervals ofBootstrap(RateFit fit, RateBootstrap bootstrap, BootstrapSample sample) {
    int columns = fit.curve().parameters().size() + DerivedPoint.values().length;
    Reading reading =
        (column, estimate) ->
            bootstrap.limits() == BootstrapLimits.STUDENTISED
                ? sample.studentised(
                    column,
                    columns + column,
                    estimate,
                    fit.found().standardErrors().get(column),
                    bootstrap.level())
                : limits(fit, bootstrap, sample, column);
    var method =
        "bootstrap of "
            + sample.size()
            + " refits, "
            + bootstrap.resampling().words()
            + "; limits: "
            + bootstrap.limits().words()
            + ", seed "
            + bootstrap.seed();
    return new RateIntervals(
        fit, bootstrap.level(), method, reading, sample, notes(fit, bootstrap, sample));
  }

  private static ConfidenceLimits limits(
      RateFit fit, RateBootstrap bootstrap, BootstrapSample sample, int column) {
    // Drawn animals and known standard errors carry their own scatter; residuals are few.
    return bootstrap.resampling() == Resampling.RESIDUALS
            || bootstrap.resampling() == Resampling.CABINETS
        ? sample.studentT(column, bootstrap.level(), fit.degreesOfFreedom())
        : sample.percentile(column, bootstrap.level());
  }

  private static List<String> notes(RateFit fit, RateBootstrap bootstrap, BootstrapSample sample) {
    var notes = new ArrayList<String>();
    notes.add(
        sample.count(RefitOutcome.FAILED)
            + " of "
            + sample.size()
            + " refits failed and are left out; "
            + sample.count(RefitOutcome.ON_BOUNDARY)
            + " ended on the edge of their range and count");
    if (bootstrap.resampling().isWithinCabinets()) {
      notes.add(
          "within-cabinet only: the scatter between cabinets is not in these intervals, which are"
              + " too narrow for another rearing");
    } else if (fit.points().stream().allMatch(point -> point.cabinet().isEmpty())) {
      notes.add("no cabinets are named; each mean counts as a cabinet of its own");
    }
    return notes;
  }

  static RateIntervals ofProfile(RateFit fit, double level, List<ConfidenceLimits> limits) {
    var method =
        fit.fitting().distribution().isPresent()
            ? "profile of the likelihood, by the chi-squared distribution of 1 degree of freedom"
            : "profile of the sum of squares, by the F distribution of 1 and "
                + fit.degreesOfFreedom()
                + " degrees of freedom";
    var notes = new ArrayList<String>();
    if (fit.fitting().distribution().isPresent()) {
      notes.add(
          "within-cabinet only: the likelihood takes all animals as independent, so the scatter"
              + " between cabinets is not in these intervals");
    }
    return new RateIntervals(
        fit, level, method, (column, estimate) -> limits.get(column), null, notes);
  }

  /**
   * The fit.
   *
   * @return the fit whose values these are
   */
  public RateFit fit() {
    return fit;
  }

  /**
   * The level.
   *
   * @return chance that an interval should hold the truth
   */
  public double level() {
    return level;
  }

  /**
   * How the intervals were made.
   *
   * @return a phrase
   */
  public String method() {
    return method;
  }

  /**
   * What the intervals do not know of, and how the refits ended.
   *
   * @return sentences without full stops
   */
  public List<String> notes() {
    return notes;
  }

  /**
   * The refits.
   *
   * @return the sample; empty for profile intervals
   */
  public Optional<BootstrapSample> sample() {
    return Optional.ofNullable(sample);
  }

  /**
   * The interval of a parameter.
   *
   * @param symbol its symbol
   * @return the interval
   * @throws InputProblem if the model has no such parameter
   */
  public RateInterval interval(String symbol) {
    int place = fit.curve().model().place(symbol);
    var parameter = fit.curve().model().parameters().get(place);
    return read(
        parameter.meaning(), symbol, parameter.unit(), place, fit.curve().parameters().get(place));
  }

  /**
   * The interval of a derived point.
   *
   * @param point the point
   * @return the interval
   * @throws InputProblem if the curve has no such point
   */
  public RateInterval interval(DerivedPoint point) {
    var estimate = fit.curve().derived(point);
    if (estimate.isEmpty()) {
      throw InputProblem.of(
              "the fitted curve of " + fit.curve().model().words() + " has no " + point.words())
          .expected("a point that the curve has")
          .because("what does not exist has no interval")
          .mend("ask for another point, or fit a model that has this one");
    }
    return read(
        point.words(),
        point.symbol(),
        point.unit(),
        fit.curve().parameters().size() + point.place(),
        estimate.getAsDouble());
  }

  private RateInterval read(String name, String symbol, String unit, int column, double estimate) {
    double missing = sample == null ? 0 : (double) sample.missing(column) / sample.size();
    var limits =
        missing > MOST_MISSING
            ? new ConfidenceLimits(Double.NaN, Double.NaN)
            : reading.limits(column, estimate);
    return new RateInterval(name, symbol, unit, estimate, limits, missing);
  }

  /**
   * All intervals: of the free parameters, then of the derived points that the curve has.
   *
   * @return at least one
   */
  public List<RateInterval> all() {
    var all = new ArrayList<RateInterval>();
    var parameters = fit.curve().model().parameters();
    for (int j = 0; j < parameters.size(); j++) {
      if (!fit.fitting().fixed().containsKey(j)) {
        all.add(interval(parameters.get(j).symbol()));
      }
    }
    for (var point : DerivedPoint.values()) {
      if (fit.curve().derived(point).isPresent()) {
        all.add(interval(point));
      }
    }
    return all;
  }

  /**
   * The interval of the curve itself at a temperature, from the refits.
   *
   * @param celsius the temperature
   * @return the limits of the rate in 1/d; empty for profile intervals
   */
  public Optional<ConfidenceLimits> rateAt(double celsius) {
    return Optional.ofNullable(sample).map(refits -> CurveBand.at(fit, refits, level, celsius));
  }

  @Override
  public Presentation presentation() {
    return RatePages.intervals(this);
  }

  @Override
  public String toString() {
    var words = new StringBuilder(method);
    for (var one : all()) {
      words
          .append("\n  ")
          .append(one.symbol())
          .append(' ')
          .append(Numbers.significant(one.estimate(), 5))
          .append(", ")
          .append(Numbers.significant(one.limits().low(), 5))
          .append(" to ")
          .append(Numbers.significant(one.limits().high(), 5));
    }
    return words.toString();
  }
}
