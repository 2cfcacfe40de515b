package agro.trial.layout;

import agro.trial.TrialPlot;
import agro.working.Sheet;
import agro.working.Sheet.Align;
import agro.working.Sheet.Pen;
import java.util.ArrayList;
import java.util.List;

/** Draws the pages of a field sheet. */
final class FieldSheetPages {

  private static final double LEFT = 14;
  private static final double RIGHT = 196;
  private static final double FIRST_LINE = 52;
  private static final double LAST_LINE = 280;
  private static final double LINE = 7.6;
  private static final double PLOT = 15;
  private static final double BLOCK = 14;
  private static final double PLANT = 12;
  private static final double REMARKS = 26;

  private static final Pen THIN = new Pen(0.15, 0.5, false);
  private static final Pen THICK = new Pen(0.45, 0, false);
  private static final Sheet.Type SMALL = new Sheet.Type(2.9, false, Align.START);
  private static final Sheet.Type TEXT = new Sheet.Type(3.2, false, Align.START);
  private static final Sheet.Type BOLD = new Sheet.Type(3.6, true, Align.START);

  private record Entry(TrialPlot plot, int plant, boolean newRow) {}

  private record Column(String heading, double width) {}

  private final TrialLayout layout;
  private final int subSamples;
  private final List<Column> columns = new ArrayList<>();

  FieldSheetPages(TrialLayout layout, int subSamples, List<String> variables) {
    this.layout = layout;
    this.subSamples = subSamples;
    columns.add(new Column("Plot", PLOT));
    if (layout.plots().stream().anyMatch(plot -> !plot.block().isEmpty())) {
      columns.add(new Column("Block", BLOCK));
    }
    boolean told = layout.plan().blinding() != Blinding.PLOT_NUMBERS;
    double open = layout.plan().blinding() == Blinding.OPEN ? 38 : 16;
    if (told) {
      columns.add(
          new Column(layout.plan().blinding() == Blinding.OPEN ? "Treatment" : "Code", open));
    }
    if (subSamples > 1) {
      columns.add(new Column("Plant", PLANT));
    }
    double used = columns.stream().mapToDouble(Column::width).sum();
    double remarks = variables.size() > 5 ? 0 : REMARKS;
    double each = (RIGHT - LEFT - used - remarks) / variables.size();
    variables.forEach(variable -> columns.add(new Column(variable, each)));
    if (remarks > 0) {
      columns.add(new Column("Remarks", remarks));
    }
  }

  List<Sheet> draw() {
    var entries = entries();
    int perPage = (int) ((LAST_LINE - FIRST_LINE) / LINE);
    // A plot is not torn over two pages when its sub-samples fit on one.
    int whole = subSamples <= perPage ? perPage / subSamples * subSamples : perPage;
    int pages = (entries.size() + whole - 1) / whole;
    var sheets = new ArrayList<Sheet>();
    for (int page = 0; page < pages; page++) {
      var some = entries.subList(page * whole, Math.min(entries.size(), (page + 1) * whole));
      sheets.add(page(some, page + 1, pages));
    }
    return List.copyOf(sheets);
  }

  private List<Entry> entries() {
    var entries = new ArrayList<Entry>();
    int row = 0;
    for (var plot : layout.plots()) {
      int here = plot.place().orElseThrow().row();
      for (int plant = 1; plant <= subSamples; plant++) {
        entries.add(new Entry(plot, plant, here != row && plant == 1));
      }
      row = here;
    }
    return entries;
  }

  private Sheet page(List<Entry> entries, int number, int pages) {
    var page = Sheet.a4("Field sheet of " + layout.plan().name() + ", page " + number);
    header(page, number, pages);
    headings(page);
    double y = FIRST_LINE;
    for (var entry : entries) {
      line(page, entry, y);
      y += LINE;
    }
    page.line(LEFT, y, RIGHT, y, THICK);
    double x = LEFT;
    for (var column : columns) {
      page.line(x, FIRST_LINE - 9, x, y, THIN);
      x += column.width();
    }
    page.line(RIGHT, FIRST_LINE - 9, RIGHT, y, THIN);
    page.paragraph(
        LEFT,
        y + 4.5,
        "Arrows show the way to walk: along a row of plots and back along the next one. Write a"
            + " dash where a plot could not be assessed, never a 0.",
        SMALL,
        RIGHT - LEFT);
    return page.build();
  }

