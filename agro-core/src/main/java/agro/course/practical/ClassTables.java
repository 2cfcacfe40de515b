package agro.course.practical;

import agro.dose.sprayer.SprayUnits;
import agro.units.VolumePerArea;
import agro.working.Cell;
import agro.working.ResultTable;
import agro.working.ResultTable.Column;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** The tables of a class's calibrations. */
final class ClassTables {

  private final ClassCalibration result;
  private final PracticalWords words;
  private final SprayUnits units;

  ClassTables(ClassCalibration result) {
    this.result = result;
    words = new PracticalWords(result.rules().language(), result.rules().style());
    units = PrintedUnits.of(result.rules().style());
  }

  ResultTable groups() {
    var columns = new ArrayList<Column>();
    columns.add(Column.of(words.say("column.group")));
    columns.add(Column.of(words.say("column.volume"), units.volume().symbol()));
    columns.add(Column.of(words.say("column.own.interval"), "%"));
    columns.add(Column.of(words.say("column.from." + result.benchmark().name()), "%"));
    columns.add(Column.of(words.say("column.score")));
    columns.add(Column.of(words.say("column.verdict")));
    if (result.rules().dose().isPresent()) {
      columns.add(Column.of(words.say("column.dose")));
    }
    columns.add(Column.of(words.say("column.own"), units.volume().symbol()));
    columns.add(Column.of(words.say("column.own.verdict")));
    return ResultTable.of(
        words.say("table.groups"), columns, result.findings().stream().map(this::row).toList());
  }

  private List<Cell> row(GroupFinding one) {
    var cells = new ArrayList<Cell>();
    cells.add(Cell.text(one.group()));
    cells.add(volume(one.volume()));
    var half = one.relativeHalfWidth(result.rules().confidence());
    cells.add(half.isPresent() ? words.number(100 * half.getAsDouble(), 1) : words.none());
    cells.add(words.number(100 * one.departure(), 1));
    cells.add(
        one.modifiedScore().isPresent()
            ? words.number(one.modifiedScore().getAsDouble(), 1)
            : words.none());
    cells.add(Cell.text(verdict(one)));
    if (result.rules().dose().isPresent()) {
      cells.add(Cell.text(one.plotDose().map(words::dose).orElse("")));
    }
    cells.add(one.ownArithmetic().map(own -> volume(own.own())).orElseGet(words::none));
    cells.add(
        one.ownArithmetic()
            .map(
                own ->
                    Cell.text(
                        own.agrees() ? words.say("own.agrees") : words.times(own.timesOurs())))
            .orElseGet(words::none));
    return cells;
  }

  /** The volume with a decimal where it is small. */
  Cell volume(VolumePerArea volume) {
    double number = volume.in(units.volume());
    return words.number(number, number < 100 ? 2 : 1);
  }

  String verdict(GroupFinding one) {
    var verdict = words.say("verdict." + one.verdict().name());
    return one.outlier() ? verdict + ", " + words.say("verdict.outlier") : verdict;
  }

  ResultTable slips() {
    var columns =
        List.of(
            Column.of(words.say("column.group")),
            Column.of(words.say("column.own"), units.volume().symbol()),
            Column.of(words.say("column.ours"), units.volume().symbol()),
            Column.of(words.say("column.times")),
            Column.of(words.say("column.slip")),
            Column.of(words.say("column.plot")));
    return ResultTable.of(
        words.say("table.slips"),
        columns,
        result.arithmeticDiffers().stream().map(this::slipRow).toList());
  }

  private List<Cell> slipRow(GroupFinding one) {
    var own = one.ownArithmetic().orElseThrow();
    return List.of(
        Cell.text(one.group()),
        volume(own.own()),
        volume(one.volume()),
        Cell.text(words.times(own.timesOurs())),
        Cell.text(slips(own)),
        Cell.text(words.times(1 / own.timesOurs())));
  }

  String slips(OwnArithmetic own) {
    return own.likelySlips().isEmpty()
        ? words.say("slip.none")
        : own.likelySlips().stream()
            .map(slip -> words.say("slip." + slip.name()))
            .collect(Collectors.joining("; " + words.say("or") + " "));
  }
}
