package agro.stats.multiple;

/**
 * An extreme of standard normal numbers, such as their range or largest absolute value: what a
 * studentised distribution becomes with infinitely many degrees of freedom.
 */
interface ExtremeOfNormals {

  /** Logarithm of the chance that the extreme is at most w. */
  double logBelow(double w);

  /** Logarithm of the chance that the extreme is above w; not asked for where that is near one. */
  double logAbove(double w);

  /**
   * Power of w with which the chance below w vanishes at zero; 0 for an extreme that may be
   * negative.
   */
  int powerAtZero();
}
