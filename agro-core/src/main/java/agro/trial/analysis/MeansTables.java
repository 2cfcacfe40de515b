package agro.trial.analysis;

import agro.stats.multiple.SignificantDifference;
import agro.units.Numbers;
import agro.working.Cell;
import agro.working.ResultTable;
import agro.working.ResultTable.Column;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;

/** Tables of means and of what differences of means have to reach. */
final class MeansTables {

  private static final double SAME = 1e-9;

  private MeansTables() {}

  static ResultTable means(AnalysedTrial trial, TreatmentMeans of) {
    var subject = trial.subject();
    boolean ranks = subject.route() == AnalysisRoute.RANKS;
    boolean scale =
        ranks || !subject.transformation().isNone() || subject.route().isGeneralisedLinear();
    boolean limits = of.means().stream().anyMatch(mean -> mean.limits().isPresent());
    boolean plain = scale || of.means().stream().anyMatch(MeansTables::differs);
    var columns = new ArrayList<Column>();
    columns.add(Column.of(capital(of.title())));
    columns.add(Column.of("Plots"));
    if (scale) {
      columns.add(Column.of(ranks ? "Mean rank" : "On the scale of the analysis"));
    }
    columns.add(Column.of(ranks ? "Median" : "Mean", subject.unit()));
    if (limits) {
      var confidence = Numbers.plain(rounded(100 * (1 - subject.level()))) + " % limit";
      columns.add(Column.of("Lower " + confidence, subject.unit()));
      columns.add(Column.of("Upper " + confidence, subject.unit()));
    }
    if (plain) {
      columns.add(Column.of("Arithmetic mean", subject.unit()));
    }
    if (!of.method().isEmpty()) {
      columns.add(Column.of(hasStars(trial, of) ? "Differs from control" : "Letters"));
    }
    int own = TableNumbers.decimals(numbers(of, false));
    int analysed = TableNumbers.decimals(numbers(of, true));
    var rows = new ArrayList<List<Cell>>();
    for (var mean : of.means()) {
      var cells = new ArrayList<Cell>();
      cells.add(Cell.text(mean.label()));
      cells.add(Cell.number(mean.plots(), 0));
      if (scale) {
        cells.add(TableNumbers.cell(mean.analysed(), analysed));
      }
      cells.add(TableNumbers.cell(mean.mean(), own));
      if (limits) {
        cells.add(TableNumbers.cell(mean.limits().map(l -> l.low()).orElse(Double.NaN), own));
        cells.add(TableNumbers.cell(mean.limits().map(l -> l.high()).orElse(Double.NaN), own));
      }
      if (plain) {
        cells.add(TableNumbers.cell(mean.arithmetic(), own));
      }
      if (!of.method().isEmpty()) {
        cells.add(Cell.text(mean.mark()));
      }
      rows.add(cells);
    }
    return ResultTable.of("Means of " + of.title() + ", " + subject.title(), columns, rows);
  }

  private static boolean hasStars(AnalysedTrial trial, TreatmentMeans of) {
    return trial.subject().control().isPresent() && of.equals(trial.treatmentMeans());
  }

  private static double rounded(double percent) {
    return Math.rint(percent * 1e6) / 1e6;
  }

  private static boolean differs(TreatmentMean mean) {
    if (mean.mean().isEmpty() || mean.arithmetic().isEmpty()) {
      return true;
    }
    double plain = mean.arithmetic().getAsDouble();
    return Math.abs(mean.mean().getAsDouble() - plain) > SAME * Math.abs(plain) + Double.MIN_NORMAL;
  }

  private static DoubleStream numbers(TreatmentMeans of, boolean analysed) {
    return of.means().stream()
        .flatMapToDouble(mean -> (analysed ? mean.analysed() : largest(mean)).stream());
  }

  private static OptionalDouble largest(TreatmentMean mean) {
    return mean.mean().isPresent() ? mean.mean() : mean.arithmetic();
  }

  private static String capital(String title) {
    return Character.toUpperCase(title.charAt(0)) + title.substring(1);
  }

  static Optional<ResultTable> differences(AnalysedTrial trial, TreatmentMeans of) {
    if (of.standardErrorOfDifference().isEmpty()) {
      return Optional.empty();
    }
    var subject = trial.subject();
    var rows = new ArrayList<List<Cell>>();
    add(rows, "Standard error of a difference", of.standardErrorOfDifference());
    of.significantDifference()
        .ifPresent(
            difference ->
                add(
                    rows,
                    "Smallest significant difference, "
                        + of.method()
                        + ", level "
                        + Numbers.plain(subject.level()),
                    of.significantDifference()));
    add(
        rows,
        "True difference that a single test at that level would have found with a chance of 80 %",
        of.detectable());
    var scale =
        subject.route().isGeneralisedLinear()
            ? "scale of the model"
            : subject.transformation().isNone() ? subject.unit() : "scale of the analysis";
    var columns =
        List.of(Column.of("Differences of means of " + of.title()), Column.of("Size", scale));
    return Optional.of(ResultTable.of("Differences, " + subject.title(), columns, rows));
  }

  private static void add(
      List<List<Cell>> rows, String name, Optional<SignificantDifference> difference) {
    if (difference.isEmpty()) {
      return;
    }
    double small = difference.get().smallest();
    double large = difference.get().largest();
    int decimals = TableNumbers.decimals(DoubleStream.of(large));
    if (difference.get().isOneNumber()) {
      rows.add(List.of(Cell.text(name), Cell.number(large, decimals)));
    } else {
      rows.add(List.of(Cell.text(name + ", smallest of the pairs"), Cell.number(small, decimals)));
      rows.add(List.of(Cell.text(name + ", largest of the pairs"), Cell.number(large, decimals)));
    }
  }
}
