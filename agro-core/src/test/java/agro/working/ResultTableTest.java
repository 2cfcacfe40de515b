package agro.working;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import agro.working.ResultTable.Column;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** One table in four forms. */
class ResultTableTest {

  private static final ResultTable SUMS =
      ResultTable.of(
              "Sums by field",
              List.of(Column.of("field"), Column.of("sum", "°C·d"), Column.of("last day")),
              List.of(
                  List.of(
                      Cell.text("Upper Croft"),
                      Cell.number(444.649, 1),
                      Cell.day(LocalDate.of(2024, 5, 31))),
                  List.of(Cell.text("Mill Field"), Cell.number(-2, 1), Cell.notKnown())))
          .withNote("Invented figures.");

  /** A table of one text cell, and of a heading and title that try the same. */
  private static ResultTable of(String hostile) {
    return ResultTable.of(
            hostile, List.of(new Column(hostile, hostile)), List.of(List.of(Cell.text(hostile))))
        .withNote(hostile);
  }

  @Test
  void textHasNumbersOnTheRight() {
    assertThat(SUMS.toText())
        .isEqualTo(
            """
            Sums by field

            field        sum (°C·d)  last day
            -----------  ----------  ----------
            Upper Croft       444.6  2024-05-31
            Mill Field         -2.0  not known
            Note: Invented figures.""");
  }

  @Test
  void markdownIsAPipeTable() {
    assertThat(SUMS.toMarkdown())
        .isEqualTo(
            """
            **Sums by field**

            | field | sum (°C·d) | last day |
            | :--- | ---: | :--- |
            | Upper Croft | 444.6 | 2024-05-31 |
            | Mill Field | -2.0 | not known |

            Invented figures.""");
  }

  @Test
  void htmlHasCaptionScopesAndUnits() {
    assertThat(SUMS.toHtml())
        .isEqualTo(
            """
            <div class="agro-table">
            <table>
            <caption>Sums by field</caption>
            <thead>
            <tr><th scope="col">field</th><th scope="col" class="agro-number">sum (°C·d)</th>\
            <th scope="col">last day</th></tr>
            </thead>
            <tbody>
            <tr><th scope="row">Upper Croft</th><td class="agro-number">444.6</td>\
            <td>2024-05-31</td></tr>
            <tr><th scope="row">Mill Field</th><td class="agro-number">-2.0</td>\
            <td>not known</td></tr>
            </tbody>
            </table>
            <p class="agro-note">Invented figures.</p>
            </div>""");
  }

  /** RFC 4180: records end with CR LF. */
  @Test
  void csvKeepsNumbersUnrounded() {
    assertThat(SUMS.toCsv())
        .isEqualTo(
            """
            field,sum (°C·d),last day\r
            Upper Croft,444.649,2024-05-31\r
            Mill Field,-2,\r
            """);
  }

  @Test
  void latexIsAFloatingTableWithEscapedText() {
    var table =
        ResultTable.of(
                "Means & more",
                List.of(ResultTable.Column.of("Treatment"), ResultTable.Column.of("Mean", "%")),
                List.of(List.of(Cell.text("[a]_1"), Cell.number(2.5, 1))))
            .withNote("50 % of all");

    assertThat(table.toLatex())
        .isEqualTo(
            """
            \\begin{table}
            \\caption{Means \\& more}
            \\centering
            \\begin{tabular}{lr}
            \\hline
            {}Treatment & Mean (\\%) \\\\
            \\hline
            {}[a]\\_1 & 2.5 \\\\
            \\hline
            \\end{tabular}
            \\par 50 \\% of all
            \\end{table}""");
  }

  @Test
  void htmlFromDataIsEscaped() {
    var html = of("<script>alert('x')</script> & \"q\"").toHtml();
    assertThat(html).doesNotContain("<script", "</script", "'x'", "\"q\"", " & ");
    assertThat(html)
        .contains(
            "<caption>&lt;script&gt;alert(&#39;x&#39;)&lt;/script&gt; &amp; &quot;q&quot;</caption>");
  }

  @Test
  void pipesAndLineBreaksStayInsideTheirMarkdownCell() {
    var lines = of("a|b\n| c").toMarkdown().lines().toList();
    assertThat(lines)
        .containsExactly(
            "**a\\|b \\| c**",
            "",
            "| a\\|b \\| c (a\\|b \\| c) |",
            "| :--- |",
            "| a\\|b \\| c |",
            "",
            "a\\|b \\| c");
  }

