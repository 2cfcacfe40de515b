package agro.stats;

/** A smooth number of several parameters that is to be made small, such as a likelihood's minus. */
@FunctionalInterface
public interface ScalarModel {

  /**
   * Computes the number.
   *
   * @param parameters one value for each parameter; not changed
   * @return the number; not finite where the parameters make no sense
   */
  double value(double[] parameters);
}
