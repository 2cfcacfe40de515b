package agro.generation;

import java.util.Arrays;
import org.hipparchus.util.FastMath;

/**
 * Very wide normal priors that only keep the fit from running away where the traps saw nothing: the
 * size of a flight nobody could see, the spread of a flight caught at one visit. With an ordinary
 * season of counts they move nothing that a reader would notice.
 */
final class WeakPrior {

  /** Catch sizes within a factor of e^3 (twentyfold) of an equal split of the season's catch. */
  private static final double CATCH_SIZE_SD = 3;

  /** The first flight's scale within a factor of e of 0.12 K. */
  private static final double FIRST_SCALE_SD = 1;

  static final double FIRST_SCALE_IN_INTERVALS = 0.12;

  /** The added scale within a factor of e of the first one. */
  private static final double ADDED_SCALE_SD = 1;

  /** The delay of an arrival within a factor of 2 or so of 0.35 K. */
  private static final double DELAY_SD = 0.6;

  static final double DELAY_IN_INTERVALS = 0.35;

  /** The share of a later arrival beside the first within a factor of 4 or so. */
  private static final double SHARE_SD = 1.5;

  private final CatchModel model;
  private final double logFirstScale;
  private final double logDelay;
  private final double[] logCatch;

  WeakPrior(CatchModel model, double typicalIntervalDegreeDaysC) {
    this.model = model;
    logFirstScale = FastMath.log(FIRST_SCALE_IN_INTERVALS * typicalIntervalDegreeDaysC);
    logDelay = FastMath.log(DELAY_IN_INTERVALS * typicalIntervalDegreeDaysC);
    logCatch = new double[model.seasons.size()];
    for (var s = 0; s < logCatch.length; s++) {
      var data = model.seasons.get(s);
      var open = Math.max(0.1, Arrays.stream(data.trapsOpen).average().orElse(1));
      logCatch[s] = FastMath.log((data.totalCatch() / open + 1) / model.generations);
    }
  }

  double logDensity(double[] parameters) {
    var sum = -0.5 * square((parameters[model.firstScaleIndex()] - logFirstScale) / FIRST_SCALE_SD);
    var ratio = parameters[model.addedScaleIndex()] - parameters[model.firstScaleIndex()];
    sum -= 0.5 * square(ratio / ADDED_SCALE_SD);
    for (var s = 0; s < logCatch.length; s++) {
      for (var g = 0; g < model.generations; g++) {
        sum -= 0.5 * square((parameters[model.catchIndex(s, g)] - logCatch[s]) / CATCH_SIZE_SD);
      }
      for (var a = 1; a < model.arrivals; a++) {
        sum -= 0.5 * square((parameters[model.delayIndex(s, a)] - logDelay) / DELAY_SD);
        sum -= 0.5 * square(parameters[model.shareIndex(s, a)] / SHARE_SD);
      }
    }
    return sum;
  }

  /** Adds the derivative to the score and the precision to the information matrix. */
  void addTo(double[] parameters, double[] score, double[][] information) {
    var first = model.firstScaleIndex();
    var added = model.addedScaleIndex();
    score[first] -= (parameters[first] - logFirstScale) / square(FIRST_SCALE_SD);
    information[first][first] += 1 / square(FIRST_SCALE_SD);
    var pull = (parameters[added] - parameters[first]) / square(ADDED_SCALE_SD);
    score[added] -= pull;
    score[first] += pull;
    var precision = 1 / square(ADDED_SCALE_SD);
    information[first][first] += precision;
    information[added][added] += precision;
    information[first][added] -= precision;
    information[added][first] -= precision;
    for (var s = 0; s < logCatch.length; s++) {
      for (var g = 0; g < model.generations; g++) {
        var i = model.catchIndex(s, g);
        score[i] -= (parameters[i] - logCatch[s]) / square(CATCH_SIZE_SD);
        information[i][i] += 1 / square(CATCH_SIZE_SD);
      }
      for (var a = 1; a < model.arrivals; a++) {
        var delay = model.delayIndex(s, a);
        var share = model.shareIndex(s, a);
        score[delay] -= (parameters[delay] - logDelay) / square(DELAY_SD);
        information[delay][delay] += 1 / square(DELAY_SD);
        score[share] -= parameters[share] / square(SHARE_SD);
        information[share][share] += 1 / square(SHARE_SD);
      }
    }
  }

  /** A neutral start: equal catch sizes, spreads at the centre of their priors. */
  double[] start(double[] medians, double interval) {
    var parameters = new double[model.parameters()];
    System.arraycopy(medians, 0, parameters, 0, medians.length);
    parameters[model.intervalIndex()] = interval;
    parameters[model.firstScaleIndex()] = logFirstScale;
    parameters[model.addedScaleIndex()] = logFirstScale;
    for (var s = 0; s < logCatch.length; s++) {
      for (var g = 0; g < model.generations; g++) {
        parameters[model.catchIndex(s, g)] = logCatch[s];
      }
      for (var a = 1; a < model.arrivals; a++) {
        parameters[model.delayIndex(s, a)] = logDelay;
      }
    }
    return parameters;
  }

  private static double square(double x) {
    return x * x;
  }
}
