package agro.course.sheet;

import agro.sampling.sequential.SequentialPlan;
import agro.sampling.sequential.StopBounds;
import agro.sampling.sequential.WaldLines;
import agro.sampling.size.PrecisionStopLine;
import agro.units.Numbers;
import agro.working.Sheet;
import agro.working.Sheet.Align;
import agro.working.Sheet.Pen;
import agro.working.Sheet.Place;
import agro.working.TextLanguage;
import agro.working.Wording;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntToDoubleFunction;

/** Draws {@link StopLinePaper}. */
final class StopLinePaperDrawing {

  private static final double FINEST = 1.4;
  private static final double LABELS_APART = 9;
  private static final int CURVE_PARTS = 160;
  private static final Sheet.Type NAME = new Sheet.Type(3.6, true, Align.MIDDLE);
  private static final Sheet.Type MIDDLE_TEXT = new Sheet.Type(3, false, Align.MIDDLE);
  private static final Sheet.Type RIGHT_TEXT = new Sheet.Type(3, false, Align.END);

  private final StopLinePaper paper;
  private final Wording words;
  private final Sheet.Builder page;
  private final double left;
  private final double right;
  private final double top;
  private final double bottom;

  StopLinePaperDrawing(StopLinePaper paper, TextLanguage language) {
    this.paper = paper;
    words = PaperPage.words(language);
    page = PaperPage.titled(paper.title().isBlank() ? words.say("stop.title") : paper.title());
    left = paper.across(0);
    right = paper.across(paper.mostUnits());
    top = paper.down(paper.highestTotal());
    bottom = paper.down(0);
  }

  Sheet draw() {
    PaperPage.blanks(page, words, 28);
    paper.plan().ifPresent(this::shadePlan);
    paper.precision().ifPresent(this::shadePrecision);
    acrossAxis();
    upAxis();
    page.box(left, top, right - left, bottom - top, PaperPage.FRAME);
    paper.plan().ifPresent(this::drawPlan);
    paper.precision().ifPresent(this::drawPrecision);
    double y = equations();
    new CountBoxes(paper, words).draw(page, y);
    PaperPage.foot(page, words.say("stop.foot"));
    return page.build();
  }

  /** The smallest of 1, 2, 5, 10, 20 … whose lines lie so far apart. */
  static double step(double highest, double length, double apart) {
    double step = 1;
    double[] factors = {2, 2.5, 2};
    for (int i = 0; step * length / highest < apart; i++) {
      step *= factors[i % factors.length];
    }
    return step;
  }

  private static Pen pen(double value, double labelled) {
    return isMultiple(value, labelled)
        ? PaperPage.STRONG
        : isMultiple(2 * value, labelled) ? PaperPage.MIDDLE : PaperPage.FINE;
  }

  private static boolean isMultiple(double value, double of) {
    return Math.abs(value / of - Math.rint(value / of)) < 1e-9;
  }

  private void acrossAxis() {
    double most = paper.mostUnits();
    double fine = step(most, right - left, FINEST);
    double labelled = step(most, right - left, LABELS_APART);
    for (double units = fine; units < most; units += fine) {
      page.line(paper.across(units), top, paper.across(units), bottom, pen(units, labelled));
    }
    for (double units = 0; units <= most; units += labelled) {
      page.words(paper.across(units), bottom + 4.6, Numbers.plain(units), MIDDLE_TEXT);
    }
    var unit = paper.unit().isBlank() ? words.say("stop.unit.blank") : paper.unit();
    page.words((left + right) / 2, bottom + 10, words.say("stop.across", "unit", unit), NAME);
  }

  private void upAxis() {
    double most = paper.highestTotal();
    double fine = step(most, bottom - top, FINEST);
    double labelled = step(most, bottom - top, LABELS_APART);
    for (double total = fine; total < most; total += fine) {
      page.line(left, paper.down(total), right, paper.down(total), pen(total, labelled));
    }
    for (double total = 0; total <= most; total += labelled) {
      page.words(left - 1.8, paper.down(total) + 1.05, Numbers.plain(total), RIGHT_TEXT);
    }
    page.words(
        PaperPage.LEFT, top - 2.6, words.say("stop.up"), new Sheet.Type(3.4, true, Align.START));
  }

  /** The line as far as it lies on the paper, and along the edge where it does not. */
  private List<Place> curve(int from, int to, IntToDoubleFunction total) {
    var places = new ArrayList<Place>();
    int parts = Math.max(1, Math.min(CURVE_PARTS, to - from));
    double unitsBefore = from;
    double before = total.applyAsDouble(from);
    places.add(onPaper(from, before));
    for (int i = 1; i <= parts; i++) {
      int units = from + (int) Math.round((double) i * (to - from) / parts);
      double here = total.applyAsDouble(units);
      for (double edge : new double[] {0, paper.highestTotal()}) {
        if ((before - edge) * (here - edge) < 0) {
          double share = (edge - before) / (here - before);
          places.add(onPaper(unitsBefore + share * (units - unitsBefore), edge));
        }
      }
      places.add(onPaper(units, here));
      unitsBefore = units;
      before = here;
    }
    return places;
  }

  private Place onPaper(double units, double total) {
    double at = Math.max(0, Math.min(paper.highestTotal(), total));
    return new Place(paper.across(units), paper.down(at));
  }

  private void shade(List<Place> line, double edge, double grey) {
    var corners = new ArrayList<Place>();
    corners.add(new Place(line.get(0).x(), edge));
    corners.addAll(line);
    corners.add(new Place(line.get(line.size() - 1).x(), edge));
    page.shade(corners, grey);
  }

