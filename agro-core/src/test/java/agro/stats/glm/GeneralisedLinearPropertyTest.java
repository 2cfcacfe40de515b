package agro.stats.glm;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import agro.stats.linear.Factor;
import agro.stats.linear.ModelTerm;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;

/** What must hold for any counts. */
class GeneralisedLinearPropertyTest {

  private static final int ROWS = 24;
  private static final ErrorFamily[] FAMILIES = {
    ErrorFamily.POISSON, ErrorFamily.QUASI_POISSON, ErrorFamily.NEGATIVE_BINOMIAL
  };

  private static double[] counts(long seed) {
    var random = new Random(seed);
    double[] counts = new double[ROWS];
    for (int i = 0; i < ROWS; i++) {
      double gamma = 0.3 + random.nextDouble() * 2;
      counts[i] = 1 + Math.floor(gamma * (3 + 4 * (i % 3)));
    }
    return counts;
  }

  private static List<String> labels(String... names) {
    var labels = new ArrayList<String>();
    for (int i = 0; i < ROWS; i++) {
      labels.add(names[i % names.length]);
    }
    return labels;
  }

  private static Factor block() {
    var labels = new ArrayList<String>();
    for (int i = 0; i < ROWS; i++) {
      labels.add("b" + i / 6);
    }
    return Factor.of("block", labels);
  }

  @Property(seed = "8", tries = 40)
  void orderOfRowsAndNamesOfLevelsDoNotMatter(@ForAll long seed) {
    double[] counts = counts(seed);
    var block = block();
    var plain = Factor.of("t", labels("a", "b", "c"));
    var renamed = Factor.of("t", labels("z", "y", "x"));
    var order = new ArrayList<Integer>();
    for (int i = 0; i < ROWS; i++) {
      order.add(i);
    }
    Collections.shuffle(order, new Random(seed));
    int[] places = order.stream().mapToInt(Integer::intValue).toArray();
    double[] shuffled = Arrays.stream(places).mapToDouble(i -> counts[i]).toArray();
    for (var family : FAMILIES) {
      var one =
          GeneralisedLinearModel.of(family)
              .fit(ModelResponse.counts(counts), ModelTerm.of(plain), ModelTerm.of(block));
      var other =
          GeneralisedLinearModel.of(family)
              .fit(
                  ModelResponse.counts(shuffled),
                  ModelTerm.of(renamed.select(places)),
                  ModelTerm.of(block.select(places)));
      assertThat(other.deviance()).isCloseTo(one.deviance(), within(1e-7));
      var first = one.marginalMeans(plain);
      var second = other.marginalMeans(renamed.select(places));
      assertThat(second.mean("z").mean()).isCloseTo(first.mean("a").mean(), within(1e-6));
      assertThat(second.mean("x").limits().high())
          .isCloseTo(first.mean("c").limits().high(), within(1e-5));
    }
  }

  @Property(seed = "8", tries = 40)
  void aConstantOffsetShiftsTheIntercept(
      @ForAll long seed, @ForAll @DoubleRange(min = -3, max = 3) double shift) {
    var treatment = ModelTerm.of(Factor.of("t", labels("a", "b", "c")));
    double[] offsets = new double[ROWS];
    Arrays.fill(offsets, shift);
    for (var family : FAMILIES) {
      var plain = ModelResponse.counts(counts(seed));
      var one = GeneralisedLinearModel.of(family).fit(plain, treatment);
      var other = GeneralisedLinearModel.of(family).fit(plain.withOffset(offsets), treatment);
      assertThat(other.coefficients().get(0).estimate())
          .isCloseTo(one.coefficients().get(0).estimate() - shift, within(1e-8));
      assertThat(other.coefficients().get(1).estimate())
          .isCloseTo(one.coefficients().get(1).estimate(), within(1e-8));
      assertThat(other.deviance()).isCloseTo(one.deviance(), within(1e-7));
      assertThat(other.nullDeviance()).isCloseTo(one.nullDeviance(), within(1e-6));
    }
  }

