package agro.course.topic.degreeday;

import agro.course.Givens;
import agro.development.ThermalTimeScale;
import agro.weather.DailyExtremes;
import agro.weather.DailyTemperatures;
import agro.weather.DayOrigin;
import agro.weather.Medium;
import agro.working.Block;
import agro.working.Cell;
import agro.working.ResultTable;
import agro.working.ResultTable.Column;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/**
 * Daily extremes as the exercise prints them.
 *
 * @param firstDay day of the first row
 * @param min lowest temperatures in the unit of the class
 * @param max highest temperatures
 */
record DayTable(LocalDate firstDay, List<Double> min, List<Double> max) {

  DayTable {
    min = List.copyOf(min);
    max = List.copyOf(max);
  }

  int size() {
    return min.size();
  }

  LocalDate day(int row) {
    return firstDay.plusDays(row);
  }

  double mean(int row) {
    return DegreeScale.mean(min.get(row), max.get(row));
  }

  double degreeDays(DegreeScale scale, double lower, int row) {
    return scale.average(min.get(row), max.get(row), lower);
  }

  /** Plain sum of what the library gives for each day. */
  double sum(DegreeScale scale, double lower, int from, int to) {
    double sum = 0;
    for (int row = from; row <= to; row++) {
      sum += degreeDays(scale, lower, row);
    }
    return sum;
  }

  /** Sum of the means of days. */
  double sumOfMeans(int from, int to) {
    double sum = 0;
    for (int row = from; row <= to; row++) {
      sum += mean(row);
    }
    return sum;
  }

  /** The library's running sum from the start of a row. */
  ThermalTimeScale running(DegreeScale scale, double lower, String place, int fromRow) {
    var days = new ArrayList<DailyExtremes>();
    for (int row = 0; row < size(); row++) {
      days.add(
          new DailyExtremes(day(row), scale.celsius(min.get(row)), scale.celsius(max.get(row))));
    }
    return ThermalTimeScale.of(
        scale.averages(lower),
        DailyTemperatures.of(place, Medium.shelterAir(), days, DayOrigin.OBSERVED),
        day(fromRow));
  }

  Givens in(Givens givens) {
    return givens.withDay("first", firstDay).withNumbers("min", min).withNumbers("max", max);
  }

  /** The table as students get it. */
  Block exhibit(DegreeScale scale) {
    var words = scale.words();
    var unit = scale.units().temperature().symbol();
    var rows = new ArrayList<List<Cell>>();
    for (int row = 0; row < size(); row++) {
      rows.add(
          List.of(
              Cell.text(words.day(day(row))),
              Cell.text(words.exact(max.get(row))),
              Cell.text(words.exact(min.get(row)))));
    }
    return new Block.TableBlock(
        ResultTable.of(
            words.say("table.title"),
            List.of(
                Column.of(words.say("table.day")),
                Column.of(words.say("table.max"), unit),
                Column.of(words.say("table.min"), unit)),
            rows));
  }

  /** Daily degree-days as terms of a sum. */
  String terms(DegreeScale scale, double lower, int from, int to) {
    var terms = new ArrayList<String>();
    for (int row = from; row <= to; row++) {
      terms.add(scale.term(degreeDays(scale, lower, row)));
    }
    return String.join(" + ", terms);
  }
}
