package agro.notebook.figure;

import agro.development.MethodComparison;
import agro.units.Numbers;
import java.util.Comparator;
import java.util.List;

/** What the method and the cutoff do to the sum of degree-days of one log. */
public final class MethodComparisonFigure {

  private MethodComparisonFigure() {}

  /**
   * Draws the sums of all methods and cutoffs.
   *
   * @param comparison the comparison
   * @return the figure
   */
  public static DrawnFigure of(MethodComparison comparison) {
    var lines = comparison.lines();
    var least = lines.stream().min(Comparator.comparingDouble(MethodComparison.Line::totalC));
    var most = lines.stream().max(Comparator.comparingDouble(MethodComparison.Line::totalC));
    var days =
        FigureWords.longDay(comparison.start())
            + " to "
            + FigureWords.longDay(comparison.temperatures().lastDay());
    var sheet =
        new FigureSheet(
            FigureWords.sentence(comparison.temperatures().place())
                + ": one log, "
                + lines.size()
                + " sums of degree-days",
            days + ", thresholds " + comparison.thresholds(),
            List.of(new MethodComparisonPlot(lines).panel()));
    var alternative =
        "Sums of degree-days at "
            + comparison.temperatures().place()
            + ", "
            + days
            + ", by method and cutoff, from "
            + words(least.orElseThrow())
            + " to "
            + words(most.orElseThrow())
            + ".";
    var caption =
        "The same days counted by every method; marks on a line differ in what happens above the"
            + " upper threshold. A requirement belongs to the method and the cutoff that it was"
            + " found with.";
    return new DrawnFigure(sheet, alternative, caption, comparison.table());
  }

  private static String words(MethodComparison.Line line) {
    return Numbers.fixed(line.totalC(), 0)
        + " °C·d ("
        + line.model().method().words()
        + ", "
        + MethodComparisonPlot.name(line.model().cutoff())
        + ")";
  }
}
