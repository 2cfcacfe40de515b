package agro.course.paper;

import agro.reading.DelimitedFormat;
import java.util.ArrayList;
import java.util.List;

/** Marks as files for a spreadsheet. */
final class MarkFiles {

  private MarkFiles() {}

  static String marks(MarkSheet sheet, DelimitedFormat format) {
    var rows = new CsvRows(format);
    int questions = sheet.papers().plan().blueprint().questions();
    var heading = new ArrayList<>(List.of("student", "name", "group"));
    for (int number = 1; number <= questions; number++) {
      heading.add(String.valueOf(number));
    }
    heading.addAll(List.of("total", "of", "remark"));
    rows.add(heading);
    for (var marked : sheet.marked()) {
      var cells = student(marked);
      marked.questions().forEach(one -> cells.add(number(rows, marked, one.marks())));
      cells.add(number(rows, marked, marked.marks()));
      cells.add(rows.number(marked.paper().marks()));
      cells.add(marked.handedIn() ? "" : sheet.words().say("marks.nothing"));
      rows.add(cells);
    }
    return rows.text();
  }

  private static List<String> student(MarkedPaper marked) {
    var student = marked.paper().student();
    return new ArrayList<>(List.of(student.id(), student.name(), student.group()));
  }

  private static String number(CsvRows rows, MarkedPaper marked, double value) {
    return marked.handedIn() ? rows.number(value) : "";
  }

  static String details(MarkSheet sheet, DelimitedFormat format) {
    var rows = new CsvRows(format);
    rows.add(
        List.of(
            "student",
            "part",
            "exercise",
            "typed",
            "read",
            "right",
            "marks",
            "of",
            "verdict",
            "carried",
            "mistake",
            "feedback"));
    for (var marked : sheet.marked()) {
      for (var question : marked.handedIn() ? marked.questions() : List.<MarkedQuestion>of()) {
        for (int part = 0; part < question.parts().size(); part++) {
          rows.add(part(sheet, marked, question, part, rows));
        }
      }
    }
    return rows.text();
  }

  private static List<String> part(
      MarkSheet sheet, MarkedPaper marked, MarkedQuestion of, int part, CsvRows rows) {
    var question = of.question();
    var mark = of.parts().get(part);
    var words = sheet.words();
    return List.of(
        marked.paper().student().id(),
        question.label(part),
        question.exercise().key().type(),
        mark.typed(),
        mark.reading(),
        question.solution().get(part).answer().print(words),
        rows.number(mark.marks()),
        rows.number(mark.of()),
        sheet.say(mark.verdict()),
        mark.carriedForward() ? words.say("marks.yes") : "",
        mark.mistake().map(each -> each.phrase(words)).orElse(""),
        mark.feedback());
  }
}
