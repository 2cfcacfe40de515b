package agro.trial.layout;

import agro.trial.PlotPlace;
import agro.trial.TrialDesign;
import agro.trial.TrialPlot;
import agro.units.Numbers;
import agro.working.Sheet;
import agro.working.Sheet.Align;
import agro.working.Sheet.Pen;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Draws the map of a laid-out trial on one page. */
final class FieldMap {

  private static final double MARGIN = 14;
  private static final double A4_SHORT = 210;
  private static final double A4_LONG = 297;
  private static final double BLOCK_NAMES = 17;
  private static final double SIDE = 22;
  private static final double COMPASS = 18;
  private static final double SMALLEST_TYPE = 2.1;

  private static final Pen THIN = new Pen(0.2, 0.35, false);
  private static final Pen MIDDLE = new Pen(0.45, 0, false);
  private static final Pen THICK = new Pen(0.8, 0, false);
  private static final Pen MEASURE = new Pen(0.15, 0.2, false);
  private static final Sheet.Type TITLE = new Sheet.Type(5.4, true, Align.START);
  private static final Sheet.Type TEXT = new Sheet.Type(3.1, false, Align.START);
  private static final Sheet.Type CENTRED = new Sheet.Type(3, false, Align.MIDDLE);

  private final TrialLayout layout;
  private final TrialGround ground;
  private final boolean upright;
  private final double paperWidth;
  private final double paperHeight;
  private final int rows;
  private final int columns;
  private final Sheet.Builder page;

  private FieldMap(TrialLayout layout) {
    this.layout = layout;
    this.ground = layout.plan().ground();
    this.rows = most(layout, true);
    this.columns = most(layout, false);
    this.upright = MapScale.width(ground, columns) <= 1.1 * MapScale.length(ground, rows);
    this.paperWidth = upright ? A4_SHORT : A4_LONG;
    this.paperHeight = upright ? A4_LONG : A4_SHORT;
    this.page = Sheet.a4("Map of " + layout.plan().name());
  }

  static Sheet draw(TrialLayout layout) {
    return new FieldMap(layout).sheet();
  }

  private static int most(TrialLayout layout, boolean rows) {
    return layout.plots().stream()
        .map(plot -> plot.place().orElseThrow())
        .mapToInt(place -> rows ? place.row() : place.column())
        .max()
        .orElseThrow();
  }

  private Sheet sheet() {
    double top = header();
    var legend = MapLegend.of(layout, upright ? 130 : 200);
    double legendHeight = legend.height() + 30;
    var scale =
        MapScale.fitting(
            ground,
            rows,
            columns,
            new double[] {
              MARGIN + BLOCK_NAMES,
              top,
              paperWidth - 2 * MARGIN - BLOCK_NAMES - SIDE,
              paperHeight - top - MARGIN - legendHeight
            });
    boolean lettered = !fits(scale);
    layout.plots().forEach(plot -> drawPlot(plot, scale, lettered ? legend : null));
    outlines(scale);
    measures(scale);
    compass();
    double below = scale.top() + scale.length() + 17;
    below = notes(below);
    if (lettered) {
      legend.draw(page, MARGIN, below + 1);
    }
    var drawn = page.build();
    return new Sheet(drawn.title(), paperWidth, paperHeight, drawn.marks());
  }

  private double header() {
    page.words(MARGIN, MARGIN + 4, layout.plan().name(), TITLE);
    double y = MARGIN + 10;
    double width = paperWidth - 2 * MARGIN - COMPASS;
    var plan = layout.plan();
    y =
        page.paragraph(
            MARGIN,
            y,
            "Map of the field. Design: "
                + plan.design().words()
                + "; "
                + plan.treatments().size()
                + " treatments, "
                + layout.plots().size()
                + " plots of "
                + layout.sizeWords()
                + ". Numbered "
                + plan.numbering().words()
                + ". Seed "
                + layout.seed()
                + ".",
            TEXT,
            width);
    return y + 6;
  }

  /** Whether all texts fit into their plots in letters that can be read. */
  private boolean fits(MapScale scale) {
    return layout.plots().stream()
        .map(plot -> unitsKept(layout.told(plot)))
        .distinct()
        .allMatch(text -> text.isEmpty() || linesOf(text, scale, SMALLEST_TYPE).isPresent());
  }

  /** Keeps a per cent sign on the line of its number. */
  private static String unitsKept(String text) {
    return text.replace(" %", "\u202f%");
  }

