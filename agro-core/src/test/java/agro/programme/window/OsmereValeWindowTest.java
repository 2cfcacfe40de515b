package agro.programme.window;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import agro.development.Thresholds;
import agro.generation.DateDistribution;
import agro.generation.FlightMembers;
import agro.generation.FlightShare;
import agro.generation.GenerationForecast;
import agro.programme.FarmField;
import agro.programme.rotation.PlanWindow;
import agro.programme.rotation.RotationWindows;
import agro.programme.rotation.WindowBasis;
import agro.report.InputProblem;
import agro.report.Progress;
import agro.season.SeasonFolder;
import agro.units.Speed;
import agro.units.Temperature;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import org.junit.jupiter.api.Test;

/** The invented vale: from its logs and traps to days of treatment and windows of rotation. */
class OsmereValeWindowTest {

  private static final Path VALE =
      Path.of(System.getProperty("basedir", ".")).resolve("../demo-data/osmere-vale");
  private static final GenerationForecast FORECAST = forecast();

  private static GenerationForecast forecast() {
    var pest = SeasonFolder.read(VALE).pestAt("leek moth", "Upper Croft");
    return pest.forecast(pest.fit(), 1);
  }

  private static ExposureForecast weigh(StageTarget target) {
    return ExposureForecast.of(
        FORECAST,
        2,
        target,
        ResidueDays.lasting(7),
        ExposureSettings.withDefaults().withPairsAtLeast(7));
  }

  /** Members and forecast are two samples of the same outcomes. */
  @Test
  void membersFlyOnTheDatesOfTheForecast() {
    var members = FlightMembers.of(FORECAST, 2, FlightMembers.USUAL, Progress.silent());
    for (var share : FlightShare.values()) {
      var days = new double[members.size()];
      for (int m = 0; m < days.length; m++) {
        double day = 0;
        while (day < members.days() && members.flownBy(m, day) < share.share()) {
          day += 0.125;
        }
        days[m] = day;
      }
      var dates = FORECAST.flight(2, share).orElseThrow().dates();
      var sampled = DateDistribution.ofOutcomes(members.firstDay(), days);
      for (double p : new double[] {0.1, 0.25, 0.5, 0.75, 0.9}) {
        assertThat(sampled.quantileDays(p))
            .as("%s at %s", share, p)
            .isCloseTo(dates.quantileDays(p), within(0.7));
      }
    }
  }

  @Test
  void daysOfTreatmentFollowTheFlightByTheTimeOfTheStages() {
    var found = weigh(InventedCourses.target(TargetStage.YOUNG_LARVA));
    var flight = FORECAST.flight(2, FlightShare.HALF).orElseThrow().dates().median().orElseThrow();
    var best = found.bestDay().orElseThrow();
    assertThat(best.day()).isBetween(flight.plusDays(3), flight.plusDays(20));
    assertThat(best.low()).isLessThan(best.mean());
    assertThat(best.high()).isGreaterThan(best.mean());
    double chances = found.days().stream().mapToDouble(ExposedDay::chanceBest).sum();
    assertThat(chances + found.bestDates().chanceNotThisSeason()).isCloseTo(1, within(1e-9));
    var nine = found.bestDates().interval(0.9);
    assertThat(best.day()).isBetween(nine.from().orElseThrow(), nine.to().orElseThrow());
    assertThat(found.bestPair().orElseThrow().mean()).isGreaterThan(best.mean());
    assertThat(found.presentation().toText()).contains("leek moth").contains("Sources");
  }

  @Test
  void stagesAboveOtherThresholdsRunOnTheirOwnClock() {
    var structure = InventedCourses.structure();
    var same = weigh(new StageTarget(TargetStage.EGG, structure));
    var flights = FORECAST.season().model().thresholds();
    var stated = weigh(new StageTarget(TargetStage.EGG, structure.above(flights)));
    assertThat(stated.days()).isEqualTo(same.days());
    var warmer = Thresholds.above(Temperature.ofCelsius(11));
    var later = weigh(new StageTarget(TargetStage.EGG, structure.above(warmer)));
    assertThat(later.bestDay().orElseThrow().day()).isAfter(same.bestDay().orElseThrow().day());
  }

  @Test
  void lateGenerationsKeepTheChanceThatTheyDoNotCome() {
    var found =
        ExposureForecast.of(
            FORECAST,
            3,
            InventedCourses.target(TargetStage.YOUNG_LARVA),
            ResidueDays.lasting(7),
            ExposureSettings.withDefaults());
    var flight = FORECAST.flight(3, FlightShare.HALF).orElseThrow().dates();
    assertThat(found.chanceNotThisSeason()).isBetween(flight.chanceNotThisSeason(), 0.95);
    assertThat(found.bestDates().chanceNotThisSeason())
        .isGreaterThanOrEqualTo(found.chanceNotThisSeason() - 1e-12);
  }

  @Test
  void windowsOfRotationTakeTheDays() {
    var generations = TreatmentWindows.generations(FORECAST, "Osmere Vale");
    var rotation = RotationWindows.of(generations, WindowBasis.FORECAST);
    assertThat(rotation.windows().get(0).number()).isEqualTo(2);
    var windows = TreatmentWindows.byShare(weigh(InventedCourses.target(TargetStage.YOUNG_LARVA)));
    var days = windows.planDays();
    var plan = new PlanWindow(rotation.on(days.get(0)).orElseThrow(), days, true);
    assertThat(plan.days()).hasSize(2);
    assertThat(plan.window().number()).isEqualTo(2);
  }

  /** The log of the field knows the temperature alone; the rest is said not to be judged. */
  @Test
  void theLogOfTheFieldTellsItsWarmHoursAndWhatItDoesNotKnow() {
    var zone = ZoneId.of("Europe/Ljubljana");
    var weather =
        HourlyWeather.read(
            VALE.resolve("logs/upper-croft-2026.csv"),
            HourColumns.withDefaults().timed("time", "yyyy-MM-dd HH:mm").missingAs("-999"),
            zone);
    var limits =
        SprayLimits.none()
            .windUpTo(Speed.parse("3 m/s"))
            .temperatureBetween(Temperature.ofCelsius(8), Temperature.ofCelsius(25));
    var hours = SprayHours.of(weather, FarmField.of("Upper Croft", zone).at(46.4, 14.1), limits);
    assertThat(hours.notJudged()).hasSize(1);
    assertThat(hours.on(LocalDate.of(2026, 3, 29)).orElseThrow().dayHours()).isEqualTo(23);
    assertThat(hours.on(LocalDate.of(2026, 6, 9)).orElseThrow().meeting()).isBetween(12, 24);
    assertThat(hours.on(LocalDate.of(2026, 2, 25)).orElseThrow().meeting()).isLessThan(12);
  }

  @Test
  void aFlightThatIsLeftOutIsRefused() {
    assertThatThrownBy(() -> FlightMembers.of(FORECAST, 1, 20, Progress.silent()))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("not among the flights to come");
  }
}
