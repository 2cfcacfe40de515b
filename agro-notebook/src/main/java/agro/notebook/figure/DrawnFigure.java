package agro.notebook.figure;

import agro.notebook.display.FigureBundle;
import agro.reading.SafeFile;
import agro.working.ResultTable;
import java.nio.file.Path;
import java.util.Objects;

/**
 * A figure of a result: a picture, what it shows in words, its caption, and the numbers that were
 * drawn. The picture is drawn when it is asked for.
 */
public final class DrawnFigure {

  /** Dots for a point of the page on a screen. */
  private static final double ON_SCREEN = 2;

  /** Dots for a point of 1/96 inch at 300 dots per inch. */
  private static final double IN_PRINT = 300.0 / 96;

  private final FigureSheet sheet;
  private final String alternative;
  private final String caption;
  private final ResultTable data;

  DrawnFigure(FigureSheet sheet, String alternative, String caption, ResultTable data) {
    this.sheet = Objects.requireNonNull(sheet, "sheet");
    this.alternative = Objects.requireNonNull(alternative, "alternative");
    this.caption = Objects.requireNonNull(caption, "caption");
    this.data = Objects.requireNonNull(data, "data");
  }

  /**
   * What the figure shows, in sentences with its numbers, for a reader who cannot see it.
   *
   * @return the alternative text
   */
  public String alternative() {
    return alternative;
  }

  /**
   * How to read the figure, with method, source and day of issue.
   *
   * @return the caption
   */
  public String caption() {
    return caption;
  }

  /**
   * The numbers that were drawn.
   *
   * @return a table
   */
  public ResultTable data() {
    return data;
  }

  /**
   * Width of the figure on a page.
   *
   * @return points of 1/96 inch
   */
  public int widthPoints() {
    return FigureLook.WIDTH;
  }

  /**
   * Height of the figure on a page.
   *
   * @return points of 1/96 inch
   */
  public int heightPoints() {
    return sheet.height();
  }

  /**
   * The picture for a screen, at two dots for a point.
   *
   * @return a PNG file
   */
  public byte[] png() {
    return sheet.png(ON_SCREEN);
  }

  /**
   * Writes the picture for a screen, at two dots for a point.
   *
   * @param file the PNG file, replaced if it is there; missing folders are made
   */
  public void savePng(Path file) {
    SafeFile.writeBytes(file, png());
  }

  /**
   * Writes the picture for print, at 300 dots per inch.
   *
   * @param file the PNG file, replaced if it is there; missing folders are made
   */
  public void savePngForPrint(Path file) {
    SafeFile.writeBytes(file, sheet.png(IN_PRINT));
  }

  /**
   * The figure as it is shown: captioned picture with its data folded below.
   *
   * @return the figure for the display
   */
  public FigureBundle bundle() {
    return FigureBundle.of(png(), alternative, caption, data).shownAt(widthPoints());
  }

  @Override
  public String toString() {
    return "Figure: " + caption;
  }
}
