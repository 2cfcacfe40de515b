package agro.stats.linear;

import agro.report.InputProblem;
import agro.source.Reference;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The analysis of variance of a balanced design by strata, with means of the treatments. */
public final class StratifiedFit {

  private static final double ROUNDING = 1e-13;

  private final StratifiedModel model;
  private final double[] effects;
  private final List<StratumTable> strata;
  private final List<VarianceRow> errors;

  StratifiedFit(StratifiedModel model, double[] response) {
    this.model = model;
    this.effects = model.treatments().factors().rotate(response);
    double largest = 0;
    for (double value : response) {
      largest = Math.max(largest, Math.abs(value));
    }
    double smallest = ROUNDING * ROUNDING * largest * largest * response.length;
    double[] rotated = model.units().rotate(response);
    var tables = new ArrayList<StratumTable>();
    for (int s = 1; s < model.units().count(); s++) {
      tables.add(table(s, model.units().part(rotated, s), smallest));
    }
    this.strata = List.copyOf(tables);
    this.errors = tables.stream().map(StratumTable::residual).toList();
  }

  private StratumTable table(int stratum, double[] part, double smallest) {
    var factors = model.stratum(stratum);
    double[] coordinates = factors.rotate(part);
    double[] squares = new double[model.treatments().terms().size()];
    for (int k = 0; k < factors.rank(); k++) {
      int term = model.treatments().termOfColumn(factors.columnAt(k));
      if (term >= 0) {
        squares[term] += coordinates[k] * coordinates[k];
      }
    }
    double rest = 0;
    for (int k = factors.rank(); k < coordinates.length; k++) {
      rest += coordinates[k] * coordinates[k];
    }
    rest = rest <= smallest ? 0 : rest;
    int restDf = coordinates.length - factors.rank();
    var rows = new ArrayList<VarianceRow>();
    for (int t = 0; t < squares.length; t++) {
      int df = model.degreesOfFreedom(stratum, t);
      if (df > 0) {
        rows.add(row(model.treatments().terms().get(t).name(), df, squares[t], rest, restDf));
      }
    }
    String name = model.units().name(stratum);
    return new StratumTable(
        name, rows, new VarianceRow("residual", restDf, rest, Optional.empty(), why(rest, restDf)));
  }

  private static String why(double rest, int df) {
    if (df == 0) {
      return "no degrees of freedom are left to the error of this stratum";
    }
    return rest == 0 ? "the error of this stratum is zero" : "";
  }

  private static VarianceRow row(String name, int df, double squares, double rest, int restDf) {
    String reason = why(rest, restDf);
    Optional<VarianceRatio> test =
        reason.isEmpty()
            ? Optional.of(VarianceRatio.of(squares / df, df, rest / restDf, restDf))
            : Optional.empty();
    return new VarianceRow(name, df, squares, test, reason);
  }

  /**
   * The works that the analysis follows.
   *
   * @return strata and degrees of freedom of mixed errors
   */
  public static List<Reference> sources() {
    return List.of(
        LinearSources.YATES_1935, LinearSources.NELDER_1965, LinearSources.SATTERTHWAITE_1946);
  }

  /**
   * The strata from the largest units to the single observations.
   *
   * @return one table for each
   */
  public List<StratumTable> strata() {
    return strata;
  }

  /**
   * The table of a stratum.
   *
   * @param name name of the units, or "within"
   * @return its table
   * @throws InputProblem if there is no such stratum
   */
  public StratumTable stratum(String name) {
    return strata.stream()
        .filter(table -> table.name().equals(name))
        .findFirst()
        .orElseThrow(
            () ->
                InputProblem.of("stratum \"" + name + "\"")
                    .expected("one of " + strata.stream().map(StratumTable::name).toList())
                    .because("only units of the model form strata")
                    .mend("name one of them"));
  }

  /**
   * Rows of a treatment in all strata where it has effects.
   *
   * @param term a term of the treatments
   * @return one row; more where different effects of the term lie in different strata
   */
  public List<VarianceRow> rows(ModelTerm term) {
    return strata.stream()
        .flatMap(table -> table.rows().stream())
        .filter(row -> row.source().equals(term.name()))
        .toList();
  }

  /**
   * Means of a treatment or of combinations of treatments. The error of each difference is taken
   * from the strata that it lies in, with Satterthwaite's degrees of freedom where they are
   * several.
   *
   * @param factors factors of the treatments
   * @return the means
   */
  public MarginalMeans means(Factor... factors) {
    return MarginalMeans.of(
        model.treatments(), effects, new ByStratum(this), MeanWeights.EQUAL, List.of(factors));
  }

  /** The error of a function as the sum of what it takes from each stratum. */
  static final class ByStratum implements ErrorMeasure {

    private static final double NOTHING = 1e-10;

    private final StratifiedFit fit;

    ByStratum(StratifiedFit fit) {
      this.fit = fit;
    }

    private double share(double[] z, int stratum) {
      double[][] form = fit.model.share(stratum);
      double sum = 0;
      for (int k = 0; k < z.length; k++) {
        sum += z[k] * LinearModelFit.product(form[k], z);
      }
      return sum > NOTHING * LinearModelFit.product(z, z) ? sum : 0;
    }

    private double[] parts(double[] z) {
      if (share(z, 0) > 0) {
        throw ErrorMeasure.problem("a mean that is not a difference has no error among the strata");
      }
      double[] parts = new double[fit.errors.size()];
      for (int s = 0; s < parts.length; s++) {
        double share = share(z, s + 1);
        var error = fit.errors.get(s);
        if (share > 0) {
          if (!error.note().isEmpty()) {
            throw ErrorMeasure.problem("stratum " + fit.strata.get(s).name() + ": " + error.note());
          }
          parts[s] = share * error.meanSquare().orElseThrow();
        }
      }
      return parts;
    }

    @Override
    public double variance(double[] z) {
      double sum = 0;
      for (double part : parts(z)) {
        sum += part;
      }
      return sum;
    }

    @Override
    public double degreesOfFreedom(double[] z) {
      double[] parts = parts(z);
      double sum = 0;
      double squares = 0;
      double alone = 0;
      int count = 0;
      for (int s = 0; s < parts.length; s++) {
        if (parts[s] > 0) {
          int df = fit.errors.get(s).degreesOfFreedom();
          sum += parts[s];
          squares += parts[s] * parts[s] / df;
          alone = df;
          count++;
        }
      }
      return count == 1 ? alone : sum * sum / squares;
    }

    @Override
    public boolean coversMeans() {
      return false;
    }
  }

  @Override
  public String toString() {
    return String.join("\n", strata.stream().map(StratumTable::toString).toList());
  }
}
