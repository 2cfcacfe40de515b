package agro.trial.analysis;

import agro.working.Cell;
import agro.working.ResultTable;
import agro.working.ResultTable.Column;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** Tables of an analysed trial: checks, analysis of variance, values by block. */
final class AnalysisTables {

  private AnalysisTables() {}

  static ResultTable checks(AnalysedTrial trial) {
    var rows = new ArrayList<List<Cell>>();
    for (var check : trial.checks()) {
      rows.add(
          List.of(Cell.text(check.name()), Cell.text(check.sentence()), Cell.text(check.words())));
    }
    var columns = List.of(Column.of("Assumption"), Column.of("Test"), Column.of("What it says"));
    return ResultTable.of("Assumptions", columns, rows);
  }

  static Optional<ResultTable> effects(AnalysedTrial trial) {
    var route = trial.subject().route();
    if (route == AnalysisRoute.RANKS || route == AnalysisRoute.WELCH) {
      return Optional.empty();
    }
    boolean strata = trial.effects().stream().anyMatch(row -> !row.stratum().isEmpty());
    boolean squares = trial.effects().stream().anyMatch(row -> row.sumOfSquares().isPresent());
    boolean notes = trial.effects().stream().anyMatch(row -> !row.note().isEmpty());
    boolean deviance = route.isGeneralisedLinear();
    var columns = new ArrayList<Column>();
    if (strata) {
      columns.add(Column.of("Stratum"));
    }
    columns.add(Column.of("Source"));
    columns.add(Column.of("df"));
    if (squares) {
      columns.add(Column.of(deviance ? "Deviance" : "Sum of squares"));
      if (!deviance) {
        columns.add(Column.of("Mean square"));
      }
    }
    columns.add(Column.of(statistic(trial)));
    columns.add(Column.of("P"));
    if (notes) {
      columns.add(Column.of("Note"));
    }
    var rows = new ArrayList<List<Cell>>();
    int decimals =
        TableNumbers.decimals(
            trial.effects().stream().flatMapToDouble(row -> row.sumOfSquares().stream()));
    for (var row : trial.effects()) {
      var cells = new ArrayList<Cell>();
      if (strata) {
        cells.add(Cell.text(row.stratum()));
      }
      cells.add(Cell.text(row.source()));
      cells.add(degrees(row.degreesOfFreedom()));
      if (squares) {
        cells.add(TableNumbers.cell(row.sumOfSquares(), decimals));
        if (!deviance) {
          cells.add(TableNumbers.cell(row.meanSquare(), decimals));
        }
      }
      addTest(cells, row, notes);
      rows.add(cells);
    }
    return Optional.of(
        ResultTable.of(
            (deviance ? "Analysis of deviance of " : "Analysis of variance of ")
                + trial.subject().title(),
            columns,
            rows));
  }

  private static String statistic(AnalysedTrial trial) {
    return trial.effects().stream()
        .flatMap(row -> row.test().stream())
        .map(EffectTest::symbol)
        .findFirst()
        .orElse("F");
  }

  private static Cell degrees(double df) {
    return Cell.number(df, df == Math.rint(df) ? 0 : 1);
  }

  private static void addTest(List<Cell> cells, EffectRow row, boolean notes) {
    if (row.test().isPresent()) {
      cells.add(TableNumbers.cell(row.test().get().statistic(), 2));
      cells.add(TableNumbers.chance(row.test().get().pValue()));
    } else {
      cells.add(Cell.text(""));
      cells.add(Cell.text(""));
    }
    if (notes) {
      cells.add(Cell.text(row.note()));
    }
  }

  static ResultTable blocks(AnalysedTrial trial) {
    var plots = trial.plots();
    boolean blocked = plots.stream().noneMatch(plot -> plot.plot().block().isEmpty());
    int decimals = TableNumbers.needed(plots.stream().mapToDouble(PlotResidual::value));
    var byTreatment = new LinkedHashMap<String, Map<String, List<Double>>>();
    trial
        .treatmentMeans()
        .means()
        .forEach(mean -> byTreatment.put(mean.label(), new LinkedHashMap<>()));
    var headings = new LinkedHashSet<String>();
    for (var plot : plots) {
      var row = byTreatment.computeIfAbsent(plot.plot().treatment(), key -> new LinkedHashMap<>());
      var heading = blocked ? plot.plot().block() : Integer.toString(row.size() + 1);
      headings.add(heading);
      row.computeIfAbsent(heading, key -> new ArrayList<>()).add(plot.value());
    }
    var columns = new ArrayList<Column>();
    columns.add(Column.of("Treatment"));
    headings.forEach(
        each -> columns.add(Column.of((blocked ? "Block " : "") + each, trial.subject().unit())));
    var rows = new ArrayList<List<Cell>>();
    byTreatment.forEach(
        (treatment, row) -> {
          var cells = new ArrayList<Cell>();
          cells.add(Cell.text(treatment));
          headings.forEach(heading -> cells.add(values(row.get(heading), decimals)));
          rows.add(cells);
        });
    return ResultTable.of("Plots, " + trial.subject().title(), columns, rows);
  }

  private static Cell values(List<Double> values, int decimals) {
    if (values == null) {
      return Cell.notKnown();
    }
    return values.size() == 1
        ? Cell.number(values.get(0), decimals)
        : Cell.text(
            values.stream()
                .map(value -> Cell.number(value, decimals).printed())
                .collect(Collectors.joining(", ")));
  }
}
