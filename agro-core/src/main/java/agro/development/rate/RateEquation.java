package agro.development.rate;

import java.util.List;

/**
 * The formula of a rate model. A search may use other coordinates than the parameters of the paper
 * where those are badly conditioned; most equations use the parameters themselves.
 */
interface RateEquation {

  /** Step of numeric derivatives, relative. */
  double STEP = 1e-6;

  List<RateParameter> parameters();

  /** Rate in 1/d, never below 0; 0 outside the thresholds. */
  double rate(double celsius, double[] parameters, ArrheniusConstants constants);

  /** What a fit compares with an observed rate, by the coordinates of the search. */
  default double fitted(double celsius, double[] search, ArrheniusConstants constants) {
    return rate(celsius, search, constants);
  }

  /** Derivatives of {@link #fitted} by the coordinates of the search. */
  default void gradient(
      double celsius, double[] search, ArrheniusConstants constants, double[] gradient) {
    double[] q = search.clone();
    for (int j = 0; j < q.length; j++) {
      double h = STEP * Math.max(Math.abs(search[j]), 0.05);
      q[j] = search[j] + h;
      double up = fitted(celsius, q, constants);
      q[j] = search[j] - h;
      gradient[j] = (up - fitted(celsius, q, constants)) / (2 * h);
      q[j] = search[j];
    }
  }

  /**
   * The equation for a fit that follows the formula below zero too, beyond a threshold, as many
   * published fits do. The same one where the model itself says zero there.
   */
  default RateEquation asWritten() {
    return this;
  }

  default double[] toSearch(double[] parameters, ArrheniusConstants constants) {
    return parameters.clone();
  }

  default double[] toParameters(double[] search, ArrheniusConstants constants) {
    return search.clone();
  }

  /** Whether a coordinate of the search is the parameter of the same place. */
  default boolean isDirect(int parameter) {
    return true;
  }

  SearchBox box(DataSpan span);

  /** Multiplies the curve by a factor, at least roughly, to bring a start to the height of data. */
  default void rescale(double[] search, double factor) {
    search[0] *= factor;
  }

  /** Optimum in °C by a closed form, or NaN when there is none. */
  default double optimum(double[] parameters, ArrheniusConstants constants) {
    return Double.NaN;
  }

  /** Lower threshold in °C: a closed form, NaN when roots have to be sought, or minus infinity. */
  default double lower(double[] parameters) {
    return Double.NaN;
  }

  /** Upper threshold in °C: a closed form, NaN when roots have to be sought, or infinity. */
  default double upper(double[] parameters) {
    return Double.NaN;
  }
}
