package agro.weather.log;

import agro.report.ReadReport;
import agro.report.ReadReport.Deed;
import agro.report.SourceLocation;
import java.util.ArrayList;
import java.util.List;

/** Counts a deed that may happen on many lines, so that the report names it once. */
final class Tally {

  private static final int MOST_LISTED = 12;

  private final Deed deed;
  private final String text;
  private final List<Long> lines = new ArrayList<>();
  private SourceLocation first = SourceLocation.NONE;
  private int count;

  Tally(Deed deed, String text) {
    this.deed = deed;
    this.text = text;
  }

  void add(SourceLocation place) {
    if (count == 0) {
      first = place;
    }
    count++;
    if (lines.size() < MOST_LISTED && place.line() > 0) {
      lines.add(place.line());
    }
  }

  /** Whether places are still listed; otherwise {@link #add()} counts as well. */
  boolean lists() {
    return lines.size() < MOST_LISTED;
  }

  /** Counts once more without a place. */
  void add() {
    count++;
  }

  SourceLocation first() {
    return first;
  }

  int count() {
    return count;
  }

  void tell(ReadReport.Collector collector) {
    if (count > 0) {
      var times = count == 1 ? "" : " (" + count + " lines" + listed() + ")";
      collector.add(deed, first, text + times);
    }
  }

  private String listed() {
    if (lines.isEmpty()) {
      return "";
    }
    var words = new StringBuilder(": ");
    for (int i = 0; i < lines.size(); i++) {
      words.append(i == 0 ? "" : ", ").append(lines.get(i));
    }
    return words.append(count > lines.size() ? " and so on" : "").toString();
  }
}
