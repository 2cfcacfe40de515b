package agro.notebook.figure;

import static org.assertj.core.api.Assertions.assertThat;

import agro.notebook.display.MimeBundle;
import agro.notebook.display.Renderers;
import java.awt.Graphics2D;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.time.LocalDate;
import java.util.Base64;
import java.util.List;
import java.util.stream.IntStream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.knowm.xchart.CategoryChartBuilder;
import org.knowm.xchart.PieChartBuilder;
import org.knowm.xchart.XYChart;
import org.knowm.xchart.XYChartBuilder;
import org.knowm.xchart.XYSeries.XYSeriesRenderStyle;
import org.knowm.xchart.internal.chartpart.IChart;

class ChartRendererTest {

  @Test
  void aReadersOwnChartIsShownAtDoubleResolutionWithItsPoints() throws IOException {
    var chart =
        new XYChartBuilder()
            .width(300)
            .height(200)
            .title("Catch & warmth")
            .xAxisTitle("°C·d")
            .build();
    chart.addSeries("UC1", new double[] {10, 20}, new double[] {1.5, 3});
    var bundle = Renderers.standard().render(chart);
    assertThat(bundle.get(MimeBundle.HTML).orElseThrow())
        .contains("alt=\"Chart: Catch &amp; warmth\"", "width=\"300\"", "1.5000");
    var png = Base64.getDecoder().decode(bundle.get(MimeBundle.PNG).orElseThrow());
    var image = ImageIO.read(new ByteArrayInputStream(png));
    assertThat(image.getWidth()).isEqualTo(600);
    assertThat(image.getHeight()).isEqualTo(400);
  }

  @Test
  void aChartThatCannotBeDrawnIsASentenceWithItsPoints() {
    var chart =
        new XYChart(300, 200) {
          @Override
          public void paint(Graphics2D graphics, int width, int height) {
            throw new InternalError("no fonts");
          }
        };
    chart.addSeries("UC1", new double[] {10, 20}, new double[] {1.5, 3});
    var bundle = Renderers.standard().render(chart);
    assertThat(bundle.get(MimeBundle.PNG)).isEmpty();
    assertThat(bundle.plainText()).contains("cannot be drawn here").contains("no fonts", "1.5000");
  }

  @Test
  void chartsOfOtherKindsShowTheirNumbersToo() {
    var bars = new CategoryChartBuilder().width(300).height(200).title("Bars").build();
    bars.addSeries("n", List.of("May", "June"), List.of(3, 4));
    assertThat(html(bars)).contains(">June</td>", ">4.0000</td>");
    var slices = new PieChartBuilder().width(300).height(200).title("Pie").build();
    slices.addSeries("north", 12.5);
    assertThat(html(slices)).contains(">north</th>", ">12.5</td>");
    var days = new XYChartBuilder().width(300).height(200).build();
    days.addSeries("d", List.of(LocalDate.of(2026, 5, 2)), List.of(1));
    assertThat(html(days)).contains(">2026-05-02<").contains("alt=\"Chart: without a title\"");
  }

  @Test
  void pointsAreListedUpToALimit() {
    var chart = new XYChartBuilder().width(300).height(200).title("Many").build();
    chart.addSeries("s", new double[1_000], new double[1_000]);
    assertThat(html(chart)).contains("The first 200 of 1000 points of s");
  }

  private static String html(IChart chart) {
    return Renderers.standard().render(chart).get(MimeBundle.HTML).orElseThrow();
  }

  @Test
  void veryManyPointsAreDrawnByTheirExtremesAndStayInTheChart() {
    var x = IntStream.range(0, 100_000).asDoubleStream().toArray();
    var y = IntStream.range(0, 100_000).mapToDouble(n -> n == 77_777 ? 9 : n % 7 / 7.0).toArray();
    y[500] = Double.NaN;
    var kept = ThinnedLines.kept(x, y, 100);
    assertThat(kept).hasSizeLessThan(502).isSorted().contains(0, 500, 77_777, 99_999);
    var chart = new XYChartBuilder().width(300).height(200).title("Many").build();
    chart.addSeries("s", x, y);
    assertThat(html(chart)).contains("<img");
    var series = chart.getSeriesCollection().iterator().next();
    assertThat(series.getXData()).isEqualTo(x);
    assertThat(series.getYData()).isEqualTo(y);
    assertThat(ThinnedLines.kept(new double[6_000], new double[6_000], 100))
        .containsExactly(0, 5_999);
  }

  @Test
  void marksOnTopOfEachOtherAreDrawnOnce() {
    var x = IntStream.range(0, 50_000).mapToDouble(n -> n * 37 % 1_000).toArray();
    var y = IntStream.range(0, 50_000).mapToDouble(n -> n * 91 % 503).toArray();
    assertThat(ThinnedLines.apart(x, y, 20, 10)).hasSizeBetween(200, 500).isSorted();
    var chart = new XYChartBuilder().width(300).height(200).title("Scatter").build();
    chart.getStyler().setDefaultSeriesRenderStyle(XYSeriesRenderStyle.Scatter);
    chart.addSeries("s", x, y);
    assertThat(html(chart)).contains("<img");
    assertThat(chart.getSeriesCollection().iterator().next().getXData()).isEqualTo(x);
  }
}
