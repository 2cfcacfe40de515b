package agro.trial.series;

import agro.source.Reference;
import agro.stats.linear.VarianceRow;
import agro.stats.mixed.MixedModel;
import agro.stats.mixed.VarianceComponent;
import agro.working.Cell;
import agro.working.Presentation;
import agro.working.ResultTable;
import agro.working.ResultTable.Column;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** Trials of several sites in print. */
final class CombinedPrint {

  private CombinedPrint() {}

  static Presentation of(CombinedTrials result) {
    var page =
        Presentation.titled(result.figures().heading() + " over sites and years")
            .fact("Sites and years", String.join(", ", result.figures().environments()))
            .fact("Plots", Integer.toString(result.figures().figures().size()))
            .fact("Equal error variances", result.variances().sentence())
            .table(singleTable(result))
            .table(siteTable(result));
    result.fixed().ifPresent(fixed -> page.table(fixedTable(result, fixed)));
    result
        .fixed()
        .flatMap(SitesAsFixed::means)
        .ifPresent(
            means ->
                page.table(
                    means.table("Treatment means over these sites", result.figures().unit())));
    page.fact("Treatments, sites random", result.random().treatments().sentence())
        .table(varianceTable(result.random().variances(), residual(result)))
        .table(meansTable(result));
    result.advice().forEach(page::paragraph);
    return page.sources(sources()).build();
  }

  /** Without an error of its own, treatment by site is what is left. */
  private static String residual(CombinedTrials result) {
    return result.fixed().isPresent() ? "plots (residual)" : "treatment by site (residual)";
  }

  private static List<Reference> sources() {
    var sources = new ArrayList<Reference>();
    sources.add(SeriesSources.COCHRAN_COX_1957);
    sources.add(SeriesSources.GOMEZ_GOMEZ_1984);
    sources.add(SeriesSources.POOLED_VARIANCES);
    sources.addAll(MixedModel.sources());
    return sources;
  }

  static ResultTable meansTable(CombinedTrials result) {
    var table =
        result
            .random()
            .means()
            .table("Treatment means for sites like these", result.figures().unit());
    for (var note : result.random().notes()) {
      table = table.withNote(note);
    }
    return table;
  }

  private static ResultTable singleTable(CombinedTrials result) {
    double step = Math.sqrt(result.random().variances().get(0).estimate());
    int decimals = PlainFigure.decimals(step);
    var rows = new ArrayList<List<Cell>>();
    for (var trial : result.trials()) {
      rows.add(
          List.of(
              Cell.text(trial.site()),
              Cell.number(trial.treatments(), 0),
              trial.blocks() == 0 ? Cell.text("none") : Cell.number(trial.blocks(), 0),
              Cell.number(trial.plots(), 0),
              Cell.number(trial.mean(), decimals),
              known(trial.errorVariance()),
              Cell.number(trial.errorDegreesOfFreedom(), 0),
              Cell.text(trial.test().map(test -> test.sentence()).orElse("no test"))));
    }
    var table =
        ResultTable.of(
            "The trials one by one",
            List.of(
                Column.of("Site and year"),
                Column.of("Treatments"),
                Column.of("Blocks"),
                Column.of("Plots"),
                Column.of("Mean", result.figures().unit()),
                Column.of("Error mean square"),
                Column.of("Error df"),
                Column.of("Treatments tested")),
            rows);
    return withNotes(table, PlotFigures.joined(result.variances().notes(), result.notes()));
  }

  private static Cell known(OptionalDouble value) {
    return value.isPresent()
        ? Cell.number(value.getAsDouble(), PlainFigure.decimals(value.getAsDouble()))
        : Cell.notKnown();
  }

  private static ResultTable withNotes(ResultTable table, List<String> notes) {
    var noted = table;
    for (var note : notes) {
      noted = noted.withNote(note.endsWith(".") ? note : note + ".");
    }
    return noted;
  }

  static ResultTable siteTable(CombinedTrials result) {
    var columns = new ArrayList<Column>();
    columns.add(Column.of("Treatment"));
    result.trials().forEach(trial -> columns.add(Column.of(trial.site(), result.figures().unit())));
    int decimals = PlainFigure.decimals(result.random().means().smallestErrorOfDifference());
    var rows = new ArrayList<List<Cell>>();
    for (var mean : result.random().means().means()) {
      var cells = new ArrayList<Cell>();
      cells.add(Cell.text(mean.treatment()));
      for (var trial : result.trials()) {
        cells.add(
            trial.means().stream()
                .filter(each -> each.treatment().equals(mean.treatment()))
                .findFirst()
                .map(each -> Cell.number(each.mean(), decimals))
                .orElse(Cell.text("not tested")));
      }
      rows.add(cells);
    }
    return ResultTable.of("Treatment means at each site", columns, rows);
  }

  private static ResultTable fixedTable(CombinedTrials result, SitesAsFixed fixed) {
    var table = analysisTable("Analysis of variance, sites fixed", fixed.rows());
    if (result.settings().weights() != SiteWeights.EQUAL) {
      table = table.withNote("Weighted: " + result.settings().weights().words() + ".");
    }
    return withNotes(table, fixed.notes());
  }

  static ResultTable analysisTable(String title, List<VarianceRow> lines) {
    var rows = new ArrayList<List<Cell>>();
    for (var line : lines) {
      rows.add(
          List.of(
              Cell.text(line.source()),
              Cell.number(line.degreesOfFreedom(), 0),
              known(OptionalDouble.of(line.sumOfSquares())),
              known(line.meanSquare()),
              Cell.text(line.test().map(test -> test.sentence()).orElse(line.note()))));
    }
    return ResultTable.of(
        title,
        List.of(
            Column.of("Source"),
            Column.of("df"),
            Column.of("Sum of squares"),
            Column.of("Mean square"),
            Column.of("Test")),
        rows);
  }

  static ResultTable varianceTable(List<VarianceComponent> components, String residual) {
    var rows = new ArrayList<List<Cell>>();
    for (var each : components) {
      rows.add(
          List.of(
              Cell.text(each.name().equals("residual") ? residual : each.name()),
              Cell.number(each.levels(), 0),
              known(OptionalDouble.of(each.estimate())),
              known(OptionalDouble.of(each.standardDeviation()))));
    }
    return ResultTable.of(
        "Variances by restricted likelihood",
        List.of(
            Column.of("Of"),
            Column.of("Levels"),
            Column.of("Variance"),
            Column.of("Standard deviation")),
        rows);
  }
}
