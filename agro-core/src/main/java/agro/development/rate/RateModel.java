package agro.development.rate;

import agro.reading.NearestWord;
import agro.report.InputProblem;
import agro.source.Reference;
import java.util.List;

/**
 * Rate of development as a function of constant temperature. Rates are in 1/d, temperatures in °C;
 * the enzyme models hold their half-inactive temperatures in K. At and beyond a threshold the rate
 * is 0.
 */
public enum RateModel {
  /** A straight line; its inverse slope is the thermal constant. */
  LINEAR(
      "linear",
      "r = a + b T, K = 1/b, LT = -a/b",
      new StraightLine(),
      "the middle part of the range alone, well above the lower threshold and below the optimum",
      RateSources.CAMPBELL_1974),
  /** The first model of Briere and others. */
  BRIERE_1(
      "Briere-1",
      "r = a T (T - T0) (TL - T)^(1/2), 0 outside T0 to TL",
      new BriereCurve(false),
      "the whole range between the thresholds, above 0 °C",
      RateSources.BRIERE_1999),
  /** The second model of Briere and others. */
  BRIERE_2(
      "Briere-2",
      "r = a T (T - T0) (TL - T)^(1/m), 0 outside T0 to TL",
      new BriereCurve(true),
      "the whole range between the thresholds, above 0 °C",
      RateSources.BRIERE_1999),
  /** Logan's model of six parameters in the original notation, four here. */
  LOGAN_6(
      "Logan-6",
      "r = psi {exp(rho T) - exp(rho TM - (TM - T)/D)}, T in °C",
      new LoganCurve(LoganCurve.Form.LOGAN_6),
      "from the middle of the range to TM; it has no lower threshold. The original measures T above"
          + " a base temperature, here the base is 0 °C",
      RateSources.LOGAN_1976),
  /** Logan's model of ten parameters in the original notation, five here. */
  LOGAN_10(
      "Logan-10",
      "r = alpha {1/(1 + k exp(-rho T)) - exp(-(TM - T)/D)}, T in °C",
      new LoganTenCurve(false),
      "from the middle of the range to TM, with a plateau; T is above a base of 0 °C here",
      RateSources.LOGAN_1976),
  /** The first model of Lactin and others. */
  LACTIN_1(
      "Lactin-1",
      "r = exp(rho T) - exp(rho TM - (TM - T)/D)",
      new LoganCurve(LoganCurve.Form.LACTIN_1),
      "from the middle of the range to TM; it has no lower threshold",
      RateSources.LACTIN_1995,
      RateSources.LOGAN_1976),
  /** The second model of Lactin and others, which has a lower threshold. */
  LACTIN_2(
      "Lactin-2",
      "r = exp(rho T) - exp(rho TM - (TM - T)/D) + lambda",
      new LoganCurve(LoganCurve.Form.LACTIN_2),
      "the whole range; the thresholds are the roots of r",
      RateSources.LACTIN_1995),
  /** The enzyme model with inactivation at high temperatures. */
  SCHOOLFIELD_4(
      "Schoolfield-4",
      "r = rho25 (T/Tref) exp[(HA/R)(1/Tref - 1/T)] / {1 + exp[(HH/R)(1/TH - 1/T)]}, T in K",
      new SchoolfieldCurve(SchoolfieldCurve.Form.FOUR),
      "where development goes on; it never reaches 0",
      RateSources.SCHOOLFIELD_1981,
      RateSources.SHARPE_DEMICHELE_1977),
  /** The enzyme model with inactivation at low and high temperatures. */
  SCHOOLFIELD_6(
      "Schoolfield-6",
      "r = rho25 (T/Tref) exp[(HA/R)(1/Tref - 1/T)] / {1 + exp[(HL/R)(1/TL - 1/T)] + exp[(HH/R)(1/TH"
          + " - 1/T)]}, T in K",
      new SchoolfieldCurve(SchoolfieldCurve.Form.SIX),
      "where development goes on; it never reaches 0",
      RateSources.SCHOOLFIELD_1981,
      RateSources.SHARPE_DEMICHELE_1977),
  /** The enzyme model by its intrinsic optimum. */
  INTRINSIC_OPTIMUM(
      "Sharpe-Schoolfield-Ikemoto",
      "as with 6 parameters, with Tref replaced by Tphi = (HL - HH)/[R ln(-HL/HH) + HL/TL - HH/TH]",
      new SchoolfieldCurve(SchoolfieldCurve.Form.INTRINSIC_OPTIMUM),
      "where development goes on; it never reaches 0. Tphi is the maximum of the active share, not"
          + " of the rate",
      RateSources.IKEMOTO_2005,
      RateSources.SCHOOLFIELD_1981),
  /** A bell curve. */
  TAYLOR(
      "Taylor",
      "r = Rm exp(-(1/2)((T - Tm)/Ts)^2)",
      new TaylorCurve(),
      "about the optimum; it is symmetric and never reaches 0",
      RateSources.TAYLOR_1981),
  /** A logistic curve, mirrored at the optimum. */
  STINNER(
      "Stinner",
      "r = C/(1 + exp(k1 + k2 T')), T' = T up to Topt and 2 Topt - T above",
      new StinnerCurve(),
      "up to the optimum; above it the mirrored curve is a convention",
      RateSources.STINNER_1974),
  /** A sigmoid rise with a fall. */
  HILBERT_LOGAN(
      "Hilbert-Logan",
      "r = psi {t^2/(t^2 + d^2) - exp(-(TM - T)/D)}, t = T - Tb, 0 for T at or below Tb",
      new HilbertLoganCurve(false),
      "the whole range from Tb to TM",
      RateSources.HILBERT_LOGAN_1983),
  /** The beta curve by its exponents. */
  BETA(
      "beta",
      "r = exp(mu) (T - Tb)^alpha (Tc - T)^beta, 0 outside Tb to Tc",
      new BetaCurve(),
      "the whole range between the thresholds",
      RateSources.YIN_1995),
  /** The beta curve by its cardinal temperatures. */
  BETA_CARDINAL(
      "beta by cardinal temperatures",
      "r = Rmax [(Tc - T)/(Tc - To) ((T - Tb)/(To - Tb))^((To - Tb)/(Tc - To))]^c, 0 outside Tb to"
          + " Tc",
      new CardinalBetaCurve(),
      "the whole range between the thresholds",
      RateSources.YAN_HUNT_1999,
      RateSources.YIN_1995),
  /** A beta curve by three cardinal temperatures, made for crops. */
  WANG_ENGEL(
      "Wang-Engel",
      "r = Rmax (2 x^alpha y^alpha - x^(2 alpha))/y^(2 alpha), x = T - Tmin, y = Topt - Tmin, alpha ="
          + " ln 2/ln((Tmax - Tmin)/(Topt - Tmin)), 0 outside Tmin to Tmax",
      new WangEngelCurve(),
      "crops, the whole range between the thresholds",
      RateSources.WANG_ENGEL_1998);

