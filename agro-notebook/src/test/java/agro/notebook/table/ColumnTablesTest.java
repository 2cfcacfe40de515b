package agro.notebook.table;

import static org.assertj.core.api.Assertions.assertThat;

import agro.notebook.display.Display;
import agro.notebook.display.MimeBundle;
import agro.working.Cell;
import agro.working.ResultTable;
import agro.working.ResultTable.Column;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import tech.tablesaw.api.ColumnType;
import tech.tablesaw.api.DateColumn;
import tech.tablesaw.api.DoubleColumn;
import tech.tablesaw.api.IntColumn;
import tech.tablesaw.api.LongColumn;
import tech.tablesaw.api.StringColumn;
import tech.tablesaw.api.Table;

class ColumnTablesTest {

  private record Visit(String trap, LocalDate date, int moths, Double mean, boolean working) {}

  private static final LocalDate DAY = LocalDate.of(2026, 5, 1);

  @Test
  void resultsBecomeTypedColumns() {
    var table =
        ColumnTables.of(
            ResultTable.of(
                "Sums",
                List.of(Column.of("field"), Column.of("sum", "°C·d"), Column.of("day")),
                List.of(
                    List.of(Cell.text("007"), Cell.number(1.0 / 3, 1), Cell.day(DAY)),
                    List.of(Cell.notKnown(), Cell.notKnown(), Cell.notKnown()))));
    assertThat(table.columnNames()).containsExactly("field", "sum (°C·d)", "day");
    assertThat(table.types())
        .containsExactly(ColumnType.STRING, ColumnType.DOUBLE, ColumnType.LOCAL_DATE);
    assertThat(table.stringColumn(0).get(0)).isEqualTo("007");
    assertThat(table.doubleColumn(1).getDouble(0)).isEqualTo(1.0 / 3);
    assertThat(table.column(1).isMissing(1)).isTrue();
    assertThat(table.column(2).isMissing(1)).isTrue();
  }

  @Test
  void recordsBecomeTypedColumns() {
    var table =
        ColumnTables.ofRecords(
            Visit.class,
            List.of(new Visit("1,5", DAY, 4, 2.5, true), new Visit("T2", null, 0, null, false)));
    assertThat(table.types())
        .containsExactly(
            ColumnType.STRING,
            ColumnType.LOCAL_DATE,
            ColumnType.INTEGER,
            ColumnType.DOUBLE,
            ColumnType.BOOLEAN);
    assertThat(table.stringColumn("trap").get(0)).isEqualTo("1,5");
    assertThat(table.intColumn("moths").get(1)).isZero();
    assertThat(table.column("mean").isMissing(1)).isTrue();
  }

  @Test
  void tablesAreShownLikeOurs() {
    var table =
        Table.create(
            "Long",
            DoubleColumn.create("x (°C)", IntStream.range(0, 100).mapToDouble(n -> n / 2.0)));
    table.doubleColumn(0).setMissing(1);
    var shown = Display.render(table);
    assertThat(shown.plainText()).contains("x (°C)").contains("not known").contains("of 100 rows");
    assertThat(shown.get(MimeBundle.HTML).orElseThrow()).contains("<caption>Long</caption>");
    assertThat(Display.render(Table.create("empty")).plainText()).contains("without columns");
  }

  @Test
  void typesSizeAndMissingValuesAreShown() {
    var day = DateColumn.create("day", Arrays.asList(DAY, null));
    var count = IntColumn.create("moths", new int[] {7, 0});
    count.setMissing(1);
    var big = LongColumn.create("id", 9_007_199_254_740_993L, Long.MIN_VALUE);
    var table =
        Table.create("<Log>", StringColumn.create("trap <1>", "a & b", ""), day, count, big);
    var shown = Display.render(table);
    assertThat(shown.get(MimeBundle.HTML).orElseThrow())
        .contains("<caption>&lt;Log&gt;</caption>", "trap &lt;1&gt;", "a &amp; b")
        .contains(">integer</small>", ">local date</small>", ">string</small>", ">long</small>")
        .contains("<td class=\"agro-number\">9007199254740993</td>")
        .contains("<td class=\"agro-number agro-missing\">not known</td>")
        .contains("2 rows")
        .doesNotContain("-2147483648", "-9223372036854775808");
    assertThat(shown.plainText()).contains("moths: integer").contains("2 rows");
    assertThat(Display.render(table.emptyCopy()).plainText()).contains("trap <1>", "0 rows");
    assertThat(Display.render(count).plainText()).contains("moths").contains("not known");
  }

  @Test
  void wideTablesAreCutInTheMiddle() {
    var table = Table.create("wide");
    IntStream.range(0, 60).forEach(n -> table.addColumns(IntColumn.create("c" + n, new int[] {n})));
    var html = Display.render(table).get(MimeBundle.HTML).orElseThrow();
    assertThat(html)
        .contains(">c14<", ">c55<", ">c59<", "The first 15 and the last 5 of 60 columns")
        .doesNotContain(">c15<", ">c54<");
  }
}
