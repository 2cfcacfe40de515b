package agro.stats.linear;

import agro.report.InputProblem;
import java.util.ArrayList;
import java.util.List;

/**
 * Treatments of a balanced design with units of several sizes, such as blocks, main plots and
 * subplots: each treatment is tested against the error of the stratum of units that it was applied
 * to (Nelder 1965). Randomised blocks, Latin squares, split plots, strip plots, confounded
 * factorials and nested sub-samples differ in their units only. Where effects are spread over
 * several strata the model is refused.
 *
 * <p>Factorised once and fitted to as many responses as wanted; immutable.
 */
public final class StratifiedModel {

  private final DesignMatrix treatments;
  private final BlockStructure units;
  private final List<PivotedFactors> strata;
  private final List<double[][]> shares;

  private StratifiedModel(List<ModelTerm> terms, List<ModelTerm> errors) {
    if (errors.isEmpty()) {
      throw InputProblem.of("a stratified model without units")
          .expected("at least one kind of units, such as blocks")
          .because("without them there is one error for all")
          .mend("name the units, or use a linear model");
    }
    this.treatments = DesignMatrix.of(terms, ContrastCoding.SUM_TO_ZERO);
    for (ModelTerm error : errors) {
      if (error.size() != treatments.rows()) {
        throw InputProblem.of(
                error.name()
                    + " has "
                    + error.size()
                    + " observations, the treatments "
                    + treatments.rows())
            .expected("the same observations in all factors")
            .because("rows of a design belong together")
            .mend("give each factor a label for each observation");
      }
    }
    this.units = BlockStructure.of(errors);
    this.strata = project();
    checkWhole();
    this.shares = shares();
  }

  /**
   * A model of a design.
   *
   * @param treatments terms of the treatments in the order in which they are tested
   * @param units units with an error of their own, larger ones first, without the single
   *     observations: for a split plot block and block by main treatment, for a strip plot also
   *     block by the other treatment, for a Latin square rows and columns
   * @return the model
   * @throws InputProblem if units are unequal or overlap unevenly, or effects of a treatment are
   *     spread over strata
   */
  public static StratifiedModel of(List<ModelTerm> treatments, List<ModelTerm> units) {
    return new StratifiedModel(treatments, units);
  }

  /** Columns of the treatments within each stratum, factorised. */
  private List<PivotedFactors> project() {
    int columns = treatments.columns();
    double[][] rotated = new double[columns][];
    for (int j = 0; j < columns; j++) {
      rotated[j] = units.rotate(treatments.column(j));
    }
    var list = new ArrayList<PivotedFactors>();
    for (int s = 0; s < units.count(); s++) {
      double[][] parts = new double[columns][];
      for (int j = 0; j < columns; j++) {
        parts[j] = units.part(rotated[j], s);
        double whole = LinearModelFit.product(rotated[j], rotated[j]);
        if (LinearModelFit.product(parts[j], parts[j]) < 1e-18 * whole) {
          parts[j] = new double[parts[j].length];
        }
      }
      list.add(PivotedFactors.of(parts, units.dimension(s)));
    }
    return List.copyOf(list);
  }

  int degreesOfFreedom(int stratum, int term) {
    var factors = strata.get(stratum);
    int df = 0;
    for (int k = 0; k < factors.rank(); k++) {
      df += treatments.termOfColumn(factors.columnAt(k)) == term ? 1 : 0;
    }
    return df;
  }

  private void checkWhole() {
    int[] whole = Estimability.degreesOfFreedom(treatments);
    for (int t = 0; t < whole.length; t++) {
      var found = new ArrayList<String>();
      int sum = 0;
      for (int s = 0; s < units.count(); s++) {
        int df = degreesOfFreedom(s, t);
        sum += df;
        if (df > 0) {
          found.add(units.name(s));
        }
      }
      if (sum > whole[t]) {
        throw BlockStructure.split(treatments.terms().get(t).name(), found);
      }
    }
  }

  /** For each stratum the quadratic form that gives the share of a function of the effects. */
  private List<double[][]> shares() {
    double[][] q = treatments.factors().orthonormalColumns();
    var list = new ArrayList<double[][]>();
    double[][] rotated = new double[q.length][];
    for (int k = 0; k < q.length; k++) {
      rotated[k] = units.rotate(q[k]);
    }
    for (int s = 0; s < units.count(); s++) {
      double[][] form = new double[q.length][q.length];
      for (int k = 0; k < q.length; k++) {
        double[] one = units.part(rotated[k], s);
        for (int m = 0; m <= k; m++) {
          double product = LinearModelFit.product(one, units.part(rotated[m], s));
          form[k][m] = Math.abs(product) < 1e-12 ? 0 : product;
          form[m][k] = form[k][m];
        }
      }
      list.add(form);
    }
    return List.copyOf(list);
  }

  /**
   * Fits the model.
   *
   * @param response value of each observation
   * @return the analysis by strata
   * @throws InputProblem if the number of values is another one or a value is not finite
   */
  public StratifiedFit fit(double... response) {
    if (response.length != treatments.rows()) {
      throw InputProblem.of(
              response.length
                  + " values of the response for "
                  + treatments.rows()
                  + " observations")
          .expected("one value for each observation")
          .because("values and factors belong together")
          .mend("give as many values as labels");
    }
    for (int i = 0; i < response.length; i++) {
      if (!Double.isFinite(response[i])) {
        throw InputProblem.of("observation " + (i + 1) + " of the response is " + response[i])
            .expected("a finite number")
            .because("strata are balanced only if every observation is there")
            .mend("use a linear model with blocks as terms, or a mixed model, without that plot");
      }
    }
    return new StratifiedFit(this, response);
  }

  DesignMatrix treatments() {
    return treatments;
  }

  BlockStructure units() {
    return units;
  }

  PivotedFactors stratum(int stratum) {
    return strata.get(stratum);
  }

  double[][] share(int stratum) {
    return shares.get(stratum);
  }
}
