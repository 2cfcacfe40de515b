package agro.notebook.figure;

import static org.assertj.core.api.Assertions.assertThat;

import agro.notebook.display.MimeBundle;
import agro.notebook.display.Renderers;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.Base64;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.knowm.xchart.XYChartBuilder;

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
}
