package agro.trial.layout;

import agro.working.Cell;
import agro.working.Sheet;
import agro.working.Sheet.Align;
import agro.working.Sheet.Pen;
import java.util.ArrayList;
import java.util.List;

/** Draws the key of a layout on pages of its own. */
final class KeySheet {

  private static final double LEFT = 18;
  private static final double RIGHT = 192;
  private static final double TREATMENT = 38;
  private static final double PLOTS = 105;
  private static final double BOTTOM = 284;
  private static final Sheet.Type BOLD = new Sheet.Type(3.4, true, Align.START);
  private static final Sheet.Type TEXT = new Sheet.Type(3.4, false, Align.START);

  private KeySheet() {}

  static List<Sheet> draw(TrialLayout layout) {
    var rows = layout.key().rows();
    var sheets = new ArrayList<Sheet>();
    int next = 0;
    while (next < rows.size()) {
      var page = Sheet.a4("Key of " + layout.plan().name() + ", page " + (sheets.size() + 1));
      double y = heading(page, layout);
      int first = next;
      while (next < rows.size() && (next == first || y + height(rows.get(next)) < BOTTOM)) {
        y = row(page, rows.get(next), y);
        next++;
      }
      sheets.add(page.build());
    }
    return List.copyOf(sheets);
  }

  private static double heading(Sheet.Builder page, TrialLayout layout) {
    page.words(LEFT, 24, "Key of " + layout.plan().name(), new Sheet.Type(5.4, true, Align.START));
    double y =
        page.paragraph(
            LEFT,
            32,
            "Keep this page away from whoever scores until all scores are written down. Seed "
                + layout.seed()
                + ".",
            TEXT,
            RIGHT - LEFT);
    y += 6;
    page.words(LEFT, y, "Code", BOLD);
    page.words(TREATMENT, y, "Treatment", BOLD);
    page.words(PLOTS, y, "Plots", BOLD);
    page.line(LEFT, y + 1.8, RIGHT, y + 1.8, new Pen(0.4, 0, false));
    return y + 7;
  }

  private static double height(List<Cell> row) {
    int lines =
        Math.max(
            Sheet.wrap(row.get(1).printed(), TEXT, PLOTS - TREATMENT - 4).size(),
            Sheet.wrap(row.get(2).printed(), TEXT, RIGHT - PLOTS).size());
    return 1.32 * TEXT.sizeMm() * lines + 2;
  }

  private static double row(Sheet.Builder page, List<Cell> row, double y) {
    page.words(LEFT, y, row.get(0).printed(), BOLD);
    page.paragraph(TREATMENT, y, row.get(1).printed(), TEXT, PLOTS - TREATMENT - 4);
    page.paragraph(PLOTS, y, row.get(2).printed(), TEXT, RIGHT - PLOTS);
    double next = y + height(row);
    page.line(LEFT, next - 4.6, RIGHT, next - 4.6, new Pen(0.15, 0.6, false));
    return next;
  }
}
