package agro.notebook.display;

import static org.assertj.core.api.Assertions.assertThat;

import agro.working.Caution;
import agro.working.Cell;
import agro.working.ResultTable;
import agro.working.ResultTable.Column;
import agro.working.Working;
import java.awt.image.BufferedImage;
import java.nio.CharBuffer;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class RenderersTest {

  private record Visit(String trap, double meanMoths) {}

  private record OwnWords(int n) {
    @Override
    public String toString() {
      return "number " + n;
    }
  }

  private static MimeBundle shown(Object value) {
    return Renderers.standard().render(value);
  }

  @Test
  void resultsHaveThreeFormsAndWorkingsLatexToo() {
    var table =
        ResultTable.of(
            "A <title>",
            List.of(Column.of("sum", "°C·d")),
            List.of(List.of(Cell.number(444.6, 1))));
    var working = Working.of("Steps").withCautions(Caution.all());
    assertThat(shown(table).data().keySet())
        .containsExactly(MimeBundle.HTML, MimeBundle.MARKDOWN, MimeBundle.TEXT);
    assertThat(shown(working).data().keySet())
        .containsExactly(MimeBundle.HTML, MimeBundle.MARKDOWN, MimeBundle.TEXT, MimeBundle.LATEX);
    assertThat(shown(table).get(MimeBundle.HTML).orElseThrow())
        .contains("A &lt;title&gt;")
        .contains("444.6");
    assertThat(shown(working).plainText()).contains(Caution.HEADING);
  }

  @Test
  void simpleValuesAreText() {
    assertThat(shown(null).plainText()).isEqualTo("null");
    assertThat(shown(3.5).data()).isEqualTo(Map.of(MimeBundle.TEXT, "3.5"));
    assertThat(shown("<b>").plainText()).isEqualTo("<b>");
    assertThat(shown(new double[] {1, 2}).plainText()).isEqualTo("[1.0, 2.0]");
    assertThat(shown(new int[0][0]).plainText()).isEqualTo("[]");
  }

  @Test
  void recordsAreTables() {
    var one = shown(new Visit("T1", 2.25));
    assertThat(one.get(MimeBundle.HTML).orElseThrow()).contains("Mean moths").contains("2.25");
    var many = shown(List.of(new Visit("T1", 2.25), new Visit("T2", 3)));
    assertThat(many.plainText()).contains("Mean moths").contains("3.00");
    assertThat(shown(new OwnWords(3)).data()).isEqualTo(Map.of(MimeBundle.TEXT, "number 3"));
  }

  @Test
  void longTablesSayThatTheyAreCut() {
    var visits = IntStream.range(0, 100).mapToObj(n -> new Visit("T" + n, n));
    var text = shown(visits.toList()).plainText();
    assertThat(text).contains("T34").doesNotContain("T35").contains("T99").contains("100 rows");
  }

  @Test
  void numbersAreShownWithFiveDigits() {
    var text = shown(List.of(new Visit("T1", 23.4837191), new Visit("T2", 123456.7))).plainText();
    assertThat(text).contains("23.484").contains("123456.700");
    assertThat(shown(new Visit("T1", 1e-4 / 3)).plainText()).contains("3.33");
    assertThat(shown(new Visit("T1", Double.NaN)).get(MimeBundle.HTML).orElseThrow())
        .contains("not known");
  }

  @Test
  void mapsAreTables() {
    var map = new TreeMap<>(Map.of("a", 1.5, "b", 2.0));
    assertThat(shown(map).plainText()).isEqualTo("{a=1.5, b=2.0}");
    assertThat(shown(map).get(MimeBundle.HTML).orElseThrow()).contains("2.0");
    assertThat(shown(Map.of()).plainText()).isEqualTo("{}");
  }

  @Test
  void picturesCarryTheirSizeInWords() {
    var picture = shown(new BufferedImage(3, 2, BufferedImage.TYPE_INT_RGB));
    assertThat(picture.plainText()).isEqualTo("A picture of 3 by 2 points");
    assertThat(picture.get(MimeBundle.PNG)).isPresent();
    assertThat(picture.get(MimeBundle.HTML).orElseThrow()).contains("alt=\"A picture of 3 by 2");
  }

  @Test
  void figuresCarryTextAndNumbers() {
    var table = ResultTable.of("T", List.of(Column.of("x")), List.of(List.of(Cell.number(1, 0))));
    var png = new byte[] {1, 2, 3};
    var figure = FigureBundle.of(png, "It <rises>", "Fig", table).shownAt(600);
    png[0] = 9;
    assertThat(figure.png()).containsExactly(1, 2, 3);
    assertThat(shown(figure).get(MimeBundle.HTML).orElseThrow())
        .contains("alt=\"It &lt;rises&gt;\"")
        .contains("width=\"600\"")
        .contains("<figcaption>Fig</figcaption>")
        .contains("<details")
        .contains("<table>");
    assertThat(shown(figure).plainText()).isEqualTo("Figure: Fig\nIt <rises>");
  }

  @Test
  void troubleBecomesASentence() {
    assertThat(shown(new Silent()).plainText()).isEqualTo("(its toString gave null)");
    var broken = new Broken();
    assertThat(shown(broken).plainText())
        .isEqualTo("A value of type Broken could not be shown: java.lang.StackOverflowError: deep");
    assertThat(shown(Arrays.asList(broken, 1)).plainText()).contains("could not be shown");
    assertThat(shown(Map.of("a", broken)).plainText()).contains("could not be shown");
  }

  private static final class Silent {
    @Override
    @SuppressWarnings("ToStringReturnsNull")
    public String toString() {
      return null;
    }
  }

  private static final class Broken {
    @Override
    public String toString() {
      throw new StackOverflowError("deep");
    }
  }

  @Test
  void theMostSpecificRendererIsAsked() {
    var renderers =
        Renderers.of(
            List.of(
                named(CharSequence.class, "general"),
                named(String.class, "special"),
                named(String.class, "too late")));
    assertThat(renderers.render("x").plainText()).isEqualTo("special");
    assertThat(renderers.render(CharBuffer.wrap("x")).plainText()).isEqualTo("general");
    assertThat(renderers.render(3).plainText()).isEqualTo("3");
  }

  private static <T> RichRenderer<T> named(Class<T> type, String name) {
    return new RichRenderer<>() {
      @Override
      public Class<T> type() {
        return type;
      }

      @Override
      public MimeBundle render(T value) {
        return MimeBundle.text(name);
      }
    };
  }
}
