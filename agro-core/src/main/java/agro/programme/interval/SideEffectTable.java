package agro.programme.interval;

import agro.dose.LabelEntry;
import agro.reading.DelimitedFormat;
import agro.reading.DelimitedLine;
import agro.reading.DelimitedText;
import agro.reading.TextFile;
import agro.report.InputProblem;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * The user's own table of side effects on natural enemies. None is built in: they differ with the
 * dose, the stage of the enemy and the test.
 *
 * @param lines the lines; one for a product and an organism
 */
public record SideEffectTable(List<SideEffect> lines) {

  /** Name of the file in a season folder. */
  public static final String FILE = "side-effects.csv";

  /** Refuses two lines of one product and organism. */
  public SideEffectTable {
    lines = List.copyOf(lines);
    var seen = new HashSet<List<String>>();
    for (var each : lines) {
      if (!seen.add(List.of(each.product(), each.organism()))) {
        throw InputProblem.of(each.product() + " on " + each.organism() + " for the second time")
            .expected("one line for a product and a natural enemy")
            .because("it is unknown which of the two holds")
            .mend("keep the line with the longer waiting time, or that of the better source");
      }
    }
  }

  /**
   * A table of lines that were made in code.
   *
   * @param lines the lines
   * @return the table
   */
  public static SideEffectTable of(SideEffect... lines) {
    return new SideEffectTable(List.of(lines));
  }

  /**
   * Reads {@code side-effects.csv} of a season folder: product, organism, class,
   * days_before_release, days_after_release, source.
   *
   * @param folder the folder
   * @return the table
   * @throws InputProblem for a cell that cannot be read, or a line without its source
   */
  public static SideEffectTable read(Path folder) {
    return parse(FILE, TextFile.read(folder.resolve(FILE), FILE, StandardCharsets.UTF_8));
  }

  /**
   * Reads a table from text.
   *
   * @param name name of the text in messages
   * @param text the table
   * @return the table
   * @throws InputProblem for a cell that cannot be read, or a line without its source
   */
  public static SideEffectTable parse(String name, String text) {
    var needed = List.of("product", "organism", "source");
    var table = DelimitedText.parse(name, text, DelimitedFormat.COMMA, needed);
    return new SideEffectTable(
        table.lines().stream()
            .map(
                line ->
                    new SideEffect(
                        line.text("product"),
                        line.text("organism"),
                        line.optionalText("class").orElse(""),
                        days(line, "days_before_release"),
                        days(line, "days_after_release"),
                        line.text("source")))
            .toList());
  }

  private static LabelEntry<Integer> days(DelimitedLine line, String column) {
    var text = line.optionalText(column);
    if (text.isEmpty()) {
      return LabelEntry.notRecorded();
    }
    return text.get().toLowerCase(Locale.ROOT).equals("none")
        ? LabelEntry.none()
        : LabelEntry.stated(line.count(column));
  }

  /**
   * The line of a product and a natural enemy.
   *
   * @param product the product
   * @param organism the natural enemy
   * @return the line; nothing if there is none
   */
  public Optional<SideEffect> find(String product, String organism) {
    return lines.stream()
        .filter(each -> each.product().equals(product) && each.organism().equals(organism))
        .findFirst();
  }
}
