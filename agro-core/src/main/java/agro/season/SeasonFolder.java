package agro.season;

import agro.report.InputProblem;
import agro.report.ReadReport;
import agro.report.ReadReport.Deed;
import agro.report.SourceLocation;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A folder of plain CSV files with the places, logs, pests, traps and visits of one district. Its
 * layout is explained by the page that {@link #template} writes. Immutable.
 */
public final class SeasonFolder {
  private final Tables tables;
  private final Known known;

  private SeasonFolder(Tables tables, Known known) {
    this.tables = tables;
    this.known = known;
  }

  /** What the tables say whatever the day of issue. */
  private record Tables(
      Map<String, MonitoredPlace> places,
      Map<String, MonitoredPest> pests,
      Map<String, PlacedTrap> traps,
      ReadReport report) {}

  /**
   * All lines and logs of the folder, and the days of which something is known on the day of issue.
   * Logs are cut to those days when they are asked for, a log of readings by reading it anew.
   */
  private record Known(
      List<VisitLine> visits,
      Map<String, PlaceLog> logs,
      Map<String, InputProblem> badLogs,
      LocalDate issueDate,
      KnownDays days,
      boolean issueDateAssumed) {

    Optional<PlaceLog> log(String place) {
      if (badLogs.containsKey(place)) {
        throw badLogs.get(place);
      }
      return Optional.ofNullable(logs.get(place)).flatMap(log -> log.known(days));
    }

    List<VisitLine> visitsByThen() {
      return visits.stream().filter(visit -> !visit.date().isAfter(days.last())).toList();
    }
  }

  /**
   * Reads a folder. The day of issue is taken to be the newest day of a visit or a log, which is
   * reported as assumed; {@link #upTo} sets another one.
   *
   * @param folder the folder
   * @return all that stands in it
   * @throws InputProblem when a table or a log is missing, cannot be read, or contradicts itself
   */
  public static SeasonFolder read(Path folder) {
    return read(folder, KnownDays.upTo(LocalDate.MAX));
  }

  /**
   * Reads a folder as it was known at the end of a day. Of later visits and lines of logs only the
   * day is read, so that nothing in them can matter, not even a fault.
   *
   * @param folder the folder
   * @param day the day of issue
   * @return what stood in it then
   * @throws InputProblem as from {@link #read(Path)}, and when nothing was known on that day
   */
  public static SeasonFolder read(Path folder, LocalDate day) {
    return read(folder, KnownDays.upTo(day)).upTo(day);
  }

  /**
   * Reads a folder of which single logs may be bad. Whoever asks for a place that needs a bad log
   * is told; all others are served.
   */
  static SeasonFolder readSoundLogs(Path folder, Optional<LocalDate> day) {
    var read = read(folder, KnownDays.upTo(day.orElse(LocalDate.MAX)), LogTable::readEach);
    return day.isPresent() ? read.upTo(day.get()) : read;
  }

  private static SeasonFolder read(Path folder, KnownDays known) {
    return read(
        folder,
        known,
        (where, places, days, report) ->
            new LogTable.Logs(LogTable.read(where, places, days, report), Map.of()));
  }

  /** How the logs that a folder names are read. */
  private interface LogReading {
    LogTable.Logs read(
        Path folder,
        Map<String, MonitoredPlace> places,
        KnownDays known,
        ReadReport.Collector report);
  }

  private static SeasonFolder read(Path folder, KnownDays known, LogReading reading) {
    if (!Files.isDirectory(folder)) {
      throw InputProblem.at(SourceLocation.file(folder.toString()), "there is no such folder")
          .expected("a season folder")
          .because("its tables cannot be read")
          .mend("check the spelling, or let the template command write an empty season folder");
    }
    var report = new ReadReport.Collector(folder.toString());
    var places = PlaceTable.read(folder, report);
    var pests = StageTable.addTo(PestTable.read(folder, report), folder, report);
    var traps = TrapTable.read(folder, places.keySet(), pests.keySet(), report);
    var visits = VisitTable.read(folder, traps.keySet(), known, report);
    var found = reading.read(folder, places, known, report);
    var logs = found.sound();
    if (logs.isEmpty() && !found.bad().isEmpty()) {
      throw found.bad().values().iterator().next();
    }
    if (visits.isEmpty() || logs.isEmpty()) {
      throw read(folder).nothingKnown(known.last());
    }
    var newest = newestDay(visits, logs.values());
    return new SeasonFolder(
        new Tables(places, pests, traps, report.report()),
        new Known(visits, logs, found.bad(), newest, KnownDays.upTo(newest), true));
  }

  /**
   * Reads a folder by its name, as a notebook does, which may be opened in its own folder or from
   * the top of a project: a relative name is looked for in the working folder, then in the folders
   * above it. Where it was found is the name of the folder in reports.
   *
   * @param name path of the folder
   * @return all that stands in it
   * @throws InputProblem when there is no such folder, and as {@link #read}
   */
  public static SeasonFolder find(String name) {
    return read(locate(name));
  }

  /**
   * Looks for a folder by its name, as {@link #find} does, for files in it that are no tables of a
   * season.
   *
   * @param name path of the folder
   * @return where it is, seen from the working folder; the name itself when it is nowhere
   */
  public static Path locate(String name) {
    var wanted = Path.of(name);
    var start = Path.of("").toAbsolutePath();
    for (var above = start; above != null && !wanted.isAbsolute(); above = above.getParent()) {
      if (Files.isDirectory(above.resolve(wanted))) {
        return start.relativize(above.resolve(wanted));
      }
    }
    return wanted;
  }

  private InputProblem nothingKnown(LocalDate day) {
    return InputProblem.of("the day of issue " + day)
        .expected("a day with visits and temperatures on it or before it")
        .because("nothing was known on that day")
        .mend("choose a later day; the newest day of the folder is " + known.issueDate);
  }

  private static LocalDate newestDay(List<VisitLine> visits, Collection<PlaceLog> logs) {
    var newest = visits.get(0).date();
    for (var visit : visits) {
      newest = visit.date().isAfter(newest) ? visit.date() : newest;
    }
    for (var log : logs) {
      newest = log.days().lastDay().isAfter(newest) ? log.days().lastDay() : newest;
    }
    return newest;
  }

  /**
   * Writes an empty season folder: a page that explains the layout, and the tables with their
   * headings and an example as a comment.
   *
   * @param folder the folder, which is created when it is not there
   * @throws InputProblem when one of the files is there already; nothing is written then
   */
  public static void template(Path folder) {
    FolderTemplate.write(folder);
  }

  /**
   * The folder as it was known at the end of a day: later visits and lines of logs are left out
   * before anything is computed. A log that goes on after the day is read anew from its file.
   *
   * @param day the day of issue
   * @return the same folder without what came later
   * @throws InputProblem when nothing was known on that day
   */
  public SeasonFolder upTo(LocalDate day) {
    var last = day.isBefore(known.days.last()) ? day : known.days.last();
    var cut =
        new Known(
            known.visits,
            known.logs,
            known.badLogs,
            day,
            new KnownDays(last, known.days.heldBack()),
            false);
    var anyLog = known.logs.values().stream().anyMatch(log -> !log.days().firstDay().isAfter(last));
    if (cut.visitsByThen().isEmpty() || !anyLog) {
      throw nothingKnown(day);
    }
    return new SeasonFolder(tables, cut);
  }

  /**
   * The folder with the rest of one season held back: what was known of it on a day of issue, and
   * all of the other seasons, later ones too.
   */
  SeasonFolder withoutRest(SeasonWindow window, int year, LocalDate day) {
    var rest = new KnownDays.HeldBack(year, day, window.start(year + 1));
    return new SeasonFolder(
        tables,
        new Known(
            known.visits,
            known.logs,
            known.badLogs,
            day,
            new KnownDays(known.days.last(), Optional.of(rest)),
            false));
  }

  /**
   * The past seasons of one pest at one place, and what was known of them on any day: what a
   * hindcast takes.
   *
   * @param pest name of the pest; blank for that of the first line of the table of traps
   * @param place name of the place; blank for the first one with traps for the pest
   * @return the archive, with the usual fit of flight timing
   * @throws InputProblem as from {@link #chosen}
   */
  public FolderArchive archive(String pest, String place) {
    return new FolderArchive(this, chosen(pest, place));
  }

  /**
   * The folder as it was known at the end of a day that is given as text, as in a notebook's
   * parameter.
   *
   * @param day the day of issue as year, month, day, such as 2026-06-16; blank for all that stands
   *     in the folder
   * @return the same folder without what came later
   * @throws InputProblem when the text is no day, or nothing was known on that day
   */
  public SeasonFolder asOf(String day) {
    return day.isBlank() ? this : upTo(parsed(day.strip()));
  }

  private LocalDate parsed(String day) {
    try {
      return LocalDate.parse(day);
    } catch (DateTimeParseException e) {
      throw InputProblem.of("the day of issue \"" + day + "\"")
          .expected("a day of the calendar as year, month, day, such as " + known.issueDate)
          .because("nothing later than that day may be looked at")
          .mend("write the day in this form, or leave it blank for the newest day of the folder");
    }
  }

  /**
   * The day after which nothing is known.
   *
   * @return the day given to {@link #upTo}, or the newest day of a visit or a log
   */
  public LocalDate issueDate() {
    return known.issueDate;
  }

  /**
   * The places.
   *
   * @return in the order of the table
   */
  public List<MonitoredPlace> places() {
    return List.copyOf(tables.places.values());
  }

  /**
   * The pests.
   *
   * @return in the order of the table
   */
  public List<MonitoredPest> pests() {
    return List.copyOf(tables.pests.values());
  }

  /**
   * The traps.
   *
   * @return in the order of the table
   */
  public List<PlacedTrap> traps() {
    return List.copyOf(tables.traps.values());
  }

  /**
   * What was assumed, repaired or dropped when the tables and logs were read.
   *
   * @return the report of the whole folder
   */
  public ReadReport report() {
    var all = issueDateReport();
    known.logs.keySet().stream()
        .flatMap(place -> known.log(place).stream())
        .forEach(log -> all.addAll(log.report()));
    return all.report();
  }

  /** The tables' own report, and whether the day of issue was assumed. */
  private ReadReport.Collector issueDateReport() {
    var collector = new ReadReport.Collector(tables.report.source());
    if (known.issueDateAssumed) {
      assume(collector, "day of issue " + known.issueDate + ", the newest day of a visit or a log");
    }
    collector.addAll(tables.report);
    return collector;
  }

  /**
   * All that a fit and a forecast need for one pest at one place on the day of issue.
   *
   * @param pest name of the pest, as the tables write it
   * @param place name of the place, as the tables write it
   * @return the seasons with temperatures and visits, and the report of how they came about
   * @throws InputProblem when a name is unknown, when the place has no trap for the pest or no log,
   *     when the thresholds were not made for the medium of the log, or when no season is left
   */
  public PestSeasons pestAt(String pest, String place) {
    return join(pest, place, issueDateReport());
  }

  /**
   * The same for a pest and a place of which either may be left blank. What is chosen then is
   * reported as assumed.
   *
   * @param pest name of the pest; blank for that of the first line of the table of traps
   * @param place name of the place; blank for the first one with traps for the pest
   * @return the seasons, as from {@link #pestAt}
   * @throws InputProblem as from {@link #pestAt}
   */
  public PestSeasons chosen(String pest, String place) {
    var report = issueDateReport();
    var chosenPest = pest;
    if (pest.isBlank()) {
      chosenPest = tables.traps.values().iterator().next().pest();
      assume(report, "pest " + chosenPest + ", that of the first line of traps.csv");
    }
    FolderTable.asked("pest", chosenPest, tables.pests, FolderLayout.PESTS);
    var places = placesOf(chosenPest);
    if (!place.isBlank() || places.isEmpty()) {
      return join(chosenPest, place, report);
    }
    assume(report, "place " + places.get(0) + ", the first one with traps for " + chosenPest);
    return join(chosenPest, places.get(0), report);
  }

  private static void assume(ReadReport.Collector report, String what) {
    report.add(Deed.ASSUMED, SourceLocation.NONE, what);
  }

  private List<String> placesOf(String pest) {
    return tables.traps.values().stream()
        .filter(trap -> trap.pest().equals(pest))
        .map(PlacedTrap::place)
        .distinct()
        .toList();
  }

  private PestSeasons join(String pest, String place, ReadReport.Collector report) {
    var wantedPest = FolderTable.asked("pest", pest, tables.pests, FolderLayout.PESTS);
    if (placesOf(pest).isEmpty()) {
      throw noTrap(pest, place);
    }
    var wantedPlace = FolderTable.asked("place", place, tables.places, FolderLayout.PLACES);
    if (!placesOf(pest).contains(place)) {
      throw noTrap(pest, place);
    }
    wantedPlace.medium().require(wantedPest.medium(), "the line of " + pest + " in pests.csv");
    var own = known.log(place).orElseThrow(() -> noLog(wantedPlace));
    report.addAll(own.report());
    var neighbour = wantedPlace.neighbour().flatMap(known::log);
    neighbour.ifPresent(log -> report.addAll(log.report()));
    return new SeasonAssembly(wantedPest, wantedPlace, known.issueDate, known.days, report)
        .join(
            own.days(),
            neighbour.map(PlaceLog::days),
            own.foreseen(known.issueDate),
            known.visitsByThen().stream().filter(visit -> isFor(visit, pest, place)).toList());
  }

  private boolean isFor(VisitLine visit, String pest, String place) {
    var trap = tables.traps.get(visit.trap());
    return trap.pest().equals(pest) && trap.place().equals(place);
  }

  private InputProblem noTrap(String pest, String place) {
    var where = placesOf(pest);
    return InputProblem.at(
            SourceLocation.file(FolderLayout.TRAPS.fileName()),
            "no trap for " + pest + (place.isBlank() ? "" : " at " + place))
        .expected("at least one trap of the pest at the place")
        .because("the timing of flights is read from traps")
        .mend(
            where.isEmpty()
                ? "add the trap, or ask for a pest that is trapped"
                : "ask for one of the places with such a trap: " + String.join(", ", where));
  }

  private static InputProblem noLog(MonitoredPlace place) {
    return InputProblem.at(
            SourceLocation.file(FolderLayout.LOGS.fileName()),
            "no log of " + place.name() + " that begins on the day of issue or before it")
        .expected("at least one temperature log of the place")
        .because("the shift from a neighbour to a place is read from days that both measured")
        .mend(
            place
                .neighbour()
                .map(
                    near ->
                        "add a log, or let the traps stand at " + near + " if its air is theirs")
                .orElse("add a log of the place to logs.csv"));
  }

  @Override
  public String toString() {
    return tables.report.source()
        + ": "
        + tables.places.size()
        + " places, "
        + tables.pests.size()
        + " pests, "
        + tables.traps.size()
        + " traps, "
        + known.visitsByThen().size()
        + " lines of visits, up to "
        + known.issueDate;
  }
}
