package agro.season;

import agro.reading.DelimitedFormat;
import agro.reading.DelimitedLine;
import agro.reading.DelimitedText;
import agro.reading.NearestWord;
import agro.reading.TextFile;
import agro.report.InputProblem;
import agro.report.ReadReport;
import agro.report.ReadReport.Deed;
import agro.report.SourceLocation;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.function.Supplier;

/** Reads the tables of a season folder line by line, and looks up the names in them. */
final class FolderTable {

  private FolderTable() {}

  /** The lines of a table that has all columns it needs; further columns are reported. */
  static List<DelimitedLine> lines(Path folder, FolderLayout table, ReadReport.Collector report) {
    return read(folder, table, report).requireRows().lines();
  }

  /** The same of a table that may have a heading alone. */
  static List<DelimitedLine> linesIfAny(
      Path folder, FolderLayout table, ReadReport.Collector report) {
    return read(folder, table, report).lines();
  }

  private static DelimitedText read(Path folder, FolderLayout table, ReadReport.Collector report) {
    var name = table.fileName();
    var text = TextFile.read(folder.resolve(name), name, StandardCharsets.UTF_8);
    var read = DelimitedText.parse(name, text, DelimitedFormat.COMMA, table.neededColumns());
    var known = table.columns().stream().map(FolderLayout.Column::name).toList();
    for (var column : read.columns()) {
      if (known.stream().noneMatch(column::equalsIgnoreCase)) {
        var near = NearestWord.to(column, known).map(word -> "; is " + word + " meant?").orElse("");
        report.add(
            Deed.NOTED,
            SourceLocation.file(name).column(column),
            "the layout has no such column, so it is not used" + near);
      }
    }
    return read;
  }

  /** A table whose first column names each line once. */
  static <T> Map<String, T> named(
      List<DelimitedLine> lines, FolderLayout table, Function<DelimitedLine, T> reader) {
    var column = table.columns().get(0).name();
    var found = new LinkedHashMap<String, T>();
    for (var line : lines) {
      var name = line.text(column);
      if (found.put(name, reader.apply(line)) != null) {
        throw InputProblem.at(line.location(column), "\"" + name + "\" for the second time")
            .expected("each name once")
            .because("the other tables could mean either line")
            .mend("remove one of the lines, or give it another name");
      }
    }
    return found;
  }

  /** A cell that names a line of another table. */
  static String reference(
      DelimitedLine line, String column, FolderLayout table, Collection<String> names) {
    var name = line.text(column);
    if (!names.contains(name)) {
      throw InputProblem.at(line.location(column), "the cell reads \"" + name + "\"")
          .expected("a name from " + table.fileName() + ": " + String.join(", ", names))
          .because("nothing is known of anything else; capitals and spaces count")
          .mend(
              NearestWord.to(name, names)
                  .map(near -> "write \"" + near + "\" if that is meant")
                  .orElse("correct the name, or add a line for it to " + table.fileName()));
    }
    return name;
  }

  /** A name that a caller asks for. */
  static <T> T asked(String what, String name, Map<String, T> known, FolderLayout table) {
    var found = known.get(name);
    if (found == null) {
      throw InputProblem.of("the " + what + " \"" + name + "\" was asked for")
          .expected("a name from " + table.fileName() + ": " + String.join(", ", known.keySet()))
          .because("nothing is known of anything else; capitals and spaces count")
          .mend(
              NearestWord.to(name, known.keySet())
                  .map(near -> "ask for \"" + near + "\" if that is meant")
                  .orElse("correct the name, or add a line for it to " + table.fileName()));
    }
    return found;
  }

  /** Gives a problem that comes from the values of a line the place where they stand. */
  static <T> T located(DelimitedLine line, String column, Supplier<T> reader) {
    try {
      return reader.get();
    } catch (InputProblem problem) {
      if (!problem.location().file().isEmpty()) {
        throw problem;
      }
      throw InputProblem.at(line.location(column), problem.read())
          .expected(problem.expected())
          .because(problem.why())
          .mend(problem.cure());
    }
  }
}
