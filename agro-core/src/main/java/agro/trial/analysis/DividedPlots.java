package agro.trial.analysis;

import agro.report.InputProblem;
import agro.source.Reference;
import agro.stats.linear.Factor;
import agro.stats.linear.ModelTerm;
import agro.stats.linear.StratifiedFit;
import agro.stats.linear.StratifiedModel;
import agro.stats.linear.StratumTable;
import agro.stats.linear.VarianceRow;
import agro.stats.mixed.FixedEffectTest;
import agro.stats.mixed.MixedModel;
import agro.stats.mixed.MixedModelFit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Split plots: an error for each size of plot from the strata of a balanced trial; where plots are
 * missing, main plots as random effects.
 */
final class DividedPlots {

  private final TrialLines lines;
  private final double[] analysed;
  private final Optional<StratifiedFit> strata;
  private final Optional<MixedModelFit> mixed;
  private final List<String> reasons = new ArrayList<>();

  DividedPlots(TrialLines lines, double[] analysed) {
    this.lines = lines;
    this.analysed = analysed;
    this.strata = strata();
    this.mixed = strata.isPresent() ? Optional.empty() : Optional.of(mixed());
  }

  private Optional<StratifiedFit> strata() {
    try {
      var fit = StratifiedModel.of(lines.treatments(), lines.units()).fit(analysed);
      reasons.add("Each treatment is tested against the error of the plots that it was laid on.");
      return Optional.of(fit);
    } catch (InputProblem unbalanced) {
      reasons.add(
          "The plots are not balanced ("
              + unbalanced.read()
              + "), so that main plots are random effects of a mixed model (restricted likelihood,"
              + " Satterthwaite's degrees of freedom) instead of strata.");
      return Optional.empty();
    }
  }

  private MixedModelFit mixed() {
    var fixed = new ArrayList<ModelTerm>();
    var random = new ArrayList<ModelTerm>();
    for (ModelTerm unit : lines.units()) {
      (unit.name().startsWith("block") ? fixed : random).add(unit);
    }
    fixed.addAll(lines.treatments());
    return MixedModel.of(fixed, random).fit(analysed);
  }

  List<String> reasons() {
    return List.copyOf(reasons);
  }

  List<Reference> sources() {
    return strata.isPresent() ? StratifiedFit.sources() : MixedModel.sources();
  }

  MeanSource means(List<Factor> factors) {
    var array = factors.toArray(Factor[]::new);
    return strata.isPresent()
        ? new MeanSource.Marginal(strata.get().means(array))
        : new MeanSource.Mixed(mixed.orElseThrow().means(array));
  }

  List<EffectRow> effects() {
    var rows = new ArrayList<EffectRow>();
    if (strata.isPresent()) {
      for (StratumTable stratum : strata.get().strata()) {
        String name = name(stratum);
        var error = stratum.residual();
        for (VarianceRow row : stratum.rows()) {
          rows.add(EffectRows.of(name, row, EffectRow.Role.TREATMENT, error));
        }
        if (stratum.residual().degreesOfFreedom() > 0 || !stratum.rows().isEmpty()) {
          rows.add(EffectRows.of(name, error, EffectRow.Role.ERROR, error));
        }
      }
      return rows;
    }
    var treatments = lines.treatments().stream().map(ModelTerm::name).toList();
    for (FixedEffectTest test : mixed.orElseThrow().tests()) {
      rows.add(row(test, treatments.contains(test.name())));
    }
    return rows;
  }

  private static String name(StratumTable stratum) {
    return stratum.name().equals("within") ? "plot" : stratum.name();
  }

  private static EffectRow row(FixedEffectTest test, boolean treatment) {
    return new EffectRow(
        "",
        test.name(),
        treatment ? EffectRow.Role.TREATMENT : EffectRow.Role.GROUND,
        test.df1(),
        OptionalDouble.empty(),
        Optional.of(
            new EffectTest("F", test.f(), List.of((double) test.df1(), test.df2()), test.pValue())),
        "");
  }

  TrialPrecision precision(OptionalDouble mean) {
    double df = Double.POSITIVE_INFINITY;
    OptionalDouble variation = OptionalDouble.empty();
    if (strata.isPresent()) {
      for (StratumTable stratum : strata.get().strata()) {
        if (!stratum.rows().isEmpty()) {
          df = Math.min(df, stratum.residual().degreesOfFreedom());
          var square = stratum.residual().meanSquare();
          if (mean.isPresent() && mean.getAsDouble() > 0 && square.isPresent()) {
            variation =
                OptionalDouble.of(100 * Math.sqrt(square.getAsDouble()) / mean.getAsDouble());
          }
        }
      }
    } else {
      for (FixedEffectTest test : mixed.orElseThrow().tests()) {
        df = Math.min(df, test.df2());
      }
    }
    return new TrialPrecision(df, variation, Map.of());
  }
}
