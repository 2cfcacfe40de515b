package agro.programme.diary;

import agro.reading.DelimitedFormat;
import agro.reading.DelimitedText;
import agro.reading.TextFile;
import agro.report.InputProblem;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * The diary in a season folder: {@code advised.csv}, {@code bought.csv}, {@code applied.csv},
 * {@code scouted.csv} and {@code released.csv}. When a method that writes has returned, the entry
 * is on the disk; when the process ends before, the file is as it was. Several processes may write
 * at once. Columns that the user added are kept.
 */
public final class Diary {

  private final Path folder;
  private final Clock clock;

  private Diary(Path folder, Clock clock) {
    this.folder = Objects.requireNonNull(folder, "folder");
    this.clock = Objects.requireNonNull(clock, "clock");
  }

  /**
   * The diary of a folder; the files come into being with the first entry.
   *
   * @param folder the season folder
   * @return the diary
   */
  public static Diary in(Path folder) {
    return new Diary(folder, Clock.systemUTC());
  }

  /**
   * The same diary with another clock for the moment of writing.
   *
   * @param other the clock
   * @return the diary
   */
  public Diary with(Clock other) {
    return new Diary(folder, other);
  }

  /**
   * Reads the diary as it stands.
   *
   * @return all entries
   * @throws InputProblem for a line that cannot be read; it names file, line and column
   */
  public DiaryBook read() {
    var lines = new ArrayList<DiaryEntry<?>>();
    for (var table : DiaryTable.values()) {
      if (Files.exists(folder.resolve(table.fileName()))) {
        lines.addAll(entries(table, parsed(table, text(table))));
      }
    }
    return new DiaryBook(lines);
  }

  /**
   * Adds an entry.
   *
   * @param what what it tells
   * @param by role or initials of who writes it
   * @return the number of the entry
   * @throws InputProblem if the file as it stands cannot be read, or the entry could not be read
   *     back as it is; nothing is written then
   */
  public String append(DiaryRecord what, String by) {
    return write(what, by, Optional.empty(), false);
  }

  /**
   * Corrects an entry by a new one. The old line stays.
   *
   * @param id number of the entry that holds now
   * @param what what holds instead
   * @param reason why
   * @param by role or initials of who writes it
   * @return the number of the new entry
   * @throws InputProblem if there is no such entry, it tells of something else, or it was corrected
   *     before
   */
  public String correct(String id, DiaryRecord what, String reason, String by) {
    return write(what, by, Optional.of(correction(id, reason)), false);
  }

  /**
   * Says that what an entry tells did not happen. The old line stays.
   *
   * @param id number of the entry that holds now
   * @param reason why
   * @param by role or initials of who writes it
   * @return the number of the new entry
   * @throws InputProblem if there is no such entry or it was corrected before
   */
  public String withdraw(String id, String reason, String by) {
    var what = read().find(id).map(DiaryEntry::what).orElseThrow(() -> unknown(id));
    return write(what, by, Optional.of(correction(id, reason)), true);
  }

  private static DiaryEntry.Correction correction(String id, String reason) {
    if (reason.isBlank()) {
      throw InputProblem.of("a correction of \"" + id + "\" without a reason")
          .expected("why the entry does not hold")
          .because("whoever reads the diary later has to understand both lines")
          .mend("state the reason in a few words");
    }
    return new DiaryEntry.Correction(id, reason);
  }

  private static InputProblem unknown(String id) {
    return InputProblem.of("the entry \"" + id + "\" was asked for")
        .expected("the number of an entry of the diary")
        .because("only what was written can be corrected")
        .mend("look up the number in the file");
  }

  private String write(
      DiaryRecord what, String by, Optional<DiaryEntry.Correction> correction, boolean withdrawn) {
    var table = DiaryTable.of(what);
    return DiaryFile.locked(
        folder,
        () -> {
          var file = folder.resolve(table.fileName());
          var before = Files.exists(file) ? text(table) : "";
          var text = before + heading(table, before);
          var earlier = parsed(table, text);
          var id = table.word() + "-" + nextNumber(table, earlier);
          var cells = new HashMap<>(DiaryCells.of(what));
          cells.put(DiaryTable.ID, id);
          cells.put(DiaryTable.WRITTEN, clock.instant().toString());
          cells.put(DiaryTable.BY, by);
          cells.put(DiaryTable.CORRECTS, correction.map(DiaryEntry.Correction::of).orElse(""));
          cells.put(
              DiaryTable.CORRECTION_REASON,
              correction.map(DiaryEntry.Correction::reason).orElse(""));
          cells.put(DiaryTable.WITHDRAWN, withdrawn ? "yes" : "");
          var line = line(table, earlier, cells);
          var entry = requireReadBack(table, earlier, line, what);
          if (correction.isPresent()) {
            var lines = entries(table, earlier);
            lines.add(entry);
            requireSound(lines);
          }
          DiaryFile.replace(file, text + line);
          return id;
        });
  }

