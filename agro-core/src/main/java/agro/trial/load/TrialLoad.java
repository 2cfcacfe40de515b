package agro.trial.load;

import agro.report.InputProblem;
import agro.source.Reference;
import agro.trial.NaturalOrder;
import agro.working.Cell;
import agro.working.Presentable;
import agro.working.Presentation;
import agro.working.ResultTable;
import agro.working.ResultTable.Column;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;

/**
 * Loads of the plots of a trial, one number for each plot, as a response for the analysis.
 *
 * @param settings how they were made
 * @param days days of counting
 * @param plots the loads by block and plot
 * @param notes what was bridged or left out
 */
public record TrialLoad(
    PestLoad settings, List<LocalDate> days, List<PlotLoad> plots, List<String> notes)
    implements Presentable {

  /** Copies the lists. */
  public TrialLoad {
    Objects.requireNonNull(settings, "settings");
    days = List.copyOf(days);
    plots = List.copyOf(plots);
    notes = List.copyOf(notes);
  }

  /**
   * The load of one plot.
   *
   * @param name name of the plot
   * @return its load
   * @throws InputProblem when the plot has none
   */
  public PlotLoad plot(String name) {
    return plots.stream()
        .filter(plot -> plot.plot().equals(name))
        .findFirst()
        .orElseThrow(
            () ->
                InputProblem.of("plot " + name + " without a load")
                    .expected("one of " + plots.stream().map(PlotLoad::plot).toList())
                    .because("it was not counted, or left out: " + notes)
                    .mend("write the name as in the trial"));
  }

  /**
   * Mean load of each treatment over its plots.
   *
   * @return means by treatment, in natural order of names
   */
  public Map<String, Double> meansByTreatment() {
    Map<String, List<Double>> values = new TreeMap<>(NaturalOrder.ofNames());
    for (var plot : plots) {
      values.computeIfAbsent(plot.treatment(), name -> new ArrayList<>()).add(plot.value());
    }
    Map<String, Double> means = new TreeMap<>(NaturalOrder.ofNames());
    values.forEach(
        (name, all) ->
            means.put(
                name,
                all.stream().mapToDouble(Double::doubleValue).sorted().average().orElseThrow()));
    return java.util.Collections.unmodifiableMap(means);
  }

  /**
   * What a load is stated in.
   *
   * @return a phrase
   */
  public String unitWords() {
    var each = "per " + settings.unit().words();
    return switch (settings.measure()) {
      case AREA, STAIRS -> "pest-days " + each;
      case MEAN_PER_DAY -> "pests " + each + ", mean over days";
      case RELATIVE_AREA -> "share of the greatest area";
    };
  }

  /**
   * The loads plot by plot.
   *
   * @return one line for each plot
   */
  public ResultTable table() {
    var rows = new ArrayList<List<Cell>>();
    for (var plot : plots) {
      rows.add(
          List.of(
              Cell.text(plot.block()),
              Cell.text(plot.plot()),
              Cell.text(plot.treatment()),
              Cell.number(plot.value(), settings.measure() == LoadMeasure.RELATIVE_AREA ? 4 : 1)));
    }
    var table =
        ResultTable.of(
            "Load by plot",
            List.of(
                Column.of("Block"),
                Column.of("Plot"),
                Column.of("Treatment"),
                Column.of("Load", unitWords())),
            rows);
    for (var note : notes) {
      table = table.withNote(note);
    }
    return table;
  }

  @Override
  public Presentation presentation() {
    var rows = new ArrayList<List<Cell>>();
    meansByTreatment()
        .forEach(
            (name, mean) ->
                rows.add(
                    List.of(
                        Cell.text(name),
                        Cell.number(
                            mean, settings.measure() == LoadMeasure.RELATIVE_AREA ? 4 : 1))));
    List<Reference> sources = List.of(settings.measure().source());
    return Presentation.titled("Pest load")
        .fact("Measure", settings.measure().words() + ", " + unitWords())
        .fact("Days", days.get(0) + " to " + days.get(days.size() - 1))
        .fact("Between counts", settings.between().words())
        .fact("Missing counts", settings.missing().words())
        .table(
            ResultTable.of(
                "Mean load by treatment",
                List.of(Column.of("Treatment"), Column.of("Mean load", unitWords())),
                rows))
        .table(table())
        .sources(sources)
        .build();
  }
}
