package agro.notebook.display;

import agro.working.HtmlText;
import agro.working.ResultTable;
import java.util.Arrays;
import java.util.Base64;
import java.util.Objects;

/**
 * A finished figure: the picture, what it shows in words for a reader who cannot see it, its data,
 * and its caption. Shown as a captioned picture with its data folded below.
 */
public final class FigureBundle {

  private final byte[] png;
  private final String alternative;
  private final String caption;
  private final ResultTable data;
  private final int widthPoints;

  private FigureBundle(
      byte[] png, String alternative, String caption, ResultTable data, int widthPoints) {
    this.png = png.clone();
    this.alternative = Objects.requireNonNull(alternative, "alternative text");
    this.caption = Objects.requireNonNull(caption, "caption");
    this.data = Objects.requireNonNull(data, "data");
    this.widthPoints = widthPoints;
    if (alternative.isBlank()) {
      throw new IllegalArgumentException("a figure needs an alternative text");
    }
  }

  /**
   * A figure.
   *
   * @param png the picture as a PNG file
   * @param alternative what the picture shows, in a sentence or two
   * @param caption the caption below it; may be empty
   * @param data the numbers that were drawn
   * @return the figure, shown as wide as the text allows
   * @throws IllegalArgumentException if the alternative text is blank
   */
  public static FigureBundle of(byte[] png, String alternative, String caption, ResultTable data) {
    return new FigureBundle(png, alternative, caption, data, 0);
  }

  /**
   * This figure at a width of its own, for pictures drawn at double resolution.
   *
   * @param points width on the page in CSS pixels, at least 1
   * @return a new figure
   */
  public FigureBundle shownAt(int points) {
    return new FigureBundle(png, alternative, caption, data, points);
  }

  /**
   * The picture.
   *
   * @return a copy of the PNG file
   */
  public byte[] png() {
    return png.clone();
  }

  /**
   * What the picture shows, in words.
   *
   * @return a sentence or two
   */
  public String alternative() {
    return alternative;
  }

  /**
   * The caption.
   *
   * @return the caption, possibly empty
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
   * The figure in all its formats.
   *
   * @return HTML with picture, caption and folded data; PNG; plain text
   */
  public MimeBundle bundle() {
    var source = Base64.getEncoder().encodeToString(png);
    return MimeBundle.of(MimeBundle.HTML, html(source))
        .with(MimeBundle.PNG, source)
        .with(
            MimeBundle.TEXT,
            (caption.isBlank() ? "Figure" : "Figure: " + caption) + "\n" + alternative);
  }

  private String html(String source) {
    var width = widthPoints > 0 ? " width=\"" + widthPoints + "\"" : "";
    return "<figure class=\"agro-figure\">\n<img src=\"data:image/png;base64,"
        + source
        + "\" alt=\""
        + HtmlText.escape(alternative)
        + "\""
        + width
        + " style=\"max-width:100%;height:auto\">\n"
        + (caption.isBlank() ? "" : "<figcaption>" + HtmlText.escape(caption) + "</figcaption>\n")
        + "<details class=\"agro-figure-data\"><summary>The numbers in this figure</summary>\n"
        + ResultBundles.styled(data.toHtml())
        + "\n</details>\n</figure>";
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof FigureBundle figure
        && Arrays.equals(png, figure.png)
        && alternative.equals(figure.alternative)
        && caption.equals(figure.caption)
        && data.equals(figure.data)
        && widthPoints == figure.widthPoints;
  }

  @Override
  public int hashCode() {
    return Objects.hash(Arrays.hashCode(png), alternative, caption, data, widthPoints);
  }

  @Override
  public String toString() {
    return "Figure: " + (caption.isBlank() ? alternative : caption);
  }
}
