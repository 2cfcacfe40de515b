package agro.season;

import agro.reading.SafeFile;
import agro.report.InputProblem;
import agro.report.SourceLocation;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Collectors;

/** An empty season folder: the tables with their headings, an example in each, and a page. */
final class FolderTemplate {
  private static final String PAGE = "README.md";

  private FolderTemplate() {}

  static void write(Path folder) {
    var files = files();
    for (var name : files.keySet()) {
      if (Files.exists(folder.resolve(name))) {
        throw InputProblem.at(SourceLocation.file(folder.resolve(name).toString()), "a file")
            .expected("a folder without " + String.join(", ", files.keySet()))
            .because("what stands in the file would be lost")
            .mend("name another folder, or move the file away first");
      }
    }
    files.forEach((name, text) -> SafeFile.writeText(folder.resolve(name), text));
  }

  private static Map<String, String> files() {
    var files = new LinkedHashMap<String, String>();
    files.put(PAGE, page());
    for (var table : FolderLayout.values()) {
      files.put(table.fileName(), emptyTable(table));
    }
    return files;
  }

  /** Heading line, and examples that are comments. */
  private static String emptyTable(FolderLayout table) {
    return "# "
        + table.about()
        + "\n"
        + table.columns().stream().map(FolderLayout.Column::name).collect(Collectors.joining(","))
        + "\n"
        + table.examples().stream().map(line -> "# " + line + "\n").collect(Collectors.joining());
  }

  /** The page that explains the layout. */
  static String page() {
    var page =
        new StringBuilder(
            """
            # A season folder

            One folder holds the logs and traps of one district: five tables, the log files
            that they name, and two tables more that may be left out: `stages.csv` and
            `forecasts.csv`. All tables are plain CSV: comma between cells, decimal point, UTF-8. A line
            that begins with `#` is a comment; blank lines are skipped. Columns may stand in any
            order, and columns that may be empty may be left out. A cell with a comma stands in
            double quotes. Names are compared letter by letter.

            A log file may be written in another way; its line in `logs.csv` says how. Where it has
            gaps of at most two days they are filled on a straight line. Longer gaps, and the days
            up to the day of issue, come from the log of the neighbour, shifted by the difference
            that the two places showed on the days that both know. Everything that is assumed,
            filled or left out is reported.

            ## What is needed at least

            - the season under way: a log from its first day on, and the trap visits so far;
            - three past years of a station near the place, or of the place itself, for the weather
              ahead; fifteen are better;
            - thirty days that the log and the station have in common, where one has to stand in for
              the other;
            - two past seasons of trap visits with two flights that stand apart, for an interval of
              your own; with fewer the published one is used, and the page says so.

            The lines that begin with `#` below each heading are an example. Take the `#` away, put
            your own figures in, and add the log files.

            What the source columns take: the publication that was read, or one of the phrases
            `value from memory`, `common practice, no source`, `computed here`, `invented for
            demonstration`.
            """);
    for (var table : FolderLayout.values()) {
      page.append("\n## `").append(table.fileName()).append("`: ").append(table.about());
      page.append("\n\n| column | may be empty | what it holds |\n|---|---|---|\n");
      for (var column : table.columns()) {
        page.append("| `").append(column.name()).append("` | ");
        page.append(column.isNeeded() ? "no" : "yes").append(" | ").append(column.meaning());
        page.append(" |\n");
      }
    }
    return page.toString();
  }
}
