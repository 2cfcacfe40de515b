package agro.stats.glm;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import agro.ReferenceTable;
import agro.stats.linear.Covariate;
import agro.stats.linear.Factor;
import agro.stats.linear.ModelTerm;
import java.util.Arrays;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Fits of published data against printed and independently computed figures. */
class PublishedFitsTest {

  static Stream<String> published() {
    return cases("published.csv");
  }

  static Stream<String> computed() {
    return cases("glm-reference.csv").filter(each -> fitOf(each) != null);
  }

  private static Stream<String> cases(String table) {
    return ReferenceTable.read(PublishedFitsTest.class, table).stream()
        .map(line -> line.getField("case"))
        .distinct();
  }

  @ParameterizedTest
  @MethodSource
  void published(String name) {
    compare("published.csv", name);
  }

  @ParameterizedTest
  @MethodSource
  void computed(String name) {
    compare("glm-reference.csv", name);
  }

  private static void compare(String table, String name) {
    var fit = fitOf(name);
    assertThat(fit.converged()).isTrue();
    for (var line : ReferenceTable.read(PublishedFitsTest.class, table)) {
      if (line.getField("case").equals(name)) {
        var quantity = line.getField("quantity");
        double value = ReferenceTable.number(line, "value");
        double tolerance =
            table.equals("published.csv")
                ? ReferenceTable.number(line, "tolerance")
                : laggingWeights(name, quantity) ? 2e-7 : 1e-8;
        assertThat(measure(fit, quantity))
            .as(name + " " + quantity)
            .isCloseTo(value, within(tolerance * Math.abs(value)));
      }
    }
  }

  /** The program takes weights from one step before the last, which shows off canonical links. */
  private static boolean laggingWeights(String name, String quantity) {
    boolean canonical = !name.matches(".*(identity|probit|cloglog|clotting).*");
    boolean slow = name.endsWith("identity");
    return slow || (!canonical && quantity.matches("error.*|leverage1|rstandard1"));
  }

  static double measure(GeneralisedLinearFit fit, String quantity) {
    if (quantity.startsWith("estimate")) {
      return fit.coefficients().get(Integer.parseInt(quantity.substring(8)) - 1).estimate();
    }
    if (quantity.startsWith("error")) {
      return fit.coefficients().get(Integer.parseInt(quantity.substring(5)) - 1).standardError();
    }
    if (quantity.startsWith("fitted")) {
      return fit.fittedCounts()[Integer.parseInt(quantity.substring(6)) - 1];
    }
    return switch (quantity) {
      case "deviance" -> fit.deviance();
      case "null" -> fit.nullDeviance();
      case "pearson" -> fit.pearsonChiSquared();
      case "df" -> fit.residualDegreesOfFreedom();
      case "dispersion" -> fit.dispersion();
      case "loglik" -> fit.logLikelihood().orElseThrow();
      case "aic" -> fit.akaike().orElseThrow();
      case "shape" -> fit.shape().orElseThrow().value();
      case "shapeerror" -> fit.shape().orElseThrow().standardError();
      case "covariance" -> fit.covariance(fit.design().names().get(0), fit.design().names().get(1));
      case "leverage1" -> fit.leverages()[0];
      case "rdeviance1" -> fit.residuals(ResidualKind.DEVIANCE)[0];
      case "rpearson1" -> fit.residuals(ResidualKind.PEARSON)[0];
      case "rstandard1" -> fit.residuals(ResidualKind.STANDARDISED_DEVIANCE)[0];
      default -> throw new IllegalArgumentException(quantity);
    };
  }

  static GeneralisedLinearFit fitOf(String name) {
    if (name.startsWith("sprays") || name.equals("exposure") || name.equals("weights")) {
      return sprays(name);
    }
    if (name.startsWith("warpbreaks") || name.startsWith("esoph") || name.startsWith("infert")) {
      return computedData(name);
    }
    var beetles = ModelTerm.slope(Examples.BEETLE_DOSE);
    var rotenone = ModelTerm.slope(Examples.ROTENONE_DOSE);
    var sex = ModelTerm.of(Examples.BUDWORM_SEX);
    var dose = ModelTerm.slope(Examples.BUDWORM_DOSE);
    var binomial = GeneralisedLinearModel.of(ErrorFamily.BINOMIAL);
    var probit = binomial.with(LinkFunction.PROBIT);
    return switch (name) {
      case "beetles-logit" -> binomial.fit(Examples.BEETLES, beetles);
      case "beetles-probit" -> probit.fit(Examples.BEETLES, beetles);
      case "beetles-cloglog" ->
          binomial.with(LinkFunction.COMPLEMENTARY_LOG_LOG).fit(Examples.BEETLES, beetles);
      case "beetles-observed" ->
          probit.with(InformationKind.OBSERVED).fit(Examples.BEETLES, beetles);
      case "rotenone" -> probit.fit(Examples.ROTENONE, rotenone);
      case "rotenone-observed" ->
          probit.with(InformationKind.OBSERVED).fit(Examples.ROTENONE, rotenone);
      case "budworm" ->
          binomial.fit(Examples.BUDWORM, sex, dose, sex.timesSlope(Examples.BUDWORM_DOSE));
      case "budworm-parallel" ->
          binomial.fit(Examples.BUDWORM, PredictorDesign.withoutIntercept(sex, dose));
      case "clotting" -> clotting();
      default -> null;
    };
  }

