package agro.trial;

import agro.working.Cell;
import agro.working.Presentable;
import agro.working.Presentation;
import agro.working.ResultTable;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;

/**
 * One variable of a trial on one day: a value for each plot that has one, in the order of the
 * plots, and the plots that have none. All lists and arrays run in parallel.
 *
 * @param response the variable
 * @param date the day, if the trial has dates
 * @param values plots with a value, by site, year, block and name
 * @param missing plots of the trial without one
 */
public record PlotValues(
    TrialResponse response,
    Optional<LocalDate> date,
    List<PlotValue> values,
    List<TrialPlot> missing)
    implements Presentable {

  /** Makes the lists immutable. */
  public PlotValues {
    values = List.copyOf(values);
    missing = List.copyOf(missing);
  }

  /**
   * The plots with a value.
   *
   * @return one for each value
   */
  public List<TrialPlot> plots() {
    return values.stream().map(PlotValue::plot).toList();
  }

  /**
   * Means of the sub-samples.
   *
   * @return a new array, one mean for each plot
   */
  public double[] means() {
    return values.stream().mapToDouble(PlotValue::mean).toArray();
  }

  /**
   * Sums of the sub-samples.
   *
   * @return a new array, one total for each plot
   */
  public double[] totals() {
    return values.stream().mapToDouble(PlotValue::total).toArray();
  }

  /**
   * Numbers of sub-samples.
   *
   * @return a new array, one number for each plot
   */
  public int[] subSamples() {
    return values.stream().mapToInt(PlotValue::subSamples).toArray();
  }

  /**
   * How many were looked at in each plot, for counts out of n.
   *
   * @return a new array, one number for each plot
   * @throws IllegalStateException when the variable is no count out of n
   */
  public int[] outOf() {
    return values.stream()
        .mapToInt(
            value ->
                value
                    .outOf()
                    .orElseThrow(
                        () ->
                            new IllegalStateException(
                                response.name()
                                    + " is not a count out of n; declare it as one to ask how"
                                    + " many were looked at")))
        .toArray();
  }

  /**
   * Whether all plots have the same number of sub-samples, so that their means weigh the same.
   *
   * @return true when they have
   */
  public boolean equalSubSamples() {
    return values.stream().mapToInt(PlotValue::subSamples).distinct().count() <= 1;
  }

  /**
   * Treatments in words.
   *
   * @return one label for each plot
   */
  public List<String> treatments() {
    return labels(TrialPlot::treatment);
  }

  /**
   * Levels of one treatment factor.
   *
   * @param factor name of the factor
   * @return one label for each plot
   * @throws IllegalArgumentException when the trial has no such factor
   */
  public List<String> levels(String factor) {
    return labels(
        plot ->
            plot.level(factor)
                .orElseThrow(
                    () ->
                        new IllegalArgumentException(
                            "the trial has no factor \""
                                + factor
                                + "\"; its factors are "
                                + plot.levels().keySet())));
  }

  /**
   * Blocks.
   *
   * @return one label for each plot, empty where there are none
   */
  public List<String> blocks() {
    return labels(TrialPlot::block);
  }

  /**
   * Main plots, where they are written down; unique within their block only.
   *
   * @return one label for each plot, empty where there are none
   */
  public List<String> mainPlots() {
    return labels(TrialPlot::mainPlot);
  }

  /**
   * Rows of the plots.
   *
   * @return one label for each plot, empty where no place is written down
   */
  public List<String> rows() {
    return labels(plot -> plot.place().map(place -> Integer.toString(place.row())).orElse(""));
  }

  /**
   * Columns of the plots.
   *
   * @return one label for each plot, empty where no place is written down
   */
  public List<String> columns() {
    return labels(plot -> plot.place().map(place -> Integer.toString(place.column())).orElse(""));
  }

  /**
   * Sites with their years.
   *
   * @return one label for each plot, empty where neither is written down
   */
  public List<String> environments() {
    return labels(TrialPlot::environment);
  }

  /**
   * Any label of the plots.
   *
   * @param label what to take from a plot
   * @return one label for each plot
   */
  public List<String> labels(Function<TrialPlot, String> label) {
    return values.stream().map(value -> label.apply(value.plot())).toList();
  }

  /**
   * The values of some plots only.
   *
   * @param wanted which plots to keep
   * @return a smaller set of values
   */
  public PlotValues where(Predicate<TrialPlot> wanted) {
    return new PlotValues(
        response,
        date,
        values.stream().filter(value -> wanted.test(value.plot())).toList(),
        missing.stream().filter(wanted).toList());
  }

  @Override
  public Presentation presentation() {
    boolean counted = values.stream().anyMatch(value -> value.outOf().isPresent());
    var columns = new ArrayList<ResultTable.Column>();
    for (var heading : List.of("Plot", "Block", "Treatment", "Sub-samples", "Total", "Mean")) {
      columns.add(ResultTable.Column.of(heading));
    }
    if (counted) {
      columns.add(ResultTable.Column.of("Out of"));
    }
    var rows = new ArrayList<List<Cell>>();
    values.forEach(value -> rows.add(row(value, counted)));
    var title = response.heading() + date.map(day -> ", " + day).orElse("");
    var table = ResultTable.of(title, columns, rows);
    if (!missing.isEmpty()) {
      table =
          table.withNote(
              "Without a value: "
                  + String.join("; ", missing.stream().map(TrialPlot::toString).toList())
                  + ".");
    }
    return Presentation.titled(title).table(table).build();
  }

  private static List<Cell> row(PlotValue value, boolean counted) {
    var cells = new ArrayList<Cell>();
    var plot = value.plot();
    cells.add(Cell.text(plot.label().substring("plot ".length())));
    cells.add(Cell.text(plot.block()));
    cells.add(Cell.text(plot.treatment()));
    cells.add(Cell.number(value.subSamples(), 0));
    cells.add(Cell.number(value.total(), 2));
    cells.add(Cell.number(value.mean(), 3));
    if (counted) {
      cells.add(
          value.outOf().isPresent() ? Cell.number(value.outOf().getAsInt(), 0) : Cell.notKnown());
    }
    return cells;
  }

  @Override
  public String toString() {
    return response.heading()
        + date.map(day -> ", " + day).orElse("")
        + ": "
        + values.size()
        + (values.size() == 1 ? " plot" : " plots")
        + (missing.isEmpty() ? "" : ", " + missing.size() + " without a value");
  }
}
