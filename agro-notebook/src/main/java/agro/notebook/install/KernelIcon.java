package agro.notebook.install;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Path2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import javax.imageio.ImageIO;

/** The picture beside the kernel's name: a leaf with its veins, eaten at the margin. */
final class KernelIcon {

  /** The sizes that Jupyter asks for, in pixels. */
  static final List<Integer> SIZES = List.of(32, 64);

  private static final Color LEAF = new Color(0x4B, 0x8B, 0x3B);
  private static final Color VEIN = new Color(0xF4, 0xF7, 0xE8);
  private static final double[][] SIDE_VEINS = {
    {0.33, 0.67, 0.31, 0.40}, {0.33, 0.67, 0.62, 0.70},
    {0.47, 0.53, 0.46, 0.27}, {0.47, 0.53, 0.74, 0.55},
    {0.61, 0.39, 0.62, 0.21}, {0.61, 0.39, 0.81, 0.40}
  };

  private KernelIcon() {}

  static byte[] png(int size) {
    var image = new BufferedImage(size, size, BufferedImage.TYPE_INT_ARGB);
    var pen = image.createGraphics();
    pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    pen.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
    pen.scale(size, size);
    draw(pen);
    pen.dispose();
    var bytes = new ByteArrayOutputStream();
    try {
      ImageIO.write(image, "png", bytes);
    } catch (IOException e) {
      throw new UncheckedIOException("a picture could not be written to memory", e);
    }
    return bytes.toByteArray();
  }

  /** Draws on a square whose sides are one unit long. */
  private static void draw(Graphics2D pen) {
    pen.setColor(LEAF);
    pen.setStroke(new BasicStroke(0.07f, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
    pen.draw(line(0.06, 0.94, 0.25, 0.75));
    var blade = new Path2D.Double();
    blade.moveTo(0.16, 0.84);
    blade.curveTo(0.02, 0.42, 0.40, 0.06, 0.94, 0.06);
    blade.curveTo(0.96, 0.16, 0.96, 0.26, 0.94, 0.36);
    blade.curveTo(0.80, 0.36, 0.76, 0.50, 0.88, 0.56);
    blade.curveTo(0.76, 0.86, 0.46, 0.98, 0.16, 0.84);
    blade.closePath();
    pen.fill(blade);
    pen.setColor(VEIN);
    pen.setStroke(new BasicStroke(0.04f, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
    pen.draw(line(0.20, 0.80, 0.80, 0.20));
    pen.setStroke(new BasicStroke(0.025f, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
    for (var vein : SIDE_VEINS) {
      pen.draw(line(vein[0], vein[1], vein[2], vein[3]));
    }
  }

  private static Path2D line(double fromX, double fromY, double toX, double toY) {
    var line = new Path2D.Double();
    line.moveTo(fromX, fromY);
    line.lineTo(toX, toY);
    return line;
  }
}
