package agro.trial.series;

import agro.ReferenceTable;
import agro.trial.Assessment;
import agro.trial.FieldTrial;
import agro.trial.TrialPlot;
import agro.trial.TrialResponse;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/** Plots for the tests of this package. */
final class SeriesData {

  static final LocalDate START = LocalDate.of(2026, 5, 1);

  private SeriesData() {}

  /** Values of a table of computed figures by case and name. */
  static Map<String, Double> computed(String file) {
    Map<String, Double> values = new HashMap<>();
    for (var row : ReferenceTable.read(SeriesData.class, file)) {
      values.put(
          row.getField("case") + "/" + row.getField("name"), ReferenceTable.number(row, "value"));
    }
    return values;
  }

  static TrialPlot plot(String site, String block, String name, String treatment) {
    return new TrialPlot(
        site,
        OptionalInt.empty(),
        block,
        "",
        name,
        Optional.empty(),
        Map.of(TrialPlot.TREATMENT, treatment),
        Optional.empty());
  }

  /** Barley yields: years as blocks of the sites, or sites in their years as places. */
  static List<PlotFigure> barley(boolean yearsAsBlocks) {
    var figures = new ArrayList<PlotFigure>();
    for (var row : ReferenceTable.read(SeriesData.class, "barley.csv")) {
      var year = row.getField("year");
      var variety = row.getField("variety");
      var plot = plot(row.getField("site"), yearsAsBlocks ? year : "", variety + year, variety);
      figures.add(
          new PlotFigure(
              yearsAsBlocks ? plot : plot.inSite(plot.site(), Integer.parseInt(year)),
              ReferenceTable.number(row, "yield")));
    }
    return figures;
  }

  static PlotFigures yields(List<PlotFigure> figures) {
    return new PlotFigures("yield", "bu/acre", figures, List.of());
  }

  /** One score for each plot. */
  static FieldTrial scores(List<TrialPlot> plots, int[] scores, int lowest, int highest) {
    var lines = new ArrayList<Assessment>();
    for (int i = 0; i < scores.length; i++) {
      lines.add(Assessment.of(plots.get(i), START, "damage", scores[i]));
    }
    return FieldTrial.of("scored", List.of(TrialResponse.score("damage", lowest, highest)), lines);
  }
}
