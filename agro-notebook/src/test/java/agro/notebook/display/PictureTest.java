package agro.notebook.display;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import agro.report.InputProblem;
import java.awt.Image;
import java.awt.Toolkit;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import java.util.List;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Pictures carry a description and are shown at the right size. */
class PictureTest {

  private static final String SVG = "<svg xmlns=\"http://www.w3.org/2000/svg\"/>";

  @Test
  void filesAreToldApartByTheirFirstBytes() {
    assertThat(Picture.of(new byte[] {(byte) 0xFF, (byte) 0xD8, (byte) 0xFF, 0}).bundle().data())
        .containsEntry("image/jpeg", "/9j/AA==");
    assertThat(Picture.of("GIF89a".getBytes(StandardCharsets.US_ASCII)).bundle().data())
        .containsKey("image/gif");
    var svg = Picture.of(SVG.getBytes(StandardCharsets.UTF_8)).bundle();
    assertThat(svg.get("image/svg+xml")).contains(SVG);
    assertThat(svg.get(MimeBundle.HTML).orElseThrow()).contains("src=\"data:image/svg+xml;base64,");
    assertThatThrownBy(() -> Picture.of(new byte[] {1, 2}))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("PNG, JPEG, GIF or SVG");
  }

  @Test
  void descriptionsAreEscapedAndWidthsKept(@TempDir Path folder) throws IOException {
    var file = Files.writeString(folder.resolve("a.svg"), SVG);
    assertThat(Picture.read(file)).hasToString("Picture a.svg");
    var shown = Display.render(Picture.read(file).withAlternative("a <trap>").shownAt(40));
    assertThat(shown.get(MimeBundle.HTML).orElseThrow())
        .contains("alt=\"a &lt;trap&gt;\" width=\"40\"");
    assertThat(shown.plainText()).isEqualTo("a <trap>");
  }

  @Test
  void imagesOfOtherKindsAreDrawn() {
    var points = new BufferedImage(4, 4, BufferedImage.TYPE_INT_RGB);
    Image scaled = points.getScaledInstance(2, 2, Image.SCALE_FAST);
    assertThat(Display.render(scaled).plainText()).isEqualTo("A picture of 2 by 2 points");
    var unread = Toolkit.getDefaultToolkit().createImage(new byte[0]);
    assertThat(Display.render(unread).plainText()).contains("not loaded");
  }

  @Test
  void veryLargeImagesAreMadeSmaller() throws IOException {
    var large = Display.render(new BufferedImage(6_000, 3_000, BufferedImage.TYPE_BYTE_BINARY));
    var png = Base64.getDecoder().decode(large.get(MimeBundle.PNG).orElseThrow());
    var image = ImageIO.read(new ByteArrayInputStream(png));
    assertThat((long) image.getWidth() * image.getHeight()).isBetween(7_900_000L, 8_000_000L);
    assertThat(large.plainText())
        .isEqualTo("A picture of 6000 by 3000 points, shown smaller than it is");
  }

  @Test
  void severalPicturesStandBelowEachOther() {
    var point = new BufferedImage(1, 1, BufferedImage.TYPE_INT_RGB);
    var shown = Display.render(List.of(point, point));
    assertThat(shown.get(MimeBundle.HTML).orElseThrow().split("<img ")).hasSize(3);
    assertThat(shown.plainText())
        .isEqualTo("A picture of 1 by 1 points\nA picture of 1 by 1 points");
  }
}
