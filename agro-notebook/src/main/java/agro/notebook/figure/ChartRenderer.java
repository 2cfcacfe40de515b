package agro.notebook.figure;

import agro.notebook.display.FigureBundle;
import agro.notebook.display.MimeBundle;
import agro.notebook.display.RichRenderer;
import agro.working.Cell;
import agro.working.ResultTable;
import agro.working.ResultTable.Column;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import javax.imageio.ImageIO;
import org.knowm.xchart.XYChart;
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
    return FigureBundle.of(png(chart), "Chart: " + title, title, points(chart, title))
        .shownAt(chart.getWidth())
        .bundle();
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
      chart.paint(graphics, chart.getWidth(), chart.getHeight());
      var bytes = new ByteArrayOutputStream();
      ImageIO.write(image, "png", bytes);
      return bytes.toByteArray();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } finally {
      graphics.dispose();
    }
  }

  private static ResultTable points(IChart chart, String title) {
    var rows = new ArrayList<List<Cell>>();
    if (chart instanceof XYChart lines) {
      for (var series : lines.getSeriesCollection()) {
        for (int i = 0; i < series.getXData().length; i++) {
          rows.add(
              List.of(
                  Cell.text(series.getName()),
                  Cell.number(series.getXData()[i], 4),
                  Cell.number(series.getYData()[i], 4)));
        }
      }
    }
    return ResultTable.of(
        title.isBlank() ? "Points" : title,
        List.of(Column.of("Series"), Column.of("x"), Column.of("y")),
        rows);
  }
}
