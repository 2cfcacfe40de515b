package agro.weather.quality;

import static org.assertj.core.api.Assertions.assertThat;

import agro.weather.Medium;
import agro.weather.TemperatureReadings;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;

class QualityPropertiesTest {

  private static final QualityControl SHAPE =
      QualityControl.none()
          .with(SpikeCheck.published())
          .with(StepCheck.published())
          .with(StuckCheck.usual())
          .with(RepeatedCheck.usual());

  /** A wild log in steps of 1/8 °C, which adding whole numbers does not round. */
  private static double[] wild(long seed, int size) {
    var random = new Random(seed);
    var celsius = new double[size];
    for (int i = 0; i < size; i++) {
      double before = i == 0 ? 10 : celsius[i - 1];
      double step = random.nextInt(10) == 0 ? 60 * random.nextDouble() - 30 : random.nextGaussian();
      celsius[i] = random.nextInt(4) == 0 ? before : Math.rint(8 * (before + step)) / 8;
    }
    return celsius;
  }

  private static TemperatureReadings readings(double[] celsius, long stepSeconds) {
    var seconds = new long[celsius.length];
    for (int i = 0; i < seconds.length; i++) {
      seconds[i] = stepSeconds * i;
    }
    return TemperatureReadings.of("Field", Medium.shelterAir(), ZoneOffset.UTC, seconds, celsius);
  }

  private static List<String> found(QualityFlags flags) {
    return flags.all().stream()
        .map(flag -> flag.rule() + " " + flag.first() + " " + flag.last() + " " + flag.limit())
        .toList();
  }

  @Property(seed = "8", tries = 40)
  void flagsOfShapeDoNotDependOnTheLevel(
      @ForAll long seed, @ForAll @IntRange(min = -20, max = 20) int shift) {
    double[] celsius = wild(seed, 400);
    double[] shifted = celsius.clone();
    for (int i = 0; i < shifted.length; i++) {
      shifted[i] += shift;
    }

    var flags = SHAPE.check(readings(celsius, 900));

    assertThat(found(SHAPE.check(readings(shifted, 900)))).isEqualTo(found(flags));
  }

  @Property(seed = "8", tries = 40)
  void spikesAndStepsDoNotDependOnTheSign(@ForAll long seed) {
    var control = QualityControl.none().with(SpikeCheck.published()).with(StepCheck.published());
    double[] celsius = wild(seed, 400);
    double[] mirrored = celsius.clone();
    for (int i = 0; i < mirrored.length; i++) {
      mirrored[i] = -celsius[i];
    }

    var flags = control.check(readings(celsius, 900)).all();
    var opposite = control.check(readings(mirrored, 900)).all();

    assertThat(opposite).hasSameSizeAs(flags);
    for (int i = 0; i < flags.size(); i++) {
      assertThat(opposite.get(i).first()).isEqualTo(flags.get(i).first());
      assertThat(opposite.get(i).value()).isEqualTo(-flags.get(i).value());
    }
  }

  @Property(seed = "8", tries = 40)
  void looserLimitsNeverRaiseMoreSpikes(@ForAll long seed) {
    var readings = readings(wild(seed, 400), 900);
    var strict = QualityControl.none().with(new SpikeCheck(4, 1, java.time.Duration.ofHours(1)));
    var loose = QualityControl.none().with(new SpikeCheck(9, 1, java.time.Duration.ofHours(1)));

    assertThat(loose.check(readings).all().size())
        .isLessThanOrEqualTo(strict.check(readings).all().size());
  }

  @Property(seed = "8", tries = 30)
  void everyFlagPointsIntoTheSeriesAndTheRestStays(
      @ForAll long seed, @ForAll @LongRange(min = 60, max = 14_400) long stepSeconds) {
    var readings = readings(wild(seed, 300), stepSeconds);
    var flags = QualityControl.withDefaults().check(readings);

    assertThat(flags.all()).allMatch(flag -> flag.last() < readings.size());
    assertThat(flags.all()).allMatch(flag -> !flag.why().isBlank() && !flag.unit().isBlank());
    var rules = flags.rulesBroken();
    if (!rules.isEmpty()) {
      assertThat(flags.withoutFlagged(readings, rules).readings().size())
          .isEqualTo(readings.size() - flags.valuesFlagged(rules));
    }
  }

  @Property(seed = "8", tries = 30)
  void checkedReadingsAreNotChanged(@ForAll long seed) {
    double[] celsius = wild(seed, 300);
    var readings = readings(celsius, 3600);

    QualityControl.withDefaults().check(readings);

    assertThat(readings.celsius()).isEqualTo(celsius);
  }
}
