package agro.trial.bioassay;

import agro.working.Caution;
import agro.working.Cell;
import agro.working.Presentation;
import agro.working.ResultTable;
import agro.working.ResultTable.Column;
import java.util.ArrayList;
import java.util.List;

/** An assay in print: what was counted, before any curve. */
final class AssayPrint {

  private static final double USUAL_CONFIDENCE = 0.95;

  private AssayPrint() {}

  static Presentation page(BioassayData data) {
    var page =
        Presentation.titled("Assay" + (data.title().isEmpty() ? "" : ": " + data.title()))
            .fact("Dose", dose(data))
            .fact("End point", data.endPoint().words())
            .fact("Groups", String.valueOf(data.groups().size()))
            .fact("Animals", String.valueOf(animals(data)));
    if (data.days().size() > 1) {
      page.fact("Days or batches", String.join(", ", data.days()));
    }
    page.table(counts(data));
    ControlCheck.told(data).ifPresent(page::paragraph);
    if (!data.report().entries().isEmpty()) {
      page.part(Presentation.of(data.report()));
    }
    return page.cautions(Caution.all())
        .sources(List.of(BioassaySources.CLOPPER_PEARSON_1934))
        .build();
  }

  private static String dose(BioassayData data) {
    var axis = data.axis();
    return axis.words() + (axis.unit().isEmpty() ? "" : ", " + axis.unit());
  }

  private static int animals(BioassayData data) {
    return data.groups().stream().mapToInt(DoseGroup::exposed).sum();
  }

  private static int groupsAt(List<DoseGroup> groups, double dose) {
    return groups.stream().mapToInt(each -> each.dose() == dose ? 1 : 0).sum();
  }

  private static ResultTable counts(BioassayData data) {
    var series = new ArrayList<>(data.series());
    boolean shared =
        data.controls().stream().anyMatch(each -> each.series().isEmpty()) && !series.contains("");
    if (shared) {
      series.add("");
    }
    var rows = new ArrayList<List<Cell>>();
    for (var name : series) {
      var own = data.groups().stream().filter(each -> each.series().equals(name)).toList();
      PointTable.byDose(data.with(data.title(), own), true)
          .forEach(
              (dose, count) -> {
                var limits = count.limits(USUAL_CONFIDENCE);
                rows.add(
                    List.of(
                        Cell.text(name.isEmpty() ? (shared ? "shared control" : "all") : name),
                        Cell.text(dose == 0 ? "control" : data.axis().inUnit(dose)),
                        Cell.number(groupsAt(own, dose), 0),
                        Cell.number(count.exposed(), 0),
                        Cell.number(count.responded(), 0),
                        Cell.number(100 * count.share(), 1),
                        Cell.text(FitPrint.percents(limits))));
              });
    }
    return ResultTable.of(
        "Responding animals by dose",
        List.of(
            Column.of("Series"),
            Column.of("Dose"),
            Column.of("Groups"),
            Column.of("Animals"),
            Column.of("Responding"),
            Column.of("Share", "%"),
            Column.of("Exact 95 % limits", "%")),
        rows);
  }
}
