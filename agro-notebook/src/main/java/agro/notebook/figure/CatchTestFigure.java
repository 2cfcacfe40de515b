package agro.notebook.figure;

import agro.dose.sprayer.CatchTestResult;
import agro.dose.sprayer.NozzleFinding;
import agro.dose.sprayer.NozzleVerdict;
import agro.units.FlowRate;
import agro.units.Numbers;
import agro.units.Unit;
import java.util.List;
import java.util.stream.Collectors;

/** What each nozzle of a sprayer puts out, beside the mean of all and its tolerance. */
public final class CatchTestFigure {

  private static final int HEIGHT = 340;
  private static final int AXIS_HEIGHT = 46;
  private static final int MOST_NAMES = 24;

  /** Room between a mark and its words, as a share of the axis. */
  private static final double LABEL_GAP = 0.006;

  private CatchTestFigure() {}

  /**
   * Draws the flow of each nozzle with the mean and the band of the tolerance. Nozzles that need
   * attention are filled marks in another colour with their name; a blocked one lies on zero.
   *
   * @param test the catch test
   * @return the figure
   */
  public static DrawnFigure of(CatchTestResult test) {
    var sheet =
        new FigureSheet(
            "Catch test: " + verdict(test),
            "Dot: one nozzle. Line: mean of all that flow. Grey: within "
                + test.tolerance()
                + " of the mean.",
            List.of(panel(test)));
    return new DrawnFigure(sheet, alternative(test), caption(test), test.table());
  }

  private static List<NozzleFinding> odd(CatchTestResult test) {
    return test.findings().stream().filter(NozzleFinding::needsAttention).toList();
  }

  private static String verdict(CatchTestResult test) {
    var odd = odd(test);
    if (odd.isEmpty()) {
      return "all " + test.findings().size() + " nozzles pass";
    }
    return (odd.size() == 1 ? "nozzle " : "nozzles ")
        + odd.stream().map(NozzleFinding::nozzle).collect(Collectors.joining(", "))
        + (odd.size() == 1 ? " needs" : " need")
        + " attention";
  }

  private static Unit<FlowRate> unit(CatchTestResult test) {
    return test.units().flow();
  }

  private static double flow(CatchTestResult test, NozzleFinding one) {
    return one.flow().in(unit(test));
  }

  private static double mean(CatchTestResult test) {
    return test.meanFlow().flow().in(unit(test));
  }

  private static ChartPanel panel(CatchTestResult test) {
    var count = test.findings().size();
    var mean = mean(test);
    var share = test.tolerance().share();
    var panel =
        new ChartPanel(HEIGHT, AXIS_HEIGHT, "Flow of a nozzle (" + unit(test).symbol() + ")");
    var flows = test.findings().stream().mapToDouble(one -> flow(test, one)).summaryStatistics();
    var low = Math.min(flows.getMin(), mean * (1 - share));
    var high = Math.max(flows.getMax(), mean * (1 + share));
    var room = 0.25 * (high - low);
    panel.ranges(0.5, count + 0.5, Math.max(FigureLook.BELOW_ZERO * mean, low - room), high + room);
    panel.box(0.5, count + 0.5, mean * (1 - share), mean * (1 + share), FigureLook.PALE);
    panel.level(panel.yLow(), FigureLook.QUIET_INK, FigureLook.solid(1));
    panel.level(mean, FigureLook.BLUE, FigureLook.solid(2));
    var level = Numbers.significant(mean, 3) + " " + unit(test).symbol();
    panel.words(
        "mean " + level, 0.5, mean, ChartPanel.Side.ABOVE_RIGHT, FigureLook.BOLD, FigureLook.BLUE);
    for (var i = 0; i < count; i++) {
      nozzle(panel, test, i);
    }
    return panel.words(
        "Nozzle",
        0.5 * (count + 1),
        panel.yLow(),
        ChartPanel.Side.FAR_BELOW,
        FigureLook.TEXT,
        FigureLook.INK);
  }

  private static void nozzle(ChartPanel panel, CatchTestResult test, int index) {
    var one = test.findings().get(index);
    var place = index + 1.0;
    var flow = flow(test, one);
    if (index % (1 + (test.findings().size() - 1) / MOST_NAMES) == 0) {
      panel.words(
          one.nozzle(),
          place,
          panel.yLow(),
          ChartPanel.Side.BELOW,
          FigureLook.SMALL,
          FigureLook.INK);
    }
    if (!one.needsAttention()) {
      panel.mark(place, flow, FigureLook.INK, FigureMark.OBSERVATION);
      return;
    }
    panel.mark(place, flow, FigureLook.VERMILION, FigureMark.MEDIAN);
    var last = place > 0.85 * test.findings().size();
    var beside = LABEL_GAP * test.findings().size();
    panel.words(
        one.nozzle() + ": " + departure(one),
        last ? place - beside : place + beside,
        flow,
        last ? ChartPanel.Side.LEFT : ChartPanel.Side.RIGHT,
        FigureLook.BOLD,
        FigureLook.VERMILION);
  }

  private static String departure(NozzleFinding one) {
    return one.verdict() == NozzleVerdict.BLOCKED ? "blocked" : percent(one.fromMean());
  }

  private static String percent(double share) {
    return (share < 0 ? "−" : "+") + Numbers.fixed(100 * Math.abs(share), 1) + " %";
  }

  private static String alternative(CatchTestResult test) {
    var flows = test.findings().stream().mapToDouble(one -> flow(test, one)).summaryStatistics();
    var odd =
        odd(test).stream()
            .map(one -> "Nozzle " + one.nozzle() + ": " + departure(one) + ".")
            .collect(Collectors.joining(" "));
    return "Flow of "
        + test.findings().size()
        + " nozzles, from "
        + Numbers.significant(flows.getMin(), 3)
        + " to "
        + Numbers.significant(flows.getMax(), 3)
        + " "
        + unit(test).symbol()
        + "; mean "
        + Numbers.significant(mean(test), 3)
        + ", tolerance "
        + test.tolerance()
        + ". "
        + (odd.isEmpty() ? "All pass." : odd);
  }

  private static String caption(CatchTestResult test) {
    return "Flow of each nozzle in the catch test, with the tolerance about the mean ("
        + test.tolerance().source().citation()
        + "). The mean leaves out blocked nozzles but not odd ones; per cent are departures from"
        + " it. A nozzle 10 % above the flow of a new one counts as worn even within the band.";
  }
}
