package agro.programme.window;

import agro.working.Caution;
import agro.working.Cell;
import agro.working.Presentation;
import agro.working.ResultTable;
import agro.working.ResultTable.Column;
import java.util.ArrayList;
import java.util.List;

/** Ranked days as a person reads them. */
final class WindowPages {

  private static final int MOST_DAYS = 20;

  private WindowPages() {}

  static ResultTable table(TreatmentWindows windows) {
    return table(windows, Integer.MAX_VALUE);
  }

  private static ResultTable table(TreatmentWindows windows, int most) {
    var rows = new ArrayList<List<Cell>>();
    for (var day : windows.days()) {
      if (rows.size() < most) {
        rows.add(row(day));
      }
    }
    var columns =
        List.of(
            Column.of("Rank"),
            Column.of("Day of treatment"),
            Column.of("Exposed, mean", "%"),
            Column.of("8 in 10"),
            Column.of("Chance of the best day", "%"),
            Column.of("Longest without a break", "h"),
            Column.of("Weather"));
    var courses = windows.exposure().courses();
    var table =
        ResultTable.of(
            "Days of treatment for generation " + courses.generation() + ": " + courses.pest(),
            columns,
            rows);
    int left = windows.days().size() - rows.size();
    return (left == 0 ? table : table.withNote(left + " more days expose less or are refused."))
        .withNote(basis(windows));
  }

  private static List<Cell> row(RankedDay day) {
    return List.of(
        day.rank() == 0 ? Cell.text("refused") : Cell.text(String.valueOf(day.rank())),
        Cell.day(day.exposed().day()),
        Cell.number(100 * day.exposed().mean(), 0),
        Cell.text(
            ExposurePages.perCent(day.exposed().low())
                + " to "
                + ExposurePages.perCent(day.exposed().high())),
        Cell.number(100 * day.exposed().chanceBest(), 0),
        day.weather().map(each -> Cell.number(each.longestRun(), 0)).orElse(Cell.notKnown()),
        Cell.text(day.use().words()));
  }

  private static String basis(TreatmentWindows windows) {
    long known = windows.days().stream().filter(each -> each.weather().isPresent()).count();
    if (known == 0) {
      return "The weather reaches none of these days: they are ranked by the exposed share alone.";
    }
    var reached =
        "Days on which the job does not fit into hours that meet your own limits are refused";
    return known == windows.days().size()
        ? reached + "; the others are ranked by the exposed share."
        : reached
            + ". The weather reaches "
            + known
            + " of "
            + windows.days().size()
            + " days; the others are ranked by the exposed share alone, and may turn out unusable.";
  }

  static Presentation page(TreatmentWindows windows) {
    var page = Presentation.titled("Treatment windows").paragraph(sentence(windows));
    ExposurePages.addFacts(page, windows.exposure());
    windows.job().ifPresent(job -> page.fact("The job takes", job.toString()));
    ExposurePages.addPair(page, windows.exposure(), windows.pair());
    page.table(table(windows, MOST_DAYS));
    windows
        .hours()
        .ifPresent(hours -> page.table(windows.job().map(hours::table).orElseGet(hours::table)));
    return page.paragraph(
            "The dates say when a treatment would reach most animals, not that one is needed:"
                + " count in the field first.")
        .cautions(Caution.all())
        .sources(ExposurePages.sources(windows.exposure()))
        .build();
  }

  private static String sentence(TreatmentWindows windows) {
    var exposure = windows.exposure();
    if (windows.best().isEmpty()) {
      return exposure.bestDay().isEmpty()
          ? ExposurePages.sentence(exposure)
          : "On no day of the window does the job fit into hours that meet your own limits.";
    }
    var best = windows.best().get();
    var first = exposure.bestDay().orElseThrow();
    return best.exposed().day().equals(first.day())
        ? ExposurePages.sentence(exposure) + " Weather of that day: " + best.use().words() + "."
        : "The day that exposes most, "
            + first.day()
            + ", is refused by your own limits. Next is "
            + best.exposed().day()
            + ", which exposes "
            + ExposurePages.perCent(best.exposed().mean())
            + " instead of "
            + ExposurePages.perCent(first.mean())
            + " ("
            + best.use().words()
            + ").";
  }
}
