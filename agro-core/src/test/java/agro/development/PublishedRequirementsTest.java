package agro.development;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

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
import java.util.ArrayList;
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
  }

  /** Every line that was found in abstracts, those with one half alone too. */
  @Test
  void theTableHoldsAllLinesAndUsesWholePairsAlone() {
    assertThat(published.parameters()).hasSize(116);
    assertThat(published.all())
        .hasSize(
            (int) published.parameters().stream().filter(p -> p.pair().isPresent()).count() - 1);
    assertThat(published.species()).hasSize(34).isSorted();
    assertThat(published.spans("helicoverpa armigera"))
        .containsExactly(Span.EGG, Span.LARVA, Span.PUPA, Span.EGG_TO_ADULT, Span.GENERATION);
    assertThat(published.parameters("Myzus persicae", Span.BIRTH_TO_ADULT))
        .singleElement()
        .satisfies(row -> assertThat(row.pair()).isEmpty());
  }

  /** Figures computed from the abstracts' pairs: they cross over between 15 and 25 °C. */
  @Test
  void disagreementIsSeenInDays() {
    var thrips = published.find("Frankliniella occidentalis", Span.EGG_TO_ADULT);
    assertThat(thrips.stream().map(each -> Math.round(10 * each.daysAt(20)) / 10.0))
        .containsExactlyInAnyOrder(24.3, 22.1, 18.5);
    assertThat(thrips.stream().map(each -> Math.round(10 * each.daysAt(30)) / 10.0))
        .containsExactlyInAnyOrder(14.0, 12.1, 9.5);
    var whitefly = published.find("Bemisia tabaci", Span.EGG_TO_ADULT);
    var soybean = whitefly.stream().filter(w -> w.host().equals("soybean")).findFirst().get();
    var cotton = whitefly.stream().filter(w -> w.host().equals("cotton")).findFirst().get();
    assertThat(soybean.daysAt(25)).isCloseTo(28.3, within(0.05));
    assertThat(cotton.daysAt(25)).isCloseTo(22.9, within(0.05));
    assertThat(soybean.daysAt(15)).isCloseTo(70.5, within(0.05));
    assertThat(cotton.daysAt(15)).isCloseTo(97.7, within(0.05));
    assertThat(cotton.daysAt(11)).isInfinite();
  }

  /**
   * Aphis craccivora, abstract: 1.77 °C and 66.79 °C·d, but 10.6 d at 16 °C and 5.0 d at 28 °C,
   * where the pair predicts 4.7 and 2.5 d.
   */
  @Test
  void aPairThatContradictsItsOwnDurationsIsRefused() {
    assertThat(published.find("Aphis craccivora", Span.BIRTH_TO_ADULT)).isEmpty();
    assertThat(published.refused())
        .singleElement()
        .satisfies(
            check -> {
              assertThat(check.requirement().species()).isEqualTo("Aphis craccivora");
              assertThat(check.meanRatio()).isCloseTo(0.475, within(0.001));
              assertThatThrownBy(check::require)
                  .isInstanceOf(InputProblem.class)
                  .hasMessageContaining("4.7 d at 16 °C where 10.6 d were observed")
                  .hasMessageContaining("contradicts the durations");
              assertThat(check.presentation().toText()).contains("not to be used");
            });
  }

  /** Ricalde et al. 2012, Pelotas: predicts 61.4 d at 15 °C where 71.2 d were seen. */
  @Test
  void aPairThatBendsNearTheThresholdIsKept() {
    var check =
        published.checks().stream()
            .filter(each -> each.requirement().species().equals("Ceratitis capitata"))
            .findFirst()
            .orElseThrow();
    assertThat(check.agrees()).isTrue();
    assertThat(check.require().daysAt(15)).isCloseTo(61.4, within(0.05));
    assertThat(check.require().daysAt(30)).isCloseTo(16.9, within(0.05));
    assertThat(published.checks()).hasSize(4);
  }

  @Test
  void papersAreComparedByTheirDates() {
    var days = new ArrayList<DailyExtremes>();
    for (int i = 0; i < 60; i++) {
      days.add(new DailyExtremes(DAY.plusDays(i), 20, 20));
    }
    var warm = DailyTemperatures.of("a bench", Medium.shelterAir(), days, DayOrigin.OBSERVED);
    var thrips = published.find("Frankliniella occidentalis", Span.EGG_TO_ADULT);

    var spread = PublishedSpread.of(thrips, warm, DAY);

    assertThat(spread.daysApart().orElseThrow())
        .isCloseTo(331.36 / 13.65 - 194 / 10.5, within(1e-9));
    assertThat(spread.presentation().toText()).contains("Compare the dates", "2001-05-25");
    assertThatThrownBy(
            () ->
                PublishedSpread.of(
                    List.of(
                        published.find("Helicoverpa armigera", Span.EGG_TO_ADULT).get(0),
                        published.find("Helicoverpa armigera", Span.GENERATION).get(0)),
                    warm,
                    DAY))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("egg to adult and generation, egg to egg")
        .hasMessageContaining("complete egg to adult by the time before the first egg");
    var slow = PublishedSpread.of(thrips, warm.between(DAY, DAY.plusDays(19)), DAY);
    assertThat(slow.daysApart()).isEmpty();
    assertThat(slow.presentation().toText()).contains("not by the end");
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

  /** On one common threshold parts add up; on thresholds of their own they do not. */
  @Test
  void partsOfALifeAddUpInTheirOrder() {
    var egg = ofBorer(Span.EGG, 40.3);
    var larva = ofBorer(Span.LARVA, 315.6);
    var pupa = ofBorer(Span.PUPA, 199.6);
    // Agrotis ipsilon on one common threshold of 10.4 °C, abstract, authors not shown.
    var all = egg.plus(larva).plus(pupa);
    assertThat(all.span()).isEqualTo(Span.EGG_TO_ADULT);
    assertThat(all.requirement().degreeDaysC()).isCloseTo(555.5, within(1e-9));
    assertThat(egg.plus(pupa.plus(larva)).requirement()).isEqualTo(all.requirement());
    assertThat(Span.BIRTH_TO_ADULT.followedBy(Span.ADULT_TO_FIRST_EGG)).contains(Span.GENERATION);
    assertThat(Span.EGG.followedBy(Span.NYMPH)).contains(Span.EGG_TO_ADULT);
    assertThatThrownBy(() -> egg.plus(pupa))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("no named span");
    var leafMiner = published.find("Liriomyza trifolii", Span.EGG_AND_LARVA).get(0);
    assertThatThrownBy(() -> leafMiner.plus(published.find("Liriomyza trifolii", Span.PUPA).get(0)))
        .hasMessageContaining("equal lower thresholds");
  }

  private static ThermalRequirement ofBorer(Span span, double requirement) {
    return new ThermalRequirement(
        "Agrotis ipsilon",
        "",
        span,
        MediumKind.AIR,
        Thresholds.above(new Temperature(10.4)),
        new ThermalTime(requirement),
        Optional.empty(),
        Reference.invented("Common threshold"));
  }

  @Test
  void aRequirementIsAboveZero() {
    assertThatThrownBy(() -> ofBorer(Span.EGG, -40))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("a thermal time above zero")
        .hasMessageContaining("development takes time");
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
