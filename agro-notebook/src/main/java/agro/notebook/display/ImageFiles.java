package agro.notebook.display;

import java.awt.Image;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.awt.image.RenderedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import javax.imageio.ImageIO;

/** Pictures that exist as points in memory. */
final class ImageFiles {

  /** Points that are shown at most; a larger picture is made smaller. */
  private static final long MOST_POINTS = 8_000_000;

  private ImageFiles() {}

  static MimeBundle bundle(Image image) {
    int width = image.getWidth(null);
    int height = image.getHeight(null);
    if (width <= 0 || height <= 0) {
      return MimeBundle.text("A picture that is not loaded yet");
    }
    var words = "A picture of " + width + " by " + height + " points";
    var shrink = Math.sqrt(MOST_POINTS / ((double) width * height));
    var png =
        shrink >= 1
            ? png(image instanceof RenderedImage points ? points : drawn(image, width, height))
            : png(
                drawn(
                    image,
                    Math.max(1, (int) (width * shrink)),
                    Math.max(1, (int) (height * shrink))));
    return Picture.png(png)
        .withAlternative(shrink >= 1 ? words : words + ", shown smaller than it is")
        .bundle();
  }

  private static BufferedImage drawn(Image image, int width, int height) {
    var copy = new BufferedImage(width, height, BufferedImage.TYPE_INT_ARGB);
    var graphics = copy.createGraphics();
    try {
      graphics.setRenderingHint(
          RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
      graphics.drawImage(image, 0, 0, width, height, null);
    } finally {
      graphics.dispose();
    }
    return copy;
  }

  private static byte[] png(RenderedImage image) {
    var file = new ByteArrayOutputStream();
    try {
      if (!ImageIO.write(image, "png", file)) {
        var width = image.getWidth();
        var height = image.getHeight();
        var copy = new BufferedImage(width, height, BufferedImage.TYPE_INT_ARGB);
        var graphics = copy.createGraphics();
        graphics.drawRenderedImage(image, null);
        graphics.dispose();
        ImageIO.write(copy, "png", file);
      }
    } catch (IOException impossibleInMemory) {
      throw new UncheckedIOException(impossibleInMemory);
    }
    return file.toByteArray();
  }
}
