package agro.dose.scaling;

import static org.assertj.core.api.Assertions.assertThat;

import agro.dose.Severity;
import agro.units.CountPerVolume;
import agro.units.Volume;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Dilution series and colonies; countable ranges are values from memory. */
class PlateCountTest {

  private static final Volume TENTH = Volume.parse("0.1 mL");

  @Test
  void sixTenfoldStepsAndFiftyColonies() {
    var series =
        new SerialDilution(
                CountPerVolume.parse("5e8 CFU/mL"), Volume.parse("1 mL"), Volume.parse("9 mL"), 6)
            .evaluate();
    Near.number("H10 dilution", series.last().dilution(), 1e-6, 1e-12);
    Near.number("H10 last tube", series.last().concentration().perMillilitre(), 500, 1e-12);
    assertThat(series.tubes()).hasSize(6);
    Near.presented(series);

    var count =
        PlateCount.of(new CountedPlate(50, TENTH, 1e-6), CountableRange.FROM_30_TO_300).evaluate();
    Near.number("H10", count.concentration().perMillilitre(), 5.0e8, 1e-12);
    assertThat(count.marks()).containsExactly(PlateMark.COUNTABLE);
    assertThat(count.findings()).isEmpty();
    assertThat(count.working().toText()).contains("0.1 mL × 10^-6", "5 × 10^8 CFU/mL");
    Near.presented(count);
  }

  @Test
  void limitsOfThePoissonCount() {
    // Exact 95 % limits of a count of 50 after Garwood: 37.11 to 65.92 (value from memory).
    var count =
        PlateCount.of(new CountedPlate(50, TENTH, 1e-6), CountableRange.FROM_30_TO_300).evaluate();
    Near.number("low", count.interval().low().perMillilitre() * 1e-7, 37.11, 1e-3);
    Near.number("high", count.interval().high().perMillilitre() * 1e-7, 65.92, 1e-3);
  }

  @Test
  void marksAtTheEndsOfBothRanges() {
    assertThat(CountableRange.FROM_30_TO_300.mark(29)).isEqualTo(PlateMark.TOO_FEW);
    assertThat(CountableRange.FROM_30_TO_300.mark(30)).isEqualTo(PlateMark.COUNTABLE);
    assertThat(CountableRange.FROM_30_TO_300.mark(300)).isEqualTo(PlateMark.COUNTABLE);
    assertThat(CountableRange.FROM_30_TO_300.mark(301)).isEqualTo(PlateMark.TOO_MANY);
    assertThat(CountableRange.FROM_25_TO_250.mark(25)).isEqualTo(PlateMark.COUNTABLE);
    assertThat(CountableRange.FROM_25_TO_250.mark(251)).isEqualTo(PlateMark.TOO_MANY);
  }

  @Test
  void platesOutsideTheRangeAreNamedAndLeftOut() {
    var plates =
        List.of(
            new CountedPlate(512, TENTH, 1e-5),
            new CountedPlate(48, TENTH, 1e-6),
            new CountedPlate(52, TENTH, 1e-6),
            new CountedPlate(4, TENTH, 1e-7));
    var count = new PlateCount(plates, CountableRange.FROM_30_TO_300).evaluate();

    Near.number("pooled", count.concentration().perMillilitre(), 5e8, 1e-12);
    assertThat(count.findings()).hasSize(2);
    assertThat(count.findings().get(0).sentence())
        .contains("Plate 1 has 512 colonies", "too many to count", "left out");
    assertThat(count.findings().get(0).severity()).isEqualTo(Severity.NOTE);
    Near.presented(count);
  }

  @Test
  void largeAndSmallNumbersArePrintedAsPowersOfTen() {
    assertThat(PowerOfTen.print(5e8)).isEqualTo("5 × 10^8");
    assertThat(PowerOfTen.print(1e-6)).isEqualTo("10^-6");
    assertThat(PowerOfTen.print(999_999.9999)).isEqualTo("1000000");
    assertThat(PowerOfTen.print(9.99996e8)).isEqualTo("10^9");
    assertThat(PowerOfTen.print(512)).isEqualTo("512");
    assertThat(PowerOfTen.print(0)).isEqualTo("0");
    assertThat(CountPerVolume.parse(PowerOfTen.print(4.25e8) + " CFU/mL").perMillilitre())
        .isEqualTo(4.25e8);
  }

  @Test
  void withoutACountablePlateTheFigureIsAnEstimate() {
    var count =
        PlateCount.of(new CountedPlate(0, TENTH, 1e-3), CountableRange.FROM_25_TO_250).evaluate();

    assertThat(count.concentration().perMillilitre()).isZero();
    // No colony in 0.0001 mL: the upper limit is -ln(0.025) / 0.0001.
    Near.number("upper", count.interval().high().perMillilitre(), 36_888.8, 1e-5);
    assertThat(count.findings().get(0).severity()).isEqualTo(Severity.WARNING);
    assertThat(count.findings().get(0).sentence()).contains("rough estimate");
    Near.presented(count);
  }
}
