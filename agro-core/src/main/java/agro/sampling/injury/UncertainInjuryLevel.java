package agro.sampling.injury;

import agro.report.InputProblem;
import agro.units.MassPerAreaUnit;
import java.util.Objects;
import java.util.SplittableRandom;

/**
 * An injury level whose terms are known as ranges or distributions. The terms vary apart from one
 * another. They are drawn by a Latin hypercube: every term takes each of n equal slices of its
 * distribution once, in an order of its own, so that few draws go far.
 *
 * @param best the level with the best value of each term
 * @param costPerHectare full cost of treating for a hectare, in the currency of the level
 * @param value price for a tonne, or value of the crop for a hectare, as in the best level
 * @param lossPerPest produce lost in t/ha, or share of the crop lost, for each pest
 * @param sharePrevented share of the loss that the treatment prevents
 * @param thresholdRatio threshold over injury level, 1 when the count is held against the level
 * @param draws number of draws, at least 100
 * @param seed start of all chance
 */
public record UncertainInjuryLevel(
    InjuryLevel best,
    UncertainNumber costPerHectare,
    UncertainNumber value,
    UncertainNumber lossPerPest,
    UncertainNumber sharePrevented,
    UncertainNumber thresholdRatio,
    int draws,
    long seed) {

  private static final int USUAL_DRAWS = 4_000;
  private static final int LEAST_DRAWS = 100;

  /** A distribution of which more than this is impossible was not meant. */
  private static final double MOST_IMPOSSIBLE = 0.05;

  /**
   * Checks the number of draws and that the terms are mostly possible.
   *
   * @throws InputProblem when there are too few draws, or more than one value in twenty of a term
   *     is impossible
   */
  public UncertainInjuryLevel {
    Objects.requireNonNull(best, "best");
    if (draws < LEAST_DRAWS) {
      throw InputProblem.of(draws + " draws")
          .expected("at least " + LEAST_DRAWS)
          .because("a chance of one in twenty would rest on a handful of draws")
          .mend("take some thousands");
    }
    requirePossible(costPerHectare, 0, Double.POSITIVE_INFINITY, "cost of treating");
    requirePossible(value, 0, Double.POSITIVE_INFINITY, "value of the produce");
    requirePossible(lossPerPest, 0, mostLoss(best), "loss for each pest");
    requirePossible(sharePrevented, 0, 1, "share of the loss prevented");
    requirePossible(thresholdRatio, 0, Double.POSITIVE_INFINITY, "threshold over injury level");
  }

  /**
   * A level all of whose terms are exact, to be continued with the methods that begin with "with".
   *
   * @param best the level
   * @return the uncertain level
   */
  public static UncertainInjuryLevel of(InjuryLevel best) {
    return new UncertainInjuryLevel(
        best,
        new UncertainNumber.Exact(best.fullCost().perHectare()),
        new UncertainNumber.Exact(value(best.loss())),
        new UncertainNumber.Exact(loss(best.loss())),
        new UncertainNumber.Exact(best.sharePrevented()),
        new UncertainNumber.Exact(1),
        USUAL_DRAWS,
        8);
  }

  private static double value(CropLoss loss) {
    return loss instanceof CropLoss.OfProduce produce
        ? produce.price().perTonne()
        : ((CropLoss.OfCropValue) loss).cropValue().perHectare();
  }

  private static double loss(CropLoss loss) {
    return loss instanceof CropLoss.OfProduce produce
        ? produce.produceLostPerPest().in(MassPerAreaUnit.TONNE_PER_HECTARE)
        : ((CropLoss.OfCropValue) loss).shareLostPerPest();
  }

  private static double mostLoss(InjuryLevel best) {
    return best.loss() instanceof CropLoss.OfCropValue ? 1 : Double.POSITIVE_INFINITY;
  }

  /**
   * States how the full cost of treating varies.
   *
   * @param number money for a hectare, in the currency of the level
   * @return a new uncertain level
   */
  public UncertainInjuryLevel withCostPerHectare(UncertainNumber number) {
    return new UncertainInjuryLevel(
        best, number, value, lossPerPest, sharePrevented, thresholdRatio, draws, seed);
  }

  /**
   * States how the price of the produce varies.
   *
   * @param number money for a tonne, in the currency of the level
   * @return a new uncertain level
   * @throws InputProblem when the loss of the level is a share of the crop
   */
  public UncertainInjuryLevel withPricePerTonne(UncertainNumber number) {
    requireLoss(best.loss() instanceof CropLoss.OfProduce, "a price for a tonne");
    return withValue(number);
  }

  /**
   * States how the value of the crop varies.
   *
   * @param number money for a hectare, in the currency of the level
   * @return a new uncertain level
   * @throws InputProblem when the loss of the level is one of produce
   */
  public UncertainInjuryLevel withCropValuePerHectare(UncertainNumber number) {
    requireLoss(best.loss() instanceof CropLoss.OfCropValue, "a value of the crop for a hectare");
    return withValue(number);
  }

  private UncertainInjuryLevel withValue(UncertainNumber number) {
    return new UncertainInjuryLevel(
        best, costPerHectare, number, lossPerPest, sharePrevented, thresholdRatio, draws, seed);
  }

  /**
   * States how the loss for each pest varies.
   *
   * @param number t/ha, or share of the crop, as in the level
   * @return a new uncertain level
   */
  public UncertainInjuryLevel withLossPerPest(UncertainNumber number) {
    return new UncertainInjuryLevel(
        best, costPerHectare, value, number, sharePrevented, thresholdRatio, draws, seed);
  }

  /**
   * States how the prevented share of the loss varies.
   *
   * @param number a share
   * @return a new uncertain level
   */
  public UncertainInjuryLevel withSharePrevented(UncertainNumber number) {
    return new UncertainInjuryLevel(
        best, costPerHectare, value, lossPerPest, number, thresholdRatio, draws, seed);
  }

  /**
   * Holds counts against a threshold instead of the level: the pest grows or dies until it harms.
   *
   * @param number threshold over injury level, such as {@link EconomicThreshold.Rule#ratio}
   * @return a new uncertain level
   */
  public UncertainInjuryLevel withThresholdRatio(UncertainNumber number) {
    return new UncertainInjuryLevel(
        best, costPerHectare, value, lossPerPest, sharePrevented, number, draws, seed);
  }

  /**
   * States number and seed of the draws.
   *
   * @param number number of draws, at least 100
   * @param start seed
   * @return a new uncertain level
   */
  public UncertainInjuryLevel withDraws(int number, long start) {
    return new UncertainInjuryLevel(
        best, costPerHectare, value, lossPerPest, sharePrevented, thresholdRatio, number, start);
  }

  /**
   * Draws the levels.
   *
   * @return the distribution of the injury level
   */
  public InjuryLevelDistribution distribution() {
    double infinite = Double.POSITIVE_INFINITY;
    var random = new SplittableRandom(seed);
    double[] cost = drawn(costPerHectare, 0, infinite, draws, random.split());
    double[] worth = drawn(value, 0, infinite, draws, random.split());
    double[] lost = drawn(lossPerPest, 0, mostLoss(best), draws, random.split());
    double[] prevented = drawn(sharePrevented, 0, 1, draws, random.split());
    double[] ratio = drawn(thresholdRatio, 0, infinite, draws, random.split());
    double[] saved = new double[draws];
    for (int i = 0; i < draws; i++) {
      saved[i] = worth[i] * lost[i] * prevented[i] / ratio[i];
    }
    return new InjuryLevelDistribution(this, cost, saved);
  }

  /** One value from each of n slices of a distribution between two bounds, in random order. */
  static double[] drawn(
      UncertainNumber number, double low, double high, int n, SplittableRandom random) {
    double below = low == Double.NEGATIVE_INFINITY ? 0 : number.chanceUpTo(low);
    double kept = (high == Double.POSITIVE_INFINITY ? 1 : number.chanceUpTo(high)) - below;
    double[] values = new double[n];
    for (int i = 0; i < n; i++) {
      double share = below + kept * (i + random.nextDouble()) / n;
      // The ends of a distribution without bounds lie at infinity.
      values[i] = number.quantile(Math.min(1 - 1e-15, Math.max(1e-300, share)));
    }
    for (int i = n - 1; i > 0; i--) {
      int other = random.nextInt(i + 1);
      double swapped = values[i];
      values[i] = values[other];
      values[other] = swapped;
    }
    return values;
  }

  private static void requirePossible(
      UncertainNumber number, double low, double high, String what) {
    if (number instanceof UncertainNumber.Exact exact) {
      if (!(exact.value() >= low && exact.value() <= high)) {
        throw impossible(what, number, 1);
      }
      return;
    }
    double outside =
        number.chanceUpTo(low)
            + (high == Double.POSITIVE_INFINITY ? 0 : 1 - number.chanceUpTo(high));
    if (!(outside <= MOST_IMPOSSIBLE)) {
      throw impossible(what, number, outside);
    }
  }

  private static InputProblem impossible(String what, UncertainNumber number, double outside) {
    return InputProblem.of(
            "a "
                + what
                + " of "
                + number.words()
                + ", "
                + Math.round(100 * outside)
                + " % of it"
                + " impossible")
        .expected("a distribution of which nearly all lies above zero, and shares at most at 1")
        .because("the rest is cut off, which must not change its meaning")
        .mend("take a triangular or log-normal distribution, or data that tell more");
  }

  private void requireLoss(boolean fits, String what) {
    if (!fits) {
      throw InputProblem.of(what + " for a loss of " + best.loss().words())
          .expected("a value in the terms of the level")
          .because("a price for produce and the worth of a crop are two things")
          .mend("state the value of the crop for shares lost, and the price for produce lost");
    }
  }
}
