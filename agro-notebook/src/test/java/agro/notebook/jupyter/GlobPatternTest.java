package agro.notebook.jupyter;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The patterns of the function GLOB of SQLite, which histories are searched with. */
class GlobPatternTest {

  @ParameterizedTest
  @CsvSource({
    "*, '', true",
    "*, 'any\nlines', true",
    "int*, int n = 3;, true",
    "int*, Integer n, false",
    "*= 3*, int n = 3;, true",
    "6 ? 7, 6 * 7, true",
    "6 ? 7, 6 7, false",
    "?, \uD83E\uDD8B, true",
    "[a-c]x, bx, true",
    "[a-c]x, dx, false",
    "[^a-c]x, dx, true",
    "[^a-c]x, ax, false",
    "[]]x, ]x, true",
    "a[b, a[b, true",
    "*a*b*c, xaxbxbxc, true",
    "*a*b*c, xaxcxb, false",
    "abc, abcd, false",
    "'', '', true",
    "'', a, false"
  })
  void matches(String pattern, String text, boolean expected) {
    assertThat(new GlobPattern(pattern).matches(text)).isEqualTo(expected);
  }

  @Test
  void noPatternTakesLong() {
    var pattern = new GlobPattern("*a".repeat(200) + "b");
    assertThat(pattern.matches("a".repeat(5_000))).isFalse();
  }
}