  @Test
  void formulasFromDataAreHarmlessInFiles() {
    assertThat(of("=1+1").toCsv()).isEqualTo("'=1+1 (=1+1)\r\n'=1+1\r\n");
    assertThat(of("@SUM(A1,A2)").toCsv()).endsWith("\"'@SUM(A1,A2)\"\r\n");
  }

  @Test
  void negativeNumbersAreNeverNeutralised() {
    var table =
        ResultTable.of(
            "Differences",
            List.of(Column.of("a"), Column.of("b"), Column.of("c")),
            List.of(List.of(Cell.number(-1.5, 0), Cell.number(-1e-9, 1), Cell.text("-1.5"))));
    assertThat(table.toCsv()).isEqualTo("a,b,c\r\n-1.5,-0.000000001,-1.5\r\n");
  }

  @Test
  void missingAndUnboundedValuesInEveryForm() {
    var table =
        ResultTable.of(
            "Limits",
            List.of(Column.of("low"), Column.of("high")),
            List.of(
                List.of(Cell.number(Double.NaN, 1), Cell.number(Double.POSITIVE_INFINITY, 1)),
                List.of(Cell.notKnown(), Cell.number(-0.01, 1))));
    assertThat(table.toText()).endsWith("not known  unbounded\nnot known        0.0");
    assertThat(table.toMarkdown()).contains("| not known | unbounded |");
    assertThat(table.toHtml()).contains("<td class=\"agro-number\">not known</td>");
    assertThat(table.toCsv()).isEqualTo("low,high\r\n,unbounded\r\n,-0.01\r\n");
    assertThat(table.isNumeric(0)).isTrue();
  }

  @Test
  void columnWithTextOrNothingIsNotNumeric() {
    var columns = List.of(Column.of("x"));
    assertThat(ResultTable.of("t", columns, List.of()).isNumeric(0)).isFalse();
    assertThat(ResultTable.of("t", columns, List.of(List.of(Cell.notKnown()))).isNumeric(0))
        .isFalse();
    assertThat(
            ResultTable.of(
                    "t", columns, List.of(List.of(Cell.number(1, 0)), List.of(Cell.text("none"))))
                .isNumeric(0))
        .isFalse();
    assertThat(SUMS.isNumeric(1)).isTrue();
  }

  @Test
  void wideTablesAreWrappedBetweenWords() {
    var table =
        ResultTable.of(
            "Notes",
            List.of(Column.of("place"), Column.of("note")),
            List.of(List.of(Cell.text("Sand Lane"), Cell.text("word ".repeat(40)))));
    var lines = table.toText().lines().toList();
    assertThat(lines).allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(100));
    assertThat(lines.get(4)).startsWith("Sand Lane  word word");
    assertThat(lines.get(5)).startsWith("           word");
    assertThat(String.join(" ", lines).split("word", -1)).hasSize(41);
  }

  @Test
  void combiningMarksTakeNoColumn() {
    var table =
        ResultTable.of(
            "Widths",
            List.of(Column.of("n"), Column.of("x")),
            List.of(
                List.of(Cell.text("e\u0301e"), Cell.text("1")),
                List.of(Cell.text("ab"), Cell.text("2"))));
    assertThat(table.toText()).endsWith("e\u0301e  1\nab  2");
  }

  @Test
  void tableWithoutRowsSaysSo() {
    assertThat(ResultTable.of("t", List.of(Column.of("x")), List.of()).toText())
        .isEqualTo("t\n\nx\n-\n(no rows)");
  }

  @Test
  void listsAreCopied() {
    List<List<Cell>> rows = new ArrayList<>();
    rows.add(List.of(Cell.text("a")));
    var table = ResultTable.of("t", List.of(Column.of("x")), rows);
    rows.clear();
    assertThat(table.rows()).hasSize(1).isUnmodifiable();
    assertThat(table.withNote("n").notes()).containsExactly("n");
    assertThat(table.notes()).isEmpty();
  }

  @Test
  void rowsFitTheColumns() {
    assertThatThrownBy(
            () ->
                ResultTable.of(
                    "t",
                    List.of(Column.of("x"), Column.of("y")),
                    List.of(List.of(Cell.number(1, 0)))))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageStartingWith("a row of \"t\" needs 2 cells, but has 1");
    assertThatThrownBy(() -> ResultTable.of("t", List.of(), List.of()))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("a table needs a title and at least one column");
    assertThatThrownBy(() -> Column.of(" "))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("a column needs a name");
    assertThatThrownBy(() -> Cell.number(1, 16))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("a number is printed with 0 to 15 decimals, but got 16");
  }
}
