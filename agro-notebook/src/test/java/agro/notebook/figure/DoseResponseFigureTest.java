package agro.notebook.figure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import agro.report.InputProblem;
import agro.trial.bioassay.BioassayData;
import agro.trial.bioassay.DoseAxis;
import agro.trial.bioassay.DoseGroup;
import agro.trial.bioassay.DoseResponse;
import agro.trial.bioassay.DoseScale;
import agro.trial.bioassay.EndPoint;
import agro.trial.bioassay.NaturalMortality;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class DoseResponseFigureTest {

  private static final DoseAxis AXIS = new DoseAxis.NamedDose("concentration", "mg/L");

  private static BioassayData assay(String title, DoseGroup... groups) {
    return BioassayData.of(title, AXIS, EndPoint.DEAD_OR_MORIBUND, List.of(groups));
  }

  /** Rotenone on chrysanthemum aphids (Martin 1942); the second series is invented. */
  private static final BioassayData ROTENONE =
      assay(
          "rotenone",
          DoseGroup.of(10.2, 50, 44),
          DoseGroup.of(7.7, 49, 42),
          DoseGroup.of(5.1, 46, 24),
          DoseGroup.of(3.8, 48, 16),
          DoseGroup.of(2.6, 50, 6));

  private static final BioassayData FLAT =
      assay(
          "flat",
          DoseGroup.of(1, 8, 2),
          DoseGroup.of(2, 8, 5),
          DoseGroup.of(4, 8, 3),
          DoseGroup.of(8, 8, 5));

  private static BioassayData strains() {
    var groups = new ArrayList<DoseGroup>();
    int[][] killed = {{1, 2}, {4, 1}, {9, 3}, {17, 8}, {20, 15}, {20, 19}};
    double[] doses = {0, 1, 2, 4, 8, 16};
    for (int i = 0; i < doses.length; i++) {
      groups.add(DoseGroup.of(doses[i], 20, killed[i][0]).inSeries("soft"));
      groups.add(DoseGroup.of(doses[i], 20, killed[i][1]).inSeries("hard"));
      groups.add(DoseGroup.of(doses[i], 10, killed[i][1] / 2).inSeries("hard"));
    }
    return BioassayData.of("two strains", AXIS, EndPoint.DEAD, groups);
  }

  @Test
  void oneCurveWithItsLimitsOnBothAxes() {
    var figure = DoseResponseFigure.of(DoseResponse.withDefaults().fit(ROTENONE));
    assertThat(figure.alternative())
        .contains("log axis")
        .contains("2.6 to 10.2 mg/L, from 12.0 % to 88.0 % responding")
        .contains("LD50 4.845 mg/L, limits 4.364 to 5.354 mg/L")
        .contains("LD90");
    assertThat(figure.caption())
        .contains("dead or moribund")
        .contains("probit on log10 dose")
        .contains("Fieller, expected information")
        .contains("nothing about a rate in the field");
    assertThat(FigureSamples.cell(figure, 0, "Lower limit")).isEqualTo("4.5");
    assertThat(FigureSamples.cell(figure, 0, "Upper limit")).isEqualTo("24.3");
    assertThat(figure.data().notes()).hasSize(2);
    var picture = FigureSamples.picture(figure);
    assertThat(FigureSamples.holds(picture, FigureLook.PALE_BLUE)).isTrue();
    assertThat(FigureSamples.holds(picture, FigureLook.BLUE)).isTrue();
    assertThat(FigureSamples.holds(picture, FigureLook.VERMILION)).isFalse();
  }

  @Test
  void severalSeriesWithNamesControlsAndNaturalMortality() {
    var comparison = DoseResponse.withDefaults().compare(strains());
    var figure = DoseResponseFigure.of(comparison, 50, 90);
    assertThat(figure.alternative())
        .contains("2 fitted curves", "Soft: 1 to 16 mg/L", "Hard: ", "natural mortality");
    assertThat(figure.data().rows()).hasSize(12);
    assertThat(FigureSamples.cell(figure, 6, "Animals")).isEqualTo("30");
    var picture = FigureSamples.picture(figure);
    assertThat(FigureSamples.holds(picture, FigureLook.BLUE)).isTrue();
    assertThat(FigureSamples.holds(picture, FigureLook.VERMILION)).isTrue();
    assertThat(DoseResponseFigure.of(comparison).data().notes()).hasSize(2);
  }

  @Test
  void limitsThatDoNotExistAreSaidSo() {
    var figure = DoseResponseFigure.of(DoseResponse.withDefaults().fit(FLAT));
    assertThat(figure.alternative()).contains("unbounded").doesNotContain("NaN", "Infinity", "∞");
    assertThat(figure.data().toText()).doesNotContain("NaN", "∞");
    FigureSamples.picture(figure);
  }

  @Test
  void plainDosesAndCorrectedCounts() {
    var plain = DoseResponse.withDefaults().with(DoseScale.PLAIN).fit(ROTENONE);
    assertThat(DoseResponseFigure.of(plain).alternative()).doesNotContain("log axis");
    FigureSamples.picture(DoseResponseFigure.of(plain));
    var ways = DoseResponse.withDefaults();
    var data = strains().ofSeries("hard");
    var abbott = ways.with(NaturalMortality.abbott()).fit(data);
    var figure = DoseResponseFigure.of(abbott);
    assertThat(figure.caption()).contains("natural mortality put back");
    double c = abbott.naturalMortality();
    assertThat(Double.parseDouble(FigureSamples.cell(figure, 1, "Curve")) / 100)
        .isCloseTo(c + (1 - c) * abbott.responseAt(1), within(6e-4));
    FigureSamples.picture(figure);
  }

  @Test
  void levelsOutOfRangeAreRefused() {
    var fit = DoseResponse.withDefaults().fit(ROTENONE);
    assertThatThrownBy(() -> DoseResponseFigure.of(fit, 100)).isInstanceOf(InputProblem.class);
    assertThat(DoseResponseFigure.of(fit, new double[0]).data().notes()).isEmpty();
  }

  @Test
  void ratiosBesideALineAtOne() {
    var comparison = DoseResponse.withDefaults().compare(strains());
    var figure = DoseRatioFigure.of(comparison, "soft", 50, 90);
    assertThat(figure.alternative()).contains("at LD50 of hard to soft").contains("not 1");
    assertThat(figure.data().rows()).hasSize(2);
    FigureSamples.picture(figure);
    FigureSamples.picture(DoseRatioFigure.of(List.of(comparison.relativePotency("hard", "soft"))));
    assertThatThrownBy(() -> DoseRatioFigure.of(List.of()))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("no ratio");
  }

  @Test
  void ticksAreRoundAndFit() {
    assertThat(DoseTicks.ofLogarithm(-1.1, 1.1))
        .hasSize(7)
        .startsWith(0.1, 0.2)
        .allSatisfy(tick -> assertThat(DoseTicks.words(tick)).matches("[0-9]*[.]?[125]0*"));
    assertThat(DoseTicks.ofLogarithm(Math.log10(2.5), Math.log10(10.5)))
        .containsExactly(3.0, 4.0, 5.0, 6.0, 7.0, 8.0, 9.0, 10.0);
    assertThat(DoseTicks.ofLogarithm(-6, 9)).hasSizeBetween(8, 16);
    assertThat(DoseTicks.ofLogarithm(0, 0.1)).hasSizeGreaterThan(3);
  }
}
