package agro.generation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import agro.development.Span;
import agro.development.ThermalRequirement;
import agro.development.Thresholds;
import agro.generation.InventedSeasons.Truth;
import agro.report.InputProblem;
import agro.source.Reference;
import agro.units.Temperature;
import agro.units.ThermalTime;
import agro.weather.MediumKind;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Published requirements are set beside an interval only when they span the same thing. */
class LiteratureComparisonTest {

  private static final FlightTimingFit FIT =
      FlightTiming.searching(InventedSeasons.range())
          .fit(new InventedSeasons(11, Truth.usual()).seasons(4));

  private static ThermalRequirement published(Span span, double requirement, double lowerC) {
    return new ThermalRequirement(
        "Insecta inventa",
        "",
        span,
        MediumKind.AIR,
        Thresholds.above(Temperature.ofCelsius(lowerC)),
        new ThermalTime(requirement),
        Optional.empty(),
        Reference.invented("a paper of a test"));
  }

  @Test
  void aPartIsNotTheSameQuantity() {
    var toAdult = published(Span.EGG_TO_ADULT, 350, 7);
    assertThat(FIT.comparedWith(toAdult))
        .contains("not the same quantity", "350 °C·d span egg to adult", "egg-laying is missing");
    assertThatThrownBy(() -> IntervalRange.about(toAdult))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("a requirement that spans egg to adult");
    var whole = toAdult.plus(published(Span.ADULT_TO_FIRST_EGG, 48, 7));
    assertThat(FIT.comparedWith(whole)).contains("than the published 398 °C·d", "within the 90 %");
    assertThat(IntervalRange.about(whole).expected()).isEqualTo(new ThermalTime(398));
  }

  @Test
  void theWholeIsCompared() {
    assertThat(FIT.comparedWith(published(Span.FLIGHT_TO_FLIGHT, 300, 7)))
        .contains("more than the published 300 °C·d", "outside the 90 %");
  }

  @Test
  void otherThresholdsAreAnotherQuantity() {
    assertThat(FIT.comparedWith(published(Span.GENERATION, 300, 10)))
        .contains("not the same quantity", "count above 10 °C, the flights above 7 °C");
  }

  @Test
  void withoutAFitThereIsNothingToCompare() {
    var none = FlightTiming.searching(InventedSeasons.range()).fit(List.of());
    assertThat(none.comparedWith(published(Span.GENERATION, 400, 7)))
        .contains("nothing to compare");
  }
}
