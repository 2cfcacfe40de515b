package agro.weather;

import agro.reading.DelimitedLine;
import agro.reading.DelimitedText;
import agro.report.InputProblem;
import agro.report.Progress;
import agro.report.ReadReport;
import agro.report.ReadReport.Deed;
import agro.report.SourceLocation;
import java.time.Duration;

/** Reads a log of several readings a day. */
final class ReadingsLog {

  private final DelimitedText text;
  private final LogFormat format;
  private final LogColumns.Readings columns;
  private final TimePattern pattern;
  private final LogClock clock;
  private final ValueCells values;
  private final ReadReport.Collector collector;
  private final ReadingSeries readings;
  private final Tally repeated =
      new Tally(Deed.DROPPED, "a line that repeats the time and the value of the line before");

  private long lastSecond = Long.MIN_VALUE;
  private double lastCelsius = Double.NaN;

  ReadingsLog(DelimitedText text, LogFormat format, LogColumns.Readings columns) {
    this.text = text;
    this.format = format;
    this.columns = columns;
    pattern = format.timePattern().map(TimePattern::of).orElse(TimePattern.iso());
    clock = new LogClock(format.zone(), format.dayOffset());
    int lines = text.lines().size();
    values = new ValueCells(format, text.name(), lines);
    collector = new ReadReport.Collector(text.name());
    readings = new ReadingSeries(text.name(), columns.temperatureColumn(), lines);
  }

  TemperatureLog read(String place, Medium medium, Progress progress) {
    LogLines.read(text, this::readLine, progress);
    var file = text.location();
    clock.tell(collector, file);
    values.tell(collector, file);
    repeated.tell(collector);
    readings.noteOddities(collector);
    var step = step(file);
    var days = new DayAssembly(readings, clock.dayOffset(), step, format.completeness());
    return new TemperatureLog(days.daily(place, medium, collector, file), collector.report());
  }

  private void readLine(DelimitedLine line) {
    collector.countRow();
    var place = line.location(columns.timeColumn());
    var instant = clock.instant(pattern.parse(line.text(columns.timeColumn()), place), place);
    if (instant.isEmpty()) {
      return;
    }
    long second = instant.getAsLong();
    double celsius = values.celsius(line, columns.temperatureColumn());
    if (second <= lastSecond) {
      repeat(line, second, celsius);
      return;
    }
    lastSecond = second;
    lastCelsius = celsius;
    if (!Double.isNaN(celsius)) {
      readings.add(second, celsius, line.lineNumber());
    }
  }

  private void repeat(DelimitedLine line, long second, double celsius) {
    boolean sameTime = second == lastSecond;
    if (sameTime && Double.compare(celsius, lastCelsius) == 0) {
      repeated.add(line.location());
      return;
    }
    var cell = line.text(columns.timeColumn());
    throw InputProblem.at(
            line.location(columns.timeColumn()),
            sameTime
                ? "the time \"" + cell + "\" again, with another value"
                : "the time \"" + cell + "\" is earlier than the line before it")
        .expected("times in ascending order, each once")
        .because(
            sameTime
                ? "two temperatures at one moment cannot both hold"
                : "a log out of order may hold a wrong date, or two logs on top of each other")
        .mend(
            format.zone().isEmpty()
                ? "put the lines in order, or declare the time zone if the clock was set back here"
                : "put the lines in order, or correct the date");
  }

  private Duration step(SourceLocation file) {
    if (format.step().isPresent()) {
      return format.step().get();
    }
    var median = readings.medianStep();
    if (readings.size() < 2) {
      var read = readings.size() == 1 ? "one reading alone" : "no reading with a temperature";
      throw InputProblem.at(file, read)
          .expected("readings of at least one day")
          .because("a day's extremes cannot be told from it")
          .mend("give a longer log, or declare its missing codes rightly");
    }
    collector.add(
        Deed.ASSUMED,
        file,
        "a step of " + Durations.words(median) + " between readings, the median distance");
    return median;
  }
}
