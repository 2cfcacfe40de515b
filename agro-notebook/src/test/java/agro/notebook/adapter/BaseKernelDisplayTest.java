package agro.notebook.adapter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import agro.notebook.display.FigureBundle;
import agro.working.Cell;
import agro.working.ResultTable;
import agro.working.ResultTable.Column;
import io.github.spencerpark.jupyter.kernel.BaseKernel;
import io.github.spencerpark.jupyter.kernel.LanguageInfo;
import io.github.spencerpark.jupyter.kernel.display.DisplayData;
import io.github.spencerpark.jupyter.kernel.display.mime.MIMEType;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Against the renderer of the other kernel itself. */
class BaseKernelDisplayTest {

  private static final class OtherKernel extends BaseKernel {
    @Override
    public DisplayData eval(String code) {
      return getRenderer().render(code);
    }

    @Override
    public LanguageInfo getLanguageInfo() {
      return new LanguageInfo.Builder("java").build();
    }
  }

  record Catch(String trap, int moths) {}

  private final OtherKernel kernel = new OtherKernel();

  @BeforeEach
  void install() {
    BaseKernelDisplay.install(kernel);
  }

  private String html(Object value) {
    return String.valueOf(kernel.getRenderer().render(value).getData(MIMEType.TEXT_HTML));
  }

  private String text(Object value) {
    return String.valueOf(kernel.getRenderer().render(value).getData(MIMEType.TEXT_PLAIN));
  }

  private static ResultTable table() {
    return ResultTable.of("Catches", List.of(Column.of("Trap")), List.of(List.of(Cell.text("A"))));
  }

  @Test
  void ourResultsAreShownInAllFormats() {
    var data = kernel.getRenderer().render(table());
    assertThat(data.getData(MIMEType.TEXT_HTML).toString()).contains("<table", "Catches");
    assertThat(data.getData(MIMEType.TEXT_MARKDOWN).toString()).contains("| Trap |");
    assertThat(data.getData(MIMEType.TEXT_PLAIN).toString()).contains("Catches");
  }

  @Test
  void aFormatThatIsAskedForComesAlone() {
    var data = kernel.getRenderer().renderAs(table(), "text/html");
    assertThat(data.hasDataForType(MIMEType.TEXT_HTML)).isTrue();
    assertThat(data.hasDataForType(MIMEType.TEXT_MARKDOWN)).isFalse();
  }

  @Test
  void figuresKeepTheirAlternativeText() {
    var figure = FigureBundle.of(new byte[] {1, 2, 3}, "Two flights", "Flights", table());
    var data = kernel.getRenderer().render(figure);
    assertThat(data.getData(MIMEType.TEXT_HTML).toString()).contains("alt=\"Two flights\"");
    assertThat(data.getData(MIMEType.IMAGE_PNG)).isEqualTo("AQID");
  }

  @Test
  void recordsOfOursAreTablesAndOthersAreLeftAlone() {
    assertThat(html(List.of(new Catch("A", 3), new Catch("B", 4)))).contains("<table", ">B<");
    assertThat(html(Map.of("A", new Catch("A", 3)))).contains("<table");
    assertThat(html(List.of(1, 2))).isEqualTo("null");
    assertThat(text(List.of(1, 2))).isEqualTo("[1, 2]");
    assertThat(text(Map.of("a", 1))).isEqualTo("{a=1}");
    assertThat(text("plain")).isEqualTo("plain");
  }

  @Test
  void aFailureBreaksNothing() {
    var bad =
        new java.util.AbstractList<Object>() {
          @Override
          public Object get(int index) {
            throw new AssertionError("broken");
          }

          @Override
          public int size() {
            return 1;
          }
        };
    assertThat(text(bad)).contains("failed with", "broken");
  }

  @Test
  void twiceIsHarmless() {
    BaseKernelDisplay.install(kernel);
    BaseKernelDisplay.install(kernel.getRenderer());
    assertThat(html(table()).split("<caption", -1)).hasSize(2);
  }

  @Test
  void whatIsNoKernelIsRefused() {
    assertThatThrownBy(() -> BaseKernelDisplay.install("kernel"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("a java.lang.String is no kernel");
  }

  @Test
  void withoutThatKernelASentenceSaysSo() {
    var before = System.err;
    var said = new ByteArrayOutputStream();
    System.setErr(new PrintStream(said, true, StandardCharsets.UTF_8));
    try {
      BaseKernelDisplay.install();
    } finally {
      System.setErr(before);
    }
    assertThat(said.toString(StandardCharsets.UTF_8)).contains("No IJava kernel runs here");
  }
}
