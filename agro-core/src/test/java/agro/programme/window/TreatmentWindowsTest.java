package agro.programme.window;

import static agro.programme.window.InventedHours.CALM;
import static org.assertj.core.api.Assertions.assertThat;

import agro.units.Area;
import agro.units.Speed;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Days in order of what they expose, where the weather lets them be used. */
class TreatmentWindowsTest {

  private static final SprayJob JOB = SprayJob.of(Area.parse("4 ha"), 1);
  private static final SprayLimits LIMITS = SprayLimits.none().windUpTo(Speed.parse("3 m/s"));
  private static final ExposureForecast EXPOSURE =
      ExposureForecast.of(
          InventedCourses.even(),
          InventedCourses.target(TargetStage.YOUNG_LARVA),
          ResidueDays.lasting(6),
          ExposureSettings.withDefaults().withPairsAtLeast(7));
  private static final LocalDate BEST = EXPOSURE.bestDay().orElseThrow().day();

  /** Hours of some days; on the windy days three hours are left. */
  private static SprayHours hours(LocalDate from, int days, List<LocalDate> windy) {
    var weather =
        InventedHours.hours(
            from,
            24 * days,
            i -> windy.contains(from.plusDays(i / 24)) && i % 24 > 2 ? "7,9,0,16,60" : CALM);
    return SprayHours.of(weather, InventedHours.FIELD, LIMITS);
  }

  @Test
  void withoutWeatherTheShareAloneDecidesAndThatIsSaid() {
    var windows = TreatmentWindows.byShare(EXPOSURE);
    assertThat(windows.best().orElseThrow().exposed().day()).isEqualTo(BEST);
    assertThat(windows.days()).hasSameSizeAs(EXPOSURE.days());
    for (int i = 1; i < windows.days().size(); i++) {
      assertThat(windows.days().get(i).exposed().mean())
          .isLessThanOrEqualTo(windows.days().get(i - 1).exposed().mean());
      assertThat(windows.days().get(i).rank()).isEqualTo(i + 1);
    }
    assertThat(windows.presentation().toText())
        .contains("ranked by the exposed share alone")
        .contains("Before you use these figures");
    var pair = EXPOSURE.bestPair().orElseThrow();
    assertThat(windows.planDays()).containsExactly(pair.first(), pair.second());
  }

  @Test
  void aDayOnWhichTheJobDoesNotFitIsRefusedAndSaid() {
    var windows = TreatmentWindows.of(EXPOSURE, hours(BEST.minusDays(3), 7, List.of(BEST)), JOB);
    var best = windows.best().orElseThrow();
    assertThat(best.exposed().day()).isNotEqualTo(BEST);
    assertThat(best.use()).isEqualTo(DayUse.USABLE);
    var refused = windows.days().get(windows.days().size() - 1);
    assertThat(refused.exposed().day()).isEqualTo(BEST);
    assertThat(refused.use()).isEqualTo(DayUse.NOT_USABLE);
    assertThat(refused.rank()).isZero();
    assertThat(windows.presentation().toText().replaceAll("\\s+", " "))
        .contains(BEST + ", is refused by your own limits")
        .contains("The weather reaches 7 of");
  }

  @Test
  void aRefusedDayIsInNoPair() {
    var pair = EXPOSURE.bestPair().orElseThrow();
    var windows =
        TreatmentWindows.of(
            EXPOSURE, hours(pair.first().minusDays(1), 3, List.of(pair.first())), JOB);
    var other = windows.pair().orElseThrow();
    assertThat(List.of(other.first(), other.second())).doesNotContain(pair.first());
    assertThat(other.mean()).isLessThanOrEqualTo(pair.mean() + 1e-12);
    assertThat(other.second()).isAfterOrEqualTo(other.first().plusDays(7));
    assertThat(windows.planDays()).containsExactly(other.first(), other.second());
  }

  @Test
  void aDayOfWhichTheWeatherIsThereOnlyInPartIsNotRefused() {
    var weather = InventedHours.hours(BEST, 3, i -> CALM);
    var hours = SprayHours.of(weather, InventedHours.FIELD, LIMITS);
    var windows = TreatmentWindows.of(EXPOSURE, hours, JOB);
    assertThat(windows.best().orElseThrow().use()).isEqualTo(DayUse.PARTLY_KNOWN);
    assertThat(windows.best().orElseThrow().exposed().day()).isEqualTo(BEST);
  }

  @Test
  void whereEveryDayIsRefusedNoneIsRecommended() {
    var first = EXPOSURE.days().get(0).day();
    int count = EXPOSURE.days().size();
    var all = IntStream.range(0, count).mapToObj(first::plusDays).toList();
    var windows = TreatmentWindows.of(EXPOSURE, hours(first, count, all), JOB);
    assertThat(windows.best()).isEmpty();
    assertThat(windows.pair()).isEqualTo(Optional.empty());
    assertThat(windows.planDays()).isEmpty();
    assertThat(windows.presentation().toText()).contains("On no day of the window");
  }
}
