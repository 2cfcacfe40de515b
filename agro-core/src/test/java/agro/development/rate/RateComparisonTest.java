package agro.development.rate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class RateComparisonTest {

  private static final RearingData OLIGOTA = Rearings.named("oligota");

  /** With 7 rates AICc needs at most 4 parameters; those of 5 and 6 have none, and no weight. */
  @Test
  void weightsAreSharedByTheModelsThatHaveOne() {
    var comparison = RateComparison.of(OLIGOTA);
    double sum = 0;
    for (var entry : comparison.entries()) {
      var fit = entry.fit().orElseThrow();
      assertThat(entry.weight().isPresent()).isEqualTo(fit.freeParameters() < 5);
      assertThat(fit.criteria().aicCorrected().isPresent()).isEqualTo(fit.freeParameters() < 5);
      sum += entry.weight().orElse(0);
    }
    assertThat(sum).isCloseTo(1, within(1e-12));
    var text = comparison.table().toCsv();
    assertThat(text).contains("not defined").contains("Briere-2").contains("saturated");
  }

  @Test
  void modelsThatTheDataDoNotCarryAreListedWithTheReason() {
    var comparison = RateComparison.of(Rearings.named("gastrophysa"));
    var entries =
        comparison.entries().stream()
            .filter(entry -> entry.fitting().model() == RateModel.LOGAN_10)
            .toList();
    assertThat(entries).hasSize(1);
    assertThat(entries.get(0).fit()).isEmpty();
    assertThat(entries.get(0).refusal()).contains("5 free parameters");
    assertThat(comparison.fit(RateModel.LOGAN_10)).isEmpty();
    assertThat(comparison.fit(RateModel.LINEAR)).isPresent();
    assertThat(comparison.table().toCsv()).contains("not fitted: the model Logan-10");
  }

  /** A line leaves the rates of zero out, so its criterion cannot stand beside the others. */
  @Test
  void fitsOfFewerRatesGetNoWeight() {
    var comparison =
        RateComparison.of(
            Rearings.named("oligota-zero"),
            List.of(
                RateFitting.of(RateModel.LINEAR),
                RateFitting.of(RateModel.BRIERE_1),
                RateFitting.of(RateModel.HILBERT_LOGAN).withFixed("Tb", 9.96)));
    assertThat(comparison.entries().get(0).weight()).isEqualTo(OptionalDouble.empty());
    assertThat(comparison.entries().get(1).weight()).isPresent();
    assertThat(comparison.table().toText()).contains("Tb = 9.96");
  }

  @Test
  void pagesOfFitsTellWhatMatters() {
    var page = RateComparison.of(OLIGOTA).presentation().toText();
    assertThat(page)
        .contains("Logan-6: a ridge")
        .contains("Schoolfield-6: saturated")
        .contains("Sources");
    var fit = RateFitting.of(RateModel.LACTIN_2).fit(OLIGOTA).presentation().toText();
    assertThat(fit)
        .contains("starts that were followed ended at the best optimum")
        .contains("6.569");
  }
}
