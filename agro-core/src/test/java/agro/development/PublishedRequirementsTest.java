package agro.development;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import agro.report.InputProblem;
import agro.source.Reference;
import agro.source.Standing;
import agro.units.Temperature;
import agro.units.ThermalTime;
import agro.weather.DailyExtremes;
import agro.weather.DailyTemperatures;
import agro.weather.DayOrigin;
import agro.weather.Medium;
import agro.weather.MediumKind;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class PublishedRequirementsTest {

  private static final LocalDate DAY = LocalDate.of(2001, 5, 1);
  private final PublishedRequirements published = PublishedRequirements.load();

  private static ThermalRequirement firstEgg(double lower) {
    return new ThermalRequirement(
        "Acrolepiopsis assectella",
        "",
        Span.ADULT_TO_FIRST_EGG,
        MediumKind.AIR,
        Thresholds.above(new Temperature(lower)),
        new ThermalTime(25),
        Optional.empty(),
        Reference.invented("Time before egg-laying"));
  }

  /** Mason et al. 2010, Can. Entomol. 142:393-404: 444.6 °C·d above 7 °C from egg to adult. */
  @Test
  void leekMothIsFound() {
    assertThat(published.find("acrolepiopsis assectella", Span.EGG_TO_ADULT))
        .singleElement()
        .satisfies(
            moth -> {
              assertThat(moth.requirement().degreeDaysC()).isEqualTo(444.6);
              assertThat(moth.thresholds().lower().celsius()).isEqualTo(7);
              assertThat(moth.source().standing()).isEqualTo(Standing.READ);
            });
  }

  @Test
  void papersThatDisagreeStandSideBySide() {
    assertThat(published.find("Plutella xylostella", Span.EGG_TO_ADULT)).hasSize(3);
    assertThat(published.find("Tuta absoluta", Span.PUPA))
        .singleElement()
        .satisfies(row -> assertThat(row.source().standing()).isEqualTo(Standing.FROM_MEMORY));
    assertThat(published.find("Nemo ignotus", Span.EGG)).isEmpty();
    assertThat(published.all()).hasSize(12);
  }

  @Test
  void eggToAdultAndTheTimeBeforeEggLayingMakeAGeneration() {
    var moth = published.find("Acrolepiopsis assectella", Span.EGG_TO_ADULT).get(0);
    var generation = firstEgg(7).plus(moth);
    assertThat(generation.span()).isEqualTo(Span.GENERATION);
    assertThat(generation.requirement().degreeDaysC()).isEqualTo(469.6);
    assertThat(generation.source().title()).contains("Mason").contains("invented");
    assertThat(generation.whyNotComparableWith(moth).orElseThrow()).contains("egg to adult");
    assertThat(moth.whyNotComparableWith(moth)).isEmpty();
  }

  @Test
  void differentThresholdsDoNotAddUp() {
    var moth = published.find("Acrolepiopsis assectella", Span.EGG_TO_ADULT).get(0);
    assertThatThrownBy(() -> moth.plus(firstEgg(6)))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("equal lower thresholds");
    assertThatThrownBy(() -> moth.plus(moth))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("make a generation together");
  }

  /** Delia radicum at 6 cm in soil: shelter air swings nearly twice as much. */
  @Test
  void soilRequirementRefusesAir() {
    var fly = published.find("Delia radicum", Span.GENERATION).get(0);
    var days = List.of(new DailyExtremes(DAY, 5, 15));
    var air = DailyTemperatures.of("Sand Lane", Medium.shelterAir(), days, DayOrigin.OBSERVED);
    var soil = DailyTemperatures.of("Sand Lane", new Medium.Soil(0.06), days, DayOrigin.OBSERVED);
    assertThatThrownBy(() -> fly.scale(UpperCutoff.NONE, air, DAY))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("air in a shelter at 2 m")
        .hasMessageContaining("Delia radicum");
    assertThat(fly.scale(UpperCutoff.NONE, soil, DAY).totalC()).isGreaterThan(4);
  }
}
