package agro.trial.bioassay;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import agro.reading.DelimitedFormat;
import agro.reading.DelimitedText;
import agro.report.InputProblem;
import agro.report.ReadReport.Deed;
import agro.stats.glm.LinkFunction;
import agro.units.Area;
import agro.units.AreaUnit;
import agro.units.Mass;
import agro.units.MassPerArea;
import agro.units.MassPerAreaUnit;
import agro.units.MassUnit;
import java.util.List;
import org.junit.jupiter.api.Test;

class BioassayReaderTest {

  private static final DoseAxis VIAL =
      new DoseAxis.VialResidue(MassUnit.MICROGRAM, Area.of(40, AreaUnit.SQUARE_CENTIMETRE));

  private static final String BY_CONDITION =
      """
      dose,dead,moribund,alive,series,day
      0,0,1,19,valley,1
      0.5,4,3,13,valley,1
      1,9,4,7,valley,1
      2,16,3,1,valley,1
      4,0,0,0,valley,1
      """;

  private static BioassayData read(String text, EndPoint endPoint) {
    return BioassayReader.of(
        DelimitedText.parse("vials.csv", text, DelimitedFormat.COMMA, List.of("dose")),
        "vials",
        VIAL,
        endPoint);
  }

  @Test
  void moribundAnimalsCountAsAsked() {
    assertThat(read(BY_CONDITION, EndPoint.DEAD).groups())
        .extracting(DoseGroup::responded)
        .containsExactly(0, 4, 9, 16);
    var both = read(BY_CONDITION, EndPoint.DEAD_OR_MORIBUND);
    assertThat(both.groups()).extracting(DoseGroup::responded).containsExactly(1, 7, 13, 19);
    assertThat(both.report().entries(Deed.DROPPED)).hasSize(1);
    assertThat(both.report().rowsRead()).isEqualTo(5);
    assertThat(both.series()).containsExactly("valley");
  }

  @Test
  void theEndPointHasToBeStated() {
    assertThatThrownBy(() -> read(BY_CONDITION, null))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("DEAD or DEAD_OR_MORIBUND");
    assertThatThrownBy(() -> read(BY_CONDITION, EndPoint.AS_COUNTED))
        .hasMessageContaining("moribund");
  }

  @Test
  void countsThatCannotBeNameTheirLine() {
    assertThatThrownBy(() -> read("dose,n,responded\n1,20,3\n2,20,22\n", EndPoint.AS_COUNTED))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("vials.csv")
        .hasMessageContaining("22 responding of 20");
    assertThatThrownBy(() -> read("dose,dead\n1,20\n", EndPoint.DEAD))
        .hasMessageContaining("dead, moribund and alive; or n with responded");
    assertThatThrownBy(() -> read("dose,n,responded\n1,20,\n", EndPoint.DEAD))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("responded");
  }

  @Test
  void axesKnowTheirUnits() {
    assertThat(VIAL.print(8)).isEqualTo("8 µg/vial (0.2 µg/cm²)");
    assertThat(VIAL.words()).contains("40 cm²");
    var body = DoseAxis.BodyDose.microgramsPerGram();
    assertThat(body.at(Mass.of(0.5, MassUnit.MICROGRAM), Mass.of(20, MassUnit.MILLIGRAM)))
        .isCloseTo(25, within(1e-12));
    var share = new DoseAxis.FieldRateShare(MassPerArea.of(50, MassPerAreaUnit.GRAM_PER_HECTARE));
    assertThat(share.print(0.25)).isEqualTo("0.25 × field rate");
    assertThatThrownBy(() -> new DoseAxis.VialResidue(MassUnit.GRAM, Area.of(0, AreaUnit.HECTARE)))
        .isInstanceOf(InputProblem.class);
  }

  @Test
  void thePageSaysWhatItRestsOn() {
    var fit = DoseResponse.withDefaults().fit(read(BY_CONDITION, EndPoint.DEAD_OR_MORIBUND));
    var text = fit.presentation().toText();
    assertThat(text)
        .contains("dead or moribund")
        .contains("probit on log10 dose")
        .contains("expected")
        .contains("Fieller")
        .contains("estimated in the model")
        .contains("says nothing about a rate in")
        .contains("The product label and local law come first")
        .doesNotContain("NaN");
    assertThat(fit.presentation().toHtml()).contains("<table");
    assertThat(fit.working().toText()).contains("g = t² h Var(b) / b²");
    assertThat(fit.sentence()).startsWith("LD50 = ").contains("µg/vial");
    assertThat(fit.curve(50))
        .hasSize(50)
        .allSatisfy(
            each -> assertThat(each.share()).isBetween(each.low() - 1e-12, each.high() + 1e-12));
  }

  @Test
  void abbottTellsItsFault() {
    var fit =
        DoseResponse.withDefaults().with(NaturalMortality.abbott()).fit(Assays.published("bugres"));
    assertThat(fit.naturalMortality()).isCloseTo(0.05, within(1e-15));
    assertThat(fit.remarks()).anyMatch(each -> each.contains("too narrow"));
    var model =
        DoseResponse.withDefaults()
            .with(NaturalMortality.inModel())
            .fit(Assays.published("bugres"));
    assertThat(fit.slopeStandardError()).isLessThan(model.slopeStandardError());
  }

  @Test
  void theDiscriminatingDoseFollowsItsRule() {
    var fit = DoseResponse.withDefaults().fit(Assays.published("rotenone"));
    var twice = DiscriminatingDose.of(fit, DiscriminatingDose.Rule.TWICE_LD99);
    assertThat(twice.dose()).isCloseTo(2 * 17.278072315, within(1e-8));
    assertThat(twice.isBeyondTestedDoses()).isTrue();
    assertThat(twice.presentation().toText()).contains("rests on the line alone");
    assertThat(DiscriminatingDose.of(fit, DiscriminatingDose.Rule.UPPER_LIMIT_OF_LD99).dose())
        .isEqualTo(fit.lethalDose(99).limits().high());
  }

  /** The expected error at the design agrees with the fit of the expected numbers. */
  @Test
  void aDesignForetellsItsPrecision() {
    var design = BioassayDesign.spaced(Assays.AXIS, LinkFunction.LOGIT, 5, 4, 5, 10, 90);
    assertThat(design.doses().get(2)).isCloseTo(5, within(1e-12));
    int animals = design.animalsFor(50, 1.2, 0.95);
    double t = Deviates.normal(0.95);
    assertThat(t * design.standardError(50, animals)).isLessThanOrEqualTo(Math.log10(1.2));
    assertThat(t * design.standardError(50, animals - 1)).isGreaterThan(Math.log10(1.2));
    var groups =
        design.doses().stream()
            .map(
                dose ->
                    DoseGroup.of(
                        dose,
                        100_000,
                        (int)
                            Math.round(
                                100_000 * LinkFunction.LOGIT.mean(4 * Math.log10(dose / 5)))))
            .toList();
    var fit = DoseResponse.withDefaults().with(LinkFunction.LOGIT).fit(Assays.of(groups));
    assertThat(design.standardError(90, 100_000))
        .isCloseTo(fit.lethalDose(90).placeStandardError(), within(1e-6));
  }
}
