package agro.trial.layout;

import agro.units.Numbers;
import agro.working.Sheet;
import java.util.List;

/** Several sheets in one web page. */
final class SheetPages {

  private SheetPages() {}

  static String html(String title, List<Sheet> sheets) {
    var first = sheets.get(0);
    var page = new StringBuilder("<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n");
    page.append("<meta charset=\"utf-8\">\n<title>").append(escaped(title)).append("</title>\n");
    page.append("<style>@page { size: ").append(Numbers.plain(first.widthMm())).append("mm ");
    page.append(Numbers.plain(first.heightMm())).append("mm; margin: 0 } html, body { margin: 0;");
    page.append(" background: white } svg { display: block; break-after: page }</style>\n");
    page.append("</head>\n<body>\n");
    for (var sheet : sheets) {
      page.append(sheet.toSvg().replaceFirst("^<\\?xml[^>]*>\\s*", ""));
    }
    return page.append("</body>\n</html>\n").toString();
  }

  private static String escaped(String text) {
    return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
  }
}
