package agro.trial;

import agro.reading.DelimitedLine;
import agro.reading.DelimitedText;
import agro.report.InputProblem;
import agro.report.ReadReport;
import agro.trial.PlotColumns.Role;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;

/** Reads a plot table into the lines of a trial. */
final class PlotTableReader {

  private static final String PLANT = "plant";

  private final DelimitedText text;
  private final PlotColumns columns;
  private final ReadReport.Collector report;
  private final List<String> factors;
  private final List<String> subSamples;
  private final List<DatedColumn> values;
  private final boolean dated;

  private PlotTableReader(DelimitedText text, PlotColumns columns) {
    this.text = text.requireRows();
    this.columns = columns;
    this.report = new ReadReport.Collector(text.name());
    this.factors = columns.factors().isEmpty() ? List.of(TrialPlot.TREATMENT) : columns.factors();
    this.subSamples =
        columns.subSampleColumns().isEmpty() && text.hasColumn(PLANT)
            ? List.of(PLANT)
            : columns.subSampleColumns();
    this.values = DatedColumn.all(text, columns);
    this.dated = !columns.wide() && text.hasColumn(columns.nameOf(Role.DATE));
  }

  static FieldTrial read(Path file, PlotColumns columns) {
    var text = DelimitedText.read(file, columns.format(), required(columns));
    var name = file.getFileName() == null ? file.toString() : file.getFileName().toString();
    return new PlotTableReader(text, columns).trial(name.replaceFirst("\\.[A-Za-z0-9]+$", ""));
  }

  static FieldTrial parse(String name, String text, PlotColumns columns) {
    var table = DelimitedText.parse(name, text, columns.format(), required(columns));
    return new PlotTableReader(table, columns).trial(name);
  }

  private static List<String> required(PlotColumns columns) {
    if (columns.responses().isEmpty()) {
      throw InputProblem.of("a plot table without declared variables")
          .expected("at least one variable, as a count, a count out of n, a percentage …")
          .because("the kind of a variable decides which values can be")
          .mend("add withResponse(TrialResponse.count(\"…\")) for each column of values");
    }
    var names = new ArrayList<String>();
    for (var role : Role.values()) {
      columns.declared(role).ifPresent(names::add);
    }
    names.addAll(columns.factors().isEmpty() ? List.of(TrialPlot.TREATMENT) : columns.factors());
    names.addAll(columns.subSampleColumns());
    if (!columns.wide()) {
      for (var response : columns.responses()) {
        names.add(response.name());
        response.outOfColumn().ifPresent(names::add);
      }
    }
    return List.copyOf(names);
  }

  private FieldTrial trial(String name) {
    sayWhatWasTaken();
    var naming = PlotNaming.of(text, columns, report);
    var lines = new ArrayList<Assessment>();
    for (var line : text.lines()) {
      report.countRow();
      addAll(lines, line, naming);
    }
    var numbered = SubSamples.numbered(lines, report);
    return FieldTrial.of(TrialContent.fresh(name, columns.responses(), numbered, report.report()));
  }

  private void addAll(List<Assessment> lines, DelimitedLine line, PlotNaming naming) {
    var levels = new LinkedHashMap<String, String>();
    factors.forEach(factor -> levels.put(factor, line.text(factor)));
    var plot =
        new TrialPlot(
            optional(line, Role.SITE),
            line.optionalWholeNumber(columns.nameOf(Role.YEAR)),
            optional(line, Role.BLOCK),
            optional(line, Role.MAIN_PLOT),
            naming.nameOf(line, levels),
            place(line),
            levels,
            naming.area(line));
    var subSample = subSample(line);
    var who = optional(line, Role.WHO);
    for (var value : values) {
      lines.add(
          new Assessment(
              plot,
              date(line, value),
              subSample,
              value.response().name(),
              number(line, value.column()),
              outOf(line, value.response()),
              who,
              line.lineNumber()));
    }
  }

  private String optional(DelimitedLine line, Role role) {
    return TableText.asWritten(line.optionalText(columns.nameOf(role)).orElse(""));
  }

