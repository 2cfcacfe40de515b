package agro.course.paper;

import agro.course.CourseWords;
import agro.working.Cell;
import agro.working.Presentable;
import agro.working.Presentation;
import agro.working.ResultTable;
import agro.working.ResultTable.Column;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * A student's paper with its marks.
 *
 * @param paper the paper
 * @param handedIn whether anything was answered; what is not handed in has no marks, not zero marks
 * @param questions one for each question
 */
public record MarkedPaper(StudentPaper paper, boolean handedIn, List<MarkedQuestion> questions)
    implements Presentable {

  /** Copies the list. */
  public MarkedPaper {
    questions = List.copyOf(questions);
  }

  /**
   * The marks of the paper.
   *
   * @return the sum over all questions; 0 if nothing was handed in
   */
  public double marks() {
    return questions.stream().mapToDouble(MarkedQuestion::marks).sum();
  }

  /** The marks of the paper, part by part, with what was right and what is told to the student. */
  @Override
  public Presentation presentation() {
    var words = PaperWords.of(paper.plan().language());
    var total =
        handedIn
            ? words.say("sheet.of", "marks", words.exact(marks()), "of", words.exact(paper.marks()))
            : words.say("marks.nothing");
    var page =
        Presentation.titled(words.say("sheet.feedback") + ", " + paper.student().heading())
            .fact(words.say("fact.marks"), total);
    if (handedIn) {
      page.table(table(words));
    }
    var cautions =
        paper.questions().stream()
            .flatMap(question -> question.exercise().body().cautions().stream())
            .distinct()
            .toList();
    if (handedIn && !cautions.isEmpty()) {
      page.paragraph(String.join(" ", words.cautions(cautions)));
    }
    return page.paragraph(paper.plan().origin()).build();
  }

  private ResultTable table(CourseWords words) {
    var columns = new ArrayList<Column>();
    for (var key : List.of("part", "typed", "right", "marks", "of", "feedback")) {
      columns.add(Column.of(words.say("column." + key)));
    }
    var rows = new ArrayList<List<Cell>>();
    for (var question : questions) {
      for (int part = 0; part < question.parts().size(); part++) {
        var mark = question.parts().get(part);
        rows.add(
            Stream.of(
                    question.question().label(part),
                    mark.typed(),
                    question.question().solution().get(part).answer().print(words),
                    words.exact(mark.marks()),
                    words.exact(mark.of()),
                    mark.feedback())
                .map(Cell::text)
                .toList());
      }
    }
    return ResultTable.of(words.say("sheet.feedback"), columns, rows);
  }
}
