package agro.notebook.page;

import agro.programme.bulletin.BulletinPart;
import agro.programme.bulletin.BulletinSection;
import agro.programme.bulletin.WrittenBulletin;
import agro.working.HtmlText;
import java.util.List;
import java.util.Locale;

/**
 * A written bulletin as a web page that prints on A4 and fits the screen of a phone. It holds no
 * script and asks for nothing from the network; every text is escaped. A browser's print makes a
 * PDF of it.
 */
public final class BulletinPage {

  private static final String POLICY = "default-src 'none'; style-src 'unsafe-inline'";

  private BulletinPage() {}

  /**
   * The page.
   *
   * @param bulletin the bulletin
   * @return an HTML file that needs no other
   */
  public static String html(WrittenBulletin bulletin) {
    var page = new StringBuilder();
    page.append("<header>\n<h1>").append(HtmlText.escape(bulletin.title())).append("</h1>\n");
    paragraph(page, "subtitle", bulletin.subtitle());
    page.append("</header>\n<main>\n");
    var sections = bulletin.sections();
    for (int i = 0; i < sections.size(); i++) {
      boolean pair = isPair(sections, i);
      if (pair) {
        page.append("<div class=\"pair\">\n");
        section(page, sections.get(i));
        i++;
      }
      section(page, sections.get(i));
      if (pair) {
        page.append("</div>\n");
      }
    }
    page.append("</main>\n<footer>").append(HtmlText.escape(bulletin.footer()));
    page.append("</footer>\n");
    var level = bulletin.level().word().toLowerCase(Locale.ROOT);
    return document(bulletin.language().code(), bulletin.title(), level, page.toString());
  }

  /** What to do and what not to do stand side by side where there is room. */
  private static boolean isPair(List<BulletinSection> sections, int at) {
    return at + 1 < sections.size()
        && sections.get(at).kind() == BulletinSection.Kind.DO
        && sections.get(at + 1).kind() == BulletinSection.Kind.DO_NOT;
  }

  static String document(String language, String title, String bodyClass, String body) {
    return "<!DOCTYPE html>\n<html lang=\""
        + language
        + "\">\n<head>\n<meta charset=\"utf-8\">\n"
        + "<meta http-equiv=\"Content-Security-Policy\" content=\""
        + POLICY
        + "\">\n<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n<title>"
        + HtmlText.escape(title)
        + "</title>\n<style>\n"
        + BulletinStyle.css()
        + "</style>\n</head>\n<body class=\""
        + bodyClass
        + "\">\n"
        + body
        + "</body>\n</html>\n";
  }

  private static void section(StringBuilder page, BulletinSection section) {
    var name = section.kind().name().toLowerCase(Locale.ROOT).replace('_', '-');
    page.append("<section class=\"").append(name).append("\">\n<h2>");
    page.append(HtmlText.escape(section.heading())).append("</h2>\n");
    for (var part : section.parts()) {
      part(page, part);
    }
    page.append("</section>\n");
  }

  private static void part(StringBuilder page, BulletinPart part) {
    if (part instanceof BulletinPart.Sentences sentences) {
      paragraph(page, "quiet", sentences.text());
    } else if (part instanceof BulletinPart.Points points) {
      page.append("<ul>\n");
      points
          .points()
          .forEach(each -> page.append("<li>").append(HtmlText.escape(each)).append("</li>\n"));
      page.append("</ul>\n");
    } else if (part instanceof BulletinPart.Grid grid) {
      table(page, grid);
    } else if (part instanceof BulletinPart.Picture picture) {
      picture(page, picture);
    }
  }

  private static void paragraph(StringBuilder page, String name, String text) {
    page.append("<p class=\"").append(name).append("\">").append(HtmlText.escape(text));
    page.append("</p>\n");
  }

  private static void table(StringBuilder page, BulletinPart.Grid grid) {
    page.append("<table>\n<caption>").append(HtmlText.escape(grid.caption()));
    page.append("</caption>\n<thead>\n<tr>");
    for (var heading : grid.headings()) {
      page.append("<th scope=\"col\">").append(HtmlText.escape(heading)).append("</th>");
    }
    page.append("</tr>\n</thead>\n<tbody>\n");
    for (var row : grid.rows()) {
      page.append("<tr><th scope=\"row\">").append(HtmlText.escape(row.get(0))).append("</th>");
      for (int i = 1; i < row.size(); i++) {
        page.append("<td data-heading=\"").append(HtmlText.escape(grid.headings().get(i)));
        page.append("\">").append(HtmlText.escape(row.get(i))).append("</td>");
      }
      page.append("</tr>\n");
    }
    page.append("</tbody>\n</table>\n");
  }

  private static void picture(StringBuilder page, BulletinPart.Picture picture) {
    var drawing = picture.drawing().toSvg();
    // The declaration of a file of its own has no place inside a page.
    var inline =
        drawing.substring(drawing.indexOf("<svg")).replaceFirst("<svg ", "<svg role=\"img\" ");
    page.append("<figure>\n").append(inline).append("<figcaption>");
    page.append(HtmlText.escape(picture.caption())).append("</figcaption>\n</figure>\n");
  }
}
