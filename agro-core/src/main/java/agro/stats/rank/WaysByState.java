package agro.stats.rank;

import java.util.Arrays;
import java.util.function.LongPredicate;

/**
 * Numbers of ways, or chances, to reach states that are written as one non-negative number each.
 */
final class WaysByState {

  private static final long EMPTY = -1;
  private static final long MIX = 0x9E3779B97F4A7C15L;

  private long[] states = empty(64);
  private double[] ways = new double[64];
  private int size;

  private static long[] empty(int length) {
    long[] states = new long[length];
    Arrays.fill(states, EMPTY);
    return states;
  }

  static WaysByState start() {
    var start = new WaysByState();
    start.add(0, 1);
    return start;
  }

  int size() {
    return size;
  }

  void add(long state, double more) {
    int at = place(states, state);
    if (states[at] == EMPTY) {
      states[at] = state;
      size++;
    }
    ways[at] += more;
    if (2 * size > states.length) {
      grow();
    }
  }

  private static int place(long[] states, long state) {
    int mask = states.length - 1;
    int at = (int) ((state * MIX) >>> 32) & mask;
    while (states[at] != EMPTY && states[at] != state) {
      at = (at + 1) & mask;
    }
    return at;
  }

  private void grow() {
    long[] oldStates = states;
    double[] oldWays = ways;
    states = empty(2 * oldStates.length);
    ways = new double[states.length];
    for (int i = 0; i < oldStates.length; i++) {
      if (oldStates[i] != EMPTY) {
        int at = place(states, oldStates[i]);
        states[at] = oldStates[i];
        ways[at] = oldWays[i];
      }
    }
  }

  void forEach(Visitor visitor) {
    for (int i = 0; i < states.length; i++) {
      if (states[i] != EMPTY) {
        visitor.visit(states[i], ways[i]);
      }
    }
  }

  /** Share of the ways that lead to states with a property. */
  double share(LongPredicate property) {
    double all = 0;
    double chosen = 0;
    for (int i = 0; i < states.length; i++) {
      if (states[i] != EMPTY) {
        all += ways[i];
        chosen += property.test(states[i]) ? ways[i] : 0;
      }
    }
    return chosen / all;
  }

  /** Receives each state with its ways. */
  @FunctionalInterface
  interface Visitor {
    void visit(long state, double ways);
  }
}
