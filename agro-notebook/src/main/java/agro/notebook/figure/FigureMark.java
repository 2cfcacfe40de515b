package agro.notebook.figure;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;

/** Marks of the figures. A hollow mark is white inside, so that it is seen on dark and on pale. */
enum FigureMark {
  /** The median of a date. */
  MEDIAN(true),
  /** A bar goes on to the right. */
  GOES_ON(false),
  /** One observation. */
  OBSERVATION(false),
  /** One observation of which only a bound is known. */
  BOUND(true),
  /** A short upright bar. */
  BAR(false),
  /** Many observations together, of a first series. */
  DISC(false),
  /** The same of a second series. */
  SQUARE(false),
  /** The same of a third series. */
  TRIANGLE(false),
  /** A bar goes on to the left. */
  GOES_BACK(false);

  private static final double SIZE = 7;

  private final boolean hollow;

  FigureMark(boolean hollow) {
    this.hollow = hollow;
  }

  void paint(Graphics2D graphics, double x, double y, Color colour) {
    var shape = shape(x, y);
    graphics.setColor(hollow ? FigureLook.PAPER : colour);
    graphics.fill(shape);
    if (hollow) {
      graphics.setColor(colour);
      graphics.setStroke(FigureLook.solid(1.5));
      graphics.draw(shape);
    }
  }

  private Shape shape(double x, double y) {
    return switch (this) {
      case MEDIAN -> polygon(x - SIZE, y, x, y - SIZE, x + SIZE, y, x, y + SIZE);
      case GOES_ON -> polygon(x, y - SIZE, x + 1.6 * SIZE, y, x, y + SIZE);
      case GOES_BACK -> polygon(x, y - SIZE, x - 1.6 * SIZE, y, x, y + SIZE);
      case DISC -> new Ellipse2D.Double(x - 0.65 * SIZE, y - 0.65 * SIZE, 1.3 * SIZE, 1.3 * SIZE);
      case SQUARE -> new Rectangle2D.Double(x - 0.6 * SIZE, y - 0.6 * SIZE, 1.2 * SIZE, 1.2 * SIZE);
      case TRIANGLE ->
          polygon(
              x - 0.8 * SIZE, y + 0.6 * SIZE, x, y - 0.8 * SIZE, x + 0.8 * SIZE, y + 0.6 * SIZE);
      case BAR -> new Rectangle2D.Double(x - 0.25 * SIZE, y - SIZE, 0.5 * SIZE, 2 * SIZE);
      case OBSERVATION, BOUND ->
          new Ellipse2D.Double(x - 0.4 * SIZE, y - 0.4 * SIZE, 0.8 * SIZE, 0.8 * SIZE);
    };
  }

  private static Shape polygon(double... corners) {
    var path = new Path2D.Double();
    path.moveTo(corners[0], corners[1]);
    for (var i = 2; i < corners.length; i += 2) {
      path.lineTo(corners[i], corners[i + 1]);
    }
    path.closePath();
    return path;
  }
}
