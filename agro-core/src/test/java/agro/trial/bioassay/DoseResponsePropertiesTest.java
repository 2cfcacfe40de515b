package agro.trial.bioassay;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import agro.stats.glm.LinkFunction;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.function.UnaryOperator;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;

/** What must hold for any assay. */
class DoseResponsePropertiesTest {

  private static final DoseResponse DEFAULTS = DoseResponse.withDefaults();
  private static final double[] LEVELS = {10, 50, 90};

  /** An assay drawn from a curve, with even numbers so that groups can be halved. */
  private static List<DoseGroup> drawn(long seed) {
    var random = new Random(seed);
    var groups = new ArrayList<DoseGroup>();
    double middle = 3 + 4 * random.nextDouble();
    for (double dose : new double[] {1, 2, 4, 8, 16}) {
      int n = 20 + 2 * random.nextInt(20);
      double p = LinkFunction.PROBIT.mean(3 * Math.log10(dose / middle));
      int r = 0;
      for (int i = 0; i < n; i++) {
        r += random.nextDouble() < p ? 1 : 0;
      }
      groups.add(DoseGroup.of(dose, n, Math.min(n, r + r % 2)));
    }
    return groups;
  }

  private static void same(DoseResponseFit one, DoseResponseFit other, double factor, double eps) {
    for (double level : LEVELS) {
      var from = one.lethalDose(level);
      var to = other.lethalDose(level);
      assertThat(to.dose()).isCloseTo(factor * from.dose(), within(eps * to.dose()));
      assertThat(to.limits().shape()).isEqualTo(from.limits().shape());
      if (from.limits().isBounded()) {
        assertThat(to.limits().low())
            .isCloseTo(factor * from.limits().low(), within(eps * to.limits().low()));
        assertThat(to.limits().high())
            .isCloseTo(factor * from.limits().high(), within(eps * to.limits().high()));
      }
    }
  }

  private static List<DoseGroup> each(List<DoseGroup> groups, UnaryOperator<DoseGroup> change) {
    return groups.stream().map(change).toList();
  }

  @Property(seed = "8", tries = 100)
  void theOrderOfGroupsNeverMatters(@ForAll @IntRange(max = 100_000) int seed) {
    var groups = drawn(seed);
    var shuffled = new ArrayList<>(groups);
    Collections.shuffle(shuffled, new Random(seed));
    var one = DEFAULTS.fit(Assays.of(groups));
    var other = DEFAULTS.fit(Assays.of(shuffled));
    assertThat(other.intercept()).isEqualTo(one.intercept());
    assertThat(other.slope()).isEqualTo(one.slope());
    same(one, other, 1, 0);
  }

  @Property(seed = "8", tries = 100)
  void halvesOfGroupsGiveTheSameCurve(@ForAll @IntRange(max = 100_000) int seed) {
    var choices = DEFAULTS.with(HeterogeneityRule.never());
    var groups = drawn(seed);
    var halves = new ArrayList<DoseGroup>();
    for (var group : groups) {
      var half = DoseGroup.of(group.dose(), group.exposed() / 2, group.responded() / 2);
      halves.add(half);
      halves.add(half);
    }
    same(choices.fit(Assays.of(groups)), choices.fit(Assays.of(halves)), 1, 1e-10);
  }

  @Property(seed = "8", tries = 100)
  void anotherUnitScalesDosesAndLimits(
      @ForAll @IntRange(max = 100_000) int seed,
      @ForAll @DoubleRange(min = 0.01, max = 1000) double factor) {
    var groups = drawn(seed);
    var scaled =
        each(groups, each -> DoseGroup.of(factor * each.dose(), each.exposed(), each.responded()));
    for (var scale : new DoseScale[] {DoseScale.LOG10, DoseScale.LN, DoseScale.LOG2}) {
      same(
          DEFAULTS.with(scale).fit(Assays.of(groups)),
          DEFAULTS.with(scale).fit(Assays.of(scaled)),
          factor,
          1e-10);
    }
  }

  @Property(seed = "8", tries = 100)
  void theLogarithmDoesNotMatter(@ForAll @IntRange(max = 100_000) int seed) {
    var data = Assays.of(drawn(seed));
    same(DEFAULTS.fit(data), DEFAULTS.with(DoseScale.LN).fit(data), 1, 1e-10);
    same(DEFAULTS.fit(data), DEFAULTS.with(DoseScale.LOG2).fit(data), 1, 1e-10);
  }

  /** Survivors against the reciprocal of the dose: the mirror image of a symmetric link. */
  @Property(seed = "8", tries = 100)
  void deathAndSurvivalAreMirrored(@ForAll @IntRange(max = 100_000) int seed) {
    var groups = drawn(seed);
    var mirrored =
        each(
            groups,
            each ->
                DoseGroup.of(1 / each.dose(), each.exposed(), each.exposed() - each.responded()));
    for (var link : new LinkFunction[] {LinkFunction.PROBIT, LinkFunction.LOGIT}) {
      var one = DEFAULTS.with(link).fit(Assays.of(groups));
      var other = DEFAULTS.with(link).fit(Assays.of(mirrored));
      assertThat(other.slope()).isCloseTo(one.slope(), within(1e-10 * one.slope()));
      assertThat(other.intercept()).isCloseTo(-one.intercept(), within(1e-9));
      assertThat(other.lethalDose(90).dose() * one.lethalDose(10).dose())
          .isCloseTo(1, within(1e-10));
      assertThat(other.deviance()).isCloseTo(one.deviance(), within(1e-9));
    }
  }

  @Property(seed = "8", tries = 50)
  void noNaturalMortalityIsNaturalMortalityOfZero(@ForAll @IntRange(max = 100_000) int seed) {
    var data = Assays.of(drawn(seed));
    var none = DEFAULTS.with(NaturalMortality.none()).fit(data);
    var zero = DEFAULTS.with(NaturalMortality.fixed(0)).fit(data);
    same(none, zero, 1, 0);
  }

  @Property(seed = "8", tries = 50)
  void profileLimitsLieAboutTheDose(@ForAll @IntRange(max = 100_000) int seed) {
    var data = Assays.of(drawn(seed));
    var choices = DEFAULTS.with(HeterogeneityRule.never());
    var profile = choices.with(LimitMethod.PROFILE).fit(data).lethalDose(50);
    var fieller = choices.fit(data).lethalDose(50);
    assertThat(profile.limits().covers(profile.dose())).isTrue();
    assertThat(Math.log(profile.limits().low() / fieller.limits().low())).isBetween(-0.2, 0.2);
    assertThat(Math.log(profile.limits().high() / fieller.limits().high())).isBetween(-0.2, 0.2);
  }
}
