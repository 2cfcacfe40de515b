package agro.stats.linear;

import java.util.ArrayList;
import java.util.List;

/** The models whose reference values lie beside the tests. */
final class ReferenceCases {

  private ReferenceCases() {}

  static LinearModelFit fit(String name, String omitted) {
    String data = name.substring(0, (name + " ").indexOf(' '));
    return switch (data) {
      case "sprays" -> sprays(name, omitted);
      case "npk" -> npk(name, omitted);
      case "warp" -> warp(omitted);
      case "orchard" -> orchard(omitted);
      case "tooth" -> tooth(omitted);
      case "soybean" -> soybean(omitted);
      case "oats" -> oats(omitted);
      case "uptake" -> uptake(omitted);
      default -> throw new IllegalArgumentException(name);
    };
  }

  private static LinearModelFit sprays(String name, String omitted) {
    var data = TrialData.read("insect-sprays.csv").without(omitted);
    double[] response =
        switch (name) {
          case "sprays root" -> data.numbers("count", Math::sqrt);
          case "sprays root half" -> data.numbers("count", y -> Math.sqrt(y + 0.5));
          case "sprays log" -> data.numbers("count", Math::log1p);
          default -> data.numbers("count");
        };
    return LinearModel.oneWay(data.factor("spray")).fit(response);
  }

  private static LinearModelFit npk(String name, String omitted) {
    var data = TrialData.read("npk.csv").without(omitted);
    var n = data.factor("N");
    var p = data.factor("P");
    var k = data.factor("K");
    var treatments = new ArrayList<>(ModelTerm.crossing(n, p, k));
    if (name.equals("npk main")) {
      treatments.retainAll(List.of(ModelTerm.of(n), ModelTerm.of(k)));
    } else if (name.equals("npk missing")) {
      treatments.remove(treatments.size() - 1);
    }
    return LinearModel.of(ModelTerm.of(data.factor("block")))
        .and(treatments)
        .fit(data.numbers("yield"));
  }

  private static LinearModelFit warp(String omitted) {
    var data = TrialData.read("warpbreaks.csv").without(omitted);
    return LinearModel.of(
            ModelTerm.crossing(data.factor("wool"), data.factor("tension", "L", "M", "H")))
        .fit(data.numbers("breaks"));
  }

  private static LinearModelFit orchard(String omitted) {
    var data = TrialData.read("orchard-sprays.csv").without(omitted);
    return LinearModel.of(
            ModelTerm.of(data.factor("rowpos")),
            ModelTerm.of(data.factor("colpos")),
            ModelTerm.of(data.factor("treatment")))
        .fit(data.numbers("decrease"));
  }

  private static LinearModelFit tooth(String omitted) {
    var data = TrialData.read("tooth-growth.csv").without(omitted);
    return LinearModel.of(ModelTerm.crossing(data.factor("supp"), data.factor("dose")))
        .fit(data.numbers("len"));
  }

  private static LinearModelFit soybean(String omitted) {
    var data = TrialData.read("soybean.csv").without(omitted);
    var treatment = data.factor("treatment", "check", "first", "second", "third", "fourth");
    return LinearModel.of(ModelTerm.of(data.factor("block")), ModelTerm.of(treatment))
        .fit(data.numbers("failures"));
  }

  private static LinearModelFit oats(String omitted) {
    var data = TrialData.read("yates-oats.csv").without(omitted);
    return LinearModel.of(ModelTerm.of(data.factor("block")))
        .and(ModelTerm.crossing(data.factor("variety"), data.factor("nitrogen")))
        .fit(data.numbers("yield"));
  }

  private static LinearModelFit uptake(String omitted) {
    var data = TrialData.read("carbon-dioxide.csv").without(omitted);
    var conc = data.covariate("conc");
    var type = ModelTerm.of(data.factor("Type", "Quebec", "Mississippi"));
    var chilling = data.factor("Treatment", "nonchilled", "chilled");
    return LinearModel.of(
            ModelTerm.slope(conc),
            type,
            ModelTerm.of(chilling),
            type.times(chilling),
            type.timesSlope(conc))
        .fit(data.numbers("uptake"));
  }

  static ModelTerm term(LinearModel model, String name) {
    var variables = new java.util.HashSet<>(List.of(name.split(":", -1)));
    return model.terms().stream()
        .filter(term -> term.variables().equals(variables))
        .findFirst()
        .orElseThrow();
  }

  static Factor factor(LinearModel model, String name) {
    return model.terms().stream()
        .flatMap(term -> term.factors().stream())
        .filter(factor -> factor.name().equals(name))
        .findFirst()
        .orElseThrow();
  }
}
