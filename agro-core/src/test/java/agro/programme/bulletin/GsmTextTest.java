package agro.programme.bulletin;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

/** Text for short messages; the alphabet is that of 3GPP TS 23.038, 6.2.1. */
class GsmTextTest {

  @Test
  void lettersOutsideOfTheAlphabetBecomeTheirNearest() {
    assertThat(GsmText.of("Čebula – 5\u00a0°C [x] „Zwiebel“ Größe"))
        .isEqualTo("Cebula - 5 ?C (x) \"Zwiebel\" Größe");
    assertThat(GsmText.of("a\u0000b\nc")).isEqualTo("ab c");
    assertThat(GsmText.of("\ud83d\udc1b")).isEqualTo("?");
  }

  @Property(seed = "8")
  void everyResultFitsTheAlphabet(@ForAll String any) {
    assertThat(GsmText.of(any).codePoints()).allMatch(GsmText::isBasic);
  }
}
