package agro.season;

import agro.generation.TrapVisit;
import agro.report.InputProblem;
import agro.report.ReadReport;
import agro.report.ReadReport.Deed;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * The lines of the visit book in their order, and the nights between them. Each visit speaks of the
 * nights since the line before of the same trap.
 */
final class VisitBook {
  /** A longer interval is taken for a trap that was put away without a word. */
  private static final long LONGEST_INTERVAL_NIGHTS = 60;

  private final SeasonWindow window;
  private final ReadReport.Collector report;
  private final SortedMap<Integer, List<LocatedVisit>> seasons = new TreeMap<>();

  private VisitBook(SeasonWindow window, ReadReport.Collector report) {
    this.window = window;
    this.report = report;
  }

  /** Refuses lines of a trap that are out of order, come twice or come before the trap was set. */
  static void requireOrder(List<VisitLine> lines) {
    var before = new HashMap<String, VisitLine>();
    for (var line : lines) {
      var last = before.put(line.trap(), line);
      if (last == null) {
        requireSet(line);
      } else if (line.date().equals(last.date())) {
        throw twice(line, last);
      } else if (line.date().isBefore(last.date())) {
        throw disordered(line, last);
      }
    }
  }

  private static void requireSet(VisitLine line) {
    if (line.state() != VisitState.SET) {
      throw InputProblem.at(
              line.location(), "a visit to trap " + line.trap() + " before the trap was set")
          .expected("a line with the state set before the first visit")
          .because("a catch belongs to the nights since the trap was set")
          .mend("add the day on which trap " + line.trap() + " was set, with the state set");
    }
  }

  private static InputProblem twice(VisitLine line, VisitLine last) {
    return InputProblem.at(
            line.location(), "a second line for trap " + line.trap() + " on " + line.date())
        .expected("one line for a trap and a day (the other is line " + lineOf(last) + ")")
        .because("two catches of the same nights cannot both hold")
        .mend("join the two lines into one, or correct the day of one of them");
  }

  private static InputProblem disordered(VisitLine line, VisitLine last) {
    return InputProblem.at(
            line.location(),
            "a visit to trap " + line.trap() + " on " + line.date() + " after " + last.date())
        .expected("the visits to a trap in the order of their days")
        .because("a catch belongs to the nights since the line before, line " + lineOf(last))
        .mend("look for a wrong date, or sort the lines of the trap by day");
  }

  private static long lineOf(VisitLine line) {
    return line.location().line();
  }

  /** The visits by season, each with its nights; what lies outside every season is reported. */
  static SortedMap<Integer, List<LocatedVisit>> seasons(
      SeasonWindow window, List<VisitLine> lines, ReadReport.Collector report) {
    var book = new VisitBook(window, report);
    var since = new HashMap<String, LocalDate>();
    for (var line : lines) {
      var from = since.put(line.trap(), line.date());
      if (line.state() != VisitState.SET) {
        book.place(line, from);
      }
    }
    return book.seasons;
  }

  private void place(VisitLine line, LocalDate from) {
    long nights = ChronoUnit.DAYS.between(from, line.date());
    if (nights > LONGEST_INTERVAL_NIGHTS) {
      throw InputProblem.at(
              line.location(),
              "trap " + line.trap() + " was visited " + nights + " nights after the line before")
          .expected("at most " + LONGEST_INTERVAL_NIGHTS + " nights, or a line with the state set")
          .because("the catch would be spread over nights on which the trap was put away")
          .mend("add the day on which the trap was set again, with the state set");
    }
    // The last night of a visit is the one before its day.
    var year = window.yearOf(line.date().minusDays(1));
    if (year.isEmpty()) {
      drop(line, "it lies outside the season of the pest, " + window.words());
    } else if (from.isBefore(window.start(year.getAsInt()))) {
      placeAtStart(line, year.getAsInt());
    } else {
      add(year.getAsInt(), visit(line, from), line);
    }
  }

  /**
   * Of nights before the season's start nothing is counted, which loses nothing of an empty trap.
   */
  private void placeAtStart(VisitLine line, int year) {
    var start = window.start(year);
    if (line.count().orElse(0) > 0) {
      drop(line, "its catch began before the season's start on " + start);
      return;
    }
    add(
        year,
        new TrapVisit(
            line.trap(),
            start,
            line.date(),
            0,
            line.state().trapState(),
            line.state() == VisitState.FAILED ? 0 : ChronoUnit.DAYS.between(start, line.date()),
            line.lureRenewed()),
        line);
    report.add(
        Deed.REPAIRED,
        line.location(),
        "the empty trap " + line.trap() + " is counted from the season's start on " + start);
  }

  private void drop(VisitLine line, String reason) {
    report.add(
        Deed.DROPPED,
        line.location(),
        "visit to trap " + line.trap() + " on " + line.date() + ": " + reason);
  }

  private void add(int year, TrapVisit visit, VisitLine line) {
    seasons
        .computeIfAbsent(year, y -> new ArrayList<>())
        .add(new LocatedVisit(visit, line.location()));
  }

  private static TrapVisit visit(VisitLine line, LocalDate from) {
    int nights = Math.toIntExact(ChronoUnit.DAYS.between(from, line.date()));
    double open = line.nightsOpen().orElse(line.state() == VisitState.FAILED ? 0 : nights);
    if (!(open >= 0 && open <= nights)) {
      throw InputProblem.at(
              line.location().column(FolderLayout.NIGHTS_OPEN),
              open + " nights open between " + from + " and " + line.date())
          .expected("0 to " + nights + " nights, those since the line before")
          .because("the catch is judged per night on which the trap could catch")
          .mend("write the nights on which the trap could catch, or leave the cell empty for all");
    }
    return new TrapVisit(
        line.trap(),
        from,
        line.date(),
        line.count().orElse(0),
        line.state().trapState(),
        open,
        line.lureRenewed());
  }
}
