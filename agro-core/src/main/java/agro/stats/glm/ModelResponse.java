package agro.stats.glm;

import agro.report.InputProblem;
import java.util.Arrays;

/** Observations of a generalised linear model, with their offsets and prior weights if any. */
public final class ModelResponse {

  private enum Kind {
    OUT_OF,
    COUNTS,
    MEASUREMENTS
  }

  private final Kind kind;
  private final double[] y;
  private final double[] total;
  private final double[] weight;
  private final double[] offset;

  private ModelResponse(Kind kind, double[] y, double[] total, double[] weight, double[] offset) {
    this.kind = kind;
    this.y = y;
    this.total = total;
    this.weight = weight;
    this.offset = offset;
  }

  /**
   * So many of n, for example dead of treated.
   *
   * @param events number of events of each observation, 0 to n
   * @param totals n of each observation, at least 1
   * @return the response
   * @throws InputProblem if a number is negative, not whole, or more than its n, or an n is zero
   */
  public static ModelResponse outOf(double[] events, double[] totals) {
    checkLengths("totals", totals.length, events.length);
    for (int i = 0; i < events.length; i++) {
      if (!(totals[i] > 0) || totals[i] != Math.rint(totals[i]) || Double.isInfinite(totals[i])) {
        throw InputProblem.of("observation " + (i + 1) + " has a total of " + plain(totals[i]))
            .expected("a whole number of at least 1")
            .because("a proportion of nothing says nothing")
            .mend("leave the observation out or correct its total");
      }
      requireWhole(events[i], i);
      if (events[i] > totals[i]) {
        throw InputProblem.of(
                "observation "
                    + (i + 1)
                    + " has "
                    + plain(events[i])
                    + " events out of "
                    + plain(totals[i]))
            .expected("at most as many events as the total")
            .because("no more can die than were there")
            .mend("correct the count or the total; they may be exchanged");
      }
    }
    return plainOf(Kind.OUT_OF, events, totals.clone());
  }

  /**
   * Counts without an upper limit.
   *
   * @param counts count of each observation, not negative
   * @return the response
   * @throws InputProblem if a count is negative or not a number
   */
  public static ModelResponse counts(double... counts) {
    for (int i = 0; i < counts.length; i++) {
      if (!(counts[i] >= 0) || Double.isInfinite(counts[i])) {
        throw InputProblem.of("observation " + (i + 1) + " is a count of " + plain(counts[i]))
            .expected("zero or a positive number")
            .because("nothing is counted fewer than no times")
            .mend("correct the count; leave out what was not counted");
      }
    }
    double[] ones = new double[counts.length];
    Arrays.fill(ones, 1);
    return plainOf(Kind.COUNTS, counts, ones);
  }

  /**
   * Positive measurements, for the gamma family.
   *
   * @param values value of each observation, above zero
   * @return the response
   * @throws InputProblem if a value is not positive
   */
  public static ModelResponse measurements(double... values) {
    for (int i = 0; i < values.length; i++) {
      if (!(values[i] > 0) || Double.isInfinite(values[i])) {
        throw InputProblem.of("observation " + (i + 1) + " is a measurement of " + plain(values[i]))
            .expected("a positive number")
            .because("the gamma distribution has no zero and no negative values")
            .mend("correct the value or take another family");
      }
    }
    double[] ones = new double[values.length];
    Arrays.fill(ones, 1);
    return plainOf(Kind.MEASUREMENTS, values, ones);
  }

  private static ModelResponse plainOf(Kind kind, double[] y, double[] total) {
    if (y.length == 0) {
      throw InputProblem.of("a response without observations")
          .expected("at least one observation")
          .because("a model is fitted to observations")
          .mend("give the observations");
    }
    double[] weight = new double[y.length];
    Arrays.fill(weight, 1);
    return new ModelResponse(kind, y.clone(), total, weight, new double[y.length]);
  }

  private static void requireWhole(double count, int i) {
    if (!(count >= 0) || count != Math.rint(count)) {
      throw InputProblem.of("observation " + (i + 1) + " is a count of " + plain(count))
          .expected("a whole number that is not negative")
          .because("the distribution is one of counts, not of means or percentages")
          .mend("give the counts themselves with their n or their exposure, or a quasi family");
    }
  }

