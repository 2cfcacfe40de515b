package agro.reading;

import static agro.report.SourceLocation.line;
import static org.assertj.core.api.Assertions.assertThat;

import agro.report.SourceLocation;
import java.time.LocalDate;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Cells by declared type: what is taken, and each refusal with its four parts. */
class DelimitedLineTest {

  private static final SourceLocation PLACE = line("log.csv", 2).column("cell");

  private enum Shelter {
    SHELTER_AIR,
    CANOPY_AIR,
    SOIL
  }

  /** A line with one cell below the heading "cell"; tabs separate, so that commas stay inside. */
  private static DelimitedLine cell(String content, char decimalMark) {
    var format = DelimitedFormat.COMMA.withSeparator('\t').withDecimalMark(decimalMark);
    return DelimitedText.parse(
            "log.csv", "cell\tmore\n" + content + "\tx\n", format, List.of("cell"))
        .lines()
        .get(0);
  }

  private static DelimitedLine cell(String content) {
    return cell(content, '.');
  }

  /** The short way of reading gives what the JDK's own parser gives, to the last bit. */
  @Test
  void numbersAreReadAsTheJdkReadsThem() {
    var random = new Random(5);
    for (int i = 0; i < 3000; i++) {
      var digits = Long.toString(random.nextLong(1_000_000_000_000_000L));
      int point = random.nextInt(digits.length() + 1);
      var text =
          (random.nextBoolean() ? "-" : "")
              + digits.substring(0, point)
              + "."
              + digits.substring(point);
      assertThat(cell(text).number("cell")).as(text).isEqualTo(Double.parseDouble(text));
    }
    assertThat(Double.doubleToLongBits(cell("-0").number("cell")))
        .isEqualTo(Double.doubleToLongBits(-0.0));
  }

  @ParameterizedTest
  @CsvSource({
    "12.5,12.5",
    "-3,-3",
    "+4.25,4.25",
    ".5,0.5",
    "5.,5",
    "1e3,1000",
    "2.5E-2,0.025",
    "0,0"
  })
  void numbersWithPoint(String content, double value) {
    assertThat(cell(content).number("cell")).isEqualTo(value);
    assertThat(cell(content).optionalNumber("cell")).hasValue(value);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {"1,5;1.5", "-0,25;-0.25", "12;12", "1,5e2;150"})
  void numbersWithComma(String content, double value) {
    assertThat(cell(content, ',').number("cell")).isEqualTo(value);
  }

  @Test
  void decimalCommaUnderDecimalPointIsNeverFifteen() {
    Refusal.of(() -> cell("1,5").number("cell"))
        .at(PLACE)
        .read("the cell reads \"1,5\"")
        .expected("a number with the decimal mark '.', such as 12.5")
        .because(
            "',' may be a decimal mark or a grouping mark, and guessing could change the value a"
                + " thousandfold")
        .mend("declare the decimal mark ',' for this file, or write the number with '.'");
  }

  @Test
  void decimalPointUnderDecimalComma() {
    Refusal.of(() -> cell("1.500", ',').number("cell"))
        .at(PLACE)
        .read("the cell reads \"1.500\"")
        .expected("a number with the decimal mark ',', such as 12,5")
        .because(
            "'.' may be a decimal mark or a grouping mark, and guessing could change the value a"
                + " thousandfold")
        .mend("declare the decimal mark '.' for this file, or write the number with ','");
  }

  @ParameterizedTest
  @ValueSource(strings = {"1,234,567", "1.234.567", "1 234", "1\u202F234.5", "1'234", "1,234.5"})
  void groupingIsRefused(String content) {
    Refusal.of(() -> cell(content).number("cell"))
        .at(PLACE)
        .expected("a number with the decimal mark '.', such as 12.5")
        .because("the cell must be computed with")
        .mend("write the number without grouping marks");
  }

  @ParameterizedTest
  @ValueSource(strings = {"NaN", "nan", "Infinity", "-Infinity", "n/a", "warm", "0x10", "--3"})
  void wordsAreNoNumbers(String content) {
    var refusal =
        Refusal.of(() -> cell(content).number("cell"))
            .at(PLACE)
            .read("the cell reads \"" + content + "\"")
            .expected("a number with the decimal mark '.', such as 12.5")
            .because("the cell must be computed with");
    refusal.mend(
        content.startsWith("0")
            ? "leave the number alone in the cell, without unit or remark, or leave the cell empty"
            : "write a number, or leave the cell empty if the value is not known");
  }

  @ParameterizedTest
  @ValueSource(strings = {"12.5 °C", "12d", "12.5f", "3 ?"})
  void numberWithRemark(String content) {
    Refusal.of(() -> cell(content).number("cell"))
        .mend(
            "leave the number alone in the cell, without unit or remark, or leave the cell empty");
  }

  @ParameterizedTest
  @ValueSource(strings = {"\u22125", "\u20135.5"})
  void minusSignOfPrint(String content) {
    Refusal.of(() -> cell(content).number("cell"))
        .at(PLACE)
        .mend("write the minus sign as a hyphen: -");
  }

  @Test
  void numberBeyondReach() {
    Refusal.of(() -> cell("1e999").number("cell"))
        .at(PLACE)
        .because("the number is larger than any that can be computed with")
        .mend("check the exponent");
  }

  @ParameterizedTest
  @CsvSource({"12,12", "-7,-7", "+3,3", "007,7"})
  void wholeNumbers(String content, int value) {
    assertThat(cell(content).wholeNumber("cell")).isEqualTo(value);
    assertThat(cell(content).optionalWholeNumber("cell")).hasValue(value);
  }

