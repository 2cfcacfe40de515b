package agro.course.practical;

import static agro.ReferenceTable.number;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.offset;
import static org.assertj.core.api.Assertions.withinPercentage;

import agro.ReferenceTable;
import agro.dose.ActiveStrength;
import agro.dose.ProductPerArea;
import agro.report.InputProblem;
import agro.units.AreaUnit;
import agro.units.LandUnit;
import agro.units.Volume;
import agro.units.VolumePerArea;
import agro.working.TextLanguage;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class DoseSlipsTest {

  private static final SlipSituation EXAMPLE = SlipSituation.EXAMPLE;

  @Test
  void sizesFollowFromPublishedUnitsAndTheStatedCase() {
    var lines = ReferenceTable.read(DoseSlipsTest.class, "slip-ratios.csv");
    assertThat(lines).hasSize(CommonSlip.values().length);
    for (var line : lines) {
      var kind = CommonSlip.valueOf(line.getField("kind"));
      assertThat(kind.ratio(EXAMPLE))
          .as(line.getField("kind"))
          .isCloseTo(
              number(line, "numerator") / number(line, "denominator"), withinPercentage(1e-7));
    }
  }

  @Test
  void aClassIsShownTwentyOddOfThem() {
    assertThat(DoseSlips.usual().kinds()).hasSizeBetween(20, 30);
    assertThat(DoseSlips.usual().kinds())
        .extracting(CommonSlip::family)
        .contains(SlipFamily.values());
  }

  @Test
  void ordersByRatioWithinAFamilyAndOverAll() {
    var all = DoseSlips.all();
    assertThat(all.byRatio()).isSortedAccordingTo(Comparator.comparingDouble(DoseSlip::ratio));
    assertThat(all.byFamily())
        .isSortedAccordingTo(
            Comparator.comparing((DoseSlip slip) -> slip.kind().family())
                .thenComparingDouble(DoseSlip::ratio));
    assertThat(all.only(SlipFamily.LAND).byRatio().get(0).kind())
        .isEqualTo(CommonSlip.ACRE_DOSE_ON_HECTARE);
    assertThatThrownBy(() -> DoseSlips.all().only()).isInstanceOf(InputProblem.class);
  }

  @Test
  void anOwnSituationChangesSizesAndNames() {
    var own =
        EXAMPLE
            .withStrength(ActiveStrength.parse("25 % w/w"), ActiveStrength.parse("50 % w/w"))
            .withPump(new Volume(20))
            .withTank(new Volume(600), new Volume(150), new Volume(100))
            .withLand(LandUnit.KANAL_REVENUE, LandUnit.KANAL_LAHORE)
            .withVolumes(new VolumePerArea(400), new VolumePerArea(100));
    var slips = DoseSlips.all().of(own);
    assertThat(ratio(slips, CommonSlip.ACTIVE_TAKEN_AS_PRODUCT)).isCloseTo(0.25, offset(1e-12));
    assertThat(ratio(slips, CommonSlip.OTHER_FORMULATION)).isCloseTo(2, offset(1e-12));
    assertThat(ratio(slips, CommonSlip.LITRE_DOSE_IN_PUMP)).isCloseTo(0.05, offset(1e-12));
    assertThat(ratio(slips, CommonSlip.FULL_DOSE_IN_LAST_LOAD)).isCloseTo(4, offset(1e-12));
    assertThat(ratio(slips, CommonSlip.TOPPED_UP_WITH_FULL_DOSE)).isCloseTo(7.0 / 6, offset(1e-12));
    assertThat(ratio(slips, CommonSlip.LAND_UNIT_FOR_OTHER)).isCloseTo(1.21, offset(1e-12));
    assertThat(ratio(slips, CommonSlip.LITRE_DOSE_AT_OTHER_VOLUME)).isCloseTo(0.25, offset(1e-12));
    assertThat(slips.table().toText().replaceAll("\\s+", " ")).contains("pump of 20 L");
    assertThat(name(slips, CommonSlip.LAND_UNIT_FOR_OTHER))
        .isEqualTo("dose per kanal (Punjab revenue) put on a kanal (Lahore)");
    assertThat(DoseSlips.all().of(EXAMPLE.withLand(AreaUnit.HECTARE, AreaUnit.ACRE)).byRatio())
        .isNotEmpty();
  }

  private static double ratio(DoseSlips slips, CommonSlip kind) {
    return one(slips, kind).ratio();
  }

  private static String name(DoseSlips slips, CommonSlip kind) {
    return one(slips, kind).name();
  }

  private static DoseSlip one(DoseSlips slips, CommonSlip kind) {
    return slips.byRatio().stream().filter(slip -> slip.kind() == kind).findFirst().orElseThrow();
  }

  @Test
  void givesTheDoseThatComesOfIt() {
    var slip = one(DoseSlips.usual(), CommonSlip.TABLESPOON_FOR_TEASPOON);
    var given = slip.given(ProductPerArea.parse("250-300 mL/ha"));
    assertThat(given.perHectare().lowNumber()).isCloseTo(0.75, offset(1e-12));
    assertThat(given.perHectare().highNumber()).isCloseTo(0.9, offset(1e-12));
    assertThat(slip.isTooLittle()).isFalse();
  }

  @ParameterizedTest
  @EnumSource(TextLanguage.class)
  void everySlipHasANameOfItsOwn(TextLanguage language) {
    var slips = DoseSlips.all().in(language).byRatio();
    var names = new HashSet<String>();
    assertThat(slips)
        .allSatisfy(
            slip -> {
              assertThat(slip.name()).isNotBlank().doesNotContain("{");
              assertThat(names.add(slip.name())).as(slip.name()).isTrue();
            });
  }

  @Test
  void pagesCarryCautionsAndStandingInTheirLanguage() {
    var english = DoseSlips.usual().presentation().toText().replace('\u00a0', ' ');
    assertThat(english).contains("× 2.47", "+147", "common practice, no source", "label");
    var german =
        DoseSlips.usual().in(TextLanguage.GERMAN).presentation().toText().replace('\u00a0', ' ');
    assertThat(german)
        .contains("× 2,47", "übliche Praxis, ohne Quelle", "Gebrauchsanleitung", "0,5 g/mL");
    assertThat(german).doesNotContainPattern("(?i)\\b(the|dose|label|put|source)\\b");
  }

  @Test
  void refusesSituationsThatAreNone() {
    assertThatThrownBy(() -> EXAMPLE.withPump(new Volume(0))).hasMessageContaining("pump");
    assertThatThrownBy(() -> EXAMPLE.withTank(new Volume(100), new Volume(100), new Volume(10)))
        .hasMessageContaining("full tank");
    assertThatThrownBy(
            () ->
                EXAMPLE.withStrength(
                    ActiveStrength.parse("200 g/L"), ActiveStrength.parse("25 % w/w")))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("both by volume or both by mass");
    assertThatThrownBy(() -> new DoseSlips(List.of(), EXAMPLE, TextLanguage.ENGLISH))
        .hasMessageContaining("no slip");
  }
}