  private Optional<PlotPlace> place(DelimitedLine line) {
    var row = line.optionalCount(columns.nameOf(Role.ROW));
    var column = line.optionalCount(columns.nameOf(Role.COLUMN));
    if (row.isEmpty() && column.isEmpty()) {
      return Optional.empty();
    }
    if (row.orElse(0) < 1 || column.orElse(0) < 1) {
      throw InputProblem.at(line.location(), "row " + words(row) + ", column " + words(column))
          .expected("a row and a column, both counted from 1")
          .because("a place in the field has both")
          .mend("fill in the two cells, or leave both empty");
    }
    return Optional.of(new PlotPlace(row.getAsInt(), column.getAsInt()));
  }

  private static String words(OptionalInt number) {
    return number.isPresent() ? Integer.toString(number.getAsInt()) : "not given";
  }

  private String subSample(DelimitedLine line) {
    if (subSamples.size() == 1) {
      return line.optionalText(subSamples.get(0)).orElse("");
    }
    var parts = new ArrayList<String>();
    for (var column : subSamples) {
      line.optionalText(column).ifPresent(part -> parts.add(column + " " + part));
    }
    return String.join(", ", parts);
  }

  private Optional<LocalDate> date(DelimitedLine line, DatedColumn value) {
    if (value.date().isPresent()) {
      return value.date();
    }
    if (!dated) {
      return columns.onlyDay();
    }
    var column = columns.nameOf(Role.DATE);
    if (columns.datePattern().isPresent()) {
      var pattern = columns.datePattern().get();
      return Optional.of(DatedColumn.date(line.text(column), pattern, line.location(column)));
    }
    return Optional.of(line.date(column));
  }

  private OptionalDouble number(DelimitedLine line, String column) {
    if (isMissing(line, column)) {
      return OptionalDouble.empty();
    }
    return OptionalDouble.of(line.number(column));
  }

  private boolean isMissing(DelimitedLine line, String column) {
    var cell = line.optionalText(column);
    if (cell.isEmpty()) {
      report.add(
          ReadReport.Deed.NOTED, line.location(column), "the cell is empty: a missing value");
      return true;
    }
    if (columns.isMissing(cell.get())) {
      report.add(
          ReadReport.Deed.ASSUMED,
          line.location(column),
          "\"" + cell.get() + "\" is taken as a missing value");
      return true;
    }
    return false;
  }

  private OptionalInt outOf(DelimitedLine line, TrialResponse response) {
    if (response.outOfColumn().isEmpty()) {
      return response.outOf();
    }
    var column = response.outOfColumn().get();
    var cell = line.optionalText(column);
    return cell.isEmpty() || columns.isMissing(cell.get())
        ? OptionalInt.empty()
        : OptionalInt.of(line.count(column));
  }

  private void sayWhatWasTaken() {
    var used = new LinkedHashSet<String>();
    var taken = new ArrayList<String>();
    for (var role : Role.values()) {
      var name = columns.nameOf(role);
      if (text.hasColumn(name)) {
        used.add(folded(name));
        if (columns.declared(role).isEmpty()) {
          taken.add(name);
        }
      }
    }
    if (columns.factors().isEmpty()) {
      taken.add(TrialPlot.TREATMENT);
    }
    if (columns.subSampleColumns().isEmpty()) {
      taken.addAll(subSamples);
    }
    factors.forEach(factor -> used.add(folded(factor)));
    subSamples.forEach(column -> used.add(folded(column)));
    values.forEach(value -> used.add(folded(value.column())));
    columns
        .responses()
        .forEach(response -> response.outOfColumn().ifPresent(name -> used.add(folded(name))));
    if (!taken.isEmpty()) {
      report.add(
          ReadReport.Deed.ASSUMED, text.location(), "columns taken by their usual names: " + taken);
    }
    sayWhatWasLeft(used);
  }

  private void sayWhatWasLeft(Set<String> used) {
    for (var column : text.columns()) {
      if (!used.contains(folded(column))) {
        report.add(
            ReadReport.Deed.DROPPED,
            text.location().column(column),
            "the column is not declared and was not read");
      }
    }
    if (!dated && !columns.wide() && columns.onlyDay().isEmpty()) {
      report.add(
          ReadReport.Deed.ASSUMED,
          text.location(),
          "there is no column of dates, so all values are of one assessment");
    }
  }

  private static String folded(String name) {
    return name.toLowerCase(Locale.ROOT);
  }
}
