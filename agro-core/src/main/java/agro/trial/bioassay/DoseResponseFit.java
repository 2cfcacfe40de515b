package agro.trial.bioassay;

import agro.report.InputProblem;
import agro.stats.glm.LinkFunction;
import agro.units.Numbers;
import agro.working.Presentable;
import agro.working.Presentation;
import agro.working.Working;
import java.util.ArrayList;
import java.util.List;
import org.hipparchus.special.Gamma;

/**
 * A dose-response curve P = C + (1 − C − D) F(a + b x) fitted by maximum likelihood: x the dose on
 * the chosen scale, F the inverse of the link, C natural mortality, D immune animals; C and D are 0
 * unless they were asked for. Standard errors are those of the binomial; where the heterogeneity
 * rule asks for it, limits carry the factor {@link #heterogeneityFactor}.
 */
public final class DoseResponseFit implements Presentable {

  private final DoseResponse choices;
  private final BioassayData data;
  private final FitGroups groups;
  private final CurveEstimate estimate;
  private final double pearson;

  DoseResponseFit(
      DoseResponse choices, BioassayData data, FitGroups groups, CurveEstimate estimate) {
    this.choices = choices;
    this.data = data;
    this.groups = groups;
    this.estimate = estimate;
    this.pearson = pearson();
  }

  /**
   * The choices behind the fit.
   *
   * @return link, scale and the others
   */
  public DoseResponse choices() {
    return choices;
  }

  /**
   * The assay.
   *
   * @return groups as given
   */
  public BioassayData data() {
    return data;
  }

  /**
   * Intercept a of the line.
   *
   * @return predictor at x = 0
   */
  public double intercept() {
    return estimate.a;
  }

  /**
   * Slope b of the line.
   *
   * @return change of the predictor for one unit of the scale, above 0
   */
  public double slope() {
    return estimate.b;
  }

  /**
   * Natural mortality, as estimated, corrected for or fixed.
   *
   * @return a share; 0 when there is none
   */
  public double naturalMortality() {
    return groups.way == NaturalMortality.Way.ABBOTT ? groups.known : estimate.natural;
  }

  /**
   * Share of animals that no dose reaches.
   *
   * @return a share; 0 unless it was asked for
   */
  public double immuneShare() {
    return estimate.immune;
  }

  /**
   * Whether natural mortality was asked for in the model and came out at its least possible value.
   *
   * @return true when it is 0 and has no standard error
   */
  public boolean isNaturalMortalityAtZero() {
    return estimate.naturalAtZero;
  }

  /**
   * Standard error of the intercept.
   *
   * @return by the chosen information, without a factor
   */
  public double interceptStandardError() {
    return Math.sqrt(covariance()[0][0]);
  }

  /**
   * Standard error of the slope.
   *
   * @return by the chosen information, without a factor
   */
  public double slopeStandardError() {
    return Math.sqrt(covariance()[1][1]);
  }

  /**
   * Covariance of intercept and slope.
   *
   * @return by the chosen information, without a factor
   */
  public double interceptSlopeCovariance() {
    return covariance()[0][1];
  }

  /**
   * Standard error of natural mortality.
   *
   * @return by the chosen information; 0 when it was not estimated or lies at 0
   */
  public double naturalMortalityStandardError() {
    return errorAt(estimate.naturalPlace);
  }

  /**
   * Standard error of the immune share.
   *
   * @return by the chosen information; 0 when it was not estimated or lies at 0
   */
  public double immuneShareStandardError() {
    return errorAt(estimate.immunePlace);
  }

  private double errorAt(int place) {
    return place == CurveModel.NONE ? 0 : Math.sqrt(Math.max(0, covariance()[place][place]));
  }

  double[][] covariance() {
    return estimate.covariance(choices.information());
  }

  CurveEstimate estimate() {
    return estimate;
  }

  FitGroups groups() {
    return groups;
  }

  /**
   * Share to be expected at a dose, natural mortality included as far as it is in the model.
   *
   * @param dose number on the axis of the assay; above 0 on a log scale
   * @return 0 to 1
   */
  public double responseAt(double dose) {
    double eta = intercept() + slope() * choices.scale().of(dose);
    return estimate.natural + (1 - estimate.natural - estimate.immune) * choices.link().mean(eta);
  }

