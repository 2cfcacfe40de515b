package agro.course.sheet;

import java.util.ArrayList;
import java.util.List;

/** Printed pairs of argument and entry, both rising, for reading backwards. */
final class PrintedEntries {

  private final List<Double> arguments = new ArrayList<>();
  private final List<Double> entries = new ArrayList<>();

  /** Adds a pair whose argument lies above all others. */
  void add(double argument, double entry) {
    arguments.add(argument);
    entries.add(entry);
  }

  double leastEntry() {
    return entries.get(0);
  }

  double mostEntry() {
    return entries.get(entries.size() - 1);
  }

  /** The argument whose entry this is, or one on a straight line between two. */
  double backwards(double entry, int argumentDecimals) {
    int low = 0;
    while (low < entries.size() - 2 && entries.get(low + 1) <= entry) {
      low++;
    }
    double step = entries.get(low + 1) - entries.get(low);
    double share = step > 0 ? (entry - entries.get(low)) / step : 0;
    return HandNumbers.between(arguments.get(low), arguments.get(low + 1), share, argumentDecimals);
  }
}
