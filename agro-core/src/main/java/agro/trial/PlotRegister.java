package agro.trial;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;

/** The plots of a trial, put together from the lines that describe them. */
final class PlotRegister {

  private record Key(String site, OptionalInt year, String name) {
    static Key of(TrialPlot plot) {
      return new Key(plot.site(), plot.year(), plot.name());
    }
  }

  private final Map<Key, TrialPlot> chosen;
  private final Map<Key, Map<TrialPlot, Integer>> descriptions;
  private final List<TrialPlot> plots;

  private PlotRegister(Map<Key, TrialPlot> chosen, Map<Key, Map<TrialPlot, Integer>> descriptions) {
    this.chosen = chosen;
    this.descriptions = descriptions;
    this.plots = chosen.values().stream().sorted(TrialPlot.IN_ORDER).toList();
  }

  static PlotRegister of(List<Assessment> lines) {
    Map<Key, Map<TrialPlot, Integer>> counts = new LinkedHashMap<>();
    for (var line : lines) {
      counts
          .computeIfAbsent(Key.of(line.plot()), key -> new HashMap<>())
          .merge(line.plot(), 1, Integer::sum);
    }
    Map<Key, TrialPlot> chosen = new HashMap<>();
    Map<Key, Map<TrialPlot, Integer>> ordered = new HashMap<>();
    counts.forEach(
        (key, ways) -> {
          var sorted = sorted(ways);
          ordered.put(key, sorted);
          chosen.put(key, sorted.keySet().iterator().next());
        });
    return new PlotRegister(chosen, ordered);
  }

  /** The more frequent description first, equal ones by their words, whatever the lines' order. */
  private static Map<TrialPlot, Integer> sorted(Map<TrialPlot, Integer> ways) {
    var entries = new ArrayList<>(ways.entrySet());
    entries.sort(
        Comparator.comparing((Map.Entry<TrialPlot, Integer> way) -> -way.getValue())
            .thenComparing(way -> words(way.getKey()), NaturalOrder.ofNames()));
    var sorted = new LinkedHashMap<TrialPlot, Integer>();
    entries.forEach(entry -> sorted.put(entry.getKey(), entry.getValue()));
    return sorted;
  }

  static String words(TrialPlot plot) {
    return plot.treatment()
        + (plot.block().isEmpty() ? "" : " in block " + plot.block())
        + (plot.mainPlot().isEmpty() ? "" : " in main plot " + plot.mainPlot())
        + plot.place().map(place -> " at " + place).orElse("")
        + plot.area().map(area -> " of " + area).orElse("");
  }

  List<TrialPlot> plots() {
    return plots;
  }

  TrialPlot plotOf(Assessment line) {
    return chosen.get(Key.of(line.plot()));
  }

  Map<TrialPlot, Integer> descriptions(TrialPlot plot) {
    return new LinkedHashMap<>(descriptions.getOrDefault(Key.of(plot), Map.of()));
  }
}
