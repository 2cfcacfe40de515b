package agro.notebook.figure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import agro.development.rate.RateComparison;
import agro.development.rate.RateFitting;
import agro.development.rate.RateModel;
import agro.development.rate.RearingData;
import agro.report.InputProblem;
import java.util.List;
import org.junit.jupiter.api.Test;

class RateFigureTest {

  private static final RearingData DATA =
      RearingData.ofMeans(
              "Oligota flavicornis, egg to adult",
              new double[] {12, 15, 18, 20, 25, 30, 32},
              new double[] {114.41, 51.66, 33.45, 23.21, 13.43, 11.54, 17.18})
          .withoutDevelopmentAt(10, 35);

  @Test
  void oneFitWithItsBand() {
    var intervals = RateFitting.of(RateModel.BRIERE_2).fit(DATA).bootstrap();
    var figure = RateFigure.of(intervals);
    assertThat(figure.alternative())
        .startsWith("Rate of development at 9 constant temperatures with one fitted curve")
        .contains("Briere-2, fastest at 29.4 °C with 0.0878 per day");
    assertThat(figure.caption()).contains("bootstrap of 1000 refits").contains("equal weights");
    assertThat(FigureSamples.cell(figure, 0, "Observed")).isEqualTo("0.00874");
    assertThat(FigureSamples.cell(figure, 7, "Briere-2")).isEqualTo("0.00069");
    var picture = FigureSamples.picture(figure);
    assertThat(FigureSamples.holds(picture, FigureLook.PALE_BLUE)).isTrue();
    assertThat(FigureSamples.holds(picture, FigureLook.BLUE)).isTrue();
    var plain = FigureSamples.picture(RateFigure.of(intervals.fit()));
    assertThat(FigureSamples.holds(plain, FigureLook.PALE_BLUE)).isFalse();
  }

  @Test
  void allModelsWithTheirNames() {
    var comparison = RateComparison.of(DATA);
    var figure = RateFigure.of(comparison);
    for (var fit : comparison.fits()) {
      assertThat(figure.alternative()).contains(fit.curve().model().words());
    }
    assertThat(figure.data().columns()).hasSize(2 + comparison.fits().size());
    assertThat(FigureSamples.holds(FigureSamples.picture(figure), FigureLook.VERMILION)).isTrue();
    var intervals = comparison.fit(RateModel.LACTIN_2).orElseThrow().bootstrap();
    var banded = RateFigure.of(comparison, intervals);
    assertThat(banded.alternative()).contains("curves: Lactin-2");
    FigureSamples.picture(banded);
  }

  @Test
  void refusesWhatCannotBeDrawn() {
    var profile = RateFitting.of(RateModel.BRIERE_1).fit(DATA).profile(0.9);
    assertThatThrownBy(() -> RateFigure.of(profile))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("bootstrap intervals");
    var few = RearingData.ofMeans("few", new double[] {20, 25}, new double[] {20, 15});
    var none = RateComparison.of(few, List.of(RateFitting.of(RateModel.BRIERE_1)));
    assertThatThrownBy(() -> RateFigure.of(none))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("no model could be fitted to few");
  }
}
