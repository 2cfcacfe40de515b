package agro.course.marking;

import static org.assertj.core.api.Assertions.assertThat;

import agro.working.TextLanguage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A table of texts as students type them. */
class TypedAnswersTest {

  private static final Pattern ESCAPED = Pattern.compile("\\\\u([0-9a-f]{4})");

  record Row(
      String answer, TextLanguage language, String typed, MarkVerdict verdict, double marks) {}

  static List<Row> rows() {
    return lines().map(line -> line.split("\\|", -1)).map(TypedAnswersTest::row).toList();
  }

  private static Stream<String> lines() {
    try (var file = TypedAnswersTest.class.getResourceAsStream("typed-answers.txt")) {
      var text = new String(file.readAllBytes(), StandardCharsets.UTF_8);
      return text.lines().filter(line -> !line.startsWith("#"));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Row row(String... fields) {
    var typed =
        ESCAPED
            .matcher(fields[2].replace("\\t", "\t"))
            .replaceAll(code -> String.valueOf((char) Integer.parseInt(code.group(1), 16)));
    return new Row(
        fields[0],
        fields[1].equals("de") ? TextLanguage.GERMAN : TextLanguage.ENGLISH,
        typed,
        MarkVerdict.valueOf(fields[3]),
        Double.parseDouble(fields[4]));
  }

  @ParameterizedTest
  @MethodSource("rows")
  void everyTextIsMarkedAsTheTableSays(Row row) {
    var exercise = MarkedExercises.exercise(row.answer(), row.language());
    var mark = Marker.withDefaults().mark(exercise, row.typed()).parts().get(0);
    assertThat(mark.verdict()).as("%s", mark).isEqualTo(row.verdict());
    assertThat(mark.marks()).as("%s", mark).isEqualTo(row.marks());
    assertThat(mark.feedback()).as("%s", mark).isNotBlank().doesNotContain("{");
    assertThat(mark.typed()).isEqualTo(row.typed());
  }

  @Test
  void theTableIsLong() {
    assertThat(rows()).hasSizeGreaterThan(200);
  }
}
