package agro.reading;

import static org.assertj.core.api.Assertions.assertThat;

import agro.report.InputProblem;
import agro.report.SourceLocation;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.Chars;
import net.jqwik.api.constraints.Size;
import net.jqwik.api.constraints.StringLength;

/** Whatever a file holds, it is read or refused in four parts; nothing else happens. */
class AnyInputTest {

  private static final String NAME = "any.csv";

  private static void isWhole(InputProblem refused) {
    assertThat(refused.location().file()).isEqualTo(NAME);
    assertThat(List.of(refused.read(), refused.expected(), refused.why(), refused.cure()))
        .allSatisfy(part -> assertThat(part).isNotBlank());
  }

  @Property(seed = "8")
  void textIsReadOrRefused(
      @ForAll
          @StringLength(max = 40)
          @Chars({'a', 'b', ',', ';', '"', '\n', '\r', ' ', '#', '\t', '\uFEFF', '\u00A0'})
          String text) {
    try {
      var read = DelimitedText.parse(NAME, text, DelimitedFormat.COMMA, List.of());
      assertThat(read.columns()).isNotEmpty().doesNotHaveDuplicates();
      for (var line : read.lines()) {
        assertThat(line.lineNumber()).isBetween(2L, (long) text.length());
        assertThat(read.columns())
            .allSatisfy(column -> assertThat(line.optionalText(column)).isNotNull());
      }
    } catch (InputProblem refused) {
      isWhole(refused);
    }
  }

  @Property(seed = "8")
  void cellIsAFiniteNumberOrRefused(
      @ForAll
          @StringLength(min = 1, max = 8)
          @Chars({'0', '1', '9', '.', ',', '+', '-', 'e', ' ', '\'', 'N', '\u2212', '\u0663'})
          String cell,
      @ForAll boolean decimalComma) {
    try {
      var place = SourceLocation.line(NAME, 2).column("x");
      double value = NumberText.number(cell, decimalComma ? ',' : '.', place);
      assertThat(value).isFinite().isEqualTo(Double.parseDouble(cell.replace(',', '.')));
      assertThat(cell).doesNotContain(decimalComma ? "." : ",", " ", "'", "N");
    } catch (InputProblem refused) {
      isWhole(refused);
    }
  }

  @Property(seed = "8")
  void bytesAreTextOrRefused(@ForAll @Size(max = 12) byte[] content) throws IOException {
    var file = Files.createTempFile("any", ".csv");
    try {
      Files.write(file, content);
      var text = TextFile.read(file, NAME, StandardCharsets.UTF_8);
      assertThat(new String(content, StandardCharsets.UTF_8)).isIn(text, "\uFEFF" + text);
      assertThat(text.getBytes(StandardCharsets.UTF_8).length)
          .isIn(content.length, content.length - 3);
    } catch (InputProblem refused) {
      isWhole(refused);
    } finally {
      Files.delete(file);
    }
  }
}
