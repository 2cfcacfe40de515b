package agro.notebook.figure;

import agro.course.practical.DoseSlip;
import agro.course.practical.SlipFamily;
import agro.notebook.figure.ChartPanel.Side;
import agro.working.Wording;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The lines of slips on an axis of ratios, with a heading for each family. */
final class DoseSlipPlot {

  private static final int ROW_HEIGHT = 23;
  private static final int AXIS_HEIGHT = 46;

  /** Points of a page that a letter of a name takes, and the most letters that are drawn. */
  private static final double LETTER = 8;

  private static final int MOST_LETTERS = 58;

  /** Points of a page beside the outermost marks for their values. */
  private static final double LABELS = 82;

  /** Decades on either side of one that are drawn; slips beyond end in an arrow. */
  private static final double MOST_DECADES = 1.6;

  /** Rows above the first line, for the words "too little" and "too much". */
  private static final double TOP_ROWS = 1.3;

  /** Decades that the axis shows on either side of one at least. */
  private static final double LEAST_DECADES = 0.3;

  /** Room between a mark and its value, as a share of the scale. */
  private static final double GAP = 0.014;

  /** A row: the heading of a family, or a slip. */
  private record Row(SlipFamily family, Optional<DoseSlip> slip) {}

  private final Wording words;
  private final List<Row> rows = new ArrayList<>();
  private final double low;
  private final double high;
  private final double left;
  private final ChartPanel panel;

  DoseSlipPlot(List<DoseSlip> slips, Wording words) {
    this.words = words;
    for (var slip : slips) {
      var family = slip.kind().family();
      if (rows.isEmpty() || rows.get(rows.size() - 1).family() != family) {
        rows.add(new Row(family, Optional.empty()));
      }
      rows.add(new Row(family, Optional.of(slip)));
    }
    double bottom = -LEAST_DECADES;
    double top = LEAST_DECADES;
    for (var slip : slips) {
      bottom = Math.min(bottom, place(slip));
      top = Math.max(top, place(slip));
    }
    int letters = slips.stream().mapToInt(slip -> name(slip).length()).max().orElse(0);
    double names = (letters + 1) * LETTER;
    double perPoint = (top - bottom) / (FigureLook.CHART_WIDTH - names - 2 * LABELS);
    low = bottom - LABELS * perPoint;
    high = top + LABELS * perPoint;
    left = low - names * perPoint;
    panel =
        new ChartPanel(
            (int) Math.round((rows.size() + TOP_ROWS + 0.5) * ROW_HEIGHT), AXIS_HEIGHT, "");
  }

  private static double place(DoseSlip slip) {
    return Math.max(-MOST_DECADES, Math.min(MOST_DECADES, Math.log10(slip.ratio())));
  }

  ChartPanel panel() {
    panel.ranges(left, high, 0, rows.size() + TOP_ROWS).withoutYTicks();
    ground();
    for (int i = 0; i < rows.size(); i++) {
      double y = rows.size() - i - 0.5;
      var row = rows.get(i);
      if (row.slip().isPresent()) {
        line(row.slip().get(), y);
      } else {
        family(row.family(), y);
      }
    }
    return panel;
  }

  private void ground() {
    int top = rows.size();
    for (int i = 0; i < top; i++) {
      if (rows.get(i).slip().isEmpty()) {
        panel.box(panel.xLow(), high, top - i - 1.0, top - i, FigureLook.PALE);
      }
    }
    for (double tick : ticks()) {
      double x = Math.log10(tick);
      panel.stroke(x, 0, x, top, FigureLook.GRID, FigureLook.solid(1));
      panel.words(
          words.quantity(DoseTicks.words(tick)),
          x,
          0,
          Side.BELOW,
          FigureLook.SMALL,
          FigureLook.INK);
    }
    panel.stroke(low, 0, high, 0, FigureLook.QUIET_INK, FigureLook.solid(1));
    panel.stroke(0, 0, 0, top, FigureLook.INK, FigureLook.solid(1.5));
    head(words.say("figure.slips.little"), Side.LEFT);
    head(words.say("figure.slips.much"), Side.RIGHT);
    panel.words(
        words.say("figure.slips.axis"),
        (low + high) / 2,
        0,
        Side.FAR_BELOW,
        FigureLook.TEXT,
        FigureLook.INK);
  }

  private List<Double> ticks() {
    return DoseTicks.ofLogarithm(low, high);
  }

  private void head(String text, Side side) {
    panel.words(text, 0, rows.size() + 0.6, side, FigureLook.BOLD, FigureLook.INK);
  }

  private void family(SlipFamily family, double y) {
    panel.words(
        words.say("slips.family." + family.name()),
        panel.xLow(),
        y,
        Side.RIGHT,
        FigureLook.BOLD,
        FigureLook.INK);
  }

  /** A name as it is drawn; the data hold it in full. */
  private static String name(DoseSlip slip) {
    var name = slip.name();
    return name.length() <= MOST_LETTERS
        ? name
        : name.substring(0, MOST_LETTERS - 1).stripTrailing() + "\u2026";
  }

  private void line(DoseSlip slip, double y) {
    panel.words(name(slip), low, y, Side.LEFT, FigureLook.TEXT, FigureLook.INK);
    double x = place(slip);
    boolean little = slip.isTooLittle();
    panel.curve(
        new double[] {0, x},
        new double[] {y, y},
        little ? FigureLook.BLUE : FigureLook.VERMILION,
        little ? FigureLook.dashed(1.5) : FigureLook.solid(2.5));
    panel.mark(x, y, little ? FigureLook.BLUE : FigureLook.VERMILION, mark(slip));
    panel.words(
        DoseSlipFigure.times(words, slip.ratio()),
        x + (little ? -1 : 1) * gap(slip) * (high - low),
        y,
        little ? Side.LEFT : Side.RIGHT,
        FigureLook.SMALL,
        FigureLook.INK);
  }

  /** An arrow reaches further than a mark. */
  private static double gap(DoseSlip slip) {
    var mark = mark(slip);
    return mark == FigureMark.GOES_ON || mark == FigureMark.GOES_BACK ? 2 * GAP : GAP;
  }

  private static FigureMark mark(DoseSlip slip) {
    if (Math.abs(Math.log10(slip.ratio())) > MOST_DECADES) {
      return slip.isTooLittle() ? FigureMark.GOES_BACK : FigureMark.GOES_ON;
    }
    return slip.isTooLittle() ? FigureMark.MEDIAN : FigureMark.DISC;
  }
}