  private double survivalAt(double x) {
    double eta = intercept() + slope() * x;
    return estimate.immune
        + (1 - estimate.natural - estimate.immune) * choices.link().complement(eta);
  }

  /**
   * The groups as the curve sees them.
   *
   * @return one entry for each group of the data, in their order
   */
  public List<FittedGroup> fittedGroups() {
    return FittedGroups.of(this);
  }

  /**
   * Residual deviance.
   *
   * @return twice the log-likelihood that a perfect fit would gain
   */
  public double deviance() {
    double sum = 0;
    for (int i = 0; i < groups.x.length; i++) {
      double q = survivalAt(groups.x[i]);
      double p = shareAt(groups.x[i]);
      sum += term(groups.responded[i], groups.exposed[i] * p);
      sum += term(groups.exposed[i] - groups.responded[i], groups.exposed[i] * q);
    }
    for (var control : controlsInFit()) {
      double c = estimate.natural;
      sum += term(control.responded(), control.exposed() * c);
      sum += term(control.exposed() - control.responded(), control.exposed() * (1 - c));
    }
    return 2 * sum;
  }

  private static double term(double seen, double expected) {
    return seen == 0 ? 0 : seen * Math.log(seen / expected);
  }

  private double shareAt(double x) {
    double eta = intercept() + slope() * x;
    return estimate.natural + (1 - estimate.natural - estimate.immune) * choices.link().mean(eta);
  }

  List<DoseGroup> controlsInFit() {
    return groups.way == NaturalMortality.Way.IN_MODEL ? groups.controls : List.of();
  }

  /**
   * Pearson's X².
   *
   * @return sum of squared differences over their binomial variance
   */
  public double pearsonChiSquared() {
    return pearson;
  }

  private double pearson() {
    double sum = 0;
    for (int i = 0; i < groups.x.length; i++) {
      double p = shareAt(groups.x[i]);
      double n = groups.exposed[i];
      sum += squared(groups.responded[i] - n * p, n * p * survivalAt(groups.x[i]));
    }
    for (var control : controlsInFit()) {
      double c = estimate.natural;
      double n = control.exposed();
      sum += squared(control.responded() - n * c, n * c * (1 - c));
    }
    return sum;
  }

  private static double squared(double difference, double variance) {
    return difference == 0 ? 0 : difference * difference / variance;
  }

  /**
   * Degrees of freedom of the fit: groups less parameters, a share at 0 not counted.
   *
   * @return 0 or more
   */
  public int degreesOfFreedom() {
    return Math.max(0, groups.x.length + controlsInFit().size() - estimate.free);
  }

  /**
   * Chance of a larger X² when the curve is right and animals respond independently.
   *
   * @return 0 to 1; 1 when no degree of freedom is left
   */
  public double goodnessOfFitP() {
    return Deviates.chiSquaredTail(pearsonChiSquared(), degreesOfFreedom());
  }

  /**
   * Binomial log-likelihood with its coefficients.
   *
   * @return a negative number
   */
  public double logLikelihood() {
    double sum = 0;
    for (int i = 0; i < groups.x.length; i++) {
      double r = groups.responded[i];
      double n = groups.exposed[i];
      sum += coefficient(n, r);
      sum += r == 0 ? 0 : r * Math.log(shareAt(groups.x[i]));
      sum += n == r ? 0 : (n - r) * Math.log(survivalAt(groups.x[i]));
    }
    for (var control : controlsInFit()) {
      double r = control.responded();
      double n = control.exposed();
      sum += coefficient(n, r);
      sum += r == 0 ? 0 : r * Math.log(estimate.natural);
      sum += n == r ? 0 : (n - r) * Math.log1p(-estimate.natural);
    }
    return sum;
  }

  private static double coefficient(double n, double r) {
    return Gamma.logGamma(n + 1) - Gamma.logGamma(r + 1) - Gamma.logGamma(n - r + 1);
  }

  /**
   * Akaike's information criterion.
   *
   * @return twice the number of parameters less twice the log-likelihood
   */
  public double aic() {
    return 2.0 * estimate.free - 2 * logLikelihood();
  }

