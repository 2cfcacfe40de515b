package agro.trial.analysis;

import agro.stats.ConfidenceLimits;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * The scale on which the values of plots are analysed. Tests belong to that scale; means and limits
 * are carried back, where they are no arithmetic means.
 */
public sealed interface Transformation permits Untransformed, SquareRoot, Logarithm, ArcsineRoot {

  /**
   * The values as they are.
   *
   * @return no transformation
   */
  static Transformation none() {
    return new Untransformed();
  }

  /**
   * Square root of the value, for counts whose variance grows with their mean.
   *
   * @return without an added constant
   */
  static Transformation squareRoot() {
    return new SquareRoot(0);
  }

  /**
   * Square root of the value and a constant.
   *
   * @param added the constant, for example 0.5 for small counts
   * @return the transformation
   * @throws agro.report.InputProblem when the constant is negative or not finite
   */
  static Transformation squareRoot(double added) {
    return new SquareRoot(added);
  }

  /**
   * Common logarithm of the value, for values whose standard deviation grows with their mean.
   *
   * @return without an added constant, so that a zero is refused
   */
  static Transformation logarithm() {
    return new Logarithm(0, Logarithm.Base.TEN);
  }

  /**
   * Common logarithm of the value and a constant.
   *
   * @param added the constant, for example 1 for counts with zeros
   * @return the transformation
   * @throws agro.report.InputProblem when the constant is negative or not finite
   */
  static Transformation logarithm(double added) {
    return new Logarithm(added, Logarithm.Base.TEN);
  }

  /**
   * Arcsine of the square root of a share, in degrees. Shares of 0 and 100 % are refused.
   *
   * @return the transformation
   */
  static Transformation arcsine() {
    return new ArcsineRoot(ExtremeShares.REFUSED);
  }

  /**
   * Arcsine of the square root of a share, in degrees.
   *
   * @param extremes what becomes of 0 and 100 %
   * @return the transformation
   */
  static Transformation arcsine(ExtremeShares extremes) {
    return new ArcsineRoot(extremes);
  }

  /**
   * The transformation in words, with its constant.
   *
   * @return for example {@code "square root of (value + 0.5)"}
   */
  String words();

  /**
   * Why a value cannot be transformed.
   *
   * @param value the value, a share in per cent
   * @param outOf how many were looked at, for counts out of n
   * @return the reason, or empty when it can
   */
  Optional<String> refusal(double value, OptionalInt outOf);

  /**
   * What to do about values that cannot be transformed.
   *
   * @return a sentence without its full stop
   */
  String cure();

  /**
   * Transforms a value.
   *
   * @param value the value, a share in per cent
   * @param outOf how many were looked at, for counts out of n
   * @return the value on the scale of the analysis
   * @throws agro.report.InputProblem when it cannot be transformed
   */
  double apply(double value, OptionalInt outOf);

  /**
   * Carries a number of the scale of the analysis back. A number beyond the end of that scale goes
   * to the value at its end.
   *
   * @param transformed a mean or a limit on the scale of the analysis
   * @return the value that is transformed to it
   */
  double back(double transformed);

  /**
   * Carries limits back.
   *
   * @param limits limits on the scale of the analysis
   * @return limits on the scale of the values
   */
  default ConfidenceLimits back(ConfidenceLimits limits) {
    return new ConfidenceLimits(back(limits.low()), back(limits.high()));
  }

  /**
   * Whether the values stay as they are.
   *
   * @return true for {@link #none()}
   */
  default boolean isNone() {
    return this instanceof Untransformed;
  }
}
