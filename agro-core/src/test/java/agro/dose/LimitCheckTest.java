package agro.dose;

import static org.assertj.core.api.Assertions.assertThat;

import agro.units.Length;
import agro.working.Caution;
import java.time.Duration;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LimitCheckTest {

  private static final DosePerArea HALF = ProductPerArea.parse("0.5 L/ha");

  private static LabelLimits label(LabelLimit... limits) {
    var label = LabelLimits.of("Product A on an invented crop");
    for (var limit : limits) {
      label = label.with(limit);
    }
    return label;
  }

  private static DoseFinding finding(LimitCheckResult result, String rule) {
    return result.findings().stream()
        .filter(finding -> finding.rule().equals(rule))
        .findFirst()
        .orElseThrow();
  }

  private static LocalDate june(int day) {
    return LocalDate.of(2026, 6, day);
  }

  @ParameterizedTest
  @CsvSource({
    "0.5 L/ha, NOTE",
    "500 mL/ha, NOTE",
    "0.501 L/ha, ERROR",
    "0.4-0.5 L/ha, NOTE",
    "0.4-0.6 L/ha, ERROR",
    "202.3428 mL/acre, NOTE",
    "203 mL/acre, ERROR",
    "0.5 kg/ha, WARNING",
    "100 g ai/ha, WARNING"
  })
  void theMaximumOfOneApplication(String dose, Severity severity) {
    var planned = LabelRate.parse(dose);
    var limits = label(DoseLimit.maximum(HALF));

    var result = LimitCheck.check(limits, PlannedUse.of((DosePerArea) planned));

    assertThat(finding(result, "maximum dose per application").severity()).isEqualTo(severity);
  }

  @Test
  void aRangeOverTheMaximumAtItsHighEndIsNotCutDown() {
    var limits = label(DoseLimit.maximum(HALF));

    var result = LimitCheck.check(limits, PlannedUse.of(ProductPerArea.parse("0.4-0.6 L/ha")));

    assertThat(result.worst()).isEqualTo(Severity.ERROR);
    assertThat(result.findings().get(0).sentence())
        .isEqualTo(
            "The high end of 0.4 to 0.6 L/ha, over the maximum of 0.5 L/ha. At most 0.5 L/ha is left"
                + " for this application.");
  }

  @Test
  void productIsCheckedAgainstALimitInActiveIngredientThroughTheStrength() {
    var limits = label(DoseLimit.maximum(ActivePerArea.parse("100 g ai/ha")));
    var plan = PlannedUse.of(HALF);

    var without = finding(LimitCheck.check(limits, plan), "maximum dose per application");
    assertThat(without.severity()).isEqualTo(Severity.WARNING);
    assertThat(without.sentence()).contains("Not checked: the strength of the product");

    var exact = plan.withStrength(Strength.parse("200 g/L"));
    assertThat(finding(LimitCheck.check(limits, exact), "maximum dose per application").severity())
        .isEqualTo(Severity.NOTE);
    var strong = plan.withStrength(Strength.parse("250 g/L"));
    assertThat(finding(LimitCheck.check(limits, strong), "maximum dose per application").severity())
        .isEqualTo(Severity.ERROR);
    var noDensity = plan.withStrength(Strength.parse("20 % w/w"));
    assertThat(
            finding(LimitCheck.check(limits, noDensity), "maximum dose per application").sentence())
        .contains("Not checked: the density of the product");
    var asAcid = plan.withStrength(Strength.parse("200 g ae/L"));
    assertThat(finding(LimitCheck.check(limits, asAcid), "maximum dose per application").sentence())
        .contains("one is stated as acid equivalent and the other as active ingredient");
  }

  @Test
  void theSeasonAllowsOnlyWhatIsLeft() {
    var dose = ActivePerArea.parse("0.6 kg ai/ha");
    var season =
        label(DoseLimit.maximum(ActivePerArea.parse("1.5 kg ai/ha")).per(LimitScope.SEASON));
    var plan =
        PlannedUse.of(dose)
            .on(june(21))
            .after(PastUse.sameCrop(june(1), dose))
            .after(PastUse.sameCrop(june(11), dose));

    var third = finding(LimitCheck.check(season, plan), "maximum dose per season");

    assertThat(third.severity()).isEqualTo(Severity.ERROR);
    assertThat(third.sentence())
        .contains("brings the sum to 1.8 kg ai/ha")
        .contains("At most 0.3 kg ai/ha is left");
  }

  @Test
  void aFourthApplicationTheDayAfterIsRefusedTwiceOver() {
    var limits = label(ApplicationLimit.maximum(3), IntervalLimit.ofDays(10));
    var plan =
        PlannedUse.of(HALF)
            .after(PastUse.sameCrop(june(1), HALF))
            .after(PastUse.sameCrop(june(11), HALF))
            .after(PastUse.sameCrop(june(21), HALF));

    var nextDay = LimitCheck.check(limits, plan.on(june(22)));
    assertThat(nextDay.of(Severity.ERROR))
        .extracting(DoseFinding::rule)
        .containsExactlyInAnyOrder(
            "number of applications per crop", "interval between applications per crop");
    assertThat(finding(nextDay, "interval between applications per crop").sentence())
        .contains("1 day after", "first day allowed is 2026-07-01");

    var third =
        PlannedUse.of(HALF)
            .on(june(21))
            .after(PastUse.sameCrop(june(1), HALF))
            .after(PastUse.sameCrop(june(11), HALF));
    assertThat(LimitCheck.check(limits, third).of(Severity.ERROR)).isEmpty();
  }

  @Test
  void notRecordedIsNeverNoLimit() {
    var nothing = LimitCheck.check(label(), PlannedUse.of(HALF));

    assertThat(nothing.worst()).isEqualTo(Severity.WARNING);
    assertThat(nothing.of(Severity.WARNING))
        .extracting(DoseFinding::rule)
        .contains(
            "maximum dose per application",
            "maximum dose per season",
            "number of applications",
            "interval between applications",
            "pre-harvest interval",
            "re-entry interval",
            "buffer");
    var entered = label(DoseLimit.notRecorded(DoseBound.MAXIMUM));
    assertThat(
            finding(LimitCheck.check(entered, PlannedUse.of(HALF)), "maximum dose per application"))
        .satisfies(f -> assertThat(f.severity()).isEqualTo(Severity.WARNING))
        .satisfies(f -> assertThat(f.sentence()).startsWith("Not recorded"));
  }

  @Test
  void aLabelThatSaysNoneIsNoWarning() {
    var limits =
        label(
            DoseLimit.none(DoseBound.MAXIMUM),
            DoseLimit.none(DoseBound.MAXIMUM).per(LimitScope.SEASON),
            DoseLimit.none(DoseBound.MINIMUM),
            ApplicationLimit.none(),
            IntervalLimit.none(),
            PreHarvestLimit.none(),
            ReEntryLimit.none(),
            BufferLimit.none("surface water"));

    var result = LimitCheck.check(limits, PlannedUse.of(HALF));

    assertThat(result.worst()).isEqualTo(Severity.NOTE);
    assertThat(result.findings()).hasSize(8);
  }

  @Test
  void lessThanTheMinimumIsAWarning() {
    var limits = label(DoseLimit.minimum(HALF));

    var below = LimitCheck.check(limits, PlannedUse.of(ProductPerArea.parse("0.4-0.6 L/ha")));
    assertThat(finding(below, "minimum dose per application").severity())
        .isEqualTo(Severity.WARNING);
    var enough = LimitCheck.check(limits, PlannedUse.of(HALF));
    assertThat(finding(enough, "minimum dose per application").severity()).isEqualTo(Severity.NOTE);
  }

  @Test
  void aConditionHasToBeStatedToBeChecked() {
    var limits =
        label(
            DoseLimit.maximum(ProductPerArea.parse("0.3 L/ha")).when("small larvae"),
            DoseLimit.maximum(HALF));
    var plan = PlannedUse.of(ProductPerArea.parse("0.4 L/ha"));
    var rule = "maximum dose per application";

    assertThat(finding(LimitCheck.check(limits, plan), rule).sentence())
        .contains("does not say whether that holds");
    assertThat(LimitCheck.check(limits, plan.holding("Small larvae")).of(Severity.ERROR))
        .hasSize(1);
    assertThat(finding(LimitCheck.check(limits, plan.notHolding("small larvae")), rule).severity())
        .isEqualTo(Severity.NOTE);
  }

  @Test
  void scopesCountWhatBelongsToThem() {
    var limits =
        label(
            ApplicationLimit.maximum(1).per(LimitScope.GENERATION),
            ApplicationLimit.maximum(2).per(LimitScope.TWELVE_MONTHS),
            ApplicationLimit.maximum(3).per(LimitScope.GROUP),
            ApplicationLimit.maximum(2).per(LimitScope.ACTIVE_INGREDIENT));
    var plan =
        PlannedUse.of(HALF)
            .on(june(22))
            .after(PastUse.earlierCrop(LocalDate.of(2025, 6, 22), HALF))
            .after(PastUse.earlierCrop(LocalDate.of(2025, 9, 1), HALF))
            .after(PastUse.sameActiveIngredient(june(2), ActivePerArea.parse("50 g ai/ha")))
            .after(PastUse.sameGroup(june(12), ProductPerArea.parse("1 kg/ha")));

    var result = LimitCheck.check(limits, plan);

    assertThat(finding(result, "number of applications per generation of the pest").sentence())
        .isEqualTo("This is application 1 of at most 1.");
    assertThat(finding(result, "number of applications in twelve months").sentence())
        .as("a year ago to the day is out of the twelve months")
        .isEqualTo("This is application 2 of at most 2.");
    assertThat(finding(result, "number of applications per mode-of-action group").sentence())
        .isEqualTo("This is application 3 of at most 3.");
    assertThat(finding(result, "number of applications per active ingredient").sentence())
        .isEqualTo("This is application 2 of at most 2.");
    assertThat(result.of(Severity.ERROR)).isEmpty();
    var again = plan.after(PastUse.sameGeneration(june(15), HALF));
    assertThat(LimitCheck.check(limits, again).of(Severity.ERROR)).hasSize(4);
  }

  @Test
  void harvestEntryAndBuffer() {
    var limits =
        label(
            PreHarvestLimit.ofDays(7),
            ReEntryLimit.ofHours(12),
            BufferLimit.of("surface water", new Length(5)));
    var plan = PlannedUse.of(HALF).on(june(1)).keeping("surface water", new Length(5));

    assertThat(LimitCheck.check(limits, plan.harvestedOn(june(7))).of(Severity.ERROR)).hasSize(1);
    var onTheEighth = LimitCheck.check(limits, plan.harvestedOn(june(8)));
    assertThat(onTheEighth.of(Severity.ERROR)).isEmpty();
    assertThat(finding(onTheEighth, "pre-harvest interval").sentence())
        .contains("no harvest before 2026-06-08");
    assertThat(finding(onTheEighth, "re-entry interval").sentence()).contains("12 h after the end");
    var close = plan.keeping("surface water", new Length(4.9));
    assertThat(finding(LimitCheck.check(limits, close), "buffer to surface water").severity())
        .isEqualTo(Severity.ERROR);
    assertThat(finding(LimitCheck.check(limits, plan), "pre-harvest interval").severity())
        .isEqualTo(Severity.WARNING);
    var stage = label(PreHarvestLimit.untilStage("first flowers open"));
    assertThat(finding(LimitCheck.check(stage, plan), "pre-harvest interval").sentence())
        .contains("not after first flowers open");
    assertThat(ReEntryLimit.ofHours(48).entry()).isEqualTo(LabelEntry.stated(Duration.ofDays(2)));
  }

  @Test
  void theStrengthOfTheSprayIsCheckedWhereTheLabelLimitsIt() {
    var limits = label(SprayStrengthLimit.maximum(ProductPerSprayVolume.parse("200 mL/100 L")));
    var rule = "maximum strength of the spray";

    assertThat(finding(LimitCheck.check(limits, PlannedUse.of(HALF)), rule).sentence())
        .contains("the spray volume");
    var low = PlannedUse.of(HALF).sprayedAt(SprayVolume.parse("200 L/ha"));
    assertThat(finding(LimitCheck.check(limits, low), rule).severity()).isEqualTo(Severity.ERROR);
    var high = PlannedUse.of(HALF).sprayedAt(SprayVolume.parse("250 L/ha"));
    assertThat(finding(LimitCheck.check(limits, high), rule).severity()).isEqualTo(Severity.NOTE);
  }

  @Test
  void livingUnitsAreCheckedThroughWhatIsAlive() {
    var limits = label(DoseLimit.minimum(ProductPerArea.parse("2 x 10^12 CFU/ha")));
    var strength = LivingStrength.parse("2 x 10^9 CFU/g");
    var plan = PlannedUse.of(ProductPerArea.parse("1 kg/ha"));
    var rule = "minimum dose per application";

    var asLabelled = LimitCheck.check(limits, plan.withStrength(strength));
    assertThat(finding(asLabelled, rule).severity()).isEqualTo(Severity.NOTE);
    var tested = strength.alive(Viability.percent(85));
    var asTested = LimitCheck.check(limits, plan.withStrength(tested));
    assertThat(finding(asTested, rule).severity()).isEqualTo(Severity.WARNING);
    assertThat(finding(asTested, rule).sentence()).contains("1700000000000 CFU/ha");
    assertThat(finding(LimitCheck.check(limits, plan), rule).severity())
        .isEqualTo(Severity.WARNING);
  }

  @Test
  void theRecordIsATableThatDoesNotHideWhatIsMissing() {
    var limits =
        label(
            DoseLimit.maximum(HALF).when("dense crop"),
            ApplicationLimit.none(),
            PreHarvestLimit.notRecorded());

    assertThat(limits.presentation().toText())
        .contains("dense crop", "0.5 L/ha", "the label says none", "not recorded, not absent");
    assertThat(limits.dose(DoseBound.MAXIMUM, LimitScope.APPLICATION))
        .as("a limit under a condition is not the general one")
        .isEqualTo(LabelEntry.notRecorded());
  }

  @Test
  void theRecordPrintsUnits() {
    var limits =
        label(
            IntervalLimit.ofDays(10),
            IntervalLimit.ofDays(1).per(LimitScope.SEASON),
            IntervalLimit.none().per(LimitScope.GENERATION),
            ReEntryLimit.ofHours(24),
            ReEntryLimit.notRecorded().when("in a glasshouse"));
    assertThat(limits.limits())
        .extracting(LabelLimit::value)
        .containsExactly("10 days", "1 day", "the label says none", "24 h", "not recorded");
    assertThat(limits.presentation().toText()).contains("10 days", "24 h");
  }

  @Test
  void theResultIsAPageWithSteps() {
    var result = LimitCheck.check(label(DoseLimit.maximum(HALF)), PlannedUse.of(HALF));

    assertThat(result.cautions()).isEqualTo(Caution.all());
    assertThat(result.presentation().toText())
        .contains(
            "Product A on an invented crop", "planned ≤ maximum", "0.5 L/ha ≤ 0.5 L/ha", "kept");
    assertThat(result.presentation().toHtml()).contains("<table>");
  }

  /** 250 to 300 mL/acre are 617.763 to 741.316 mL/ha; what was written keeps its digits. */
  @Test
  void aDosePerAcreIsPrintedWithTheDigitsThatAreRead() {
    var limits =
        LabelLimits.of("Product A")
            .with(DoseLimit.maximum(ProductPerArea.parse("300 mL/acre")))
            .with(DoseLimit.minimum(ProductPerArea.parse("1.2345 L/ha")));
    var found =
        LimitCheck.check(limits, PlannedUse.of(ProductPerArea.parse("250-300 mL/acre"))).findings();
    assertThat(found)
        .extracting(DoseFinding::sentence)
        .anyMatch(s -> s.equals("617.8 to 741.3 mL/ha, within the maximum of 741.3 mL/ha."))
        .anyMatch(s -> s.contains("below the minimum of 1.2345 L/ha"));
  }

  /** 300.01 mL/acre are 741.341 mL/ha: over by so little that four digits alone would hide it. */
  @Test
  void printNeverMakesTooMuchLookAllowed() {
    var limits =
        LabelLimits.of("Product A").with(DoseLimit.maximum(ProductPerArea.parse("300 mL/acre")));
    var found =
        LimitCheck.check(limits, PlannedUse.of(ProductPerArea.parse("300.01 mL/acre"))).findings();
    assertThat(found.get(0).sentence())
        .isEqualTo(
            "741.4 mL/ha, over the maximum of 741.3 mL/ha. At most 741.3 mL/ha is left for this"
                + " application.");
  }
}
