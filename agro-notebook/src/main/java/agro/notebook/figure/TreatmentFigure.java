package agro.notebook.figure;

import agro.notebook.figure.ChartPanel.Side;
import agro.sampling.injury.TreatmentDecision;
import agro.sampling.injury.TreatmentVerdict;
import agro.units.Numbers;
import agro.working.Cell;
import agro.working.ResultTable;
import agro.working.ResultTable.Column;
import java.awt.Color;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Where to leave a field, where to look on and where to treat, with the field that was counted. */
public final class TreatmentFigure {

  private static final int HEIGHT = 380;
  private static final int AXIS_HEIGHT = 46;
  private static final int STEPS = 200;
  private static final double TOP = 109;

  private final TreatmentDecision decision;
  private final double most;

  private TreatmentFigure(TreatmentDecision decision) {
    this.decision = decision;
    most =
        1.05
            * Math.max(
                Math.max(decision.level().quantile(0.95), 1.2 * decision.treatFrom()),
                decision.density().quantile(0.95));
  }

  /**
   * Draws the chance that treating pays by density. Three greys with their words tell the regions;
   * the counted field is a mark with the nine tenths interval of its density.
   *
   * @param decision the decision
   * @return the figure
   */
  public static DrawnFigure of(TreatmentDecision decision) {
    var figure = new TreatmentFigure(decision);
    var sheet =
        new FigureSheet(
            "Does it pay to treat? " + FigureWords.sentence(decision.verdict().words()),
            "Curve: chance that treating pays if the density were known. Diamond: this field, with the"
                + " error of its sample.",
            List.of(figure.panel()));
    return new DrawnFigure(sheet, figure.alternative(), figure.caption(), figure.data());
  }

  private ChartPanel panel() {
    var panel = new ChartPanel(HEIGHT, AXIS_HEIGHT, "Chance that treating pays (%)");
    panel.ranges(0, most, FigureLook.BELOW_ZERO * 100, TOP);
    region(panel, 0, decision.leaveUpTo(), FigureLook.PALE, "leave");
    region(panel, decision.leaveUpTo(), decision.treatFrom(), FigureLook.GRID, "look on");
    region(panel, decision.treatFrom(), most, FigureLook.LIGHT_GREY, "treat");
    var step = NumberAxis.step(0, most);
    NumberAxis.label(panel, step, FigureWords.sentence(decision.level().measure().words()));
    for (var bound : new double[] {decision.leaveBelow(), decision.treatAbove()}) {
      panel.level(100 * bound, FigureLook.DARK_GREY, FigureLook.dotted(1.5));
    }
    var density = new double[STEPS + 1];
    var chance = new double[STEPS + 1];
    for (var i = 0; i <= STEPS; i++) {
      density[i] = most * i / STEPS;
      chance[i] = 100 * decision.level().chanceOfPaying(density[i]);
    }
    panel.curve(density, chance, FigureLook.INK, FigureLook.solid(2.5));
    field(panel);
    return panel;
  }

  private static void region(ChartPanel panel, double from, double to, Color grey, String words) {
    if (to > from) {
      panel.box(from, to, FigureLook.BELOW_ZERO * 100, TOP, grey);
      panel.words(words, (from + to) / 2, 104.5, Side.CENTRE, FigureLook.BOLD, FigureLook.INK);
    }
  }

  private void field(ChartPanel panel) {
    var density = decision.density();
    var chance = 100 * decision.chanceOfPaying();
    panel.curve(
        new double[] {density.quantile(0.05), density.quantile(0.95)},
        new double[] {chance, chance},
        FigureLook.INK,
        FigureLook.solid(4));
    panel.mark(density.quantile(0.5), chance, FigureLook.INK, FigureMark.MEDIAN);
    var right = density.quantile(0.5) > 0.6 * most;
    panel.words(
        "this field: " + FigureWords.chance(decision.chanceOfPaying()),
        right ? density.quantile(0.05) : density.quantile(0.95),
        chance,
        right ? Side.LEFT : Side.RIGHT,
        FigureLook.BOLD,
        FigureLook.INK);
  }

  private static String density(double value) {
    return Numbers.significant(value, 3);
  }

  private String alternative() {
    return "Chance that treating pays, by density from 0 to "
        + density(most)
        + " "
        + decision.level().measure().words()
        + ". Leave up to "
        + density(decision.leaveUpTo())
        + ", treat from "
        + density(decision.treatFrom())
        + ", look on between. This field: "
        + density(decision.density().quantile(0.5))
        + ", nine tenths interval "
        + density(decision.density().quantile(0.05))
        + " to "
        + density(decision.density().quantile(0.95))
        + ", chance "
        + FigureWords.chance(decision.chanceOfPaying())
        + ". Verdict: "
        + decision.verdict().words()
        + ".";
  }

  private String caption() {
    return "Chance that treating pays. A field is left below a chance of "
        + Numbers.plain(100 * decision.leaveBelow())
        + " % and treated above "
        + Numbers.plain(100 * decision.treatAbove())
        + " %. The chance of this field takes the error of its sample in, so that its mark need not"
        + " lie on the curve. The product label and local law come first and override every figure"
        + " here.";
  }

  private ResultTable data() {
    var rows = new ArrayList<List<Cell>>();
    var steps = 20;
    for (var i = 0; i <= steps; i++) {
      var density = most * i / steps;
      rows.add(
          List.of(
              Cell.number(density, 3),
              Cell.number(100 * decision.level().chanceOfPaying(density), 1),
              Cell.text(region(density).name().toLowerCase(Locale.ROOT).replace('_', ' '))));
    }
    return ResultTable.of(
        "Chance that treating pays, by density",
        List.of(
            Column.of("Density", decision.level().measure().words()),
            Column.of("Chance", "%"),
            Column.of("If known")),
        rows);
  }

  private TreatmentVerdict region(double density) {
    if (density <= decision.leaveUpTo()) {
      return TreatmentVerdict.LEAVE;
    }
    return density >= decision.treatFrom() ? TreatmentVerdict.TREAT : TreatmentVerdict.LOOK_ON;
  }
}