  private Optional<List<String>> linesOf(String text, MapScale scale, double size) {
    var type = new Sheet.Type(size, false, Align.MIDDLE);
    double width = scale.plotWidth() - 1;
    var lines = Sheet.wrap(text, type, width);
    boolean narrow = lines.stream().allMatch(line -> Sheet.width(line, type) <= width);
    double height = (lines.size() + 1.6) * 1.3 * size;
    return narrow && height <= scale.plotLength() ? Optional.of(lines) : Optional.empty();
  }

  private void drawPlot(TrialPlot plot, MapScale scale, MapLegend legend) {
    var place = plot.place().orElseThrow();
    double x = scale.x(place);
    double y = scale.y(place);
    boolean control =
        layout.plan().controls().contains(plot.treatment())
            && layout.plan().blinding() == Blinding.OPEN;
    if (control) {
      page.shade(rectangle(x, y, scale.plotWidth(), scale.plotLength()), 0.88);
    }
    page.box(x, y, scale.plotWidth(), scale.plotLength(), THIN);
    double middle = x + scale.plotWidth() / 2;
    double size = numberSize(scale);
    var told = unitsKept(layout.told(plot));
    var text = legend == null || told.isEmpty() ? told : legend.letter(layout.told(plot));
    if (text.isEmpty()) {
      page.words(
          middle,
          y + scale.plotLength() / 2 + size / 3,
          plot.name(),
          new Sheet.Type(size, true, Align.MIDDLE));
      return;
    }
    page.words(middle, y + 1.15 * size, plot.name(), new Sheet.Type(size, true, Align.MIDDLE));
    double textSize = textSize(text, scale, size);
    var lines =
        Sheet.wrap(text, new Sheet.Type(textSize, false, Align.MIDDLE), scale.plotWidth() - 1);
    double room = scale.plotLength() - 1.3 * size;
    double base = y + 1.3 * size + (room - 1.3 * textSize * lines.size()) / 2 + textSize;
    for (var line : lines) {
      page.words(middle, base, line, new Sheet.Type(textSize, false, Align.MIDDLE));
      base += 1.3 * textSize;
    }
  }

  private double numberSize(MapScale scale) {
    int longest = layout.plots().stream().mapToInt(plot -> plot.name().length()).max().orElse(1);
    return Math.min(
        4, Math.min(scale.plotLength() / 2.6, (scale.plotWidth() - 1) / (0.75 * longest)));
  }

  private double textSize(String text, MapScale scale, double most) {
    for (double size = Math.min(3.4, most); size > SMALLEST_TYPE; size -= 0.2) {
      if (linesOf(text, scale, size).isPresent()) {
        return size;
      }
    }
    return Math.min(SMALLEST_TYPE, most);
  }

  private static List<Sheet.Place> rectangle(double x, double y, double width, double height) {
    return List.of(
        new Sheet.Place(x, y),
        new Sheet.Place(x + width, y),
        new Sheet.Place(x + width, y + height),
        new Sheet.Place(x, y + height));
  }

  private void outlines(MapScale scale) {
    Map<String, List<TrialPlot>> mainPlots = new LinkedHashMap<>();
    Map<String, List<TrialPlot>> blocks = new LinkedHashMap<>();
    for (var plot : layout.plots()) {
      if (!plot.mainPlot().isEmpty()) {
        mainPlots
            .computeIfAbsent(plot.block() + "/" + plot.mainPlot(), key -> new ArrayList<>())
            .add(plot);
      }
      blocks.computeIfAbsent(plot.block(), key -> new ArrayList<>()).add(plot);
    }
    mainPlots.values().forEach(plots -> outline(plots, scale, MIDDLE, 0));
    blocks.forEach(
        (block, plots) -> {
          outline(plots, scale, THICK, 0.7);
          if (!block.isEmpty()) {
            blockName(block, plots, scale);
          }
        });
  }

  private void outline(List<TrialPlot> plots, MapScale scale, Pen pen, double outside) {
    double left = Double.MAX_VALUE;
    double top = Double.MAX_VALUE;
    double right = 0;
    double bottom = 0;
    for (var plot : plots) {
      var place = plot.place().orElseThrow();
      left = Math.min(left, scale.x(place));
      top = Math.min(top, scale.y(place));
      right = Math.max(right, scale.x(place) + scale.plotWidth());
      bottom = Math.max(bottom, scale.y(place) + scale.plotLength());
    }
    page.box(
        left - outside, top - outside, right - left + 2 * outside, bottom - top + 2 * outside, pen);
  }