  private static void checkLengths(String what, int found, int wanted) {
    if (found != wanted) {
      throw InputProblem.of(found + " " + what + " for " + wanted + " observations")
          .expected("one for each observation")
          .because("numbers are matched by their place")
          .mend("give both in the same order and number");
    }
  }

  private static String plain(double value) {
    return value == Math.rint(value) && Math.abs(value) < 1e15
        ? Long.toString((long) value)
        : Double.toString(value);
  }

  /**
   * The response with a known part of each linear predictor.
   *
   * @param offsets on the scale of the link, finite
   * @return a new response
   * @throws InputProblem if a value is not finite or the number differs
   */
  public ModelResponse withOffset(double... offsets) {
    checkLengths("offsets", offsets.length, y.length);
    for (int i = 0; i < offsets.length; i++) {
      if (!Double.isFinite(offsets[i])) {
        throw InputProblem.of("the offset of observation " + (i + 1) + " is " + offsets[i])
            .expected("a finite number")
            .because("it is added to the linear predictor")
            .mend("give the logarithm of a positive exposure");
      }
    }
    return new ModelResponse(kind, y, total, weight, offsets.clone());
  }

  /**
   * The response with the exposure of each count: leaves, trap-nights, square metres. Its logarithm
   * becomes the offset, so that with a log link means are per unit of exposure.
   *
   * @param exposures positive numbers
   * @return a new response
   * @throws InputProblem if an exposure is not positive or the number differs
   */
  public ModelResponse withExposure(double... exposures) {
    checkLengths("exposures", exposures.length, y.length);
    double[] logs = new double[exposures.length];
    for (int i = 0; i < logs.length; i++) {
      if (!(exposures[i] > 0) || Double.isInfinite(exposures[i])) {
        throw InputProblem.of(
                "the exposure of observation " + (i + 1) + " is " + plain(exposures[i]))
            .expected("a positive number")
            .because("a count of nothing looked at is not a zero")
            .mend("leave the observation out");
      }
      logs[i] = Math.log(exposures[i]);
    }
    return new ModelResponse(kind, y, total, weight, logs);
  }

  /**
   * The response with prior weights, each standing for so many equal observations.
   *
   * @param weights not negative; zero leaves an observation out of the fit
   * @return a new response
   * @throws InputProblem if a weight is negative, all are zero or the number differs
   */
  public ModelResponse withPriorWeights(double... weights) {
    checkLengths("weights", weights.length, y.length);
    double sum = 0;
    for (int i = 0; i < weights.length; i++) {
      if (!(weights[i] >= 0) || Double.isInfinite(weights[i])) {
        throw InputProblem.of("the weight of observation " + (i + 1) + " is " + plain(weights[i]))
            .expected("zero or a positive number")
            .because("a weight says how much an observation counts")
            .mend("correct the weight");
      }
      sum += weights[i];
    }
    if (sum == 0) {
      throw InputProblem.of("all weights are zero")
          .expected("at least one positive weight")
          .because("nothing would be left to fit")
          .mend("correct the weights");
    }
    return new ModelResponse(kind, y, total, weights.clone(), offset);
  }

  /**
   * Number of observations.
   *
   * @return number of observations
   */
  public int size() {
    return y.length;
  }

  /**
   * Whether any observation has an offset.
   *
   * @return true if any observation has an offset
   */
  public boolean hasOffset() {
    return Arrays.stream(offset).anyMatch(each -> each != 0);
  }

  /** Whether there are more than one trials in some observation, or it is no proportion. */
  boolean isGrouped() {
    return Arrays.stream(total).anyMatch(each -> each > 1);
  }

  /** The columns of a family that can take this response. */
  ResponseNumbers numbersFor(ErrorFamily family) {
    var wanted =
        family.countsOutOfTotal()
            ? Kind.OUT_OF
            : family == ErrorFamily.GAMMA ? Kind.MEASUREMENTS : Kind.COUNTS;
    if (kind != wanted) {
      throw InputProblem.of("a response of kind " + kind + " for the family " + family)
          .expected(wanted.name())
          .because("each family has observations of its own kind")
          .mend("make the response with outOf, counts or measurements as the family needs");
    }
    if (family == ErrorFamily.POISSON || family == ErrorFamily.NEGATIVE_BINOMIAL) {
      for (int i = 0; i < y.length; i++) {
        requireWhole(y[i], i);
      }
    }
    return new ResponseNumbers(y, total, weight, offset);
  }
}
