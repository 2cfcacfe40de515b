package agro.sampling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import agro.ReferenceTable;
import agro.report.InputProblem;
import agro.sampling.dispersion.CommonExponent;
import agro.sampling.dispersion.DispersionIndices;
import agro.sampling.dispersion.IwaoRegression;
import agro.sampling.dispersion.NegativeBinomialFit;
import agro.sampling.dispersion.TaylorPowerLaw;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class DispersionTest {

  private static final SamplingUnit LEAF = SamplingUnit.of(SamplingUnit.Kind.LEAF);
  private static final CountSample HAND = CountSample.of("hand", LEAF, 0, 3, 1, 0, 5, 2, 0, 1);
  private static final CountSample MITES =
      CountSample.ofFrequencies("mites", LEAF, 70, 38, 17, 10, 9, 3, 2, 1, 0);

  /** R's data set InsectSprays: twelve plots for each of six treatments. */
  static final List<CountSample> SPRAYS =
      List.of(
          CountSample.of("sprayA", LEAF, 10, 7, 20, 14, 14, 12, 10, 23, 17, 20, 14, 13),
          CountSample.of("sprayB", LEAF, 11, 17, 21, 11, 16, 14, 17, 17, 19, 21, 7, 13),
          CountSample.of("sprayC", LEAF, 0, 1, 7, 2, 3, 1, 2, 1, 3, 0, 1, 4),
          CountSample.of("sprayD", LEAF, 3, 5, 12, 6, 4, 3, 5, 5, 5, 5, 2, 4),
          CountSample.of("sprayE", LEAF, 3, 5, 3, 5, 3, 6, 1, 1, 3, 2, 6, 4),
          CountSample.of("sprayF", LEAF, 11, 9, 15, 22, 15, 16, 13, 10, 26, 26, 24, 13));

  static List<NamedCsvRecord> reference() {
    return ReferenceTable.read(DispersionTest.class, "dispersion.csv");
  }

  /** Sources and tolerance: dispersion.csv. */
  @ParameterizedTest
  @MethodSource("reference")
  void agreesWithTheReference(NamedCsvRecord line) {
    double value = ReferenceTable.number(line, "value");
    var sample = line.getField("sample");
    var quantity = line.getField("quantity");
    double ours = sample.equals("sprays") ? ofSprays(quantity) : of(sample(sample), quantity);
    boolean iterated = quantity.startsWith("k_") || quantity.startsWith("common_");
    assertThat(ours)
        .isCloseTo(value, within((iterated ? 1e-6 : 1e-8) * Math.max(Math.abs(value), 1e-9)));
  }

  private static CountSample sample(String name) {
    if (name.equals("hand")) {
      return HAND;
    }
    return name.equals("mites")
        ? MITES
        : SPRAYS.stream().filter(each -> each.label().equals(name)).findFirst().orElseThrow();
  }

  private static double of(CountSample sample, String quantity) {
    var indices = DispersionIndices.of(sample);
    var fit = NegativeBinomialFit.of(sample);
    if (quantity.startsWith("expected_")) {
      return fit.expected(Integer.parseInt(quantity.substring(9)));
    }
    if (quantity.startsWith("chi_squared_")) {
      return fit.goodnessOfFit(Integer.parseInt(quantity.substring(12))).chiSquared();
    }
    if (quantity.startsWith("chi_chance_")) {
      return fit.goodnessOfFit(Integer.parseInt(quantity.substring(11))).chanceOfLarger();
    }
    return switch (quantity) {
      case "mean" -> sample.mean();
      case "variance" -> sample.variance();
      case "variance_to_mean" -> indices.varianceToMean();
      case "index" -> indices.indexOfDispersion();
      case "chance_larger" -> indices.chanceOfLarger();
      case "chance_smaller" -> indices.chanceOfSmaller();
      case "deviate" -> indices.normalDeviate();
      case "david_moore" -> indices.clumping();
      case "green" -> indices.green();
      case "morisita" -> indices.morisita();
      case "morisita_uniform" -> indices.morisitaUniform();
      case "morisita_clumped" -> indices.morisitaClumped();
      case "morisita_standardised" -> indices.standardisedMorisita();
      case "crowding" -> indices.meanCrowding();
      case "crowding_in_sample" -> indices.meanCrowdingInSample();
      case "patchiness" -> indices.patchiness();
      case "k_moments" -> fit.byMoments();
      case "k_likelihood" -> fit.byLikelihood();
      case "k_error" -> fit.standardError();
      case "k_zero_class" -> fit.byZeroClass();
      case "log_likelihood" -> fit.logLikelihood();
      case "poisson_log_likelihood" -> fit.poissonLogLikelihood();
      default -> throw new IllegalStateException(quantity);
    };
  }

  private static double ofSprays(String quantity) {
    var common = CommonExponent.of(SPRAYS);
    var taylor = TaylorPowerLaw.fit(SPRAYS);
    var iwao = IwaoRegression.fit(SPRAYS);
    return switch (quantity) {
      case "common_ratio" -> common.byRatio();
      case "common_origin" -> common.throughOrigin();
      case "common_step_1" -> common.iterations().get(1);
      case "common_step_2" -> common.iterations().get(2);
      case "common_step_3" -> common.iterations().get(3);
      case "common_weighted" -> common.weighted();
      case "common_likelihood" -> common.byLikelihood();
      case "common_error" -> common.standardError();
      case "taylor_a" -> taylor.a();
      case "taylor_b" -> taylor.b();
      case "taylor_b_error" -> taylor.line().slopeStandardError();
      case "taylor_r2" -> taylor.line().rSquared();
      case "taylor_t" -> taylor.tAgainstOne();
      case "taylor_chance" -> taylor.chanceIfOne();
      case "iwao_alpha" -> iwao.alpha();
      case "iwao_alpha_error" -> iwao.line().interceptStandardError();
      case "iwao_beta" -> iwao.beta();
      case "iwao_beta_error" -> iwao.line().slopeStandardError();
      case "iwao_r2" -> iwao.line().rSquared();
      case "iwao_t" -> iwao.tAgainstOne();
      default -> throw new IllegalStateException(quantity);
    };
  }

  /** Bliss & Owen 1958 (from memory): the weights at the end of the iteration, as R gives them. */
  @Test
  void weightsOfTheCommonExponent() {
    double k = CommonExponent.of(SPRAYS).weighted();
    assertThat(CommonExponent.weight(SPRAYS.get(0), k)).isCloseTo(0.008885698279, within(1e-9));
    assertThat(CommonExponent.weight(SPRAYS.get(2), k)).isCloseTo(1.011020309232, within(1e-9));
  }

  @Test
  void noFiniteExponentIsSaidSo() {
    var even = CountSample.ofFrequencies("even", LEAF, 0, 1, 20, 1);
    var fit = NegativeBinomialFit.of(even);

    assertThat(fit.isFinite()).isFalse();
    assertThat(fit.byMoments()).isInfinite();
    assertThat(fit.byZeroClass()).isNaN();
    assertThat(fit.presentation().toText()).contains("no finite value", "no count is zero");
    assertThat(fit.logLikelihood()).isEqualTo(fit.poissonLogLikelihood());
    assertThat(DispersionIndices.of(even).verdict()).contains("more even than chance");
    assertThat(CommonExponent.of(List.of(even, even)).presentation().toText())
        .contains("no finite value");
  }

  @Test
  void pagesAndStepsAreShown() {
    assertThat(DispersionIndices.of(HAND).working().toText()).contains("2.0952", "14.6667");
    assertThat(DispersionIndices.of(MITES).presentation().toText())
        .contains("the animals sit in clumps", "below 0.001", "Morisita");
    assertThat(NegativeBinomialFit.of(MITES).presentation().toText())
        .contains("1.025, standard error 0.276", "df = 3; P = 0.477");
    assertThat(TaylorPowerLaw.fit(SPRAYS).presentation().toText()).contains("t = 0.52; df = 4");
    assertThat(IwaoRegression.fit(SPRAYS).presentation().toText()).contains("m* = 0.237 + 1.029 m");
  }

  @Test
  void fieldsWithoutUseAreReported() {
    var fields = new ArrayList<>(SPRAYS);
    fields.add(CountSample.of("bare", LEAF, 0, 0, 0));
    fields.add(CountSample.of("even", LEAF, 2, 2));

    assertThat(TaylorPowerLaw.fit(fields).report().toString())
        .contains("bare is left out")
        .contains("even is left out");
    assertThat(IwaoRegression.fit(fields).report().toString())
        .contains("bare is left out")
        .doesNotContain("even");
  }

  @Property(seed = "8", tries = 300)
  void theOrderOfCountsChangesNothing(
      @ForAll @Size(min = 3, max = 40) List<@IntRange(min = 0, max = 30) Integer> counts,
      @ForAll long seed) {
    if (counts.stream().mapToInt(x -> x).sum() < 2) {
      return;
    }
    var other = new ArrayList<>(counts);
    Collections.shuffle(other, new Random(seed));
    var first = new CountSample("a", LEAF, counts);
    var second = new CountSample("a", LEAF, other);

    assertThat(DispersionIndices.of(second).morisita())
        .isEqualTo(DispersionIndices.of(first).morisita());
    assertThat(NegativeBinomialFit.of(second).byLikelihood())
        .isCloseTo(NegativeBinomialFit.of(first).byLikelihood(), withPercentage(1e-6));
    // Morisita's test statistic is the ratio of variance and mean (identity).
    double total = first.total();
    double f =
        (DispersionIndices.of(first).morisita() * (total - 1) + first.size() - total)
            / (first.size() - 1);
    assertThat(f)
        .isCloseTo(DispersionIndices.of(first).varianceToMean(), within(1e-9 * Math.max(1, f)));
  }

  @Test
  void badInputIsRefused() {
    refuses(() -> CountSample.of("a", LEAF, 3), "1 counted leaf");
    refuses(() -> CountSample.of("a", LEAF, 3, -1), "a count of -1 as number 2");
    refuses(() -> CountSample.ofFrequencies("a", LEAF, 3, -1), "-1 units with 1 animals");
    refuses(() -> DispersionIndices.of(CountSample.of("a", LEAF, 0, 0)), "all 2 counts are zero");
    refuses(() -> NegativeBinomialFit.of(CountSample.of("a", LEAF, 0, 0)), "all 2 counts are zero");
    refuses(() -> NegativeBinomialFit.of(MITES).goodnessOfFit(2), "degree of freedom");
    refuses(() -> CommonExponent.of(List.of(HAND)), "at least two fields");
    var plant = CountSample.of("p", SamplingUnit.of(SamplingUnit.Kind.PLANT), 1, 2);
    refuses(() -> CommonExponent.of(List.of(HAND, plant)), "for each leaf and for each plant");
    refuses(() -> TaylorPowerLaw.fit(List.of(HAND, MITES)), "2 usable fields");
    refuses(() -> TaylorPowerLaw.fit(List.of(HAND, HAND, HAND)), "different means");
    refuses(() -> new SamplingUnit(SamplingUnit.Kind.SWEEP, 0), "1 or more");
    refuses(() -> new NegativeBinomialCounts(0, 1), "mean 0.0");
  }

  private static void refuses(Runnable call, String part) {
    assertThatThrownBy(call::run).isInstanceOf(InputProblem.class).hasMessageContaining(part);
  }
}