  private static List<DiaryEntry<?>> entries(DiaryTable table, DelimitedText text) {
    var lines = new ArrayList<DiaryEntry<?>>();
    text.lines().forEach(line -> lines.add(DiaryReader.entry(table, line)));
    return lines;
  }

  /** A book refuses corrections of what is not there or was corrected before. */
  private static void requireSound(List<DiaryEntry<?>> lines) {
    var book = new DiaryBook(lines);
    Objects.requireNonNull(book, "book");
  }

  private static String heading(DiaryTable table, String before) {
    if (before.isBlank()) {
      return "# diary: lines are added and never changed; a line may correct an earlier one\n"
          + String.join(",", table.columns())
          + "\n";
    }
    return before.endsWith("\n") ? "" : "\n";
  }

  private static String line(DiaryTable table, DelimitedText earlier, Map<String, String> cells) {
    var known = earlier.columns().stream().map(name -> name.toLowerCase(Locale.ROOT)).toList();
    for (var column : table.columns()) {
      if (!known.contains(column) && !cells.getOrDefault(column, "").isEmpty()) {
        throw InputProblem.of("there is no column \"" + column + "\" in " + table.fileName())
            .expected("the columns " + String.join(", ", table.columns()))
            .because("\"" + cells.get(column) + "\" would be lost")
            .mend("add the column to the heading and an empty cell to each line");
      }
    }
    return known.stream()
            .map(name -> DiaryText.cell(cells.getOrDefault(name, "")))
            .collect(Collectors.joining(","))
        + "\n";
  }

  /** An entry that would be read back as another one is refused before it is written. */
  private static DiaryEntry<?> requireReadBack(
      DiaryTable table, DelimitedText earlier, String line, DiaryRecord what) {
    var alone = parsed(table, String.join(",", quoted(earlier.columns())) + "\n" + line);
    var entry = DiaryReader.entry(table, alone.lines().get(0));
    var cells = DiaryCells.of(what);
    var back = DiaryCells.of(entry.what());
    if (!back.equals(cells)) {
      throw InputProblem.of("the entry " + cells)
          .expected("an entry whose cells mean the same when they are read")
          .because("it would be read back as " + back)
          .mend("write a product or a lot without \" + \" and without a lone \"-\"");
    }
    return entry;
  }

  private static List<String> quoted(List<String> names) {
    return names.stream().map(name -> '"' + name.replace("\"", "\"\"") + '"').toList();
  }

  private static int nextNumber(DiaryTable table, DelimitedText earlier) {
    int highest = 0;
    var prefix = table.word() + "-";
    for (var line : earlier.lines()) {
      var id = line.text(DiaryTable.ID);
      var number = id.startsWith(prefix) ? id.substring(prefix.length()) : "";
      if (number.matches("[0-9]{1,9}")) {
        highest = Math.max(highest, Integer.parseInt(number));
      }
    }
    return highest + 1;
  }

  private String text(DiaryTable table) {
    return TextFile.read(
        folder.resolve(table.fileName()), table.fileName(), StandardCharsets.UTF_8);
  }

  private static DelimitedText parsed(DiaryTable table, String text) {
    return DelimitedText.parse(
        table.fileName(), text, DelimitedFormat.COMMA, table.neededColumns());
  }

  /**
   * Brings visits to traps into {@code visits.csv} of a season folder, from which forecasts are
   * made. Lines that stand there already are not added again; a line that the diary has corrected
   * since is put right.
   *
   * @param seasonFolder the season folder
   * @return how many lines were added or put right
   * @throws InputProblem when the folder says something else of a visit than the diary ever did
   */
  public int bringVisitsTo(Path seasonFolder) {
    var book = read();
    return DiaryFile.locked(seasonFolder, () -> new VisitLines(seasonFolder).bring(book));
  }

  /**
   * The folder of the diary.
   *
   * @return the folder
   */
  public Path folder() {
    return folder;
  }

  /**
   * The names of the diary's files.
   *
   * @return the names
   */
  public static List<String> files() {
    return List.of(DiaryTable.values()).stream().map(DiaryTable::fileName).toList();
  }
}
