package agro.course.paper;

import agro.reading.DelimitedFormat;
import agro.reading.DelimitedLine;
import agro.reading.DelimitedText;
import agro.reading.SafeFile;
import agro.report.InputProblem;
import agro.report.ReadReport;
import agro.report.ReadReport.Deed;
import agro.report.ReadReport.Entry;
import agro.report.SourceLocation;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * What the students of a class typed. Files are wide, with a column for each part ({@code
 * student,1a,1b,2a}), or long, with a row for each answer ({@code student,part,answer}).
 *
 * @param answers text by label of the part, by student
 * @param report what was not looked at
 */
public record AnswerFile(Map<CourseStudent, Map<String, String>> answers, ReadReport report) {

  private static final String STUDENT = "student";
  private static final String PART = "part";
  private static final String ANSWER = "answer";
  private static final Pattern LABEL = Pattern.compile("(\\d+)\\s*[).]?\\s*([a-z])?\\s*\\)?");
  private static final List<String> KNOWN = List.of(STUDENT, "name", "group");

  /** Copies the maps. */
  public AnswerFile {
    var copy = new LinkedHashMap<CourseStudent, Map<String, String>>();
    answers.forEach((student, own) -> copy.put(student, Map.copyOf(own)));
    answers = Collections.unmodifiableMap(copy);
  }

  /**
   * Reads the answers to the papers of a class, with commas between cells.
   *
   * @param file the file
   * @param papers the papers
   * @return the answers
   * @throws InputProblem with the line of an unknown student, part or repetition
   */
  public static AnswerFile read(Path file, ClassPapers papers) {
    return read(file, DelimitedFormat.COMMA, papers);
  }

  /**
   * Reads the answers to the papers of a class.
   *
   * @param file the file
   * @param format how it is written
   * @param papers the papers
   * @return the answers
   * @throws InputProblem with the line of an unknown student, part or repetition
   */
  public static AnswerFile read(Path file, DelimitedFormat format, ClassPapers papers) {
    return of(DelimitedText.read(file, format, List.of(STUDENT)), papers);
  }

  /**
   * Reads a file, or all files of a folder that end in {@code .csv}, such as those that notebooks
   * write.
   *
   * @param place the file or the folder
   * @param format how files are written; those of notebooks are known by their heading
   * @param papers the papers
   * @return the answers
   * @throws InputProblem as for a file, and if a student is in two files or there is none
   */
  public static AnswerFile readAll(Path place, DelimitedFormat format, ClassPapers papers) {
    return AnswerFolder.files(place).stream()
        .map(file -> read(file, AnswerFolder.format(file, format), papers))
        .reduce(AnswerFile::and)
        .orElseThrow(
            () ->
                InputProblem.at(SourceLocation.file(place.toString()), "the folder has no answers")
                    .expected("files that end in .csv")
                    .because("there is nothing to mark")
                    .mend("put the files of the students there, or name one file"));
  }

  /**
   * Reads answers from text.
   *
   * @param name name of the text in messages
   * @param text the content of a file
   * @param format how it is written
   * @param papers the papers
   * @return the answers
   * @throws InputProblem with the line of an unknown student, part or repetition
   */
  public static AnswerFile parse(
      String name, String text, DelimitedFormat format, ClassPapers papers) {
    return of(DelimitedText.parse(name, text, format, List.of(STUDENT)), papers);
  }

  private static AnswerFile of(DelimitedText table, ClassPapers papers) {
    table.requireRows();
    return table.hasColumn(PART) && table.hasColumn(ANSWER)
        ? longRows(table, papers)
        : wideRows(table, papers);
  }

  private static AnswerFile longRows(DelimitedText table, ClassPapers papers) {
    var answers = new LinkedHashMap<CourseStudent, Map<String, String>>();
    for (var line : table.lines()) {
      var paper = paper(line, papers);
      var text = line.text(PART);
      var label = label(text, paper.labels()).orElseThrow(() -> noPart(line, PART, text, paper));
      var own = answers.computeIfAbsent(paper.student(), missing -> new LinkedHashMap<>());
      if (own.put(label, line.optionalText(ANSWER).orElse("")) != null) {
        throw InputProblem.at(
                line.location(PART), paper.student().id() + " has answered " + label + " already")
            .expected("one answer to each part")
            .because("it is not clear which of the two counts")
            .mend("remove the one that does not count");
      }
    }
    return new AnswerFile(answers, report(table, List.of()));
  }

  private static AnswerFile wideRows(DelimitedText table, ClassPapers papers) {
    var labels = papers.labels();
    var columns = new LinkedHashMap<String, String>();
    var entries = new ArrayList<Entry>();
    for (var column : table.columns()) {
      if (KNOWN.stream().noneMatch(column::equalsIgnoreCase)) {
        addColumn(column, labels, table, columns, entries);
      }
    }
    requireAll(labels, columns, table);
    var answers = new LinkedHashMap<CourseStudent, Map<String, String>>();
    for (var line : table.lines()) {
      var paper = paper(line, papers);
      var own = own(line, columns, paper);
      if (answers.put(paper.student(), own) != null) {
        throw InputProblem.at(line.location(STUDENT), paper.student().id() + " stands there twice")
            .expected("one line for each student")
            .because("it is not clear which of the two counts")
            .mend("remove the one that does not count");
      }
    }
    return new AnswerFile(answers, report(table, entries));
  }

