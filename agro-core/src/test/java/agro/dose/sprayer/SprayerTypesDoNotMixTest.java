package agro.dose.sprayer;

import static org.assertj.core.api.Assertions.assertThat;

import agro.CompilerCheck;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What the compiler keeps apart: nozzle and sprayer, treated area and field, spray and product. */
class SprayerTypesDoNotMixTest {

  private static final CompilerCheck COMPILER =
      new CompilerCheck(List.of("agro.units.*", "agro.dose.*", "agro.dose.sprayer.*"));

  private static final String BOOM = "SprayLayout boom = SprayLayout.boom(2, new Length(0.5)); ";
  private static final String NOZZLE = "NozzleFlow nozzle = new NozzleFlow(new FlowRate(1)); ";
  private static final String SPRAYER = "SprayerFlow all = new SprayerFlow(new FlowRate(1)); ";
  private static final String FIELD =
      "SprayVolume field = new SprayVolume(new VolumePerArea(100)); ";
  private static final String TREATED =
      "TreatedVolume treated = new TreatedVolume(new VolumePerArea(100)); ";
  private static final String SPEED = "Speed speed = new Speed(2); ";

  /** Without these the refusals below would prove nothing. */
  private static final List<String> ALLOWED =
      List.of(
          BOOM + NOZZLE + SPEED + "var c = SprayCalibration.ofNozzle(boom, nozzle, speed);",
          BOOM + SPRAYER + SPEED + "var c = SprayCalibration.ofSprayer(boom, all, speed);",
          NOZZLE + "SprayerFlow all = nozzle.through(24);",
          BOOM + FIELD + "TreatedVolume treated = TreatedVolume.ofField(field, boom);",
          TREATED + "double x = DropletDensity.perSquareCentimetre(250, treated);",
          NOZZLE + "var c = new NozzleCurve(nozzle, new Pressure(300));");

  private static final List<String> REFUSED =
      List.of(
          BOOM + SPRAYER + SPEED + "var c = SprayCalibration.ofNozzle(boom, all, speed);",
          BOOM + NOZZLE + SPEED + "var c = SprayCalibration.ofSprayer(boom, nozzle, speed);",
          SPRAYER + "NozzleFlow nozzle = all;",
          NOZZLE + "SprayerFlow all = nozzle;",
          SPRAYER + "var c = new NozzleCurve(all, new Pressure(300));",
          FIELD + "TreatedVolume treated = field;",
          TREATED + "SprayVolume field = treated;",
          FIELD + "double x = DropletDensity.perSquareCentimetre(250, field);",
          TREATED + "boolean less = treated.compareTo(new SprayVolume(new VolumePerArea(1))) < 0;",
          "TreatedVolume treated = ProductPerArea.parse(\"1 L/ha\");",
          "TreatedVolume treated = ProductPerTreatedArea.parse(\"1 L/ha treated area\");",
          BOOM + SPEED + "var c = SprayCalibration.ofSprayer(boom, new FlowRate(1), speed);",
          BOOM + NOZZLE + "var c = SprayCalibration.ofNozzle(boom, nozzle, new Length(2));",
          "var c = TimedCourse.of(new WorkTime(60), new Length(100));",
          "var c = MeasuredPlot.of(new Volume(2), new Area(200));",
          "var l = SprayLayout.boom(new Length(0.5), 24);",
          "var d = new LiquidDensity(new MassPerVolume(1090));");

  @Test
  void matchingTypesCompile() {
    assertThat(COMPILER.errors(ALLOWED)).hasSameSizeAs(ALLOWED).allMatch(List::isEmpty);
  }

  @Test
  void differentTypesDoNotCompile() {
    var errors = COMPILER.errors(REFUSED);
    for (int i = 0; i < REFUSED.size(); i++) {
      assertThat(errors.get(i)).as(REFUSED.get(i)).hasSize(1);
      assertThat(errors.get(i).get(0))
          .as(REFUSED.get(i))
          .matches("(?s)compiler\\.err\\.(prob\\.found\\.req|cant\\.apply|cant\\.resolve).*")
          .doesNotContain("symbol:   class");
    }
  }
}
