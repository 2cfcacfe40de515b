package agro.trial.series;

import agro.source.Reference;
import agro.stats.TestSentence;
import agro.stats.mixed.MixedModel;
import agro.working.Cell;
import agro.working.Presentation;
import agro.working.ResultTable;
import agro.working.ResultTable.Column;
import java.util.ArrayList;
import java.util.List;

/** Repeated dates in print. */
final class DatePrint {

  private DatePrint() {}

  static Presentation of(DateCourse course) {
    var page =
        Presentation.titled(course.figures().heading() + " over the dates")
            .fact("Dates", words(course.figures().dates()))
            .fact(
                "Days between them",
                words(course.intervals()) + (course.evenlySpaced() ? ", even" : ", uneven"))
            .fact("Plots", Integer.toString(course.figures().byPlot().size()));
    for (var summary : course.summaries()) {
      page.fact(summary.figures().heading() + ", treatments", summary.treatments().sentence())
          .table(
              summary
                  .means()
                  .table(
                      "Treatment means of " + summary.figures().heading(),
                      summary.figures().unit()));
    }
    page.fact("Repeated dates", correlation(course)).table(testTable(course));
    page.table(CombinedPrint.varianceTable(course.variances(), "within plots (residual)"));
    page.table(meansTable(course));
    course
        .splitPlot()
        .ifPresent(
            split -> {
              page.table(splitTable(split));
              page.paragraph(split.sentence());
            });
    course.advice().forEach(page::paragraph);
    course.notes().forEach(note -> page.paragraph(note.endsWith(".") ? note : note + "."));
    return page.sources(sources()).build();
  }

  static String words(List<?> values) {
    return String.join(", ", values.stream().map(Object::toString).toList());
  }

  private static String correlation(DateCourse course) {
    var text = new StringBuilder(course.correlation().words());
    course
        .correlationOfShortest()
        .ifPresent(
            rho ->
                text.append("; ")
                    .append(PlainFigure.of(rho))
                    .append(" over the shortest interval"));
    double advantage = course.advantageOfFalling();
    if (Math.abs(advantage) < 1e-6) {
      return text.append("; equal and falling correlation are equally likely").toString();
    }
    return text.append("; log restricted likelihood of the falling correlation ")
        .append(advantage >= 0 ? "above" : "below")
        .append(" that of the equal one by ")
        .append(PlainFigure.of(Math.abs(advantage)))
        .toString();
  }

  private static List<Reference> sources() {
    var sources = new ArrayList<Reference>();
    sources.add(SeriesSources.MATTHEWS_1990);
    sources.add(SeriesSources.GREENHOUSE_GEISSER_1959);
    sources.add(SeriesSources.HUYNH_FELDT_1976);
    sources.add(SeriesSources.LECOUTRE_1991);
    sources.add(SeriesSources.MAUCHLY_1940);
    sources.addAll(MixedModel.sources());
    return sources;
  }

  private static ResultTable testTable(DateCourse course) {
    var rows = new ArrayList<List<Cell>>();
    for (var test : course.tests()) {
      rows.add(List.of(Cell.text(test.name()), Cell.text(test.sentence())));
    }
    return ResultTable.of(
        "Dates as a repeated factor", List.of(Column.of("Term"), Column.of("Test")), rows);
  }

  /** A line for each treatment, a column for each date. */
  static ResultTable meansTable(DateCourse course) {
    var columns = new ArrayList<Column>();
    columns.add(Column.of("Treatment"));
    var names = new ArrayList<String>();
    double step = Double.POSITIVE_INFINITY;
    for (var day : course.meansByDate().entrySet()) {
      columns.add(Column.of(day.getKey().toString(), course.figures().unit()));
      columns.add(Column.of("Letters " + day.getKey()));
      step = Math.min(step, day.getValue().smallestErrorOfDifference());
      day.getValue().means().stream()
          .map(JoinedMean::treatment)
          .filter(each -> !names.contains(each))
          .forEach(names::add);
    }
    var rows = new ArrayList<List<Cell>>();
    for (var name : names) {
      var cells = new ArrayList<Cell>();
      cells.add(Cell.text(name));
      for (var day : course.meansByDate().values()) {
        var mean = day.means().stream().filter(each -> each.treatment().equals(name)).findFirst();
        cells.add(
            mean.isPresent()
                ? Cell.number(mean.get().mean(), PlainFigure.decimals(step))
                : Cell.notKnown());
        cells.add(Cell.text(mean.map(JoinedMean::letters).orElse("")));
      }
      rows.add(cells);
    }
    var table = ResultTable.of("Treatment means date by date", columns, rows);
    var comparison = course.settings().comparison();
    table =
        table.withNote(
            "Means of a date that share a letter do not differ by "
                + comparison.method().words()
                + " at the level "
                + PlainFigure.of(comparison.level())
                + "; "
                + course.settings().errors().words()
                + ".");
    for (var day : course.meansByDate().entrySet()) {
      table = table.withNote(day.getKey() + ": " + day.getValue().errorWords() + ".");
    }
    return table;
  }

  private static ResultTable splitTable(SplitPlotInTime split) {
    var lines = new ArrayList<>(split.betweenPlots());
    lines.addAll(split.withinPlots());
    var table = CombinedPrint.analysisTable("Split plot in time", lines);
    if (split.sphericity().mauchlyChance().isPresent()) {
      table =
          table.withNote(
              "Mauchly's W = "
                  + PlainFigure.of(split.sphericity().mauchly().orElseThrow())
                  + "; "
                  + TestSentence.chance(split.sphericity().mauchlyChance().orElseThrow())
                  + ".");
    }
    return split.leftOut().isEmpty()
        ? table
        : table.withNote(
            "Left out, since a date is missing: " + String.join(", ", split.leftOut()) + ".");
  }
}
