package agro.notebook.figure;

import static org.assertj.core.api.Assertions.assertThat;

import agro.course.practical.CalibrationBenchmark;
import agro.course.practical.ClassReadings;
import agro.course.practical.DoseSlips;
import agro.course.practical.PoolingRules;
import agro.course.practical.SlipFamily;
import agro.notebook.display.MimeBundle;
import agro.notebook.display.Renderers;
import agro.reading.DelimitedFormat;
import agro.reading.DelimitedText;
import agro.units.QuantityStyle;
import agro.units.VolumePerArea;
import agro.working.TextLanguage;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Readings are invented. */
class PracticalFiguresTest {

  private static final PoolingRules RULES =
      PoolingRules.STANDARD.withTarget(new VolumePerArea(300));

  private static ClassReadings readings(double... litresPerHectare) {
    var text = new StringBuilder("group,course,time,width,output (mL),catch_time\n");
    for (int i = 0; i < litresPerHectare.length; i++) {
      double catches = 2.5 * litresPerHectare[i];
      text.append("g").append(i + 1).append(",25 m,25 s,1 m,");
      text.append(0.99 * catches).append("; ").append(1.01 * catches).append(",25 s\n");
    }
    return ClassReadings.of(
        DelimitedText.parse("class.csv", text.toString(), DelimitedFormat.COMMA, List.of()));
  }

  private static String plain(String text) {
    return text.replace('\u00a0', ' ');
  }

  @Test
  void namesTheGroupsThatAreOff() {
    var result = readings(300, 305, 295, 310, 350, 600).pooled(RULES);
    var figure = ClassCalibrationFigure.of(result);
    assertThat(plain(figure.alternative()))
        .startsWith("Spray volume of 6 groups, mean 360 L/ha")
        .endsWith("Outside the tolerance: g5 (+16.7 %), g6 (+100.0 %). Outliers: g6.");
    assertThat(figure.caption()).contains("common practice, no source", "label comes first");
    assertThat(FigureSamples.cell(figure, 5, "volume")).isEqualTo("600.0");
    assertThat(FigureSamples.holds(FigureSamples.picture(figure), FigureLook.VERMILION)).isTrue();
  }

  @Test
  void aClassThatPassesHasNoLoudColour() {
    var figure = ClassCalibrationFigure.of(readings(300, 305, 295, 290, 310).pooled(RULES));
    assertThat(figure.alternative()).endsWith("Outside the tolerance: nobody. Outliers: nobody.");
    assertThat(FigureSamples.holds(FigureSamples.picture(figure), FigureLook.VERMILION)).isFalse();
  }

  @Test
  void drawsOneGroupVeryManyAndOneFarBeyond() {
    FigureSamples.picture(ClassCalibrationFigure.of(readings(300).pooled(PoolingRules.STANDARD)));
    var many = new double[120];
    for (int i = 0; i < many.length; i++) {
      many[i] = 250 + i;
    }
    many[7] = 90_000;
    many[8] = 0.01;
    for (var benchmark : CalibrationBenchmark.values()) {
      FigureSamples.picture(
          ClassCalibrationFigure.of(readings(many).pooled(RULES.against(benchmark))));
    }
  }

  @Test
  void speaksGermanInOtherUnits() {
    var rules = RULES.in(TextLanguage.GERMAN).printedIn(QuantityStyle.US);
    var figure = ClassCalibrationFigure.of(readings(300, 305, 400).pooled(rules));
    assertThat(plain(figure.alternative())).contains("Gruppen", "gal (US)/ac", "g3 (+33,3 %)");
    assertThat(figure.caption()).contains("übliche Praxis, ohne Quelle", "Gebrauchsanleitung");
    FigureSamples.picture(figure);
  }

  @ParameterizedTest
  @EnumSource(TextLanguage.class)
  void slipsAreDrawnWithTheirValues(TextLanguage language) {
    var slips = DoseSlips.all().in(language);
    var figure = DoseSlipFigure.of(slips);
    assertThat(plain(figure.alternative()))
        .contains(language == TextLanguage.GERMAN ? "× 2,47" : "× 2.47");
    assertThat(figure.data().rows()).hasSize(slips.kinds().size());
    var picture = FigureSamples.picture(figure);
    assertThat(FigureSamples.holds(picture, FigureLook.VERMILION)).isTrue();
    assertThat(FigureSamples.holds(picture, FigureLook.BLUE)).isTrue();
  }

  @ParameterizedTest
  @EnumSource(SlipFamily.class)
  void everyFamilyCanBeDrawnAlone(SlipFamily family) {
    FigureSamples.picture(DoseSlipFigure.of(DoseSlips.all().only(family)));
  }

  @Test
  void aNotebookShowsTheResultWithItsFigure() {
    var result = readings(300, 305, 295, 310, 400).pooled(RULES);
    for (Object shown : List.of(result, DoseSlips.usual())) {
      var bundle = Renderers.standard().render(shown);
      assertThat(bundle.get(MimeBundle.HTML).orElse(""))
          .contains("data:image/png;base64,", "agro-table", "Before you use these figures");
      assertThat(bundle.plainText()).contains("Before you use these figures");
    }
  }
}
