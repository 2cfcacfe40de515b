package agro.dose.sprayer;

import static agro.ReferenceTable.number;
import static agro.ReferenceTable.whole;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import agro.ReferenceTable;
import agro.dose.ActiveStrength;
import agro.dose.DoseLimit;
import agro.dose.LabelLimits;
import agro.dose.LimitCheck;
import agro.dose.PlannedUse;
import agro.dose.ProductPerArea;
import agro.dose.ProductPerSprayVolume;
import agro.dose.Severity;
import agro.dose.SprayVolume;
import agro.units.Area;
import agro.units.FlowRate;
import agro.units.Length;
import agro.units.Pressure;
import agro.units.Speed;
import agro.units.Volume;
import agro.units.VolumePerArea;
import agro.units.VolumeUnit;
import agro.units.WorkTime;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Catches under several nozzles, their outliers, and the uncertainty that they pass on. */
class CatchTestTest {

  private static final WorkTime MINUTE = new WorkTime(60);

  static List<NamedCsvRecord> intervals() {
    return ReferenceTable.read(CatchTestTest.class, "catch-intervals.csv");
  }

  private static CatchTest row(double... litres) {
    return CatchTest.ofRow(
        MINUTE, Arrays.stream(litres).mapToObj(Volume::new).toArray(Volume[]::new));
  }

  /** The samples of the table; computed with SciPy, script beside it. */
  @ParameterizedTest
  @MethodSource("intervals")
  void intervalsAgreeWithScipy(NamedCsvRecord line) {
    var catches = new ArrayList<NozzleCatch>();
    for (var nozzle : line.getField("catches").split("/", -1)) {
      var volumes =
          Stream.of(nozzle.strip().split(" ", -1))
              .map(Double::parseDouble)
              .map(Volume::new)
              .toList();
      catches.add(new NozzleCatch(Integer.toString(catches.size() + 1), volumes));
    }
    var found = CatchTest.of(MINUTE, catches).onSprayerOf(whole(line, "on_sprayer")).evaluate();
    var uncertainty = found.uncertainty().orElseThrow();
    assertThat(found.meanFlow().flow().litresPerMinute() / number(line, "mean"))
        .isCloseTo(1, within(1e-9));
    assertThat(uncertainty.standard() / number(line, "relative_error")).isCloseTo(1, within(1e-9));
    assertThat(uncertainty.degreesOfFreedom()).isEqualTo(number(line, "degrees_of_freedom"));
    assertThat(uncertainty.halfWidth(number(line, "level")) / number(line, "half_width"))
        .isCloseTo(1, within(1e-9));
  }

  @Test
  void tableIsWhole() {
    assertThat(intervals()).hasSize(15);
  }

  /** College exercise: the mean of the five readings is 1.008 L/min, printed 1.01. */
  @Test
  void fiveReadings() {
    var found = row(1.2, 1.0, 1.0, 0.92, 0.92).evaluate();
    assertThat(found.meanFlow().flow().litresPerMinute()).isCloseTo(1.008, within(1e-12));
    assertThat(found.outliers()).extracting(NozzleFinding::nozzle).containsExactly("1");
    assertThat(found.outliers().get(0).verdict()).isEqualTo(NozzleVerdict.HIGH);
    assertThat(found.working().toText()).contains("(1.2 + 1 + 1 + 0.92 + 0.92) / 5");
    var stricter = row(1.2, 1.0, 1.0, 0.92, 0.92).within(NozzleTolerance.FIVE_PERCENT).evaluate();
    assertThat(stricter.outliers())
        .extracting(NozzleFinding::nozzle)
        .containsExactly("1", "4", "5");
  }

  /** The exercise rounds the mean to 1.01 half-way and prints 430.52 L/ha; unrounded 429.67. */
  @Test
  void misprintOfAMeanRoundedMidWay() {
    var speed = Speed.parse("46 m/min");
    var lance = SprayLayout.lance(1, Length.parse("0.51 m"));
    var mean = row(1.2, 1.0, 1.0, 0.92, 0.92).evaluate().meanFlow();
    double exact = litresPerHectare(SprayCalibration.ofNozzle(lance, mean, speed));
    double rounded =
        litresPerHectare(
            SprayCalibration.ofNozzle(lance, new NozzleFlow(new FlowRate(1.01)), speed));
    assertThat(speed.times(MINUTE).times(lance.swath()).squareMetres())
        .isCloseTo(23.46, within(1e-9));
    assertThat(exact).isCloseTo(429.67, within(0.005)).isNotCloseTo(430.52, within(0.5));
    assertThat(rounded).isCloseTo(430.52, within(0.005));
  }

