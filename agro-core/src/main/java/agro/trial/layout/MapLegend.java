package agro.trial.layout;

import agro.working.Sheet;
import agro.working.Sheet.Align;
import java.util.LinkedHashMap;
import java.util.Map;

/** Letters that stand for treatments where plots on the map are too small for words. */
final class MapLegend {

  private static final Sheet.Type TYPE = new Sheet.Type(3, false, Align.START);
  private static final double LINE = 4.2;
  private static final int LETTERS = 26;

  private final Map<String, String> letters = new LinkedHashMap<>();
  private final double width;

  private MapLegend(double width) {
    this.width = width;
  }

  static MapLegend of(TrialLayout layout, double width) {
    var legend = new MapLegend(width);
    if (layout.plan().blinding() == Blinding.OPEN) {
      layout
          .plan()
          .treatments()
          .forEach(treatment -> legend.letters.put(treatment, letter(legend.letters.size())));
    }
    return legend;
  }

  private static String letter(int index) {
    var last = String.valueOf((char) ('A' + index % LETTERS));
    return index < LETTERS ? last : letter(index / LETTERS - 1) + last;
  }

  String letter(String treatment) {
    return letters.getOrDefault(treatment, treatment);
  }

  double height() {
    int rows = (letters.size() + 1) / 2;
    return LINE * rows;
  }

  void draw(Sheet.Builder page, double x, double y) {
    int half = (letters.size() + 1) / 2;
    int i = 0;
    for (var entry : letters.entrySet()) {
      double column = i < half ? x : x + width / 2;
      double base = y + LINE * (i % half) + LINE;
      page.words(column, base, entry.getValue(), new Sheet.Type(3, true, Align.START));
      page.words(column + 6, base, entry.getKey(), TYPE);
      i++;
    }
  }
}
