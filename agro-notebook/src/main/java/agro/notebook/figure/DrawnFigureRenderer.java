package agro.notebook.figure;

import agro.notebook.display.MimeBundle;
import agro.notebook.display.RichRenderer;

/**
 * Shows a {@link DrawnFigure}. A machine without fonts cannot draw; there the numbers stand in for
 * the picture.
 */
public final class DrawnFigureRenderer implements RichRenderer<DrawnFigure> {

  /** A renderer; found as a service. */
  public DrawnFigureRenderer() {}

  @Override
  public Class<DrawnFigure> type() {
    return DrawnFigure.class;
  }

  @Override
  public MimeBundle render(DrawnFigure figure) {
    try {
      return figure.bundle().bundle();
    } catch (Error | RuntimeException noFonts) {
      var table = figure.data().withNote("The picture cannot be drawn on this machine: " + noFonts);
      return MimeBundle.of(MimeBundle.HTML, table.toHtml())
          .with(MimeBundle.TEXT, figure.alternative() + "\n" + table.toText());
    }
  }
}