  private void blockName(String block, List<TrialPlot> plots, MapScale scale) {
    int first =
        plots.stream().mapToInt(plot -> plot.place().orElseThrow().column()).min().orElse(1);
    int top = plots.stream().mapToInt(plot -> plot.place().orElseThrow().row()).min().orElse(1);
    int bottom = plots.stream().mapToInt(plot -> plot.place().orElseThrow().row()).max().orElse(1);
    if (first == 1) {
      double y =
          (scale.y(new PlotPlace(top, 1)) + scale.y(new PlotPlace(bottom, 1)) + scale.plotLength())
              / 2;
      page.words(scale.left() - 2.5, y + 1, "Block " + block, new Sheet.Type(3.2, true, Align.END));
    } else {
      var corner = new PlotPlace(top, first);
      page.words(
          scale.x(corner),
          scale.y(corner) - 1.4,
          "Block " + block,
          new Sheet.Type(2.6, true, Align.START));
    }
  }

  private void measures(MapScale scale) {
    double y = scale.top() + scale.length() + 4;
    across(
        scale.left(), scale.left() + scale.plotWidth(), y, metres(ground.plotWidth().inBaseUnit()));
    across(
        scale.left(), scale.left() + scale.width(), y + 6, metres(MapScale.width(ground, columns)));
    double x = scale.left() + scale.width() + 4;
    down(
        x, scale.top(), scale.top() + scale.plotLength(), metres(ground.plotLength().inBaseUnit()));
    double path = ground.pathBetweenRows().inBaseUnit();
    if (rows > 1 && path > 0) {
      double start = scale.top() + scale.plotLength();
      page.words(
          x + 1.5,
          start + scale.scale() * path / 2 + 0.8,
          "path " + metres(path),
          new Sheet.Type(2.4, false, Align.START));
    }
    double bottom = scale.top() + scale.length();
    if (rows > 1) {
      page.line(x, scale.top() + scale.plotLength(), x, bottom, new Pen(0.15, 0.2, true));
      tick(x, bottom, false);
      page.words(
          x + 1.5,
          bottom,
          metres(MapScale.length(ground, rows)) + " in all",
          new Sheet.Type(2.6, false, Align.START));
    }
  }

  private void across(double from, double to, double y, String text) {
    page.line(from, y, to, y, MEASURE);
    tick(from, y, true);
    tick(to, y, true);
    page.words((from + to) / 2, y + 3.2, text, CENTRED);
  }

  private void down(double x, double from, double to, String text) {
    page.line(x, from, x, to, MEASURE);
    tick(x, from, false);
    tick(x, to, false);
    page.words(x + 1.5, (from + to) / 2 + 1, text, new Sheet.Type(2.8, false, Align.START));
  }

  private void tick(double x, double y, boolean upright) {
    if (upright) {
      page.line(x, y - 1.2, x, y + 1.2, MEASURE);
    } else {
      page.line(x - 1.2, y, x + 1.2, y, MEASURE);
    }
  }

  private static String metres(double value) {
    return Numbers.plain(Math.round(value * 100) / 100.0) + " m";
  }

  private void compass() {
    double x = paperWidth - MARGIN - 7;
    double y = MARGIN + 6;
    double turn = Math.toRadians(-ground.top().degrees());
    double dx = Math.sin(turn);
    double dy = -Math.cos(turn);
    double length = 5.5;
    page.line(x - length * dx, y - length * dy, x + length * dx, y + length * dy, MIDDLE);
    page.shade(
        List.of(
            new Sheet.Place(x + length * dx, y + length * dy),
            new Sheet.Place(x + 2 * dx - 1.6 * dy, y + 2 * dy + 1.6 * dx),
            new Sheet.Place(x + 2 * dx + 1.6 * dy, y + 2 * dy - 1.6 * dx)),
        0);
    page.words(
        x + (length + 2.4) * dx,
        y + (length + 2.4) * dy + 1.1,
        "N",
        new Sheet.Type(3.2, true, Align.MIDDLE));
  }

  private double notes(double y) {
    var sentences = new ArrayList<String>();
    ground
        .fallsTo()
        .ifPresent(
            down ->
                sentences.add(
                    "Uphill is up: the slope falls to the "
                        + down.words()
                        + (layout.plan().design() instanceof TrialDesign.CompleteBlocks
                                || layout.plan().design() instanceof TrialDesign.SplitPlot
                            ? ", and blocks lie across it."
                            : ".")));
    if (!ground.note().isBlank()) {
      sentences.add(ground.note().endsWith(".") ? ground.note() : ground.note() + ".");
    }
    if (layout.plan().blinding() != Blinding.OPEN) {
      sentences.add("Treatments are hidden; the key is a page of its own.");
    } else if (!layout.plan().controls().isEmpty()) {
      sentences.add("Grey: " + String.join("; ", layout.plan().controls()) + " (control).");
    }
    double base = y;
    if (!sentences.isEmpty()) {
      base = page.paragraph(MARGIN, y, String.join(" ", sentences), TEXT, paperWidth - 2 * MARGIN);
    }
    return base;
  }
}
