package agro.programme.window;

import static agro.programme.window.InventedCourses.FIRST;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import agro.generation.FlightCurve;
import agro.report.InputProblem;
import agro.source.Reference;
import agro.units.ThermalTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/** Bands over courses, chances of days, and what must hold for any treatment. */
class ExposureForecastTest {

  private static final StageTarget YOUNG = InventedCourses.target(TargetStage.YOUNG_LARVA);
  private static final ExposureSettings ALL =
      ExposureSettings.withDefaults().between(FIRST, FIRST.plusDays(90));

  private static StageCourses middles(double... middles) {
    var flights = new ArrayList<KnownFlight>();
    for (double middle : middles) {
      flights.add(InventedCourses.flight(middle));
    }
    return StageCourses.given("test pest", 1, FIRST, flights);
  }

  private static ExposureForecast weigh(StageCourses courses, double lasts) {
    return ExposureForecast.of(courses, YOUNG, ResidueDays.lasting(lasts), ALL);
  }

  @Test
  void bandIsThatOfTheCoursesAndNotOfTheirMean() {
    var middles = new double[] {300, 340, 380, 420, 460, 500, 540, 580, 620, 660, 700};
    var together = weigh(middles(middles), 6);
    for (int d = 30; d < 80; d += 5) {
      var day = FIRST.plusDays(d);
      var single = new ArrayList<Double>();
      for (double middle : middles) {
        single.add(weigh(middles(middle), 6).on(day).orElseThrow().mean());
      }
      Collections.sort(single);
      var found = together.on(day).orElseThrow();
      assertThat(found.low()).isEqualTo(single.get(1));
      assertThat(found.high()).isEqualTo(single.get(9));
      assertThat(found.mean())
          .isCloseTo(
              single.stream().mapToDouble(Double::doubleValue).average().orElseThrow(),
              within(1e-12));
      long enough = single.stream().filter(each -> each >= 0.5).count();
      assertThat(found.chanceWanted()).isCloseTo(enough / 11.0, within(1e-12));
    }
  }

  @Test
  void chancesOfTheBestDayAreThoseOfTheCourses() {
    var found = weigh(middles(403, 403, 403, 503), 6);
    var early = weigh(middles(403), 6).bestDay().orElseThrow().day();
    assertThat(found.on(early).orElseThrow().chanceBest()).isEqualTo(0.75);
    assertThat(found.on(early.plusDays(10)).orElseThrow().chanceBest()).isEqualTo(0.25);
    assertThat(found.bestDates().quantile(0.5)).contains(early);
    assertThat(found.bestDates().quantile(0.9)).contains(early.plusDays(10));
  }

  @Test
  void aGenerationThatDoesNotComeIsKeptAsNothingExposed() {
    var late = InventedCourses.flight(5000);
    var courses =
        StageCourses.given("test pest", 2, FIRST, List.of(InventedCourses.flight(400), late));
    var found = weigh(courses, 6);
    var alone = weigh(middles(400), 6).bestDay().orElseThrow();
    assertThat(found.chanceNotThisSeason()).isEqualTo(0.5);
    assertThat(found.bestDates().chanceNotThisSeason()).isEqualTo(0.5);
    assertThat(found.on(alone.day()).orElseThrow().mean())
        .isCloseTo(alone.mean() / 2, within(1e-12));
    assertThat(found.days().stream().mapToDouble(ExposedDay::chanceBest).sum())
        .isCloseTo(0.5, within(1e-12));
    assertThat(found.presentation().toText()).containsPattern("Not this season:\\s+50.%");
  }

  @Test
  void aStageThatIsOverLeavesNoDay() {
    var found =
        ExposureForecast.of(
            middles(5000), YOUNG, ResidueDays.lasting(6), ExposureSettings.withDefaults());
    assertThat(found.days()).isEmpty();
    assertThat(found.bestDay()).isEmpty();
    assertThat(found.presentation().toText()).contains("No day is left");
  }

  @Property(seed = "8", tries = 25)
  void longerResidueNeverLowersTheShare(
      @ForAll @DoubleRange(min = 0.1, max = 30) double lasts,
      @ForAll @DoubleRange(min = 0, max = 15) double more,
      @ForAll @DoubleRange(min = 0, max = 4) double acts,
      @ForAll @IntRange(max = 2) int form) {
    var decay =
        List.of(
                new ResidueDecay.Steady(),
                new ResidueDecay.Linear(),
                new ResidueDecay.Exponential(4))
            .get(form);
    var courses = middles(400);
    var shorter = ResidueDays.lasting(lasts).with(decay).actingAfter(acts);
    var longer = ResidueDays.lasting(lasts + more).with(decay).actingAfter(acts);
    var a = ExposureForecast.of(courses, YOUNG, shorter, ALL);
    var b = ExposureForecast.of(courses, YOUNG, longer, ALL);
    for (int d = 0; d < a.days().size(); d++) {
      assertThat(b.days().get(d).mean()).isGreaterThanOrEqualTo(a.days().get(d).mean() - 1e-3);
      assertThat(a.days().get(d).mean()).isBetween(0.0, 1.0 + 1e-9);
    }
  }

