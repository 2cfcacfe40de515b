package agro.course.handwork;

import agro.course.sheet.LogProbabilityPaper;
import agro.course.sheet.ProbitLine;
import agro.report.InputProblem;
import agro.stats.NormalQuantile;
import agro.stats.UpperTail;
import agro.trial.bioassay.DoseResponse;
import agro.trial.bioassay.DoseResponseFit;
import agro.trial.bioassay.HeterogeneityRule;
import agro.trial.bioassay.NaturalMortality;
import agro.working.Presentable;
import agro.working.Presentation;
import agro.working.ResultTable;
import agro.working.TextLanguage;
import agro.working.Working;
import java.util.List;

/**
 * A probit line by hand with all its cycles. Variances, chi-squared and limits come from the sums
 * of the last cycle, as textbooks take them.
 *
 * @param question what was asked
 * @param provisional the line from which the first cycle began
 * @param cycles the cycles in order, at least one
 */
public record HandProbitFit(HandProbit question, ProbitLine provisional, List<ProbitCycle> cycles)
    implements Presentable {

  /** Copies the cycles. */
  public HandProbitFit {
    cycles = List.copyOf(cycles);
  }

  /**
   * The last cycle.
   *
   * @return the cycle whose sums give variances and limits
   */
  public ProbitCycle last() {
    return cycles.get(cycles.size() - 1);
  }

  /**
   * The line of the last cycle.
   *
   * @return intercept and slope in probits
   */
  public ProbitLine line() {
    return last().to();
  }

  /**
   * Chi-squared of heterogeneity.
   *
   * @return Syy − Sxy² / Sxx of the last cycle
   */
  public double chiSquared() {
    return last().sums().chiSquared();
  }

  /**
   * Degrees of freedom of chi-squared.
   *
   * @return number of doses less 2
   */
  public int degreesOfFreedom() {
    return last().rows().size() - 2;
  }

  /**
   * Chance of so much scatter about the line or more.
   *
   * @return P; 1 without degrees of freedom
   */
  public double heterogeneityP() {
    return degreesOfFreedom() == 0 ? 1 : UpperTail.chiSquared(chiSquared(), degreesOfFreedom());
  }

  /**
   * Whether the variances are multiplied by chi-squared over its degrees of freedom.
   *
   * @return whether the rule asks for it
   */
  public boolean isHeterogeneous() {
    var rule = question.heterogeneity();
    return degreesOfFreedom() > 0
        && switch (rule.when()) {
          case NEVER -> false;
          case ALWAYS -> true;
          case BELOW_LEVEL -> heterogeneityP() < rule.level();
        };
  }

  /**
   * What the variances are multiplied by.
   *
   * @return chi-squared over its degrees of freedom, or 1
   */
  public double heterogeneityFactor() {
    return isHeterogeneous() ? chiSquared() / degreesOfFreedom() : 1;
  }

  /**
   * The deviate of the limits.
   *
   * @return Student's t with a factor of heterogeneity, else the normal deviate
   */
  public double deviate() {
    double tail = (1 - question.confidence()) / 2;
    return isHeterogeneous()
        ? UpperTail.tExceededWith(tail, degreesOfFreedom())
        : -NormalQuantile.of(tail);
  }

  /**
   * Variance of the slope.
   *
   * @return factor / Sxx
   */
  public double slopeVariance() {
    return heterogeneityFactor() / last().sums().sxx();
  }

  /**
   * Fieller's g: from 1 on the slope is not established, and limits of a dose do not exist.
   *
   * @return t² V(b) / b²
   */
  public double g() {
    double ratio = deviate() / line().slope();
    return ratio * ratio * slopeVariance();
  }

  /**
   * The dose that kills a share, with variance and fiducial limits.
   *
   * @param percent the share in per cent, for example 50
   * @return the dose
   * @throws InputProblem when the share is not between 0 and 100, or the line does not rise
   */
  public HandLethalDose lethalDose(double percent) {
    if (!(line().slope() > 0)) {
      throw InputProblem.of("a line with a slope of " + line().slope())
          .expected("a line that rises with the dose")
          .because("a falling line says that a larger dose kills fewer")
          .mend("look for doses or counts that are swapped");
    }
    return HandLethalDose.of(this, percent);
  }

  /**
   * How far the result is from that of maximum likelihood.
   *
   * @return both results
   * @throws InputProblem when there is no maximum-likelihood line
   */
  public LikelihoodComparison comparison() {
    return LikelihoodComparison.of(this);
  }

  /**
   * The maximum-likelihood fit for the same choices.
   *
   * @return the fit
   * @throws InputProblem when there is no such line
   */
  public DoseResponseFit likelihoodFit() {
    double natural = question.naturalMortality();
    var way =
        natural == 0
            ? NaturalMortality.none()
            : question.weights() == ControlWeights.PLAIN
                ? NaturalMortality.abbott()
                : NaturalMortality.fixed(natural);
    return DoseResponse.withDefaults()
        .with(way)
        .with(
            new HeterogeneityRule(
                question.heterogeneity().when(), question.heterogeneity().level()))
        .withConfidence(question.confidence())
        .withControlCeiling(0.999)
        .fit(question.data());
  }

  /**
   * The first columns: dose, log dose, animals, dead, per cent, corrected per cent, empirical
   * probit.
   *
   * @param language language of headings and numbers
   * @return the table
   */
  public ResultTable countTable(TextLanguage language) {
    return new HandProbitPrint(this, language).counts();
  }

  /**
   * The columns of one cycle with its sums.
   *
   * @param number number of the cycle, 1 for the first
   * @param language language of headings and numbers
   * @return the table
   * @throws IndexOutOfBoundsException if there is no such cycle
   */
  public ResultTable cycleTable(int number, TextLanguage language) {
    return new HandProbitPrint(this, language).cycle(cycles.get(number - 1));
  }

  /**
   * The calculation in steps.
   *
   * @param language language of the steps
   * @return the steps from the provisional line to the fiducial limits
   */
  public Working working(TextLanguage language) {
    return new HandProbitPrint(this, language).working();
  }

  /**
   * The calculation in steps, in English.
   *
   * @return the steps
   */
  public Working working() {
    return working(TextLanguage.ENGLISH);
  }

  /**
   * Log-probability paper with the points and the line.
   *
   * @param language language of the title
   * @return the paper
   */
  public LogProbabilityPaper paper(TextLanguage language) {
    return new HandProbitPrint(this, language).paper();
  }

  /**
   * All of it for a reader.
   *
   * @param language language of words and numbers
   * @return result, tables, steps, difference from maximum likelihood and sources
   */
  public Presentation presentation(TextLanguage language) {
    return new HandProbitPrint(this, language).page();
  }

  @Override
  public Presentation presentation() {
    return presentation(TextLanguage.ENGLISH);
  }
}
