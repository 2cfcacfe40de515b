package agro.notebook.page;

import agro.course.paper.ClassSummary;
import agro.course.paper.PaperWords;
import agro.working.Block;
import agro.working.HtmlText;

/** How a class has done, on a page for the teacher. */
final class ClassSummaryPage {

  private ClassSummaryPage() {}

  static String html(ClassSummary summary) {
    var words = PaperWords.of(summary.papers().plan().language());
    var page = summary.presentation();
    var html = new StringBuilder("<main>\n<h1>").append(HtmlText.escape(page.title()));
    html.append("</h1>\n");
    for (Block block : page.blocks()) {
      html.append(CourseBlocks.html(block, words));
    }
    return html.append("</main>\n").toString();
  }
}