  private static double litresPerHectare(SprayCalibration calibration) {
    return calibration.evaluate().perFieldArea().perArea().litresPerHectare();
  }

  /** A nozzle exactly at the limit is within it, whatever the rounding of binary fractions. */
  @Test
  void limitsBelongToTheTolerance() {
    assertThat(row(1.1, 0.9, 1.0, 1.0).evaluate().outliers()).isEmpty();
    assertThat(row(1.11, 0.89, 1.0, 1.0).evaluate().outliers())
        .extracting(NozzleFinding::verdict)
        .containsExactly(NozzleVerdict.HIGH, NozzleVerdict.LOW);
    assertThat(row(1.0, 1.0).evaluate().remarks())
        .hasSize(2)
        .contains("All nozzles are within 10 % of their mean.")
        .anyMatch(remark -> remark.contains("all worn alike"));
  }

  @Test
  void wornNozzlesAreNamed() {
    var size03 = new NozzleFlow(NozzleSize.SIZE_03.flowAt3Bar());
    var found = row(1.2, 1.32, 1.31, 1.25).comparedWithNew(size03).evaluate();
    assertThat(found.worn()).extracting(NozzleFinding::nozzle).containsExactly("2");
    assertThat(found.outliers()).isEmpty();
    assertThat(found.remarks())
        .singleElement()
        .satisfies(remark -> assertThat(remark).contains("not yet a setting"));
    assertThat(found.table().toText()).contains("worn, replace it").contains("10.0");
    assertThat(found.working().toText()).contains("1.1 × 1.2 L/min");
    assertThat(row(1.2, 1.5).evaluate().worn()).isEmpty();
    var atTwoBar = row(0.98, 1.08).comparedWithSize(NozzleSize.SIZE_03, Pressure.parse("2 bar"));
    assertThat(atTwoBar.evaluate().worn()).extracting(NozzleFinding::nozzle).containsExactly("2");
  }

  @Test
  void blockedNozzleIsNamedAndLeftOutOfTheMean() {
    var found = row(1.0, 0, 1.0, 1.0).evaluate();
    assertThat(found.meanFlow().flow().litresPerMinute()).isEqualTo(1.0);
    assertThat(found.outliers())
        .singleElement()
        .satisfies(
            one -> {
              assertThat(one.nozzle()).isEqualTo("2");
              assertThat(one.verdict()).isEqualTo(NozzleVerdict.BLOCKED);
            });
    assertThat(found.working().toText()).contains("2 (blocked)");
  }

  /** One badly worn nozzle of four makes the good ones look too low; the median is not moved. */
  @Test
  void oddNozzleThatMovesTheMeanIsSeen() {
    var found = row(1.0, 1.0, 1.0, 2.0).evaluate();
    assertThat(found.outliers()).hasSize(4);
    assertThat(found.remarks()).anyMatch(remark -> remark.contains("stand out (4)"));
  }

  @Test
  void catchOfOneNozzleHasNoKnownSpread() {
    var found = row(1.0).evaluate();
    assertThat(found.uncertainty()).isEmpty();
    assertThat(found.standardDeviation()).isEmpty();
    assertThat(found.presentation().toText()).contains("not known from one nozzle");
  }

  /** Flow ±, speed ±: shares combine as the root of the sum of squares, freedom after Welch. */
  @Test
  void uncertaintiesOfFlowAndSpeedCombine() {
    var flow = new RelativeUncertainty(0.03, 4);
    var speed = new RelativeUncertainty(0.04, 9);
    var both = flow.combinedWith(speed);
    assertThat(both.standard()).isCloseTo(0.05, within(1e-15));
    double welch = Math.pow(0.05, 4) / (Math.pow(0.03, 4) / 4 + Math.pow(0.04, 4) / 9);
    assertThat(both.degreesOfFreedom()).isCloseTo(welch, within(1e-9)).isBetween(4.0, 13.0);
    assertThat(speed.combinedWith(flow).degreesOfFreedom()).isCloseTo(welch, within(1e-9));
    var known = new RelativeUncertainty(0.02, Double.POSITIVE_INFINITY);
    assertThat(known.halfWidth(0.95)).isCloseTo(0.02 * 1.959963985, within(1e-8));
  }

