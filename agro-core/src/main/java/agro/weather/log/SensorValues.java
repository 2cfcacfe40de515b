package agro.weather.log;

import agro.report.InputProblem;
import agro.report.ReadReport;
import agro.report.ReadReport.Deed;
import agro.report.SourceLocation;
import agro.units.TemperatureUnit;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * Reads the temperatures of one column: decimal mark, missing codes and unit are declared or come
 * from the cells, and what does not fit is refused.
 */
final class SensorValues {

  /** How far outside of all other values a number must lie to be a code for a missing one. */
  private static final double OUTSIDE = 10;

  /** A cell with fewer decimals is remarked on when all but this share have the same number. */
  private static final double ODD_DECIMALS = 0.02;

  private final RawTable table;
  private final int column;
  private final LogFormat format;
  private final DecimalMark mark;
  private final NumberColumn numbers;
  private final boolean isScanned;
  private final Set<String> codes = new TreeSet<>();
  private final Tally missing;
  private TemperatureUnit unit = TemperatureUnit.CELSIUS;

  SensorValues(RawTable table, int column, LogFormat format, DecimalMark mark) {
    this.table = table;
    this.column = column;
    this.format = format;
    this.mark = mark;
    var scanned = table.scanned().flatMap(rows -> rows.numbers(column, mark));
    this.isScanned = scanned.isPresent();
    this.numbers = scanned.orElseGet(() -> NumberColumn.empty(table.rows().size()));
    this.missing =
        new Tally(
            Deed.NOTED,
            "no temperature in \""
                + table.headings().get(column)
                + "\": the cell is empty or holds a missing code");
  }

  private SourceLocation place(int row) {
    return table.location(row, column);
  }

  /** The codes that stood for a missing value, as written. */
  Set<String> codes() {
    return codes;
  }

  /** The unit in which the values are written. */
  TemperatureUnit unit() {
    return unit;
  }

  /** The values of all rows in °C, NaN where there is none. */
  double[] celsius(Hints hints, int unitColumn, ReadReport.Collector report) {
    if (isScanned) {
      codes.addAll(table.scanned().orElseThrow().missingWords());
    } else {
      readCells();
    }
    var missingCodes = codesOutsideTheRest();
    unit = unit(hints, unitColumn, report);
    var values = new double[numbers.size()];
    var plausibility = new Plausibility(table.name(), unit, values.length);
    for (int i = 0; i < values.length; i++) {
      values[i] = Double.NaN;
      boolean isCode = !missingCodes.isEmpty() && mayBeCode(i) && missingCodes.contains(digits(i));
      if (isCode) {
        codes.add(text(i));
        numbers.remove(i);
      }
      if (isCode || !numbers.isNumber(i)) {
        missing.add(place(i));
        continue;
      }
      double celsius = unit.toCelsius(numbers.value(i));
      if (plausibility.isPlausible(celsius)) {
        values[i] = celsius;
      } else {
        plausibility.leaveOut(place(i));
      }
    }
    tellDecimals(report);
    missing.tell(report);
    tellCodes(missingCodes, report);
    plausibility.judge(report);
    return values;
  }

  private String text(int row) {
    return table.rows().get(row).cell(column);
  }

  private void readCells() {
    for (int i = 0; i < numbers.size(); i++) {
      var text = text(i);
      if (format.missing().isPresent()) {
        if (text.isEmpty() || format.missing().get().contains(text)) {
          continue;
        }
      } else if (MissingWords.isWord(text)) {
        if (!text.isEmpty()) {
          codes.add(text);
        }
        continue;
      }
      var number = NumberCell.of(text);
      boolean fits =
          number.isPresent()
              && (number.get().mark() == 0 || number.get().mark() == mark.character());
      if (!fits) {
        throw TimeCells.problem(place(i), text)
            .expected("a temperature with a decimal " + words(mark) + ", or a missing code")
            .because("what was measured cannot be told from it")
            .mend(
                "correct the cell, or empty it; if it stands for a missing value, declare it with"
                    + " withMissingCodes");
      }
      numbers.put(i, number.get());
    }
  }

  private static String words(DecimalMark mark) {
    return mark == DecimalMark.COMMA ? "comma" : "point";
  }

  /** Numbers that are usual codes and lie far outside of all other numbers. */
  private Set<String> codesOutsideTheRest() {
    var found = new HashSet<String>();
    if (format.missing().isPresent()) {
      return found;
    }
    double least = Double.POSITIVE_INFINITY;
    double most = Double.NEGATIVE_INFINITY;
    var candidates = new TreeSet<String>();
    for (int i = 0; i < numbers.size(); i++) {
      if (!numbers.isNumber(i)) {
        continue;
      }
      if (mayBeCode(i) && MissingWords.isCode(digits(i))) {
        candidates.add(digits(i));
      } else {
        least = Math.min(least, numbers.value(i));
        most = Math.max(most, numbers.value(i));
      }
    }
    for (var code : candidates) {
      double value = Double.parseDouble(code);
      if (least > most || value < least - OUTSIDE || value > most + OUTSIDE) {
        found.add(code);
      }
    }
    return found;
  }

  /** Whether a number has the value of a usual code; how it is written has to agree too. */
  private boolean mayBeCode(int row) {
    return MissingWords.mayBeCode(numbers.value(row));
  }

  private String digits(int row) {
    return NumberCell.of(text(row)).orElseThrow().digits();
  }

  private void tellCodes(Set<String> outside, ReadReport.Collector report) {
    if (!codes.isEmpty() && format.missing().isEmpty()) {
      report.add(
          outside.isEmpty() ? Deed.NOTED : Deed.ASSUMED,
          table.file().column(table.headings().get(column)),
          "taken for missing: "
              + String.join(", ", codes)
              + (outside.isEmpty() ? "" : ", which lie outside of all other values"));
    }
  }

