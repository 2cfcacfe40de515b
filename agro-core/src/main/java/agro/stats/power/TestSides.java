package agro.stats.power;

/** Whether a test looks for a difference in one direction or in both. */
public enum TestSides {
  /** Only a difference in the stated direction counts. */
  ONE {
    @Override
    double power(NoncentralT distribution, double alpha) {
      return distribution.oneSidedPower(alpha);
    }
  },
  /** A difference in either direction counts. */
  TWO {
    @Override
    double power(NoncentralT distribution, double alpha) {
      return distribution.twoSidedPower(alpha);
    }
  };

  abstract double power(NoncentralT distribution, double alpha);
}