  /** The dose has the same share of uncertainty as the volume; a range of the label stays one. */
  @Test
  void uncertaintyIsPassedOnToTheDose() {
    var boom = SprayLayout.boom(5, Length.parse("0.5 m"));
    var course =
        TimedCourse.of(Length.parse("100 m"), new WorkTime(59), new WorkTime(60), new WorkTime(61));
    var caught = row(1.21, 1.19, 1.20, 1.22, 1.18).evaluate();
    var found = SprayCalibration.ofMeasured(boom, caught, course.evaluate()).evaluate();
    assertThat(found.perFieldArea().perArea().litresPerHectare()).isCloseTo(240, within(1e-9));

    double flowShare = Math.sqrt(0.001 / 4 / 5) / 1.2;
    double timeShare = 1 / Math.sqrt(3) / 60;
    double share = Math.hypot(flowShare, timeShare);
    assertThat(found.uncertainty().orElseThrow().standard()).isCloseTo(share, within(1e-12));

    double half = found.relativeHalfWidth(0.95).orElseThrow();
    var interval = found.treatedInterval(0.95).orElseThrow();
    assertThat(interval.low().litresPerHectare()).isCloseTo(240 * (1 - half), within(1e-9));
    var dose = found.doseOf(ProductPerSprayVolume.parse("2-3 mL/L"), 0.95);
    assertThat(dose.perFieldArea().perHectare().lowNumber()).isCloseTo(0.48, within(1e-9));
    assertThat(dose.perFieldArea().perHectare().highNumber()).isCloseTo(0.72, within(1e-9));
    assertThat(dose.mostPerTreatedArea().orElseThrow().perHectare().highNumber())
        .isCloseTo(0.72 * (1 + half), within(1e-9));
    assertThat(dose.leastPerTreatedArea().orElseThrow().perHectare().lowNumber())
        .isCloseTo(0.48 * (1 - half), within(1e-9));
    assertThat(dose.working().toText()).contains("% at a level of 95 %");
    assertThat(found.working().toText()).contains("interval of the volume").contains("±");
  }

  @Test
  void unknownUncertaintyIsSaid() {
    var plot = MeasuredPlot.of(new Area(200), new Volume(2)).evaluate();
    assertThat(plot.relativeHalfWidth(0.95)).isEmpty();
    assertThat(plot.treatedInterval(0.95)).isEmpty();
    assertThat(plot.remarks()).anyMatch(remark -> remark.contains("taken once"));
    var dose = plot.doseOf(ProductPerSprayVolume.parse("2 mL/L"), 0.95);
    assertThat(dose.mostPerTreatedArea()).isEmpty();
    assertThat(dose.working().toText()).contains("not known");
  }

  /** Two catches as different as 1 and 2 say nothing; no interval is cut off at zero. */
  @Test
  void intervalBelowZeroIsNotClipped() {
    var plot = MeasuredPlot.of(new Area(200), new Volume(1), new Volume(2)).evaluate();
    assertThat(plot.uncertainty().orElseThrow().halfWidth(0.95)).isGreaterThan(1);
    assertThat(plot.treatedInterval(0.95)).isEmpty();
    assertThat(plot.remarks()).anyMatch(remark -> remark.contains("begin below zero"));
    assertThat(plot.treatedInterval(0.5)).isPresent();
  }

  /** A tank mixed for 200 L/ha in a sprayer that gives 240 L/ha doses a fifth too much. */
  @Test
  void doseOfATankMixedForAnotherVolume() {
    var plot = MeasuredPlot.of(new Area(100), new Volume(2.4)).evaluate();
    var dose =
        plot.doseWhenMixedFor(
            ProductPerArea.parse("0.5-1 L/ha"), new SprayVolume(new VolumePerArea(200)));
    assertThat(dose.dose().perHectare().lowNumber()).isCloseTo(0.6, within(1e-12));
    assertThat(dose.dose().perHectare().highNumber()).isCloseTo(1.2, within(1e-12));
    assertThat(dose.timesIntended()).isCloseTo(1.2, within(1e-12));
    assertThat(dose.working().toText()).contains("20 % above what was intended");
  }

