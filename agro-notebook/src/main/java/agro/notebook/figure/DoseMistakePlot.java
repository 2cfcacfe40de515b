package agro.notebook.figure;

import agro.notebook.figure.ChartPanel.Side;
import agro.notebook.figure.DoseMistake.Spread;
import java.util.List;

/** The lines of mistakes by their size, on a scale of multiples. */
final class DoseMistakePlot {

  private static final int ROW_HEIGHT = 23;
  private static final int AXIS_HEIGHT = 46;

  /** Points of a page that a letter of a name takes, and the most letters that are drawn. */
  private static final double LETTER = 7.7;

  private static final int MOST_LETTERS = 70;

  /** Room beside the outermost marks for their sizes, as a share of the scale. */
  private static final double LABELS = 0.11;

  /** Rows above the first line, for the words "too little" and "too much". */
  private static final double TOP_ROWS = 1.3;

  private static final int[] TICKS = {1, 2, 5};

  /** Decades on either side of one in which every tick is named; beyond, only powers of ten. */
  private static final double NAMED = 1.35;

  private final List<DoseMistake> mistakes;
  private final double low;
  private final double high;
  private final ChartPanel panel;

  DoseMistakePlot(List<DoseMistake> mistakes) {
    this.mistakes = mistakes;
    var least = mistakes.stream().mapToDouble(DoseMistake::least).min().orElse(1);
    var most = mistakes.stream().mapToDouble(DoseMistake::most).max().orElse(1);
    var bottom = Math.min(Math.log10(least), Math.log10(0.5));
    var top = Math.max(Math.log10(most), Math.log10(2));
    var room = LABELS * (top - bottom);
    low = bottom - room;
    high = top + room;
    panel =
        new ChartPanel(
            (int) Math.round((mistakes.size() + TOP_ROWS + 0.5) * ROW_HEIGHT), AXIS_HEIGHT, "");
  }

  ChartPanel panel() {
    var letters = mistakes.stream().mapToInt(mistake -> name(mistake).length()).max().orElse(0);
    var names = (letters + 1) * LETTER / FigureLook.CHART_WIDTH;
    var left = low - names / (1 - names) * (high - low);
    panel.ranges(left, high, 0, mistakes.size() + TOP_ROWS).withoutYTicks();
    ground();
    for (var i = 0; i < mistakes.size(); i++) {
      line(mistakes.get(i), mistakes.size() - i - 0.5);
    }
    return panel;
  }

  private void ground() {
    var top = mistakes.size();
    for (var row = 0; row < top; row += 2) {
      panel.box(panel.xLow(), high, top - row - 1.0, top - row, FigureLook.PALE);
    }
    for (var power = (int) Math.floor(low); power <= high; power++) {
      for (var factor : TICKS) {
        tick(factor, power);
      }
    }
    panel.stroke(low, 0, high, 0, FigureLook.QUIET_INK, FigureLook.solid(1));
    panel.stroke(0, 0, 0, top, FigureLook.INK, FigureLook.solid(1.5));
    head("too little", Side.LEFT);
    head("too much", Side.RIGHT);
    panel.words(
        "Dose got, as a multiple of the dose meant (logarithmic scale)",
        (low + high) / 2,
        0,
        Side.FAR_BELOW,
        FigureLook.TEXT,
        FigureLook.INK);
  }

  private void head(String words, Side side) {
    panel.words(words, 0, mistakes.size() + 0.6, side, FigureLook.BOLD, FigureLook.INK);
  }

  private void tick(int factor, int power) {
    var multiple = factor * Math.pow(10, power);
    var x = Math.log10(multiple);
    if (x < low || x > high) {
      return;
    }
    panel.stroke(x, 0, x, mistakes.size(), FigureLook.GRID, FigureLook.solid(1));
    if (factor == 1 || Math.abs(x) < NAMED) {
      panel.words(words(multiple), x, 0, Side.BELOW, FigureLook.SMALL, FigureLook.INK);
    }
  }

  /** A name as it is drawn; the data hold it in full. */
  private static String name(DoseMistake mistake) {
    var name = FigureWords.sentence(mistake.name());
    return name.length() <= MOST_LETTERS
        ? name
        : name.substring(0, MOST_LETTERS - 1).stripTrailing() + "\u2026";
  }

  private static String words(double multiple) {
    var nearest = Math.round(multiple > 1 ? multiple : 1 / multiple);
    if (nearest == 1) {
      return "1";
    }
    return (multiple > 1 ? "\u00d7\u00a0" : "\u00f7\u00a0") + nearest;
  }

  private void line(DoseMistake mistake, double y) {
    panel.words(name(mistake), low, y, Side.LEFT, FigureLook.TEXT, FigureLook.INK);
    var from = Math.log10(mistake.least());
    var to = Math.log10(mistake.most());
    if (mistake.spread() == Spread.ANYWHERE_BETWEEN) {
      panel.stroke(from, y, to, y, FigureLook.LIGHT_GREY, FigureLook.solid(6));
    } else if (mistake.spread() == Spread.EITHER_WAY) {
      panel.stroke(from, y, to, y, FigureLook.LIGHT_GREY, FigureLook.solid(1));
    } else {
      panel.stroke(0, y, to, y, FigureLook.LIGHT_GREY, FigureLook.solid(1));
    }
    if (mistake.spread() != Spread.ONE_SIZE) {
      dot(mistake.least(), y, Side.LEFT);
      dot(mistake.most(), y, Side.RIGHT);
    } else {
      dot(mistake.least(), y, mistake.least() < 1 ? Side.LEFT : Side.RIGHT);
    }
  }

  private void dot(double multiple, double y, Side side) {
    var x = Math.log10(multiple);
    var little = multiple < 1;
    panel.mark(
        x,
        y,
        little ? FigureLook.BLUE : FigureLook.VERMILION,
        little ? FigureMark.BOUND : FigureMark.OBSERVATION);
    var beside = side == Side.RIGHT && little ? Math.max(0, x) : x;
    panel.words(
        DoseMistakeFigure.size(multiple), beside, y, side, FigureLook.SMALL, FigureLook.INK);
  }
}
