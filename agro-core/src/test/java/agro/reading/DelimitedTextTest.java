package agro.reading;

import static agro.report.SourceLocation.file;
import static agro.report.SourceLocation.line;
import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Records, headings and line numbers of delimited text. */
class DelimitedTextTest {

  private static DelimitedText parse(String text, String... required) {
    return DelimitedText.parse("visits.csv", text, DelimitedFormat.COMMA, List.of(required));
  }

  @Test
  void cellsAreFoundByNameWithoutRegardToCaseAndTrimmed() {
    var text = parse("Trap, Count ,note\n T1 ,\u00A03\u00A0, \" a b \" \n", "trap", "count");
    assertThat(text.columns()).containsExactly("Trap", "Count", "note");
    assertThat(text.hasColumn("COUNT")).isTrue();
    assertThat(text.hasColumn("lure")).isFalse();
    assertThat(text.lines()).hasSize(1);
    var only = text.lines().get(0);
    assertThat(only.text("TRAP")).isEqualTo("T1");
    assertThat(only.wholeNumber("count")).isEqualTo(3);
    assertThat(only.text("note")).isEqualTo("a b");
    assertThat(only.optionalText("lure")).isEmpty();
    assertThat(text)
        .hasToString("visits.csv: 1 line with the columns \"Trap\", \"Count\", \"note\"");
    assertThat(only).hasToString("visits.csv, line 2: [T1, 3, a b]");
  }

  @Test
  void lineNumbersCountCommentsBlankLinesAndQuotedLineBreaks() {
    var text =
        parse(
            """
            # counts of three traps

            trap,count
            T1,1
            # failed:
            T2,"2
            and more"

            ,
            T3,3
            """);
    assertThat(text.lines()).extracting(DelimitedLine::lineNumber).containsExactly(4L, 6L, 10L);
    assertThat(text.lines().get(1).text("count")).isEqualTo("2\nand more");
  }

  @ParameterizedTest
  @ValueSource(strings = {"\n", "\r\n", "\r"})
  void everyKindOfLineBreakCountsOnce(String lineBreak) {
    var text = parse("# note\n\ntrap\nT1\n\nT2".replace("\n", lineBreak));
    assertThat(text.lines()).extracting(DelimitedLine::lineNumber).containsExactly(4L, 6L);
  }

  @Test
  void quotedNumberSignIsNoComment() {
    assertThat(parse("trap\n\"#1\"\n").lines().get(0).text("trap")).isEqualTo("#1");
  }

  @Test
  void quotesInsideCellsAreWrittenTwice() {
    assertThat(parse("trap\n\"the \"\"old\"\" one, east\"\n").lines().get(0).text("trap"))
        .isEqualTo("the \"old\" one, east");
  }

  @Test
  void emptyCellsAtTheEndAreForgiven() {
    var text = parse("trap,count,,\nT1,3,,,,\nT2,4\n");
    assertThat(text.columns()).containsExactly("trap", "count");
    assertThat(text.lines()).hasSize(2);
  }

  @Test
  void fileWithByteOrderMark(@TempDir Path folder) throws IOException {
    var file = Files.writeString(folder.resolve("visits.csv"), "\uFEFFtrap\nT1\n", UTF_8);
    var text = DelimitedText.read(file, DelimitedFormat.COMMA, List.of("trap")).requireRows();
    assertThat(text.columns()).containsExactly("trap");
    assertThat(text.name()).isEqualTo(file.toString());
    assertThat(text.format()).isEqualTo(DelimitedFormat.COMMA);
  }