  private final String words;
  private final String formula;
  private final RateEquation equation;
  private final String meantFor;
  private final List<Reference> sources;

  RateModel(
      String words, String formula, RateEquation equation, String meantFor, Reference... sources) {
    this.words = words;
    this.formula = formula;
    this.equation = equation;
    this.meantFor = meantFor;
    this.sources = List.of(sources);
  }

  RateEquation equation() {
    return equation;
  }

  /**
   * The model in words.
   *
   * @return a short name
   */
  public String words() {
    return words;
  }

  /**
   * The formula.
   *
   * @return the formula in plain letters
   */
  public String formula() {
    return formula;
  }

  /**
   * The range of temperatures for which the model was meant.
   *
   * @return a phrase
   */
  public String meantFor() {
    return meantFor;
  }

  /**
   * Where the model comes from.
   *
   * @return at least one work
   */
  public List<Reference> sources() {
    return sources;
  }

  /**
   * The parameters, in the order in which a curve takes them.
   *
   * @return symbols, meanings and units
   */
  public List<RateParameter> parameters() {
    return equation.parameters();
  }

  /**
   * Whether the model works on the absolute scale and needs a reference temperature and the gas
   * constant.
   *
   * @return true for the enzyme models
   */
  public boolean usesArrheniusConstants() {
    return this == SCHOOLFIELD_4 || this == SCHOOLFIELD_6 || this == INTRINSIC_OPTIMUM;
  }

  /**
   * The place of a parameter.
   *
   * @param symbol its symbol; capitals matter, for d and D are two parameters
   * @return place counted from 0
   * @throws InputProblem if the model has no such parameter
   */
  public int place(String symbol) {
    var symbols = parameters().stream().map(RateParameter::symbol).toList();
    int place = symbols.indexOf(symbol);
    if (place < 0) {
      throw InputProblem.of("the model " + words + " has no parameter \"" + symbol + "\"")
          .expected("one of " + String.join(", ", symbols))
          .because("a value is given to a parameter by its symbol in the formula " + formula)
          .mend(
              NearestWord.to(symbol, symbols)
                  .map(near -> "write \"" + near + "\" if that is meant")
                  .orElse("write one of these symbols"));
    }
    return place;
  }

  /**
   * A curve of this model with the usual constants.
   *
   * @param parameters a value for each parameter, in order
   * @return the curve
   * @throws InputProblem if there are too few or too many, or one is not finite
   */
  public RateCurve curve(double... parameters) {
    return RateCurve.of(this, ArrheniusConstants.AT_25_CELSIUS, parameters);
  }

  @Override
  public String toString() {
    return words;
  }
}
