package agro.trial.bioassay;

import agro.units.Numbers;
import java.util.Objects;

/**
 * A likelihood-ratio test between two ways for series to share their lines; where the heterogeneity
 * rule asks for it, an F test against the scatter about the separate lines decides.
 *
 * @param question what is tested, for example {@code "parallel lines against separate lines"}
 * @param chiSquared likelihood ratio
 * @param degreesOfFreedom parameters between the two
 * @param chiSquaredP its P
 * @param f mean likelihood ratio over the factor of heterogeneity; 0 when none applies
 * @param residualDegreesOfFreedom those of the factor; 0 when none applies
 * @param p the P that decides: of F where a factor applies, otherwise of the likelihood ratio
 */
public record LineTest(
    String question,
    double chiSquared,
    int degreesOfFreedom,
    double chiSquaredP,
    double f,
    int residualDegreesOfFreedom,
    double p) {

  /** Refuses a missing question. */
  public LineTest {
    Objects.requireNonNull(question, "question");
  }

  static LineTest between(SeriesLines fewer, SeriesLines more, SeriesLines full, DoseResponse by) {
    double ratio = Math.max(0, 2 * (more.logLikelihood - fewer.logLikelihood));
    int freedom = fewer.degreesOfFreedom - more.degreesOfFreedom;
    double p = Deviates.chiSquaredTail(ratio, freedom);
    var question = fewer.sharing.words() + " against " + more.sharing.words();
    if (!full.isHeterogeneous(by.heterogeneity()) || freedom <= 0) {
      return new LineTest(question, ratio, freedom, p, 0, 0, p);
    }
    double f = ratio / freedom / full.factor(by.heterogeneity());
    return new LineTest(
        question,
        ratio,
        freedom,
        p,
        f,
        full.degreesOfFreedom,
        Deviates.tailOfF(f, freedom, full.degreesOfFreedom));
  }

  /**
   * Whether the test is an F test against heterogeneity.
   *
   * @return true when a factor of heterogeneity applies
   */
  public boolean isAgainstHeterogeneity() {
    return residualDegreesOfFreedom > 0;
  }

  /**
   * The test in the usual form.
   *
   * @return statistic, degrees of freedom and P
   */
  public String words() {
    return isAgainstHeterogeneity()
        ? "F = "
            + Numbers.fixed(f, 2)
            + "; df = "
            + degreesOfFreedom
            + ", "
            + residualDegreesOfFreedom
            + "; "
            + Deviates.words(p)
        : "χ² = "
            + Numbers.fixed(chiSquared, 2)
            + "; df = "
            + degreesOfFreedom
            + "; "
            + Deviates.words(p);
  }
}
