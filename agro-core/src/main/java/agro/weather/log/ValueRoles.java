package agro.weather.log;

import agro.report.InputProblem;
import agro.report.ReadReport;
import agro.report.ReadReport.Deed;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Finds the columns that hold temperatures, a result for each sensor. */
final class ValueRoles {

  /** More columns of temperatures than this are hours rather than sensors. */
  private static final int MOST_SENSORS = 7;

  private final RawTable table;
  private final ColumnContent content;
  private final List<TimePartColumn> times;
  private final ReadReport.Collector report;
  private final List<Integer> numbers = new ArrayList<>();

  ValueRoles(
      RawTable table,
      ColumnContent content,
      List<TimePartColumn> times,
      ReadReport.Collector report) {
    this.table = table;
    this.content = content;
    this.times = times;
    this.report = report;
    for (int i = 0; i < table.headings().size(); i++) {
      boolean values = content.is(i, CellLook.NUMBER) || content.is(i, CellLook.CLOCK);
      boolean silent = content.isMissing(i) && content.kind(i).isTemperature();
      if (!isTime(i) && (values || silent)) {
        numbers.add(i);
      }
    }
  }

  private boolean isTime(int column) {
    for (var time : times) {
      if (table.indexOf(time.name()) == column) {
        return true;
      }
    }
    return false;
  }

  /** The columns of each sensor of a log of readings. */
  Map<String, LogColumns> readings() {
    var temperatures = of(ColumnKind.TEMPERATURE);
    if (temperatures.isEmpty()) {
      temperatures = of(ColumnKind.MEAN);
    }
    if (temperatures.isEmpty()) {
      temperatures = unknown("temperatures");
    }
    var sensors = new LinkedHashMap<String, LogColumns>();
    for (int column : temperatures) {
      var name = table.headings().get(column);
      sensors.put(name, new LogColumns.Readings(times, name));
    }
    tellOthers(temperatures);
    return sensors;
  }

  /** The columns of each sensor of a log of daily extremes. */
  Map<String, LogColumns> extremes() {
    var minima = of(ColumnKind.MINIMUM);
    var maxima = of(ColumnKind.MAXIMUM);
    if (minima.isEmpty() || maxima.isEmpty()) {
      throw oneValueADay(minima, maxima);
    }
    var sensors = new LinkedHashMap<String, LogColumns>();
    var used = new ArrayList<Integer>();
    for (int minimum : minima) {
      var maximum = partner(minimum, minima, maxima);
      if (maximum.isPresent()) {
        var name = table.headings().get(minimum);
        var other = table.headings().get(maximum.get());
        var sensor = minima.size() == 1 ? name + " and " + other : stem(name);
        sensors.put(sensor, new LogColumns.Extremes(times, name, other));
        used.add(minimum);
        used.add(maximum.get());
      }
    }
    if (sensors.isEmpty()) {
      throw notPaired(minima, maxima);
    }
    tellOthers(used);
    return sensors;
  }

  private Optional<Integer> partner(int minimum, List<Integer> minima, List<Integer> maxima) {
    if (minima.size() == 1 && maxima.size() == 1) {
      return Optional.of(maxima.get(0));
    }
    var stem = stem(table.headings().get(minimum));
    Optional<Integer> partner = Optional.empty();
    for (int maximum : maxima) {
      if (stem(table.headings().get(maximum)).equals(stem)) {
        if (partner.isPresent()) {
          return Optional.empty();
        }
        partner = Optional.of(maximum);
      }
    }
    return partner;
  }

  /** A heading without the words for minimum and maximum. */
  private static String stem(String heading) {
    var words = new ArrayList<String>();
    for (var word : HeadingWords.words(heading)) {
      if (HeadingWords.kind(word) != ColumnKind.MINIMUM
          && HeadingWords.kind(word) != ColumnKind.MAXIMUM) {
        words.add(word);
      }
    }
    return String.join(" ", words);
  }

  private List<Integer> of(ColumnKind kind) {
    var found = new ArrayList<Integer>();
    for (int column : numbers) {
      if (content.kind(column) == kind) {
        found.add(column);
      }
    }
    return found;
  }

