package agro.development.cycle;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import agro.development.DegreeDayModel;
import agro.development.Thresholds;
import agro.development.UpperCutoff;
import agro.development.rate.RateCurve;
import agro.report.InputProblem;
import agro.units.Temperature;
import agro.units.ThermalTime;
import agro.weather.DailyTemperatures;
import agro.weather.DayOrigin;
import agro.weather.Medium;
import agro.weather.MediumKind;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.function.IntToDoubleFunction;
import org.junit.jupiter.api.Test;

class LifeCycleTest {

  private static final LocalDate FIRST = LocalDate.of(2001, 1, 1);

  private static DailyTemperatures days(int number, IntToDoubleFunction mean) {
    var builder = DailyTemperatures.builder(FIRST, FIRST.plusDays(number - 1L));
    for (int i = 0; i < number; i++) {
      builder.putAt(i, mean.applyAsDouble(i), mean.applyAsDouble(i), DayOrigin.OBSERVED);
    }
    return builder.build("a cabinet", Medium.shelterAir());
  }

  private static DegreeDayClock above(double lower, double requirement) {
    return new DegreeDayClock(
        DegreeDayModel.singleSine(Thresholds.above(Temperature.ofCelsius(lower)), UpperCutoff.NONE),
        new ThermalTime(requirement),
        MediumKind.AIR);
  }

  private static AdultStage adult(double eggs) {
    return new AdultStage(
        "moth", above(10, 50), new ErlangDelay(10), new WeibullAge(0, 1.5, 3), eggs);
  }

  private static LifeCycle cycle(double substages) {
    return new LifeCycle(
        List.of(LifeStage.of("egg", above(10, 200), new ErlangDelay(substages))), adult(1));
  }

  /**
   * Mean delay of 20 d for 10 days and of 10 d afterwards: 12 days after entry the age is 0.7 and
   * 0.169504 have passed, after 15 days 1.0 and 0.542070 (Erlang, k = 10, as in R's pgamma).
   */
  @Test
  void aDelayThatChangesIsSolvedExactly() {
    // The founders enter in the middle of a day, so the change comes in the middle of one as well.
    var cold = days(40, i -> i < 10 ? 20 : i == 10 ? 25 : 30);
    var run = cycle(10).run(cold, List.of(new Founders("egg", FIRST, 1)));

    double age = 0.05 * 0.5 + 9 * 0.05 + 0.075;
    int day = 10;
    while (age < 1 - 1e-9) {
      day++;
      age += 0.1;
      double left = run.present(1, "egg", FIRST.plusDays(day));
      assertThat(1 - left).isCloseTo(new ErlangDelay(10).completedBy(age), within(1e-12));
    }
  }

  /** The chain of substages solved by Runge and Kutta with small steps, at changing temperature. */
  @Test
  void theChainOfSubstagesGivesTheSameShares() {
    var temperatures = days(80, i -> 16 + 6 * Math.sin(i / 6.0));
    var clock = above(10, 200);
    var run = cycle(8).run(temperatures, List.of(new Founders("egg", FIRST, 1)));

    var chain = new double[8];
    chain[0] = 1;
    var ages = clock.dailyAges(temperatures);
    for (int day = 0; day < ages.length; day++) {
      // The first day counts from its middle on.
      double gain = day == 0 ? 0.5 * ages[0] : ages[day];
      for (int step = 0; step < 200; step++) {
        rungeKutta(chain, gain / 200);
      }
      double left = Arrays.stream(chain).sum();
      assertThat(run.present(1, "egg", FIRST.plusDays(day))).isCloseTo(left, within(1e-9));
    }
  }

  private static void rungeKutta(double[] chain, double ageStep) {
    var k1 = slope(chain);
    var k2 = slope(moved(chain, k1, 0.5 * ageStep));
    var k3 = slope(moved(chain, k2, 0.5 * ageStep));
    var k4 = slope(moved(chain, k3, ageStep));
    for (int i = 0; i < chain.length; i++) {
      chain[i] += ageStep / 6 * (k1[i] + 2 * k2[i] + 2 * k3[i] + k4[i]);
    }
  }

