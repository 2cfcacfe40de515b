package agro.programme.window;

import static agro.programme.window.InventedCourses.FIRST;
import static agro.programme.window.InventedCourses.MIDDLE;
import static agro.programme.window.InventedCourses.SCALE;
import static agro.programme.window.InventedCourses.WARMTH;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import agro.development.cycle.NormalAge;
import java.time.LocalDate;
import java.time.LocalTime;
import org.hipparchus.analysis.integration.SimpsonIntegrator;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * In even warmth a normal flight followed by normal delays enters and leaves a stage normally, with
 * means and variances added up; the exposed share is the difference of two normal distributions.
 */
class ExposureClosedFormTest {

  private static final double NEAR = 3e-4;

  /** Mean and standard deviation of the sum at which animals enter and leave a stage. */
  private record Ends(double in, double inSpread, double out, double outSpread) {
    static Ends of(TargetStage stage) {
      double[] before =
          switch (stage) {
            case ADULT -> new double[] {0, 0};
            case EGG -> new double[] {50, 100};
            default -> new double[] {110, 164};
          };
      double[] during =
          switch (stage) {
            case ADULT -> new double[] {70, 144};
            case EGG -> new double[] {60, 64};
            case YOUNG_LARVA -> new double[] {45, 36};
            case LARVA -> new double[] {150, 225};
          };
      double in = SCALE * SCALE + before[1];
      return new Ends(
          MIDDLE + before[0],
          Math.sqrt(in),
          MIDDLE + before[0] + during[0],
          Math.sqrt(in + during[1]));
    }

    double entered(double sum) {
      return normal(sum, in, inSpread);
    }

    double left(double sum) {
      return normal(sum, out, outSpread);
    }
  }

  private static double normal(double x, double mean, double deviation) {
    return new NormalAge(mean, deviation).completedBy(x);
  }

  private static ExposureForecast weigh(TargetStage stage, ResidueDays residue) {
    return ExposureForecast.of(
        InventedCourses.even(),
        InventedCourses.target(stage),
        residue,
        ExposureSettings.withDefaults().between(FIRST, FIRST.plusDays(100)));
  }

  private static double sumAt(LocalDate day, double momentOfDay) {
    return WARMTH * (days(day) + momentOfDay);
  }

  private static double days(LocalDate day) {
    return day.toEpochDay() - (double) FIRST.toEpochDay();
  }

  @ParameterizedTest
  @EnumSource(TargetStage.class)
  void steadyResidueExposesWhoEntersBeforeItEndsAndHasNotLeft(TargetStage stage) {
    var ends = Ends.of(stage);
    for (double lasts : new double[] {0.3, 1, 5.5, 14}) {
      for (var day : weigh(stage, ResidueDays.lasting(lasts)).days()) {
        double sum = sumAt(day.day(), 0.5);
        double expected = ends.entered(sum + WARMTH * lasts) - ends.left(sum);
        assertThat(day.mean())
            .as("%s %s %s", stage, lasts, day.day())
            .isCloseTo(expected, within(NEAR));
        assertThat(day.gone()).isCloseTo(ends.left(sum), within(NEAR));
        assertThat(day.toCome()).isCloseTo(1 - ends.entered(sum + WARMTH * lasts), within(NEAR));
      }
    }
  }

  @Test
  void residueWithoutEndExposesAllButThoseThatHaveLeft() {
    var ends = Ends.of(TargetStage.YOUNG_LARVA);
    for (var day :
        weigh(TargetStage.YOUNG_LARVA, ResidueDays.lasting(Double.POSITIVE_INFINITY)).days()) {
      assertThat(day.mean()).isCloseTo(1 - ends.left(sumAt(day.day(), 0.5)), within(NEAR));
    }
  }

  @Test
  void momentOfTheDayCounts() {
    var ends = Ends.of(TargetStage.EGG);
    var evening = ResidueDays.lasting(4).inTheEvening();
    for (var day : weigh(TargetStage.EGG, evening).days()) {
      double sum = sumAt(day.day(), 20.0 / 24);
      assertThat(day.mean()).isCloseTo(ends.entered(sum + 40) - ends.left(sum), within(NEAR));
    }
    var dawn = ResidueDays.lasting(4).broughtOutAt(LocalTime.of(5, 20));
    var day = weigh(TargetStage.EGG, dawn).on(FIRST.plusDays(44)).orElseThrow();
    double sum = sumAt(day.day(), (5 + 1 / 3.0) / 24);
    assertThat(day.mean()).isCloseTo(ends.entered(sum + 40) - ends.left(sum), within(NEAR));
  }