  private void header(Sheet.Builder page, int number, int pages) {
    page.words(LEFT, 17, layout.plan().name(), new Sheet.Type(5.2, true, Align.START));
    page.words(RIGHT, 17, "page " + number + " of " + pages, new Sheet.Type(3.2, false, Align.END));
    page.paragraph(
        LEFT,
        23,
        "Field sheet. Design: "
            + layout.plan().design().words()
            + "; "
            + layout.plots().size()
            + " plots. Seed "
            + layout.seed()
            + ".",
        SMALL,
        RIGHT - LEFT);
    page.words(LEFT, 37, "Date", TEXT);
    page.line(LEFT + 9, 37.8, LEFT + 48, 37.8, THIN);
    page.words(LEFT + 53, 37, "Assessed by", TEXT);
    page.line(LEFT + 75, 37.8, LEFT + 118, 37.8, THIN);
    page.words(LEFT + 123, 37, "Weather", TEXT);
    page.line(LEFT + 139, 37.8, RIGHT, 37.8, THIN);
  }

  private void headings(Sheet.Builder page) {
    page.line(LEFT, FIRST_LINE - 9, RIGHT, FIRST_LINE - 9, THICK);
    double x = LEFT;
    for (var column : columns) {
      var type = new Sheet.Type(3, true, Align.START);
      var lines = Sheet.wrap(column.heading(), type, column.width() - 1.6);
      double base = FIRST_LINE - 2 - 3.4 * (Math.min(2, lines.size()) - 1);
      for (int i = 0; i < Math.min(2, lines.size()); i++) {
        page.words(x + 1, base + 3.4 * i, lines.get(i), type);
      }
      x += column.width();
    }
    page.line(LEFT, FIRST_LINE, RIGHT, FIRST_LINE, THICK);
  }

  private void line(Sheet.Builder page, Entry entry, double y) {
    boolean first = entry.plant() == 1;
    page.line(first ? LEFT : LEFT + PLOT, y, RIGHT, y, entry.newRow() ? THICK : THIN);
    double x = LEFT;
    double base = y + LINE - 2.4;
    for (var column : columns) {
      switch (column.heading()) {
        case "Plot" -> {
          if (first) {
            page.words(x + 1, base, entry.plot().name(), BOLD);
            arrow(page, entry, x + PLOT - 1.5, base);
          }
        }
        case "Block" -> words(page, x, base, first ? entry.plot().block() : "", column);
        case "Treatment", "Code" ->
            words(page, x, base, first ? layout.told(entry.plot()) : "", column);
        case "Plant" -> words(page, x, base, Integer.toString(entry.plant()), column);
        default -> {}
      }
      x += column.width();
    }
  }

  private static void arrow(Sheet.Builder page, Entry entry, double x, double base) {
    boolean fromTheLeft = WalkingOrder.fromTheLeft(entry.plot().place().orElseThrow().row());
    page.words(x, base, fromTheLeft ? "→" : "←", new Sheet.Type(3.2, false, Align.END));
  }

  private static void words(Sheet.Builder page, double x, double base, String text, Column column) {
    double size = 3.2;
    while (size > 2
        && Sheet.width(text, new Sheet.Type(size, false, Align.START)) > column.width() - 1.6) {
      size -= 0.2;
    }
    var type = new Sheet.Type(size, false, Align.START);
    var lines = Sheet.wrap(text, type, column.width() - 1.6);
    double start = base - (lines.size() > 1 ? 1.7 : 0);
    for (int i = 0; i < Math.min(2, lines.size()); i++) {
      page.words(x + 1, start + 1.15 * size * i, lines.get(i), type);
    }
  }
}
