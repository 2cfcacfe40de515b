package agro.units;

import static agro.ReferenceTable.number;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import de.siegmar.fastcsv.reader.CommentStrategy;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What people write, read and refused. */
class QuantityTextTest {

  static List<NamedCsvRecord> goodTexts() throws IOException {
    return table("good-texts.csv");
  }

  static List<NamedCsvRecord> badTexts() throws IOException {
    return table("bad-texts.csv");
  }

  private static List<NamedCsvRecord> table(String name) throws IOException {
    var stream = Objects.requireNonNull(QuantityTextTest.class.getResourceAsStream(name));
    try (var csv =
        CsvReader.builder()
            .fieldSeparator(';')
            .quoteCharacter('`')
            .commentStrategy(CommentStrategy.SKIP)
            .ofNamedCsvRecord(new InputStreamReader(stream, StandardCharsets.UTF_8))) {
      return csv.stream().toList();
    }
  }

  @ParameterizedTest
  @MethodSource("goodTexts")
  void isRead(NamedCsvRecord line) {
    var parsed = QuantityText.parse(line.getField("text"));
    var kind = QuantityKind.valueOf(line.getField("kind"));
    assertThat(parsed.kind()).contains(kind);
    double low = number(line, "low");
    double high = number(line, "high");
    assertThat(TypedReading.low(parsed, kind)).isCloseTo(low, within(5e-11 * low));
    assertThat(TypedReading.high(parsed, kind)).isCloseTo(high, within(5e-11 * high));
    assertThat(parsed.numbers().isSingle()).isEqualTo(low == high);
    assertThat(parsed.text()).isEqualTo(line.getField("text"));
  }

  @ParameterizedTest
  @MethodSource("badTexts")
  void isRefusedAtTheCharacterWithWhatToWrite(NamedCsvRecord line) {
    var text = line.getField("text");
    var problem = catchThrowableOfType(UnreadableQuantity.class, () -> QuantityText.parse(text));
    assertThat(problem).as(text).isNotNull();
    assertThat(problem.getMessage())
        .contains(line.getField("says"))
        .contains("\n  Expected: ")
        .contains("\n  Why: ")
        .contains("\n  Mend: " + problem.cure());
    assertThat(problem.position()).as(text).isEqualTo((int) number(line, "at"));
    assertThat(problem.cure()).contains(line.getField("mend"));
    var lines = problem.getMessage().split("\n", -1);
    assertThat(lines[1]).isEqualTo("  " + text);
    assertThat(lines[2]).isEqualTo("  " + " ".repeat(problem.position()) + "^");
    assertThat(problem.text()).isEqualTo(text);
  }

  @Test
  void tablesAreWhole() throws IOException {
    assertThat(goodTexts()).hasSizeGreaterThanOrEqualTo(110);
    assertThat(badTexts()).hasSizeGreaterThanOrEqualTo(90);
  }

  /** What a message tells to write can be read, unless the text has a second fault. */
  @ParameterizedTest
  @MethodSource("badTexts")
  void whatIsOfferedIsReadable(NamedCsvRecord line) {
    var problem =
        catchThrowableOfType(
            UnreadableQuantity.class, () -> QuantityText.parse(line.getField("text")));
    for (var reading : problem.readings()) {
      try {
        assertThat(QuantityText.parse(reading)).isNotNull();
      } catch (UnreadableQuantity again) {
        assertThat(again.getMessage()).as(reading).doesNotContain(problem.getMessage());
        assertThat(again.getMessage()).contains("stands for more than one unit");
      }
    }
  }

  @Test
  void thingsBelowTheLineStayThings() {
    var rate = (ParsedRate) QuantityText.parse("2.5-5 g per 10 plants");
    assertThat(rate.kind()).isEmpty();
    assertThat(rate.per()).isEqualTo(new RateDenominator.PerThing(10, "plant"));
    assertThat(Mass.from(rate.amount()))
        .isEqualTo(new QuantityRange<>(new Mass(0.0025), new Mass(0.005)));
    assertThat(rate).hasToString("2.5 to 5 g/10 plant");
    for (var text : List.of("5 g/tree", "5 mL/pot", "20 mL per knapsack", "1 L/1000 seeds")) {
      assertThat(((ParsedRate) QuantityText.parse(text)).per())
          .isInstanceOf(RateDenominator.PerThing.class);
    }
  }

  @Test
  void whatTheAmountIsOfIsKept() {
    var active = (ParsedRate) QuantityText.parse("150 g a.i. per hectare");
    assertThat(active.amount().of()).isEqualTo("ai");
    var seed = (ParsedRate) QuantityText.parse("4 g product/kg seed");
    assertThat(seed.amount().of()).isEqualTo("product");
    assertThat(seed.per()).isEqualTo(new RateDenominator.PerUnit(1, MassUnit.KILOGRAM, "seed"));
    assertThat(((ParsedAmount) QuantityText.parse("5 L of water")).of()).isEqualTo("water");
  }

