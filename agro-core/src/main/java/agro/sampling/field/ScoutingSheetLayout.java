package agro.sampling.field;

import agro.sampling.sequential.SequentialPlan;
import agro.working.Sheet;
import agro.working.Sheet.Align;
import agro.working.Sheet.Pen;
import agro.working.Sheet.Place;
import java.util.ArrayList;
import java.util.List;

/** Lays out a {@link ScoutingSheet} on A4, in millimetres. */
final class ScoutingSheetLayout {

  private static final double LEFT = 14;
  private static final double RIGHT = 196;
  private static final double MIDDLE = 102;
  private static final double BODY_TOP = 47;
  private static final double FIGURE_BOTTOM = 116;
  private static final double TABLE_TOP = 130;
  private static final double TABLE_BOTTOM = 272;
  private static final double HIGHEST_ROW = 7.4;
  private static final int GROUPS = 3;
  private static final int MOST_ROWS = 20;

  private static final Pen RULE = new Pen(0.2, 0.35, false);
  private static final Pen FRAME = new Pen(0.35, 0, false);
  private static final Pen STOP = new Pen(0.6, 0, false);
  private static final Sheet.Type TITLE = new Sheet.Type(6, true, Align.START);
  private static final Sheet.Type TEXT = new Sheet.Type(3.4, false, Align.START);
  private static final Sheet.Type SMALL = new Sheet.Type(2.5, false, Align.START);
  private static final Sheet.Type HEAD = new Sheet.Type(2.7, true, Align.MIDDLE);
  private static final Sheet.Type CELL = new Sheet.Type(3.2, false, Align.MIDDLE);
  private static final Sheet.Type NAME = new Sheet.Type(3.4, true, Align.MIDDLE);

  private final ScoutingSheet sheet;
  private final SequentialPlan plan;
  private final int most;
  private final Sheet.Builder page;

  ScoutingSheetLayout(ScoutingSheet sheet) {
    this.sheet = sheet;
    plan = sheet.plan();
    most = plan.mostUnits().orElseThrow();
    page = Sheet.a4(sheet.title());
  }

  Sheet draw() {
    heading();
    instructions();
    new StopLineDrawing(plan, MIDDLE + 14, BODY_TOP, RIGHT, FIGURE_BOTTOM).draw(page, xTitle());
    table();
    page.paragraph(LEFT, 279, sheet.foot(), SMALL, RIGHT - LEFT);
    return page.build();
  }

  private String xTitle() {
    return "Units looked at (one unit: " + sheet.unit().words() + ")";
  }

  private void heading() {
    double size = TITLE.sizeMm();
    double wide = Sheet.width(sheet.title(), TITLE);
    var type =
        wide > RIGHT - LEFT
            ? new Sheet.Type(size * (RIGHT - LEFT) / wide, true, Align.START)
            : TITLE;
    page.words(LEFT, 20, sheet.title(), type);
    double x = LEFT;
    for (var name : List.of("Field", "Date", "Observer", "Crop stage")) {
      page.words(x, 32, name, TEXT);
      double from = x + Sheet.width(name, TEXT) + 2;
      page.line(from, 32.6, x + 42, 32.6, RULE);
      x += 46;
    }
    page.line(LEFT, 38, RIGHT, 38, FRAME);
  }

  private void instructions() {
    double y = BODY_TOP;
    int number = 1;
    for (var sentence : sheet.allInstructions()) {
      page.words(LEFT, y, number + ".", TEXT);
      y = page.paragraph(LEFT + 6, y, sentence, TEXT, MIDDLE - LEFT - 8) + 1.4;
      number++;
    }
    y = Math.max(y + 3, 104);
    page.words(LEFT, y, "Result:", new Sheet.Type(3.4, true, Align.START));
    double x = LEFT + 18;
    for (var answer : List.of("low", "high", "undecided")) {
      page.box(x, y - 3.4, 4, 4, FRAME);
      page.words(x + 6, y, answer, TEXT);
      x += 22;
    }
  }

  /** Units from one checked total to the next: 1, or more when the plan is longer than the page. */
  private int batch() {
    return (most + GROUPS * MOST_ROWS - 1) / (GROUPS * MOST_ROWS);
  }

  private List<Integer> checks() {
    var ends = new ArrayList<Integer>();
    for (int n = batch(); n < most; n += batch()) {
      ends.add(n);
    }
    ends.add(most);
    return ends;
  }

  private void table() {
    var checks = checks();
    int rows = (checks.size() + GROUPS - 1) / GROUPS;
    double width = (RIGHT - LEFT - 8) / GROUPS;
    double high = Math.min(HIGHEST_ROW, (TABLE_BOTTOM - TABLE_TOP - 6) / rows);
    page.words(LEFT, TABLE_TOP - 4, tableTitle(), new Sheet.Type(3.4, true, Align.START));
    for (int group = 0; group < GROUPS && group * rows < checks.size(); group++) {
      double x = LEFT + group * (width + 4);
      int from = group * rows;
      group(checks, from, Math.min(checks.size(), from + rows), x, width, high);
    }
  }

  private String tableTitle() {
    return batch() == 1
        ? "Counts and limits of the total"
        : "Counts in batches of " + batch() + ", and limits of the total behind each";
  }

