package agro.notebook.figure;

import static org.assertj.core.api.Assertions.assertThat;

import agro.generation.FlightShare;
import agro.notebook.display.MimeBundle;
import agro.notebook.display.Renderers;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import java.util.List;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DrawnFigureTest {

  private static DrawnFigure figure() {
    return ForecastFigure.of(
        FigureSamples.forecast(
            List.of(FigureSamples.row(2, FlightShare.HALF, FigureSamples.AS_OF, 0))));
  }

  @Test
  void isShownWithWordsAndFoldedData() {
    var bundle = Renderers.standard().render(figure());
    assertThat(bundle.get(MimeBundle.HTML).orElseThrow())
        .contains("<figure")
        .contains("alt=\"Forecast of leek moth")
        .contains("width=\"900\"")
        .contains("<figcaption>")
        .contains("<details")
        .contains("not this season");
    assertThat(bundle.plainText()).contains("Forecast of leek moth");
    var png = Base64.getDecoder().decode(bundle.get(MimeBundle.PNG).orElseThrow());
    assertThat(png).isEqualTo(figure().png());
  }

  @Test
  void savesForScreenAndForPrint(@TempDir Path folder) throws IOException {
    var screen = folder.resolve("made/screen.png");
    var print = folder.resolve("print.png");
    figure().savePng(screen);
    figure().savePngForPrint(print);
    assertThat(ImageIO.read(screen.toFile()).getWidth()).isEqualTo(1800);
    assertThat(ImageIO.read(print.toFile()).getWidth()).isEqualTo(2813);
    assertThat(dotsPerMetre(Files.readAllBytes(screen))).isEqualTo(7559);
    assertThat(dotsPerMetre(Files.readAllBytes(print))).isEqualTo(11811);
  }

  private static long dotsPerMetre(byte[] png) throws IOException {
    var reader = ImageIO.getImageReadersByFormatName("png").next();
    try (var input = ImageIO.createImageInputStream(new ByteArrayInputStream(png))) {
      reader.setInput(input);
      var root = reader.getImageMetadata(0).getAsTree("javax_imageio_png_1.0");
      for (var node = root.getFirstChild(); node != null; node = node.getNextSibling()) {
        if (node.getNodeName().equals("pHYs")) {
          return Long.parseLong(
              node.getAttributes().getNamedItem("pixelsPerUnitXAxis").getNodeValue());
        }
      }
      throw new AssertionError("no density");
    } finally {
      reader.dispose();
    }
  }
}
