package agro.trial;

import agro.trial.TrialFinding.Kind;
import agro.trial.TrialFinding.Severity;
import agro.units.Numbers;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;
import java.util.TreeSet;

/** Checks of the values of a trial: sub-samples, days, entries made twice, impossible values. */
final class ValueChecks {

  private final FieldTrial trial;
  private final List<TrialFinding> findings = new ArrayList<>();

  private ValueChecks(FieldTrial trial) {
    this.trial = trial;
  }

  static List<TrialFinding> of(FieldTrial trial) {
    var checks = new ValueChecks(trial);
    for (var response : trial.responses()) {
      var lines = trial.variable(response.name()).assessments();
      checks.perDay(response, lines);
      checks.entriesMadeTwice(response, lines);
      checks.impossible(response, lines);
    }
    checks.days();
    return List.copyOf(checks.findings);
  }

  private void perDay(TrialResponse response, List<Assessment> lines) {
    var days = new TreeMap<String, List<Assessment>>();
    for (var line : lines) {
      days.computeIfAbsent(
              line.date().map(day -> " on " + day).orElse(""), key -> new ArrayList<>())
          .add(line);
    }
    days.forEach(
        (day, some) -> {
          Map<TrialPlot, Integer> counts = new LinkedHashMap<>();
          trial.plots().forEach(plot -> counts.put(plot, 0));
          for (var line : some) {
            if (line.value().isPresent()) {
              counts.merge(trial.plotOf(line), 1, Integer::sum);
            }
          }
          if (counts.values().stream().anyMatch(count -> count > 0)) {
            withoutValue(response, day, counts);
            subSamples(response, day, counts);
          }
        });
  }

  private void withoutValue(TrialResponse response, String day, Map<TrialPlot, Integer> counts) {
    var none =
        counts.entrySet().stream()
            .filter(entry -> entry.getValue() == 0)
            .map(Map.Entry::getKey)
            .toList();
    if (!none.isEmpty()) {
      add(
          Kind.MISSING_PLOT,
          Severity.WARNING,
          PlotWords.list(none)
              + (none.size() == 1 ? " has" : " have")
              + " no value of "
              + response.name()
              + day
              + ".",
          "The trial is not balanced there; look whether the loss has to do with the treatment.",
          none,
          List.of());
    }
  }

  private void subSamples(TrialResponse response, String day, Map<TrialPlot, Integer> counts) {
    var numbers = new TreeMap<Integer, List<TrialPlot>>();
    counts.forEach(
        (plot, count) -> {
          if (count > 0) {
            numbers.computeIfAbsent(count, key -> new ArrayList<>()).add(plot);
          }
        });
    if (numbers.lastKey() == 1) {
      return;
    }
    var usual = usual(numbers);
    if (usual == 1) {
      var odd = new ArrayList<TrialPlot>();
      numbers.tailMap(2).values().forEach(odd::addAll);
      add(
          Kind.TWO_VALUES,
          Severity.WARNING,
          PlotWords.list(odd)
              + (odd.size() == 1 ? " has" : " have")
              + " more than one line of "
              + response.name()
              + day
              + ", where other plots have one; they are taken as sub-samples.",
          "Look whether a line was entered twice, or belongs to another plot.",
          odd,
          List.of());
      return;
    }
    add(
        Kind.SUB_SAMPLES,
        numbers.size() == 1 ? Severity.NOTE : Severity.WARNING,
        response.name()
            + day
            + " was assessed on "
            + numberWords(numbers)
            + " sub-samples in each plot; they describe their plot and are no replicates.",
        numbers.size() == 1
            ? "The analysis takes one mean or total for each plot."
            : "Plots differ in their number of sub-samples, so their means differ in weight.",
        List.of(),
        List.of());
  }

  private static int usual(Map<Integer, List<TrialPlot>> numbers) {
    int usual = 0;
    int plots = 0;
    for (var entry : numbers.entrySet()) {
      if (entry.getValue().size() > plots) {
        plots = entry.getValue().size();
        usual = entry.getKey();
      }
    }
    return usual;
  }

