package agro.course.paper;

import agro.course.CourseTopic;
import agro.course.Difficulty;
import agro.course.topic.ExerciseCatalogue;
import agro.reading.DelimitedFormat;
import agro.reading.DelimitedLine;
import agro.reading.DelimitedText;
import agro.report.InputProblem;
import agro.report.SourceLocation;
import agro.units.Numbers;
import agro.working.Cell;
import agro.working.Presentable;
import agro.working.Presentation;
import agro.working.ResultTable;
import agro.working.ResultTable.Column;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * What a paper asks: topic by difficulty by number of questions by marks. The marks of a line are
 * those of each of its questions.
 *
 * @param lines the lines in the order in which their questions stand on the paper
 */
public record Blueprint(List<BlueprintLine> lines) implements Presentable {

  private static final List<String> COLUMNS = List.of("topic", "difficulty", "questions", "marks");
  private static final int MOST_QUESTIONS = 200;

  /** Copies the list and refuses papers that are longer than anybody solves. */
  public Blueprint {
    lines = List.copyOf(lines);
    long questions = lines.stream().mapToLong(BlueprintLine::questions).sum();
    if (questions > MOST_QUESTIONS) {
      throw InputProblem.of("the blueprint asks for " + questions + " questions")
          .expected("at most " + MOST_QUESTIONS)
          .because("nobody solves more, so a number is likely mistyped")
          .mend("check the column questions");
    }
  }

  /**
   * A blueprint without lines, to be continued with {@link #with}.
   *
   * @return the blueprint
   */
  public static Blueprint empty() {
    return new Blueprint(List.of());
  }

  /**
   * This blueprint with some more questions, to be answered in writing.
   *
   * @param topic what they are about
   * @param difficulty how much they ask for
   * @param questions how many
   * @param marks marks of each of them
   * @return a longer blueprint
   */
  public Blueprint with(CourseTopic topic, Difficulty difficulty, int questions, double marks) {
    return with(
        new BlueprintLine(
            topic,
            difficulty,
            questions,
            marks,
            QuestionForm.OPEN,
            Optional.empty(),
            SourceLocation.NONE));
  }

  /**
   * This blueprint with one more line.
   *
   * @param line some questions that are alike
   * @return a longer blueprint
   */
  public Blueprint with(BlueprintLine line) {
    var more = new ArrayList<>(lines);
    more.add(line);
    return new Blueprint(more);
  }

  /**
   * Reads a blueprint with the columns {@code topic}, {@code difficulty}, {@code questions} and
   * {@code marks}, and if wanted {@code form} (open or options) and {@code type} (one certain
   * type).
   *
   * @param file the file
   * @return the blueprint
   * @throws InputProblem with the line of what cannot be asked
   */
  public static Blueprint read(Path file) {
    return read(file, DelimitedFormat.COMMA);
  }

  /**
   * Reads a blueprint that is written in some other way.
   *
   * @param file the file
   * @param format how it is written
   * @return the blueprint
   * @throws InputProblem with the line of what cannot be asked
   */
  public static Blueprint read(Path file, DelimitedFormat format) {
    return of(DelimitedText.read(file, format, COLUMNS));
  }

  /**
   * Reads a blueprint from text.
   *
   * @param name name of the text in messages
   * @param text the content of a file
   * @param format how it is written
   * @return the blueprint
   * @throws InputProblem with the line of what cannot be asked
   */
  public static Blueprint parse(String name, String text, DelimitedFormat format) {
    return of(DelimitedText.parse(name, text, format, COLUMNS));
  }

  private static Blueprint of(DelimitedText table) {
    return new Blueprint(table.requireRows().lines().stream().map(Blueprint::line).toList());
  }

  private static BlueprintLine line(DelimitedLine line) {
    return new BlueprintLine(
        located(line, "topic", CourseTopic::of),
        located(line, "difficulty", Difficulty::of),
        line.count("questions"),
        line.number("marks"),
        line.optionalChoice("form", QuestionForm.class).orElse(QuestionForm.OPEN),
        line.optionalText("type"),
        line.location());
  }

  /** The model knows no files, so its refusals get their place here. */
  private static <T> T located(DelimitedLine line, String column, Function<String, T> reading) {
    var text = line.text(column);
    try {
      return reading.apply(text);
    } catch (InputProblem unknown) {
      throw InputProblem.at(line.location(column), unknown.read())
          .expected(unknown.expected())
          .because(unknown.why())
          .mend(unknown.cure());
    }
  }

  /**
   * Refuses what a catalogue cannot ask.
   *
   * @param catalogue types to choose from
   * @throws InputProblem with the line, if there is no such exercise or nothing is asked
   */
  public void check(ExerciseCatalogue catalogue) {
    if (lines.isEmpty()) {
      throw InputProblem.of("the blueprint asks for nothing")
          .expected("at least one line with a topic")
          .because("a paper has questions")
          .mend("add a line with topic, difficulty, questions and marks");
    }
    lines.forEach(line -> line.types(catalogue));
  }

  /**
   * How many questions there are.
   *
   * @return the sum over all lines
   */
  public int questions() {
    return lines.stream().mapToInt(BlueprintLine::questions).sum();
  }

  /**
   * The marks of the whole paper.
   *
   * @return the sum over all questions
   */
  public double marks() {
    return lines.stream().mapToDouble(line -> line.questions() * line.marks()).sum();
  }

  /**
   * The lines with their sums.
   *
   * @return a table
   */
  public ResultTable table() {
    var rows = new ArrayList<List<Cell>>();
    for (var line : lines) {
      rows.add(
          List.of(
              Cell.text(line.topic().code()),
              Cell.text(line.difficulty().code()),
              Cell.number(line.questions(), 0),
              Cell.text(Numbers.plain(line.marks())),
              Cell.text(Numbers.plain(line.questions() * line.marks()))));
    }
    return ResultTable.of(
            "What the paper asks",
            List.of(
                Column.of("topic"),
                Column.of("difficulty"),
                Column.of("questions"),
                Column.of("marks each"),
                Column.of("marks")),
            rows)
        .withNote(questions() + " questions for " + Numbers.plain(marks()) + " marks in all.");
  }

  @Override
  public Presentation presentation() {
    return Presentation.titled("Blueprint").table(table()).build();
  }
}
