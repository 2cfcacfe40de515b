package agro.notebook.figure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import agro.generation.FlightCurve;
import agro.programme.window.ExposureForecast;
import agro.programme.window.ExposureSettings;
import agro.programme.window.KnownFlight;
import agro.programme.window.ResidueDays;
import agro.programme.window.StageCourses;
import agro.programme.window.StageDelay;
import agro.programme.window.StageStructure;
import agro.programme.window.StageTarget;
import agro.programme.window.TargetStage;
import agro.report.InputProblem;
import agro.source.Reference;
import agro.units.ThermalTime;
import java.time.LocalDate;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Ten degree-days on each day, so that thermal times are days. */
class ExposureFigureTest {

  private static final LocalDate FIRST = LocalDate.of(2031, 4, 1);

  private static ExposureForecast exposure(ExposureSettings settings) {
    var flight =
        new KnownFlight(
            FlightCurve.NORMAL,
            new ThermalTime(400),
            new ThermalTime(40),
            Collections.nCopies(120, 10.0));
    var stages =
        StageStructure.from(Reference.invented("stages for tests"))
            .withFirstEgg(delay(50))
            .withEgg(delay(60))
            .withYoungLarva(delay(45));
    return ExposureForecast.of(
        StageCourses.given("test <pest>", 1, FIRST, List.of(flight)),
        new StageTarget(TargetStage.YOUNG_LARVA, stages),
        ResidueDays.lasting(7),
        settings);
  }

  private static StageDelay delay(double mean) {
    return StageDelay.normal(new ThermalTime(mean), new ThermalTime(mean / 6));
  }

  @Test
  void theFigureTellsBestDayAndPair() {
    var exposure = exposure(ExposureSettings.withDefaults().withPairsAtLeast(7));
    var best = exposure.bestDay().orElseThrow();
    var pair = exposure.bestPair().orElseThrow();
    var figure = ExposureFigure.of(exposure);
    assertThat(figure.alternative())
        .contains(
            Math.round(100 * best.mean()) + " % for a treatment on ",
            FigureWords.longDay(best.day()),
            FigureWords.day(pair.first()) + " and " + FigureWords.day(pair.second()));
    assertThat(figure.caption()).contains("Exposed is not killed", "for the label");
    assertThat(figure.data().rows()).hasSameSizeAs(exposure.days());
    assertThat(figure.widthPoints()).isGreaterThan(figure.heightPoints());
    assertThat(figure.png()).hasSizeGreaterThan(5_000);
  }

  @Test
  void withoutPairsNoneIsTold() {
    var figure = ExposureFigure.of(exposure(ExposureSettings.withDefaults()));
    assertThat(figure.alternative()).doesNotContain("pair");
  }

  @Test
  void daysOnWhichNothingIsExposedAreRefused() {
    var early = ExposureSettings.withDefaults().between(FIRST, FIRST.plusDays(1));
    var flightless = exposure(early);
    var none =
        new ExposureForecast(
            flightless.courses(),
            flightless.target(),
            flightless.residue(),
            early,
            List.of(),
            flightless.bestDates(),
            1,
            flightless.bestPair());
    assertThatThrownBy(() -> ExposureFigure.of(none))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("later generation");
  }
}
