package agro.trial;

import java.util.List;
import java.util.stream.Collectors;

/** Plots and lines in sentences. */
final class PlotWords {

  private static final int MOST = 12;

  private PlotWords() {}

  /** For example {@code "plots 3, 7 and 12"}. */
  static String list(List<TrialPlot> plots) {
    var names =
        plots.stream().map(plot -> plot.label().substring("plot ".length())).distinct().toList();
    return (names.size() == 1 ? "plot " : "plots ") + and(names);
  }

  /** For example {@code " (lines 4 and 9)"}, or nothing when there are no lines. */
  static String lines(List<Long> lines) {
    if (lines.isEmpty()) {
      return "";
    }
    return (lines.size() == 1 ? " (line " : " (lines ")
        + and(lines.stream().map(String::valueOf).toList())
        + ")";
  }

  static String and(List<String> words) {
    if (words.size() > MOST) {
      return words.stream().limit(MOST).collect(Collectors.joining(", "))
          + " and "
          + (words.size() - MOST)
          + " more";
    }
    if (words.size() < 2) {
      return String.join("", words);
    }
    return String.join(", ", words.subList(0, words.size() - 1))
        + " and "
        + words.get(words.size() - 1);
  }
}
