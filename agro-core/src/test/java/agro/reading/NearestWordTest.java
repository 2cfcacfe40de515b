package agro.reading;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class NearestWordTest {

  private static final List<String> WORDS = List.of("minimum", "maximum", "date", "trap name");

  @Test
  void nearestOfSeveral() {
    assertThat(NearestWord.to("minimun", WORDS)).contains("minimum");
    assertThat(NearestWord.to("MAXIMUM", WORDS)).contains("maximum");
    assertThat(NearestWord.to("dat", WORDS)).contains("date");
    assertThat(NearestWord.to("maixmum", WORDS)).contains("maximum");
  }

  @Test
  void wordInsideAnother() {
    assertThat(NearestWord.to("trap", WORDS)).contains("trap name");
    assertThat(NearestWord.to("maximum temperature", WORDS)).contains("maximum");
  }

  @Test
  void nothingNear() {
    assertThat(NearestWord.to("humidity", WORDS)).isEmpty();
    assertThat(NearestWord.to("at", List.of("data column"))).isEmpty();
    assertThat(NearestWord.to("count", List.of())).isEmpty();
  }
}
