package agro.notebook.figure;

import agro.notebook.display.FigureBundle;
import agro.notebook.display.MimeBundle;
import agro.notebook.display.ResultBundles;
import agro.notebook.display.RichRenderer;
import agro.working.ResultTable;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import javax.imageio.ImageIO;
import org.knowm.xchart.internal.chartpart.IChart;

/**
 * Shows a chart that a reader made with XChart: a picture at double resolution with the chart's
 * title in words, and for a chart of x and y the points as a table.
 */
public final class ChartRenderer implements RichRenderer<IChart> {

  private static final int RESOLUTION = 2;

  /** A renderer; found as a service. */
  public ChartRenderer() {}

  @Override
  public Class<IChart> type() {
    return IChart.class;
  }

  @Override
  public MimeBundle render(IChart chart) {
    var title = chart.getTitle() == null ? "" : chart.getTitle();
    var points = ChartPoints.of(chart, title);
    byte[] picture;
    try {
      picture = png(chart);
    } catch (RuntimeException | Error cannotDraw) {
      return withoutPicture(points, cannotDraw);
    }
    var words = "Chart: " + (title.isBlank() ? "without a title" : title);
    return FigureBundle.of(picture, words, title, points).shownAt(chart.getWidth()).bundle();
  }

  /** A machine without fonts, or a chart without data, cannot be drawn; the numbers are there. */
  private static MimeBundle withoutPicture(ResultTable points, Throwable why) {
    return ResultBundles.of(points.withNote("The chart cannot be drawn here: " + why));
  }

  private static byte[] png(IChart chart) {
    var image =
        new BufferedImage(
            RESOLUTION * chart.getWidth(),
            RESOLUTION * chart.getHeight(),
            BufferedImage.TYPE_INT_RGB);
    var graphics = image.createGraphics();
    try {
      graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
      graphics.scale(RESOLUTION, RESOLUTION);
      ThinnedLines.draw(chart, () -> chart.paint(graphics, chart.getWidth(), chart.getHeight()));
      var bytes = new ByteArrayOutputStream();
      ImageIO.write(image, "png", bytes);
      return bytes.toByteArray();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } finally {
      graphics.dispose();
    }
  }
}