  /** The integrals of the formula, by a general integrator. */
  @Test
  void fadingResidueThatActsSlowlyFollowsTheIntegral() {
    var ends = Ends.of(TargetStage.YOUNG_LARVA);
    var entry = new NormalDistribution(ends.in(), ends.inSpread());
    var stay = new NormalDistribution(45, 6);
    double acts = 2.5;
    for (var decay :
        new ResidueDecay[] {new ResidueDecay.Linear(), new ResidueDecay.Exponential(3)}) {
      var residue = ResidueDays.lasting(9).with(decay).actingAfter(acts);
      var weighed = weigh(TargetStage.YOUNG_LARVA, residue);
      for (int d = 35; d < 65; d += 3) {
        double sum = WARMTH * (d + 0.5);
        var integrator = new SimpsonIntegrator(1e-8, 1e-10, 4, 60);
        double there =
            integrator.integrate(
                100_000,
                u -> entry.density(u) * (1 - stay.cumulativeProbability(sum + WARMTH * acts - u)),
                ends.in() - 8 * ends.inSpread(),
                sum);
        double later =
            new SimpsonIntegrator(1e-8, 1e-10, 4, 60)
                .integrate(
                    100_000,
                    u -> entry.density(u) * decay.left((u - sum) / WARMTH, 9),
                    sum,
                    sum + 9 * WARMTH);
        double expected = there + later * (1 - stay.cumulativeProbability(WARMTH * acts));
        assertThat(weighed.on(FIRST.plusDays(d)).orElseThrow().mean())
            .as("%s day %s", decay, d)
            .isCloseTo(expected, within(5e-4));
      }
    }
  }

  @Test
  void stagesOfOneLengthForAllAreTakenExactly() {
    var structure =
        InventedCourses.structure()
            .withFirstEgg(StageDelay.exactly(new agro.units.ThermalTime(50)))
            .withEgg(StageDelay.exactly(new agro.units.ThermalTime(60)));
    var weighed =
        ExposureForecast.of(
            InventedCourses.even(),
            new StageTarget(TargetStage.EGG, structure),
            ResidueDays.lasting(3),
            ExposureSettings.withDefaults());
    for (var day : weighed.days()) {
      double sum = sumAt(day.day(), 0.5);
      double expected = normal(sum + 30, MIDDLE + 50, SCALE) - normal(sum, MIDDLE + 110, SCALE);
      assertThat(day.mean()).isCloseTo(expected, within(NEAR));
    }
  }

  /** Two treatments reach whom either reaches: two spans of entry less what they share. */
  @Test
  void pairExposesWhomEitherExposes() {
    var ends = Ends.of(TargetStage.YOUNG_LARVA);
    var settings = ExposureSettings.withDefaults().withPairsAtLeast(7);
    var weighed =
        ExposureForecast.of(
            InventedCourses.even(),
            InventedCourses.target(TargetStage.YOUNG_LARVA),
            ResidueDays.lasting(5),
            settings);
    var pair = weighed.bestPair().orElseThrow();
    assertThat(pair.second()).isAfterOrEqualTo(pair.first().plusDays(7));
    double best = 0;
    for (int i = 20; i < 80; i++) {
      for (int j = i + 7; j < 80; j++) {
        best = Math.max(best, either(ends, i, j, 5));
      }
    }
    assertThat(pair.mean()).isCloseTo(best, within(1e-3));
    double own = either(ends, (int) days(pair.first()), (int) days(pair.second()), 5);
    assertThat(pair.mean()).isCloseTo(own, within(1e-3));
    assertThat(pair.mean()).isGreaterThan(weighed.bestDay().orElseThrow().mean());
    assertThat(pair.chanceBest()).isEqualTo(1);
  }

  private static double either(Ends ends, int first, int second, double lasts) {
    double a = WARMTH * (first + 0.5);
    double b = WARMTH * (second + 0.5);
    double one = ends.entered(a + WARMTH * lasts) - ends.left(a);
    double two = ends.entered(b + WARMTH * lasts) - ends.left(b);
    // Those of the first that are still there at the second: entered by the end of the first
    // residue, and not left by the second.
    var entry = new NormalDistribution(ends.in(), ends.inSpread());
    var stay = new NormalDistribution(45, 6);
    double both =
        new SimpsonIntegrator(1e-8, 1e-10, 4, 60)
            .integrate(
                100_000,
                u -> entry.density(u) * (1 - stay.cumulativeProbability(b - u)),
                ends.in() - 8 * ends.inSpread(),
                Math.min(b, a + WARMTH * lasts));
    double overlap =
        a + WARMTH * lasts > b ? ends.entered(a + WARMTH * lasts) - ends.entered(b) : 0;
    return one + two - both - overlap;
  }
}
