package agro.trial.load;

import agro.report.InputProblem;
import agro.sampling.injury.PestMeasure;
import agro.sampling.injury.YieldLoss;
import agro.stats.ConfidenceLimits;
import agro.stats.LinearFit;
import agro.units.MassPerArea;
import agro.units.MassPerAreaUnit;
import agro.units.Numbers;
import agro.working.Cell;
import agro.working.Presentable;
import agro.working.Presentation;
import agro.working.ResultTable;
import agro.working.ResultTable.Column;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * The line of yield on pest load over the plots of a trial.
 *
 * @param rule whether blocks are a factor
 * @param loads the loads and how they were made
 * @param points plots with load and yield
 * @param line yield in t/ha on load; its degrees of freedom are those left after blocks
 */
public record LoadYieldLine(
    BlockRule rule, TrialLoad loads, List<YieldPoint> points, LinearFit line)
    implements Presentable {

  private static final double LEVEL = 0.95;

  /**
   * A plot with load and yield.
   *
   * @param plot name of the plot
   * @param block its block
   * @param load its load
   * @param tonnesPerHectare its yield
   */
  public record YieldPoint(String plot, String block, double load, double tonnesPerHectare) {}

  /** Copies the points. */
  public LoadYieldLine {
    Objects.requireNonNull(rule, "rule");
    Objects.requireNonNull(loads, "loads");
    Objects.requireNonNull(line, "line");
    points = List.copyOf(points);
  }

  /**
   * Fits the line to the plots that have both.
   *
   * @param loads loads of the plots
   * @param yields yields by name of plot
   * @param rule whether blocks are a factor
   * @return the line
   * @throws InputProblem when too few plots have both, or the loads do not differ
   */
  public static LoadYieldLine of(TrialLoad loads, Map<String, MassPerArea> yields, BlockRule rule) {
    var points = new ArrayList<YieldPoint>();
    for (var load : loads.plots()) {
      var yield = yields.get(load.plot());
      if (yield != null) {
        points.add(
            new YieldPoint(
                load.plot(),
                rule == BlockRule.WITHIN_BLOCKS ? load.block() : "",
                load.value(),
                yield.in(MassPerAreaUnit.TONNE_PER_HECTARE)));
      }
    }
    return new LoadYieldLine(rule, loads, points, fit(points));
  }

  private static LinearFit fit(List<YieldPoint> points) {
    Map<String, List<YieldPoint>> blocks = new LinkedHashMap<>();
    points.forEach(
        point -> blocks.computeIfAbsent(point.block(), b -> new ArrayList<>()).add(point));
    int n = points.size();
    int freedom = n - blocks.size() - 1;
    double xx = 0;
    double xy = 0;
    double yy = 0;
    double meanX = 0;
    double meanY = 0;
    for (var block : blocks.values()) {
      double x = block.stream().mapToDouble(YieldPoint::load).average().orElseThrow();
      double y = block.stream().mapToDouble(YieldPoint::tonnesPerHectare).average().orElseThrow();
      for (var point : block) {
        xx += (point.load() - x) * (point.load() - x);
        xy += (point.load() - x) * (point.tonnesPerHectare() - y);
        yy += (point.tonnesPerHectare() - y) * (point.tonnesPerHectare() - y);
        meanX += point.load() / n;
        meanY += point.tonnesPerHectare() / n;
      }
    }
    if (freedom < 1 || !(xx > 0)) {
      throw InputProblem.of(
              n
                  + " plots in "
                  + blocks.size()
                  + (blocks.size() == 1 ? " block" : " blocks")
                  + " with load and yield"
                  + (n > 0 && !(xx > 0) ? ", the loads all alike" : ""))
          .expected("more plots than blocks and a slope need, with different loads in a block")
          .because("without plots to spare the line has no error, and without different loads none")
          .mend("add plots, look whether names of plots agree, or draw the line across all plots");
    }
    double slope = xy / xx;
    double left = Math.max(0, yy - slope * xy);
    // A line with freedom degrees left has the errors of one through freedom + 2 points.
    return new LinearFit(freedom + 2, meanY - slope * meanX, slope, meanX, meanY, xx, yy, left, n);
  }

  /**
   * Number of blocks that were taken out.
   *
   * @return 1 for a line across all plots
   */
  public int blocks() {
    return (int) points.stream().map(YieldPoint::block).distinct().count();
  }

  /**
   * The line as a yield loss, which gives an injury level.
   *
   * @return the loss for each pest-day, or for each pest where the load is a mean
   * @throws InputProblem for a relative area, which is no number of pests
   */
  public YieldLoss yieldLoss() {
    var unit = loads.settings().unit();
    return switch (loads.settings().measure()) {
      case AREA, STAIRS -> new YieldLoss(line, PestMeasure.pestDaysPer(unit));
      case MEAN_PER_DAY -> new YieldLoss(line, PestMeasure.pestsPer(unit));
      case RELATIVE_AREA ->
          throw InputProblem.of("a line of yield on a relative area")
              .expected("pest-days or mean pests")
              .because("an injury level is stated in numbers of pests")
              .mend("take LoadMeasure.AREA");
    };
  }

  /**
   * The test of the slope.
   *
   * @return for example {@code "F = 34.70; df = 1, 24; P < 0.001"}
   */
  public String statement() {
    double t = line.slope() / line.slopeStandardError();
    if (!Double.isFinite(t)) {
      return "the plots lie on the line without any scatter, so that there is nothing to test by";
    }
    double p = yieldPValue();
    return "F = "
        + Numbers.fixed(t * t, 2)
        + "; df = 1, "
        + line.degreesOfFreedom()
        + "; "
        + (p < 0.001 ? "P < 0.001" : "P = " + Numbers.fixed(p, 3));
  }

  private double yieldPValue() {
    return new YieldLoss(line, PestMeasure.pestDaysPer(loads.settings().unit())).pValue();
  }

  @Override
  public Presentation presentation() {
    double half = line.slopeHalfWidth(LEVEL);
    var limits = new ConfidenceLimits(line.slope() - half, line.slope() + half);
    var rows = new ArrayList<List<Cell>>();
    for (var point : points) {
      rows.add(
          List.of(
              Cell.text(point.plot()),
              Cell.number(point.load(), 1),
              Cell.number(point.tonnesPerHectare(), 2),
              Cell.number(point.tonnesPerHectare() - line.at(point.load()), 2)));
    }
    var table =
        ResultTable.of(
            "Load and yield by plot",
            List.of(
                Column.of("Plot"),
                Column.of("Load", loads.unitWords()),
                Column.of("Yield", "t/ha"),
                Column.of("Beside the mean line", "t/ha")),
            rows);
    return Presentation.titled("Yield on pest load")
        .fact("Line", rule.words())
        .fact("Plots", Integer.toString(points.size()))
        .fact("Yield without pests", Numbers.significant(line.intercept(), 4) + " t/ha")
        .fact(
            "Change for each of the " + loads.unitWords(),
            Numbers.significant(line.slope(), 4) + " t/ha")
        .fact(
            "95 % interval of the change",
            Numbers.significant(limits.low(), 4)
                + " to "
                + Numbers.significant(limits.high(), 4)
                + " t/ha")
        .fact("Test of the slope", statement())
        .paragraph(
            limits.high() >= 0
                ? "The interval holds zero: these plots do not show that the pest costs yield."
                : "The line holds within the range of loads of these plots only. Treatments differ"
                    + " in more than the pest; what a product does to the crop itself is in the"
                    + " line too.")
        .table(table)
        .sources(List.of(loads.settings().measure().source()))
        .build();
  }
}
