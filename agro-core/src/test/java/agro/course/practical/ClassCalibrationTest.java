package agro.course.practical;

import static agro.course.practical.PracticalSamples.demo;
import static agro.course.practical.PracticalSamples.read;
import static agro.course.practical.PracticalSamples.volumes;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.offset;

import agro.dose.ProductPerArea;
import agro.report.InputProblem;
import agro.units.AreaUnit;
import agro.units.LandUnit;
import agro.units.QuantityStyle;
import agro.units.VolumePerArea;
import agro.working.TextLanguage;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class ClassCalibrationTest {

  private static final PoolingRules RULES = PoolingRules.STANDARD;
  private static final VolumePerArea TARGET = new VolumePerArea(300);

  private static List<String> names(List<GroupFinding> findings) {
    return findings.stream().map(GroupFinding::group).toList();
  }

  /** A page on one line, with spaces for all that is blank. */
  private static String plain(String text) {
    return text.replaceAll("[\\s\u00a0]+", " ");
  }

  /** What lies behind the invented class is written in class-calibrations-truth.csv. */
  @Test
  void findsWhoIsOffInTheDemonstration() {
    var found = demo().pooled(RULES);
    assertThat(found.benchmark()).isEqualTo(CalibrationBenchmark.TARGET);
    assertThat(names(found.offTolerance())).containsExactly("4", "9", "13", "18", "20");
    assertThat(names(found.outliers())).containsExactly("9", "20");
    assertThat(found.group("13").oddNozzles()).containsExactly("3");
    assertThat(found.group("4").verdict()).isEqualTo(GroupVerdict.LOW);
    assertThat(found.group("18").verdict()).isEqualTo(GroupVerdict.HIGH);
    assertThat(found.findings())
        .hasSize(24)
        .allMatch(one -> one.relativeHalfWidth(0.95).isPresent());
  }

  @ParameterizedTest
  @CsvSource({
    "2, SPACES_FOR_NOZZLES",
    "6, ACRE_FOR_HECTARE",
    "11, ONE_NOZZLE_FOR_ALL",
    "16, TEN_THOUSAND_FOR_600",
    "22, CATCH_FOR_MINUTE"
  })
  void findsTheSlipsOfTheDemonstration(String group, ArithmeticSlip slip) {
    var found = demo().pooled(RULES);
    assertThat(names(found.arithmeticDiffers())).containsExactly("2", "6", "11", "16", "22");
    var own = found.group(group).ownArithmetic().orElseThrow();
    assertThat(own.likelySlips().get(0)).isEqualTo(slip);
    assertThat(found.group(group).timesIntendedByOwnFigure().orElseThrow())
        .isCloseTo(1 / own.timesOurs(), offset(1e-12));
  }

  /** The mean over the demonstration, from the readings by litres and square metres a second. */
  @Test
  void theMeanAgreesWithAnotherRoute() {
    double sum = 0;
    for (var group : demo().groups()) {
      var runs = (GroupReadings.TimedRuns) group.pace();
      var caught = (GroupReadings.NozzleCatches) group.output();
      double seconds =
          runs.times().readings().stream().mapToDouble(t -> t.seconds()).average().orElseThrow();
      double litres =
          caught.catches().stream().mapToDouble(one -> one.volumes().get(0).litres()).sum();
      sum += 10_000 * litres / 30 / (25 / seconds * 2.0);
    }
    assertThat(demo().pooled(RULES).all().mean().litresPerHectare())
        .isCloseTo(sum / 24, offset(1e-9));
  }

  @Test
  void theDoseFollowsTheVolume() {
    var rules = RULES.withTarget(TARGET).mixedForDose(ProductPerArea.parse("0.5-0.6 L/ha"));
    var found = volumes(300, 330, 240).pooled(rules);
    var high = found.group("2");
    assertThat(high.timesIntended()).isCloseTo(1.1, offset(1e-12));
    assertThat(high.plotDose().orElseThrow().perHectare().lowNumber())
        .isCloseTo(0.55, offset(1e-12));
    assertThat(high.plotDose().orElseThrow().perHectare().highNumber())
        .isCloseTo(0.66, offset(1e-12));
    assertThat(found.group("3").departure()).isCloseTo(-0.2, offset(1e-12));
    assertThat(found.workingOf("2").toText()).contains("500–600 mL/ha × 1.1", "550–660 mL/ha");
    assertThat(found.presentation().toText()).contains("The product label and local law");
  }

  /** Exactly at the tolerance is within it; the smallest step beyond is off. */
  @Test
  void theToleranceIncludesItsEdge() {
    var found = volumes(330, 270, 330.01, 269.99).pooled(RULES.withTarget(TARGET));
    assertThat(names(found.offTolerance())).containsExactly("3", "4");
    var strict =
        volumes(314, 316).pooled(RULES.withTarget(TARGET).within(VolumeTolerance.FIVE_PER_CENT));
    assertThat(names(strict.offTolerance())).containsExactly("2");
  }

  @Test
  void comparesWithTargetMeanOrMedian() {
    var class5 = volumes(290, 300, 310, 305, 600);
    assertThat(class5.pooled(RULES).benchmark()).isEqualTo(CalibrationBenchmark.MEAN);
    var mean = class5.pooled(RULES.against(CalibrationBenchmark.MEAN));
    assertThat(mean.findings().get(0).compared().litresPerHectare()).isCloseTo(361, offset(1e-9));
    assertThat(names(mean.offTolerance())).hasSize(5);
    var median = class5.pooled(RULES.against(CalibrationBenchmark.MEDIAN));
    assertThat(names(median.offTolerance())).containsExactly("5");
    assertThat(names(median.outliers())).containsExactly("5");
    assertThat(median.withoutOutliers().groups()).isEqualTo(4);
    assertThat(plain(median.presentation().toText()))
        .contains("The outliers move the mean by +19.8");
    assertThatThrownBy(() -> class5.pooled(RULES.against(CalibrationBenchmark.TARGET)))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("group 1 states no target");
  }

  @Test
  void eachGroupHasItsOwnTarget() {
    var found =
        read("""
                group,course,time,width,output,catch_time,target
                a,25 m,25 s,1 m,450 mL,30 s,150 L/ha
                b,25 m,25 s,1 m,450 mL,30 s,200 L/ha
                """)
            .pooled(RULES);
    assertThat(found.commonTarget()).isEmpty();
    assertThat(found.group("a").verdict()).isEqualTo(GroupVerdict.WITHIN);
    assertThat(found.group("b").departure()).isCloseTo(-0.25, offset(1e-12));
  }

  @Test
  void smallAndEqualClassesSayThatNoOutlierRuleWasUsed() {
    for (var readings : List.of(volumes(300, 310, 900), volumes(300, 300, 300, 300, 900))) {
      var found = readings.pooled(RULES);
      assertThat(found.outliers()).isEmpty();
      assertThat(found.presentation().toText()).contains("was not used");
    }
    var one = volumes(300).pooled(RULES);
    assertThat(one.presentation().toText()).contains("mean of the class", "300 L/ha");
    assertThat(one.pooling().steps()).isNotEmpty();
  }

  @Test
  void aClassThatIsOffAsAWholeIsTold() {
    var found = volumes(340, 345, 350, 355, 342).pooled(RULES.withTarget(TARGET));
    assertThat(plain(found.presentation().toText()))
        .contains("The class as a whole is +15.5 % away from the target");
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.99, 1.0, 1.01})
  void ownFiguresThatDifferByRoundingAgree(double times) {
    var own = OwnArithmetic.of(lances(), TARGET.times(times), TARGET, 0.02);
    assertThat(own.agrees()).isTrue();
    assertThat(own.likelySlips()).isEmpty();
  }

  private static GroupReadings lances() {
    return volumes(300).groups().get(0);
  }

  /** Every slip that a group can make is found from its own answer, also when it was rounded. */
  @ParameterizedTest
  @EnumSource(ArithmeticSlip.class)
  void everySlipIsRecognisedFromItsOwnAnswer(ArithmeticSlip slip) {
    var groups = new ArrayList<>(demo().groups());
    groups.add(
        read("""
                group,course,time,width,output,catch_time
                r,25 m,25 s; 30 s,1 m,400 mL; 500 mL; 480 mL,30 s
                """)
            .groups()
            .get(0));
    int possible = 0;
    for (var group : groups) {
      var ratio = slip.ratioFor(group);
      if (ratio.isPresent() && Math.abs(ratio.get() - 1) > 0.05) {
        possible++;
        var own = OwnArithmetic.of(group, TARGET.times(1.004 * ratio.get()), TARGET, 0.02);
        assertThat(own.agrees()).isFalse();
        assertThat(own.likelySlips()).as(group.group()).contains(slip);
      }
    }
    assertThat(possible).isPositive();
  }

  @Test
  void aFigureThatNoSlipExplainsSaysSo() {
    var own = OwnArithmetic.of(lances(), TARGET.times(1.27), TARGET, 0.02);
    assertThat(own.agrees()).isFalse();
    assertThat(own.likelySlips()).isEmpty();
  }

  @Test
  void printsInTheTeachersUnits() {
    var us = demo().pooled(RULES.printedIn(QuantityStyle.US));
    assertThat(us.presentation().toText()).contains("32.23 gal (US)/ac");
    assertThat(us.workingOf("2").toText()).contains("5940 ×", "mi/h", "in)");
    var acre = demo().pooled(RULES.printedIn(QuantityStyle.METRIC.per(AreaUnit.ACRE)));
    assertThat(acre.toString()).contains("122 L/ac");
    var bigha =
        demo().pooled(RULES.printedIn(QuantityStyle.METRIC.per(LandUnit.BIGHA_WEST_BENGAL)));
    assertThat(bigha.table().columns().get(1).unit()).isEqualTo("L/bigha (West Bengal)");
  }

  @Test
  void germanPagesSpeakGerman() {
    var found = demo().pooled(RULES.mixedForDose(ProductPerArea.parse("500 mL/ha")));
    var german = found.in(TextLanguage.GERMAN);
    var page = german.presentation().toText();
    var text = page.substring(0, page.indexOf("Quellen")) + german.workingOf("13").toText();
    assertThat(text)
        .contains(
            "301,4 L/ha",
            "Ausreißer",
            "übliche Praxis, ohne Quelle",
            "Gebrauchsanleitung",
            "13: 3");
    assertThat(text)
        .doesNotContainPattern("(?i)\\b(the|group|mean|label|source|not known|within)\\b")
        .doesNotContainPattern("[0-9]\\.[0-9]+ (L|mL|s|m|km)\\b");
    assertThat(german.findings()).isEqualTo(found.findings());
  }

  @Test
  void workingsCarryTheirSteps() {
    var steps = demo().pooled(RULES).workingOf("6").toText();
    assertThat(steps).contains("600 × 3.58 L/min / (3.8082 km/h × 2 m)", "282.02 L/ha");
    assertThat(steps).contains("volume per acre written as per hectare");
    assertThat(demo().pooled(RULES).pooling().toText()).contains("301.44 L/ha", "9 (5.8)");
    assertThatThrownBy(() -> demo().pooled(RULES).workingOf("99"))
        .hasMessageContaining("no group \"99\"");
  }

  @Test
  void refillsAndStatedSpeedsHaveTheirSteps() {
    var found =
        read("""
                group,course,speed,width,output,catch_time,refill,own_result
                a,25 m,,1 m,,,375 mL,150 L/ha
                b,,3.6 km/h,1 m,450 mL,30 s,,
                """)
            .pooled(RULES);
    assertThat(found.workingOf("a").toText()).contains("0.375 L / 25 m²", "150 L/ha");
    assertThat(found.workingOf("b").toText()).contains("0.45 L / 30 s", "nothing was repeated");
  }

  @Test
  void rulesRefuseWhatJudgesNothing() {
    assertThatThrownBy(() -> VolumeTolerance.of(10)).hasMessageContaining("write 10 % as 0.10");
    assertThatThrownBy(() -> RULES.withConfidence(95)).hasMessageContaining("0.95");
    assertThatThrownBy(() -> RULES.withOutlierLimit(0)).hasMessageContaining("3.5");
    assertThatThrownBy(() -> RULES.withArithmeticTolerance(0.5)).hasMessageContaining("0.02");
    assertThatThrownBy(() -> RULES.withTarget(new VolumePerArea(0)))
        .hasMessageContaining("above zero");
    assertThat(VolumeTolerance.TEN_PER_CENT.isCommonPractice()).isTrue();
    assertThat(VolumeTolerance.of(0.08).isCommonPractice()).isTrue();
    assertThat(VolumeTolerance.FIVE_PER_CENT.isCommonPractice()).isFalse();
  }
}
