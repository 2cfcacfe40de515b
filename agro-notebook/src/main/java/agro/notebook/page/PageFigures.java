package agro.notebook.page;

import agro.notebook.figure.DrawnFigure;
import agro.working.HtmlText;
import java.util.Base64;

/** Figures as elements of a printed page. */
final class PageFigures {

  private PageFigures() {}

  /** A picture with its caption; its numbers are folded below and not printed. */
  static String captioned(DrawnFigure figure) {
    return "<figure class=\"wide\">\n"
        + picture(figure)
        + "<figcaption>"
        + HtmlText.escape(figure.caption())
        + "</figcaption>\n"
        + numbers(figure)
        + "</figure>\n";
  }

  /** A picture alone, where the text around it says what it is. */
  static String bare(DrawnFigure figure, String cssClass) {
    return "<figure class=\""
        + cssClass
        + "\">\n"
        + picture(figure)
        + numbers(figure)
        + "</figure>\n";
  }

  private static String numbers(DrawnFigure figure) {
    return "<details class=\"on-screen\"><summary>The numbers in this figure</summary>\n"
        + figure.data().toHtml()
        + "\n</details>\n";
  }

  /** A machine without fonts cannot draw; there the words stand in for the picture. */
  private static String picture(DrawnFigure figure) {
    try {
      return "<img src=\"data:image/png;base64,"
          + Base64.getEncoder().encodeToString(figure.png())
          + "\" alt=\""
          + HtmlText.escape(figure.alternative())
          + "\">\n";
    } catch (Error | RuntimeException noFonts) {
      return "<p>"
          + HtmlText.escape(figure.alternative())
          + "</p>\n"
          + figure.data().toHtml()
          + "\n";
    }
  }
}
