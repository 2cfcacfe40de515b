package agro.dose.tank;

import static org.assertj.core.api.Assertions.assertThat;

import agro.dose.ActivePerArea;
import agro.dose.ActiveStrength;
import agro.dose.Canopy;
import agro.dose.DoseLimit;
import agro.dose.FieldFigures;
import agro.dose.LabelLimits;
import agro.dose.LimitCheck;
import agro.dose.PerLitreDose;
import agro.dose.PlannedUse;
import agro.dose.ProductPerArea;
import agro.dose.ProductPerSprayVolume;
import agro.dose.ProductState;
import agro.dose.RateConversion;
import agro.dose.RateKind;
import agro.dose.SprayVolume;
import agro.dose.StrengthConversion;
import agro.dose.TreeRowSpray;
import agro.units.Length;
import agro.units.Volume;
import agro.units.WorkTime;
import agro.working.Caution;
import agro.working.Presentable;
import agro.working.Working;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Whatever label rates and tank mixes come to is a page with steps and cautions, in four forms. */
class DosePagesTest {

  static Stream<Presentable> results() {
    var rate = ProductPerArea.parse("1.2-1.5 L/ha");
    var spray = SprayVolume.parse("300 L/ha");
    var limits = LabelLimits.of("Product A").with(DoseLimit.maximum(rate));
    var mix = OsmereVale.threePartners().evaluate();
    var plants = FieldFigures.none().plants(new Length(0.9), new Length(0.6));
    return Stream.of(
        RateConversion.convert(rate, plants, RateKind.PRODUCT_PER_PLANT),
        conversion(),
        limits,
        LimitCheck.check(limits, PlannedUse.of(rate)),
        PerLitreDose.of(ProductPerSprayVolume.parse("1-2 mL/L"), spray).evaluate(),
        new TreeRowSpray(new Canopy(new Length(4), new Length(2), new Length(5)), 90, 1).evaluate(),
        mix,
        FillingSheet.of("Mill Piece", FieldJob.of(mix)),
        mix.sequence(),
        mix.check(new Volume(25)),
        mix.purchases().get(0),
        reading(mix),
        KnapsackJobPlan.of(
                SprayedField.parse("Mill Piece", "1 ac"),
                spray,
                SprayTank.knapsack(new Volume(15)),
                new WorkTime(1200))
            .evaluate());
  }

  private static Presentable conversion() {
    return new StrengthConversion(
            ActivePerArea.parse("100 g ai/ha"),
            ActiveStrength.parse("200 g/L"),
            ProductState.LIQUID)
        .evaluate();
  }

  private static Presentable reading(TankMix mix) {
    var amount = mix.loads().get(0).amountOf("Product B");
    return ((VesselSuggestion.Suits) MeasuringKit.usual().suggest(amount)).reading();
  }

  @ParameterizedTest
  @MethodSource("results")
  void pageInEveryFormWithCautions(Presentable result) throws ReflectiveOperationException {
    var page = result.presentation();
    for (var text : List.of(page.toText(), page.toMarkdown(), page.toHtml())) {
      assertThat(text).contains(page.title()).doesNotContain("null").doesNotContain("NaN");
    }
    for (var method : result.getClass().getMethods()) {
      if (method.getName().equals("working") && method.getParameterCount() == 0) {
        var working = (Working) method.invoke(result);
        assertThat(working.cautions()).isEqualTo(Caution.all());
        assertThat(working.steps()).isNotEmpty();
        // LaTeX without further packages prints letters of western Europe and what is replaced.
        assertThat(working.toLatex()).matches("(?s)[\\x00-\\x{17f}]+");
        assertThat(page.toText()).contains(Caution.LABEL_FIRST.line());
      }
    }
  }

  /** A new kind of result fails here until it stands among those above. */
  @Test
  void everyResultOfTheTwoPackagesIsAmongThem() {
    var shown = results().map(result -> result.getClass().getName()).toList();
    var known =
        new ClassFileImporter()
                .withImportOption(new ImportOption.DoNotIncludeTests())
                .importPackages("agro.dose")
                .stream()
                .filter(type -> type.isAssignableTo(Presentable.class) && !type.isInterface())
                .filter(DosePagesTest::isOfTheTwo)
                .map(JavaClass::getName)
                .toList();
    assertThat(shown).containsExactlyInAnyOrderElementsOf(known);
  }

  private static boolean isOfTheTwo(JavaClass type) {
    return Arrays.asList("agro.dose", "agro.dose.tank").contains(type.getPackageName());
  }
}
