package agro.course;

import static org.assertj.core.api.Assertions.assertThat;

import agro.working.TextLanguage;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A right answer is printed with the decimals that its question asks for. */
class AskedDecimalsTest {

  @ParameterizedTest
  @CsvSource({
    "11.6667, 0.05, 11.7",
    "11.6667, 0.1, 11.7",
    "6.9084, 0.1, 6.9",
    "12, 0.1, 12.0",
    "22.15, 0.01, 22.15",
    "0.65399, 0.005, 0.65",
    "71.3, 1, 71"
  })
  void decimalsOfTheTolerance(double number, double amount, String printed) {
    var words = CourseWords.of(TextLanguage.ENGLISH);
    var tolerance = new AnswerTolerance(amount, AnswerTolerance.Reason.DECIMALS);
    assertThat(words.asked(number, tolerance)).isEqualTo(printed);
    assertThat(tolerance.accepts(Double.parseDouble(printed), number)).isTrue();
  }

  @ParameterizedTest
  @CsvSource({"594.444, 594", "10.156, 10.16"})
  void anyOtherToleranceGetsTheDigitsThatItDeserves(double number, String printed) {
    var words = CourseWords.of(TextLanguage.ENGLISH);
    assertThat(words.asked(number, AnswerTolerance.usual(number))).isEqualTo(printed);
  }
}
