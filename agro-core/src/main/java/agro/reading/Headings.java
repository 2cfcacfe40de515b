package agro.reading;

import agro.report.InputProblem;
import agro.report.SourceLocation;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;

/** The heading line of a delimited text: which column stands where. */
final class Headings {

  private final String file;
  private final long line;
  private final char separator;
  private final List<String> names;
  private final Map<String, Integer> places;

  private Headings(
      String file, Fields fields, char separator, List<String> names, Map<String, Integer> places) {
    this.file = file;
    this.line = fields.line();
    this.separator = separator;
    this.names = names;
    this.places = places;
  }

  /**
   * Reads the heading line. Empty cells at its end are left out, as spreadsheets leave them.
   *
   * @param file name of the file in messages
   * @param fields the first record
   * @param separator character between cells
   * @return the headings
   * @throws InputProblem when a column has no name or the name of another one
   */
  static Headings of(String file, Fields fields, char separator) {
    var names = withoutEmptyEnd(fields.cells(), 0);
    var places = new HashMap<String, Integer>();
    for (int i = 0; i < names.size(); i++) {
      if (names.get(i).isEmpty()) {
        throw InputProblem.at(
                SourceLocation.line(file, fields.line()), "column " + (i + 1) + " has no name")
            .expected("a name for each column")
            .because("cells are found by the names of their columns")
            .mend("name the column, or remove it");
      }
      var earlier = places.putIfAbsent(key(names.get(i)), i);
      if (earlier != null) {
        throw InputProblem.at(
                SourceLocation.line(file, fields.line()).column(names.get(i)),
                "columns " + (earlier + 1) + " and " + (i + 1) + " have the same name")
            .expected("a different name for each column, capital letters apart")
            .because("it is unknown which of the two is meant")
            .mend("rename or remove one of them");
      }
    }
    return new Headings(file, fields, separator, names, places);
  }

  private static String key(String name) {
    return name.toLowerCase(Locale.ROOT);
  }

  private static List<String> withoutEmptyEnd(List<String> cells, int least) {
    int end = cells.size();
    while (end > least && cells.get(end - 1).isEmpty()) {
      end--;
    }
    return List.copyOf(cells.subList(0, end));
  }

  String file() {
    return file;
  }

  long line() {
    return line;
  }

  List<String> names() {
    return names;
  }

  Optional<Integer> indexOf(String column) {
    return Optional.ofNullable(place(column));
  }

  int requiredIndex(String column) {
    var place = place(column);
    if (place == null) {
      require(List.of(column));
    }
    return Objects.requireNonNull(place, column);
  }

  /** Asked for every cell of a log, mostly by the name as the map has it. */
  private Integer place(String column) {
    var place = places.get(column);
    return place == null ? places.get(key(Fields.trimmed(column))) : place;
  }

  /**
   * Makes sure that columns are present.
   *
   * @param required names
   * @throws InputProblem when one is missing
   */
  void require(List<String> required) {
    var missing = required.stream().filter(column -> indexOf(column).isEmpty()).toList();
    if (!missing.isEmpty()) {
      throw InputProblem.at(
              SourceLocation.line(file, line),
              (missing.size() == 1 ? "there is no column " : "there are no columns ")
                  + quoted(missing))
          .expected("a heading line with " + quoted(required))
          .because("the data are found by these names; the heading has " + quoted(names))
          .mend(cureForMissing(missing, required));
    }
  }

  private String cureForMissing(List<String> missing, List<String> required) {
    if (names.size() == 1) {
      for (char other : new char[] {';', '\t', ',', '|'}) {
        if (other != separator && names.get(0).indexOf(other) >= 0) {
          return "save the file with "
              + DelimitedFormat.shown(separator)
              + " between its cells, or, where that can be declared, declare "
              + DelimitedFormat.shown(other)
              + ", which its heading holds";
        }
      }
    }
    // A wanted column is not to be renamed to another one: a maximum is no mistyped minimum.
    var wanted = required.stream().map(column -> key(Fields.trimmed(column))).toList();
    var free = names.stream().filter(name -> !wanted.contains(key(name))).toList();
    var renames = new ArrayList<String>();
    for (var column : missing) {
      NearestWord.to(column, free)
          .ifPresent(near -> renames.add("rename \"" + near + "\" to \"" + column + "\""));
    }
    return renames.isEmpty()
        ? "add the missing column, or name an existing one so"
        : String.join(" and ", renames) + " if that is what it holds";
  }

  /**
   * The cells of a record, one for each column. Empty cells beyond the last column are left out.
   *
   * @param fields the record
   * @return as many cells as there are columns
   * @throws InputProblem when there are fewer or more
   */
  List<String> fitted(Fields fields) {
    var cells =
        fields.cells().size() > names.size()
            ? withoutEmptyEnd(fields.cells(), names.size())
            : fields.cells();
    if (cells.size() == names.size()) {
      return cells;
    }
    boolean shortLine = cells.size() < names.size();
    var found =
        shortLine
            ? "the line has only "
                + counted(cells.size())
                + "; it ends before column "
                + quoted(List.of(names.get(cells.size())))
            : "the line has " + counted(cells.size()) + ", more than the heading";
    throw InputProblem.at(SourceLocation.line(file, fields.line()), found)
        .expected(counted(names.size()) + " as in the heading: " + quoted(names))
        .because("it is unknown which cell belongs to which column")
        .mend(cureForCount(fields, shortLine));
  }

  private String cureForCount(Fields fields, boolean shortLine) {
    if (fields.spansLines()) {
      return "close the double quote that makes a cell of this line run over its end";
    }
    if (shortLine) {
      return "write the missing cells; an unknown value is an empty cell between separators";
    }
    return separator == ','
        ? "put a cell that holds a comma into double quotes; if commas are decimal commas, separate"
            + " the cells by ';' and declare both"
        : "put a cell that holds " + DelimitedFormat.shown(separator) + " into double quotes";
  }

  private static String counted(int cells) {
    return cells + (cells == 1 ? " cell" : " cells");
  }

  static String quoted(List<String> names) {
    return names.stream().map(name -> '"' + name + '"').collect(Collectors.joining(", "));
  }
}