  private static void addColumn(
      String column,
      List<String> labels,
      DelimitedText table,
      Map<String, String> columns,
      List<Entry> entries) {
    var label = label(column, labels);
    if (label.isEmpty() && LABEL.matcher(key(column)).matches()) {
      throw InputProblem.at(table.location(), "the column \"" + column + "\" is on no paper")
          .expected("the parts " + String.join(", ", labels))
          .because("these answers belong to other papers")
          .mend("mark with the blueprint, seed and sitting with which the papers were set");
    }
    if (label.isEmpty()) {
      entries.add(
          new Entry(Deed.NOTED, table.location(), "the column " + column + " is not looked at"));
    } else if (columns.put(label.get(), column) != null) {
      throw InputProblem.at(table.location(), "two columns hold the answers to " + label.get())
          .expected("one column for each part")
          .because("it is not clear which of the two counts")
          .mend("remove one of them");
    }
  }

  private static void requireAll(
      List<String> labels, Map<String, String> columns, DelimitedText table) {
    var missing = labels.stream().filter(label -> !columns.containsKey(label)).toList();
    if (!missing.isEmpty()) {
      throw InputProblem.at(
              SourceLocation.line(table.name(), 1),
              "there is no column for " + String.join(", ", missing))
          .expected("the columns student, " + String.join(", ", labels))
          .because("nobody would have marks for a part that is missing")
          .mend("add the columns, empty where nobody answered");
    }
  }

  private static Map<String, String> own(
      DelimitedLine line, Map<String, String> columns, StudentPaper paper) {
    var own = new LinkedHashMap<String, String>();
    columns.forEach(
        (label, column) -> {
          var text = line.optionalText(column);
          if (paper.labels().contains(label)) {
            own.put(label, text.orElse(""));
          } else if (text.isPresent()) {
            throw noPart(line, column, label, paper);
          }
        });
    return own;
  }

  private static StudentPaper paper(DelimitedLine line, ClassPapers papers) {
    var student = papers.plan().classList().require(line.text(STUDENT), line.location(STUDENT));
    return papers
        .paper(student.id())
        .orElseThrow(
            () ->
                InputProblem.at(line.location(STUDENT), student.id() + " has no paper here")
                    .expected("a student whose paper was set")
                    .because("only the student's own numbers say what is right")
                    .mend("set papers for the whole class, or remove the line"));
  }

  private static InputProblem noPart(
      DelimitedLine line, String column, String part, StudentPaper paper) {
    return InputProblem.at(
            line.location(column), paper.student().id() + " has no part \"" + part + "\"")
        .expected("one of " + String.join(", ", paper.labels()))
        .because("an answer belongs to a part of the paper")
        .mend("correct the part, or mark with the plan with which the papers were set");
  }

  private static String key(String text) {
    return ClassList.key(text);
  }

  /** Teachers write 1a, 1 a), 1A, or 1 where there is but one part. */
  private static Optional<String> label(String text, List<String> labels) {
    var match = LABEL.matcher(key(text));
    if (!match.matches()) {
      return Optional.empty();
    }
    var number = match.group(1).replaceFirst("^0+(?=.)", "");
    if (match.group(2) != null) {
      return Optional.of(number + match.group(2)).filter(labels::contains);
    }
    boolean alone = labels.contains(number + "a") && !labels.contains(number + "b");
    return alone ? Optional.of(number + "a") : Optional.empty();
  }

  private static ReadReport report(DelimitedText table, List<Entry> entries) {
    return new ReadReport(table.name(), table.lines().size(), entries);
  }

  /**
   * What a student typed.
   *
   * @param student the student
   * @return text by label of the part; empty when nothing was handed in, or only blanks
   */
  public Optional<Map<String, String>> of(CourseStudent student) {
    return Optional.ofNullable(answers.get(student))
        .filter(own -> own.values().stream().anyMatch(text -> !text.isBlank()));
  }

  /**
   * The answers of one student, written from a notebook as a long file.
   *
   * @param file the file, replaced if it is there
   * @param student id of the student
   * @param answers text by label of the part
   */
  public static void save(Path file, String student, Map<String, String> answers) {
    var rows = new CsvRows(DelimitedFormat.COMMA);
    rows.add(List.of(STUDENT, PART, ANSWER));
    answers.forEach((part, answer) -> rows.add(List.of(student, part, answer)));
    SafeFile.writeText(file, rows.text());
  }

  /**
   * An empty file to be filled in: a row for each student, a column for each part.
   *
   * @param papers the papers
   * @param format how it is written
   * @return the content of the file
   */
  public static String template(ClassPapers papers, DelimitedFormat format) {
    var labels = papers.labels();
    var rows = new CsvRows(format);
    var heading = new ArrayList<String>(KNOWN);
    heading.addAll(labels);
    rows.add(heading);
    for (var paper : papers.papers()) {
      var student = paper.student();
      var cells = new ArrayList<>(List.of(student.id(), student.name(), student.group()));
      labels.forEach(label -> cells.add(""));
      rows.add(cells);
    }
    return rows.text();
  }

  /**
   * These answers and those of another file, for classes that hand in a file each.
   *
   * @param other the other file
   * @return both
   * @throws InputProblem if a student is in both
   */
  public AnswerFile and(AnswerFile other) {
    var all = new LinkedHashMap<>(answers);
    other.answers.forEach(
        (student, own) -> {
          if (all.put(student, own) != null) {
            throw InputProblem.at(
                    SourceLocation.file(other.report.source()), student.id() + " is in two files")
                .expected("each student in one file")
                .because("it is not clear which of the two counts")
                .mend("move the file that does not count out of the folder");
          }
        });
    return new AnswerFile(all, report.and(other.report));
  }
}
