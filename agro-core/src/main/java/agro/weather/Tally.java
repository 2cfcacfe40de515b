package agro.weather;

import agro.report.ReadReport;
import agro.report.ReadReport.Deed;
import agro.report.SourceLocation;

/** Counts a deed that may happen on many lines, so that the report names it once. */
final class Tally {

  private final Deed deed;
  private final String text;
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
  }

  int count() {
    return count;
  }

  void tell(ReadReport.Collector collector) {
    if (count > 0) {
      var times = count == 1 ? "" : " (" + count + " lines, the first of them here)";
      collector.add(deed, first, text + times);
    }
  }
}