  private static double[] slope(double[] chain) {
    var slope = new double[chain.length];
    for (int i = 0; i < chain.length; i++) {
      slope[i] = chain.length * ((i == 0 ? 0 : chain[i - 1]) - chain[i]);
    }
    return slope;
  }

  private static double[] moved(double[] chain, double[] slope, double by) {
    var moved = chain.clone();
    for (int i = 0; i < moved.length; i++) {
      moved[i] += by * slope[i];
    }
    return moved;
  }

  @Test
  void nobodyIsLostOrMadeOnTheWay() {
    var cycle =
        new LifeCycle(
            List.of(
                LifeStage.of("egg", above(10, 60), new ErlangDelay(20)),
                new LifeStage("larva", above(8, 200), WeibullAge.withMedianOne(0.6, 3), 0.5),
                LifeStage.of("pupa", above(9, 120), new NormalRates(0.1))),
            adult(4));
    var run =
        cycle.run(
            days(365, i -> 12 - 10 * Math.cos(2 * Math.PI * i / 365)),
            List.of(new Founders("egg", FIRST.plusDays(100), 10)));

    for (int day = 100; day < 365; day++) {
      double before =
          run.present(1, "egg", FIRST.plusDays(day)) + run.present(1, "larva", FIRST.plusDays(day));
      double pupated = 0;
      for (int i = 0; i <= day; i++) {
        pupated += run.entered(1, "pupa")[i];
      }
      assertThat(before + pupated / 0.5).isCloseTo(10, within(1e-6));
    }
    assertThat(run.completeness(1, "moth")).isCloseTo(1, within(1e-6));
    double moths = Arrays.stream(run.entered(1, "moth")).sum();
    assertThat(moths).isCloseTo(5, within(1e-6));
    assertThat(Arrays.stream(run.entered(2, "egg")).sum())
        .isCloseTo(4 * moths * run.completeness(2, "egg"), within(1e-6));
    var midsummer = FIRST.plusDays(200);
    double all = 0;
    for (var stage : cycle.stageNames()) {
      all += run.share(stage, midsummer);
    }
    assertThat(all).isCloseTo(1, within(1e-12));
  }

  @Test
  void aGenerationThatDoesNotComeIsSaidNotToCome() {
    var run = cycle(30).run(days(45, i -> 20), List.of(new Founders("egg", FIRST, 1)));

    assertThat(run.enteredBy(1, "moth", 0.5)).contains(FIRST.plusDays(20));
    assertThat(run.enteredBy(2, "moth", 0.5)).isEmpty();
    assertThat(run.completeness(2, "moth")).isBetween(0.0, 0.5);
    assertThat(run.completedGenerations()).isBetween(1.0, 2.0);
    assertThat(run.presentation().toText()).contains("not in these days", "Manetsch");
  }

  @Test
  void theTimeStepLeavesNoTraceInTheSpread() {
    // A day at 30 °C is a tenth of the stage, as much as a substage of an Erlang chain of ten: by
    // Euler's rule with daily steps the whole cohort would pass on day ten together.
    var run = cycle(10).run(days(40, i -> 30), List.of(new Founders("egg", FIRST, 1)));
    assertThat(1 - run.present(1, "egg", FIRST.plusDays(7)))
        .isCloseTo(new ErlangDelay(10).completedBy(0.75), within(1e-12));
  }

  @Test
  void aRateThatBendsIsIntegratedOverTheDay() {
    // Brière's first model with the published set of Aedes aegypti larvae (Mordecai et al. 2017,
    // from
    // memory): on a day from 20 to 40 °C the mean rate is 0.086036, at the mean temperature
    // 0.133099.
    var clock =
        new RateClock(
            t -> t > 11.36 && t < 39.17 ? 7.86e-5 * t * (t - 11.36) * Math.sqrt(39.17 - t) : 0,
            "a rate");
    var builder = DailyTemperatures.builder(FIRST, FIRST.plusDays(1));
    builder.putAt(0, 20, 40, DayOrigin.OBSERVED);
    builder.putAt(1, 30, 30, DayOrigin.OBSERVED);
    var ages = clock.dailyAges(builder.build("a cabinet", Medium.shelterAir()));
    assertThat(ages[0]).isCloseTo(0.086036, within(2e-4));
    assertThat(ages[1]).isCloseTo(0.133099, within(1e-6));
  }

