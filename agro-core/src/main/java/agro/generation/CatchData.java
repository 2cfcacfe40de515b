package agro.generation;

import java.util.List;

/**
 * The usable visits of one season as plain arrays, one element a visit: degree-days at its start
 * and end, traps open on average, open trap-nights, and the count; the visits themselves are kept
 * for what a reader is told.
 */
final class CatchData {

  final int year;
  final List<TrapVisit> book;
  final String[] trap;
  final double[] fromDegreeDaysC;
  final double[] toDegreeDaysC;
  final double[] trapsOpen;
  final double[] nightsOpen;
  final int[] count;
  final boolean[] full;

  /**
   * Takes visits whose interval lies on the degree-day scale of the season.
   *
   * @param year names the season
   * @param visits visits that tell something: the trap had not failed and was open
   * @param fromDegreeDaysC degree-days at the start of each visit's interval
   * @param toDegreeDaysC degree-days at its end
   */
  CatchData(int year, List<TrapVisit> visits, double[] fromDegreeDaysC, double[] toDegreeDaysC) {
    this.year = year;
    book = List.copyOf(visits);
    this.fromDegreeDaysC = fromDegreeDaysC.clone();
    this.toDegreeDaysC = toDegreeDaysC.clone();
    var size = visits.size();
    trap = new String[size];
    trapsOpen = new double[size];
    nightsOpen = new double[size];
    count = new int[size];
    full = new boolean[size];
    for (var i = 0; i < size; i++) {
      var visit = visits.get(i);
      trap[i] = visit.trap();
      nightsOpen[i] = visit.nightsOpen();
      trapsOpen[i] = visit.nightsOpen() / visit.nights();
      count[i] = visit.count();
      full[i] = visit.state() == TrapState.FULL;
    }
  }

  int visits() {
    return count.length;
  }

  long totalCatch() {
    var total = 0L;
    for (var caught : count) {
      total += caught;
    }
    return total;
  }

  double lastDegreeDaysC() {
    var last = 0.0;
    for (var end : toDegreeDaysC) {
      last = Math.max(last, end);
    }
    return last;
  }

  /** Degree-days in the middle of the first visit with a catch, or NaN when nothing was caught. */
  double firstCatchDegreeDaysC() {
    var first = Double.NaN;
    for (var i = 0; i < count.length; i++) {
      if (count[i] > 0 && !(fromDegreeDaysC[i] >= first)) {
        first = fromDegreeDaysC[i];
      }
    }
    return first;
  }
}