  private TemperatureUnit unit(Hints hints, int unitColumn, ReadReport.Collector report) {
    var inCells = inCells(hints).or(() -> unitColumn < 0 ? Optional.empty() : stated(unitColumn));
    if (format.unit().isPresent()) {
      return format.unit().get();
    }
    var stated = hints.unit(column);
    if (stated.isPresent() && inCells.isPresent() && !stated.equals(inCells)) {
      throw hints.conflict(column, stated.get(), inCells.get());
    }
    var unit = inCells.or(() -> stated);
    report.add(
        unit.isPresent() ? Deed.NOTED : Deed.ASSUMED,
        table.file().column(table.headings().get(column)),
        unit.map(known -> "the unit is " + known.symbol() + ", as the log states")
            .orElse("no unit is declared: the temperatures are taken for °C"));
    return unit.orElse(TemperatureUnit.CELSIUS);
  }

  private Optional<TemperatureUnit> inCells(Hints hints) {
    Optional<TemperatureUnit> found = Optional.empty();
    for (int i = 0; i < numbers.size() && numbers.hasUnits(); i++) {
      var unitThere = numbers.unit(i);
      if (unitThere.isPresent() && found.isPresent() && !found.equals(unitThere)) {
        throw hints.conflict(column, found.get(), unitThere.get());
      }
      found = unitThere.isPresent() ? unitThere : found;
    }
    return found;
  }

  /** The unit that a column beside the temperatures states, the same in every row. */
  private Optional<TemperatureUnit> stated(int unitColumn) {
    Optional<TemperatureUnit> found = Optional.empty();
    for (var row : table.rows()) {
      var cell = row.cell(unitColumn);
      var unit = UnitWords.ofCell(cell);
      boolean differs = found.isPresent() && unit.isPresent() && !unit.equals(found);
      if (differs || (unit.isEmpty() && !cell.isEmpty())) {
        throw TimeCells.problem(table.location(row, unitColumn), cell)
            .expected("one unit of temperature in all lines")
            .because("a temperature in the wrong unit is a wrong temperature")
            .mend("export the log in one unit");
      }
      found = unit.isPresent() ? unit : found;
    }
    return found;
  }

  /** A number with fewer decimals than nearly all others may have been cut off. */
  private void tellDecimals(ReadReport.Collector report) {
    var counts = new int[12];
    int all = 0;
    for (int i = 0; i < numbers.size(); i++) {
      if (numbers.isNumber(i)) {
        counts[Math.min(11, numbers.decimals(i))]++;
        all++;
      }
    }
    int usual = 0;
    for (int i = 1; i < counts.length; i++) {
      usual = counts[i] > counts[usual] ? i : usual;
    }
    int fewer = 0;
    for (int i = 0; i < usual; i++) {
      fewer += counts[i];
    }
    tellBare(all, report);
    boolean rare = fewer > 0 && fewer <= Math.max(1, ODD_DECIMALS * all);
    if (!rare && !table.cutOff()) {
      return;
    }
    var odd = new Tally(Deed.NOTED, "a number with fewer decimals than the others: cut off?");
    for (int i = 0; i < numbers.size(); i++) {
      boolean ends = table.cutOff() && i == numbers.size() - 1;
      if (numbers.isNumber(i) && numbers.decimals(i) < usual && (rare || ends)) {
        odd.add(place(i));
      }
    }
    odd.tell(report);
  }

  /** A number that begins with its decimal mark, where hardly any other does, lost a digit. */
  private void tellBare(int all, ReadReport.Collector report) {
    var bare = new Tally(Deed.NOTED, "a number without a digit before its decimal mark: cut off?");
    for (int i = 0; i < numbers.size() && numbers.hasBare(); i++) {
      if (numbers.isBare(i)) {
        bare.add(place(i));
      }
    }
    if (bare.count() <= Math.max(1, ODD_DECIMALS * all)) {
      bare.tell(report);
    }
  }

  /** Which decimal mark the cells of a column have. */
  static DecimalMark mark(
      RawTable table, int[] columns, LogFormat format, ReadReport.Collector report) {
    if (format.table().decimalMark().isPresent()) {
      return format.table().decimalMark().get();
    }
    var scanned = table.scanned().flatMap(rows -> rows.onlyMark(columns));
    if (scanned.isPresent()) {
      return told(scanned.get(), table, report);
    }
    TableRow[] first = new TableRow[2];
    int[] where = new int[2];
    int[] counts = new int[2];
    for (var row : table.rows()) {
      for (int column : columns) {
        var number = NumberCell.of(row.cell(column));
        if (number.isPresent() && number.get().mark() != 0) {
          int which = number.get().mark() == ',' ? 1 : 0;
          if (counts[which]++ == 0) {
            first[which] = row;
            where[which] = column;
          }
        }
      }
    }
    if (counts[0] > 0 && counts[1] > 0) {
      int rare = counts[0] < counts[1] ? 0 : 1;
      throw bothMarks(table.location(first[rare], where[rare]), first[rare].cell(where[rare]));
    }
    return told(counts[1] > 0 ? DecimalMark.COMMA : DecimalMark.POINT, table, report);
  }

  private static DecimalMark told(DecimalMark mark, RawTable table, ReadReport.Collector report) {
    if (mark == DecimalMark.COMMA) {
      report.add(Deed.NOTED, table.file(), "numbers have a decimal comma");
    }
    return mark;
  }

  private static InputProblem bothMarks(SourceLocation place, String cell) {
    return TimeCells.problem(place, cell)
        .expected("the decimal mark that the other temperatures have")
        .because("with two marks in one log, one of them may part thousands")
        .mend("write all numbers with one decimal mark");
  }
}