  /** Columns of numbers whose headings say nothing. */
  private List<Integer> unknown(String wanted) {
    var unknown = of(ColumnKind.UNKNOWN);
    var named = new ArrayList<Integer>();
    for (int column : unknown) {
      boolean unit =
          UnitWords.ofCell(table.below(column)).isPresent() && !table.below(column).isEmpty();
      if (unit) {
        named.add(column);
      }
    }
    var found = named.isEmpty() ? unknown : named;
    if (found.isEmpty()) {
      throw InputProblem.at(
              table.file(), "no column of " + wanted + " among " + String.join(", ", quoted()))
          .expected("a column whose heading names a temperature or a unit of it")
          .because("humidity and other quantities must not be taken for temperatures")
          .mend(
              "name the column temperature, or declare it with withColumns if one of these is"
                  + " meant");
    }
    if (found.size() == 1) {
      report.add(
          Deed.ASSUMED,
          table.file(),
          "the column \"" + table.headings().get(found.get(0)) + "\" holds the temperatures");
    }
    return found;
  }

  private List<String> quoted() {
    var names = new ArrayList<String>();
    for (var heading : table.headings()) {
      names.add("\"" + heading + "\"");
    }
    return names;
  }

  private InputProblem oneValueADay(List<Integer> minima, List<Integer> maxima) {
    var means = of(ColumnKind.MEAN);
    boolean half = !minima.isEmpty() || !maxima.isEmpty();
    var candidates = of(ColumnKind.TEMPERATURE);
    candidates.addAll(of(ColumnKind.UNKNOWN));
    if (candidates.isEmpty() && means.isEmpty() && !half) {
      unknown("daily extremes");
    }
    var read =
        half
            ? "daily values with a minimum or a maximum, but not both"
            : !means.isEmpty()
                ? "a daily mean alone, in the column \"" + table.headings().get(means.get(0)) + "\""
                : candidates.size() != 1
                    ? "daily values in columns that do not say which is the minimum"
                    : "one temperature a day, in the column \""
                        + table.headings().get(candidates.get(0))
                        + "\"";
    return InputProblem.at(table.file(), read)
        .expected("readings through the day, or a minimum and a maximum of each day")
        .because(
            "how far a day goes above and below its mean decides how much of it lies above a"
                + " threshold")
        .mend(
            candidates.size() > MOST_SENSORS && !half
                ? "if each column is an hour of the day, write the readings one below another, each"
                    + " with its date and time"
                : candidates.size() > 1 && !half
                    ? "declare which is which: withColumns(new LogColumns.Extremes(\"date\", \"minimum\","
                        + " \"maximum\")) with the names of the columns, here "
                        + String.join(", ", quoted())
                    : "export minimum and maximum too, or hourly readings");
  }

  private InputProblem notPaired(List<Integer> minima, List<Integer> maxima) {
    return InputProblem.at(
            table.file(),
            minima.size()
                + " columns of minima and "
                + maxima.size()
                + " of maxima: "
                + String.join(", ", quoted()))
        .expected("pairs whose headings differ in the words for minimum and maximum alone")
        .because("it is unknown which two belong together")
        .mend("declare them: withColumns(new LogColumns.Extremes(...))");
  }

  private void tellOthers(List<Integer> used) {
    var others = new ArrayList<String>();
    for (int i = 0; i < table.headings().size(); i++) {
      if (!isTime(i) && !used.contains(i)) {
        others.add("\"" + table.headings().get(i) + "\"");
      }
    }
    if (!others.isEmpty()) {
      report.add(Deed.NOTED, table.file(), "columns not read: " + String.join(", ", others));
    }
  }

  /** The sensor that is asked for, by its heading or by a part that no other has. */
  static String chosen(Map<String, LogColumns> sensors, String wanted, RawTable table) {
    var part = new ArrayList<String>();
    for (var name : sensors.keySet()) {
      if (name.equalsIgnoreCase(wanted.strip())) {
        return name;
      }
      if (name.toLowerCase(Locale.ROOT).contains(wanted.strip().toLowerCase(Locale.ROOT))) {
        part.add(name);
      }
    }
    if (part.size() == 1) {
      return part.get(0);
    }
    throw InputProblem.at(
            table.file(),
            (part.isEmpty() ? "no sensor \"" : "more than one sensor \"") + wanted + "\"")
        .expected("one of " + String.join(", ", sensors.keySet()))
        .because("the temperatures of one sensor were asked for")
        .mend("give the heading of one of these columns");
  }
}
