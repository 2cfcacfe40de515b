package agro.trial.bioassay;

import agro.units.Numbers;
import agro.working.Caution;
import agro.working.Cell;
import agro.working.Presentation;
import agro.working.ResultTable;
import agro.working.ResultTable.Column;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** A comparison of series in print. */
final class SeriesPrint {

  private SeriesPrint() {}

  static Presentation page(SeriesComparison comparison) {
    var data = comparison.data();
    var page =
        Presentation.titled(
            "Series compared" + (data.title().isEmpty() ? "" : ": " + data.title()));
    page.paragraph(comparison.sentence());
    FitPrint.choices(page, comparison.choices(), data);
    page.fact("Natural mortality", comparison.choices().natural().words())
        .fact("Do the slopes differ", words(comparison.parallelism()))
        .fact("Do parallel lines lie apart", words(comparison.levels()))
        .fact("Do the series differ at all", words(comparison.equality()))
        .table(lines(comparison))
        .table(doses(comparison));
    if (comparison.choices().scale().isLogarithm()) {
      page.table(ratios(comparison));
    }
    remarks(comparison).forEach(page::paragraph);
    return page.paragraph(FitPrint.LABORATORY)
        .cautions(Caution.all())
        .sources(
            List.of(
                BioassaySources.FINNEY_1971,
                BioassaySources.FIELLER_1954,
                BioassaySources.ROBERTSON_PREISLER_1992))
        .build();
  }

  private static String words(LineTest test) {
    return test.words() + " (" + test.question() + ")";
  }

  private static Set<String> remarks(SeriesComparison comparison) {
    var remarks = new LinkedHashSet<String>();
    for (var name : comparison.series()) {
      comparison.fit(name).remarks().forEach(remark -> remarks.add(name + ": " + remark));
    }
    if (comparison.parallelism().p() < 0.05) {
      remarks.add(
          "The slopes differ, so a relative potency is not the same at all levels; use the"
              + " lethal-dose ratio at the level that matters.");
    }
    if (comparison.data().controls().stream().anyMatch(each -> each.series().isEmpty())
        && comparison.series().stream().noneMatch(String::isEmpty)) {
      remarks.add(
          "The series share a control, so their separate estimates are not quite independent; the"
              + " tests between lines count the control once.");
    }
    return remarks;
  }

  private static ResultTable lines(SeriesComparison comparison) {
    var rows = new ArrayList<List<Cell>>();
    for (var sharing : LineSharing.values()) {
      rows.add(
          List.of(
              Cell.text(sharing.words()),
              Cell.number(comparison.deviance(sharing), 3),
              Cell.number(comparison.pearsonChiSquared(sharing), 3),
              Cell.number(comparison.degreesOfFreedom(sharing), 0)));
    }
    return ResultTable.of(
        "Lines",
        List.of(Column.of("Lines"), Column.of("Deviance"), Column.of("X²"), Column.of("df")),
        rows);
  }

  private static ResultTable doses(SeriesComparison comparison) {
    var rows = new ArrayList<List<Cell>>();
    var axis = comparison.data().axis();
    for (var name : comparison.series()) {
      var fit = comparison.fit(name);
      var median = fit.lethalDose(50);
      var ninety = fit.lethalDose(90);
      rows.add(
          List.of(
              Cell.text(name),
              Cell.number(fit.data().groups().stream().mapToInt(DoseGroup::exposed).sum(), 0),
              Cell.text(
                  Numbers.fixed(fit.slope(), 2)
                      + " ± "
                      + Numbers.fixed(fit.slopeStandardError(), 2)),
              Cell.text(printed(median, axis)),
              Cell.text(printed(ninety, axis)),
              Cell.text(FitPrint.goodness(fit))));
    }
    return ResultTable.of(
        "Series, each with its own line",
        List.of(
            Column.of("Series"),
            Column.of("Animals"),
            Column.of("Slope ± SE"),
            Column.of("LD50 (limits)"),
            Column.of("LD90 (limits)"),
            Column.of("Goodness of fit")),
        rows);
  }

  private static String printed(LethalDose dose, DoseAxis axis) {
    return axis.inUnit(dose.dose()) + " (" + axis.limits(dose.limits()) + ")";
  }

  private static ResultTable ratios(SeriesComparison comparison) {
    var reference = comparison.series().get(0);
    var rows = new ArrayList<List<Cell>>();
    for (var name : comparison.series().subList(1, comparison.series().size())) {
      var potency = comparison.relativePotency(name, reference);
      rows.add(ratio(name, "LD50 ratio", comparison.lethalDoseRatio(name, reference, 50)));
      rows.add(ratio(name, "LD90 ratio", comparison.lethalDoseRatio(name, reference, 90)));
      rows.add(ratio(name, "Relative potency", potency));
    }
    return ResultTable.of(
            "Ratios to the first series, " + reference,
            List.of(
                Column.of("Series"),
                Column.of("Ratio of"),
                Column.of("Ratio"),
                Column.of("Limits")),
            rows)
        .withNote(
            "A lethal-dose ratio above 1 means that the series stands more than the reference; a"
                + " relative potency above 1 that it needs less.");
  }

  private static List<Cell> ratio(String name, String what, DoseRatio ratio) {
    return List.of(
        Cell.text(name),
        Cell.text(what),
        Cell.number(ratio.ratio(), 3),
        Cell.text(ratio.limits().words(value -> Numbers.significant(value, 4))));
  }
}
