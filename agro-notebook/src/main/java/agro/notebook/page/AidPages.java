package agro.notebook.page;

import agro.course.ExamAid;
import agro.course.paper.PaperAids;
import agro.course.paper.StudentPaper;
import agro.working.HtmlText;
import java.util.Collection;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * Tables and papers that lie beside an exam, each on a page of its own in its true size. Each is
 * drawn once for a class, and a document holds each once, however many students get it.
 */
final class AidPages {

  /** The drawings as elements, without the declaration that a file of their own has. */
  private final Map<ExamAid, String> drawn = new EnumMap<>(ExamAid.class);

  private AidPages() {}

  /** What some papers of one plan need. */
  static AidPages of(List<StudentPaper> papers) {
    var pages = new AidPages();
    for (var aid : aids(papers)) {
      var file = PaperAids.sheet(aid).sheet(papers.get(0).plan().language()).toSvg();
      pages.drawn.put(aid, file.substring(file.indexOf("<svg")).strip());
    }
    return pages;
  }

  private static Collection<ExamAid> aids(List<StudentPaper> papers) {
    var aids = EnumSet.noneOf(ExamAid.class);
    papers.forEach(paper -> aids.addAll(paper.aids()));
    return aids;
  }

  /** The drawings that some of the papers need, not yet shown. */
  String drawings(List<StudentPaper> papers) {
    var aids = aids(papers);
    if (aids.isEmpty()) {
      return "";
    }
    var html = new StringBuilder("<svg class=\"drawings\" aria-hidden=\"true\">\n");
    for (var aid : aids) {
      var svg = drawn.get(aid);
      html.append("<symbol id=\"").append(id(aid)).append("\" viewBox=\"0 0 210 297\">\n");
      html.append(svg, svg.indexOf('>') + 1, svg.lastIndexOf("</svg>")).append("</symbol>\n");
    }
    return html.append("</svg>\n").toString();
  }

  /** The pages of one student, which say whose they are. */
  String pages(StudentPaper paper) {
    var html = new StringBuilder();
    for (var aid : paper.aids()) {
      var svg = drawn.get(aid);
      html.append("<div class=\"aid\">").append(svg, 0, svg.indexOf('>') + 1);
      html.append("<use href=\"#").append(id(aid)).append("\"/></svg>\n<p>");
      html.append(HtmlText.escape(paper.student().heading() + "  " + paper.plan().origin()));
      html.append("</p></div>\n");
    }
    return html.toString();
  }

  private static String id(ExamAid aid) {
    return "aid-" + aid.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