  private void path(List<Place> line) {
    for (int i = 1; i < line.size(); i++) {
      var from = line.get(i - 1);
      var to = line.get(i);
      boolean onEdge =
          (from.y() == top && to.y() == top) || (from.y() == bottom && to.y() == bottom);
      if (!onEdge) {
        page.line(from.x(), from.y(), to.x(), to.y(), PaperPage.DRAWN);
      }
    }
  }

  private int end(SequentialPlan plan) {
    return plan.mostUnits().orElse(paper.mostUnits());
  }

  private List<Place> low(SequentialPlan plan) {
    return curve(plan.leastUnits(), end(plan), units -> plan.bounds().low(units));
  }

  private List<Place> high(SequentialPlan plan) {
    return curve(plan.leastUnits(), end(plan), units -> plan.bounds().high(units));
  }

  private void shadePlan(SequentialPlan plan) {
    shade(low(plan), bottom, 0.9);
    shade(high(plan), top, 0.8);
  }

  private void drawPlan(SequentialPlan plan) {
    path(low(plan));
    path(high(plan));
    int most = end(plan);
    double high = Math.min(paper.highestTotal(), plan.bounds().high(most / 3 + 1));
    label(most * 0.3, (paper.highestTotal() + high) / 2, words.say("stop.high"));
    double low = Math.max(0, plan.bounds().low(Math.max(1, 4 * most / 5)));
    label(most * 0.8, low / 2, words.say("stop.low"));
    goOn(plan, (int) Math.round(0.58 * most));
  }

  /** Between the lines where there is room; else beside them, with a line that leads there. */
  private void goOn(SequentialPlan plan, int units) {
    var text = words.say("stop.on");
    double most = end(plan);
    double low = Math.max(0, plan.bounds().low(units));
    double high = Math.min(paper.highestTotal(), plan.bounds().high(units));
    double rise = (paper.down(0) - paper.down(plan.bounds().middle() * most)) / (right - left);
    double needed = 7 + rise * (Sheet.width(text, NAME) + 4);
    double middle = (low + high) / 2;
    if (paper.down(low) - paper.down(high) >= needed) {
      label(units, middle, text);
      return;
    }
    double x = paper.across(units);
    double y = Math.min(bottom - 4, paper.down(low) + 14 + rise * Sheet.width(text, NAME) / 2);
    page.line(x, paper.down(middle), x, y, PaperPage.FRAME);
    page.shade(ring(x, paper.down(middle)), 0);
    label(units, (bottom - y) / (bottom - top) * paper.highestTotal(), text);
  }

  private static List<Place> ring(double x, double y) {
    var corners = new ArrayList<Place>();
    for (int i = 0; i < 12; i++) {
      corners.add(new Place(x + Math.cos(Math.PI * i / 6), y + Math.sin(Math.PI * i / 6)));
    }
    return corners;
  }

  private int first(PrecisionStopLine line) {
    int first = (int) Math.floor(line.limit()) + 1;
    while (first < paper.mostUnits() && line.stopAt(first) > paper.highestTotal()) {
      first++;
    }
    return first;
  }

  private void shadePrecision(PrecisionStopLine line) {
    shade(curve(first(line), paper.mostUnits(), line::stopAt), top, 0.88);
  }

  private void drawPrecision(PrecisionStopLine line) {
    path(curve(first(line), paper.mostUnits(), line::stopAt));
    int middle = Math.max(first(line), (int) (0.7 * paper.mostUnits()));
    double at = Math.min(paper.highestTotal(), line.stopAt(middle));
    label(middle, (paper.highestTotal() + at) / 2, words.say("stop.reached"));
    label(0.5 * paper.mostUnits(), at / 2, words.say("stop.on"));
  }

  /** Words on a white ground, moved so that they stay on the paper. */
  private void label(double units, double total, String text) {
    double half = 0.5 * Sheet.width(text, NAME) + 1;
    double x = Math.max(left + half, Math.min(right - half, paper.across(units)));
    double y = Math.max(top + 4.4, Math.min(bottom - 2, paper.down(total) + 1.2));
    page.shade(
        List.of(
            new Place(x - half, y - 3.6),
            new Place(x + half, y - 3.6),
            new Place(x + half, y + 1.2),
            new Place(x - half, y + 1.2)),
        1);
    page.words(x, y, text, NAME);
  }

  /** What the lines are, or room to write their equations. */
  private double equations() {
    double y = bottom + 17;
    double width = PaperPage.RIGHT - PaperPage.LEFT;
    if (paper.plan().isPresent()) {
      var bounds = paper.plan().get().bounds();
      return page.paragraph(PaperPage.LEFT, y, planWords(bounds), PaperPage.TEXT, width);
    }
    if (paper.precision().isPresent()) {
      var text =
          words.say(
              "stop.precision",
              "percent",
              words.quantity(
                  Numbers.significant(100 * paper.precision().get().relativeError(), 3)));
      return page.paragraph(PaperPage.LEFT, y, text, PaperPage.TEXT, width);
    }
    page.words(PaperPage.LEFT, y, words.say("stop.low.blank"), PaperPage.TEXT);
    page.words((left + right) / 2, y, words.say("stop.high.blank"), PaperPage.TEXT);
    return y + 4.4;
  }

  private String planWords(StopBounds bounds) {
    if (bounds instanceof WaldLines lines) {
      return words.say(
          "stop.wald",
          "low",
          TableDrawing.number(words, lines.lowIntercept(), 2),
          "high",
          TableDrawing.number(words, lines.highIntercept(), 2),
          "slope",
          TableDrawing.number(words, lines.slope(), 3));
    }
    return words.say("stop.band", "mean", TableDrawing.number(words, bounds.middle(), 3));
  }
}