  @ParameterizedTest
  @ValueSource(strings = {"3.5", "3.0", "1,000", "1 000", "1e3", "three", "NaN"})
  void wholeNumberWithFractionOrGrouping(String content) {
    Refusal.of(() -> cell(content).wholeNumber("cell"))
        .at(PLACE)
        .read("the cell reads \"" + content + "\"")
        .expected("a whole number without decimals and grouping, such as 12")
        .because("things that are counted have no fractions, and a mark could mean thousands")
        .mend("write the number in digits alone, or leave the cell empty where it may be");
  }

  @Test
  void wholeNumberBeyondReach() {
    Refusal.of(() -> cell("2147483648").wholeNumber("cell"))
        .at(PLACE)
        .because("the number is outside -2147483648 to 2147483647")
        .mend("check the number of digits");
  }

  @Test
  void negativeCount() {
    assertThat(cell("0").count("cell")).isZero();
    Refusal.of(() -> cell("-1").count("cell"))
        .at(PLACE)
        .read("the count is -1")
        .expected("0 or more")
        .because("nothing can be counted fewer than no times")
        .mend("remove the sign; if the count is not known, leave the cell empty where it may be");
  }

  @Test
  void dates() {
    assertThat(cell("2024-02-29").date("cell")).isEqualTo(LocalDate.of(2024, 2, 29));
    assertThat(cell("2024-02-29").optionalDate("cell")).contains(LocalDate.of(2024, 2, 29));
  }

  @ParameterizedTest
  @ValueSource(strings = {"31.05.2024", "5/6/2024", "05-06-24", "31/5/24"})
  void dayOrMonthFirst(String content) {
    Refusal.of(() -> cell(content).date("cell"))
        .at(PLACE)
        .read("the cell reads \"" + content + "\"")
        .expected("a date as year-month-day, such as 2024-05-31")
        .because("day and month cannot be told apart with certainty")
        .mend("write four digits of the year, two of the month and two of the day, with hyphens");
  }

  @ParameterizedTest
  @ValueSource(strings = {"2024/05/31", "20240531", "31 May 2024", "2024-5-31", "2024-05-31T00:00"})
  void otherShapesOfDates(String content) {
    Refusal.of(() -> cell(content).date("cell"))
        .at(PLACE)
        .because("dates in other shapes are not guessed at")
        .mend("write four digits of the year, two of the month and two of the day, with hyphens");
  }

  @ParameterizedTest
  @ValueSource(strings = {"2023-02-29", "2024-04-31", "2024-13-01", "2024-00-10"})
  void daysThatTheCalendarLacks(String content) {
    Refusal.of(() -> cell(content).date("cell"))
        .at(PLACE)
        .expected("a date as year-month-day, such as 2024-05-31")
        .because("the calendar has no such day")
        .mend("correct the month or the day");
  }

  @ParameterizedTest
  @ValueSource(strings = {"shelter air", "Shelter-Air", "SHELTER_AIR", "shelter  air"})
  void choices(String content) {
    assertThat(cell(content).choice("cell", Shelter.class)).isEqualTo(Shelter.SHELTER_AIR);
    assertThat(cell(content).optionalChoice("cell", Shelter.class)).contains(Shelter.SHELTER_AIR);
  }

  @Test
  void unknownChoiceOffersTheNearestWord() {
    Refusal.of(() -> cell("soli").choice("cell", Shelter.class))
        .at(PLACE)
        .read("the cell reads \"soli\"")
        .expected("one of the words: shelter air, canopy air, soil")
        .because("another word has no meaning here")
        .mend("write \"soil\" if that is meant");
    Refusal.of(() -> cell("water").choice("cell", Shelter.class)).mend("write one of these words");
    Refusal.of(() -> cell("canopy").choice("cell", Shelter.class))
        .mend("write \"canopy air\" if that is meant");
  }

  @Test
  void yesOrNo() {
    assertThat(cell("Yes").yesOrNo("cell")).isTrue();
    assertThat(cell("no").optionalYesOrNo("cell")).contains(false);
    Refusal.of(() -> cell("maybe").yesOrNo("cell"))
        .at(PLACE)
        .read("the cell reads \"maybe\"")
        .expected("yes or no")
        .because("another word has no meaning here")
        .mend("write yes or no");
  }

  @Test
  void emptyCellIsMissingWhereItMayBe() {
    var line = cell(" ");
    assertThat(line.optionalText("cell")).isEmpty();
    assertThat(line.optionalNumber("cell")).isEmpty();
    assertThat(line.optionalWholeNumber("cell")).isEmpty();
    assertThat(line.optionalCount("cell")).isEmpty();
    assertThat(line.optionalDate("cell")).isEmpty();
    assertThat(line.optionalChoice("cell", Shelter.class)).isEmpty();
    assertThat(line.optionalYesOrNo("cell")).isEmpty();
    assertThat(line.optionalNumber("no such column")).isEmpty();
  }

  @Test
  void emptyCellIsRefusedWhereItMustNotBe() {
    Refusal.of(() -> cell("").number("cell"))
        .at(PLACE)
        .read("the cell is empty")
        .expected("a value")
        .because("this column has to be filled in every line")
        .mend("fill in the cell, or remove the line");
  }

  @Test
  void optionalCellIsStillChecked() {
    Refusal.of(() -> cell("warm").optionalNumber("cell"))
        .mend("write a number, or leave the cell empty if the value is not known");
    Refusal.of(() -> cell("-2").optionalCount("cell"))
        .mend("remove the sign; if the count is not known, leave the cell empty where it may be");
  }

  @Test
  void longAndBrokenCellsAreShortenedInMessages() {
    var content = "\"a\nb\u001B[31m" + "c".repeat(100) + "\"";
    Refusal.of(() -> cell(content).number("cell"))
        .read("the cell reads \"a b\uFFFD[31m" + "c".repeat(52) + "...\"");
  }
}
