package agro.working;

import static org.assertj.core.api.Assertions.assertThat;

import agro.reading.DelimitedFormat;
import agro.reading.DelimitedText;
import agro.working.ResultTable.Column;
import java.time.LocalDate;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.CharRange;
import net.jqwik.api.constraints.Chars;
import net.jqwik.api.constraints.StringLength;
import org.junit.jupiter.api.Test;

/** A table written as a file is read back by our own reader as it was. */
class TableRoundTripTest {

  private static DelimitedText readBack(ResultTable table) {
    return DelimitedText.parse("table.csv", table.toCsv(), DelimitedFormat.COMMA, List.of());
  }

  private static ResultTable table(Cell... cells) {
    return ResultTable.of(
        "t", List.of(Column.of("id"), Column.of("value", "°C")), List.of(List.of(cells)));
  }

  @Test
  void everyKindOfCell() {
    var text =
        readBack(
            ResultTable.of(
                "t",
                List.of(
                    Column.of("#id"), Column.of("day"), Column.of("sum", "°C·d"), Column.of("x")),
                List.of(
                    List.of(
                        Cell.text("#1, \"east\"\nof the lane"),
                        Cell.day(LocalDate.of(2024, 2, 29)),
                        Cell.number(1.0 / 3, 1),
                        Cell.notKnown()))));
    assertThat(text.columns()).containsExactly("#id", "day", "sum (°C·d)", "x");
    var line = text.lines().get(0);
    assertThat(line.text("#id")).isEqualTo("#1, \"east\"\nof the lane");
    assertThat(line.date("day")).isEqualTo(LocalDate.of(2024, 2, 29));
    assertThat(line.number("sum (°C·d)")).isEqualTo(1.0 / 3);
    assertThat(line.optionalNumber("x")).isEmpty();
  }

  @Property(seed = "8")
  void numbersComeBackToTheLastBit(@ForAll double value) {
    var line = readBack(table(Cell.text("a"), Cell.number(value, 0))).lines().get(0);
    // A zero has no sign in a file; every other number comes back bit by bit.
    assertThat(line.number("value (°C)")).isEqualTo(value == 0 ? 0.0 : value);
  }

  @Property(seed = "8")
  void textComesBack(
      @ForAll
          @StringLength(min = 1, max = 12)
          @Chars({',', ';', '"', '\'', '\n', '#', '|', '<', ' ', '=', '-', '+', '@', '°'})
          @CharRange(from = '0', to = 'z')
          String text) {
    var line = readBack(table(Cell.number(1, 0), Cell.text(text))).lines().get(0);
    assertThat(line.optionalText("value (°C)").orElse(""))
        .isEqualTo(SpreadsheetText.harmless(text).strip());
  }
}
