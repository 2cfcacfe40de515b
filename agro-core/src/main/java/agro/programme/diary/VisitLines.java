package agro.programme.diary;

import agro.reading.DelimitedFormat;
import agro.reading.DelimitedLine;
import agro.reading.DelimitedText;
import agro.reading.TextFile;
import agro.report.InputProblem;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

/** The visit book of a season folder, brought up to what the diary says. */
final class VisitLines {

  private static final String FILE = "visits.csv";
  private static final List<String> OWN =
      List.of("trap", "date", "state", "count", "nights_open", "lure_renewed");

  private final Path folder;

  VisitLines(Path folder) {
    this.folder = folder;
  }

  int bring(DiaryBook book) {
    var file = folder.resolve(FILE);
    var text =
        Files.exists(file)
            ? TextFile.read(file, FILE, StandardCharsets.UTF_8)
            : String.join(",", OWN) + "\n";
    int changed = 0;
    for (var entry : book.all(ScoutedField.class)) {
      var after = withoutWithdrawn(text, entry.what(), book);
      changed += after.equals(text) ? 0 : 1;
      text = after;
    }
    for (var entry : book.current(ScoutedField.class)) {
      if (!entry.what().trap().isBlank()) {
        var after = with(text, entry, book);
        changed += after.equals(text) ? 0 : 1;
        text = after;
      }
    }
    if (changed > 0) {
      DiaryFile.replace(file, text);
    }
    return changed;
  }

  /** A visit that the diary no longer knows on that day leaves the visit book too. */
  private static String withoutWithdrawn(String text, ScoutedField visit, DiaryBook book) {
    boolean holds =
        book.current(ScoutedField.class).stream()
            .map(DiaryEntry::what)
            .anyMatch(each -> each.trap().equals(visit.trap()) && each.day().equals(visit.day()));
    if (holds || visit.trap().isBlank()) {
      return text;
    }
    var rows = new ArrayList<>(text.lines().toList());
    for (var line : parsed(text).lines()) {
      if (same(line, visit)) {
        rows.remove((int) line.lineNumber() - 1);
        return joined(rows);
      }
    }
    return text;
  }

  private static DelimitedText parsed(String text) {
    return DelimitedText.parse(FILE, text, DelimitedFormat.COMMA, List.of("trap", "date", "state"));
  }

  private String with(String text, DiaryEntry<ScoutedField> entry, DiaryBook book) {
    var table = parsed(text);
    var visit = entry.what();
    var written = line(table, cells(visit));
    var rows = new ArrayList<>(text.lines().toList());
    for (var line : table.lines()) {
      if (line.text("trap").equals(visit.trap())) {
        var day = line.date("date");
        if (day.equals(visit.day())) {
          return same(line, visit) ? text : replaced(rows, line, written, entry, book);
        }
        if (day.isAfter(visit.day())) {
          rows.add((int) line.lineNumber() - 1, written);
          return joined(rows);
        }
      }
    }
    rows.add(written);
    return joined(rows);
  }

  private static String joined(List<String> rows) {
    return String.join("\n", rows) + "\n";
  }

  private String replaced(
      List<String> rows,
      DelimitedLine line,
      String written,
      DiaryEntry<ScoutedField> entry,
      DiaryBook book) {
    boolean earlier =
        book.history(entry.id()).stream()
            .anyMatch(each -> each.what() instanceof ScoutedField old && same(line, old));
    if (!earlier) {
      throw InputProblem.at(
              line.location(), "another visit to trap " + entry.what().trap() + " on that day")
          .expected("what the diary says in " + entry.id() + ": " + written)
          .because("two catches of the same nights cannot both hold")
          .mend("correct the entry in the diary, or remove the line here");
    }
    rows.set((int) line.lineNumber() - 1, written);
    return joined(rows);
  }

  private static boolean same(DelimitedLine line, ScoutedField visit) {
    return line.text("trap").equals(visit.trap())
        && line.date("date").equals(visit.day())
        && line.text("state").toLowerCase(Locale.ROOT).equals(visit.visit().word())
        && line.optionalCount("count").equals(visit.count())
        && line.optionalNumber("nights_open").equals(visit.nightsOpen())
        && line.optionalYesOrNo("lure_renewed").orElse(false) == visit.lureRenewed();
  }

  private static Map<String, String> cells(ScoutedField visit) {
    var cells = DiaryCells.of(visit);
    LocalDate day = visit.day();
    return Map.of(
        "trap", visit.trap(),
        "date", day.toString(),
        "state", visit.visit().word(),
        "count", cells.getOrDefault("count", ""),
        "nights_open", cells.getOrDefault("nights_open", ""),
        "lure_renewed", cells.getOrDefault("lure_renewed", ""));
  }

  private static String line(DelimitedText table, Map<String, String> cells) {
    return table.columns().stream()
        .map(name -> DiaryText.cell(cells.getOrDefault(name.toLowerCase(Locale.ROOT), "")))
        .collect(Collectors.joining(","));
  }
}
