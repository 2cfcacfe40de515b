package agro.trial.bioassay;

import agro.working.Cell;
import agro.working.ResultTable;
import agro.working.ResultTable.Column;
import java.util.ArrayList;
import java.util.List;
import java.util.NavigableMap;
import java.util.TreeMap;

/** Shares by dose with their exact limits. */
final class PointTable {

  private PointTable() {}

  /** Groups of one dose together; controls only when wanted. */
  static NavigableMap<Double, ShareCount> byDose(BioassayData data, boolean withControls) {
    var byDose = new TreeMap<Double, ShareCount>();
    for (var group : data.groups()) {
      if (withControls || !group.isControl()) {
        byDose.merge(
            group.dose() + 0.0,
            new ShareCount(group.responded(), group.exposed()),
            (one, other) ->
                new ShareCount(
                    one.responded() + other.responded(), one.exposed() + other.exposed()));
      }
    }
    return byDose;
  }

  /** All animals of some groups. */
  static ShareCount together(List<DoseGroup> groups) {
    return new ShareCount(
        groups.stream().mapToInt(DoseGroup::responded).sum(),
        groups.stream().mapToInt(DoseGroup::exposed).sum());
  }

  static ResultTable of(BioassayData data, double confidence) {
    var rows = new ArrayList<List<Cell>>();
    byDose(data, true)
        .forEach(
            (dose, count) -> {
              var limits = count.limits(confidence);
              rows.add(
                  List.of(
                      Cell.text(data.axis().inUnit(dose)),
                      Cell.number(count.exposed(), 0),
                      Cell.number(count.responded(), 0),
                      Cell.number(100 * count.share(), 1),
                      Cell.number(100 * limits.low(), 1),
                      Cell.number(100 * limits.high(), 1)));
            });
    return ResultTable.of(
        "Responding animals by dose",
        List.of(
            Column.of("Dose"),
            Column.of("Animals"),
            Column.of("Responding"),
            Column.of("Share", "%"),
            Column.of("Lower exact limit", "%"),
            Column.of("Upper exact limit", "%")),
        rows);
  }
}
