package agro.course.practical;

import static agro.course.practical.PracticalSamples.read;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Arrays;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;

class ClassCalibrationPropertiesTest {

  /** Litres a second over square metres a second, whatever the units of the cells. */
  @Property(seed = "8", tries = 200)
  void theVolumeIsWhatIsPutOnTheGround(
      @ForAll @DoubleRange(min = 5, max = 200) double metres,
      @ForAll @DoubleRange(min = 5, max = 90) double seconds,
      @ForAll @DoubleRange(min = 0.3, max = 24) double width,
      @ForAll @IntRange(min = 1, max = 48) int nozzles,
      @ForAll @DoubleRange(min = 0.05, max = 3) double litres) {
    var line =
        String.join(
            ",",
            "a",
            plain(metres * 100) + " cm",
            plain(seconds / 60) + " min",
            plain(width / 0.3048) + " ft",
            Integer.toString(nozzles),
            plain(litres * 1000) + " mL",
            "30 s");
    var found =
        read("group,course,time,width,nozzles,catches,catch_time\n" + line + "\n")
            .pooled(PoolingRules.STANDARD);
    double expected = 10_000 * nozzles * litres / 30 * seconds / (metres * width);
    assertThat(found.findings().get(0).volume().litresPerHectare() / expected)
        .isCloseTo(1, offset(1e-6));
  }

  /** All volumes times a number: the same departures and scores. */
  @Property(seed = "8", tries = 100)
  void theUnitOfTheVolumeDoesNotMatter(
      @ForAll @Size(min = 1, max = 12) List<@DoubleRange(min = 50, max = 900) Double> volumes,
      @ForAll @IntRange(min = 2, max = 5) int times) {
    double[] values = volumes.stream().mapToDouble(Double::doubleValue).toArray();
    var one = PracticalSamples.volumes(values).pooled(PoolingRules.STANDARD);
    var more = Arrays.stream(values).map(value -> value * times).toArray();
    var other = PracticalSamples.volumes(more).pooled(PoolingRules.STANDARD);
    for (int i = 0; i < values.length; i++) {
      assertThat(other.findings().get(i).departure())
          .isCloseTo(one.findings().get(i).departure(), offset(1e-9));
    }
    assertThat(other.all().mean().ratioTo(one.all().mean())).isCloseTo(times, offset(1e-9));
  }

  private static String plain(double value) {
    return new BigDecimal(value).round(new MathContext(12)).toPlainString();
  }
}
