package agro.reading;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import agro.report.SourceLocation;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class DelimitedFormatTest {

  @Test
  void optionsAreChangedOneByOne() {
    assertThat(DelimitedFormat.COMMA).isEqualTo(new DelimitedFormat(',', '.', UTF_8));
    assertThat(DelimitedFormat.COMMA.withSeparator(';').withDecimalMark(','))
        .isEqualTo(DelimitedFormat.SEMICOLON);
    assertThat(DelimitedFormat.SEMICOLON.withCharset(ISO_8859_1).charset()).isEqualTo(ISO_8859_1);
  }

  @ParameterizedTest
  @ValueSource(chars = {'a', '7', ' ', '"', '\'', '#', '.', '+', '-', '\n', '\r', '\0'})
  void separatorThatCellsHold(char separator) {
    Refusal.of(() -> DelimitedFormat.COMMA.withSeparator(separator))
        .at(SourceLocation.NONE)
        .read("the cell separator is " + DelimitedFormat.shown(separator))
        .expected("a comma, a semicolon, a tab or another sign that no cell contains")
        .because("the cells could not be told from the separators")
        .mend("declare the character that stands between the cells");
  }

  @Test
  void otherDecimalMark() {
    Refusal.of(() -> DelimitedFormat.COMMA.withDecimalMark('\''))
        .read("the decimal mark is '''")
        .expected("a point or a comma")
        .because("numbers in files are written with one of these")
        .mend("declare '.' or ','");
  }

  @Test
  void invisibleCharactersAreNamed() {
    assertThat(DelimitedFormat.shown('\t')).isEqualTo("a tab");
    assertThat(DelimitedFormat.shown(' ')).isEqualTo("a space");
    assertThat(DelimitedFormat.shown('\r')).isEqualTo("a line break");
    assertThat(DelimitedFormat.shown('\0')).isEqualTo("a zero byte");
    assertThat(DelimitedFormat.shown(';')).isEqualTo("';'");
  }
}
