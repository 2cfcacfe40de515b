package agro.weather.gap;

import agro.report.ReadReport;
import agro.report.ReadReport.Deed;
import agro.report.SourceLocation;
import agro.source.Bibliography;
import agro.units.Numbers;
import agro.weather.DailyTemperatures;
import agro.working.Cell;
import agro.working.Presentable;
import agro.working.Presentation;
import agro.working.ResultTable;
import agro.working.ResultTable.Column;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;

/**
 * A daily series after filling.
 *
 * @param daily the series; each filled day has its origin and the standard errors of its extremes
 * @param gaps each gap with what was done, with what error, or why it was left open
 * @param notes what was assumed for all gaps
 */
public record FilledDays(DailyTemperatures daily, List<FilledGap> gaps, List<String> notes)
    implements Presentable {

  /** Copies the lists. */
  public FilledDays {
    Objects.requireNonNull(daily, "daily");
    gaps = List.copyOf(gaps);
    notes = List.copyOf(notes);
  }

  /**
   * Days that were filled.
   *
   * @return 0 or more
   */
  public long filledDays() {
    return gaps.stream().filter(FilledGap::isFilled).mapToLong(gap -> gap.days().days()).sum();
  }

  /**
   * Days that were left open.
   *
   * @return 0 or more
   */
  public long openDays() {
    return gaps.stream().filter(gap -> !gap.isFilled()).mapToLong(gap -> gap.days().days()).sum();
  }

  /**
   * The gaps as entries of a read report.
   *
   * @return one entry for each gap, in the order of the days
   */
  public ReadReport report() {
    var collector = new ReadReport.Collector(daily.place());
    for (var gap : gaps) {
      collector.add(
          gap.isFilled() ? Deed.FILLED : Deed.NOTED,
          SourceLocation.NONE,
          gap.days().words() + ": " + sentence(gap));
    }
    notes.forEach(note -> collector.add(Deed.ASSUMED, SourceLocation.NONE, note));
    return collector.report();
  }

  private static String sentence(FilledGap gap) {
    if (!gap.isFilled()) {
      return "no temperatures, left open: " + gap.words();
    }
    return "extremes "
        + gap.method().words()
        + ", standard errors "
        + Numbers.fixed(gap.minErrorCelsius(), 1)
        + " and "
        + Numbers.fixed(gap.maxErrorCelsius(), 1)
        + " °C ("
        + gap.words()
        + ")";
  }

  @Override
  public Presentation presentation() {
    var columns =
        List.of(
            Column.of("First day"),
            Column.of("Last day"),
            Column.of("Done"),
            Column.of("Error of minima", "°C"),
            Column.of("Error of maxima", "°C"),
            Column.of("Day-to-day correlation"),
            Column.of("Why so"));
    var rows = gaps.stream().map(FilledDays::row).toList();
    return Presentation.titled("Gaps of " + daily.place())
        .fact("Days", daily.size() + ", " + daily.firstDay() + " to " + daily.lastDay())
        .fact("Filled", filledDays() + " days")
        .fact("Left open", openDays() + " days")
        .table(
            new ResultTable(
                "Gaps and what was done about them", columns, rows, List.copyOf(tableNotes())))
        .sources(List.of(Bibliography.FILLING_OF_GAPS))
        .build();
  }

  private List<String> tableNotes() {
    var all = new ArrayList<>(notes);
    all.add(
        "Errors are standard errors of single filled days. Inside a gap they are correlated from"
            + " day to day, between gaps they are taken as independent.");
    return all;
  }

  private static List<Cell> row(FilledGap gap) {
    return List.of(
        Cell.day(gap.days().first()),
        Cell.day(gap.days().last()),
        Cell.text(gap.method().name().toLowerCase(Locale.ROOT).replace('_', ' ')),
        Cell.number(gap.minErrorCelsius(), 1),
        Cell.number(gap.maxErrorCelsius(), 1),
        gap.isFilled() && gap.days().days() > 1
            ? Cell.number(gap.correlation().dayToDay(), 2)
            : Cell.notKnown(),
        Cell.text(gap.words()));
  }

  @Override
  public String toString() {
    return daily + ", " + filledDays() + " filled, " + openDays() + " left open";
  }
}
