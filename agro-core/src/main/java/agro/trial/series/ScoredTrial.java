package agro.trial.series;

import agro.report.InputProblem;
import agro.source.Reference;
import agro.trial.NaturalOrder;
import agro.trial.PlotValues;
import agro.working.Cell;
import agro.working.Presentable;
import agro.working.Presentation;
import agro.working.ResultTable;
import agro.working.ResultTable.Column;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Scores of a trial, analysed as what they are: grades with an order.
 *
 * @param settings how they were analysed
 * @param values the scores
 * @param plots plots with their medians and shares
 * @param grades grades that occur, from low to high
 * @param ranks the rank test
 * @param model the proportional-odds model, where the plots can tell it
 * @param notes plots left out and what could not be done
 */
public record ScoredTrial(
    ScoreAnalysis settings,
    PlotValues values,
    List<PlotScore> plots,
    List<Double> grades,
    RankTest ranks,
    Optional<OddsModel> model,
    List<String> notes)
    implements Presentable {

  /** Why a plain mean of scores does not stand alone. */
  static final String WHY_NO_MEAN =
      "Plain means of scores stand beside only: they take the steps between grades for equal, which"
          + " nothing says they are, and another numbering of the grades could turn their order.";

  /** Copies the lists. */
  public ScoredTrial {
    Objects.requireNonNull(settings, "settings");
    Objects.requireNonNull(values, "values");
    plots = List.copyOf(plots);
    grades = List.copyOf(grades);
    Objects.requireNonNull(ranks, "ranks");
    Objects.requireNonNull(model, "model");
    notes = List.copyOf(notes);
  }

  /**
   * The treatments with medians, ranks, letters and shares.
   *
   * @return treatments in natural order
   */
  public List<ScoredTreatment> treatments() {
    return new LinkedHashSet<>(values.treatments())
        .stream().sorted(NaturalOrder.ofNames()).map(this::treatment).toList();
  }

  /**
   * One treatment.
   *
   * @param name the treatment
   * @return its scores
   * @throws InputProblem when there is no such treatment
   */
  public ScoredTreatment treatment(String name) {
    var own = plots.stream().filter(each -> each.plot().treatment().equals(name)).toList();
    if (own.isEmpty()) {
      throw InputProblem.of("scores of \"" + name + "\"")
          .expected("one of " + new LinkedHashSet<>(values.treatments()))
          .because("there is no other treatment")
          .mend("write the treatment as in the trial");
    }
    var shares =
        grades.stream()
            .map(grade -> own.stream().mapToDouble(each -> each.share(grade)).average().orElse(0))
            .toList();
    return new ScoredTreatment(
        name,
        own.size(),
        PlotScore.median(own.stream().map(PlotScore::median).sorted().toList()),
        ranks.meanRank(name),
        ranks.letters(name, settings.level()),
        shares,
        model.map(each -> each.shares().getOrDefault(name, List.of())).orElse(List.of()),
        model.map(each -> each.letters().getOrDefault(name, "")).orElse(""),
        own.stream().mapToDouble(PlotScore::mean).average().orElseThrow());
  }

  /**
   * Medians, ranks and letters, the plain mean beside them.
   *
   * @return a table for print
   */
  public ResultTable table() {
    var all = treatments();
    boolean ranked = all.stream().anyMatch(each -> each.meanRank().isPresent());
    boolean modelled = all.stream().anyMatch(each -> !each.modelLetters().isEmpty());
    var columns = new ArrayList<Column>();
    var rows = new ArrayList<List<Cell>>();
    for (var each : all) {
      var cells = new LinkedHashMap<String, Cell>();
      cells.put("Treatment", Cell.text(each.treatment()));
      cells.put("Plots", Cell.number(each.plots(), 0));
      cells.put("Median", Cell.number(each.median(), 1));
      if (ranked) {
        cells.put("Mean rank", known(each.meanRank()));
        cells.put("Letters by ranks", Cell.text(each.rankLetters()));
      }
      if (modelled) {
        cells.put("Letters by model", Cell.text(each.modelLetters()));
      }
      cells.put("Plain mean, beside only", Cell.number(each.meanScore(), 2));
      if (columns.isEmpty()) {
        cells.keySet().forEach(heading -> columns.add(Column.of(heading)));
      }
      rows.add(List.copyOf(cells.values()));
    }
    return ResultTable.of("Scores of " + values.response().name(), columns, rows)
        .withNote(pairWords())
        .withNote(WHY_NO_MEAN);
  }

  /** How letters came about. */
  private String pairWords() {
    return ranks
        .pairs()
        .map(
            pairs ->
                "Treatments that share a letter were not found to differ at the level "
                    + PlainFigure.of(settings.level())
                    + ": by ranks after "
                    + pairs.title()
                    + ", chances adjusted by "
                    + pairs.adjustment().name().toLowerCase(Locale.ROOT).replace('_', ' ')
                    + "; by the model with Holm's adjustment.")
        .orElse("No pairs were compared by ranks.");
  }

  private static Cell known(OptionalDouble value) {
    return value.isPresent() ? Cell.number(value.getAsDouble(), 2) : Cell.notKnown();
  }

  /**
   * Shares of the grades as seen, in per cent; each plot counts the same.
   *
   * @return a table for print and for a figure of stacked bars
   */
  public ResultTable shareTable() {
    return shares(
        "Share of each grade as seen",
        grades.stream().map(PlainFigure::of).toList(),
        treatments().stream().map(ScoredTreatment::shares).toList());
  }

  /**
   * Shares of the classes of plots by the model, in per cent.
   *
   * @return a table, or nothing without a model
   */
  public Optional<ResultTable> modelShareTable() {
    return model.map(
        each ->
            shares(
                "Share of plots in each class by the proportional-odds model",
                each.classes(),
                treatments().stream().map(ScoredTreatment::modelShares).toList()));
  }

  private ResultTable shares(String title, List<String> classes, List<List<Double>> shares) {
    var columns = new ArrayList<Column>();
    columns.add(Column.of("Treatment"));
    classes.forEach(each -> columns.add(Column.of("Grade " + each, "%")));
    var rows = new ArrayList<List<Cell>>();
    var names = treatments().stream().map(ScoredTreatment::treatment).toList();
    for (int i = 0; i < names.size(); i++) {
      var cells = new ArrayList<Cell>();
      cells.add(Cell.text(names.get(i)));
      for (int c = 0; c < classes.size(); c++) {
        var own = shares.get(i);
        cells.add(c < own.size() ? Cell.number(100 * own.get(c), 1) : Cell.notKnown());
      }
      rows.add(cells);
    }
    return ResultTable.of(title, columns, rows);
  }

  @Override
  public Presentation presentation() {
    var page =
        Presentation.titled(
                values.response().name() + values.date().map(day -> ", " + day).orElse(""))
            .fact("Test by ranks", ranks.method().words())
            .fact("Result", result());
    model.ifPresent(
        each ->
            page.fact("Proportional-odds model, treatments", each.treatments().sentence())
                .fact(
                    "Same shift at all grades",
                    each.parallel().orElse("not tested: too few classes or separated scores")));
    page.table(table()).table(shareTable());
    modelShareTable().ifPresent(page::table);
    ranks.notes().forEach(note -> page.paragraph(sentence(note)));
    model.ifPresent(each -> each.notes().forEach(note -> page.paragraph(sentence(note))));
    notes.forEach(note -> page.paragraph(sentence(note)));
    return page.sources(sources()).build();
  }

  private String result() {
    return ranks.sentence().contains(ranks.chanceFrom())
        ? ranks.sentence()
        : ranks.sentence() + " (" + ranks.chanceFrom() + ")";
  }

  private List<Reference> sources() {
    var all = new LinkedHashSet<>(ranks.sources());
    model.ifPresent(each -> all.addAll(each.sources()));
    return List.copyOf(all);
  }

  private static String sentence(String note) {
    var text = Character.toUpperCase(note.charAt(0)) + note.substring(1);
    return text.endsWith(".") ? text : text + ".";
  }

  @Override
  public String toString() {
    return values.response().name() + ": " + ranks.sentence();
  }
}