  @Property(seed = "8", tries = 30)
  void deathsAndSurvivalsAreMirrorImages(@ForAll long seed) {
    var random = new Random(seed);
    double[] totals = new double[ROWS];
    double[] dead = new double[ROWS];
    double[] alive = new double[ROWS];
    for (int i = 0; i < ROWS; i++) {
      totals[i] = 10 + random.nextInt(20);
      dead[i] = 1 + random.nextInt((int) totals[i] - 1);
      alive[i] = totals[i] - dead[i];
    }
    var treatment = ModelTerm.of(Factor.of("t", labels("a", "b", "c")));
    for (var link : new LinkFunction[] {LinkFunction.LOGIT, LinkFunction.PROBIT}) {
      var model = GeneralisedLinearModel.of(ErrorFamily.BINOMIAL).with(link);
      var one = model.fit(ModelResponse.outOf(dead, totals), treatment);
      var other = model.fit(ModelResponse.outOf(alive, totals), treatment);
      for (int j = 0; j < 3; j++) {
        assertThat(other.coefficients().get(j).estimate())
            .isCloseTo(-one.coefficients().get(j).estimate(), within(1e-8));
      }
      assertThat(other.logLikelihood().orElseThrow())
          .isCloseTo(one.logLikelihood().orElseThrow(), within(1e-8));
    }
  }

  /** Leverages of a fit sum to its rank, and weights of two are rows twice. */
  @Property(seed = "8", tries = 30)
  void weightsAreCopiesOfRows(@ForAll long seed) {
    double[] counts = counts(seed);
    var treatment = Factor.of("t", labels("a", "b", "c"));
    int[] twice = new int[2 * ROWS];
    Arrays.setAll(twice, i -> i % ROWS);
    double[] doubled = Arrays.stream(twice).mapToDouble(i -> counts[i]).toArray();
    double[] twos = new double[ROWS];
    Arrays.fill(twos, 2);
    for (var family : new ErrorFamily[] {ErrorFamily.POISSON, ErrorFamily.NEGATIVE_BINOMIAL}) {
      var one =
          GeneralisedLinearModel.of(family)
              .fit(ModelResponse.counts(counts).withPriorWeights(twos), ModelTerm.of(treatment));
      var other =
          GeneralisedLinearModel.of(family)
              .fit(ModelResponse.counts(doubled), ModelTerm.of(treatment.select(twice)));
      assertThat(one.deviance()).isCloseTo(other.deviance(), within(1e-7));
      assertThat(one.logLikelihood().orElseThrow())
          .isCloseTo(other.logLikelihood().orElseThrow(), within(1e-7));
      assertThat(one.coefficients().get(1).standardError())
          .isCloseTo(other.coefficients().get(1).standardError(), within(1e-8));
      assertThat(Arrays.stream(one.leverages()).sum()).isCloseTo(3, within(1e-9));
    }
  }

  @Property(seed = "8", tries = 30)
  void refitsEqualFreshFits(@ForAll long seed) {
    var treatment = ModelTerm.of(Factor.of("t", labels("a", "b", "c")));
    for (var family : FAMILIES) {
      var design = PredictorDesign.of(treatment, ModelTerm.of(block()));
      var start =
          GeneralisedLinearModel.of(family).fit(ModelResponse.counts(counts(seed + 1)), design);
      var response = ModelResponse.counts(counts(seed));
      var refit = start.refit(response);
      var fresh = GeneralisedLinearModel.of(family).fit(response, design);
      assertThat(refit.deviance()).isCloseTo(fresh.deviance(), within(1e-7));
      for (int j = 0; j < fresh.coefficients().size(); j++) {
        assertThat(refit.coefficients().get(j).estimate())
            .isCloseTo(fresh.coefficients().get(j).estimate(), within(1e-8));
      }
    }
  }
}
