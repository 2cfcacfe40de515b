package agro.season;

import agro.generation.FlightShare;
import agro.reading.DelimitedFormat;
import agro.reading.DelimitedLine;
import agro.reading.DelimitedText;
import agro.reading.SafeFile;
import agro.reading.TextFile;
import agro.report.InputProblem;
import agro.units.Numbers;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** Reads {@code forecasts.csv}, and adds lines to it without touching those that stand there. */
final class LedgerFile {

  private static final FolderLayout TABLE = FolderLayout.FORECASTS;
  private static final String NOT_THIS_SEASON = "not this season";

  private LedgerFile() {}

  static List<LedgerEntry> read(Path folder) {
    var entries = new ArrayList<LedgerEntry>();
    if (Files.exists(folder.resolve(TABLE.fileName()))) {
      parsed(text(folder)).lines().forEach(line -> entries.add(entry(line)));
    }
    return entries;
  }

  private static String text(Path folder) {
    return TextFile.read(
        folder.resolve(TABLE.fileName()), TABLE.fileName(), StandardCharsets.UTF_8);
  }

  private static DelimitedText parsed(String text) {
    return DelimitedText.parse(
        TABLE.fileName(), text, DelimitedFormat.COMMA, TABLE.neededColumns());
  }

  private static LedgerEntry entry(DelimitedLine line) {
    var quantiles = new ArrayList<Optional<LocalDate>>();
    for (var chance : LedgerEntry.CHANCES) {
      quantiles.add(quantile(line, column(chance), quantiles));
    }
    return new LedgerEntry(
        line.date("issued"),
        line.text("place"),
        line.text("pest"),
        line.date("season_start"),
        line.date("season_end"),
        line.text("event"),
        positive(line, "generation"),
        share(line),
        quantiles,
        chance(line),
        line.text("method"),
        line.optionalText("note").orElse(""),
        line.location());
  }

  private static String column(int chance) {
    return String.format(Locale.ROOT, "p%02d", chance);
  }

  private static Optional<LocalDate> quantile(
      DelimitedLine line, String column, List<Optional<LocalDate>> before) {
    var day =
        line.text(column).equalsIgnoreCase(NOT_THIS_SEASON)
            ? Optional.<LocalDate>empty()
            : Optional.of(line.date(column));
    if (!before.isEmpty()) {
      var last = before.get(before.size() - 1);
      var falls =
          last.isEmpty() ? day.isPresent() : day.filter(d -> d.isBefore(last.get())).isPresent();
      if (falls) {
        throw InputProblem.at(
                line.location(column), "the day " + line.text(column) + " after a later one")
            .expected("days that rise from p05 to p95, and \"not this season\" last")
            .because("with more chances the event cannot come earlier")
            .mend("put the line back as it was issued, from a copy of the file");
      }
    }
    return day;
  }

  private static int positive(DelimitedLine line, String column) {
    var number = line.count(column);
    if (number < 1) {
      throw InputProblem.at(line.location(column), "the cell reads " + number)
          .expected("1 for the first flight of the season, and so on")
          .because("flights are counted from one")
          .mend("write the number of the flight");
    }
    return number;
  }

  private static FlightShare share(DelimitedLine line) {
    var percent = line.number("share_percent");
    for (var share : FlightShare.values()) {
      if (Math.abs(100 * share.share() - percent) < 1e-9) {
        return share;
      }
    }
    throw InputProblem.at(
            line.location("share_percent"), "the cell reads " + line.text("share_percent"))
        .expected("5, 50 or 95")
        .because("these are the shares of a flight that are forecast")
        .mend("put the line back as it was issued");
  }

  private static double chance(DelimitedLine line) {
    var chance = line.number("chance_not_reached");
    if (!(chance >= 0 && chance <= 1)) {
      throw InputProblem.at(line.location("chance_not_reached"), "the cell reads " + chance)
          .expected("a chance from 0 to 1")
          .because("nothing is more than certain")
          .mend("write 0.05 for 5 in 100");
    }
    return chance;
  }

  /** Adds lines below those that stand there, in the order of the columns that the file has. */
  static void append(Path folder, List<LedgerEntry> entries) {
    if (entries.isEmpty()) {
      return;
    }
    var file = folder.resolve(TABLE.fileName());
    var before = Files.exists(file) ? text(folder) : "";
    var names = TABLE.columns().stream().map(FolderLayout.Column::name).toList();
    var text = new StringBuilder(before);
    if (before.isBlank()) {
      text.append("# ").append(TABLE.about()).append('\n');
      text.append(String.join(",", names)).append('\n');
    } else {
      names = parsed(before).columns();
      if (!before.endsWith("\n")) {
        text.append('\n');
      }
    }
    for (var entry : entries) {
      var cells = cells(entry);
      text.append(
              names.stream()
                  .map(name -> quoted(cells.getOrDefault(name.toLowerCase(Locale.ROOT), "")))
                  .collect(Collectors.joining(",")))
          .append('\n');
    }
    SafeFile.writeText(file, text.toString());
  }

  private static Map<String, String> cells(LedgerEntry entry) {
    var cells = new HashMap<String, String>();
    cells.put("issued", entry.issued().toString());
    cells.put("place", entry.place());
    cells.put("pest", entry.pest());
    cells.put("season_start", entry.seasonStart().toString());
    cells.put("season_end", entry.seasonEnd().toString());
    cells.put("event", entry.event());
    cells.put("generation", Integer.toString(entry.generation()));
    cells.put("share_percent", Numbers.plain(100 * entry.share().share()));
    for (var i = 0; i < LedgerEntry.CHANCES.size(); i++) {
      cells.put(
          column(LedgerEntry.CHANCES.get(i)),
          entry.quantiles().get(i).map(LocalDate::toString).orElse(NOT_THIS_SEASON));
    }
    cells.put("chance_not_reached", Numbers.plain(entry.chanceNotReached()));
    cells.put("method", entry.method());
    cells.put("note", entry.note());
    return cells;
  }

  private static String quoted(String cell) {
    return cell.contains(",") || cell.contains("\"") || cell.startsWith("#")
        ? "\"" + cell.replace("\"", "\"\"") + "\""
        : cell;
  }
}