  private static String numberWords(NavigableMap<Integer, List<TrialPlot>> numbers) {
    return numbers.size() == 1
        ? numbers.firstKey().toString()
        : numbers.firstKey() + " to " + numbers.lastKey();
  }

  private void entriesMadeTwice(TrialResponse response, List<Assessment> lines) {
    Map<List<Object>, Assessment> first = new LinkedHashMap<>();
    for (var line : lines) {
      if (line.value().isEmpty()) {
        continue;
      }
      var plot = line.plot();
      var key =
          List.<Object>of(plot.site(), plot.year(), plot.name(), line.date(), line.subSample());
      var other = first.putIfAbsent(key, line);
      if (other != null) {
        twice(response, other, line);
      }
    }
  }

  private void twice(TrialResponse response, Assessment first, Assessment second) {
    boolean same = TrialVariable.sameValue(first, second);
    var numbers = new TreeSet<Long>();
    numbers.add(first.line());
    numbers.add(second.line());
    numbers.remove(0L);
    var where = first.where().replaceFirst(" \\(line [0-9]+\\)$", "");
    add(
        Kind.TWO_VALUES,
        same ? Severity.WARNING : Severity.ERROR,
        response.name()
            + " of "
            + where
            + " is written twice"
            + PlotWords.lines(List.copyOf(numbers))
            + (same
                ? ", both times as " + SubSamples.written(first) + "; it counts once."
                : ", as "
                    + SubSamples.written(first)
                    + " and as "
                    + SubSamples.written(second)
                    + "."),
        same
            ? "Remove one of the lines, or mend the number of the sub-sample."
            : "Correct one of them, or set it to missing, with the reason.",
        List.of(trial.plotOf(first)),
        List.copyOf(numbers));
  }

  private void impossible(TrialResponse response, List<Assessment> lines) {
    for (var line : lines) {
      if (line.value().isPresent()) {
        var why = why(response, line);
        if (!why.isEmpty()) {
          add(
              Kind.OUT_OF_RANGE,
              Severity.ERROR,
              response.name()
                  + " of "
                  + line.where()
                  + " is "
                  + SubSamples.written(line)
                  + ", but "
                  + why
                  + ".",
              "Correct the value, or set it to missing, with the reason.",
              List.of(trial.plotOf(line)),
              line.line() == 0 ? List.of() : List.of(line.line()));
        }
      }
    }
  }

  private static String why(TrialResponse response, Assessment line) {
    double value = line.value().getAsDouble();
    boolean counted =
        response.kind() == ResponseKind.COUNT || response.kind() == ResponseKind.COUNT_OUT_OF;
    if (value < response.least()) {
      return "a " + response.kind().words() + " is at least " + Numbers.plain(response.least());
    }
    if (line.outOf().isPresent() && value > line.outOf().getAsInt()) {
      return "no more than " + line.outOf().getAsInt() + " were looked at";
    }
    if (value > response.most()) {
      return "a " + response.kind().words() + " is at most " + Numbers.plain(response.most());
    }
    if (counted && value != Math.rint(value)) {
      return "a count is a whole number";
    }
    if (response.kind() == ResponseKind.COUNT_OUT_OF && line.outOf().isEmpty()) {
      return "the number looked at is not given";
    }
    return "";
  }

  private void days() {
    var days = trial.dates();
    if (days.size() > 1) {
      add(
          Kind.REPEATED_DATES,
          Severity.NOTE,
          "Plots were assessed on "
              + days.size()
              + " days, from "
              + days.get(0)
              + " to "
              + days.get(days.size() - 1)
              + "; days repeat the same plots and are no replicates.",
          "Analyse one day, a summary over the days, or the days as a repeated factor.",
          List.of(),
          List.of());
    }
  }

  private void add(
      Kind kind,
      Severity severity,
      String text,
      String cure,
      List<TrialPlot> plots,
      List<Long> lines) {
    findings.add(
        new TrialFinding(
            kind,
            severity,
            Character.toUpperCase(text.charAt(0)) + text.substring(1),
            cure,
            plots,
            lines));
  }
}
