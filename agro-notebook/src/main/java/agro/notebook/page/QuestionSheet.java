package agro.notebook.page;

import agro.course.CourseWords;
import agro.course.Exercise;
import agro.course.paper.PaperKind;
import agro.course.paper.PaperQuestion;
import agro.course.paper.StudentPaper;
import agro.working.Caution;
import agro.working.HtmlText;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.stream.Collectors;

/** The questions of one student, with room to write. */
final class QuestionSheet {

  private final StudentPaper paper;
  private final CourseWords words;

  private QuestionSheet(StudentPaper paper) {
    this.paper = paper;
    this.words = CourseDocument.words(paper);
  }

  static String html(StudentPaper paper, AidPages aids) {
    var sheet = new QuestionSheet(paper);
    return CourseDocument.sheet(paper, "", sheet.content()) + aids.pages(paper);
  }

  private String content() {
    var html = new StringBuilder(head(paper, "", words));
    html.append(CourseBlocks.paragraph("rules", words.say(rules())));
    if (!paper.aids().isEmpty()) {
      var names =
          paper.aids().stream()
              .map(aid -> words.say("aid." + aid.name()))
              .collect(Collectors.joining(", "));
      html.append(CourseBlocks.paragraph("rules", words.say("sheet.aids", "aids", names)));
    }
    paper.questions().forEach(question -> html.append(question(question)));
    return html.append(cautions(paper, words)).toString();
  }

  private String rules() {
    return paper.plan().kind() == PaperKind.EXAM ? "sheet.exam.note" : "sheet.homework.note";
  }

  /** The head of the first page: title, place, a line for the name where none is known, total. */
  static String head(StudentPaper paper, String kind, CourseWords words) {
    var plan = paper.plan();
    var student = paper.student();
    var title = plan.heading() + (kind.isEmpty() ? "" : ": " + words.say(kind));
    var html = new StringBuilder("<header>\n<h1>").append(HtmlText.escape(title));
    html.append("</h1>\n<div class=\"student\"><span class=\"label\">");
    html.append(HtmlText.escape(words.say("sheet.name"))).append("</span>");
    html.append(student.name().isEmpty() ? "<span class=\"rule\">" : "<span class=\"given\">");
    html.append(HtmlText.escape(student.name())).append("</span><span class=\"id\">");
    html.append(HtmlText.escape(student.id())).append("</span>");
    if (!student.group().isEmpty()) {
      html.append("<span>");
      html.append(HtmlText.escape(words.say("sheet.group", "group", student.group())));
      html.append("</span>");
    }
    html.append("<span class=\"total\">").append(HtmlText.escape(words.say("sheet.total")));
    html.append("<span class=\"short rule\"></span>/ ");
    html.append(HtmlText.escape(words.number(paper.marks()))).append("</span></div>\n</header>\n");
    return html.toString();
  }

  private String question(PaperQuestion question) {
    var html = new StringBuilder("<section>\n");
    html.append("<div class=\"lead\">\n").append(lead(question, words)).append("</div>\n");
    for (int part = 0; part < question.solution().size(); part++) {
      html.append("<div class=\"part\">\n").append(asked(question, part, words));
      html.append(AnswerPlace.html(question, part, words)).append("</div>\n");
    }
    return html.append("</section>\n").toString();
  }

  /** Number, title, marks, story and exhibits. */
  static String lead(PaperQuestion question, CourseWords words) {
    var exercise = question.exercise();
    var html = new StringBuilder("<h2><span class=\"number\">").append(question.number());
    html.append("</span><span>").append(PrintedText.html(exercise.title()));
    html.append("</span><span class=\"marks\">");
    html.append(HtmlText.escape(CourseDocument.marks(words, question.marks())));
    html.append("</span></h2>\n");
    exercise.body().story().forEach(each -> html.append(CourseBlocks.paragraph(each)));
    exercise.body().exhibits().forEach(each -> html.append(CourseBlocks.html(each, words)));
    return html.toString();
  }

  static String asked(PaperQuestion question, int part, CourseWords words) {
    boolean alone = question.solution().size() == 1;
    var html = new StringBuilder("<div class=\"asked\"><span class=\"letter\">");
    html.append(alone ? "" : Exercise.letter(part) + ")").append("</span><p>");
    html.append(PrintedText.html(question.exercise().parts().get(part).question()));
    html.append("</p><span class=\"marks\">");
    html.append(alone ? "" : HtmlText.escape("[" + words.number(question.marks(part)) + "]"));
    return html.append("</span></div>\n").toString();
  }

  static String cautions(StudentPaper paper, CourseWords words) {
    var cautions = new LinkedHashSet<Caution>();
    paper.questions().forEach(one -> cautions.addAll(one.exercise().body().cautions()));
    if (cautions.isEmpty()) {
      return "";
    }
    return "<aside>\n<p><b>"
        + HtmlText.escape(words.say("caution.heading"))
        + ".</b> "
        + HtmlText.escape(String.join(" ", words.cautions(List.copyOf(cautions))))
        + "</p>\n</aside>\n";
  }
}
