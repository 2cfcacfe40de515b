package agro.weather.archive;

import agro.report.InputProblem;
import agro.report.ReadReport;
import agro.report.ReadReport.Deed;
import agro.report.SourceLocation;
import agro.weather.DailyTemperatures;
import agro.weather.DayOrigin;
import agro.weather.Medium;
import java.time.LocalDate;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.NavigableSet;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/** Puts the values of one station together to days. */
final class GhcnDays {

  /** Hour at which an observing day ends with the calendar day. */
  private static final String MIDNIGHT = "2400";

  private final String file;
  private final boolean keepsFlagged;
  private final ReadReport.Collector collector;
  private final Map<LocalDate, GhcnLine> maxima = new TreeMap<>();
  private final Map<LocalDate, GhcnLine> minima = new TreeMap<>();
  private final Map<GhcnQualityFlag, Count> flagged = new EnumMap<>(GhcnQualityFlag.class);
  private final Map<String, Count> otherElements = new TreeMap<>();
  private final Map<String, Count> observationTimes = new TreeMap<>();
  private final TreeSet<LocalDate> days = new TreeSet<>();

  /** How often something came, and where first. */
  private static final class Count {
    private final long firstLine;
    private int times;

    private Count(long firstLine) {
      this.firstLine = firstLine;
    }
  }

  GhcnDays(String file, boolean keepsFlagged, ReadReport.Collector collector) {
    this.file = file;
    this.keepsFlagged = keepsFlagged;
    this.collector = collector;
  }

  void add(GhcnLine value) {
    switch (value.element()) {
      case "TMAX" -> addTo(maxima, value);
      case "TMIN" -> addTo(minima, value);
      default -> count(otherElements, value.element(), value);
    }
  }

  private void addTo(Map<LocalDate, GhcnLine> extremes, GhcnLine value) {
    if (value.isMissing()) {
      return;
    }
    days.add(value.day());
    if (value.qualityFlag() != ' ') {
      countFlag(value);
      if (!keepsFlagged) {
        return;
      }
    }
    if (!value.observationTime().isEmpty()) {
      count(observationTimes, value.observationTime(), value);
    }
    var before = extremes.put(value.day(), value);
    if (before != null && before.tenths() != value.tenths()) {
      throw InputProblem.at(
              SourceLocation.line(file, value.line()),
              value.element() + " of " + value.day() + " again, with another value")
          .expected("each element once a day (it stands in line " + before.line() + " already)")
          .because("two values for a day cannot both hold")
          .mend("take one of the two lines out");
    }
  }

  private void countFlag(GhcnLine value) {
    var flag =
        GhcnQualityFlag.of(value.qualityFlag())
            .orElseThrow(
                () ->
                    InputProblem.at(
                            SourceLocation.line(file, value.line()).column("quality flag"),
                            "\"" + value.qualityFlag() + "\" on " + value.day())
                        .expected("a blank or a letter of the archive's documentation")
                        .because("the columns may be shifted, or a check is new and unknown here")
                        .mend("fetch the file again, or look the letter up in the documentation"));
    count(flagged, flag, value);
  }

  private static <K> void count(Map<K, Count> counts, K key, GhcnLine value) {
    counts.computeIfAbsent(key, none -> new Count(value.line())).times++;
  }

  DailyTemperatures daily(String place, Medium medium) {
    tellFlags();
    tellOthers();
    var both = new TreeSet<>(maxima.keySet());
    both.retainAll(minima.keySet());
    var whole = withoutContradictions(both);
    if (whole.isEmpty()) {
      throw InputProblem.at(SourceLocation.file(file), "no day with a minimum and a maximum")
          .expected("the elements TMAX and TMIN with values that passed the archive's checks")
          .because("degree-days need both extremes of a day")
          .mend("choose another station, or keep the flagged values with keepingFlagged");
    }
    var builder = DailyTemperatures.builder(whole.first(), whole.last());
    for (var day : whole) {
      builder.put(
          day,
          minima.get(day).tenths() / 10.0,
          maxima.get(day).tenths() / 10.0,
          DayOrigin.OBSERVED);
    }
    tellHalfDays(both);
    return builder.build(place, medium);
  }

  private NavigableSet<LocalDate> withoutContradictions(Set<LocalDate> both) {
    var whole = new TreeSet<LocalDate>();
    for (var day : both) {
      if (minima.get(day).tenths() <= maxima.get(day).tenths()) {
        whole.add(day);
      } else {
        collector.add(
            Deed.DROPPED,
            SourceLocation.line(file, minima.get(day).line()),
            day + ": the minimum is above the maximum, so the day is left out");
      }
    }
    return whole;
  }

  private void tellFlags() {
    flagged.forEach(
        (flag, count) ->
            collector.add(
                keepsFlagged ? Deed.NOTED : Deed.DROPPED,
                SourceLocation.line(file, count.firstLine),
                count.times
                    + (count.times == 1 ? " temperature" : " temperatures")
                    + " with quality flag "
                    + flag.letter()
                    + " ("
                    + flag.words()
                    + "), the first of them here"
                    + (keepsFlagged ? "; kept, as asked" : "")));
  }

  private void tellOthers() {
    if (!otherElements.isEmpty()) {
      collector.add(
          Deed.NOTED,
          SourceLocation.file(file),
          "passed over: " + String.join(", ", otherElements.keySet()));
    }
    var odd = new HashMap<>(observationTimes);
    odd.keySet().removeIf(time -> time.equals(MIDNIGHT) || time.equals("0000"));
    if (!odd.isEmpty()) {
      collector.add(
          Deed.NOTED,
          SourceLocation.file(file),
          String.format(
              Locale.ROOT,
              "observed at %s, not at midnight: a day's extremes may belong to the day before",
              String.join(", ", new TreeSet<>(odd.keySet()))));
    }
  }

  private void tellHalfDays(Set<LocalDate> both) {
    long half = days.stream().filter(day -> !both.contains(day)).count();
    if (half > 0) {
      collector.add(
          Deed.DROPPED,
          SourceLocation.file(file),
          half + (half == 1 ? " day" : " days") + " with one extreme alone: left out as missing");
    }
  }
}
