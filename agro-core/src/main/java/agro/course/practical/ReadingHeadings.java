package agro.course.practical;

import agro.reading.DelimitedText;
import agro.report.InputProblem;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Which column of a file holds what, and the unit that its heading states. */
final class ReadingHeadings {

  private static final Pattern BRACKETS = Pattern.compile("(.+?)\\s*[(\\[]\\s*(.+?)\\s*[)\\]]");

  /** A column of the file. */
  private record Place(String heading, String unit) {}

  private final Map<ReadingColumn, Place> places = new EnumMap<>(ReadingColumn.class);

  private ReadingHeadings() {}

  static ReadingHeadings of(DelimitedText text) {
    var found = new ReadingHeadings();
    for (var heading : text.columns()) {
      found.add(text, heading);
    }
    if (!found.has(ReadingColumn.GROUP)) {
      throw InputProblem.at(text.location(), "there is no column for the group")
          .expected("a column \"group\"")
          .because("each line is the work of one group, which the result names")
          .mend("name the first column group; an empty template shows all columns");
    }
    return found;
  }

  private void add(DelimitedText text, String heading) {
    var name = heading;
    var unit = "";
    var brackets = BRACKETS.matcher(heading);
    if (brackets.matches()) {
      name = brackets.group(1);
      unit = brackets.group(2);
    }
    var column = ReadingColumn.named(name);
    for (int end = name.indexOf('_');
        column.isEmpty() && end > 0;
        end = name.indexOf('_', end + 1)) {
      column = ReadingColumn.named(name.substring(0, end));
      unit = column.isPresent() ? name.substring(end + 1).replace("_per_", "/") : unit;
    }
    if (column.isEmpty()) {
      return;
    }
    var earlier = places.put(column.get(), new Place(heading, unit));
    if (earlier != null) {
      throw InputProblem.at(
              text.location(),
              "the columns \"" + earlier.heading() + "\" and \"" + heading + "\" hold the same")
          .expected("each kind of reading in one column")
          .because("it is unknown which of the two counts")
          .mend("remove one of them, or give it another name");
    }
  }

  boolean has(ReadingColumn column) {
    return places.containsKey(column);
  }

  /** The heading as it stands in the file. */
  String heading(ReadingColumn column) {
    return Optional.ofNullable(places.get(column)).map(Place::heading).orElse("");
  }

  /** The unit that the heading states, or nothing. */
  String unit(ReadingColumn column) {
    return Optional.ofNullable(places.get(column)).map(Place::unit).orElse("");
  }

  @Override
  public String toString() {
    return places.values().stream().map(Place::heading).collect(Collectors.joining(", "));
  }
}
