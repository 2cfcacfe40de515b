package agro.notebook.page;

import agro.course.CourseWords;
import agro.course.paper.PaperWords;
import agro.course.paper.StudentPaper;
import agro.working.HtmlText;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** Sheets of students as one document that prints on A4, a new page for each student. */
final class CourseDocument {

  /** Nothing is loaded and nothing is run, whatever stands in the data. */
  private static final String POLICY =
      "default-src 'none'; img-src data:; style-src 'unsafe-inline'";

  /** Browsers count pages through a whole document and cannot begin again with each student. */
  private static final String NUMBERED =
      "<style>\n@page { @bottom-center { content: counter(page); vertical-align: top;"
          + " font: 8.5pt \"Liberation Sans\", Arial, Helvetica, sans-serif; color: #444 } }\n"
          + "</style>\n";

  private CourseDocument() {}

  /** The sheets of several students. */
  static String of(String language, String title, String body) {
    return document(language, title, style(), body);
  }

  /** The sheet of one student, with numbers on its pages. */
  static String ofOne(String language, String title, String body) {
    return document(language, title, style() + NUMBERED, body);
  }

  private static String document(String language, String title, String style, String body) {
    return "<!DOCTYPE html>\n<html lang=\""
        + language
        + "\">\n<head>\n<meta charset=\"utf-8\">\n"
        + "<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n"
        + "<meta http-equiv=\"Content-Security-Policy\" content=\""
        + POLICY
        + "\">\n<title>"
        + HtmlText.escape(title)
        + "</title>\n"
        + style
        + "</head>\n<body>\n"
        + body
        + "</body>\n</html>\n";
  }

  /**
   * A sheet whose head and foot come again on each of its printed pages: browsers repeat the head
   * and the foot of a table, and of nothing else that is not the same for the whole document.
   */
  static String sheet(StudentPaper paper, String kind, String content) {
    var words = words(paper);
    var heading = paper.plan().heading() + (kind.isEmpty() ? "" : ": " + words.say(kind));
    return "<table class=\"sheet\" role=\"presentation\">\n<thead><tr><td><div class=\"running\">"
        + "<span class=\"who\">"
        + HtmlText.escape(paper.student().id())
        + "</span><span>"
        + HtmlText.escape(paper.student().name())
        + "</span><span class=\"what\">"
        + HtmlText.escape(heading)
        + "</span></div></td></tr></thead>\n<tfoot><tr><td><div class=\"origin\"><span>"
        + HtmlText.escape(paper.plan().origin())
        + "</span><span class=\"what\">"
        + HtmlText.escape(paper.student().id())
        + "</span></div></td></tr></tfoot>\n<tbody><tr><td>\n"
        + content
        + "</td></tr></tbody>\n</table>\n";
  }

  static CourseWords words(StudentPaper paper) {
    return PaperWords.of(paper.plan().language());
  }

  static String marks(CourseWords words, double marks) {
    var printed = words.number(marks);
    return words.say(marks == 1 ? "sheet.marks.one" : "sheet.marks.many", "marks", printed);
  }

  private static String style() {
    try (var css = CourseDocument.class.getResourceAsStream("course.css")) {
      return "<style>\n" + new String(css.readAllBytes(), StandardCharsets.UTF_8) + "</style>\n";
    } catch (IOException unreadable) {
      throw new UncheckedIOException("the style of sheets could not be read", unreadable);
    }
  }
}