  @Property(seed = "8", tries = 15)
  void aForecastThatIsShiftedShiftsTheDay(
      @ForAll @IntRange(min = 1, max = 30) int days,
      @ForAll @DoubleRange(min = 0.5, max = 20) double lasts) {
    var before = weigh(middles(350), lasts);
    var after = weigh(middles(350 + days * InventedCourses.WARMTH), lasts);
    assertThat(after.bestDay().orElseThrow().day())
        .isEqualTo(before.bestDay().orElseThrow().day().plusDays(days));
    assertThat(after.bestDay().orElseThrow().mean())
        .isCloseTo(before.bestDay().orElseThrow().mean(), within(1e-6));
  }

  @Property(seed = "8", tries = 15)
  void slowerActionNeverRaisesTheShare(
      @ForAll @DoubleRange(min = 0, max = 4) double acts,
      @ForAll @DoubleRange(min = 0, max = 4) double more) {
    var fast = ResidueDays.lasting(5).actingAfter(acts);
    var slow = ResidueDays.lasting(5).actingAfter(acts + more);
    var a = ExposureForecast.of(middles(400), YOUNG, fast, ALL);
    var b = ExposureForecast.of(middles(400), YOUNG, slow, ALL);
    for (int d = 0; d < a.days().size(); d++) {
      assertThat(b.days().get(d).mean()).isLessThanOrEqualTo(a.days().get(d).mean() + 1e-6);
    }
  }

  @Test
  void orderOfTheCoursesDoesNotMatter() {
    var one = weigh(middles(300, 450, 520), 6);
    var other = weigh(middles(520, 300, 450), 6);
    for (int d = 0; d < one.days().size(); d++) {
      assertThat(other.days().get(d).low()).isEqualTo(one.days().get(d).low());
      assertThat(other.days().get(d).chanceBest()).isEqualTo(one.days().get(d).chanceBest());
    }
  }

  @Test
  void pairsThatLieTooFarApartAreNone() {
    var settings = ALL.withPairsAtLeast(200);
    var found = ExposureForecast.of(middles(400), YOUNG, ResidueDays.lasting(6), settings);
    assertThat(found.bestPair()).isEmpty();
    assertThat(found.presentation().toText()).contains("no two of the days are 200 days apart");
  }

  @Test
  void stepsLeadToTheShare() {
    var steady = weigh(middles(403), 6);
    var best = steady.bestDay().orElseThrow();
    assertThat(1 - best.toCome() - best.gone()).isCloseTo(best.mean(), within(1e-9));
    var printed = agro.units.Numbers.fixed(100 * best.mean(), 1);
    assertThat(steady.working(best.day()).toText()).contains("in − out").contains(printed);
    var fading = ResidueDays.lasting(6).with(new ResidueDecay.Linear());
    var less = ExposureForecast.of(middles(403), YOUNG, fading, ALL);
    var printedLess = agro.units.Numbers.fixed(100 * less.on(best.day()).orElseThrow().mean(), 1);
    assertThat(less.working(best.day()).toText()).contains("fading").contains(printedLess);
    assertThatThrownBy(() -> steady.working(FIRST.plusDays(119)))
        .hasMessageContaining("was not weighed");
  }

  @Test
  void whatCannotBeIsRefusedWithItsReason() {
    assertThatThrownBy(() -> ResidueDays.lasting(0)).hasMessageContaining("a residue that lasts 0");
    assertThatThrownBy(() -> ResidueDays.lasting(3).actingAfter(-1))
        .isInstanceOf(InputProblem.class);
    assertThatThrownBy(() -> new ResidueDecay.Exponential(0)).isInstanceOf(InputProblem.class);
    assertThatThrownBy(() -> ExposureSettings.withDefaults().wanting(60))
        .hasMessageContaining("write 60 % as 0.6");
    assertThatThrownBy(() -> ExposureSettings.withDefaults().withPairsAtLeast(0))
        .isInstanceOf(InputProblem.class);
    var empty = StageStructure.from(Reference.invented("nothing"));
    assertThatThrownBy(() -> new StageTarget(TargetStage.EGG, empty))
        .hasMessageContaining("no duration of the eggs");
    assertThatThrownBy(() -> StageDelay.exactly(new ThermalTime(-1)))
        .isInstanceOf(InputProblem.class);
    assertThatThrownBy(() -> StageCourses.given("test pest", 1, FIRST, List.of()))
        .isInstanceOf(InputProblem.class);
    assertThatThrownBy(
            () ->
                new KnownFlight(
                    FlightCurve.NORMAL, new ThermalTime(3), new ThermalTime(0), List.of(1.0)))
        .isInstanceOf(InputProblem.class);
    var past = ALL.between(FIRST.minusDays(9), FIRST.minusDays(2));
    assertThatThrownBy(() -> ExposureForecast.of(middles(400), YOUNG, ResidueDays.lasting(6), past))
        .hasMessageContaining("days within the season");
  }
}