  /** A straight line is the same clock as its degree-days, as long as no day goes below it. */
  @Test
  void aFittedRateIsAClock() {
    var temperatures = days(60, i -> 15 + i / 10.0);
    var clock = RateClock.of(RateCurve.linear(8, 416.7));
    var ages = clock.dailyAges(temperatures);
    var degreeDays = above(8, 416.7).dailyAges(temperatures);
    for (int i = 0; i < ages.length; i++) {
      assertThat(ages[i]).isCloseTo(degreeDays[i], within(1e-12));
    }
    assertThat(clock.words()).startsWith("linear: a = ");
    var cold = RateClock.of(RateCurve.linear(8, 416.7)).dailyAges(days(2, i -> 3));
    assertThat(cold).containsOnly(0);
  }

  @Test
  void foundersOfManyDaysAreTheSumOfTheirRuns() {
    var temperatures = days(80, i -> 18 + 4 * Math.sin(i / 9.0));
    var flight = Map.of(FIRST.plusDays(3), 2.0, FIRST, 1.0, FIRST.plusDays(1), 0.0);
    var founders = Founders.onDays("egg", flight);
    assertThat(founders)
        .containsExactly(new Founders("egg", FIRST, 1), new Founders("egg", FIRST.plusDays(3), 2));
    var both = cycle(12).run(temperatures, founders);
    var early = cycle(12).run(temperatures, founders.subList(0, 1));
    var late = cycle(12).run(temperatures, founders.subList(1, 2));
    var day = FIRST.plusDays(25);
    assertThat(both.present("egg", day))
        .isCloseTo(early.present("egg", day) + late.present("egg", day), within(1e-12));
    refuses(() -> Founders.onDays("egg", Map.of(FIRST, 0.0)), "1 days without a founder");
    refuses(() -> Founders.onDays("egg", Map.of(FIRST, -1.0)), "-1.0 founders");
  }

  @Test
  void badInputIsRefused() {
    var temperatures = days(30, i -> 20);
    var cycle = cycle(10);
    refuses(() -> cycle.run(temperatures, List.of()), "without founders");
    refuses(
        () -> cycle.run(temperatures, List.of(new Founders("larva", FIRST, 1))),
        "one of egg, moth");
    refuses(
        () -> cycle.run(temperatures, List.of(new Founders("egg", FIRST.minusDays(1), 1))),
        "founders on 2000-12-31");
    refuses(() -> new Founders("egg", FIRST, 0), "0.0 founders");
    refuses(() -> new LifeStage("egg", above(10, 1), new ErlangDelay(1), 0), "survival of 0.0");
    refuses(() -> new LifeCycle(List.of(), adult(1)), "at least one stage");
    refuses(() -> adult(-1), "eggs from an adult");
    var soil = DailyTemperatures.builder(FIRST, FIRST);
    soil.putAt(0, 10, 12, DayOrigin.OBSERVED);
    refuses(
        () ->
            cycle.run(
                soil.build("a bed", new Medium.Soil(0.1)), List.of(new Founders("egg", FIRST, 1))),
        "soil at 10 cm");
    var gap = DailyTemperatures.builder(FIRST, FIRST.plusDays(1));
    gap.putAt(0, 10, 12, DayOrigin.OBSERVED);
    refuses(
        () ->
            cycle.run(
                gap.build("a bed", Medium.shelterAir()), List.of(new Founders("egg", FIRST, 1))),
        "no temperatures for 2001-01-02");
    var run = cycle.run(temperatures, List.of(new Founders("egg", FIRST, 1)));
    refuses(() -> run.present(9, "egg", FIRST), "generation 9");
    refuses(() -> run.present(1, "pupa", FIRST), "the stage \"pupa\"");
    refuses(() -> run.present(1, "egg", FIRST.plusDays(30)), "the day 2001-01-31");
  }

  private static void refuses(Runnable call, String part) {
    assertThatThrownBy(call::run).isInstanceOf(InputProblem.class).hasMessageContaining(part);
  }
}
