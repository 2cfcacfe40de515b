package agro.course.sheet;

import agro.sampling.sequential.SequentialPlan;
import agro.working.Sheet;
import agro.working.Sheet.Align;
import agro.working.Wording;
import java.util.ArrayList;
import java.util.List;

/**
 * Boxes to write counts and running totals in, with the limits of a plan beside them.
 *
 * @param paper the paper
 * @param words language
 */
record CountBoxes(StopLinePaper paper, Wording words) {

  private static final int GROUPS = 4;
  private static final int MOST_ROWS = 15;
  private static final double LOWEST = 273;
  private static final double HIGHEST_ROW = 7;
  private static final double GAP = 3;
  private static final Sheet.Type HEAD = new Sheet.Type(2.4, true, Align.MIDDLE);
  private static final double[] WITHOUT_LIMITS = {0, 0.26, 0.62, 1};
  private static final double[] WITH_LIMITS = {0, 0.15, 0.33, 0.54, 0.77, 1};

  /** Units between two totals: 1, or more when the paper is longer than the boxes. */
  private int batch() {
    return (paper.mostUnits() + GROUPS * MOST_ROWS - 1) / (GROUPS * MOST_ROWS);
  }

  private List<Integer> ends() {
    var ends = new ArrayList<Integer>();
    for (int end = batch(); end < paper.mostUnits(); end += batch()) {
      ends.add(end);
    }
    ends.add(paper.mostUnits());
    return ends;
  }

  void draw(Sheet.Builder page, double top) {
    var ends = ends();
    int rows = (ends.size() + GROUPS - 1) / GROUPS;
    double width = (PaperPage.RIGHT - PaperPage.LEFT - (GROUPS - 1) * GAP) / GROUPS;
    double head = top + 5.4;
    double high = Math.min(HIGHEST_ROW, (LOWEST - head) / rows);
    for (int group = 0; group < GROUPS && group * rows < ends.size(); group++) {
      double x = PaperPage.LEFT + group * (width + GAP);
      int to = Math.min(ends.size(), (group + 1) * rows);
      group(page, ends, group * rows, to, new Frame(x, head, width, high));
    }
  }

  private record Frame(double x, double top, double width, double rowHeight) {
    double at(double share) {
      return x + width * share;
    }
  }

  private void group(Sheet.Builder page, List<Integer> ends, int from, int to, Frame frame) {
    double[] edges = paper.plan().isPresent() ? WITH_LIMITS : WITHOUT_LIMITS;
    var heads = new ArrayList<>(List.of("box.number", "box.count", "box.total"));
    if (paper.plan().isPresent()) {
      heads.addAll(List.of("box.low", "box.high"));
    }
    for (int i = 0; i < heads.size(); i++) {
      double middle = frame.at((edges[i] + edges[i + 1]) / 2);
      page.words(middle, frame.top - 1.4, words.say(heads.get(i)), HEAD);
    }
    double size = Math.min(3, 0.66 * frame.rowHeight);
    var type = new Sheet.Type(size, false, Align.MIDDLE);
    for (int row = from; row < to; row++) {
      double y = frame.top + (row - from) * frame.rowHeight;
      var cells = cells(row == 0 ? 1 : ends.get(row - 1) + 1, ends.get(row));
      for (int i = 0; i < cells.size(); i++) {
        double base = y + 0.5 * frame.rowHeight + 0.35 * size;
        boolean isLong = cells.get(i).length() > 5;
        page.words(
            frame.at((edges[i] + edges[i + 1]) / 2),
            base,
            cells.get(i),
            isLong ? new Sheet.Type(0.72 * size, false, Align.MIDDLE) : type);
      }
      page.line(
          frame.x,
          y + frame.rowHeight,
          frame.x + frame.width,
          y + frame.rowHeight,
          PaperPage.MIDDLE);
    }
    double bottom = frame.top + (to - from) * frame.rowHeight;
    for (int i = 1; i < edges.length - 1; i++) {
      page.line(frame.at(edges[i]), frame.top, frame.at(edges[i]), bottom, PaperPage.MIDDLE);
    }
    page.box(frame.x, frame.top, frame.width, bottom - frame.top, PaperPage.FRAME);
  }

  private List<String> cells(int begin, int end) {
    var cells = new ArrayList<String>();
    cells.add(begin == end ? Integer.toString(end) : begin + "–" + end);
    cells.add("");
    cells.add("");
    paper.plan().ifPresent(plan -> cells.addAll(limits(plan, end)));
    return cells;
  }

  private static List<String> limits(SequentialPlan plan, int units) {
    if (units > plan.mostUnits().orElse(units)) {
      return List.of("–", "–");
    }
    return List.of(
        plan.lastLow(units) < 0 ? "–" : Long.toString(plan.lastLow(units)),
        plan.firstHigh(units) == Long.MAX_VALUE ? "–" : Long.toString(plan.firstHigh(units)));
  }
}
