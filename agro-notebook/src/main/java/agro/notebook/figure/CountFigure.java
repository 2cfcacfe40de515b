package agro.notebook.figure;

import agro.notebook.figure.ChartPanel.Side;
import agro.sampling.CountSample;
import agro.sampling.NegativeBinomialCounts;
import agro.sampling.dispersion.NegativeBinomialFit;
import agro.units.Numbers;
import agro.working.Cell;
import agro.working.ResultTable;
import agro.working.ResultTable.Column;
import java.util.ArrayList;
import java.util.List;

/**
 * Units by the number of animals on them, beside what the negative binomial and what chance alone
 * would give. Large counts are put together in classes of equal width.
 */
public final class CountFigure {

  private static final int HEIGHT = 380;
  private static final int AXIS_HEIGHT = 46;
  private static final int MOST_CLASSES = 24;
  private static final double HALF_BAR = 0.42;

  private final NegativeBinomialFit fit;
  private final int width;
  private final int classes;

  private CountFigure(NegativeBinomialFit fit) {
    this.fit = fit;
    int counts = fit.sample().largest() + 2;
    width = (counts + MOST_CLASSES - 1) / MOST_CLASSES;
    classes = (counts + width - 1) / width;
  }

  /**
   * Draws the counts of one sample.
   *
   * @param fit negative binomial fitted to the counts
   * @return the figure
   */
  public static DrawnFigure of(NegativeBinomialFit fit) {
    var figure = new CountFigure(fit);
    var sheet =
        new FigureSheet(
            "How many animals on a " + fit.sample().unit().kind().words(),
            "Bars: counted. Solid: expected by the "
                + figure.law()
                + ". Dashed: expected if they were scattered at random.",
            List.of(figure.panel()));
    return new DrawnFigure(sheet, figure.alternative(), figure.caption(), figure.data());
  }

  private String law() {
    return fit.isFinite()
        ? "negative binomial, k = " + Numbers.fixed(fit.byLikelihood(), 2)
        : "fitted law, which is chance";
  }

  private NegativeBinomialCounts random() {
    return NegativeBinomialCounts.poisson(fit.sample().mean());
  }

  private int observed(int place) {
    int units = 0;
    for (int count = place * width; count < (place + 1) * width; count++) {
      units += fit.sample().unitsWith(count);
    }
    return units;
  }

  private double expected(NegativeBinomialCounts counts, int place) {
    double share = 0;
    for (int count = place * width; count < (place + 1) * width; count++) {
      share += counts.probability(count);
    }
    return share * fit.sample().size();
  }

  private double[] expected(NegativeBinomialCounts counts) {
    double[] units = new double[classes];
    for (int place = 0; place < classes; place++) {
      units[place] = expected(counts, place);
    }
    return units;
  }

  private double middle(int place) {
    return place * width + (width - 1) / 2.0;
  }

  private ChartPanel panel() {
    double[] fitted = expected(fit.distribution());
    double[] random = expected(random());
    double[] x = new double[classes];
    double top = 1;
    for (int place = 0; place < classes; place++) {
      x[place] = middle(place);
      top = Math.max(top, Math.max(observed(place), Math.max(fitted[place], random[place])));
    }
    var panel = new ChartPanel(HEIGHT, AXIS_HEIGHT, "Number of units");
    double high = 1.12 * top;
    panel.ranges(
        x[0] - 0.7 * width, x[classes - 1] + 0.7 * width, FigureLook.BELOW_ZERO * high, high);
    for (int place = 0; place < classes; place++) {
      panel.box(
          x[place] - HALF_BAR * width,
          x[place] + HALF_BAR * width,
          0,
          observed(place),
          FigureLook.LIGHT_GREY);
    }
    NumberAxis.label(panel, Math.max(1, NumberAxis.step(panel.xLow(), panel.xHigh())), axisTitle());
    panel.curve(x, random, FigureLook.QUIET_INK, FigureLook.dashed(2));
    panel.curve(x, fitted, FigureLook.BLUE, FigureLook.solid(2.5));
    for (int place = 0; place < classes; place++) {
      panel.mark(x[place], random[place], FigureLook.QUIET_INK, FigureMark.BOUND);
      panel.mark(x[place], fitted[place], FigureLook.BLUE, FigureMark.OBSERVATION);
    }
    return names(panel, x, fitted, random, high);
  }

  /** Chance alone is named at its peak, the fitted law on the tail that chance does not have. */
  private ChartPanel names(
      ChartPanel panel, double[] x, double[] fitted, double[] random, double high) {
    int peak = 0;
    for (int place = 1; place < classes; place++) {
      if (random[place] > random[peak]) {
        peak = place;
      }
    }
    panel.words(
        "at random",
        x[peak] + 0.1 * width,
        random[peak],
        Side.ABOVE_RIGHT,
        FigureLook.TEXT,
        FigureLook.QUIET_INK);
    int tail = Math.min(classes - 1, peak + 1);
    while (tail < classes - 1 && fitted[tail] < 1.3 * random[tail]) {
      tail++;
    }
    double lift = fitted[tail] + 0.1 * high;
    panel.curve(
        new double[] {x[tail], x[tail] + 0.3 * width},
        new double[] {fitted[tail], lift},
        FigureLook.MIDDLE_GREY,
        FigureLook.solid(1));
    return panel.words(
        law(), x[tail] + 0.3 * width, lift, Side.ABOVE_RIGHT, FigureLook.BOLD, FigureLook.BLUE);
  }

  private String axisTitle() {
    return width == 1 ? "Animals on one" : "Animals on one, in classes of " + width;
  }

  private String unitWords() {
    return fit.sample().unit().words();
  }

  private String alternative() {
    CountSample sample = fit.sample();
    return sample.size()
        + " × "
        + unitWords()
        + " by the number of animals on them, mean "
        + Numbers.fixed(sample.mean(), 2)
        + ": "
        + sample.unitsWith(0)
        + " without any, where "
        + Numbers.fixed(fit.expected(0), 1)
        + " are expected by the "
        + law()
        + ", and "
        + Numbers.fixed(sample.size() * random().probability(0), 1)
        + " at random; the largest count is "
        + sample.largest()
        + ".";
  }

  private String caption() {
    return fit.sample().label()
        + ": "
        + fit.sample().size()
        + " × "
        + unitWords()
        + ", mean "
        + Numbers.fixed(fit.sample().mean(), 2)
        + ", variance "
        + Numbers.fixed(fit.sample().variance(), 2)
        + ". "
        + (fit.isFinite()
            ? "The negative binomial is fitted by maximum likelihood, k = "
                + Numbers.fixed(fit.byLikelihood(), 3)
                + " with a standard error of "
                + Numbers.fixed(fit.standardError(), 3)
                + "."
            : "No finite k: the counts are no more uneven than chance.");
  }

  private ResultTable data() {
    var rows = new ArrayList<List<Cell>>();
    for (int place = 0; place < classes; place++) {
      int from = place * width;
      rows.add(
          List.of(
              Cell.text(width == 1 ? Integer.toString(from) : from + " to " + (from + width - 1)),
              Cell.number(observed(place), 0),
              Cell.number(expected(fit.distribution(), place), 2),
              Cell.number(expected(random(), place), 2)));
    }
    return ResultTable.of(
        "Units by count",
        List.of(
            Column.of("Animals"),
            Column.of("Counted"),
            Column.of("Negative binomial"),
            Column.of("At random")),
        rows);
  }
}