  private void group(List<Integer> checks, int from, int to, double x, double width, double high) {
    double[] edges = {0, 0.2, 0.42, 0.66, 0.83, 1};
    var heads = List.of("no.", "count", "total", "low ≤", "high ≥");
    double top = TABLE_TOP + 5;
    for (int i = 0; i < heads.size(); i++) {
      page.words(x + width * (edges[i] + edges[i + 1]) / 2, TABLE_TOP + 3.4, heads.get(i), HEAD);
    }
    for (int row = from; row < to; row++) {
      double y = top + (row - from) * high;
      int end = checks.get(row);
      int begin = row == 0 ? 1 : checks.get(row - 1) + 1;
      var base = y + 0.5 * high + 1.1;
      var cells =
          List.of(
              begin == end ? Integer.toString(end) : begin + "–" + end,
              "",
              "",
              plan.lastLow(end) < 0 ? "–" : Long.toString(plan.lastLow(end)),
              plan.firstHigh(end) == Long.MAX_VALUE ? "–" : Long.toString(plan.firstHigh(end)));
      for (int i = 0; i < cells.size(); i++) {
        page.words(x + width * (edges[i] + edges[i + 1]) / 2, base, cells.get(i), fitted(cells, i));
      }
      page.line(x, y + high, x + width, y + high, RULE);
    }
    double bottom = top + (to - from) * high;
    page.box(x, top, width, bottom - top, FRAME);
    for (int i = 1; i < heads.size(); i++) {
      page.line(x + width * edges[i], top, x + width * edges[i], bottom, RULE);
    }
  }

  private static Sheet.Type fitted(List<String> cells, int index) {
    return cells.get(index).length() > 5 ? new Sheet.Type(2.4, false, Align.MIDDLE) : CELL;
  }

  /** The stop lines as a figure. */
  private record StopLineDrawing(
      SequentialPlan plan, double left, double top, double right, double bottom) {

    void draw(Sheet.Builder page, String xTitle) {
      int most = plan.mostUnits().orElseThrow();
      double highest = Math.max(1, Math.ceil(plan.bounds().high(most) * 1.06));
      var low = new ArrayList<Place>();
      var high = new ArrayList<Place>();
      int steps = Math.min(most, 120);
      int first = Math.max(1, plan.leastUnits());
      for (int i = 0; i <= steps; i++) {
        int n = Math.max(first, (int) Math.round((double) i * most / steps));
        low.add(place(n, Math.max(0, plan.bounds().low(n)), most, highest));
        high.add(place(n, Math.min(highest, Math.max(0, plan.bounds().high(n))), most, highest));
      }
      shade(page, low, bottom, 0.88);
      shade(page, high, top, 0.74);
      axes(page, most, highest, xTitle);
      path(page, low);
      path(page, high);
      page.words(left + 0.30 * (right - left), top + 8, "high: stop", NAME);
      page.words(left + 0.76 * (right - left), bottom - 6, "low: stop", NAME);
      var end = place(most, plan.bounds().middle() * most, most, highest);
      double x = left + 0.55 * (right - left);
      double y = bottom - 0.55 * (bottom - end.y()) + 1;
      double half = 0.5 * Sheet.width("go on", NAME);
      page.shade(box(x - half, y - 3.6, x + half, y + 1.4), 1);
      page.words(x, y, "go on", NAME);
    }

    private Place place(double units, double total, double most, double highest) {
      return new Place(
          left + (right - left) * units / most, bottom - (bottom - top) * total / highest);
    }

    private static List<Place> box(double x1, double y1, double x2, double y2) {
      return List.of(new Place(x1, y1), new Place(x2, y1), new Place(x2, y2), new Place(x1, y2));
    }

    private void shade(Sheet.Builder page, List<Place> line, double edge, double grey) {
      var corners = new ArrayList<Place>();
      corners.add(new Place(line.get(0).x(), edge));
      corners.addAll(line);
      corners.add(new Place(line.get(line.size() - 1).x(), edge));
      page.shade(corners, grey);
    }

    private static void path(Sheet.Builder page, List<Place> line) {
      for (int i = 1; i < line.size(); i++) {
        var from = line.get(i - 1);
        var to = line.get(i);
        page.line(from.x(), from.y(), to.x(), to.y(), STOP);
      }
    }

    private void axes(Sheet.Builder page, int most, double highest, String xTitle) {
      page.line(left, bottom, right, bottom, FRAME).line(left, top, left, bottom, FRAME);
      var number = new Sheet.Type(2.7, false, Align.MIDDLE);
      int unitStep = step(most);
      for (int n = 0; n <= most; n += unitStep) {
        double x = place(n, 0, most, highest).x();
        page.line(x, bottom, x, bottom + 1, FRAME);
        page.words(x, bottom + 4.2, Integer.toString(n), number);
      }
      int totalStep = step(highest);
      for (int t = 0; t <= highest; t += totalStep) {
        double y = place(0, t, most, highest).y();
        page.line(left - 1, y, left, y, FRAME);
        page.words(left - 1.8, y + 0.9, Integer.toString(t), new Sheet.Type(2.7, false, Align.END));
      }
      page.words(
          (left + right) / 2, bottom + 8.2, xTitle, new Sheet.Type(2.9, false, Align.MIDDLE));
      page.words(left - 6, top - 2.2, "Total so far", new Sheet.Type(2.9, false, Align.START));
    }

    private static int step(double range) {
      for (int size = 1; ; size *= 10) {
        for (int part : new int[] {1, 2, 5}) {
          if (range / (size * part) <= 8) {
            return size * part;
          }
        }
      }
    }
  }
}
