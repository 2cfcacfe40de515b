package agro.weather.log;

import agro.reading.DelimitedLine;
import agro.reading.DelimitedText;
import agro.report.InputProblem;
import agro.report.Progress;
import agro.report.ReadReport;
import agro.report.ReadReport.Deed;
import agro.weather.DailyExtremes;
import agro.weather.DailyTemperatures;
import agro.weather.DayOrigin;
import agro.weather.Medium;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Optional;
import java.util.function.Predicate;

/** Reads a log of daily extremes. */
final class ExtremesLog {

  private final DelimitedText text;
  private final LogColumns.Extremes columns;
  private final LogFormat format;
  private final Predicate<LocalDate> known;
  private final TimePattern pattern;
  private final ValueCells values;
  private final ReadReport.Collector collector;
  private final ArrayList<DailyExtremes> days = new ArrayList<>();
  private final ArrayList<LocalDate> absent = new ArrayList<>();
  private final Tally repeated =
      new Tally(Deed.DROPPED, "a line that repeats the day and the values of the line before");
  private final Tally halves =
      new Tally(Deed.DROPPED, "one extreme of a day without the other; the day is missing");

  private LocalDate lastDay;
  private double lastMin;
  private double lastMax;

  ExtremesLog(
      DelimitedText text,
      LogFormat format,
      LogColumns.Extremes columns,
      Predicate<LocalDate> known) {
    this.text = text;
    this.format = format;
    this.known = known;
    this.columns = columns;
    pattern = format.times().pattern().map(TimePattern::of).orElse(TimePattern.iso());
    values = new ValueCells(format, text.name(), 2 * text.lines().size());
    collector = new ReadReport.Collector(text.name());
  }

  TemperatureLog read(String place, Medium medium, Progress progress) {
    LogLines.read(text, this::readLine, progress);
    var file = text.location();
    values.tell(collector, file);
    halves.tell(collector);
    repeated.tell(collector);
    MissingDays.tell(absent, collector, file);
    if (days.isEmpty()) {
      throw InputProblem.at(file, "no day with both extremes")
          .expected("at least one day with a minimum and a maximum")
          .because("there is nothing to compute from")
          .mend("look at the columns and at the missing codes that are declared");
    }
    return new TemperatureLog(
        DailyTemperatures.of(place, medium, days, DayOrigin.OBSERVED),
        Optional.empty(),
        format,
        collector.report());
  }

  private void readLine(DelimitedLine line) {
    var place = line.location(columns.timeColumn());
    var day = pattern.parse(line.text(columns.timeColumn()), place).day();
    if (!known.test(day)) {
      return;
    }
    collector.countRow();
    double min = values.celsius(line, columns.minimumColumn());
    double max = values.celsius(line, columns.maximumColumn());
    requireOrder(line, day, min, max);
    if (lastDay != null && !day.isAfter(lastDay)) {
      repeat(line, day, min, max);
      return;
    }
    if (lastDay != null) {
      lastDay.plusDays(1).datesUntil(day).forEach(absent::add);
    }
    lastDay = day;
    lastMin = min;
    lastMax = max;
    if (Double.isNaN(min) != Double.isNaN(max)) {
      halves.add(line.location());
    } else if (!Double.isNaN(min)) {
      days.add(new DailyExtremes(day, min, max));
    }
  }

  private void requireOrder(DelimitedLine line, LocalDate day, double min, double max) {
    if (min > max) {
      throw InputProblem.at(
              line.location(columns.minimumColumn()),
              "the minimum "
                  + line.text(columns.minimumColumn())
                  + " of "
                  + day
                  + " is above the maximum "
                  + line.text(columns.maximumColumn()))
          .expected("a minimum that is not above the maximum")
          .because("a day cannot be colder at its warmest than at its coldest")
          .mend("look whether the two columns are swapped or one value is mistyped");
    }
  }

  private void repeat(DelimitedLine line, LocalDate day, double min, double max) {
    boolean sameDay = day.equals(lastDay);
    if (sameDay && Double.compare(min, lastMin) == 0 && Double.compare(max, lastMax) == 0) {
      repeated.add(line.location());
      return;
    }
    throw InputProblem.at(
            line.location(columns.timeColumn()),
            sameDay
                ? "the day " + day + " again, with other values"
                : "the day " + day + " after " + lastDay)
        .expected("days in ascending order, each once")
        .because(
            sameDay
                ? "two pairs of extremes for a day cannot both hold"
                : "a log out of order may hold a wrong date, or two logs on top of each other")
        .mend(sameDay ? "take one of the two lines out" : "put the lines in order, or correct it");
  }
}