  @Test
  void missingFileIsRefusedByName(@TempDir Path folder) {
    var file = folder.resolve("visits.csv");
    Refusal.of(() -> DelimitedText.read(file, DelimitedFormat.COMMA, List.of()))
        .at(file(file.toString()))
        .read("there is no such file")
        .mend("check the spelling and the folder: looked for " + file.toAbsolutePath());
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "\n\n", "# nothing but a comment\n", " \n,,\n"})
  void emptyFile(String content) {
    Refusal.of(() -> parse(content, "trap", "count"))
        .at(file("visits.csv"))
        .read("the file is empty")
        .expected("a heading line with the columns \"trap\", \"count\"")
        .because("without a heading the columns are unknown")
        .mend("write the heading line and one line for each record");
  }

  @Test
  void headerOnly() {
    var text = parse("# counts\ntrap,count\n", "trap");
    assertThat(text.lines()).isEmpty();
    Refusal.of(text::requireRows)
        .at(file("visits.csv"))
        .read("the file has a heading but no lines below it")
        .expected("at least one line of data")
        .because("there is nothing to compute from")
        .mend("add the data below the heading on line 2");
  }

  @Test
  void missingColumnOffersTheNearestName() {
    Refusal.of(() -> parse("\ntrap,cuont\nT1,3\n", "trap", "count"))
        .at(line("visits.csv", 2))
        .read("there is no column \"count\"")
        .expected("a heading line with \"trap\", \"count\"")
        .because("the data are found by these names; the heading has \"trap\", \"cuont\"")
        .mend("rename \"cuont\" to \"count\" if that is what it holds");
  }

  @Test
  void missingColumnWithoutNearMatch() {
    Refusal.of(() -> parse("site,pest\nA,B\n", "trap", "count"))
        .at(line("visits.csv", 1))
        .read("there are no columns \"trap\", \"count\"")
        .mend("add the missing column, or name an existing one so");
  }

  /** A maximum that took the place of the minimum would give wrong sums without a sign of it. */
  @Test
  void wantedColumnIsNeverOfferedForAnother() {
    Refusal.of(() -> parse("date,Maximum\n2024-05-31,20\n", "date", "minimum", "maximum"))
        .read("there is no column \"minimum\"")
        .mend("add the missing column, or name an existing one so");
  }

  @Test
  void headingInOneCellNamesTheOtherSeparator() {
    Refusal.of(() -> parse("trap;count\nT1;3\n", "trap", "count"))
        .mend(
            "save the file with ',' between its cells, or, where that can be declared, declare ';', which"
                + " its heading holds");
  }

  @Test
  void columnThatIsAskedForLaterIsRefusedAsWell() {
    var only = parse("trap,count\nT1,3\n").lines().get(0);
    Refusal.of(() -> only.text("counts"))
        .at(line("visits.csv", 1))
        .read("there is no column \"counts\"")
        .mend("rename \"count\" to \"counts\" if that is what it holds");
  }

  @Test
  void duplicateHeader() {
    Refusal.of(() -> parse("trap,count,Trap\nT1,3,T1\n"))
        .at(line("visits.csv", 1).column("Trap"))
        .read("columns 1 and 3 have the same name")
        .expected("a different name for each column, capital letters apart")
        .because("it is unknown which of the two is meant")
        .mend("rename or remove one of them");
  }

  @Test
  void columnWithoutName() {
    Refusal.of(() -> parse("trap,,count\nT1,3,4\n"))
        .at(line("visits.csv", 1))
        .read("column 2 has no name")
        .expected("a name for each column")
        .because("cells are found by the names of their columns")
        .mend("name the column, or remove it");
  }

  @Test
  void shortRow() {
    Refusal.of(() -> parse("trap,count,note\nT1,3,\nT2\n"))
        .at(line("visits.csv", 3))
        .read("the line has only 1 cell; it ends before column \"count\"")
        .expected("3 cells as in the heading: \"trap\", \"count\", \"note\"")
        .because("it is unknown which cell belongs to which column")
        .mend("write the missing cells; an unknown value is an empty cell between separators");
  }

  @Test
  void longRowWithCommas() {
    Refusal.of(() -> parse("day,minimum\n1,11,5\n"))
        .at(line("visits.csv", 2))
        .read("the line has 3 cells, more than the heading")
        .expected("2 cells as in the heading: \"day\", \"minimum\"")
        .because("it is unknown which cell belongs to which column")
        .mend(
            "put a cell that holds a comma into double quotes; if commas are decimal commas,"
                + " separate the cells by ';' and declare both");
  }

  @Test
  void longRowWithAnotherSeparator() {
    Refusal.of(
            () ->
                DelimitedText.parse(
                    "log.csv",
                    "day\tminimum\n1\t2\t3\n",
                    DelimitedFormat.COMMA.withSeparator('\t'),
                    List.of()))
        .read("the line has 3 cells, more than the heading")
        .mend("put a cell that holds a tab into double quotes");
  }

  @Test
  void unclosedQuoteAtTheEnd() {
    Refusal.of(() -> parse("trap,count\nT1,3\nT2,\"4\nT3,5\n"))
        .at(line("visits.csv", 3))
        .read("a cell opens with a double quote that is never closed")
        .expected("quotes around whole cells, and a quote inside a cell written twice")
        .because("the end of the cell is unknown, so that lines could be swallowed")
        .mend("close the quote, or remove it");
  }

  @Test
  void quoteThatSwallowsLinesIsNamedInTheCure() {
    Refusal.of(() -> parse("trap,count\n\"T1,3\nT2\",4,5\n"))
        .at(line("visits.csv", 2))
        .read("the line has 3 cells, more than the heading")
        .mend("close the double quote that makes a cell of this line run over its end");
  }

  @Test
  void textAfterClosingQuote() {
    Refusal.of(() -> parse("trap,count\n\"T1\" east,3\n"))
        .at(line("visits.csv", 2))
        .read("text follows the closing double quote of a cell")
        .expected("quotes around whole cells, and a quote inside a cell written twice")
        .because("the end of the cell is unknown, so that lines could be swallowed")
        .mend("remove the text or the quotes, or double the quotes inside the cell");
  }

  @Test
  void lineWithoutEnd() {
    Refusal.of(() -> parse("trap\n" + ",".repeat(20_000)))
        .at(line("visits.csv", 2))
        .read("a line or a cell is longer than can be read")
        .expected("at most 16384 cells in a line and 16 million characters in a cell")
        .mend("close a forgotten double quote, or check that this is the file that was meant");
  }
}
