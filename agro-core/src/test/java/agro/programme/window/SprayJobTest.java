package agro.programme.window;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import agro.report.InputProblem;
import agro.units.Area;
import agro.units.Volume;
import agro.units.VolumePerArea;
import agro.units.WorkTime;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Hours of a job: area over rate, fillings, the rest. */
class SprayJobTest {

  private static final Area FIELD = Area.parse("3.6 ha");

  @Test
  void hoursAreSprayingFillingAndTheRest() {
    var job =
        SprayJob.of(FIELD, 1.2)
            .filling(
                Volume.parse("400 L"), VolumePerArea.parse("300 L/ha"), WorkTime.parse("20 min"))
            .withOther(WorkTime.parse("30 min"));
    assertThat(job.fills()).isEqualTo(3);
    assertThat(job.hours()).isCloseTo(3 + 1 + 0.5, within(1e-9));
    assertThat(job.presentation().toText()).contains("4.50");
  }

  @Test
  void aTankThatIsJustEnoughIsOneFilling() {
    var job =
        SprayJob.of(FIELD, 1.2)
            .filling(
                Volume.parse("360 L"), VolumePerArea.parse("100 L/ha"), WorkTime.parse("20 min"));
    assertThat(job.fills()).isEqualTo(1);
  }

  @Test
  void fitsWhenTheRunIsAtLeastAsLong() {
    var day = new SprayDay(InventedCourses.FIRST, List.of(), 24, 4, 3, Optional.empty());
    assertThat(day.fits(SprayJob.of(FIELD, 1.2))).isTrue();
    assertThat(day.fits(SprayJob.of(FIELD, 1.19))).isFalse();
  }

  @Test
  void jobsWithoutAreaOrRateAreRefused() {
    assertThatThrownBy(() -> SprayJob.of(FIELD, 0)).isInstanceOf(InputProblem.class);
    assertThatThrownBy(() -> SprayJob.of(Area.parse("0 ha"), 1)).isInstanceOf(InputProblem.class);
    assertThatThrownBy(
            () ->
                SprayJob.of(FIELD, 1)
                    .filling(
                        Volume.parse("0 L"),
                        VolumePerArea.parse("100 L/ha"),
                        WorkTime.parse("1 min")))
        .isInstanceOf(InputProblem.class);
  }
}
