package agro.programme.diary;

import agro.programme.EnemyRelease;
import agro.programme.Spraying;
import agro.report.InputProblem;
import agro.working.Cell;
import agro.working.Presentable;
import agro.working.Presentation;
import agro.working.ResultTable;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The diary as read: every line that was ever written, and which of them hold.
 *
 * @param lines all lines, corrected ones included, file by file in the order of writing
 */
public record DiaryBook(List<DiaryEntry<?>> lines) implements Presentable {

  /** Refuses numbers that stand twice and corrections of what is not there. */
  public DiaryBook {
    lines = List.copyOf(lines);
    var seen = new HashMap<String, DiaryEntry<?>>();
    var corrected = new HashSet<String>();
    for (var line : lines) {
      line.correction().ifPresent(correction -> check(line, correction, seen, corrected));
      if (seen.put(line.id(), line) != null) {
        throw InputProblem.at(line.location(), "the entry \"" + line.id() + "\" twice")
            .expected("each number of an entry once")
            .because("a correction could mean either of the two")
            .mend("give the line that was copied another number");
      }
    }
  }

  private static void check(
      DiaryEntry<?> line,
      DiaryEntry.Correction correction,
      Map<String, DiaryEntry<?>> seen,
      Set<String> corrected) {
    var earlier = seen.get(correction.of());
    if (earlier == null || !earlier.what().getClass().equals(line.what().getClass())) {
      throw InputProblem.at(line.location(), "a correction of \"" + correction.of() + "\"")
          .expected("the number of an earlier entry of the same file")
          .because("otherwise it is unknown what no longer holds")
          .mend("look up the number of the entry that is to be corrected");
    }
    if (!corrected.add(correction.of())) {
      throw InputProblem.at(line.location(), "a second correction of \"" + correction.of() + "\"")
          .expected("a correction of the entry that holds now")
          .because("of two corrections of one entry it is unknown which one holds")
          .mend("refer to the later of the two");
    }
  }

  /**
   * The entries of one kind that hold, that is all but those that a later line corrects or
   * withdraws.
   *
   * @param type kind of record
   * @param <R> kind of record
   * @return the entries in the order of writing
   */
  public <R extends DiaryRecord> List<DiaryEntry<R>> current(Class<R> type) {
    var corrected = new HashSet<String>();
    for (var line : lines) {
      line.correction().ifPresent(correction -> corrected.add(correction.of()));
    }
    var found = new ArrayList<DiaryEntry<R>>();
    for (var line : all(type)) {
      if (!corrected.contains(line.id()) && !line.withdrawn()) {
        found.add(line);
      }
    }
    return List.copyOf(found);
  }

  /**
   * All entries of one kind, corrected ones included.
   *
   * @param type kind of record
   * @param <R> kind of record
   * @return the entries in the order of writing
   */
  public <R extends DiaryRecord> List<DiaryEntry<R>> all(Class<R> type) {
    var found = new ArrayList<DiaryEntry<R>>();
    for (var line : lines) {
      if (type.isInstance(line.what())) {
        found.add(
            new DiaryEntry<>(
                line.id(),
                line.written(),
                line.by(),
                line.correction(),
                line.withdrawn(),
                type.cast(line.what()),
                line.location()));
      }
    }
    return List.copyOf(found);
  }

  /**
   * An entry by its number.
   *
   * @param id the number
   * @return the entry; nothing if there is none
   */
  public Optional<DiaryEntry<?>> find(String id) {
    for (var line : lines) {
      if (line.id().equals(id)) {
        return Optional.of(line);
      }
    }
    return Optional.empty();
  }

  /**
   * An entry with all that was written before it and all that corrects it.
   *
   * @param id number of one of them
   * @return the entries from the first to the one that holds
   */
  public List<DiaryEntry<?>> history(String id) {
    var chain = new ArrayList<DiaryEntry<?>>();
    var at = find(id);
    while (at.isPresent()) {
      chain.add(0, at.get());
      at = at.get().correction().flatMap(correction -> find(correction.of()));
    }
    var next = successor(id);
    while (next.isPresent()) {
      chain.add(next.get());
      next = successor(next.get().id());
    }
    return List.copyOf(chain);
  }

  private Optional<DiaryEntry<?>> successor(String id) {
    for (var line : lines) {
      if (line.correction().filter(correction -> correction.of().equals(id)).isPresent()) {
        return Optional.of(line);
      }
    }
    return Optional.empty();
  }

  /**
   * The applications that hold, for the check of limits; each has the number of its entry as name.
   *
   * @return the applications in the order of writing
   */
  public List<Spraying> sprayings() {
    return current(AppliedUse.class).stream().map(entry -> entry.what().spraying()).toList();
  }

  /**
   * The releases that hold, for the check of waiting days.
   *
   * @return the releases in the order of writing
   */
  public List<EnemyRelease> releases() {
    return current(ReleasedEnemy.class).stream()
        .map(
            entry ->
                new EnemyRelease(
                    entry.id(),
                    entry.what().organism(),
                    entry.what().field(),
                    entry.what().day(),
                    entry.what().amount()))
        .toList();
  }

  @Override
  public Presentation presentation() {
    var rows = new ArrayList<List<Cell>>();
    for (var table : DiaryTable.values()) {
      int all = all(table.type()).size();
      int held = current(table.type()).size();
      rows.add(List.of(Cell.text(table.word()), Cell.number(all, 0), Cell.number(held, 0)));
    }
    var corrections = new ArrayList<List<Cell>>();
    for (var line : lines) {
      line.correction()
          .ifPresent(
              correction ->
                  corrections.add(
                      List.of(
                          Cell.text(correction.of()),
                          Cell.text(line.withdrawn() ? "withdrawn" : line.id()),
                          Cell.text(correction.reason()),
                          Cell.text(line.by()))));
    }
    var page =
        Presentation.titled("Diary")
            .table(ResultTable.of("Entries", columns("Kind", "Lines", "Hold"), rows));
    if (!corrections.isEmpty()) {
      page.table(
          ResultTable.of("Corrections", columns("Entry", "Now", "Reason", "By"), corrections));
    }
    return page.build();
  }

  private static List<ResultTable.Column> columns(String... names) {
    return List.of(names).stream().map(ResultTable.Column::of).toList();
  }
}