  /**
   * Whether the rule for heterogeneity asks for the factor here.
   *
   * @return true when limits carry the factor and Student's t
   */
  public boolean isHeterogeneityApplied() {
    if (degreesOfFreedom() == 0) {
      return false;
    }
    return switch (choices.heterogeneity().when()) {
      case NEVER -> false;
      case ALWAYS -> true;
      case BELOW_LEVEL -> goodnessOfFitP() < choices.heterogeneity().level();
    };
  }

  /**
   * The factor on the covariance in all limits.
   *
   * @return X² / df where the rule asks for it, otherwise 1
   */
  public double heterogeneityFactor() {
    return isHeterogeneityApplied() ? pearsonChiSquared() / degreesOfFreedom() : 1;
  }

  /**
   * The two-sided deviate of all limits.
   *
   * @return Student's t where the factor is used, otherwise the normal deviate
   */
  public double deviate() {
    return isHeterogeneityApplied()
        ? Deviates.student(choices.confidence(), degreesOfFreedom())
        : Deviates.normal(choices.confidence());
  }

  /**
   * The dose to which a share of the animals responds.
   *
   * @param percent above 0 and below 100, for example 50
   * @return the dose with its limits
   * @throws InputProblem when the share is out of range
   */
  public LethalDose lethalDose(double percent) {
    return new LethalDoseLimits(this).at(requirePercent(percent));
  }

  /**
   * The doses to which several shares of the animals respond.
   *
   * @param percents each above 0 and below 100
   * @return the doses in the same order
   * @throws InputProblem when a share is out of range
   */
  public List<LethalDose> lethalDoses(double... percents) {
    var doses = new ArrayList<LethalDose>();
    var limits = new LethalDoseLimits(this);
    for (double percent : percents) {
      doses.add(limits.at(requirePercent(percent)));
    }
    return List.copyOf(doses);
  }

  private static double requirePercent(double percent) {
    if (!(percent > 0 && percent < 100)) {
      throw InputProblem.of("a level of " + Numbers.plain(percent) + " %")
          .expected("a percentage above 0 and below 100")
          .because("the curve reaches neither 0 nor 100 % at any dose")
          .mend("write LD50 as 50");
    }
    return percent;
  }

  /** The predictor of a share. */
  double predictor(double percent) {
    return percent > 50 && choices.link() != LinkFunction.COMPLEMENTARY_LOG_LOG
        ? -choices.link().eta((100 - percent) / 100)
        : choices.link().eta(percent / 100);
  }

  /**
   * The curve with its pointwise band, for a figure.
   *
   * @param number points, at least 2
   * @return points from a little below the lowest to a little above the highest dose
   */
  public List<CurvePoint> curve(int number) {
    return DoseBand.of(this, number);
  }

  /**
   * One point of the curve with its pointwise band.
   *
   * @param dose number on the axis of the assay; above 0 on a log scale
   * @return share and limits there
   * @throws InputProblem when the dose has no place on the scale
   */
  public CurvePoint pointAt(double dose) {
    if (!Double.isFinite(choices.scale().of(dose))) {
      throw InputProblem.of("a dose of " + Numbers.plain(dose) + " on " + choices.scale().words())
          .expected("a finite dose, above 0 on a log scale")
          .because("the curve has no point elsewhere")
          .mend("for a dose of 0 ask for naturalMortality");
    }
    return DoseBand.at(this, dose);
  }

  /**
   * What a reader should know about these data and this fit.
   *
   * @return sentences, possibly none
   */
  public List<String> remarks() {
    return FitRemarks.of(this);
  }

  /**
   * The steps from the counts to the median lethal dose with Fieller's limits.
   *
   * @return line, goodness of fit, dose and limits
   */
  public Working working() {
    return FitPrint.working(this);
  }

  /**
   * The result in one sentence of the usual form.
   *
   * @return median dose with limits, slope, X² with df and P
   */
  public String sentence() {
    return FitPrint.sentence(this);
  }

  @Override
  public Presentation presentation() {
    return FitPrint.page(this);
  }

  @Override
  public String toString() {
    return sentence();
  }
}
