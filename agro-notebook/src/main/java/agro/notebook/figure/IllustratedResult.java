package agro.notebook.figure;

import agro.notebook.display.MimeBundle;
import agro.notebook.display.Picture;
import agro.notebook.display.ResultBundles;
import agro.working.HtmlText;
import agro.working.Presentation;

/** A result with its figure: the picture first, then the page with its tables and cautions. */
final class IllustratedResult {

  private IllustratedResult() {}

  /** The page holds the numbers of the figure; a machine without fonts shows the page alone. */
  static MimeBundle of(DrawnFigure figure, Presentation presentation) {
    var page = ResultBundles.of(presentation);
    var text = figure.alternative() + "\n\n" + page.plainText();
    try {
      var picture =
          Picture.png(figure.png())
              .withAlternative(figure.alternative())
              .shownAt(figure.widthPoints())
              .bundle();
      var captioned =
          "<figure class=\"agro-figure\">\n"
              + picture.get(MimeBundle.HTML).orElse("")
              + "\n<figcaption>"
              + HtmlText.escape(figure.caption())
              + "</figcaption>\n</figure>\n";
      return page.with(MimeBundle.HTML, captioned + page.get(MimeBundle.HTML).orElse(""))
          .with(MimeBundle.TEXT, text);
    } catch (Error | RuntimeException noFonts) {
      return page.with(MimeBundle.TEXT, text + "\n" + noFonts);
    }
  }
}
