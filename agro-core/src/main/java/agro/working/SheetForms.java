package agro.working;

import agro.units.Numbers;

/** The written forms of a {@link Sheet}. */
final class SheetForms {

  private static final String FONT = "Liberation Sans, Arial, Helvetica, sans-serif";

  private static final double WIDER = 1.13;

  private SheetForms() {}

  static String svg(Sheet sheet) {
    var width = millimetres(sheet.widthMm());
    var height = millimetres(sheet.heightMm());
    var svg = new StringBuilder();
    svg.append("<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"").append(width);
    svg.append("mm\" height=\"").append(height).append("mm\" viewBox=\"0 0 ").append(width);
    svg.append(' ').append(height).append("\" font-family=\"").append(FONT).append("\">\n");
    svg.append(HtmlText.element("title", PlainText.oneLine(sheet.title()))).append('\n');
    sheet.marks().forEach(mark -> append(svg, mark));
    return svg.append("</svg>").toString();
  }

  static String html(Sheet sheet) {
    return "<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n"
        + HtmlText.element("title", PlainText.oneLine(sheet.title()))
        + "\n<style>@page { size: "
        + millimetres(sheet.widthMm())
        + "mm "
        + millimetres(sheet.heightMm())
        + "mm; margin: 0 } html, body { margin: 0; background: white } svg { display: block }"
        + "</style>\n</head>\n<body>\n"
        + svg(sheet)
        + "\n</body>\n</html>\n";
  }

  private static void append(StringBuilder svg, Sheet.Mark mark) {
    if (mark instanceof Sheet.Line line) {
      svg.append("<line");
      number(svg, "x1", line.from().x());
      number(svg, "y1", line.from().y());
      number(svg, "x2", line.to().x());
      number(svg, "y2", line.to().y());
      pen(svg, line.pen());
      svg.append("/>\n");
    } else if (mark instanceof Sheet.Box box) {
      svg.append("<rect");
      number(svg, "x", box.corner().x());
      number(svg, "y", box.corner().y());
      number(svg, "width", box.widthMm());
      number(svg, "height", box.heightMm());
      svg.append(" fill=\"none\"");
      pen(svg, box.pen());
      svg.append("/>\n");
    } else if (mark instanceof Sheet.Shade shade) {
      svg.append("<polygon points=\"");
      for (var corner : shade.corners()) {
        svg.append(millimetres(corner.x())).append(',').append(millimetres(corner.y())).append(' ');
      }
      svg.append("\" fill=\"").append(grey(shade.grey())).append("\"/>\n");
    } else if (mark instanceof Sheet.Words words) {
      appendWords(svg, words);
    }
  }

  private static void appendWords(StringBuilder svg, Sheet.Words words) {
    svg.append("<text");
    number(svg, "x", words.at().x());
    number(svg, "y", words.at().y());
    number(svg, "font-size", words.type().sizeMm());
    if (words.type().bold()) {
      svg.append(" font-weight=\"bold\"");
    }
    switch (words.type().align()) {
      case MIDDLE -> svg.append(" text-anchor=\"middle\"");
      case END -> svg.append(" text-anchor=\"end\"");
      case START -> svg.append("");
    }
    svg.append('>').append(HtmlText.escape(PlainText.oneLine(words.text()))).append("</text>\n");
  }

  private static void pen(StringBuilder svg, Sheet.Pen pen) {
    svg.append(" stroke=\"").append(grey(pen.grey())).append('"');
    number(svg, "stroke-width", pen.widthMm());
    if (pen.dashed()) {
      svg.append(" stroke-dasharray=\"1.6 1\"");
    }
  }

  private static void number(StringBuilder svg, String name, double value) {
    svg.append(' ').append(name).append("=\"").append(millimetres(value)).append('"');
  }

  private static String millimetres(double value) {
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException("a place on paper is finite, but got " + value);
    }
    return Numbers.plain(Math.round(value * 1000) / 1000.0);
  }

  private static String grey(double grey) {
    var part = Integer.toHexString(256 + (int) Math.round(255 * grey)).substring(1);
    return "#" + part + part + part;
  }

  /**
   * Width of words over the size of their type, from usual widths of letters without serifs, and
   * some more, since the reader's machine chooses the letters.
   */
  static double width(String text) {
    double width = 0;
    for (int i = 0; i < text.length(); i++) {
      width += width(text.charAt(i));
    }
    return WIDER * width;
  }

  private static double width(char c) {
    if ("ijl|'".indexOf(c) >= 0) {
      return 0.23;
    }
    if (" ft.,:;!I()[]/r-".indexOf(c) >= 0) {
      return 0.31;
    }
    if ("mwMW%".indexOf(c) >= 0) {
      return 0.87;
    }
    if (Character.isUpperCase(c)) {
      return 0.7;
    }
    return c < 0x250 || c == '–' ? 0.56 : 1;
  }
}
