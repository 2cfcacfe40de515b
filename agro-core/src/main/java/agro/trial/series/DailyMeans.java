package agro.trial.series;

import agro.report.InputProblem;
import agro.stats.multiple.PairwiseComparison;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The plots date by date, each date by itself. */
final class DailyMeans {

  private DailyMeans() {}

  /** Means and letters of each date from the scatter of its own plots. */
  static Map<LocalDate, JoinedMeans> of(
      DatedFigures figures, PairwiseComparison comparison, List<String> notes) {
    Map<LocalDate, JoinedMeans> means = new LinkedHashMap<>();
    for (var day : figures.dates()) {
      try {
        means.put(day, SummaryAnalysis.of(onDay(figures, day), comparison).means());
      } catch (InputProblem none) {
        notes.add("No comparison of means on " + day + ": " + none.read());
      }
    }
    return means;
  }

  /** Error variances of the dates that have degrees of freedom. */
  static List<DateSpread> spread(DatedFigures figures) {
    var list = new ArrayList<DateSpread>();
    for (var day : figures.dates()) {
      var trial = SingleTrial.of(day.toString(), onDay(figures, day));
      trial
          .errorVariance()
          .ifPresent(
              variance -> list.add(new DateSpread(day, variance, trial.errorDegreesOfFreedom())));
    }
    return list;
  }

  private static PlotFigures onDay(DatedFigures figures, LocalDate day) {
    return new PlotFigures(
        figures.name() + " on " + day,
        figures.unit(),
        figures.figures().stream()
            .filter(each -> each.date().equals(day))
            .map(each -> new PlotFigure(each.plot(), each.value()))
            .toList(),
        List.of());
  }
}
