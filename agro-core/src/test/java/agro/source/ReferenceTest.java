package agro.source;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.lang.reflect.Modifier;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Citations, editions and ranges of validity. */
class ReferenceTest {

  @Test
  void citationOfAWorkThatWasRead() {
    assertThat(
            Reference.read("Author, A. & Other, B.", 2001, "A title", "Journal 1:2-3").citation())
        .isEqualTo("Author, A. & Other, B. (2001). A title. Journal 1:2-3");
  }

  @Test
  void otherStandingsAreSaid() {
    assertThat(Reference.fromMemory("Author, A.", 2001, "A title", "").citation())
        .isEqualTo("Author, A. (2001). A title [value from memory]");
    assertThat(Reference.commonPractice("Sums begin on 1 January").citation())
        .isEqualTo("Sums begin on 1 January [common practice, no source]");
    assertThat(Reference.invented("Counts of four seasons").citation())
        .isEqualTo("Counts of four seasons [invented for demonstration]");
    assertThat(new Reference("", 2001, "A title", "", Standing.COMPUTED).citation())
        .isEqualTo("(2001). A title [computed here]");
  }

  @Test
  void shortCitationFitsACell() {
    assertThat(Reference.read("Author, A. & Other, B.", 2001, "A title", "").shortCitation())
        .isEqualTo("Author 2001 (read in the source)");
    assertThat(Reference.fromMemory("An Institution", 2001, "A title", "").shortCitation())
        .isEqualTo("An Institution 2001 (value from memory)");
    assertThat(Reference.commonPractice("Sums begin on 1 January").shortCitation())
        .isEqualTo("common practice, no source");
  }

  @Test
  void titleIsNeeded() {
    assertThatThrownBy(() -> Reference.commonPractice(" "))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("a reference needs a title");
  }

  @Test
  void bibliographyCitesEveryWorkWithAPlaceOrSaysThatItHasNone() throws IllegalAccessException {
    var works =
        Stream.of(Bibliography.class, SamplingBibliography.class)
            .flatMap(holder -> Arrays.stream(holder.getFields()))
            .filter(field -> Modifier.isStatic(field.getModifiers()))
            .toList();
    assertThat(works).isNotEmpty();
    for (var work : works) {
      var reference = (Reference) work.get(null);
      boolean published = !reference.place().isBlank() && reference.year() > 1900;
      assertThat(published || reference.standing() == Standing.COMMON_PRACTICE)
          .as(reference.citation())
          .isTrue();
    }
  }

  @Test
  void editions() {
    var day = LocalDate.of(2024, 1, 31);
    assertThat(new Edition("thresholds", "2", day))
        .hasToString("thresholds, edition 2 of 2024-01-31");
    assertThatThrownBy(() -> new Edition("thresholds", "", day))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("an edition needs a name and a version");
  }

  @Test
  void rangesCoverTheirBounds() {
    var range = new ValidityRange("constant temperature", 15, 30, "°C");
    assertThat(range.covers(15)).isTrue();
    assertThat(range.covers(30)).isTrue();
    assertThat(range.covers(30.1)).isFalse();
    assertThat(range.covers(Double.NaN)).isFalse();
    assertThatThrownBy(() -> new ValidityRange("constant temperature", 30, 15, "°C"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("a validity range needs finite bounds in order, but got 30.0 to 15.0");
  }
}