  /**
   * High-volume mix in a low-volume sprayer, 500 to 60 L/ha: 12 % of the dose; the reverse 8.3×.
   */
  @Test
  void lowVolumeSprayerWithAHighVolumeMix() {
    var low = MeasuredPlot.of(new Area(1000), new Volume(6)).evaluate();
    var high = MeasuredPlot.of(new Area(1000), new Volume(50)).evaluate();
    var rate = ProductPerArea.parse("1 L/ha");
    var weak = low.doseWhenMixedFor(rate, high.perFieldArea());
    assertThat(weak.timesIntended()).isCloseTo(0.12, within(1e-12));
    assertThat(weak.working().toText()).contains("88 % below what was intended");
    assertThat(high.doseWhenMixedFor(rate, low.perFieldArea()).timesIntended())
        .isCloseTo(8.33, within(0.005));
    assertThat(low.doseWhenMixedFor(rate, low.perFieldArea()).working().toText())
        .contains("as intended");
  }

  /** A dose within the maximum whose interval reaches over it is found when its end is checked. */
  @Test
  void endOfTheIntervalIsCheckedAgainstTheLabel() {
    var area = new Area(100);
    var plot = MeasuredPlot.of(area, new Volume(2.3), new Volume(2.5), new Volume(2.4)).evaluate();
    var dose = plot.doseOf(ProductPerSprayVolume.parse("3 mL/L"), 0.95);
    var limits =
        LabelLimits.of("Product A on leeks, invented")
            .with(DoseLimit.maximum(ProductPerArea.parse("0.75 L/ha")));
    var most = dose.mostPerFieldArea().orElseThrow();
    assertThat(LimitCheck.check(limits, PlannedUse.of(dose.perFieldArea())).findings())
        .noneMatch(finding -> finding.severity() == Severity.ERROR);
    assertThat(LimitCheck.check(limits, PlannedUse.of(most)).findings())
        .anyMatch(finding -> finding.severity() == Severity.ERROR);
    assertThat(dose.leastPerFieldArea().orElseThrow().perHectare().lowNumber()).isLessThan(0.72);
  }

  /** A calibration counts a blocked nozzle as mended and says so, on the page as well. */
  @Test
  void blockedNozzleIsSaidOnThePageOfTheCalibration() {
    var walk = TimedCourse.of(new Length(100), new WorkTime(60)).evaluate();
    var boom = SprayLayout.boom(4, new Length(0.5));
    var blocked = SprayCalibration.ofMeasured(boom, row(1.0, 0, 1.0, 1.0).evaluate(), walk);
    var whole = SprayCalibration.ofMeasured(boom, row(1.0, 1.0, 1.0, 1.0).evaluate(), walk);
    assertThat(blocked.evaluate().perFieldArea()).isEqualTo(whole.evaluate().perFieldArea());
    assertThat(blocked.printedIn(SprayUnits.US).evaluate().presentation().toText())
        .contains("Blocked when caught: nozzle 2.", "counts them as mended");
    assertThat(whole.evaluate().presentation().toText()).doesNotContain("when caught");

    var odd = SprayCalibration.ofMeasured(boom, row(1.0, 1.0, 1.0, 1.2).evaluate(), walk);
    assertThat(odd.evaluate().remarks())
        .anyMatch(remark -> remark.startsWith("Out of tolerance or worn when caught: nozzle 4."));
  }

  /** The dose of a calibrated sprayer as active ingredient, with the same uncertainty. */
  @Test
  void uncertaintyIsPassedOnToTheActiveIngredient() {
    var plot =
        MeasuredPlot.of(new Area(100), new Volume(2.4), new Volume(2.5), new Volume(2.3))
            .evaluate();
    var dose = plot.doseOf(ProductPerSprayVolume.parse("2-3 mL/L"), 0.95);
    var strength = ActiveStrength.parse("200 g/L");
    double half = dose.relativeHalfWidth().getAsDouble();
    assertThat(
            dose.perFieldArea().active(strength).on(new Area(10_000)).range().high().kilograms()
                * 1000)
        .isCloseTo(144, within(1e-9));
    var most = dose.mostPerFieldArea().orElseThrow().active(strength).on(new Area(10_000));
    assertThat(most.range().high().kilograms() * 1000).isCloseTo(144 * (1 + half), within(1e-9));
  }

  /** Half a litre in a minute is the same whether it was read in mL or in L. */
  @Test
  void readingsInAUnit() {
    var found = CatchTest.ofRow(MINUTE, VolumeUnit.MILLILITRE, 500, 520, 0).evaluate();
    assertThat(found).isEqualTo(row(0.5, 0.52, 0).evaluate());
    assertThat(found.outliers()).extracting(NozzleFinding::nozzle).containsExactly("3");
  }
}