  @Test
  void dilutionSaysHowItWasRead() {
    assertThat(QuantityText.parse("1:500").remark())
        .isEqualTo("read as volume in volume: 1 in a whole of 500, 2 mL/L");
    assertThat(QuantityText.parse("1 + 4").remark()).contains("1 in a whole of 5, 200 mL/L");
    assertThat(QuantityText.parse("2 mL/L").remark()).isEmpty();
  }

  @Test
  void rangesAreNoSingleAmounts() {
    assertThatThrownBy(() -> VolumePerArea.parse("250-300 ml/acre"))
        .isInstanceOf(UnreadableQuantity.class)
        .hasMessageContaining("a range where one amount is wanted")
        .hasMessageContaining("250 or 300");
    var range = VolumePerArea.parseRange("250-300 ml/acre");
    assertThat(range.low()).isEqualTo(VolumePerArea.of(250, VolumePerAreaUnit.MILLILITRE_PER_ACRE));
    assertThat(range.high())
        .isEqualTo(VolumePerArea.of(300, VolumePerAreaUnit.MILLILITRE_PER_ACRE));
    assertThat(VolumePerArea.parseRange("1 L/ha").single()).isEqualTo(new VolumePerArea(1));
  }

  @Test
  void anotherKindIsRefused() {
    assertThatThrownBy(() -> VolumePerArea.parse("5 kg/ha"))
        .isInstanceOf(UnreadableQuantity.class)
        .hasMessageContaining("this is a mass per area and not a volume per area")
        .hasMessageContaining("  5 kg/ha\n    ^");
    assertThatThrownBy(() -> MassPerMass.parse("5 % w/v"))
        .hasMessageContaining("this is a mass per volume and not a mass per mass");
    assertThatThrownBy(() -> Mass.parse("5 g/plant"))
        .hasMessageContaining("this is an amount per plant and not a mass");
    assertThatThrownBy(() -> CountPerMass.parse("5 g/kg"))
        .hasMessageContaining("not a count per mass");
  }

  /** A mass per volume may be a density; a percentage never is. */
  @Test
  void densityIsReadWhereItIsAskedFor() {
    assertThat(Density.parse("1.09 kg/L")).isEqualTo(new Density(1.09));
    assertThat(Density.parse("8.34 lb/gal (US)").kilogramsPerLitre())
        .isCloseTo(0.99935, within(1e-5));
    assertThatThrownBy(() -> Density.parse("5 % w/v")).isInstanceOf(UnreadableQuantity.class);
  }

  @Test
  void temperaturesHaveSigns() {
    assertThat(Temperature.parse("25 °C")).isEqualTo(Temperature.ofCelsius(25));
    assertThat(Temperature.parse("-3.5 degrees Celsius")).isEqualTo(Temperature.ofCelsius(-3.5));
    assertThat(Temperature.parse("−40°F").celsius()).isEqualTo(-40);
    assertThat(Temperature.parse("300 K").celsius()).isCloseTo(26.85, within(1e-9));
    assertThatThrownBy(() -> Temperature.parse("25"))
        .hasMessageContaining("write \"25 °C\" or \"25 °F\"");
    assertThatThrownBy(() -> Temperature.parse("25,5 °C"))
        .hasMessageContaining("write \"25.5 °C\"");
    assertThatThrownBy(() -> Temperature.parse("-300 °C"))
        .hasMessageContaining("below absolute zero");
  }

  @ParameterizedTest
  @ValueSource(ints = {201, 100_000})
  void longTextsAreRefusedAtOnce(int length) {
    assertThatThrownBy(() -> QuantityText.parse("1".repeat(length)))
        .isInstanceOf(UnreadableQuantity.class)
        .hasMessageContaining("characters long");
  }

  /** Each printed symbol, and each name in words, is read back as its unit. */
  @Test
  void symbolsAndNamesAreReadBack() {
    for (var unit : UnitSamples.all()) {
      boolean share = unit.words().startsWith("part") || unit.words().startsWith("percent");
      for (var name : List.of(unit.symbol(), share ? unit.symbol() : unit.words())) {
        var parsed = QuantityText.parse("2 " + name);
        var kind = unit.kind() == QuantityKind.DENSITY ? unit.kind() : parsed.kind().orElseThrow();
        assertThat(kind).as(name).isEqualTo(unit.kind());
        assertThat(TypedReading.single(parsed, kind)).as(name).isEqualTo(unit.toBase(2));
      }
    }
  }
}
