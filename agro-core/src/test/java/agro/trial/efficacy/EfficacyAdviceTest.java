package agro.trial.efficacy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.offset;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

class EfficacyAdviceTest {

  private static final LocalDate TREATED = LocalDate.of(2026, 6, 1);

  private static EfficacyData trial(double beforeA, double beforeC, double afterA, double afterC) {
    var plots = new ArrayList<PlotCounts>();
    for (int block = 1; block <= 4; block++) {
      plots.add(PlotCounts.of("" + block, "A", beforeA + block, afterA));
      plots.add(PlotCounts.of("" + block, "control", beforeC + block * 1.1, afterC));
    }
    return EfficacyData.ofCounts("control", plots);
  }

  @Test
  void theDataSpeakForAFormula() {
    assertThat(EfficacyAdvice.of(trial(40, 40, 5, 60)).formula()).isEqualTo(EfficacyFormula.ABBOTT);
    var uneven = EfficacyAdvice.of(trial(80, 40, 5, 20));
    assertThat(uneven.formula()).isEqualTo(EfficacyFormula.HENDERSON_TILTON);
    assertThat(uneven.reason()).contains("declined by 53 %", "did not stand evenly");
    assertThat(uneven.controlChangePercent().orElseThrow())
        .isCloseTo(100 * (20 / 42.75 - 1), offset(1e-9));
    assertThat(EfficacyAdvice.of(trial(40, 40, 5, 60)).reason()).contains("grew by 40 %");
    assertThat(
            EfficacyAdvice.of(
                    EfficacyData.ofMortality(
                        "control",
                        List.of(
                            PlotMortality.of("1", "A", 9, 10),
                            PlotMortality.of("1", "control", 1, 10))))
                .formula())
        .isEqualTo(EfficacyFormula.SCHNEIDER_ORELLI);
    var after =
        EfficacyData.ofCounts(
            "control", List.of(PlotCounts.after("1", "A", 2), PlotCounts.after("1", "control", 9)));
    var advice = EfficacyAdvice.of(after);
    assertThat(advice.formula()).isEqualTo(EfficacyFormula.ABBOTT);
    assertThat(advice.fits())
        .filteredOn(EfficacyAdvice.FormulaFit::fits)
        .extracting(EfficacyAdvice.FormulaFit::formula)
        .containsExactly(EfficacyFormula.ABBOTT);
    assertThat(advice.presentation().toText()).contains("presumes that the");
  }

  @Test
  void evennessIsTestedInBlocks() {
    // Treatment differs by 4 in every block but one, where it is 2.
    var plots = new ArrayList<PlotCounts>();
    double[] a = {10, 20, 30, 40};
    double[] c = {14, 24, 34, 42};
    for (int i = 0; i < a.length; i++) {
      plots.add(PlotCounts.of("" + i, "A", a[i], 1));
      plots.add(PlotCounts.of("" + i, "control", c[i], 1));
    }
    var evenness = EfficacyAdvice.of(EfficacyData.ofCounts("control", plots)).evenness();
    // Paired t = 7 on 3 degrees of freedom: two-sided P = 0.0059863 (base R, 2*pt(-7,3)).
    assertThat(evenness.orElseThrow().p().orElseThrow()).isCloseTo(0.0059863, offset(1e-6));
    assertThat(evenness.orElseThrow().isEven()).isFalse();
  }

  private static EfficacyCourse course(Map<Integer, Double> afterByDay) {
    var dates = new TreeMap<LocalDate, EfficacyData>();
    afterByDay.forEach((day, after) -> dates.put(TREATED.plusDays(day), trial(40, 40, after, 50)));
    return EfficacyCourse.of(
        TREATED, dates, EfficacyEvaluation.withDefaults().with(EfficacyFormula.ABBOTT));
  }

  @Test
  void lastDayAboveALevel() {
    var course = course(Map.of(3, 5.0, 7, 5.0, 14, 15.0, 21, 30.0));
    var last = course.lastDayAbove("A", 80);
    assertThat(last.end()).isEqualTo(LastDayAbove.End.FELL_BELOW);
    assertThat(last.daysAfter().orElseThrow()).isCloseTo(10.5, offset(1e-9));
    assertThat(last.sentence()).contains("until day 10.5, on the straight line between day 7");
    assertThat(course.lastDayAbove("A", 95).end()).isEqualTo(LastDayAbove.End.NEVER_ABOVE);
    assertThat(course.lastDayAbove("A", 30).end()).isEqualTo(LastDayAbove.End.STILL_ABOVE);
    assertThat(course.lastDayAbove("A", 90).daysAfter().orElseThrow()).isEqualTo(7);
    var dipped = course(Map.of(3, 5.0, 7, 25.0, 14, 5.0)).lastDayAbove("A", 80);
    assertThat(dipped.sentence()).contains("at least, day 14", "In between it was below");
  }

  @Test
  void aDateBeforeTheTreatmentIsRefused() {
    assertThatThrownBy(() -> course(Map.of(-1, 5.0))).hasMessageContaining("on or after the day");
    assertThat(course(Map.of(3, 5.0, 7, 8.0)).presentation().toText())
        .contains("2026-06-04", "90.0", "84.0");
  }
}
