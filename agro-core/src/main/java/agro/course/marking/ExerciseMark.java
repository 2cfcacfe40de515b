package agro.course.marking;

import agro.course.Exercise;
import agro.working.Cell;
import agro.working.Presentable;
import agro.working.Presentation;
import agro.working.ResultTable;
import agro.working.ResultTable.Column;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * The marks for an exercise.
 *
 * @param exercise the exercise
 * @param parts one for each part
 * @param rightAnswers the right answers as printed, one for each part; none if they are not shown
 */
public record ExerciseMark(Exercise exercise, List<PartMark> parts, List<String> rightAnswers)
    implements Presentable {

  /** Copies the lists. */
  public ExerciseMark {
    Objects.requireNonNull(exercise, "exercise");
    parts = List.copyOf(parts);
    rightAnswers = List.copyOf(rightAnswers);
    if (!rightAnswers.isEmpty() && rightAnswers.size() != parts.size()) {
      throw new IllegalArgumentException("there is one right answer for each part, or none");
    }
  }

  /**
   * The marks given.
   *
   * @return the sum over the parts
   */
  public double marks() {
    return parts.stream().mapToDouble(PartMark::marks).sum();
  }

  /**
   * The marks that could be had.
   *
   * @return the sum over the parts
   */
  public double of() {
    return parts.stream().mapToDouble(PartMark::of).sum();
  }

  /** Marks, readings and feedback, in the language of the exercise. */
  @Override
  public Presentation presentation() {
    var words = Marker.words(exercise);
    var page = Presentation.titled(words.say("mark.title", "exercise", exercise.title()));
    page.fact(
        words.say("mark.total"),
        words.say("mark.of", "marks", words.exact(marks()), "of", words.exact(of())));
    page.table(table());
    for (var part : parts) {
      page.paragraph(part.part() + ") " + part.feedback());
    }
    if (showsFigures() && !exercise.body().cautions().isEmpty()) {
      page.paragraph(String.join(" ", words.cautions(exercise.body().cautions())));
    }
    return page.paragraph(exercise.key().print(words)).build();
  }

  /** A page of blanks holds no figure that anybody could act on. */
  private boolean showsFigures() {
    return !rightAnswers.isEmpty() || parts.stream().anyMatch(part -> !part.typed().isBlank());
  }

  private ResultTable table() {
    var words = Marker.words(exercise);
    var columns = new ArrayList<Column>();
    for (var key : List.of("part", "typed", "reading", "verdict", "marks", "of")) {
      columns.add(Column.of(words.say("mark.column." + key)));
    }
    if (!rightAnswers.isEmpty()) {
      columns.add(Column.of(words.say("mark.column.right")));
    }
    var rows = new ArrayList<List<Cell>>();
    for (int i = 0; i < parts.size(); i++) {
      var part = parts.get(i);
      var row = new ArrayList<Cell>();
      row.add(Cell.text(part.part()));
      row.add(Cell.text(part.typed()));
      row.add(Cell.text(part.reading()));
      row.add(Cell.text(words.say("verdict." + part.verdict())));
      row.add(Cell.text(words.exact(part.marks())));
      row.add(Cell.text(words.exact(part.of())));
      if (!rightAnswers.isEmpty()) {
        row.add(Cell.text(rightAnswers.get(i)));
      }
      rows.add(row);
    }
    return ResultTable.of(words.say("mark.table"), columns, rows);
  }
}
