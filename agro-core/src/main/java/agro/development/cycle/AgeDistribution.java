package agro.development.cycle;

import agro.source.Reference;

/**
 * How ages at completion are spread in a cohort. The age is the physiological age, of which a stage
 * takes about 1, or degree-days; each distribution says which.
 */
public sealed interface AgeDistribution
    permits ErlangDelay, WeibullAge, NormalRates, LogisticAge, NormalAge {

  /**
   * Share of the cohort that has completed by an age, F(x).
   *
   * @param age age, in the unit of the distribution
   * @return 0 to 1, never falling with age; 0 for ages at which nothing is completed yet
   */
  double completedBy(double age);

  /**
   * The age by which a share has completed.
   *
   * @param share above 0 and below 1
   * @return the age x with F(x) = share
   * @throws agro.report.InputProblem when the share is not between 0 and 1
   */
  double ageAt(double share);

  /**
   * The formula with its parameters.
   *
   * @return one line
   */
  String words();

  /**
   * Where the distribution is published.
   *
   * @return the source
   */
  Reference source();
}
