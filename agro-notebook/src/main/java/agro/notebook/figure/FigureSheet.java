package agro.notebook.figure;

import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageTypeSpecifier;
import javax.imageio.metadata.IIOMetadata;
import javax.imageio.metadata.IIOMetadataNode;

/**
 * A heading and panels below each other.
 *
 * @param heading what the figure shows
 * @param subheading what the reader must know to read it; may be empty
 * @param panels the panels from top to bottom
 */
record FigureSheet(String heading, String subheading, List<ChartPanel> panels) {

  private static final int HEADING_HEIGHT = 52;
  private static final int MARGIN = 12;
  private static final double POINTS_PER_INCH = 96;
  private static final double INCHES_PER_METRE = 1 / 0.0254;

  FigureSheet {
    panels = List.copyOf(panels);
  }

  int height() {
    return HEADING_HEIGHT + panels.stream().mapToInt(ChartPanel::height).sum();
  }

  /** The sheet as a PNG file with so many dots for a point of the page. */
  byte[] png(double dotsPerPoint) {
    var image =
        new BufferedImage(
            (int) Math.round(FigureLook.WIDTH * dotsPerPoint),
            (int) Math.round(height() * dotsPerPoint),
            BufferedImage.TYPE_INT_RGB);
    var graphics = image.createGraphics();
    try {
      graphics.setColor(FigureLook.PAPER);
      graphics.fillRect(0, 0, image.getWidth(), image.getHeight());
      graphics.scale(dotsPerPoint, dotsPerPoint);
      draw(graphics);
    } finally {
      graphics.dispose();
    }
    return encoded(image, dotsPerPoint);
  }

  private void draw(Graphics2D graphics) {
    smooth(graphics);
    graphics.setColor(FigureLook.INK);
    graphics.setFont(FigureLook.HEADING);
    graphics.drawString(heading, MARGIN, 22);
    graphics.setColor(FigureLook.QUIET_INK);
    graphics.setFont(FigureLook.TEXT);
    graphics.drawString(subheading, MARGIN, 43);
    var top = HEADING_HEIGHT;
    for (var panel : panels) {
      var part = (Graphics2D) graphics.create(0, top, FigureLook.WIDTH, panel.height());
      try {
        smooth(part);
        panel.draw(part);
      } finally {
        part.dispose();
      }
      top += panel.height();
    }
  }

  private static void smooth(Graphics2D graphics) {
    graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    graphics.setRenderingHint(
        RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
    graphics.setRenderingHint(
        RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
  }

  private static byte[] encoded(BufferedImage image, double dotsPerPoint) {
    var writer = ImageIO.getImageWritersByFormatName("png").next();
    var file = new ByteArrayOutputStream();
    try (var output = ImageIO.createImageOutputStream(file)) {
      writer.setOutput(output);
      var metadata =
          writer.getDefaultImageMetadata(
              ImageTypeSpecifier.createFromRenderedImage(image), writer.getDefaultWriteParam());
      setDensity(metadata, Math.round(dotsPerPoint * POINTS_PER_INCH * INCHES_PER_METRE));
      writer.write(new IIOImage(image, null, metadata));
    } catch (IOException impossibleInMemory) {
      throw new UncheckedIOException(impossibleInMemory);
    } finally {
      writer.dispose();
    }
    return file.toByteArray();
  }

  /** Tells how large the picture is in print. */
  private static void setDensity(IIOMetadata metadata, long dotsPerMetre) throws IOException {
    var format = "javax_imageio_png_1.0";
    var density = new IIOMetadataNode("pHYs");
    density.setAttribute("pixelsPerUnitXAxis", Long.toString(dotsPerMetre));
    density.setAttribute("pixelsPerUnitYAxis", Long.toString(dotsPerMetre));
    density.setAttribute("unitSpecifier", "meter");
    var root = new IIOMetadataNode(format);
    root.appendChild(density);
    metadata.mergeTree(format, root);
  }
}
