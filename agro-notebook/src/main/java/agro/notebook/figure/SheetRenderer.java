package agro.notebook.figure;

import agro.notebook.display.MimeBundle;
import agro.notebook.display.Picture;
import agro.notebook.display.RichRenderer;
import agro.working.Sheet;
import java.util.stream.Collectors;

/** Shows a {@link Sheet} as the page that is printed, with its words as alternative text. */
public final class SheetRenderer implements RichRenderer<Sheet> {

  /** Width of a sheet on the screen, in points of 1/96 inch: the width of A4. */
  private static final int WIDTH = 794;

  /** A renderer; found as a service. */
  public SheetRenderer() {}

  @Override
  public Class<Sheet> type() {
    return Sheet.class;
  }

  @Override
  public MimeBundle render(Sheet sheet) {
    var words =
        sheet.marks().stream()
            .filter(Sheet.Words.class::isInstance)
            .map(mark -> ((Sheet.Words) mark).text())
            .filter(text -> text.length() > 3)
            .collect(Collectors.joining(" "));
    return Picture.svg(sheet.toSvg())
        .withAlternative("Page to print: " + sheet.title() + ". " + words)
        .shownAt(WIDTH)
        .bundle();
  }
}
