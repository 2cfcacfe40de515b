package agro.notebook.page;

import agro.course.CourseWords;
import agro.course.paper.MarkedPaper;
import agro.course.paper.MarkedQuestion;
import agro.working.HtmlText;
import java.util.List;

/** What a student gets back: each answer with its marks and a remark. */
final class FeedbackSheet {

  private static final List<String> COLUMNS =
      List.of("part", "typed", "right", "marks", "feedback");

  private final MarkedPaper marked;
  private final CourseWords words;

  private FeedbackSheet(MarkedPaper marked) {
    this.marked = marked;
    this.words = CourseDocument.words(marked.paper());
  }

  static String html(MarkedPaper marked) {
    var sheet = new FeedbackSheet(marked);
    return CourseDocument.sheet(marked.paper(), "sheet.feedback", sheet.content());
  }

  private String content() {
    var paper = marked.paper();
    var html = new StringBuilder("<header>\n<h1>");
    html.append(HtmlText.escape(paper.plan().heading() + ": " + words.say("sheet.feedback")));
    html.append("</h1>\n<div class=\"student\"><span class=\"given\">");
    html.append(HtmlText.escape(paper.student().heading()));
    html.append("</span><span class=\"total\">");
    html.append(HtmlText.escape(words.say("sheet.total"))).append(" <b>");
    html.append(HtmlText.escape(total())).append("</b></span></div>\n</header>\n");
    marked.questions().forEach(question -> html.append(question(question)));
    return html.append(QuestionSheet.cautions(paper, words)).toString();
  }

  private String total() {
    return marked.handedIn()
        ? out(marked.marks(), marked.paper().marks())
        : words.say("marks.nothing");
  }

  private String out(double marks, double of) {
    return words.say("sheet.of", "marks", words.number(marks), "of", words.number(of));
  }

  private String question(MarkedQuestion question) {
    var html = new StringBuilder("<section class=\"feedback\">\n<h2><span class=\"number\">");
    html.append(question.question().number()).append("</span><span>");
    html.append(PrintedText.html(question.question().exercise().title()));
    html.append("</span><span class=\"marks\">");
    html.append(HtmlText.escape(out(question.marks(), question.question().marks())));
    html.append("</span></h2>\n<table class=\"data\">\n<thead><tr>");
    for (var column : COLUMNS) {
      html.append("<th scope=\"col\" class=\"").append(column).append("\">");
      html.append(HtmlText.escape(words.say("column." + column))).append("</th>");
    }
    html.append("</tr></thead>\n<tbody>\n");
    for (int part = 0; part < question.parts().size(); part++) {
      html.append(part(question, part));
    }
    return html.append("</tbody>\n</table>\n</section>\n").toString();
  }

  private String part(MarkedQuestion question, int part) {
    var mark = question.parts().get(part);
    var right =
        question.question().solution().get(part).answer().print(words)
            + SolutionSheet.option(question.question(), part, words);
    return "<tr><td>"
        + HtmlText.escape(question.question().label(part))
        + "</td><td>"
        + HtmlText.escape(mark.typed())
        + "</td><td>"
        + PrintedText.html(right)
        + "</td><td>"
        + HtmlText.escape(out(mark.marks(), mark.of()))
        + "</td><td>"
        + HtmlText.escape(mark.feedback())
        + "</td></tr>\n";
  }
}