  private static GeneralisedLinearFit clotting() {
    double[] u = {5, 10, 15, 20, 30, 40, 60, 80, 100};
    double[] logs = Arrays.stream(u).map(Math::log).toArray();
    return GeneralisedLinearModel.of(ErrorFamily.GAMMA)
        .fit(
            ModelResponse.measurements(118, 58, 42, 35, 27, 25, 21, 19, 18),
            ModelTerm.slope(Covariate.of("log u", logs)));
  }

  private static GeneralisedLinearFit sprays(String name) {
    var counts = Examples.sprayCounts();
    double[] cycle = {1, 2, 3, 0.5};
    double[] cycles = IntStream.range(0, 72).mapToDouble(i -> cycle[i % 4]).toArray();
    return switch (name) {
      case "sprays-poisson" ->
          GeneralisedLinearModel.of(ErrorFamily.POISSON).fit(counts, Examples.spray());
      case "sprays-quasi" ->
          GeneralisedLinearModel.of(ErrorFamily.QUASI_POISSON).fit(counts, Examples.spray());
      case "sprays-nb" ->
          GeneralisedLinearModel.of(ErrorFamily.NEGATIVE_BINOMIAL).fit(counts, Examples.spray());
      case "sprays-nb-null" -> GeneralisedLinearModel.of(ErrorFamily.NEGATIVE_BINOMIAL).fit(counts);
      case "exposure" ->
          GeneralisedLinearModel.of(ErrorFamily.POISSON)
              .fit(counts.withExposure(cycles), Examples.spray());
      case "weights" ->
          GeneralisedLinearModel.of(ErrorFamily.POISSON)
              .fit(counts.withPriorWeights(cycles), Examples.spray());
      default -> throw new IllegalArgumentException(name);
    };
  }

  private static GeneralisedLinearFit computedData(String name) {
    if (name.endsWith("anova") || name.endsWith("drop") || name.equals("warpbreaks-f")) {
      return null;
    }
    if (name.startsWith("warpbreaks")) {
      var wool = Examples.factor("warpbreaks", "wool");
      var tension = Examples.factor("warpbreaks", "tension", "L", "M", "H");
      var breaks = ModelResponse.counts(Examples.column("warpbreaks", "breaks"));
      var main = PredictorDesign.of(ModelTerm.of(wool), ModelTerm.of(tension));
      return switch (name) {
        case "warpbreaks" ->
            GeneralisedLinearModel.of(ErrorFamily.POISSON)
                .fit(breaks, PredictorDesign.of(ModelTerm.crossing(wool, tension)));
        case "warpbreaks-quasi" ->
            GeneralisedLinearModel.of(ErrorFamily.QUASI_POISSON).fit(breaks, main);
        default ->
            GeneralisedLinearModel.of(ErrorFamily.POISSON)
                .with(LinkFunction.IDENTITY)
                .fit(breaks, main);
      };
    }
    if (name.startsWith("esoph")) {
      var family = name.equals("esoph") ? ErrorFamily.BINOMIAL : ErrorFamily.QUASI_BINOMIAL;
      return GeneralisedLinearModel.of(family).fit(esophCounts(), esophDesign());
    }
    var response =
        ModelResponse.outOf(
            Examples.column("infert", "case"),
            IntStream.range(0, 248).mapToDouble(i -> 1).toArray());
    var link =
        name.endsWith("probit")
            ? LinkFunction.PROBIT
            : name.endsWith("cloglog") ? LinkFunction.COMPLEMENTARY_LOG_LOG : LinkFunction.LOGIT;
    return GeneralisedLinearModel.of(ErrorFamily.BINOMIAL)
        .with(link)
        .fit(
            response,
            ModelTerm.slope(Covariate.of("spontaneous", Examples.column("infert", "spontaneous"))),
            ModelTerm.slope(Covariate.of("induced", Examples.column("infert", "induced"))));
  }

  static ModelResponse esophCounts() {
    double[] cases = Examples.column("esoph", "ncases");
    double[] controls = Examples.column("esoph", "ncontrols");
    double[] all = new double[cases.length];
    Arrays.setAll(all, i -> cases[i] + controls[i]);
    return ModelResponse.outOf(cases, all);
  }

  static PredictorDesign esophDesign() {
    Factor tobacco = Examples.factor("esoph", "tobgp", "0-9g/day", "10-19", "20-29", "30+");
    Factor alcohol = Examples.factor("esoph", "alcgp", "0-39g/day", "40-79", "80-119", "120+");
    return PredictorDesign.of(
        ModelTerm.of(Examples.factor("esoph", "agegp")),
        ModelTerm.of(tobacco),
        ModelTerm.of(alcohol));
  }
}
