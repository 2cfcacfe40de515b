package agro.course.paper;

import agro.reading.DelimitedFormat;
import agro.reading.DelimitedLine;
import agro.reading.DelimitedText;
import agro.reading.NearestWord;
import agro.report.InputProblem;
import agro.report.SourceLocation;
import agro.working.SpreadsheetText;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * The students of a class in order. Papers are drawn in this order, so newcomers are added at the
 * end. Ids are told apart without regard to case, since they are typed by hand.
 *
 * @param students at least one, each id once
 */
public record ClassList(List<CourseStudent> students) {

  private static final String STUDENT = "student";

  /** Copies the list and refuses an empty one and an id that comes twice. */
  public ClassList {
    students = List.copyOf(students);
    if (students.isEmpty()) {
      throw InputProblem.of("the class has no students")
          .expected("at least one student")
          .because("each student gets a paper of his or her own")
          .mend("write one line for each student below the heading \"student\"");
    }
    var seen = new HashMap<String, String>();
    for (var student : students) {
      var earlier = seen.put(key(student.id()), student.id());
      if (earlier != null) {
        throw twice(
            SourceLocation.NONE, student.id(), "as \"" + earlier + "\" earlier in the list");
      }
    }
  }

  /**
   * A class whose students are known by their ids.
   *
   * @param ids one for each student
   * @return the class
   * @throws InputProblem if there is none or one comes twice
   */
  public static ClassList of(String... ids) {
    return new ClassList(List.of(ids).stream().map(CourseStudent::of).toList());
  }

  /**
   * Reads a class list with the column {@code student} and, if wanted, {@code name} and {@code
   * group}.
   *
   * @param file the file
   * @return the class
   * @throws InputProblem with the line of a student who is blank or comes twice
   */
  public static ClassList read(Path file) {
    return read(file, DelimitedFormat.COMMA);
  }

  /**
   * Reads a class list that is written in some other way.
   *
   * @param file the file
   * @param format how it is written
   * @return the class
   * @throws InputProblem with the line of a student who is blank or comes twice
   */
  public static ClassList read(Path file, DelimitedFormat format) {
    return of(DelimitedText.read(file, format, List.of(STUDENT)));
  }

  /**
   * Reads a class list from text.
   *
   * @param name name of the text in messages
   * @param text the content of a file
   * @param format how it is written
   * @return the class
   * @throws InputProblem with the line of a student who is blank or comes twice
   */
  public static ClassList parse(String name, String text, DelimitedFormat format) {
    return of(DelimitedText.parse(name, text, format, List.of(STUDENT)));
  }

  private static ClassList of(DelimitedText table) {
    var students = new ArrayList<CourseStudent>();
    var lines = new HashMap<String, Long>();
    for (var line : table.requireRows().lines()) {
      var id = line.text(STUDENT);
      var earlier = lines.putIfAbsent(key(id), line.lineNumber());
      if (earlier != null) {
        throw twice(line.location(STUDENT), id, "in line " + earlier);
      }
      students.add(new CourseStudent(id, text(line, "name"), text(line, "group")));
    }
    return new ClassList(students);
  }

  private static String text(DelimitedLine line, String column) {
    return line.optionalText(column).orElse("");
  }

  private static InputProblem twice(SourceLocation place, String id, String where) {
    return InputProblem.at(place, "the student \"" + id + "\" stands there already, " + where)
        .expected("each student once")
        .because("papers and marks go by this id, and small and capital letters are one")
        .mend("remove one of the two, or give each an id of its own");
  }

  /** Ids as they are compared. */
  static String key(String id) {
    return id.strip().toUpperCase(Locale.ROOT).toLowerCase(Locale.ROOT);
  }

  /**
   * A student by id.
   *
   * @param id the id, in any case; as a spreadsheet keeps it, with an apostrophe before a sign, is
   *     understood too
   * @return the student; empty if nobody has this id
   */
  public Optional<CourseStudent> student(String id) {
    var wanted = key(id);
    return students.stream()
        .filter(
            each ->
                key(each.id()).equals(wanted)
                    || key(SpreadsheetText.harmless(each.id())).equals(wanted))
        .findFirst();
  }

  /**
   * A student who has to be in the class.
   *
   * @param id the id
   * @param place where it was read
   * @return the student
   * @throws InputProblem if nobody has this id
   */
  CourseStudent require(String id, SourceLocation place) {
    return student(id)
        .orElseThrow(
            () -> {
              var ids = students.stream().map(CourseStudent::id).toList();
              var near = NearestWord.to(id, ids);
              return InputProblem.at(place, "there is no student \"" + id + "\" in the class")
                  .expected("one of the " + ids.size() + " ids of the class list")
                  .because("only the student's own numbers say what is right")
                  .mend(
                      near.map(word -> "write \"" + word + "\" if that is meant, or ").orElse("")
                          + "mark with the class list with which the papers were set");
            });
  }
}
