package agro.notebook.figure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import agro.notebook.figure.DoseMistake.Spread;
import agro.report.InputProblem;
import agro.units.Mass;
import agro.units.Volume;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DoseMistakeFigureTest {

  private static final DoseMistake POUNDS =
      DoseMistake.mixingUp("pounds and kilograms", Mass.parse("1 kg"), Mass.parse("1 lb"))
          .stoppedBy("the unit is part of the number");
  private static final DoseMistake POWDER = DoseMistake.between("powder by the spoon", 0.32, 0.96);
  private static final DoseMistake HALF_TANK = DoseMistake.of("full dose in half a tank", 2);

  /** A pound is 0.45359237 kg by definition, so a kilogram is 2.2046 of them. */
  @Test
  void oneQuantityForAnotherGoesEitherWay() {
    assertThat(POUNDS.spread()).isEqualTo(Spread.EITHER_WAY);
    assertThat(POUNDS.least()).isCloseTo(0.45359237, within(1e-12));
    assertThat(POUNDS.most()).isCloseTo(2.2046226, within(1e-7));
    assertThat(DoseMistake.mixingUp("the same", Mass.parse("1 lb"), Mass.parse("1 kg")).most())
        .isCloseTo(2.2046226, within(1e-7));
  }

  @Test
  void aDoseForTheDoseThatWasMeant() {
    var got = DoseMistake.of("poured", Volume.parse("1.5 L"), Volume.parse("2 L"));
    assertThat(got).isEqualTo(DoseMistake.of("poured", 0.75));
    assertThat(got.spread()).isEqualTo(Spread.ONE_SIZE);
  }

  @Test
  void wordsAndDataTellTheWorstFirst() {
    var figure = DoseMistakeFigure.of(List.of(HALF_TANK, POWDER, POUNDS));
    assertThat(figure.alternative().replace('\u00a0', ' '))
        .isEqualTo(
            "Dose got as a multiple of the dose meant, for 3 mistakes, the worst first: powder by"
                + " the spoon ÷ 3.13 to \u22124 %; pounds and kilograms ÷ 2.2 or × 2.2; full dose"
                + " in half a tank × 2.");
    assertThat(figure.caption()).contains("logarithmic");
    assertThat(FigureSamples.cell(figure, 0, "Least")).isEqualTo("0.320");
    assertThat(FigureSamples.cell(figure, 0, "Most")).isEqualTo("0.960");
    assertThat(FigureSamples.cell(figure, 1, "What stops it"))
        .isEqualTo("the unit is part of the number");
    assertThat(FigureSamples.cell(figure, 2, "Size").replace('\u00a0', ' ')).isEqualTo("× 2");
    var picture = FigureSamples.picture(figure);
    assertThat(FigureSamples.holds(picture, FigureLook.VERMILION)).isTrue();
    assertThat(FigureSamples.holds(picture, FigureLook.BLUE)).isTrue();
  }

  /** What is only too little has no filled mark, and what is only too much no hollow one. */
  @Test
  void tooLittleAndTooMuchHaveMarksOfTheirOwn() {
    var little = FigureSamples.picture(DoseMistakeFigure.of(List.of(POWDER)));
    assertThat(FigureSamples.holds(little, FigureLook.VERMILION)).isFalse();
    var much = FigureSamples.picture(DoseMistakeFigure.of(List.of(HALF_TANK)));
    assertThat(FigureSamples.holds(much, FigureLook.BLUE)).isFalse();
  }

  @ParameterizedTest
  @CsvSource({
    "1, as meant",
    "1.2009, +20 %",
    "0.83267, \u221217 %",
    "1.0408, +4.1 %",
    "2, × 2",
    "0.12, ÷ 8.33",
    "10.72, × 10.7",
    "0.001, ÷ 1000"
  })
  void aSizeIsSaidAsAReaderSaysIt(double multiple, String words) {
    assertThat(DoseMistakeFigure.size(multiple).replace('\u00a0', ' ')).isEqualTo(words);
  }

  @ParameterizedTest
  @CsvSource({"1, 1", "1e-9, 1e9", "0.999, 0.9991", "300, 70000", "1, 1.0000001"})
  void drawsAnySizes(double least, double most) {
    var name = "a name that is far longer than any line of a figure could be, ".repeat(3) + "more";
    var mistake =
        least == most ? DoseMistake.of(name, least) : DoseMistake.eitherWay(name, least, most);
    var figure = DoseMistakeFigure.of(List.of(mistake));
    FigureSamples.picture(figure);
    assertThat(FigureSamples.cell(figure, 0, "Mistake")).isEqualTo(name);
  }

  @ParameterizedTest
  @CsvSource({"0, 2", "-1, 1", "2, 0.5", "1, Infinity", "NaN, 1", "1, NaN", "2, 2"})
  void refusesWhatIsNoSize(double least, double most) {
    assertThatThrownBy(() -> DoseMistake.eitherWay("acre and hectare", least, most))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("acre and hectare")
        .hasMessageContaining("the least one first")
        .hasMessageContaining("which has no zero")
        .hasMessageContaining("divide the dose");
  }

  @Test
  void refusesAMistakeWithoutANameAndAFigureWithoutMistakes() {
    assertThatThrownBy(() -> DoseMistake.of(" ", 2))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("without a name");
    assertThatThrownBy(() -> DoseMistakeFigure.of(List.of()))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("no mistake to draw")
        .hasMessageContaining("add mistakes");
  }
}
