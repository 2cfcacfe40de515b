package agro.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Numbers in print. */
class NumbersTest {

  @ParameterizedTest
  @CsvSource({
    "444.6,444.6",
    "-1.50,-1.5",
    "100,100",
    "0,0",
    "-0.0,0",
    "0.1,0.1",
    "1e-7,0.0000001",
    "1e15,1000000000000000",
    "12345678901,12345678901",
    "12345678901.25,12345678901",
    "31.11111111111111,31.11111111"
  })
  void plainNumbers(double value, String printed) {
    assertThat(Numbers.plain(value)).isEqualTo(printed);
  }

  @Test
  void noiseOfBinaryFractionsIsHidden() {
    assertThat(Numbers.plain(0.1 + 0.2)).isEqualTo("0.3");
    assertThat(Numbers.plain(1.1 * 3)).isEqualTo("3.3");
  }

  @ParameterizedTest
  @CsvSource({
    "31.111,1,31.1",
    "0.25,1,0.3",
    "1.005,2,1.01",
    "-0.04,1,0.0",
    "-0.4,0,0",
    "-0.0,2,0.00",
    "-0.06,1,-0.1",
    "1234567.5,1,1234567.5",
    "2,3,2.000"
  })
  void fixedDecimals(double value, int decimals, String printed) {
    assertThat(Numbers.fixed(value, decimals)).isEqualTo(printed);
  }

  @Test
  void missingAndUnboundedAreWords() {
    assertThat(Numbers.plain(Double.NaN)).isEqualTo("not known");
    assertThat(Numbers.fixed(Double.NaN, 2)).isEqualTo("not known");
    assertThat(Numbers.plain(Double.POSITIVE_INFINITY)).isEqualTo("unbounded");
    assertThat(Numbers.fixed(Double.NEGATIVE_INFINITY, 0)).isEqualTo("unbounded below");
  }

  /** Arabic digits, decimal commas and grouping are for the reader's language, not for files. */
  @Test
  void printDoesNotDependOnTheCountry() {
    var before = Locale.getDefault();
    try {
      for (var tag : new String[] {"de-DE", "fr-FR", "ar-EG", "hi-IN-u-nu-deva", "tr-TR"}) {
        Locale.setDefault(Locale.forLanguageTag(tag));
        assertThat(Numbers.fixed(-1234.5, 2)).isEqualTo("-1234.50");
        assertThat(Numbers.plain(-1234.5)).isEqualTo("-1234.5");
      }
    } finally {
      Locale.setDefault(before);
    }
  }

  @Property(seed = "8")
  void plainNumbersReadBack(@ForAll double value) {
    var printed = Numbers.plain(value);
    assertThat(printed).doesNotContainIgnoringCase("e");
    assertThat(Double.parseDouble(printed)).isCloseTo(value, within(Math.abs(value) * 5.1e-10));
  }

  @Property(seed = "8")
  void tenDigitsReadBackExactly(
      @ForAll int digits, @ForAll @IntRange(min = 0, max = 9) int places) {
    double value = BigDecimal.valueOf(digits, places).doubleValue();
    assertThat(Double.parseDouble(Numbers.plain(value))).isEqualTo(value);
  }

  @Property(seed = "8")
  void fixedNumbersKeepTheirDecimalsAndRoundToTheNearest(
      @ForAll int thousandths, @ForAll @IntRange(min = 0, max = 6) int decimals) {
    var exact = BigDecimal.valueOf(thousandths, 3);
    var printed = Numbers.fixed(exact.doubleValue(), decimals);
    assertThat(printed).matches("-?[0-9]+" + (decimals == 0 ? "" : "\\.[0-9]{" + decimals + "}"));
    assertThat(new BigDecimal(printed))
        .isEqualByComparingTo(exact.setScale(decimals, RoundingMode.HALF_UP));
  }
}
