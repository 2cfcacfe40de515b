package agro.trial.analysis;

import agro.source.Reference;
import agro.units.Numbers;
import agro.working.Cell;
import agro.working.Presentation;
import agro.working.ResultTable;
import agro.working.ResultTable.Column;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;

/** Tables over several days. */
final class CourseTables {

  private CourseTables() {}

  private static String day(AnalysedTrial trial) {
    return trial.subject().values().date().map(Object::toString).orElse("no date");
  }

  static ResultTable means(AnalysisCourse course) {
    var labels = new LinkedHashSet<String>();
    course
        .days()
        .forEach(day -> day.treatmentMeans().means().forEach(mean -> labels.add(mean.label())));
    var columns = new ArrayList<Column>();
    columns.add(Column.of("Treatment"));
    course.days().forEach(day -> columns.add(Column.of(day(day), day.subject().unit())));
    var rows = new ArrayList<List<Cell>>();
    for (String label : labels) {
      var cells = new ArrayList<Cell>();
      cells.add(Cell.text(label));
      course.days().forEach(day -> cells.add(mean(day, label)));
      rows.add(cells);
    }
    return ResultTable.of(
        "Means over the days, " + course.days().get(0).subject().values().response().name(),
        columns,
        rows);
  }

  private static Cell mean(AnalysedTrial day, String label) {
    var means = day.treatmentMeans().means();
    int decimals =
        TableNumbers.decimals(means.stream().flatMapToDouble(mean -> mean.mean().stream()));
    for (var mean : means) {
      if (mean.label().equals(label) && mean.mean().isPresent()) {
        double value = mean.mean().getAsDouble();
        return mean.mark().isEmpty()
            ? TableNumbers.cell(value, decimals)
            : Cell.text(Numbers.fixed(value, decimals) + " " + mean.mark());
      }
    }
    return Cell.notKnown();
  }

  static ResultTable tests(AnalysisCourse course) {
    var rows = new ArrayList<List<Cell>>();
    for (var day : course.days()) {
      rows.add(List.of(Cell.text(day(day)), Cell.text(day.sentence())));
    }
    return ResultTable.of(
        "Tests of the days", List.of(Column.of("Day"), Column.of("Treatments")), rows);
  }

  static Presentation page(AnalysisCourse course) {
    var sources = new LinkedHashSet<Reference>();
    course.days().forEach(day -> sources.addAll(day.sources()));
    return builder(course).sources(List.copyOf(sources)).build();
  }

  static Presentation withoutSources(AnalysisCourse course) {
    return builder(course).build();
  }

  private static Presentation.Builder builder(AnalysisCourse course) {
    var first = course.days().get(0).subject();
    var page =
        Presentation.titled(first.values().response().name() + " over the days of assessment");
    page.fact("Trial", first.trial());
    page.fact("Analysis of each day", first.route().words());
    page.fact("Scale", first.transformation().words());
    page.table(course.table());
    var method = course.days().get(0).treatmentMeans().method();
    page.paragraph(
        (method.isEmpty()
                ? ""
                : first.control().isPresent()
                    ? "A star marks means that differ from the control of the same day ("
                        + method
                        + "). "
                    : "Means of one day that share a letter are not declared different ("
                        + method
                        + ", level "
                        + Numbers.plain(first.level())
                        + "). ")
            + "Each day is analysed for itself; days are looks at the same plots, and their tests"
            + " are not independent of each other.");
    return page.table(course.testTable());
  }
}
