package agro.trial.efficacy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.offset;

import agro.ReferenceTable;
import agro.report.InputProblem;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.util.List;
import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class EfficacyFormulaTest {

  private static final Map<String, EfficacyFormula> COLUMNS =
      Map.of(
          "abbott", EfficacyFormula.ABBOTT,
          "schneider_orelli", EfficacyFormula.SCHNEIDER_ORELLI,
          "henderson_tilton", EfficacyFormula.HENDERSON_TILTON,
          "sun_shepard", EfficacyFormula.SUN_SHEPARD);

  static List<NamedCsvRecord> published() {
    return ReferenceTable.read(EfficacyFormulaTest.class, "formulas.csv");
  }

  /** Sources and tolerance: formulas.csv. */
  @ParameterizedTest
  @MethodSource("published")
  void agreesWithTheReference(NamedCsvRecord row) {
    COLUMNS.forEach(
        (column, formula) -> {
          if (!row.getField(column).isEmpty()) {
            assertThat(percent(formula, row))
                .as(formula.title())
                .isCloseTo(ReferenceTable.number(row, column), offset(1e-9));
          }
        });
  }

  private static double percent(EfficacyFormula formula, NamedCsvRecord row) {
    return row.getField("ta").isEmpty()
        ? formula.percent(
            new MortalityPair(
                ReferenceTable.number(row, "treated_dead"),
                ReferenceTable.number(row, "control_dead")))
        : formula.percent(
            LiveCounts.of(
                ReferenceTable.number(row, "tb"),
                ReferenceTable.number(row, "ta"),
                ReferenceTable.number(row, "cb"),
                ReferenceTable.number(row, "ca")));
  }

  @Property(seed = "8")
  void sunShepardIsHendersonTilton(
      @ForAll @DoubleRange(min = 0.1, max = 1e4) double tb,
      @ForAll @DoubleRange(min = 0, max = 1e4) double ta,
      @ForAll @DoubleRange(min = 0.1, max = 1e4) double cb,
      @ForAll @DoubleRange(min = 0.1, max = 1e4) double ca) {
    var counts = LiveCounts.of(tb, ta, cb, ca);
    double expected = EfficacyFormula.HENDERSON_TILTON.percent(counts);
    double scale = 100 + Math.abs(100 * cb / ca) + Math.abs(expected);
    assertThat(EfficacyFormula.SUN_SHEPARD.percent(counts))
        .isCloseTo(expected, offset(1e-9 * scale * Math.max(1, ca / cb)));
  }

  @Property(seed = "8")
  void hendersonTiltonIsAbbottWhereBothBeganAlike(
      @ForAll @DoubleRange(min = 0.1, max = 1e4) double before,
      @ForAll @DoubleRange(min = 0, max = 1e4) double ta,
      @ForAll @DoubleRange(min = 0.1, max = 1e4) double ca) {
    double abbott = EfficacyFormula.ABBOTT.percent(LiveCounts.after(ta, ca));
    assertThat(EfficacyFormula.HENDERSON_TILTON.percent(LiveCounts.of(before, ta, before, ca)))
        .isCloseTo(abbott, offset(1e-9 * (100 + Math.abs(abbott))));
  }

  @Property(seed = "8")
  void schneiderOrelliIsAbbottOnMortality(
      @ForAll @DoubleRange(min = 0, max = 100) double treated,
      @ForAll @DoubleRange(min = 0, max = 99.9) double control) {
    var pair = new MortalityPair(treated, control);
    double abbott = EfficacyFormula.ABBOTT.percent(pair);
    assertThat(EfficacyFormula.SCHNEIDER_ORELLI.percent(pair))
        .isCloseTo(abbott, offset(1e-9 * (100 + Math.abs(abbott))));
    assertThat(EfficacyFormula.ABBOTT.percent(LiveCounts.after(100 - treated, 100 - control)))
        .isEqualTo(abbott);
  }

  @Test
  void casesWithoutAValueAreASentence() {
    assertThatThrownBy(() -> EfficacyFormula.ABBOTT.percent(LiveCounts.after(3, 0)))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("no live pest on the control after");
    for (var formula : List.of(EfficacyFormula.HENDERSON_TILTON, EfficacyFormula.SUN_SHEPARD)) {
      assertThatThrownBy(() -> formula.percent(LiveCounts.of(0, 3, 10, 10)))
          .hasMessageContaining("no live pest on the treated before");
      assertThatThrownBy(() -> formula.percent(LiveCounts.of(10, 3, 0, 10)))
          .hasMessageContaining("no live pest on the control before");
      assertThatThrownBy(() -> formula.percent(LiveCounts.of(10, 3, 10, 0)))
          .hasMessageContaining("no live pest on the control after");
      assertThatThrownBy(() -> formula.percent(LiveCounts.after(10, 3)))
          .hasMessageContaining("no counts before the treatment");
      assertThatThrownBy(() -> formula.percent(new MortalityPair(10, 3)))
          .hasMessageContaining("live counts");
    }
    for (var formula : List.of(EfficacyFormula.ABBOTT, EfficacyFormula.SCHNEIDER_ORELLI)) {
      assertThatThrownBy(() -> formula.percent(new MortalityPair(100, 100)))
          .hasMessageContaining("control mortality of 100 %");
    }
    assertThatThrownBy(() -> EfficacyFormula.SCHNEIDER_ORELLI.percent(LiveCounts.after(1, 2)))
        .hasMessageContaining("mortality");
  }

  @Test
  void inputThatCannotBeIsRefused() {
    assertThatThrownBy(() -> MortalityPair.ofDead(12, 10, 0, 10))
        .hasMessageContaining("12.0 dead of 10.0");
    assertThatThrownBy(() -> new MortalityPair(-1, 0)).isInstanceOf(InputProblem.class);
    assertThatThrownBy(() -> LiveCounts.after(Double.NaN, 1)).isInstanceOf(InputProblem.class);
    assertThat(MortalityPair.ofDead(5, 20, 0, 10)).isEqualTo(new MortalityPair(25, 0));
  }

  @Test
  void stepsAreThoseOfTheBlackboard() {
    assertThat(EfficacyFormula.SUN_SHEPARD.working(LiveCounts.of(150, 12, 160, 120)).toText())
        .contains("the control declines", "92 %", "-25 %", "89.3333 %");
    assertThat(EfficacyFormula.HENDERSON_TILTON.working(LiveCounts.of(280, 30, 300, 500)).toText())
        .contains("(1 − (30 · 300) / (280 · 500)) · 100", "93.5714 %", "Henderson");
    assertThat(EfficacyFormula.ABBOTT.working(LiveCounts.after(90, 60)).toText())
        .contains("-50 %", "kept below zero");
    assertThat(EfficacyFormula.ABBOTT.working(new MortalityPair(98, 50)).toText()).contains("96 %");
    assertThat(EfficacyFormula.SCHNEIDER_ORELLI.working(new MortalityPair(80, 15)).toText())
        .contains("65 %", "85 %", "76.4706 %");
  }
}
